import type { Service } from "./open-service.js";
import { ownCatalogue } from "./own-catalogue.js";

/** Our own column names with a good cell for each that is used here. */
const GOOD = {
  partNumber: ["part number", "LKW-1"],
  description: ["description", "set-screw lug, one barrel"],
  family: ["family", "set-screw-lug-one-hole"],
  construction: ["construction", "set-screw"],
  functions: ["joint functions", "termination"],
  packQuantity: ["pack quantity", "6"],
  metalMarking: ["metal marking", "AL9CU"],
  insulated: ["insulated body", "no"],
  openingsApart: ["openings keep metals apart", "yes"],
  listings: ["listed to", "UL 486A-486B"],
  places: ["listed places", "equipment"],
  supersededBy: ["superseded by", ""],
  openings: ["openings", "1"],
  smallestSize: ["smallest size", "6 AWG"],
  largestSize: ["largest size", "250 kcmil"],
  strandForms: ["strand forms", "class-B, class-C"],
  stripLength: ["strip length", "0.75 in"],
  temperature: ["temperature rating", "90 C"],
  voltage: ["voltage rating", "600 V"],
  drive: ["screw drive", "socket 5/16 in"],
  torque: ["torque", "275 lbf-in"],
  fixing: ["fixing", "integral"],
  reusable: ["reusable", "yes"],
} as const;

export type PartCells = Partial<Record<keyof typeof GOOD, string>>;

/** Rows of cells under a header, as CSV that is good as it stands; each row departs from a good one in what it names. */
export function partsFile(
  rows: readonly PartCells[],
  {
    delimiter = ",",
    leaveOut = [],
    rename = {},
  }: {
    readonly delimiter?: string;
    readonly leaveOut?: readonly (keyof typeof GOOD)[];
    readonly rename?: PartCells;
  } = {},
): string {
  const names = (Object.keys(GOOD) as (keyof typeof GOOD)[]).filter((name) => !leaveOut.includes(name));
  const lines = [
    names.map((name) => rename[name] ?? GOOD[name][0]),
    ...rows.map((row, index) =>
      names.map((name) => row[name] ?? (name === "partNumber" ? `LKW-${String(index + 1)}` : GOOD[name][1])),
    ),
  ];
  return lines.map((cells) => cells.map((cell) => quoted(cell, delimiter)).join(delimiter)).join("\r\n");
}

function quoted(cell: string, delimiter: string): string {
  return cell.includes(delimiter) || /["\r\n]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell;
}

/** Posts a file to a catalogue without a version. */
export function importing(
  payload: string | Buffer,
  query = "",
  type = "text/csv",
): (service: { readonly app: Service }) => Promise<{ readonly statusCode: number; readonly body: string }> {
  return async ({ app }) =>
    app.inject({
      method: "POST",
      url: `/v1/catalogues/${await ownCatalogue(app, [])}/imports${query}`,
      headers: { "content-type": type },
      payload,
    });
}
