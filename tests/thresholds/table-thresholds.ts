/**
 * The bounds of the published tables whose rows are ranges: "over 60 through 100", "4 to 3 AWG". Expected: published, the
 * second entry of tests/table-cells, whose rows are searched here anew; each cell is taken from the answer that reads it.
 */
import { existsSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import type { ConductorMetal, Drive, Insulation } from "@landfast/rules";
import { parse } from "csv-parse/sync";
import { celsius, plainRun } from "../worked-cases/plain-run.js";
import { cellRead } from "./asked.js";
import { type EditionName, overNumbers, overWords, ROWS, type Threshold } from "./threshold.js";

const NONE = "none";
const SIZES: readonly string[] = ROWS["conductor size"];

interface Entered {
  readonly columns: readonly string[];
  readonly rows: readonly { readonly ends: readonly [string, string]; readonly cells: readonly string[] }[];
}

/** The second entry of a table of ranges. */
function entered(table: string): Entered {
  const path = fileURLToPath(new URL(`../table-cells/second-entry/${table}.csv`, import.meta.url));
  if (!existsSync(path)) throw new Error(`${table} has no second entry`);
  const [head = [], ...rows]: string[][] = parse(readFileSync(path, "utf8"));
  return {
    columns: head.slice(2),
    rows: rows.map(([from = "", to = "", ...cells]) => ({ ends: [from, to], cells })),
  };
}

function cellOf(
  { columns, rows }: Entered,
  column: string,
  holds: (ends: readonly [string, string]) => boolean,
): string {
  const cell = rows.find(({ ends }) => holds(ends))?.cells[columns.indexOf(column)] ?? "";
  return cell === "" ? NONE : cell;
}

/** Over the first and through the second, either of which may be missing. */
const isWithin = ([over, upTo]: readonly [string, string], value: number): boolean =>
  (over === "" || value > Number(over)) && (upTo === "" || value <= Number(upTo));

interface IntervalTable {
  readonly table: string;
  readonly column: string;
  readonly unit: string;
  readonly step: number;
  /** The smallest value that can be asked. */
  readonly from: number;
  readonly read: (value: number, edition: EditionName) => string;
}

/** One threshold for each bound of the intervals. */
function ofIntervals({ table, column, unit, step, from, read }: IntervalTable): readonly Threshold[] {
  const second = entered(table);
  const bounds = new Set(second.rows.flatMap(({ ends }) => ends.filter((end) => end !== "").map(Number)));
  return [...bounds]
    .sort((a, b) => a - b)
    .flatMap((bound) => {
      const values = [bound - step, bound, bound + step].map((value) => Number(value.toFixed(6)));
      const [under = 0, , over = 0] = values;
      if (under < from) return [];
      const answers = values.map((value) => cellOf(second, column, (ends) => isWithin(ends, value)));
      return [
        overNumbers({
          name: `${table}, ${column}: ${String(bound)} ${unit}`,
          where: [`table ${table} ${String(bound)}`],
          kind: "published",
          source: "the second entry of the table",
          ...(new Set(answers).size === 1 && { level: "the table prints one value on both sides" }),
          unit,
          step,
          values: [under, bound, over],
          answers: answers as unknown as Threshold["answers"],
          ask: read,
        }),
      ];
    });
}

interface SizeTable {
  readonly table: string;
  readonly column: string;
  readonly editions?: readonly EditionName[];
  readonly read: (size: string, edition: EditionName) => string;
}

/** One threshold for the last size of each row; beyond the largest of all sizes there is none to ask for. */
function ofSizes({ table, column, read }: SizeTable): readonly Threshold[] {
  const second = entered(table);
  return second.rows.flatMap(({ ends: [, to] }) => {
    const at = SIZES.indexOf(to);
    const [under, over] = [SIZES[at - 1], SIZES[at + 1]];
    if (under === undefined || over === undefined) return [];
    const values = [under, to, over] as const;
    const answers = values.map((size) =>
      cellOf(second, column, ([first, last]) => {
        const place = SIZES.indexOf(size);
        return SIZES.indexOf(first) <= place && place <= SIZES.indexOf(last);
      }),
    );
    return [
      overWords({
        name: `${table}, ${column}: to ${to}`,
        where: [`table ${table} ${to}`],
        kind: "published",
        source: "the second entry of the table",
        ...(new Set(answers).size === 1 && { level: "the table prints one value on both sides" }),
        unit: "size",
        step: "conductor size",
        values,
        answers: answers as unknown as Threshold["answers"],
        ask: read,
      }),
    ];
  });
}

const AMBIENT: readonly (readonly [column: string, insulation: Insulation])[] = [
  ["t60", "TW"],
  ["t75", "THW"],
  ["t90", "XHHW-2"],
];

/** Supplies whose area lies at, just under and just over a bound: a size in kcmil, or several conductors of one. */
function supplyOf(kcmil: number): { readonly size: string; readonly sets: number } {
  return { size: `${String(kcmil)} kcmil`, sets: 1 };
}

/** The tables by area of the supply: bounds that are sizes in AWG are asked by size, the others by the kcmil. */
function ofSupplies(
  table: string,
  supplyMetal: ConductorMetal,
  calculation: "bonding" | "electrode",
): readonly Threshold[] {
  const second = entered(table);
  const areas = areasOfSizes();
  return (["copper", "aluminum"] as const).flatMap((metal) => {
    const read = (supply: { readonly size: string; readonly sets: number }, edition: EditionName): string => {
      const service = { ...supply, metal: supplyMetal };
      return calculation === "bonding"
        ? cellRead("bonding-jumper", { kind: "main", metal, supply: service }, edition, table).printed
        : cellRead("electrode-conductor", { service, metal, electrode: "water-pipe" }, edition, table).printed;
    };
    const expected = (kcmil: number): string => cellOf(second, metal, (ends) => isWithin(ends, kcmil));
    return second.rows.flatMap(({ ends: [, upTo] }) => {
      if (upTo === "") return [];
      const about = {
        name: `${table}, ${metal}: ${upTo} kcmil`,
        where: [`table ${table} ${upTo}`],
        kind: "published",
        source: "the second entry of the table; areas by the second entry of Chapter 9 Table 8",
      } as const;
      const at = SIZES.findIndex((size) => areas.get(size) === Number(upTo));
      const values = [SIZES[at - 1] ?? "", SIZES[at] ?? "", SIZES[at + 1] ?? ""] as const;
      if (at > 0 && values[1].endsWith("AWG"))
        return [
          overWords({
            ...about,
            unit: "size",
            step: "conductor size",
            values,
            answers: values.map((size) => expected(areas.get(size) ?? Number.NaN)) as unknown as Threshold["answers"],
            ask: (size, edition) => read({ size, sets: 1 }, edition),
          }),
        ];
      const bound = Number(upTo);
      return [
        overNumbers({
          ...about,
          unit: "kcmil",
          step: 1,
          values: [bound - 1, bound, bound + 1],
          answers: [expected(bound - 1), expected(bound), expected(bound + 1)],
          ask: (kcmil, edition) => read(supplyOf(kcmil), edition),
        }),
      ];
    });
  });
}

/** Areas in kcmil by size, of the second entry of Chapter 9 Table 8. */
function areasOfSizes(): ReadonlyMap<string, number> {
  const path = fileURLToPath(new URL("../table-cells/second-entry/conductor-properties-stranded.csv", import.meta.url));
  const [, ...rows]: string[][] = parse(readFileSync(path, "utf8"));
  return new Map(rows.map(([size = "", cmil = ""]) => [size, Number(cmil) / 1000]));
}

const HEADS: readonly (readonly [column: string, drive: Drive])[] = [
  ["slottedSmall", slotted(0.04, 0.2)],
  ["slottedLarge", slotted(0.06, 0.3)],
  ["splitBolt", { kind: "split-bolt" }],
  ["externalHex", { kind: "external-hex" }],
];

function slotted(width: number, length: number): Drive {
  return {
    kind: "slotted",
    screwSize: "10-and-larger",
    slotWidth: { value: width, unit: "in" },
    slotLength: { value: length, unit: "in" },
  };
}

const BENDING = [
  ["bending-opposite", "opposite", "copper", "class-B", 4],
  ["bending-opposite-compact", "opposite", "aluminum", "compact", 4],
  ["bending-side", "side", "copper", "class-B", 5],
  ["bending-side-compact", "side", "aluminum", "compact", 5],
] as const;

export const TABLE_THRESHOLDS: readonly Threshold[] = [
  ...AMBIENT.flatMap(([column, insulation]) =>
    ofIntervals({
      table: "ambient-correction-30c",
      column,
      unit: "Cel",
      step: 0.1,
      from: -273,
      read: (value, edition) => {
        const run = plainRun({ insulation, ambient: celsius(value) });
        return cellRead("ampacity", { size: "1/0 AWG", run }, edition, "ambient-correction-30c").printed;
      },
    }),
  ),
  ...ofIntervals({
    table: "adjustment-factor",
    column: "percent",
    unit: "conductors",
    step: 1,
    from: 1,
    read: (conductors, edition) => {
      const run = plainRun({ grouping: { in: "raceway", conductors } });
      return cellRead("ampacity", { size: "1/0 AWG", run }, edition, "adjustment-factor").printed;
    },
  }),
  ...ofIntervals({
    table: "conduit-fill",
    column: "percent",
    unit: "conductors",
    step: 1,
    from: 1,
    read: (count, edition) =>
      cellRead(
        "raceway-fill",
        {
          ask: "fill",
          raceway: { kind: "EMT", tradeSize: "2" },
          conductors: [{ kind: "conductor", count, size: "12 AWG", insulation: "THHN", stranding: "class-B" }],
        },
        edition,
        "conduit-fill",
      ).printed,
  }),
  ...(["copper", "aluminum"] as const).flatMap((metal) =>
    ofIntervals({
      table: "equipment-ground",
      column: metal,
      unit: "A",
      step: 1,
      from: 1,
      read: (deviceA, edition) => cellRead("equipment-ground", { deviceA, metal }, edition, "equipment-ground").printed,
    }),
  ),
  ...ofSupplies("bonding-jumper-copper-supply", "copper", "bonding"),
  ...ofSupplies("bonding-jumper-aluminum-supply", "aluminum", "bonding"),
  ...ofSupplies("electrode-conductor-copper-service", "copper", "electrode"),
  ...ofSupplies("electrode-conductor-aluminum-service", "aluminum", "electrode"),
  ...HEADS.flatMap(([column, drive]) =>
    ofSizes({
      table: "torque-by-conductor",
      column,
      read: (largestConductor, edition) =>
        cellRead("torque", { drive, marked: "unmarked", largestConductor }, edition, "torque-by-conductor").printed,
    }),
  ),
  ...BENDING.flatMap(([table, entry, metal, stranding, most]) =>
    Array.from({ length: most }, (_, index) => index + 1).flatMap((wiresPerTerminal) =>
      ofSizes({
        table,
        column: `wires${String(wiresPerTerminal)}`,
        read: (size, edition) =>
          cellRead(
            "bending-space",
            { size, metal, stranding, entry, wiresPerTerminal, removableTerminal: false },
            edition,
            table,
          ).printed,
      }),
    ),
  ),
  ...(
    [
      ["copperB", "copper"],
      ["aluminumB", "aluminum"],
    ] as const
  ).flatMap(([column, metal]) =>
    ofSizes({
      table: "stranding",
      column,
      read: (size, edition) => cellRead("strand-class", { size, metal, strands: 5320 }, edition, "stranding").printed,
    }),
  ),
];
