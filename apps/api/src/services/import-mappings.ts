import { COLUMNS, columnOf, type Field, unitsOf } from "../imports/column.js";
import type { ImportMapping } from "../imports/import-mapping.js";
import { type MappingSuggestion, suggestMapping } from "../imports/suggest-mapping.js";
import { type Fault, Problem, pointerTo } from "../problems/problem.js";
import type { OwnCatalogueRepository } from "../repositories/own-catalogue-repository.js";

/** A column mapping as stored. */
export interface SavedMapping {
  readonly id: string;
  /** RFC 3339, UTC. */
  readonly createdAt: string;
  readonly mapping: ImportMapping;
}

/** A column of a catalogue file: our own name for it and what its cells hold. */
export interface ColumnDescription {
  readonly field: Field;
  readonly column: string;
  readonly needed: boolean;
  readonly units: readonly string[];
}

export interface ImportMappingService {
  /** @throws Problem INCONSISTENT_REQUEST for a mapping that contradicts itself. */
  add(mapping: ImportMapping): Promise<SavedMapping>;
  list(
    limit: number,
    before: number | null,
  ): Promise<{ readonly mappings: readonly SavedMapping[]; readonly next: number | null }>;
  /** @throws Problem IMPORT_MAPPING_NOT_FOUND. */
  get(id: string): Promise<SavedMapping>;
  /** What the headers of a file may mean. Nothing is stored. */
  suggest(headers: readonly string[]): MappingSuggestion;
  columns(): readonly ColumnDescription[];
}

/** What the service needs around it. */
export interface ImportMappingServiceParts {
  readonly ownCatalogues: OwnCatalogueRepository;
  readonly tenantId: string;
  /** RFC 3339, UTC. */
  readonly now: () => string;
  readonly newId: () => string;
}

export function importMappingService({
  ownCatalogues: repository,
  tenantId,
  now,
  newId,
}: ImportMappingServiceParts): ImportMappingService {
  return {
    async add(mapping) {
      const faults = mappingFaults(mapping);
      if (faults.length > 0)
        throw new Problem("INCONSISTENT_REQUEST", "The column mapping contradicts itself.", faults);
      const saved: SavedMapping = { id: newId(), createdAt: now(), mapping };
      const { id, createdAt } = saved;
      await repository.addMapping(tenantId, { id, createdAt, document: JSON.stringify(mapping) });
      return saved;
    },
    async list(limit, before) {
      const { mappings, next } = await repository.mappings(tenantId, limit, before);
      return { mappings: mappings.map(savedOf), next };
    },
    async get(id) {
      const stored = await repository.mapping(tenantId, id);
      if (stored === null) throw new Problem("IMPORT_MAPPING_NOT_FOUND", `There is no column mapping "${id}".`);
      return savedOf(stored);
    },
    suggest: suggestMapping,
    columns() {
      return (Object.keys(COLUMNS) as Field[]).map((field) => {
        const { header, needed = false } = columnOf(field);
        return { field, column: header, needed, units: unitsOf(field) };
      });
    },
  };
}

function savedOf(stored: { readonly id: string; readonly createdAt: string; readonly document: string }): SavedMapping {
  return { id: stored.id, createdAt: stored.createdAt, mapping: JSON.parse(stored.document) as ImportMapping };
}

function mappingFaults({ columns, constants = {}, ignore = [] }: ImportMapping): readonly Fault[] {
  const faults: Fault[] = [];
  const fields = new Map<string, number>();
  const headers = new Map<string, number>();
  for (const [index, { header, field, unit }] of columns.entries()) {
    const at = pointerTo("/columns", index);
    faults.push(...twice(fields, field, index, pointerTo(at, "field"), "field"));
    faults.push(...twice(headers, header.trim(), index, pointerTo(at, "header"), "header"));
    if (unit !== undefined && !unitsOf(field).includes(unit))
      faults.push({
        pointer: pointerTo(at, "unit"),
        detail: `cells of the ${columnOf(field).header} are not in ${unit}`,
        accepted: unitsOf(field).length === 0 ? "no unit here" : `one of ${unitsOf(field).join(", ")}`,
      });
  }
  for (const field of Object.keys(constants))
    if (fields.has(field))
      faults.push({
        pointer: pointerTo("/constants", field),
        detail: `the ${columnOf(field as Field).header} is said by a column and by a constant; which one is meant cannot be known`,
        accepted: "one of the two",
      });
  for (const [index, header] of ignore.entries())
    if (headers.has(header.trim()))
      faults.push({
        pointer: pointerTo("/ignore", index),
        detail: `the column "${header}" is used and left out at once`,
        accepted: "one of the two",
      });
  return faults;
}

function twice(
  seen: Map<string, number>,
  name: string,
  index: number,
  pointer: string,
  what: string,
): readonly Fault[] {
  const first = seen.get(name);
  if (first === undefined) {
    seen.set(name, index);
    return [];
  }
  return [
    { pointer, detail: `the ${what} "${name}" is that of column ${first} already`, accepted: `each ${what} once` },
  ];
}
