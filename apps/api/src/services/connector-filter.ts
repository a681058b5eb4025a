import {
  type ConductorMetal,
  type ConductorSize,
  type ConnectorFamily,
  compareSizes,
  PUBLISHED_TABLES,
  sizeOf,
} from "@landfast/rules";
import type { CatalogueEntry } from "../schemas/catalogue-entry.js";

/** Which connectors are listed; what is null does not narrow the list. */
export interface ConnectorFilter {
  readonly family: ConnectorFamily | null;
  /** A conductor metal that the metal marking stands for. A part whose marking is not known is left out. */
  readonly metal: ConductorMetal | null;
  /** A conductor size that an opening's printed range or combination holds. */
  readonly size: string | null;
  readonly supplier: string | null;
  /** Part of the part number, of a supplier's number or of the description. */
  readonly search: string | null;
  /** A day on which the part is in force. */
  readonly on: string | null;
}

/** Metals by marking, from the published table of markings. */
const METALS: ReadonlyMap<string, readonly string[]> = new Map(
  PUBLISHED_TABLES.flatMap(({ id, columns, rows }) => {
    const metals = id === "marking-codes" ? columns.findIndex((column) => column.id === "metals") : -1;
    return metals === -1 ? [] : rows.map(({ key, cells }) => [key[0] ?? "", (cells[metals] ?? "").split(" ")] as const);
  }),
);

/** True for a metal marking that the published table has. */
export function isKnownMarking(marking: string): boolean {
  return marking === "unmarked" || METALS.has(marking);
}

export function passes(entry: CatalogueEntry, filter: ConnectorFilter): boolean {
  return (
    (filter.family === null || entry.family === filter.family) &&
    (filter.supplier === null || (entry.suppliers ?? []).some(({ name }) => name === filter.supplier)) &&
    (filter.on === null || whyOutOfForce(entry, filter.on) === null) &&
    (filter.metal === null || takesMetal(entry, filter.metal)) &&
    (filter.search === null || holdsText(entry, filter.search.toLowerCase())) &&
    (filter.size === null || takesSize(entry, sizeOf(filter.size)))
  );
}

/** Why a part is not to be used on a day, in a few words; null where it is in force. */
export function whyOutOfForce(
  { supersededBy, validFrom, validTo }: Pick<CatalogueEntry, "supersededBy" | "validFrom" | "validTo">,
  on: string,
): string | null {
  if (supersededBy !== undefined) return `is superseded by "${supersededBy}"`;
  if (validFrom !== undefined && on < validFrom) return `is in force from ${validFrom} on, not on ${on}`;
  if (validTo !== undefined && on > validTo) return `was in force until ${validTo}, not on ${on}`;
  return null;
}

/** A part without a metal marking is for copper only; what an unknown marking stands for is not guessed. */
function takesMetal({ metalMarking }: CatalogueEntry, metal: ConductorMetal): boolean {
  if (metalMarking === undefined) return false;
  if (metalMarking === "unmarked") return metal === "copper";
  const metals = METALS.get(metalMarking) ?? [];
  // A mark for both metals also covers copper-clad aluminum.
  return metals.includes(metal) || (metal === "copper-clad-aluminum" && metals.length > 1);
}

function takesSize({ openings }: CatalogueEntry, size: ConductorSize): boolean {
  return openings.some(
    ({ ranges, combinations = [] }) =>
      ranges.some(({ from, to }) => {
        const [low, high] = [sizeOf(from), sizeOf(to)];
        return low.series === size.series && compareSizes(low, size) <= 0 && compareSizes(size, high) <= 0;
      }) || combinations.some((parts) => parts.some((part) => part.size === size.text)),
  );
}

function holdsText({ partNumber, description, suppliers = [] }: CatalogueEntry, wanted: string): boolean {
  return [partNumber, description, ...suppliers.map((one) => one.partNumber ?? "")].some((text) =>
    text.toLowerCase().includes(wanted),
  );
}
