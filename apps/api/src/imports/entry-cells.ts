import type { Opening, Screw } from "@landfast/rules";
import type { CatalogueEntry } from "../schemas/catalogue-entry.js";
import type { Field } from "./column.js";
import { type QuantityKind, quantityText } from "./read-quantity.js";
import { driveText, suppliersText, textsText, wordsText } from "./read-words.js";

/** The text of each cell of one row; an absent field is an empty cell. */
export type EntryCells = Readonly<Partial<Record<Field, string>>>;

/**
 * A connector as the cells of one row, so that reading them gives the very same connector. Openings and screws that
 * the plain columns can say are in them, others are in full.
 */
export function entryCells(entry: CatalogueEntry): EntryCells {
  const { mounting, grounding, pin, tooling } = entry;
  const cells: Readonly<Record<string, string | undefined>> = {
    partNumber: entry.partNumber,
    status: entry.status,
    description: entry.description,
    family: entry.family,
    construction: entry.construction,
    functions: wordsText(entry.functions),
    suppliers: entry.suppliers === undefined ? undefined : suppliersText(entry.suppliers),
    validFrom: entry.validFrom,
    validTo: entry.validTo,
    supersededBy: entry.supersededBy,
    packQuantity: String(entry.packQuantity),
    metalMarking: entry.metalMarking,
    temperature: markOr("temperature", entry.temperature),
    voltageV:
      typeof entry.voltageV === "number"
        ? quantityText("voltage", { value: entry.voltageV, unit: "V" })
        : entry.voltageV,
    insulated: yesNo(entry.insulated),
    openingsApart: yesNo(entry.openingsApart),
    coverPart: entry.coverPart,
    listings: entry.listings.length === 0 ? undefined : textsText(entry.listings.map(({ standard }) => standard)),
    places: typeof entry.places === "object" ? wordsText(entry.places) : entry.places,
    lineSide: entry.lineSide,
    groundingListed: grounding === undefined ? undefined : yesNo(grounding.listed),
    electrodes: grounding === undefined ? undefined : wordsText(grounding.electrodes),
    conductorsPerClamp: numberOrMark(grounding?.conductorsPerClamp),
    fixing: mounting.kind,
    ...(mounting.kind === "pad"
      ? {
          holes: String(mounting.pattern.holes),
          bolt: mounting.pattern.bolt,
          spacing: markOr("length", mounting.pattern.spacing),
        }
      : {}),
    frames: mounting.kind === "frame" ? textsText(mounting.frames) : undefined,
    pinSize: pin?.size,
    pinMetal: pin?.metal,
    reusable: yesNo(entry.reusable),
    bodyMetal: entry.bodyMetal,
    plating: entry.plating,
    withstands: entry.withstands === undefined ? undefined : textsText(entry.withstands),
    compound: entry.compound,
    tool: tooling?.tool,
    die: tooling?.die,
    crimps: numberOrMark(tooling?.crimps),
    ...(fitsPlainColumns(entry)
      ? plainCells(entry)
      : { openingsInFull: JSON.stringify(entry.openings), screwsInFull: JSON.stringify(entry.screws) }),
  };
  return Object.fromEntries(Object.entries(cells).filter(([, text]) => text !== undefined));
}

/** One or two openings of one size range each, and one screw or none that tightens them all. */
function fitsPlainColumns({ openings, screws }: CatalogueEntry): boolean {
  const [screw] = screws;
  return (
    openings.length >= 1 &&
    openings.length <= 2 &&
    screws.length <= 1 &&
    openings.every(
      (opening) =>
        opening.ranges.length === 1 &&
        opening.shared === undefined &&
        opening.combinations === undefined &&
        opening.screw === screw?.id,
    )
  );
}

function plainCells({ openings, screws }: CatalogueEntry): Readonly<Record<string, string | undefined>> {
  const [screw] = screws;
  const [first, second] = openings;
  const one = openingCells(first);
  const two = openingCells(second);
  return {
    opening: one.id,
    openingCount: one.count,
    openingDuty: one.duty,
    from: one.from,
    to: one.to,
    strandings: one.strandings,
    conductorsMax: one.conductorsMax,
    stripLength: one.stripLength,
    secondOpening: two.id,
    secondOpeningCount: two.count,
    secondOpeningDuty: two.duty,
    secondFrom: two.from,
    secondTo: two.to,
    secondStrandings: two.strandings,
    secondConductorsMax: two.conductorsMax,
    secondStripLength: two.stripLength,
    ...screwCells(screw),
  };
}

function screwCells(screw: Screw | undefined): Readonly<Record<string, string | undefined>> {
  if (screw === undefined) return { drive: driveText(null) };
  return { screw: screw.id, drive: driveText(screw.drive), torque: markOr("torque", screw.torque) };
}

interface OpeningCells {
  readonly id?: string;
  readonly count?: string;
  readonly duty?: string | undefined;
  readonly from?: string | undefined;
  readonly to?: string | undefined;
  readonly strandings?: string | undefined;
  readonly conductorsMax?: string | undefined;
  readonly stripLength?: string | undefined;
}

function openingCells(opening: Opening | undefined): OpeningCells {
  if (opening === undefined) return {};
  const [range] = opening.ranges;
  const strandings = range?.strandings;
  return {
    id: opening.id,
    count: String(opening.count),
    duty: opening.duty,
    from: range?.from,
    to: range?.to,
    strandings: typeof strandings === "object" ? wordsText(strandings) : strandings,
    conductorsMax: numberOrMark(opening.conductorsMax),
    stripLength: markOr("length", opening.stripLength),
  };
}

function markOr(
  kind: QuantityKind,
  quantity: { readonly value: number; readonly unit: string } | "unmarked" | undefined,
): string | undefined {
  return typeof quantity === "object" ? quantityText(kind, quantity) : quantity;
}

function numberOrMark(value: number | "unmarked" | undefined): string | undefined {
  return value === undefined ? undefined : String(value);
}

function yesNo(value: boolean): string {
  return value ? "yes" : "no";
}
