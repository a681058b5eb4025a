import type { CatalogueItem, Connector, PlaceListing, Stranding, Tooling } from "@landfast/rules";
import {
  cost,
  FLEXIBLE_STRANDS,
  INSIDE,
  inventedPart,
  numbering,
  PRESSED_STRANDS,
  pad,
  printedTemperature,
  range,
  strip,
  TO_BURIAL,
  TO_DAMP,
} from "./invented-part.js";

type Part = Omit<CatalogueItem, "status" | "partNumber">;

/** Sizes with a die of their own; the die's number runs with the list. */
const COPPER: readonly string[] = [
  "14 AWG",
  "12 AWG",
  "10 AWG",
  "8 AWG",
  "6 AWG",
  "4 AWG",
  "3 AWG",
  "2 AWG",
  "1 AWG",
  "1/0 AWG",
  "2/0 AWG",
  "3/0 AWG",
  "4/0 AWG",
  "250 kcmil",
  "300 kcmil",
  "350 kcmil",
  "400 kcmil",
  "500 kcmil",
  "600 kcmil",
  "750 kcmil",
];
const ALUMINUM = COPPER.slice(COPPER.indexOf("6 AWG"));
const FIRST_COPPER_DIE = 52;
const FIRST_ALUMINUM_DIE = 141;
const ALUMINUM_OFFSET = COPPER.length - ALUMINUM.length;

type Barrel = "copper" | "aluminum";

/** The invented press for a size, and the mark its die leaves. */
function tooling(metal: Barrel, size: string, long: boolean): Tooling {
  const place = COPPER.indexOf(size);
  const tool = place < 3 ? "hand press Plover" : place < 13 ? "battery press Dunnock" : "hydraulic press Bittern";
  const die = `D-${(metal === "copper" ? FIRST_COPPER_DIE : FIRST_ALUMINUM_DIE - ALUMINUM_OFFSET) + place}`;
  return { tool, die, crimps: (place < 9 ? 1 : 2) + (long && place >= 9 ? 1 : 0) };
}
function barrelLength(size: string, long: boolean): number {
  const place = COPPER.indexOf(size);
  return 0.375 + 0.0625 * place + (long ? 0.75 : 0);
}

function marked(metal: Barrel): Pick<Part, "metalMarking" | "temperature" | "bodyMetal" | "plating" | "compound"> {
  return metal === "copper"
    ? { metalMarking: "CU", ...printedTemperature(90), bodyMetal: "copper", plating: "tin", compound: "not-needed" }
    : { metalMarking: "AL9CU", bodyMetal: "aluminum", plating: "tin", compound: "pre-filled" };
}

/** What all pressed parts have alike. */
function pressed(
  metal: Barrel,
): Omit<Part, "description" | "family" | "functions" | "openings" | "mounting" | "packQuantity"> {
  return {
    construction: "compression",
    ...marked(metal),
    voltageV: 600,
    insulated: false,
    openingsApart: true,
    listings: [{ standard: "UL 486A-486B" }],
    places: INSIDE,
    lineSide: "unmarked",
    screws: [],
    reusable: false,
  };
}

interface LugRow {
  readonly metal: Barrel;
  readonly size: string;
  readonly holes: string;
  readonly long?: boolean;
  readonly strands?: readonly Stranding[];
  readonly words?: string;
  readonly change?: Partial<Connector>;
}

function lug(row: LugRow): Part {
  const { metal, size, holes, long = false, strands = PRESSED_STRANDS, words, change = {} } = row;
  const two = holes.startsWith("2");
  return {
    description: `compression lug, ${metal}, ${two ? "two holes" : "one hole"}${long ? ", long barrel" : ""}, ${size}, ${holes} in${words === undefined ? "" : `, ${words}`}`,
    family: two ? "compression-lug-two-hole" : "compression-lug-one-hole",
    functions: ["termination"],
    ...pressed(metal),
    openings: [
      {
        id: "barrel",
        count: 1,
        ranges: [range(size, size, strands)],
        conductorsMax: 1,
        ...strip(barrelLength(size, long)),
      },
    ],
    mounting: pad(holes),
    tooling: tooling(metal, size, long),
    packQuantity: size.endsWith("AWG") ? 50 : 12,
    ...cost(size, two ? 260 : 90, metal === "copper" ? 6 : 4, 0.1),
    ...change,
  };
}

/** The bolt a one-hole tongue of that size usually takes. */
function usualBolt(size: string): string {
  const place = COPPER.indexOf(size);
  return place < 6 ? "1/4" : place < 9 ? "5/16" : place < 13 ? "3/8" : "1/2";
}

const GROUNDING: Partial<Connector> = {
  listings: [{ standard: "UL 486A-486B" }, { standard: "UL 467" }],
  grounding: { listed: true, electrodes: [], conductorsPerClamp: 1 },
};

const COPPER_ONE_HOLE: readonly LugRow[] = [
  // 14 to 8 AWG barrels take a solid conductor as well.
  ...COPPER.map(
    (size, place): LugRow => ({
      metal: "copper",
      size,
      holes: usualBolt(size),
      ...(place < 4 ? { strands: ["solid", "class-B", "class-C"] } : {}),
    }),
  ),
  { metal: "copper", size: "6 AWG", holes: "3/8" },
  { metal: "copper", size: "4 AWG", holes: "3/8" },
  { metal: "copper", size: "2 AWG", holes: "3/8" },
  { metal: "copper", size: "1 AWG", holes: "3/8" },
  { metal: "copper", size: "4/0 AWG", holes: "1/2" },
  { metal: "copper", size: "3/0 AWG", holes: "3/8", words: "grounding", change: GROUNDING },
  { metal: "copper", size: "4/0 AWG", holes: "3/8", words: "grounding", change: GROUNDING },
];

const FLARED: readonly LugRow[] = (
  ["8 AWG", "4 AWG", "2 AWG", "1/0 AWG", "2/0 AWG", "4/0 AWG", "350 kcmil", "500 kcmil"] as const
).map(
  (size): LugRow => ({
    metal: "copper",
    size,
    holes: size === "4/0 AWG" ? "3/8" : usualBolt(size),
    strands: FLEXIBLE_STRANDS,
    words: "flared barrel for flexible cable",
  }),
);

const COPPER_TWO_HOLE: readonly LugRow[] = COPPER.slice(COPPER.indexOf("2 AWG")).map(
  (size): LugRow => ({ metal: "copper", size, holes: "2 x 1/2 @ 1.75", long: true }),
);

const COPPER_TWO_HOLE_GROUNDING: readonly LugRow[] = [
  { metal: "copper", size: "6 AWG", holes: "2 x 3/8 @ 1", words: "grounding", change: GROUNDING },
  { metal: "copper", size: "2 AWG", holes: "2 x 3/8 @ 1", words: "grounding", change: GROUNDING },
  { metal: "copper", size: "4/0 AWG", holes: "2 x 1/2 @ 1.75", words: "grounding", change: GROUNDING },
];

const ALUMINUM_ONE_HOLE: readonly LugRow[] = ALUMINUM.filter((size) => size !== "3 AWG").map(
  (size): LugRow => ({ metal: "aluminum", size, holes: usualBolt(size) }),
);

const ALUMINUM_TWO_HOLE: readonly LugRow[] = ALUMINUM.slice(ALUMINUM.indexOf("1/0 AWG")).map(
  (size): LugRow => ({
    metal: "aluminum",
    size,
    holes: "2 x 1/2 @ 1.75",
    long: true,
    // The largest three are made for the line side of service equipment too.
    ...(size === "500 kcmil" || size === "600 kcmil" || size === "750 kcmil"
      ? { words: "line side", change: { lineSide: "marked" } }
      : {}),
  }),
);

/** Lugs pressed on with the tool and die named for them. */
export function compressionLugs(): CatalogueItem[] {
  const numbers = [
    numbering("PRESS", 101),
    numbering("PRESS", 201),
    numbering("PRESS", 301),
    numbering("PRESS", 401),
  ] as const;
  const [copperOne, copperTwo, aluminumOne, aluminumTwo] = numbers;
  return [
    ...[...COPPER_ONE_HOLE, ...FLARED].map((row) => inventedPart(copperOne, lug(row))),
    ...[...COPPER_TWO_HOLE, ...COPPER_TWO_HOLE_GROUNDING].map((row) => inventedPart(copperTwo, lug(row))),
    ...ALUMINUM_ONE_HOLE.map((row) => inventedPart(aluminumOne, lug(row))),
    ...ALUMINUM_TWO_HOLE.map((row) => inventedPart(aluminumTwo, lug(row))),
  ];
}

type PairRow = readonly [line: string, lead: string, bolt: string, cover: string];

const PAIRS: readonly PairRow[] = [
  ["8 AWG", "10 AWG", "1/4", "LF-COVER-0401"],
  ["4 AWG", "6 AWG", "1/4", "LF-COVER-0401"],
  ["1 AWG", "2 AWG", "5/16", "LF-COVER-0402"],
  ["2/0 AWG", "1/0 AWG", "3/8", "LF-COVER-0403"],
  ["250 kcmil", "4/0 AWG", "1/2", "LF-COVER-0404"],
  ["500 kcmil", "350 kcmil", "1/2", "LF-COVER-0405"],
];

/** Two lugs bolted back to back for a motor lead; the lead's side is listed for flexible strands. */
export function lugPairs(): CatalogueItem[] {
  const number = numbering("PAIR", 101);
  return PAIRS.map(([line, lead, bolt, cover]) =>
    inventedPart(number, {
      description: `pair of compression lugs for a motor lead, ${line} to ${lead}, ${bolt} in bolt`,
      family: "compression-lug-pair",
      functions: ["splice", "termination"],
      ...pressed("copper"),
      coverPart: cover,
      openings: [
        {
          id: "line",
          count: 1,
          ranges: [range(line, line, PRESSED_STRANDS)],
          conductorsMax: 1,
          ...strip(barrelLength(line, false)),
        },
        {
          id: "lead",
          count: 1,
          ranges: [range(lead, lead, FLEXIBLE_STRANDS)],
          conductorsMax: 1,
          ...strip(barrelLength(lead, false)),
        },
      ],
      mounting: pad(bolt),
      tooling: {
        tool: tooling("copper", line, false).tool,
        die: `${String(tooling("copper", line, false).die)} line, ${String(tooling("copper", lead, false).die)} lead`,
        crimps: 2,
      },
      packQuantity: 3,
      ...cost(line, 380, 8, 0.4),
    }),
  );
}

interface SleeveRow {
  readonly metal: Barrel;
  readonly size: string;
  readonly grounding?: boolean;
}

const SLEEVES: readonly SleeveRow[] = [
  ...(
    ["8 AWG", "6 AWG", "4 AWG", "2 AWG", "1/0 AWG", "2/0 AWG", "3/0 AWG", "4/0 AWG", "250 kcmil", "500 kcmil"] as const
  ).map((size): SleeveRow => ({ metal: "copper", size })),
  ...(["4 AWG", "2 AWG", "1/0 AWG", "4/0 AWG", "250 kcmil", "300 kcmil", "350 kcmil", "500 kcmil"] as const).map(
    (size): SleeveRow => ({ metal: "aluminum", size }),
  ),
  { metal: "copper", size: "4 AWG", grounding: true },
  { metal: "copper", size: "3/0 AWG", grounding: true },
];

/** Straight sleeves, pressed from both ends. */
export function compressionSleeves(): CatalogueItem[] {
  const number = numbering("SLEEVE", 101);
  return SLEEVES.map(({ metal, size, grounding = false }, index) =>
    inventedPart(number, {
      description: `compression sleeve, ${metal}, ${size}${grounding ? ", grounding" : ""}`,
      family: "compression-sleeve",
      functions: ["splice"],
      ...pressed(metal),
      places: grounding ? TO_BURIAL : TO_DAMP,
      ...(grounding ? GROUNDING : { coverPart: `LF-COVER-${String(501 + index).padStart(4, "0")}` }),
      openings: [
        {
          id: "end",
          count: 2,
          ranges: [range(size, size, grounding ? ["solid", ...PRESSED_STRANDS] : PRESSED_STRANDS)],
          conductorsMax: 1,
          ...strip(barrelLength(size, true)),
        },
      ],
      mounting: { kind: "free" },
      tooling: tooling(metal, size, true),
      packQuantity: 20,
      ...cost(size, 80, metal === "copper" ? 5 : 4, 0.25),
    }),
  );
}

type PressedTapRow = readonly [
  runFrom: string,
  runTo: string,
  tapFrom: string,
  tapTo: string,
  metal: Barrel,
  use: "grounding" | "grid" | "power",
];

const PRESSED_TAPS: readonly PressedTapRow[] = [
  ["8 AWG", "6 AWG", "10 AWG", "8 AWG", "copper", "power"],
  ["6 AWG", "2 AWG", "6 AWG", "2 AWG", "copper", "grounding"],
  ["1/0 AWG", "2/0 AWG", "6 AWG", "2/0 AWG", "copper", "grounding"],
  ["4/0 AWG", "4/0 AWG", "4/0 AWG", "4/0 AWG", "copper", "grid"],
  ["4/0 AWG", "4/0 AWG", "6 AWG", "2/0 AWG", "copper", "grid"],
  ["250 kcmil", "250 kcmil", "1/0 AWG", "250 kcmil", "copper", "grid"],
  ["500 kcmil", "500 kcmil", "2 AWG", "500 kcmil", "copper", "grid"],
  ["1/0 AWG", "4/0 AWG", "8 AWG", "2 AWG", "copper", "power"],
  ["250 kcmil", "500 kcmil", "1/0 AWG", "4/0 AWG", "copper", "power"],
  ["6 AWG", "2 AWG", "8 AWG", "2 AWG", "aluminum", "power"],
  ["1/0 AWG", "4/0 AWG", "6 AWG", "4/0 AWG", "aluminum", "power"],
  ["250 kcmil", "500 kcmil", "6 AWG", "4/0 AWG", "aluminum", "power"],
];

/** Taps pressed on for good: C-shaped for grounding and copper, H-shaped with two grooves for aluminum. */
export function compressionTaps(): CatalogueItem[] {
  const number = numbering("CRIMPTAP", 101);
  return PRESSED_TAPS.map(([runFrom, runTo, tapFrom, tapTo, metal, use], index) => {
    const strands = use === "power" ? PRESSED_STRANDS : (["solid", ...PRESSED_STRANDS] as const);
    return inventedPart(number, {
      description: `irreversible compression tap, ${metal === "copper" ? "C-shaped" : "H-shaped"}, ${runFrom === runTo ? runTo : `${runFrom} to ${runTo}`} with ${tapFrom === tapTo ? tapTo : `${tapFrom} to ${tapTo}`}, ${use}`,
      family: "compression-tap",
      functions: ["splice", "tap"],
      ...pressed(metal),
      openingsApart: metal === "aluminum",
      ...(use === "power"
        ? {
            places: TO_DAMP satisfies readonly PlaceListing[],
            coverPart: `LF-COVER-${String(601 + index).padStart(4, "0")}`,
          }
        : {
            places: TO_BURIAL,
            temperature: "unmarked" as const,
            listings: [{ standard: "UL 467" }, ...(use === "grid" ? [{ standard: "IEEE 837" }] : [])],
            grounding: { listed: true, electrodes: [], conductorsPerClamp: "unmarked" as const },
          }),
      openings: [
        { id: "run", count: 1, ranges: [range(runFrom, runTo, strands)], conductorsMax: 1, ...strip(2) },
        { id: "tap", count: 1, ranges: [range(tapFrom, tapTo, strands)], conductorsMax: 1, ...strip(2) },
      ],
      mounting: { kind: "free" },
      tooling: tooling(metal, runTo, false),
      packQuantity: 10,
      ...cost(runTo, 220, 7, 0.3),
    });
  });
}

type PinRow = readonly [size: string, pinSize: string];

const PINS: readonly PinRow[] = [
  ["4 AWG", "6 AWG"],
  ["2 AWG", "4 AWG"],
  ["1/0 AWG", "2 AWG"],
  ["3/0 AWG", "1/0 AWG"],
  ["4/0 AWG", "2/0 AWG"],
  ["250 kcmil", "3/0 AWG"],
  ["350 kcmil", "4/0 AWG"],
  ["500 kcmil", "300 kcmil"],
  ["600 kcmil", "350 kcmil"],
  ["750 kcmil", "500 kcmil"],
];

/** Pins pressed on an aluminum conductor; the copper pin lands in the equipment's terminal. */
export function pinAdapters(): CatalogueItem[] {
  const number = numbering("PIN", 101);
  return PINS.map(([size, pinSize], index) =>
    inventedPart(number, {
      description: `compression pin adapter, ${size} to a copper pin of ${pinSize}`,
      family: "pin-adapter",
      functions: ["termination"],
      ...pressed("aluminum"),
      coverPart: `LF-COVER-${String(701 + index).padStart(4, "0")}`,
      openings: [
        {
          id: "barrel",
          count: 1,
          ranges: [range(size, size, PRESSED_STRANDS)],
          conductorsMax: 1,
          ...strip(barrelLength(size, true)),
        },
      ],
      mounting: { kind: "free" },
      pin: { size: pinSize, metal: "copper" },
      tooling: tooling("aluminum", size, true),
      packQuantity: 3,
      ...cost(size, 700, 7, 0.3),
    }),
  );
}
