import type { ConnectorFamily } from "@landfast/rules";

/** A catalogue that a user keeps. */
export interface OwnCatalogue {
  readonly id: string;
  readonly name: string;
  /** The names of those who supply its parts. */
  readonly suppliers: readonly string[];
  readonly note?: string;
  /** RFC 3339, UTC. */
  readonly createdAt: string;
}

/** What is said of a version when it is made. Days are calendar days, "2026-03-31", both ends included. */
export interface VersionTerms {
  readonly validFrom?: string;
  readonly validTo?: string;
  readonly note?: string;
}

/** A version of a catalogue. Once it can be seen it never changes. */
export interface CatalogueVersion extends VersionTerms {
  /** 1, 2, 3 …: counted within its catalogue. */
  readonly version: number;
  /** RFC 3339, UTC. */
  readonly publishedAt: string;
  readonly connectors: number;
  readonly families: readonly { readonly family: ConnectorFamily; readonly connectors: number }[];
}

/** A version and the id under which the store keeps its connectors. */
export interface StoredVersion {
  readonly recordId: string;
  readonly version: CatalogueVersion;
}

/** One connector of a version, ready to be written; `document` is JSON text. */
export interface EntryRecord {
  readonly partNumber: string;
  readonly family: ConnectorFamily;
  readonly document: string;
}

/** How a version came out of a file. */
export interface ImportRecord {
  readonly id: string;
  /** RFC 3339, UTC. */
  readonly createdAt: string;
  /** "sha256:" and the digest of the file's bytes. */
  readonly fileDigest: string;
  /** JSON text of the column mapping; null where the file had our own column names. */
  readonly mapping: string | null;
  /** JSON text of the report on every row. */
  readonly report: string;
}

/** An import as stored, with the version that came of it. */
export interface StoredImport extends ImportRecord {
  readonly version: number;
}

/** A column mapping as stored; `document` is its JSON text. */
export interface StoredMapping {
  readonly id: string;
  readonly createdAt: string;
  readonly document: string;
}

export interface OwnCataloguePage {
  readonly catalogues: readonly OwnCatalogue[];
  /** Where the next page begins; null on the last. */
  readonly next: number | null;
}

/** Which catalogues are listed: those whose name holds a text, those of a supplier. */
export interface OwnCatalogueFilter {
  readonly search: string | null;
  readonly supplier: string | null;
}

/**
 * Where a user's own catalogues are kept.
 *
 * A version is written in pieces, so that a large one does not keep other requests waiting: it is begun, its
 * connectors are added in some calls, and only `publish` makes it seen, whole and at once. What was begun and not
 * published is thrown away by `discard`, or when the store is opened again.
 * @throws what the store throws when it cannot be reached.
 */
export interface OwnCatalogueRepository {
  add(tenantId: string, catalogue: OwnCatalogue): Promise<void>;
  /** Up to `limit` catalogues, newest first, from before the place that `before` names. */
  list(tenantId: string, limit: number, before: number | null, filter: OwnCatalogueFilter): Promise<OwnCataloguePage>;
  get(tenantId: string, id: string): Promise<OwnCatalogue | null>;
  /** The versions that can be seen, newest first. */
  versions(tenantId: string, catalogueId: string): Promise<readonly CatalogueVersion[]>;
  version(tenantId: string, catalogueId: string, version: number): Promise<StoredVersion | null>;
  /** Begins a version that nobody sees yet. */
  begin(tenantId: string, catalogue: OwnCatalogue, recordId: string): Promise<void>;
  /** Adds connectors to a version begun; `ordinal` is the place of the first. */
  addEntries(recordId: string, ordinal: number, entries: readonly EntryRecord[]): Promise<void>;
  /** Gives the version begun the next number of its catalogue. Durable, whole and seen once this resolves. */
  publish(
    recordId: string,
    version: Omit<CatalogueVersion, "version">,
    from: ImportRecord | null,
  ): Promise<CatalogueVersion>;
  /** Throws away up to `limit` connectors of a version begun, and the version with the last; true when nothing is left. */
  discard(recordId: string, limit: number): Promise<boolean>;
  /** JSON texts of the connectors of a version in their order, up to `limit` from the place `after` on. */
  entries(recordId: string, after: number, limit: number): Promise<readonly string[]>;
  /** JSON text of one connector. */
  entry(recordId: string, partNumber: string): Promise<string | null>;
  /** How the versions of a catalogue came out of files, newest first. */
  imports(tenantId: string, catalogueId: string): Promise<readonly Omit<StoredImport, "report" | "mapping">[]>;
  import(tenantId: string, catalogueId: string, importId: string): Promise<StoredImport | null>;
  addMapping(tenantId: string, mapping: StoredMapping): Promise<void>;
  /** Up to `limit` mappings, newest first, from before the place that `before` names. */
  mappings(
    tenantId: string,
    limit: number,
    before: number | null,
  ): Promise<{ readonly mappings: readonly StoredMapping[]; readonly next: number | null }>;
  mapping(tenantId: string, id: string): Promise<StoredMapping | null>;
}
