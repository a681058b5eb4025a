import type { CatalogueItem, Connector, Mounting } from "@landfast/rules";
import {
  body,
  COMMON_STRANDS,
  cost,
  type DriveWord,
  headText,
  INSIDE,
  inventedPart,
  numbering,
  pad,
  printedTemperature,
  range,
  screw,
  sizes,
  strip,
  TO_BURIAL,
  TO_DAMP,
} from "./invented-part.js";

type Row = readonly [
  from: string,
  to: string,
  marking: string,
  drive: DriveWord,
  torqueLbfIn: number | null,
  holes: string,
  stripIn: number | null,
  more?: Partial<Connector> & { readonly note?: string },
];

const AL9 = "AL9CU";
const AL7 = "AL7CU";
const CU = "CU";

const ONE_HOLE: readonly Row[] = [
  ["14 AWG", "8 AWG", AL9, "slot", null, "1/4", 0.375],
  ["14 AWG", "4 AWG", AL9, "slot", 35, "1/4", 0.5],
  ["14 AWG", "1/0 AWG", AL9, "3/16", null, "1/4", 0.625],
  ["14 AWG", "1/0 AWG", AL9, "3/16", 120, "5/16", 0.625],
  ["6 AWG", "2/0 AWG", AL9, "1/4", null, "3/8", 0.75],
  ["6 AWG", "250 kcmil", AL9, "5/16", null, "3/8", 1],
  ["6 AWG", "250 kcmil", AL9, "5/16", 275, "1/2", 1],
  ["4 AWG", "300 kcmil", AL9, "5/16", 275, "3/8", 1.125],
  ["1/0 AWG", "300 kcmil", AL9, "5/16", null, "3/8", 1.125],
  ["4 AWG", "350 kcmil", AL9, "5/16", 275, "1/2", 1.25],
  ["2 AWG", "600 kcmil", AL9, "3/8", 375, "1/2", 1.375],
  ["250 kcmil", "600 kcmil", AL9, "1/2", null, "1/2", 1.5],
  ["300 kcmil", "800 kcmil", AL9, "1/2", 500, "5/8", 1.625],
  ["500 kcmil", "1000 kcmil", AL9, "9/16", null, "5/8", null],
  ["14 AWG", "1/0 AWG", AL7, "3/16", 120, "1/4", 0.625],
  ["6 AWG", "250 kcmil", AL7, "5/16", 275, "3/8", 1],
  ["250 kcmil", "500 kcmil", AL7, "3/8", null, "1/2", null],
  ["14 AWG", "6 AWG", CU, "slot", null, "1/4", 0.5],
  ["14 AWG", "4 AWG", CU, "slotted hex", null, "1/4", 0.5],
  ["8 AWG", "1/0 AWG", CU, "3/16", 120, "5/16", 0.625],
  ["4 AWG", "4/0 AWG", CU, "hex", null, "3/8", null],
  ["2/0 AWG", "350 kcmil", CU, "5/16", 275, "1/2", 1.25],
  ["250 kcmil", "500 kcmil", CU, "hex", null, "1/2", 1.375],
  // Deliberate limits: no temperature printed; no metal marking at all; nothing known of listing or place.
  ["8 AWG", "2/0 AWG", CU, "1/4", 200, "3/8", 0.75, { temperature: "unmarked", note: "no temperature mark" }],
  ["6 AWG", "1/0 AWG", "unmarked", "1/4", null, "5/16", null, { note: "no metal mark" }],
  ["6 AWG", "1/0 AWG", CU, "1/4", null, "3/8", null, { note: "bonding lug, no listing stated" }],
  // The answers to them: one for flexible cable, one for metric flexible conductors, one for a wet well.
  ["2 AWG", "250 kcmil", CU, "5/16", 275, "3/8", 1.125, { note: "with a pressure plate for flexible cable" }],
  ["6 AWG", "2/0 AWG", AL9, "1/4", 200, "3/8", 0.75, { note: "also listed for 16 mm2 to 70 mm2" }],
  ["6 AWG", "1/0 AWG", CU, "1/4", 200, "3/8", 0.75, { note: "heavy tin, stated for hydrogen sulfide" }],
  ["8 AWG", "4/0 AWG", CU, "hex", null, "3/8", 1, { note: "bronze, direct burial" }],
];

const TWO_HOLE: readonly Row[] = [
  ["2 AWG", "4/0 AWG", AL9, "1/4", 200, "2 x 3/8 @ 1", 1],
  ["2 AWG", "350 kcmil", AL9, "5/16", 275, "2 x 1/2 @ 1.75", 1.25],
  ["1/0 AWG", "300 kcmil", AL9, "5/16", null, "2 x 3/8 @ 1", 1.125],
  ["250 kcmil", "600 kcmil", AL9, "3/8", 375, "2 x 1/2 @ 1.75", 1.5],
  ["250 kcmil", "600 kcmil", AL9, "1/2", null, "2 x 1/2 @ 1.75", 1.5],
  ["350 kcmil", "800 kcmil", AL9, "1/2", 500, "2 x 1/2 @ 1.75", 1.625],
  ["500 kcmil", "1000 kcmil", AL9, "9/16", 600, "2 x 1/2 @ 1.75", null],
  ["250 kcmil", "600 kcmil", AL7, "3/8", null, "2 x 1/2 @ 1.75", 1.5],
  ["2 AWG", "4/0 AWG", CU, "hex", null, "2 x 3/8 @ 1", 1],
  ["1/0 AWG", "350 kcmil", CU, "5/16", 275, "2 x 1/2 @ 1.75", 1.25],
  ["250 kcmil", "500 kcmil", CU, "3/8", 375, "2 x 1/2 @ 1.75", 1.375],
  ["400 kcmil", "750 kcmil", CU, "1/2", 500, "2 x 1/2 @ 1.75", null],
  ["250 kcmil", "600 kcmil", AL9, "3/8", 375, "2 x 1/2 @ 1.75", 1.5, { lineSide: "marked", note: "line side" }],
  ["500 kcmil", "1000 kcmil", AL9, "9/16", 600, "2 x 1/2 @ 1.75", 1.75, { lineSide: "marked", note: "line side" }],
];

/** Lugs whose screw presses on the conductor, with one or two holes in the tongue. */
export function setScrewLugs(): CatalogueItem[] {
  const one = numbering("LUG", 101);
  const two = numbering("LUG", 201);
  return [
    ...ONE_HOLE.map((row) => inventedPart(one, lug("set-screw-lug-one-hole", row))),
    ...TWO_HOLE.map((row) => inventedPart(two, lug("set-screw-lug-two-hole", row))),
  ];
}

function lug(
  family: "set-screw-lug-one-hole" | "set-screw-lug-two-hole",
  [from, to, marking, drive, torque, holes, stripIn, more = {}]: Row,
): Omit<CatalogueItem, "status" | "partNumber"> {
  const { note, ...changed } = more;
  const holeWord = family === "set-screw-lug-one-hole" ? "one hole" : "two holes";
  const base = {
    description: `set-screw lug, ${holeWord}, ${sizes(from, to)}, ${marking}, ${holes} in, ${headText(drive)}${note === undefined ? "" : `, ${note}`}`,
    family,
    construction: "set-screw",
    functions: ["termination"],
    metalMarking: marking,
    ...(marking === CU ? printedTemperature(90) : {}),
    voltageV: 600,
    insulated: false,
    openingsApart: true,
    listings: [{ standard: "UL 486A-486B" }],
    places: INSIDE,
    lineSide: "unmarked",
    screws: [screw("main", drive, torque)],
    openings: [
      { id: "barrel", count: 1, ranges: [range(from, to)], conductorsMax: 1, screw: "main", ...strip(stripIn) },
    ],
    mounting: pad(holes),
    reusable: true,
    ...body(marking),
    packQuantity: to.endsWith("AWG") ? 25 : 6,
    ...cost(to, family === "set-screw-lug-one-hole" ? 180 : 420, marking === CU ? 9 : 5, 0.15),
  } as const satisfies Omit<CatalogueItem, "status" | "partNumber">;
  return special(note, { ...base, ...changed });
}

/** What the remark on a row means for its listing. */
function special(
  note: string | undefined,
  part: Omit<CatalogueItem, "status" | "partNumber">,
): Omit<CatalogueItem, "status" | "partNumber"> {
  const [opening] = part.openings;
  const [first] = opening?.ranges ?? [];
  if (opening === undefined || first === undefined) return part;
  switch (note) {
    case "no metal mark": {
      const { bodyMetal: _metal, plating: _plating, ...plain } = part;
      return plain;
    }
    case "bonding lug, no listing stated": {
      const { places: _places, plating: _plating, temperature: _temperature, ...plain } = part;
      return { ...plain, listings: [] };
    }
    case "with a pressure plate for flexible cable":
      return {
        ...part,
        openings: [
          {
            ...opening,
            ranges: [
              { ...first, strandings: [...COMMON_STRANDS, "class-D", "class-G", "class-H", "class-I", "class-K"] },
            ],
          },
        ],
      };
    case "also listed for 16 mm2 to 70 mm2":
      return {
        ...part,
        openings: [
          {
            ...opening,
            ranges: [first, range("16 mm2", "70 mm2", ["iec-class-1", "iec-class-2", "iec-class-5"])],
          },
        ],
      };
    case "heavy tin, stated for hydrogen sulfide":
      return {
        ...part,
        listings: [...part.listings, { standard: "UL 467" }],
        places: [...TO_DAMP, "wet"],
        withstands: ["hydrogen sulfide"],
        grounding: { listed: true, electrodes: [], conductorsPerClamp: 1 },
      };
    case "bronze, direct burial":
      return {
        ...part,
        listings: [...part.listings, { standard: "UL 467" }],
        places: TO_BURIAL,
        bodyMetal: "bronze",
        plating: "none",
        grounding: { listed: true, electrodes: [], conductorsPerClamp: 1 },
      };
    default:
      return part;
  }
}

type BarrelRow = readonly [
  barrels: number,
  from: string,
  to: string,
  marking: string,
  drive: DriveWord,
  torqueLbfIn: number | null,
  mounting: Mounting,
  words: string,
];

const ON_PAD = (holes: string): Mounting => pad(holes);
const ON_FRAME = (...frames: string[]): Mounting => ({ kind: "frame", frames });

const BARRELS: readonly BarrelRow[] = [
  [2, "6 AWG", "250 kcmil", AL9, "5/16", 275, ON_PAD("3/8"), "pad mounted"],
  [2, "1/0 AWG", "300 kcmil", AL9, "5/16", 275, ON_PAD("1/2"), "pad mounted"],
  [2, "250 kcmil", "600 kcmil", AL9, "3/8", 375, ON_PAD("2 x 1/2 @ 1.75"), "pad mounted"],
  [2, "250 kcmil", "600 kcmil", AL9, "1/2", null, ON_PAD("2 x 1/2 @ 1.75"), "pad mounted"],
  [2, "300 kcmil", "800 kcmil", AL9, "1/2", 500, ON_PAD("2 x 1/2 @ 1.75"), "pad mounted"],
  [3, "3/0 AWG", "400 kcmil", AL9, "3/8", 375, ON_PAD("2 x 1/2 @ 1.75"), "pad mounted"],
  [3, "250 kcmil", "600 kcmil", AL9, "3/8", 375, ON_PAD("2 x 1/2 @ 1.75"), "pad mounted"],
  [3, "300 kcmil", "800 kcmil", AL9, "1/2", null, ON_PAD("2 x 1/2 @ 1.75"), "pad mounted"],
  [2, "1/0 AWG", "350 kcmil", AL9, "5/16", 275, ON_FRAME("Tarnbeck pedestal"), "for a loop-fed pedestal"],
  [2, "6 AWG", "350 kcmil", AL9, "5/16", 275, ON_FRAME("Tarnbeck 400"), "equipment mounted"],
  [3, "3/0 AWG", "500 kcmil", AL9, "3/8", 375, ON_FRAME("Tarnbeck 800"), "equipment mounted"],
  [2, "2/0 AWG", "500 kcmil", CU, "3/8", 375, ON_PAD("2 x 1/2 @ 1.75"), "pad mounted"],
  [3, "2/0 AWG", "500 kcmil", CU, "3/8", null, ON_PAD("2 x 1/2 @ 1.75"), "pad mounted"],
  [3, "1/0 AWG", "250 kcmil", AL7, "5/16", 275, ON_PAD("1/2"), "pad mounted"],
];

/** Lugs with two or three barrels side by side. */
export function multiBarrelLugs(): CatalogueItem[] {
  const number = numbering("BARREL", 101);
  return BARRELS.map(([barrels, from, to, marking, drive, torque, mounting, words]) =>
    inventedPart(number, {
      description: `set-screw lug, ${barrels} barrels, ${sizes(from, to)}, ${marking}, ${words}, ${headText(drive)}`,
      family: "multi-barrel-lug",
      construction: "set-screw",
      functions: ["termination"],
      metalMarking: marking,
      ...(marking === CU ? printedTemperature(90) : {}),
      voltageV: 600,
      insulated: false,
      openingsApart: true,
      listings: [{ standard: "UL 486A-486B" }],
      places: INSIDE,
      lineSide: "unmarked",
      screws: [screw("main", drive, torque)],
      openings: [
        { id: "barrel", count: barrels, ranges: [range(from, to)], conductorsMax: 1, screw: "main", ...strip(1.25) },
      ],
      mounting,
      reusable: true,
      ...body(marking),
      packQuantity: 3,
      ...cost(to, 600 * barrels, (marking === CU ? 9 : 5) * barrels, 0.2),
    }),
  );
}

type KitRow = readonly [
  frames: readonly string[],
  from: string,
  to: string,
  marking: string,
  drive: DriveWord,
  torqueLbfIn: number | null,
  barrels: number,
];

const KITS: readonly KitRow[] = [
  [["Tarnbeck 125"], "14 AWG", "1/0 AWG", AL7, "3/16", 120, 1],
  [["Tarnbeck 125"], "8 AWG", "2/0 AWG", AL9, "1/4", 200, 1],
  [["Tarnbeck 200"], "6 AWG", "3/0 AWG", AL7, "1/4", 200, 1],
  [["Tarnbeck 200"], "4 AWG", "250 kcmil", AL9, "5/16", 275, 1],
  [["Tarnbeck 225"], "4 AWG", "350 kcmil", AL9, "5/16", 275, 1],
  [["Tarnbeck 225"], "2 AWG", "300 kcmil", CU, "5/16", 275, 1],
  [["Tarnbeck 400"], "250 kcmil", "600 kcmil", AL9, "3/8", 375, 1],
  [["Tarnbeck 400"], "3/0 AWG", "250 kcmil", AL9, "5/16", 275, 2],
  [["Tarnbeck 600", "Tarnbeck 800"], "2/0 AWG", "500 kcmil", AL9, "3/8", 375, 2],
  [["Tarnbeck 800"], "3/0 AWG", "400 kcmil", AL9, "3/8", 375, 3],
  [["Tarnbeck 1200"], "250 kcmil", "600 kcmil", AL9, "1/2", 500, 3],
  [["Tarnbeck 600"], "2/0 AWG", "400 kcmil", CU, "3/8", null, 2],
];

/** Field-fitted lugs, each for the breaker or switch frames it names. */
export function lugKits(): CatalogueItem[] {
  const number = numbering("KIT", 101);
  return KITS.map(([frames, from, to, marking, drive, torque, barrels]) =>
    inventedPart(number, {
      description: `lug kit for frame ${frames.join(" or ")}, ${barrels === 1 ? "one conductor" : `${barrels} conductors`}, ${sizes(from, to)}, ${marking}`,
      family: "lug-kit",
      construction: "set-screw",
      functions: ["termination"],
      metalMarking: marking,
      ...(marking === CU ? printedTemperature(75) : {}),
      voltageV: 600,
      insulated: false,
      openingsApart: true,
      listings: [{ standard: "UL 486E" }],
      places: INSIDE,
      lineSide: "unmarked",
      screws: [screw("main", drive, torque)],
      openings: [
        { id: "barrel", count: barrels, ranges: [range(from, to)], conductorsMax: 1, screw: "main", ...strip(1) },
      ],
      mounting: { kind: "frame", frames },
      reusable: true,
      ...body(marking),
      packQuantity: 3,
      ...cost(to, 1400 * barrels, 8 * barrels, 0.25),
    }),
  );
}
