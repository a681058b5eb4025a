import { setImmediate as nextTurn } from "node:timers/promises";
import type { ConnectorFamily } from "@landfast/rules";
import { Problem } from "../problems/problem.js";
import type {
  CatalogueVersion,
  EntryRecord,
  ImportRecord,
  OwnCatalogue,
  OwnCatalogueFilter,
  OwnCataloguePage,
  OwnCatalogueRepository,
  StoredVersion,
  VersionTerms,
} from "../repositories/own-catalogue-repository.js";
import type { CatalogueEntry } from "../schemas/catalogue-entry.js";
import { type Catalogue, countFamilies } from "./catalogue.js";
import { versionFaults } from "./catalogue-consistency.js";
import { type ConnectorFilter, passes, whyOutOfForce } from "./connector-filter.js";

/** Connectors written or read in one go, so that other requests are not kept waiting. */
const PIECE = 100;
/** Connectors kept in memory, of however many versions; the version asked last stays in any case. */
const KEPT_MAX = 60_000;

/** A catalogue as posted. */
export interface PostedCatalogue {
  readonly name: string;
  readonly suppliers?: readonly string[];
  readonly note?: string;
}

/** A version as posted. */
export interface PostedVersion extends VersionTerms {
  readonly items: readonly CatalogueEntry[];
}

/** Which version of which catalogue, and on which day its parts have to be in force. */
export interface CatalogueChoice {
  readonly id: string;
  readonly version: number;
  /** "2026-03-31"; absent: the day on which it is asked. */
  readonly on?: string;
}

export interface EntryPage {
  readonly connectors: readonly CatalogueEntry[];
  readonly next: number | null;
}

export interface OwnCatalogueService {
  add(posted: PostedCatalogue): Promise<OwnCatalogue>;
  list(limit: number, before: number | null, filter: OwnCatalogueFilter): Promise<OwnCataloguePage>;
  /** @throws Problem CATALOGUE_NOT_FOUND. */
  get(id: string): Promise<{ readonly catalogue: OwnCatalogue; readonly versions: readonly CatalogueVersion[] }>;
  /** @throws Problem CATALOGUE_NOT_FOUND; INCONSISTENT_REQUEST, and then nothing is stored. */
  publish(id: string, posted: PostedVersion): Promise<CatalogueVersion>;
  /**
   * Writes a version piece by piece and makes it seen at the end, whole. When the pieces fail, nothing is left of it.
   * @throws what the pieces throw.
   */
  write(
    catalogue: OwnCatalogue,
    terms: VersionTerms,
    pieces: AsyncIterable<readonly EntryRecord[]>,
    from: ImportRecord | null,
  ): Promise<CatalogueVersion>;
  /** @throws Problem CATALOGUE_NOT_FOUND, CATALOGUE_VERSION_NOT_FOUND. */
  version(id: string, version: number): Promise<StoredVersion>;
  /** A page of the connectors that pass a filter, in the version's order, from the place `after` on. @throws as version. */
  connectors(id: string, version: number, filter: ConnectorFilter, limit: number, after: number): Promise<EntryPage>;
  /** @throws as version, and Problem CONNECTOR_NOT_FOUND. */
  connector(id: string, version: number, partNumber: string): Promise<CatalogueEntry>;
  /** JSON texts of all connectors of a version, piece by piece. @throws as version. */
  documents(id: string, version: number): AsyncIterable<readonly string[]>;
  /**
   * A version ready to be asked, with the parts in force on the day.
   * @throws Problem UNKNOWN_CATALOGUE when the choice names none that is stored.
   */
  catalogueFor(choice: CatalogueChoice): Promise<Catalogue>;
}

/** What the service needs around it. */
export interface OwnCatalogueServiceParts {
  readonly ownCatalogues: OwnCatalogueRepository;
  readonly tenantId: string;
  /** RFC 3339, UTC. */
  readonly now: () => string;
  readonly newId: () => string;
}

export function ownCatalogueService({
  ownCatalogues: repository,
  tenantId,
  now,
  newId,
}: OwnCatalogueServiceParts): OwnCatalogueService {
  const kept = new Map<string, Promise<readonly CatalogueEntry[]>>();
  const sizes = new Map<string, number>();

  const found = async (id: string): Promise<OwnCatalogue> => {
    const catalogue = await repository.get(tenantId, id);
    if (catalogue === null) throw new Problem("CATALOGUE_NOT_FOUND", `There is no catalogue "${id}".`);
    return catalogue;
  };

  async function* pieces(recordId: string): AsyncGenerator<readonly string[]> {
    for (let after = 0; ; after += PIECE) {
      const piece = await repository.entries(recordId, after, PIECE);
      if (piece.length > 0) yield piece;
      if (piece.length < PIECE) return;
      await nextTurn();
    }
  }

  const read = async (recordId: string): Promise<readonly CatalogueEntry[]> => {
    const entries: CatalogueEntry[] = [];
    for await (const piece of pieces(recordId))
      for (const document of piece) entries.push(JSON.parse(document) as CatalogueEntry);
    return entries;
  };

  /** The connectors of a version; a published version never changes, so they are kept for the next question. */
  const entriesOf = ({ recordId, version }: StoredVersion): Promise<readonly CatalogueEntry[]> => {
    const known = kept.get(recordId);
    const entries = known ?? read(recordId);
    kept.delete(recordId);
    kept.set(recordId, entries);
    sizes.set(recordId, version.connectors);
    if (known === undefined)
      entries.catch(() => {
        kept.delete(recordId);
        sizes.delete(recordId);
      });
    let total = 0;
    for (const size of sizes.values()) total += size;
    for (const oldest of kept.keys()) {
      if (total <= KEPT_MAX || oldest === recordId) break;
      total -= sizes.get(oldest) ?? 0;
      kept.delete(oldest);
      sizes.delete(oldest);
    }
    return entries;
  };

  const service: OwnCatalogueService = {
    async add({ name, suppliers = [], note }) {
      const catalogue: OwnCatalogue = {
        id: newId(),
        name,
        suppliers,
        ...(note === undefined ? {} : { note }),
        createdAt: now(),
      };
      await repository.add(tenantId, catalogue);
      return catalogue;
    },
    list(limit, before, filter) {
      return repository.list(tenantId, limit, before, filter);
    },
    async get(id) {
      const catalogue = await found(id);
      return { catalogue, versions: await repository.versions(tenantId, id) };
    },
    async publish(id, { items, ...terms }) {
      const catalogue = await found(id);
      refuseContradictions(terms, items);
      return service.write(catalogue, terms, records(items), null);
    },
    async write(catalogue, terms, written, from) {
      const recordId = newId();
      await repository.begin(tenantId, catalogue, recordId);
      try {
        const families: { readonly family: ConnectorFamily }[] = [];
        for await (const piece of written) {
          await repository.addEntries(recordId, families.length, piece);
          for (const { family } of piece) families.push({ family });
          await nextTurn();
        }
        return await repository.publish(
          recordId,
          {
            ...terms,
            publishedAt: now(),
            connectors: families.length,
            families: countFamilies(families),
          },
          from,
        );
      } catch (error) {
        while (!(await repository.discard(recordId, PIECE))) await nextTurn();
        throw error;
      }
    },
    async version(id, version) {
      await found(id);
      const stored = await repository.version(tenantId, id, version);
      if (stored === null)
        throw new Problem("CATALOGUE_VERSION_NOT_FOUND", `The catalogue "${id}" has no version ${version}.`);
      return stored;
    },
    async connectors(id, version, filter, limit, after) {
      const entries = await entriesOf(await service.version(id, version));
      const page: CatalogueEntry[] = [];
      for (let index = after; index < entries.length; index += 1) {
        const entry = entries[index];
        if (entry === undefined || !passes(entry, filter)) continue;
        if (page.length === limit) return { connectors: page, next: index };
        page.push(entry);
      }
      return { connectors: page, next: null };
    },
    async connector(id, version, partNumber) {
      const { recordId } = await service.version(id, version);
      const document = await repository.entry(recordId, partNumber);
      if (document === null)
        throw new Problem(
          "CONNECTOR_NOT_FOUND",
          `Version ${version} of the catalogue has no connector "${partNumber}".`,
        );
      return JSON.parse(document) as CatalogueEntry;
    },
    async *documents(id, version) {
      const { recordId } = await service.version(id, version);
      yield* pieces(recordId);
    },
    async catalogueFor({ id, version, on = now().slice(0, 10) }) {
      const catalogue = await repository.get(tenantId, id);
      const stored = catalogue === null ? null : await repository.version(tenantId, id, version);
      if (catalogue === null || stored === null)
        throw new Problem(
          "UNKNOWN_CATALOGUE",
          catalogue === null ? `There is no catalogue "${id}".` : `The catalogue "${id}" has no version ${version}.`,
          [
            {
              pointer: catalogue === null ? "/catalogue/id" : "/catalogue/version",
              detail: catalogue === null ? "no catalogue with this id is stored" : "the catalogue has no such version",
              accepted: "a catalogue and version that GET /v1/catalogues lists",
            },
          ],
        );
      const because = whyOutOfForce(stored.version, on);
      if (because !== null)
        throw new Problem("NOT_IN_FORCE", `Version ${version} of the catalogue "${id}" ${because}.`, [
          {
            pointer: "/catalogue/on",
            detail: `the version ${because}`,
            accepted: "a day on which the version holds, or another version",
          },
        ]);
      const inForce: CatalogueEntry[] = [];
      const outOfForce = new Map<string, string>();
      for (const entry of await entriesOf(stored)) {
        const why = whyOutOfForce(entry, on);
        if (why === null) inForce.push(entry);
        else outOfForce.set(entry.partNumber, why);
      }
      return {
        id,
        recordId: stored.recordId,
        name: catalogue.name,
        revision: String(version),
        loadedAt: stored.version.publishedAt,
        on,
        items: inForce,
        byPartNumber: new Map(inForce.map((item) => [item.partNumber, item])),
        outOfForce,
        listedAt: `/v1/catalogues/${id}/versions/${version}/connectors`,
      };
    },
  };
  return service;
}

function refuseContradictions({ validFrom, validTo }: VersionTerms, items: readonly CatalogueEntry[]): void {
  const faults = [...versionFaults(items, "/items")];
  if (validFrom !== undefined && validTo !== undefined && validTo < validFrom)
    faults.unshift({
      pointer: "/validTo",
      detail: `the version ends on ${validTo}, before it begins on ${validFrom}`,
      accepted: "a day no earlier than validFrom",
    });
  if (faults.length > 0)
    throw new Problem("INCONSISTENT_REQUEST", "The connectors of the version contradict each other.", faults);
}

async function* records(items: readonly CatalogueEntry[]): AsyncGenerator<readonly EntryRecord[]> {
  for (let start = 0; start < items.length; start += PIECE) {
    yield items.slice(start, start + PIECE).map((item) => ({
      partNumber: item.partNumber,
      family: item.family,
      document: JSON.stringify(item),
    }));
    await nextTurn();
  }
}
