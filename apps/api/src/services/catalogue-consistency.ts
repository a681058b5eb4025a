import { CELL_MAX } from "../imports/cell.js";
import { FAULTS_SHOWN, type Fault, pointerTo } from "../problems/problem.js";
import type { CatalogueEntry } from "../schemas/catalogue-entry.js";
import { connectorFaults } from "./joint-consistency.js";

/**
 * What in one connector of a catalogue cannot be true together, though each field by itself has the right form.
 * @param pointer where it stands in the body.
 */
export function entryFaults(entry: CatalogueEntry, pointer: string): readonly Fault[] {
  const faults: Fault[] = [];
  connectorFaults(entry, pointer, faults);
  const { partNumber, validFrom, validTo, supersededBy, bodyMetal, plating, tooling } = entry;
  // A cell of blanks is an empty cell, and a cell has an end: what a file cannot hold could not be exported.
  for (const [place, text] of [
    ["description", entry.description],
    ["bodyMetal", bodyMetal],
    ["plating", plating],
    ["tooling/tool", tooling?.tool],
    ["tooling/die", tooling?.die],
  ] as const)
    if (text?.trim() === "")
      faults.push({
        pointer: `${pointer}/${place}`,
        detail: "the text is nothing but blanks",
        accepted: "text, or no field at all where nothing is known",
      });
  for (const place of ["openings", "screws"] as const)
    if (JSON.stringify(entry[place]).length > CELL_MAX)
      faults.push({
        pointer: pointerTo(pointer, place),
        detail: `the ${place} are longer than a cell of a workbook holds`,
        accepted: `at most ${CELL_MAX} characters as JSON`,
      });
  if (validFrom !== undefined && validTo !== undefined && validTo < validFrom)
    faults.push({
      pointer: pointerTo(pointer, "validTo"),
      detail: `the part is to be had until ${validTo}, before it begins on ${validFrom}`,
      accepted: "a day no earlier than validFrom",
    });
  if (supersededBy === partNumber)
    faults.push({
      pointer: pointerTo(pointer, "supersededBy"),
      detail: "the part is named as its own successor",
      accepted: "another part number",
    });
  return faults;
}

/** What in the connectors of a version cannot be true together: a number given twice, successors in a circle. */
export function versionFaults(entries: readonly CatalogueEntry[], pointer: string): readonly Fault[] {
  const faults: Fault[] = [];
  const seen = new Map<string, number>();
  for (const [index, entry] of entries.entries()) {
    if (faults.length >= FAULTS_SHOWN) return faults;
    const at = pointerTo(pointer, index);
    const first = seen.get(entry.partNumber);
    if (first === undefined) seen.set(entry.partNumber, index);
    else
      faults.push({
        pointer: pointerTo(at, "partNumber"),
        detail: `the part number "${entry.partNumber}" is that of item ${first} already`,
        accepted: "each part number once",
      });
    faults.push(...entryFaults(entry, at));
  }
  for (const partNumber of inACircle(entries))
    faults.push({
      pointer: pointerTo(pointer, seen.get(partNumber) ?? 0, "supersededBy"),
      detail: `the successors of "${partNumber}" come back to it`,
      accepted: "a chain of successors that ends",
    });
  return faults;
}

/** The part numbers whose successors come back to them. A part that names itself is no circle here. */
export function inACircle(
  entries: readonly Pick<CatalogueEntry, "partNumber" | "supersededBy">[],
): ReadonlySet<string> {
  const successors = new Map(
    entries.flatMap(({ partNumber, supersededBy }) =>
      supersededBy === undefined || supersededBy === partNumber ? [] : [[partNumber, supersededBy] as const],
    ),
  );
  const circles = new Set<string>();
  const ends = new Set<string>();
  for (const start of successors.keys()) {
    const path: string[] = [];
    const onPath = new Set<string>();
    let at: string | undefined = start;
    while (at !== undefined && !ends.has(at) && !onPath.has(at)) {
      path.push(at);
      onPath.add(at);
      at = successors.get(at);
    }
    if (at !== undefined && onPath.has(at)) for (const one of path.slice(path.indexOf(at))) circles.add(one);
    for (const one of path) ends.add(one);
  }
  return circles;
}
