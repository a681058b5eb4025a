import { UnreadableFile } from "../imports/cell.js";
import type { ImportDesk, ImportOutcome, OpenFile } from "../imports/import-desk.js";
import type { FileKind } from "../imports/write-file.js";
import { FAULTS_SHOWN, type Fault, Problem, pointerTo } from "../problems/problem.js";
import type {
  CatalogueVersion,
  OwnCatalogueRepository,
  StoredImport,
  VersionTerms,
} from "../repositories/own-catalogue-repository.js";
import type { ImportMappingService } from "./import-mappings.js";
import type { OwnCatalogueService } from "./own-catalogues.js";

/** Files that may be in work at once, for reading and for writing. */
const IN_WORK_MAX = 4;

/** A file that is to become the next version of a catalogue. */
export interface ImportRequest extends VersionTerms {
  readonly bytes: Buffer;
  readonly form: FileKind;
  /** The id of a saved mapping; absent: the file has our own column names. */
  readonly mapping?: string;
  /** Store the good rows although others are bad. */
  readonly partial: boolean;
  /** The digest of a dry run's report: whoever sends it has seen what was recognised. */
  readonly confirm?: string;
}

/** What an import is known by. */
export type ImportHead = Omit<StoredImport, "report" | "mapping">;

/** An import that became a version; `report` is JSON text. */
export interface StoredOutcome {
  readonly import: ImportHead;
  readonly version: CatalogueVersion;
  readonly report: string;
}

export interface CatalogueImportService {
  /** JSON text of the report on a file. Nothing is stored. @throws Problem as `run` does for the file as a whole. */
  dryRun(catalogueId: string, request: ImportRequest): Promise<string>;
  /**
   * Stores a file's connectors as the next version, whole or not at all.
   * @throws Problem CATALOGUE_NOT_FOUND, IMPORT_MAPPING_NOT_FOUND, IMPORT_UNREADABLE, IMPORT_TOO_LARGE,
   *   IMPORT_COLUMNS_MISSING, IMPORT_ROWS_REFUSED, IMPORT_NOT_CONFIRMED, INCONSISTENT_REQUEST, BUSY.
   */
  run(catalogueId: string, request: ImportRequest): Promise<StoredOutcome>;
  /** The imports of a catalogue, newest first. @throws Problem CATALOGUE_NOT_FOUND. */
  list(catalogueId: string): Promise<readonly ImportHead[]>;
  /** An import with its report and mapping as JSON texts. @throws Problem CATALOGUE_NOT_FOUND, IMPORT_NOT_FOUND. */
  get(catalogueId: string, importId: string): Promise<StoredImport>;
  /**
   * A file with every connector of a version, which reads back to the very same ones.
   * @throws Problem CATALOGUE_NOT_FOUND, CATALOGUE_VERSION_NOT_FOUND, BUSY.
   */
  file(catalogueId: string, version: number, form: FileKind): Promise<Uint8Array>;
}

/** What the service needs around it. */
export interface CatalogueImportServiceParts {
  readonly catalogues: OwnCatalogueService;
  readonly mappings: Pick<ImportMappingService, "get">;
  readonly repository: OwnCatalogueRepository;
  readonly desk: ImportDesk;
  readonly tenantId: string;
  /** RFC 3339, UTC. */
  readonly now: () => string;
  readonly newId: () => string;
}

export function catalogueImportService({
  catalogues,
  mappings,
  repository,
  desk,
  tenantId,
  now,
  newId,
}: CatalogueImportServiceParts): CatalogueImportService {
  let inWork = 0;

  /** Does one piece of work with a file, unless too many are under way. */
  const working = async <T>(work: () => Promise<T>): Promise<T> => {
    if (inWork >= IN_WORK_MAX)
      throw new Problem("BUSY", `${IN_WORK_MAX} files are in work already.`, [], { "retry-after": "2" });
    inWork += 1;
    try {
      return await work();
    } finally {
      inWork -= 1;
    }
  };

  const mappingOf = async ({ mapping }: ImportRequest) =>
    mapping === undefined ? null : (await mappings.get(mapping)).mapping;

  const open = async (request: ImportRequest, keep: boolean): Promise<OpenFile> => {
    const mapping = await mappingOf(request);
    try {
      return await desk.read({ ...request, mapping, keep, problemsShown: FAULTS_SHOWN });
    } catch (error) {
      throw error instanceof UnreadableFile ? unreadable(error) : error;
    }
  };

  return {
    async dryRun(catalogueId, request) {
      await catalogues.get(catalogueId);
      return working(async () => {
        const file = await open(request, false);
        await file.close();
        return file.outcome.report;
      });
    },
    async run(catalogueId, request) {
      const { catalogue } = await catalogues.get(catalogueId);
      const terms = termsOf(request);
      return working(async () => {
        const file = await open(request, true);
        try {
          refuseUnlessGood(file.outcome, request);
          const { fileDigest, report } = file.outcome;
          const mapping = await mappingOf(request);
          const record = {
            id: newId(),
            createdAt: now(),
            fileDigest,
            mapping: mapping === null ? null : JSON.stringify(mapping),
            report,
          };
          const version = await catalogues.write(catalogue, terms, file.entries(), record);
          const { id, createdAt } = record;
          return { import: { id, createdAt, fileDigest, version: version.version }, version, report };
        } finally {
          await file.close();
        }
      });
    },
    async list(catalogueId) {
      await catalogues.get(catalogueId);
      return repository.imports(tenantId, catalogueId);
    },
    async get(catalogueId, importId) {
      await catalogues.get(catalogueId);
      const stored = await repository.import(tenantId, catalogueId, importId);
      if (stored === null) throw new Problem("IMPORT_NOT_FOUND", `The catalogue has no import "${importId}".`);
      return stored;
    },
    async file(catalogueId, version, form) {
      await catalogues.version(catalogueId, version);
      return working(() => desk.write(catalogues.documents(catalogueId, version), form));
    },
  };
}

function termsOf({ validFrom, validTo, note }: VersionTerms): VersionTerms {
  if (validFrom !== undefined && validTo !== undefined && validTo < validFrom)
    throw new Problem("INCONSISTENT_REQUEST", "The version ends before it begins.", [
      {
        pointer: "/query/validTo",
        detail: `the version ends on ${validTo}, before it begins on ${validFrom}`,
        accepted: "a day no earlier than validFrom",
      },
    ]);
  return {
    ...(validFrom === undefined ? {} : { validFrom }),
    ...(validTo === undefined ? {} : { validTo }),
    ...(note === undefined ? {} : { note }),
  };
}

function unreadable({ message, accepted, line, tooLarge }: UnreadableFile): Problem {
  return new Problem(tooLarge ? "IMPORT_TOO_LARGE" : "IMPORT_UNREADABLE", message, [
    { pointer: line === null ? "" : pointerTo("/lines", line), detail: message, accepted },
  ]);
}

/** Stores nothing that was not judged good, nothing partly unless asked, and nothing recognised that was not seen. */
function refuseUnlessGood(outcome: ImportOutcome, { partial, confirm }: ImportRequest): void {
  const { rows, missing, recognised, digest } = outcome;
  if (missing.length > 0)
    throw new Problem(
      "IMPORT_COLUMNS_MISSING",
      `The file lacks columns that every row needs: ${missing.join(", ")}.`,
      faultsOf(outcome),
    );
  if (rows.bad > 0 && !partial)
    throw new Problem(
      "IMPORT_ROWS_REFUSED",
      `${rows.bad} of ${rows.read} rows are refused, so nothing is stored. A dry run reports each; partial=true stores the ${rows.good} good ones.`,
      faultsOf(outcome),
    );
  if (rows.good === 0)
    throw new Problem("IMPORT_ROWS_REFUSED", "No row is good, so there is nothing to store.", faultsOf(outcome));
  if (confirm !== undefined && confirm !== digest)
    throw new Problem(
      "IMPORT_NOT_CONFIRMED",
      "The file, its mapping or what is made of them is not what was confirmed. Make a dry run, look at its report, and confirm its digest.",
    );
  if (recognised > 0 && confirm === undefined)
    throw new Problem(
      "IMPORT_NOT_CONFIRMED",
      `${recognised} spellings were recognised and are applied only once they were seen. Make a dry run, look at "recognised" in its report, and send its digest as confirm.`,
    );
}

/** One fault for each refused cell: "/lines/17/torque" is the column torque of the row that begins on line 17. */
function faultsOf({ problems }: ImportOutcome): readonly Fault[] {
  return problems.map(({ line, column, reason, accepted }) => ({
    pointer: column === null ? pointerTo("/lines", line) : pointerTo("/lines", line, column),
    detail: reason,
    accepted,
  }));
}
