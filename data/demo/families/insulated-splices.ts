import type { CatalogueItem, Connector, Opening, PlaceListing } from "@landfast/rules";
import {
  body,
  cost,
  DRY,
  type DriveWord,
  inventedPart,
  numbering,
  printedTemperature,
  range,
  screw,
  sizes,
  strip,
  TO_BURIAL,
  TO_DAMP,
  TO_WET,
} from "./invented-part.js";

type Part = Omit<CatalogueItem, "status" | "partNumber">;

/** What all barrels-in-a-body splices have alike. */
function splice(
  marking: string,
  places: readonly PlaceListing[],
  voltageV: number,
): Omit<Part, "description" | "family" | "screws" | "openings" | "packQuantity"> {
  return {
    construction: "set-screw",
    functions: ["splice"],
    metalMarking: marking,
    ...(marking === "CU" ? printedTemperature(90) : {}),
    voltageV,
    insulated: true,
    openingsApart: true,
    listings: [{ standard: "UL 486A-486B" }],
    places,
    lineSide: "unmarked",
    mounting: { kind: "free" },
    reusable: true,
    ...body(marking),
  };
}

function barrels(
  id: string,
  count: number,
  from: string,
  to: string,
  stripIn: number | null,
  screwId = "main",
): Opening {
  return { id, count, ranges: [range(from, to)], conductorsMax: 1, screw: screwId, ...strip(stripIn) };
}

type InLineRow = readonly [
  from: string,
  to: string,
  marking: string,
  drive: DriveWord,
  torqueLbfIn: number | null,
  places: readonly PlaceListing[],
  voltageV: number,
  stripIn: number | null,
  bareCover?: string,
];

const IN_LINE: readonly InLineRow[] = [
  ["14 AWG", "6 AWG", "AL9CU", "slot", null, DRY, 600, 0.5],
  ["14 AWG", "2 AWG", "AL9CU", "5/32", 100, DRY, 600, 0.625],
  ["6 AWG", "1/0 AWG", "AL9CU", "3/16", null, DRY, 600, 0.75],
  ["6 AWG", "4/0 AWG", "AL9CU", "1/4", 200, TO_DAMP, 600, 0.875],
  ["1/0 AWG", "350 kcmil", "AL9CU", "5/16", null, DRY, 600, 1.125],
  ["1/0 AWG", "350 kcmil", "AL7CU", "5/16", null, DRY, 600, 1.125],
  ["250 kcmil", "500 kcmil", "AL9CU", "3/8", 375, DRY, 600, 1.375],
  ["350 kcmil", "750 kcmil", "AL9CU", "1/2", 500, DRY, 600, 1.5],
  ["500 kcmil", "1000 kcmil", "AL9CU", "9/16", null, DRY, 600, null],
  ["4 AWG", "250 kcmil", "AL9CU", "5/16", 275, DRY, 1000, 1],
  ["250 kcmil", "600 kcmil", "AL9CU", "3/8", 375, TO_DAMP, 1000, 1.375],
  ["14 AWG", "6 AWG", "CU", "slot", 35, DRY, 300, 0.5],
  ["14 AWG", "1/0 AWG", "CU", "3/16", 120, DRY, 600, 0.75],
  ["2 AWG", "4/0 AWG", "CU", "1/4", 200, DRY, 600, null],
  ["6 AWG", "250 kcmil", "AL9CU", "5/16", 275, DRY, 600, 1, "LF-COVER-0101"],
  ["250 kcmil", "750 kcmil", "AL9CU", "1/2", null, DRY, 600, 1.5, "LF-COVER-0102"],
];

/** Straight splices with one barrel at each end; the last rows are bare and have a cover of their own. */
export function inLineSplices(): CatalogueItem[] {
  const number = numbering("SPLICE", 101);
  return IN_LINE.map(([from, to, marking, drive, torque, places, voltageV, stripIn, bareCover]) =>
    inventedPart(number, {
      description: `${bareCover === undefined ? "insulated" : "bare"} in-line splice, ${sizes(from, to)}, ${marking}`,
      family: "in-line-splice",
      ...splice(marking, places, voltageV),
      ...(bareCover === undefined ? {} : { insulated: false, coverPart: bareCover }),
      screws: [screw("main", drive, torque)],
      openings: [barrels("barrel", 2, from, to, stripIn)],
      packQuantity: 6,
      ...cost(to, 650, 7, 0.35),
    }),
  );
}

type ReducerRow = readonly [
  largeFrom: string,
  largeTo: string,
  smallFrom: string,
  smallTo: string,
  marking: string,
  drive: DriveWord,
  torqueLbfIn: number | null,
  places: readonly PlaceListing[],
];

const REDUCERS: readonly ReducerRow[] = [
  ["4 AWG", "1/0 AWG", "14 AWG", "4 AWG", "AL9CU", "3/16", 120, DRY],
  ["1/0 AWG", "4/0 AWG", "6 AWG", "1/0 AWG", "AL9CU", "1/4", 200, DRY],
  ["3/0 AWG", "350 kcmil", "4 AWG", "3/0 AWG", "AL9CU", "5/16", 275, DRY],
  ["3/0 AWG", "250 kcmil", "6 AWG", "3/0 AWG", "AL9CU", "5/16", null, DRY],
  ["250 kcmil", "500 kcmil", "4 AWG", "250 kcmil", "AL9CU", "3/8", null, DRY],
  ["250 kcmil", "500 kcmil", "2/0 AWG", "350 kcmil", "AL9CU", "3/8", 375, TO_DAMP],
  ["500 kcmil", "750 kcmil", "250 kcmil", "500 kcmil", "AL9CU", "1/2", 500, DRY],
  ["500 kcmil", "1000 kcmil", "4/0 AWG", "600 kcmil", "AL9CU", "9/16", null, DRY],
  ["250 kcmil", "500 kcmil", "4 AWG", "250 kcmil", "AL7CU", "3/8", 375, DRY],
  ["2 AWG", "4/0 AWG", "10 AWG", "2 AWG", "CU", "1/4", null, DRY],
];

/** Splices from a large conductor to a smaller stub, each in its own barrel. */
export function splicerReducers(): CatalogueItem[] {
  const number = numbering("REDUCE", 101);
  return REDUCERS.map(([largeFrom, largeTo, smallFrom, smallTo, marking, drive, torque, places]) =>
    inventedPart(number, {
      description: `insulated splicer-reducer, ${sizes(largeFrom, largeTo)} on ${sizes(smallFrom, smallTo)}, ${marking}`,
      family: "splicer-reducer",
      ...splice(marking, places, 600),
      screws: [screw("large", drive, torque), screw("small", drive, torque)],
      openings: [
        barrels("large", 1, largeFrom, largeTo, 1.375, "large"),
        barrels("small", 1, smallFrom, smallTo, 1, "small"),
      ],
      compound: marking === "CU" ? "not-needed" : "required",
      packQuantity: 3,
      ...cost(largeTo, 1100, 8, 0.4),
    }),
  );
}

type BlockRow = readonly [
  from: string,
  to: string,
  marking: string,
  drive: DriveWord,
  torqueLbfIn: number | null,
  ports: readonly number[],
  places: readonly PlaceListing[],
  stripIn: number | null,
];

const BLOCKS: readonly BlockRow[] = [
  ["14 AWG", "4 AWG", "AL9CU", "slot", null, [2, 3, 4, 6], DRY, 0.5],
  ["14 AWG", "2 AWG", "AL9CU", "5/32", null, [2, 3, 4, 6], DRY, 0.625],
  ["10 AWG", "1/0 AWG", "AL9CU", "3/16", 120, [2, 3, 4], DRY, 0.75],
  ["6 AWG", "250 kcmil", "AL9CU", "5/16", 275, [2, 3, 4, 6], DRY, 1],
  ["4 AWG", "350 kcmil", "AL9CU", "5/16", null, [2, 3, 4, 6], DRY, 1.125],
  ["2/0 AWG", "500 kcmil", "AL9CU", "3/8", 375, [2, 3, 4], DRY, 1.375],
  ["250 kcmil", "750 kcmil", "AL9CU", "1/2", null, [3, 4], DRY, null],
  ["14 AWG", "4 AWG", "CU", "slot", 35, [2, 3], DRY, 0.5],
];

/** Insulated blocks: every conductor in a port of its own. */
export function multiTapBlocks(): CatalogueItem[] {
  const number = numbering("BLOCK", 101);
  return BLOCKS.flatMap(([from, to, marking, drive, torque, ports, places, stripIn]) =>
    ports.map((count) =>
      inventedPart(number, {
        description: `insulated multi-tap block, ${count} ports, ${sizes(from, to)}, ${marking}`,
        family: "multi-tap-block",
        ...splice(marking, places, 600),
        functions: ["splice", "tap"],
        screws: [screw("port", drive, torque)],
        openings: [barrels("port", count, from, to, stripIn, "port")],
        packQuantity: 6,
        ...cost(to, 300 + 220 * count, 2.5 * count, 0.1 + 0.1 * count),
      }),
    ),
  );
}

const DISTRIBUTION: readonly (readonly [
  from: string,
  to: string,
  drive: DriveWord,
  torqueLbfIn: number | null,
  taps: number,
])[] = [
  ["2 AWG", "250 kcmil", "5/16", 275, 4],
  ["1/0 AWG", "500 kcmil", "3/8", 375, 6],
  ["4 AWG", "3/0 AWG", "1/4", 200, 3],
];

/** Blocks that are fixed in a wireway or a box: one port for the line, several for what leaves it. */
export function distributionBlocks(): CatalogueItem[] {
  const number = numbering("DIST", 101);
  return DISTRIBUTION.map(([from, to, drive, torque, taps]) =>
    inventedPart(number, {
      description: `insulated distribution block, line ${sizes(from, to)}, ${String(taps)} taps, AL9CU`,
      family: "power-distribution-block",
      ...splice("AL9CU", DRY, 600),
      functions: ["splice", "tap"],
      lineSide: "marked",
      screws: [screw("line", drive, torque), screw("load", "slot", 35)],
      openings: [barrels("line", 1, from, to, 1.25, "line"), barrels("load", taps, "14 AWG", "4 AWG", 0.75, "load")],
      packQuantity: 1,
      ...cost(to, 2400 + 300 * taps, 4 * taps, 0.3 + 0.1 * taps),
    }),
  );
}

type SealedRow = readonly [
  family: "sealed-splice" | "sealed-multi-tap" | "direct-burial-splice",
  ports: number,
  from: string,
  to: string,
  marking: string,
  drive: DriveWord,
  torqueLbfIn: number | null,
];

const SEALED: readonly SealedRow[] = [
  ["sealed-splice", 2, "14 AWG", "4 AWG", "AL9CU", "slot", null],
  ["sealed-splice", 2, "6 AWG", "1/0 AWG", "AL9CU", "3/16", null],
  ["sealed-splice", 2, "2 AWG", "4/0 AWG", "AL9CU", "1/4", 200],
  ["sealed-splice", 2, "1/0 AWG", "350 kcmil", "AL9CU", "5/16", 275],
  ["sealed-splice", 2, "250 kcmil", "600 kcmil", "AL9CU", "3/8", 375],
  ["sealed-multi-tap", 3, "14 AWG", "2 AWG", "AL9CU", "5/32", null],
  ["sealed-multi-tap", 4, "14 AWG", "2 AWG", "AL9CU", "5/32", null],
  ["sealed-multi-tap", 6, "14 AWG", "2 AWG", "AL9CU", "5/32", 100],
  ["sealed-multi-tap", 3, "6 AWG", "350 kcmil", "AL9CU", "5/16", 275],
  ["sealed-multi-tap", 4, "6 AWG", "350 kcmil", "AL9CU", "5/16", 275],
  ["sealed-multi-tap", 4, "250 kcmil", "500 kcmil", "AL9CU", "3/8", null],
  ["direct-burial-splice", 2, "14 AWG", "8 AWG", "AL9CU", "slot", 35],
  ["direct-burial-splice", 2, "6 AWG", "1/0 AWG", "AL9CU", "3/16", null],
  ["direct-burial-splice", 2, "2 AWG", "4/0 AWG", "AL9CU", "1/4", 200],
  ["direct-burial-splice", 2, "1/0 AWG", "350 kcmil", "AL9CU", "5/16", 275],
  ["direct-burial-splice", 2, "250 kcmil", "750 kcmil", "AL9CU", "1/2", 500],
  ["direct-burial-splice", 3, "6 AWG", "250 kcmil", "AL9CU", "5/16", 275],
];

const SEALED_WORDS = {
  "sealed-splice": "sealed in-line splice, wet places",
  "sealed-multi-tap": "sealed multi-tap",
  "direct-burial-splice": "sealed splice kit for direct burial",
} as const;

/** Sealed systems for wet places and for the earth. */
export function sealedSplices(): CatalogueItem[] {
  const numbers = {
    "sealed-splice": numbering("SEAL", 101),
    "sealed-multi-tap": numbering("SEAL", 201),
    "direct-burial-splice": numbering("BURY", 101),
  };
  return SEALED.map(([family, ports, from, to, marking, drive, torque]) =>
    inventedPart(numbers[family], {
      description: `${SEALED_WORDS[family]}, ${ports} ports, ${sizes(from, to)}`,
      family,
      ...splice(marking, family === "direct-burial-splice" ? TO_BURIAL : TO_WET, 600),
      functions: ports === 2 ? ["splice"] : ["splice", "tap"],
      listings: [{ standard: "UL 486D" }],
      screws: [screw("port", drive, torque)],
      openings: [barrels("port", ports, from, to, to === "600 kcmil" ? null : 0.75, "port")],
      reusable: family !== "direct-burial-splice",
      compound: "pre-filled",
      packQuantity: 4,
      ...cost(to, 900 + 300 * ports, 4 * ports, 0.3 + 0.1 * ports),
    }),
  );
}

type TwistRow = readonly [
  from: string,
  to: string,
  places: readonly PlaceListing[],
  voltageV: number,
  combinations: readonly string[],
];

// Each combination lists conductors that share one body: "1x12 1x14".
const TWIST: readonly TwistRow[] = [
  ["18 AWG", "14 AWG", TO_DAMP, 300, ["2x18", "3x18", "2x16", "2x14", "1x14 1x16", "1x14 1x18"]],
  ["16 AWG", "12 AWG", TO_DAMP, 600, ["2x14", "3x14", "2x12", "1x12 1x14", "1x12 2x14", "1x14 2x16"]],
  [
    "14 AWG",
    "10 AWG",
    TO_DAMP,
    600,
    ["2x14", "3x14", "4x14", "2x12", "3x12", "1x12 1x14", "1x12 2x14", "2x12 1x14", "2x10", "1x10 1x12", "1x10 1x14"],
  ],
  [
    "14 AWG",
    "10 AWG",
    DRY,
    600,
    ["2x14", "3x14", "4x14", "2x12", "3x12", "4x12", "1x12 1x14", "2x12 2x14", "2x10", "1x10 1x12", "1x10 2x12"],
  ],
  [
    "14 AWG",
    "8 AWG",
    TO_WET,
    600,
    ["2x14", "3x14", "2x12", "3x12", "4x12", "1x10 1x12", "2x10", "3x10", "1x10 2x12", "2x8", "1x8 1x10", "1x8 1x12"],
  ],
  ["14 AWG", "10 AWG", TO_BURIAL, 600, ["2x14", "3x14", "2x12", "3x12", "1x12 1x14", "2x10", "1x10 1x12"]],
  [
    "12 AWG",
    "8 AWG",
    DRY,
    600,
    ["3x12", "4x12", "5x12", "6x12", "2x10", "3x10", "4x10", "5x10", "2x8", "3x8", "1x8 2x10", "1x10 3x12"],
  ],
  [
    "12 AWG",
    "6 AWG",
    DRY,
    600,
    ["3x10", "4x10", "5x10", "2x8", "3x8", "4x8", "2x6", "1x6 1x8", "1x6 2x10", "2x8 2x10"],
  ],
];

const PLACE_WORDS = ["dry places", "to damp places", "to wet places", "to direct burial"];

/** Turned on by hand; only the combinations of the package are listed. */
export function twistOnSplices(): CatalogueItem[] {
  const number = numbering("TWIST", 101);
  return TWIST.map(([from, to, places, voltageV, combinations]) =>
    inventedPart(number, {
      description: `twist-on splice, ${sizes(from, to)}, ${places.includes("wet") ? "filled" : "plain"}, ${PLACE_WORDS[places.length - 1] ?? "dry places"}, ${voltageV} V`,
      family: "twist-on",
      construction: "twist-on",
      functions: ["splice"],
      metalMarking: "CU",
      ...printedTemperature(voltageV === 300 ? 75 : 90),
      voltageV,
      insulated: true,
      openingsApart: false,
      listings: [{ standard: places.includes("wet") ? "UL 486D" : "UL 486C" }],
      places,
      screws: [{ id: "shell", drive: { kind: "hand" } }],
      openings: [
        {
          id: "shell",
          count: 1,
          ranges: [range(from, to)],
          conductorsMax: Math.max(...combinations.map(countOf)),
          shared: { sameSize: false, sameMetal: true, metals: ["copper"] },
          combinations: combinations.map(combinationOf),
          screw: "shell",
          ...strip(0.5),
        },
      ],
      mounting: { kind: "free" },
      reusable: false,
      packQuantity: 100,
      ...cost(to, places.includes("wet") ? 60 : 14, 1, 0.05),
    }),
  );
}

function combinationOf(text: string): { size: string; count: number }[] {
  return text.split(" ").map((part) => {
    const [count, gauge] = part.split("x");
    return { size: `${String(gauge)} AWG`, count: Number(count) };
  });
}

function countOf(text: string): number {
  return combinationOf(text).reduce((sum, { count }) => sum + count, 0);
}

type SpringRow = readonly [
  family: "lever-splice" | "spring-clamp-splice",
  ports: number,
  from: string,
  to: string,
  voltageV: number,
  places: readonly PlaceListing[],
  stripIn: number | null,
  flexible: boolean,
];

const SPRUNG: readonly SpringRow[] = [
  ["lever-splice", 2, "14 AWG", "12 AWG", 600, DRY, 0.4, true],
  ["lever-splice", 3, "14 AWG", "12 AWG", 600, DRY, 0.4, true],
  ["lever-splice", 5, "14 AWG", "12 AWG", 600, DRY, 0.4, true],
  ["lever-splice", 2, "14 AWG", "10 AWG", 600, DRY, 0.45, true],
  ["lever-splice", 3, "14 AWG", "10 AWG", 600, TO_DAMP, 0.45, true],
  ["lever-splice", 3, "18 AWG", "12 AWG", 300, DRY, null, true],
  ["spring-clamp-splice", 2, "14 AWG", "12 AWG", 300, DRY, 0.4, false],
  ["spring-clamp-splice", 4, "14 AWG", "12 AWG", 300, DRY, 0.4, false],
  ["spring-clamp-splice", 2, "14 AWG", "12 AWG", 600, DRY, 0.4, false],
  ["spring-clamp-splice", 3, "14 AWG", "12 AWG", 600, DRY, 0.4, false],
  ["spring-clamp-splice", 6, "14 AWG", "12 AWG", 600, DRY, null, false],
];

/** Copper only, one conductor to a port, held by a spring. */
export function springSplices(): CatalogueItem[] {
  const numbers = { "lever-splice": numbering("LEVER", 101), "spring-clamp-splice": numbering("SPRING", 101) };
  return SPRUNG.map(([family, ports, from, to, voltageV, places, stripIn, flexible]) =>
    inventedPart(numbers[family], {
      description: `${family === "lever-splice" ? "lever" : "spring-clamp"} splice, ${ports} ports, ${sizes(from, to)}, ${voltageV} V`,
      family,
      construction: "spring",
      functions: ["splice", "tap"],
      metalMarking: "CU",
      ...printedTemperature(90),
      voltageV,
      insulated: true,
      openingsApart: true,
      listings: [{ standard: "UL 486C" }],
      places,
      screws: [{ id: "spring", drive: { kind: "none" } }],
      openings: [
        {
          id: "port",
          count: ports,
          ranges: [
            range(
              from,
              to,
              flexible ? ["solid", "class-B", "class-C", "class-I", "class-K"] : ["solid", "class-B", "class-C"],
            ),
          ],
          conductorsMax: 1,
          screw: "spring",
          ...strip(stripIn),
        },
      ],
      mounting: { kind: "free" },
      reusable: family === "lever-splice",
      packQuantity: 50,
      ...cost(to, 20 + 9 * ports, 2, 0.02 + 0.02 * ports),
    }),
  );
}

type IntermixRow = readonly [from: string, to: string, most: number, voltageV: number, torqueLbfIn: number | null];

const INTERMIX: readonly IntermixRow[] = [
  ["12 AWG", "10 AWG", 3, 600, 15],
  ["12 AWG", "10 AWG", 2, 600, 10],
  ["14 AWG", "10 AWG", 3, 300, null],
];

/** Marked for copper and aluminum in one opening, in dry places. */
export function intermixSplices(): CatalogueItem[] {
  const number = numbering("MIX", 101);
  return INTERMIX.map(([from, to, most, voltageV, torque]) =>
    inventedPart(number, {
      description: `splice for aluminum with copper, up to ${most} conductors, ${sizes(from, to)}`,
      family: "intermix-splice",
      construction: "set-screw",
      functions: ["splice"],
      metalMarking: "AL-CU-INTERMIX-DRY",
      ...printedTemperature(90),
      voltageV,
      insulated: true,
      openingsApart: false,
      listings: [{ standard: "UL 486C" }],
      places: DRY,
      screws: [screw("main", "slot", torque)],
      openings: [
        {
          id: "chamber",
          count: 1,
          ranges: [range(from, to, ["solid", "class-B", "class-C"])],
          conductorsMax: most,
          shared: { sameSize: false, sameMetal: false, metals: ["copper", "aluminum"] },
          screw: "main",
          ...strip(0.5),
        },
      ],
      mounting: { kind: "free" },
      reusable: false,
      bodyMetal: "aluminum",
      plating: "tin",
      compound: "pre-filled",
      packQuantity: 20,
      ...cost(to, 160, 4, 0.08),
    } satisfies Omit<Connector, "partNumber"> & Part),
  );
}
