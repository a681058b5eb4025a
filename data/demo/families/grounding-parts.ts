import type { CatalogueItem, Electrode, Mounting, Opening, PlaceListing } from "@landfast/rules";
import {
  COMMON_STRANDS,
  cost,
  type DriveWord,
  INSIDE,
  inventedPart,
  numbering,
  range,
  screw,
  sizes,
  strip,
  TO_BURIAL,
  TO_CONCRETE,
} from "./invented-part.js";

type BarRow = readonly [
  family: "neutral-bar" | "ground-bar",
  holes: number,
  from: string,
  to: string,
  drive: DriveWord,
  torqueLbfIn: number | null,
  frames: readonly string[],
  /** Equal copper conductors that may share a hole: "2 of 14 AWG to 12 AWG". */
  sharing: readonly [count: number, from: string, to: string] | null,
];

const PANELS = ["Tarnbeck panel 125", "Tarnbeck panel 225"] as const;

const BARS: readonly BarRow[] = [
  ["neutral-bar", 12, "14 AWG", "4 AWG", "slot", null, PANELS, null],
  ["neutral-bar", 24, "14 AWG", "4 AWG", "slot", null, PANELS, null],
  ["neutral-bar", 42, "14 AWG", "4 AWG", "slot", 35, ["Tarnbeck panel 225"], null],
  ["neutral-bar", 8, "14 AWG", "1/0 AWG", "3/16", 120, ["Tarnbeck panel 400"], null],
  ["ground-bar", 8, "14 AWG", "4 AWG", "slot", 25, PANELS, [2, "14 AWG", "12 AWG"]],
  ["ground-bar", 12, "14 AWG", "4 AWG", "slot", 25, PANELS, [2, "14 AWG", "12 AWG"]],
  ["ground-bar", 24, "14 AWG", "4 AWG", "slot", 25, PANELS, [3, "14 AWG", "12 AWG"]],
  ["ground-bar", 24, "14 AWG", "4 AWG", "slotted hex", null, PANELS, null],
  ["ground-bar", 8, "14 AWG", "1/0 AWG", "3/16", 120, ["Tarnbeck panel 400"], null],
];

/** Bars that are fitted in the panels they are listed for. */
export function neutralAndGroundBars(): CatalogueItem[] {
  const numbers = { "neutral-bar": numbering("BAR", 101), "ground-bar": numbering("BAR", 201) };
  return BARS.map(([family, holes, from, to, drive, torque, frames, sharing]) =>
    inventedPart(numbers[family], {
      description: `${family === "neutral-bar" ? "neutral" : "ground"} bar, ${holes} holes, ${sizes(from, to)}${sharing === null ? "" : `, ${sharing[0]} of ${sizes(sharing[1], sharing[2])} to a hole`}`,
      family,
      construction: "set-screw",
      functions: ["termination"],
      metalMarking: "AL9CU",
      voltageV: 600,
      insulated: false,
      openingsApart: true,
      listings: [{ standard: "UL 67" }],
      places: INSIDE,
      ...(family === "ground-bar" ? { grounding: { listed: true, electrodes: [], conductorsPerClamp: 1 } } : {}),
      screws: [screw("hole", drive, torque)],
      openings: [barHole(holes, from, to, sharing)],
      mounting: { kind: "frame", frames },
      reusable: true,
      bodyMetal: "aluminum",
      plating: "tin",
      packQuantity: 1,
      ...cost(to, 200 + 35 * holes, 2, 0.1),
    }),
  );
}

function barHole(count: number, from: string, to: string, sharing: BarRow[7]): Opening {
  const hole = { id: "hole", count, ranges: [range(from, to)], screw: "hole", ...strip(0.625) };
  if (sharing === null) return { ...hole, conductorsMax: 1 };
  const [most, shareFrom, shareTo] = sharing;
  return {
    ...hole,
    conductorsMax: most,
    shared: { sameSize: true, sameMetal: true, from: shareFrom, to: shareTo, metals: ["copper"] },
  };
}

type BarLugRow = readonly [
  from: string,
  to: string,
  drive: DriveWord,
  torqueLbfIn: number | null,
  mounting: Mounting,
  words: string,
];

const ON_THE_BAR: Mounting = { kind: "frame", frames: ["Tarnbeck ground bar"] };

const BAR_LUGS: readonly BarLugRow[] = [
  ["14 AWG", "1/0 AWG", "1/4", null, ON_THE_BAR, "for frame Tarnbeck ground bar"],
  ["14 AWG", "250 kcmil", "5/16", null, ON_THE_BAR, "for frame Tarnbeck ground bar"],
  ["6 AWG", "250 kcmil", "5/16", null, ON_THE_BAR, "for frame Tarnbeck ground bar"],
  ["14 AWG", "2/0 AWG", "slotted hex", null, { kind: "pad", pattern: { holes: 1, bolt: "1/4" } }, "one bolt"],
  ["6 AWG", "300 kcmil", "5/16", 275, { kind: "pad", pattern: { holes: 1, bolt: "3/8" } }, "one bolt"],
  [
    "2 AWG",
    "500 kcmil",
    "3/8",
    375,
    { kind: "pad", pattern: { holes: 2, bolt: "1/2", spacing: { value: 1.75, unit: "in" } } },
    "two bolts",
  ],
];

/** Lugs for ground buses and ground bars. */
export function groundBarLugs(): CatalogueItem[] {
  const number = numbering("BARLUG", 101);
  return BAR_LUGS.map(([from, to, drive, torque, mounting, words]) =>
    inventedPart(number, {
      description: `ground bar lug, ${sizes(from, to)}, ${words}`,
      family: "ground-bar-lug",
      construction: "set-screw",
      functions: ["termination"],
      metalMarking: "AL9CU",
      voltageV: 600,
      insulated: false,
      openingsApart: true,
      listings: [{ standard: "UL 486A-486B" }, { standard: "UL 467" }],
      places: INSIDE,
      grounding: { listed: true, electrodes: [], conductorsPerClamp: 1 },
      screws: [screw("main", drive, torque)],
      openings: [
        { id: "barrel", count: 1, ranges: [range(from, to)], conductorsMax: 1, screw: "main", ...strip(0.875) },
      ],
      mounting,
      reusable: true,
      bodyMetal: "aluminum",
      plating: "tin",
      packQuantity: 10,
      ...cost(to, 240, 4, 0.15),
    }),
  );
}

type ClampRow = readonly [
  family: "rod-clamp" | "pipe-clamp" | "rebar-clamp",
  electrodes: readonly Electrode[],
  from: string,
  to: string,
  drive: DriveWord,
  torqueLbfIn: number | null,
  places: readonly PlaceListing[],
  conductorsPerClamp: number | "unmarked",
  bodyMetal: string,
];

const AT_PIPES: readonly PlaceListing[] = ["equipment", "dry", "damp"];

const CLAMPS: readonly ClampRow[] = [
  ["rod-clamp", ["copper-bonded-rod"], "8 AWG", "4 AWG", "clamp", 150, TO_BURIAL, "unmarked", "bronze"],
  ["rod-clamp", ["copper-bonded-rod"], "6 AWG", "2 AWG", "clamp", 180, TO_BURIAL, "unmarked", "bronze"],
  ["rod-clamp", ["copper-bonded-rod"], "4 AWG", "2/0 AWG", "clamp", null, TO_BURIAL, "unmarked", "bronze"],
  ["rod-clamp", ["copper-bonded-rod"], "8 AWG", "4 AWG", "clamp", 150, TO_BURIAL, 2, "bronze"],
  ["rod-clamp", ["galvanized-rod"], "8 AWG", "4 AWG", "clamp", 150, TO_BURIAL, "unmarked", "zinc-coated steel"],
  ["rod-clamp", ["galvanized-rod"], "6 AWG", "1/0 AWG", "clamp", null, TO_BURIAL, "unmarked", "zinc-coated steel"],
  ["rod-clamp", ["stainless-rod"], "8 AWG", "2 AWG", "clamp", 160, TO_BURIAL, "unmarked", "stainless steel"],
  [
    "rod-clamp",
    ["copper-bonded-rod", "galvanized-rod"],
    "8 AWG",
    "2 AWG",
    "clamp",
    150,
    ["dry", "damp"],
    "unmarked",
    "bronze",
  ],
  ["pipe-clamp", ["water-pipe"], "10 AWG", "4 AWG", "slotted hex", null, AT_PIPES, "unmarked", "bronze"],
  ["pipe-clamp", ["water-pipe"], "2 AWG", "4/0 AWG", "hex", null, AT_PIPES, "unmarked", "bronze"],
  ["pipe-clamp", ["water-pipe"], "6 AWG", "1/0 AWG", "clamp", 120, TO_BURIAL, "unmarked", "bronze"],
  ["pipe-clamp", ["water-pipe"], "4 AWG", "250 kcmil", "clamp", 200, AT_PIPES, "unmarked", "bronze"],
  [
    "pipe-clamp",
    ["water-pipe", "building-steel"],
    "8 AWG",
    "2 AWG",
    "clamp",
    100,
    AT_PIPES,
    "unmarked",
    "zinc-coated steel",
  ],
  ["rebar-clamp", ["concrete-encased-rebar"], "6 AWG", "2 AWG", "clamp", 120, ["concrete"], "unmarked", "bronze"],
  ["rebar-clamp", ["concrete-encased-rebar"], "4 AWG", "2/0 AWG", "clamp", 150, TO_CONCRETE, "unmarked", "bronze"],
  [
    "rebar-clamp",
    ["concrete-encased-rebar", "copper-bonded-rod"],
    "8 AWG",
    "1/0 AWG",
    "clamp",
    null,
    TO_CONCRETE,
    "unmarked",
    "bronze",
  ],
];

const CLAMP_WORDS = {
  "rod-clamp": "ground rod clamp",
  "pipe-clamp": "pipe clamp",
  "rebar-clamp": "reinforcing bar clamp",
} as const;
const ELECTRODE_WORDS: Partial<Record<Electrode, string>> = {
  "copper-bonded-rod": "copper-bonded rod",
  "galvanized-rod": "galvanized rod",
  "stainless-rod": "stainless rod",
  "concrete-encased-rebar": "bar in concrete",
  "water-pipe": "water pipe",
  "building-steel": "building steel",
};

function electrodeText(electrodes: readonly Electrode[]): string {
  return electrodes.map((electrode) => ELECTRODE_WORDS[electrode] ?? electrode).join(" and ");
}

/** Clamps on electrodes, each for the electrodes it names. */
export function electrodeClamps(): CatalogueItem[] {
  const numbers = {
    "rod-clamp": numbering("ROD", 101),
    "pipe-clamp": numbering("PIPE", 101),
    "rebar-clamp": numbering("REBAR", 101),
  };
  return CLAMPS.map(([family, electrodes, from, to, drive, torque, places, conductorsPerClamp, bodyMetal]) =>
    inventedPart(numbers[family], {
      description: `${CLAMP_WORDS[family]} for ${electrodeText(electrodes)}, ${sizes(from, to)}${conductorsPerClamp === 2 ? ", two conductors" : ""}`,
      family,
      construction: "bolted-clamp",
      functions: ["termination"],
      metalMarking: "CU",
      temperature: "unmarked",
      voltageV: "unmarked",
      insulated: false,
      openingsApart: false,
      listings: [{ standard: "UL 467" }],
      places,
      grounding: { listed: true, electrodes, conductorsPerClamp },
      screws: [screw("bolt", drive, torque)],
      openings: [
        {
          id: "jaw",
          count: 1,
          ranges: [range(from, to, COMMON_STRANDS)],
          conductorsMax: conductorsPerClamp,
          ...(conductorsPerClamp === 2 ? { shared: { sameSize: true, sameMetal: true } } : {}),
          screw: "bolt",
        },
      ],
      mounting: { kind: "free" },
      reusable: true,
      bodyMetal,
      packQuantity: 10,
      ...cost(to, 240, 4, 0.2),
    }),
  );
}

type WeldRow = readonly [size: string, to: Electrode | "cable", mold: number];

const WELDS: readonly WeldRow[] = [
  ["6 AWG", "copper-bonded-rod", 11],
  ["4 AWG", "copper-bonded-rod", 12],
  ["2/0 AWG", "copper-bonded-rod", 13],
  ["4/0 AWG", "copper-bonded-rod", 14],
  ["3/0 AWG", "building-steel", 21],
  ["4/0 AWG", "building-steel", 22],
  ["4 AWG", "concrete-encased-rebar", 31],
  ["1/0 AWG", "concrete-encased-rebar", 32],
  ["4 AWG", "cable", 41],
  ["3/0 AWG", "cable", 42],
  ["4/0 AWG", "cable", 43],
  ["500 kcmil", "cable", 44],
];

/** Exothermic welds: a mold and charge for one size and one thing to weld to. */
export function exothermicWelds(): CatalogueItem[] {
  const number = numbering("WELD", 101);
  return WELDS.map(([size, to, mold]) => {
    const cable = to === "cable";
    return inventedPart(number, {
      description: `exothermic weld, ${size} to ${cable ? `another ${size}` : electrodeText([to])}`,
      family: "exothermic-weld",
      construction: "weld",
      functions: [cable ? "splice" : "termination"],
      metalMarking: "CU",
      temperature: "unmarked",
      voltageV: "unmarked",
      insulated: false,
      openingsApart: false,
      listings: [{ standard: "UL 467" }, ...(cable ? [{ standard: "IEEE 837" }] : [])],
      places: to === "concrete-encased-rebar" ? TO_CONCRETE : TO_BURIAL,
      grounding: { listed: true, electrodes: cable ? [] : [to], conductorsPerClamp: 1 },
      screws: [],
      openings: [{ id: "mold", count: cable ? 2 : 1, ranges: [range(size, size, COMMON_STRANDS)], conductorsMax: 1 }],
      mounting: { kind: "free" },
      reusable: false,
      tooling: { tool: `mold M-${mold}`, die: `charge C-${mold}` },
      packQuantity: 1,
      ...cost(size, 900, 6, 0.5),
    });
  });
}
