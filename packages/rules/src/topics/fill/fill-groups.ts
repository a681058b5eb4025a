import type { CalculationFinding } from "../../core/calculation.js";
import { type CalculationSheet, isClosed } from "../../core/calculation-sheet.js";
import type { Insulation, Stranding } from "../../core/conductor.js";
import { sizeOf } from "../../core/conductor-size.js";
import type { Edition } from "../../core/edition.js";
import type { Step } from "../../core/finding.js";
import type { Area, Length } from "../../core/quantity.js";
import { UnusableFact } from "../../core/unusable-fact.js";

/** Equal conductors, or equal cables, that fill space. */
export type FillConductor =
  | {
      readonly kind: "conductor";
      readonly count: number;
      /** "4/0 AWG", "250 kcmil". */
      readonly size: string;
      readonly insulation: Insulation;
      readonly stranding: Stranding;
      /** Types RHH and RHW measure more with an outer covering. Needed for them only. */
      readonly outerCovering?: boolean;
      /** Over the insulation, measured or from the maker. Needed where the tables do not list the conductor; then it counts. */
      readonly measuredArea?: Area;
    }
  /** A cable of several conductors counts as one; an oval one by its longer diameter. */
  | { readonly kind: "cable"; readonly count: number; readonly diameter: Length };

/** Equal conductors with the area of one of them. */
export interface FillGroup {
  readonly count: Step;
  /** Of one conductor, in square inches. */
  readonly area: Step;
  /** Column of Chapter 9 Table 5 where it was read, for its diameter; absent where it came from elsewhere. */
  readonly tableFive?: { readonly size: string; readonly column: string };
}

/** One group or more. */
export type FillGroups = readonly [FillGroup, ...FillGroup[]];

/** The area of each group, read or worked out. @throws UnusableFact without any conductor. */
export function fillGroups(
  sheet: CalculationSheet,
  conductors: readonly FillConductor[],
  edition: Edition,
): FillGroups | CalculationFinding {
  const groups: FillGroup[] = [];
  for (const [index, conductor] of conductors.entries()) {
    const group = fillGroup(sheet, conductor, `question/conductors/${String(index)}`, edition);
    if (isClosed(group)) return group;
    groups.push(group);
  }
  const [first, ...others] = groups;
  if (first === undefined)
    throw new UnusableFact("question/conductors", "must name one conductor or more", "a list of one kind or more");
  return [first, ...others];
}

/** Sum of count x area over the groups, in square inches. */
export function totalArea(sheet: CalculationSheet, groups: FillGroups): Step {
  const products = groups.map(({ count, area }) =>
    count.value === 1 ? area : sheet.multiply("area of these conductors", [count, area], "in2"),
  );
  return sumOf(sheet, "area of all conductors", products, "in2");
}

/** How many conductors and cables the groups have together. */
export function totalCount(sheet: CalculationSheet, groups: FillGroups): Step {
  const counts = groups.map(({ count }) => count);
  return sumOf(sheet, "number of conductors", counts, "conductors");
}

function sumOf(sheet: CalculationSheet, label: string, terms: readonly Step[], unit: string): Step {
  const [only] = terms;
  return terms.length === 1 && only !== undefined ? only : sheet.add(label, terms, unit);
}

/**
 * Area of one conductor with its insulation.
 *
 * NFPA 70 Chapter 9 (2017, 2020, 2023): Table 5 for building wire up to class C and compressed, Table 5A for compact,
 * Table 8 for bare conductors; what the tables do not list counts with its actual dimensions (note 5).
 * Worked: 12 AWG THHN: 0.0133 square inches.
 */
function fillGroup(
  sheet: CalculationSheet,
  conductor: FillConductor,
  path: string,
  edition: Edition,
): FillGroup | CalculationFinding {
  const count = sheet.count("number of these conductors", conductor.count, `${path}/count`, "conductors");
  if (conductor.kind === "cable") {
    const diameter = sheet.length("diameter of the cable", conductor.diameter, `${path}/diameter`, "in");
    return { count, area: circleOf(sheet, "area of the cable", diameter) };
  }
  if (conductor.measuredArea !== undefined)
    return {
      count,
      area: sheet.area("measured area of one conductor", conductor.measuredArea, `${path}/measuredArea`),
    };
  const size = sheet.given("size", sizeOf(conductor.size).text, `${path}/size`);
  if (conductor.stranding === "unknown")
    return sheet.ask(
      `${path}/stranding`,
      "Compact conductors measure less and finely stranded ones more; which it is, is not known.",
      edition.tables.insulatedArea.cite,
    );
  if (conductor.insulation === "bare") return bareGroup(sheet, conductor.stranding, size, count, path, edition);
  return insulatedGroup(sheet, conductor, size, count, path, edition);
}

function insulatedGroup(
  sheet: CalculationSheet,
  conductor: Extract<FillConductor, { kind: "conductor" }>,
  size: Step,
  count: Step,
  path: string,
  edition: Edition,
): FillGroup | CalculationFinding {
  const { insulatedArea, compactArea } = edition.tables;
  const { insulation, stranding } = conductor;
  const columns = COLUMNS[insulation];
  if (stranding === "compact") {
    if (columns?.compact === undefined)
      return askForArea(sheet, `${compactArea.cite.locator} lists no type ${insulation}`, path, edition);
    const area = sheet.readAt("area of one conductor", compactArea, String(size.value), columns.compact, [size]);
    return isClosed(area) ? area : { count, area };
  }
  if (columns === undefined)
    return askForArea(sheet, `${insulatedArea.cite.locator} lists no type ${insulation}`, path, edition);
  if (!TABLE_STRANDINGS.has(stranding))
    return askForArea(sheet, `${insulatedArea.cite.locator} does not list conductors of ${stranding}`, path, edition);
  const column = columns.table === "rhh" ? coveringColumn(conductor.outerCovering) : columns.table;
  if (column === undefined)
    return sheet.ask(
      `${path}/outerCovering`,
      `Type ${insulation} measures more with an outer covering; whether it has one is not known.`,
      insulatedArea.cite,
    );
  const area = sheet.readAt("area of one conductor", insulatedArea, String(size.value), column, [size]);
  return isClosed(area) ? area : { count, area, tableFive: { size: String(size.value), column } };
}

function bareGroup(
  sheet: CalculationSheet,
  stranding: Stranding,
  size: Step,
  count: Step,
  path: string,
  edition: Edition,
): FillGroup | CalculationFinding {
  const { compactArea, conductorPropertiesSolid, conductorPropertiesStranded } = edition.tables;
  if (stranding === "compact") {
    const diameter = sheet.readAt("bare diameter", compactArea, String(size.value), "bareDiameterIn", [size]);
    return isClosed(diameter) ? diameter : { count, area: circleOf(sheet, "area of one conductor", diameter) };
  }
  if (!TABLE_STRANDINGS.has(stranding))
    return askForArea(
      sheet,
      `${conductorPropertiesStranded.cite.locator} does not list conductors of ${stranding}`,
      path,
      edition,
    );
  const table = stranding === "solid" ? conductorPropertiesSolid : conductorPropertiesStranded;
  const area = sheet.readAt("area of one bare conductor", table, String(size.value), "overallAreaIn2", [size]);
  return isClosed(area) ? area : { count, area };
}

function askForArea(sheet: CalculationSheet, reason: string, path: string, { clauses }: Edition): CalculationFinding {
  return sheet.ask(`${path}/measuredArea`, `${reason}, so its actual area must be given.`, clauses.areaNotInTables);
}

function circleOf(sheet: CalculationSheet, label: string, diameter: Step): Step {
  return sheet.approximately(
    label,
    (Math.PI * Number(diameter.value) ** 2) / 4,
    "in2",
    [diameter],
    "pi x diameter ^ 2 / 4",
    `${String(Math.PI)} x ${String(diameter.value)} ^ 2 / 4`,
  );
}

function coveringColumn(outerCovering: boolean | undefined): string | undefined {
  if (outerCovering === undefined) return undefined;
  return outerCovering ? "rhh" : "rhhNoCovering";
}

/** Make-ups that Tables 5 and 8 stand for; compact has its own table, finer ones measure more. */
const TABLE_STRANDINGS: ReadonlySet<Stranding> = new Set(["solid", "class-B", "class-C", "compressed"]);

/** Which column of Table 5 and of Table 5A each type stands in; types left out stand in neither. */
const COLUMNS: Readonly<Partial<Record<Insulation, { readonly table: string; readonly compact?: string }>>> = {
  RHH: { table: "rhh" },
  RHW: { table: "rhh" },
  "RHW-2": { table: "rhh" },
  "RHH/RHW-2": { table: "rhh" },
  TW: { table: "thw" },
  THW: { table: "thw", compact: "thwAreaIn2" },
  "THW-2": { table: "thw", compact: "thwAreaIn2" },
  THHN: { table: "thhn", compact: "thhnAreaIn2" },
  THWN: { table: "thhn", compact: "thhnAreaIn2" },
  "THWN-2": { table: "thhn", compact: "thhnAreaIn2" },
  "THHN/THWN-2": { table: "thhn", compact: "thhnAreaIn2" },
  XHHW: { table: "xhhw", compact: "xhhwAreaIn2" },
  "XHHW-2": { table: "xhhw", compact: "xhhwAreaIn2" },
};
