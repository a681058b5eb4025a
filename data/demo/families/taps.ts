import type { CatalogueItem, PlaceListing } from "@landfast/rules";
import {
  body,
  cost,
  DRY,
  type DriveWord,
  headText,
  inventedPart,
  numbering,
  printedTemperature,
  range,
  screw,
  sizes,
  strip,
  TO_BURIAL,
  TO_WET,
} from "./invented-part.js";

type PiercingRow = readonly [
  runFrom: string,
  runTo: string,
  tapFrom: string,
  tapTo: string,
  drive: DriveWord,
  torqueLbfIn: number | null,
  places: readonly PlaceListing[],
  lineSide: "marked" | "unmarked",
];

const PIERCING: readonly PiercingRow[] = [
  ["250 kcmil", "750 kcmil", "4 AWG", "3/0 AWG", "shear", null, DRY, "marked"],
  ["250 kcmil", "750 kcmil", "4 AWG", "3/0 AWG", "shear", null, DRY, "unmarked"],
  ["250 kcmil", "750 kcmil", "4 AWG", "3/0 AWG", "hex", 325, DRY, "unmarked"],
  ["250 kcmil", "500 kcmil", "10 AWG", "1/0 AWG", "shear", null, TO_WET, "unmarked"],
  ["1/0 AWG", "250 kcmil", "10 AWG", "2 AWG", "shear", null, TO_WET, "unmarked"],
  ["1/0 AWG", "350 kcmil", "6 AWG", "1/0 AWG", "hex", 240, DRY, "unmarked"],
  ["3/0 AWG", "500 kcmil", "3/0 AWG", "350 kcmil", "hex", 325, DRY, "unmarked"],
  ["4 AWG", "4/0 AWG", "14 AWG", "6 AWG", "shear", null, TO_WET, "unmarked"],
  ["500 kcmil", "1000 kcmil", "2 AWG", "350 kcmil", "hex", 375, DRY, "unmarked"],
  ["1/0 AWG", "500 kcmil", "8 AWG", "3/0 AWG", "hex", 300, DRY, "marked"],
  ["500 kcmil", "1000 kcmil", "1/0 AWG", "500 kcmil", "shear", null, DRY, "marked"],
];

/** Taps whose teeth go through the insulation of a conductor that stays uncut. */
export function piercingTaps(): CatalogueItem[] {
  const number = numbering("PIERCE", 101);
  return PIERCING.map(([runFrom, runTo, tapFrom, tapTo, drive, torque, places, lineSide]) =>
    inventedPart(number, {
      description: `insulation-piercing tap, run ${sizes(runFrom, runTo)}, tap ${sizes(tapFrom, tapTo)}, ${headText(drive)}${lineSide === "marked" ? ", line side" : ""}`,
      family: "piercing-tap",
      construction: "insulation-piercing",
      functions: ["tap"],
      metalMarking: "AL9CU",
      voltageV: 600,
      insulated: true,
      openingsApart: true,
      listings: [{ standard: "UL 486A-486B" }],
      places,
      lineSide,
      screws: [screw("bolt", drive, torque)],
      openings: [
        { id: "run", count: 1, duty: "run", ranges: [range(runFrom, runTo)], conductorsMax: 1, screw: "bolt" },
        { id: "tap", count: 1, duty: "tap", ranges: [range(tapFrom, tapTo)], conductorsMax: 1, screw: "bolt" },
      ],
      mounting: { kind: "free" },
      reusable: false,
      ...body("AL9CU"),
      compound: "pre-filled",
      packQuantity: 3,
      ...cost(runTo, lineSide === "marked" ? 1500 : 1100, 4, 0.25),
    }),
  );
}

type BoltedRow = readonly [
  runFrom: string,
  runTo: string,
  tapFrom: string,
  tapTo: string,
  marking: string,
  drive: DriveWord,
  torqueLbfIn: number | null,
  cover: string | null,
];

const GUTTER: readonly BoltedRow[] = [
  ["250 kcmil", "500 kcmil", "6 AWG", "4/0 AWG", "AL9CU", "hex", null, "LF-COVER-0201"],
  ["250 kcmil", "500 kcmil", "250 kcmil", "500 kcmil", "AL9CU", "hex", null, "LF-COVER-0202"],
  ["2 AWG", "4/0 AWG", "10 AWG", "2 AWG", "AL9CU", "hex", null, "LF-COVER-0203"],
  ["1/0 AWG", "350 kcmil", "6 AWG", "4/0 AWG", "AL9CU", "5/16", 275, "LF-COVER-0204"],
  ["500 kcmil", "750 kcmil", "1/0 AWG", "500 kcmil", "AL9CU", "1/2", 500, "LF-COVER-0205"],
  ["500 kcmil", "1000 kcmil", "4 AWG", "350 kcmil", "AL9CU", "hex", null, null],
  ["250 kcmil", "500 kcmil", "6 AWG", "4/0 AWG", "CU", "hex", 375, "LF-COVER-0201"],
  ["1 AWG", "4/0 AWG", "8 AWG", "1/0 AWG", "CU", "hex", null, null],
];

/** Taps for an uncut run in a gutter, each conductor under its own screw. */
export function gutterTaps(): CatalogueItem[] {
  const number = numbering("GUTTER", 101);
  return GUTTER.map(([runFrom, runTo, tapFrom, tapTo, marking, drive, torque, cover]) =>
    inventedPart(number, {
      description: `gutter tap, run ${sizes(runFrom, runTo)}, tap ${sizes(tapFrom, tapTo)}, ${marking}`,
      family: "gutter-tap",
      construction: "set-screw",
      functions: ["tap"],
      metalMarking: marking,
      ...(marking === "CU" ? printedTemperature(75) : {}),
      voltageV: 600,
      insulated: false,
      openingsApart: true,
      ...(cover === null ? {} : { coverPart: cover }),
      listings: [{ standard: "UL 486A-486B" }],
      places: DRY,
      lineSide: "unmarked",
      screws: [screw("run", drive, torque), screw("tap", drive, torque)],
      openings: [
        {
          id: "run",
          count: 1,
          duty: "run",
          ranges: [range(runFrom, runTo)],
          conductorsMax: 1,
          screw: "run",
          ...strip(1.5),
        },
        {
          id: "tap",
          count: 1,
          duty: "tap",
          ranges: [range(tapFrom, tapTo)],
          conductorsMax: 1,
          screw: "tap",
          ...strip(1),
        },
      ],
      mounting: { kind: "free" },
      reusable: true,
      ...body(marking),
      packQuantity: 3,
      ...cost(runTo, 700, marking === "CU" ? 9 : 5, 0.35),
    }),
  );
}

const PARALLEL: readonly BoltedRow[] = [
  ["6 AWG", "1/0 AWG", "8 AWG", "1/0 AWG", "AL9CU", "hex", null, "LF-COVER-0301"],
  ["2 AWG", "4/0 AWG", "6 AWG", "4/0 AWG", "AL9CU", "hex", 240, "LF-COVER-0302"],
  ["4/0 AWG", "500 kcmil", "2 AWG", "500 kcmil", "AL9CU", "hex", null, "LF-COVER-0303"],
  ["8 AWG", "2 AWG", "8 AWG", "2 AWG", "CU", "hex", 110, null],
  ["2 AWG", "4/0 AWG", "2 AWG", "4/0 AWG", "CU", "hex", null, null],
  ["250 kcmil", "750 kcmil", "250 kcmil", "750 kcmil", "CU", "hex", null, null],
];

/** Two grooves under one pair of bolts, with a wall between them in the aluminum-bodied ones. */
export function parallelTaps(): CatalogueItem[] {
  const number = numbering("PARALLEL", 101);
  return PARALLEL.map(([runFrom, runTo, tapFrom, tapTo, marking, drive, torque, cover]) =>
    inventedPart(number, {
      description: `two-bolt parallel tap, run ${sizes(runFrom, runTo)}, tap ${sizes(tapFrom, tapTo)}, ${marking}`,
      family: "parallel-tap",
      construction: "bolted-clamp",
      functions: ["tap"],
      metalMarking: marking,
      ...(marking === "CU" ? printedTemperature(90) : {}),
      voltageV: 600,
      insulated: false,
      openingsApart: marking !== "CU",
      ...(cover === null ? {} : { coverPart: cover }),
      listings: [{ standard: "UL 486A-486B" }],
      places: DRY,
      lineSide: "unmarked",
      screws: [screw("bolts", drive, torque)],
      openings: [
        {
          id: "run",
          count: 1,
          duty: "run",
          ranges: [range(runFrom, runTo)],
          conductorsMax: 1,
          screw: "bolts",
          ...strip(1.75),
        },
        {
          id: "tap",
          count: 1,
          duty: "tap",
          ranges: [range(tapFrom, tapTo)],
          conductorsMax: 1,
          screw: "bolts",
          ...strip(1.75),
        },
      ],
      mounting: { kind: "free" },
      reusable: true,
      ...body(marking),
      ...(marking === "CU" ? {} : { compound: "required" as const }),
      packQuantity: 6,
      ...cost(runTo, 520, marking === "CU" ? 8 : 4, 0.3),
    }),
  );
}

type SplitRow = readonly [
  largeFrom: string,
  largeTo: string,
  smallFrom: string,
  smallTo: string,
  torqueLbfIn: number | null,
  places: readonly PlaceListing[],
];

const SPLIT: readonly SplitRow[] = [
  ["14 AWG", "8 AWG", "16 AWG", "8 AWG", null, DRY],
  ["10 AWG", "6 AWG", "14 AWG", "6 AWG", null, DRY],
  ["8 AWG", "4 AWG", "12 AWG", "4 AWG", null, DRY],
  ["8 AWG", "2 AWG", "10 AWG", "2 AWG", null, DRY],
  ["4 AWG", "1/0 AWG", "8 AWG", "1/0 AWG", null, DRY],
  ["2 AWG", "2/0 AWG", "8 AWG", "2/0 AWG", 385, DRY],
  ["1/0 AWG", "4/0 AWG", "4 AWG", "4/0 AWG", null, DRY],
  ["3/0 AWG", "350 kcmil", "2 AWG", "350 kcmil", 650, DRY],
  ["250 kcmil", "500 kcmil", "1/0 AWG", "500 kcmil", null, DRY],
  ["8 AWG", "2 AWG", "10 AWG", "2 AWG", 165, TO_BURIAL],
];

const SPLIT_WITH_SPACER: readonly SplitRow[] = [
  ["6 AWG", "4 AWG", "12 AWG", "4 AWG", null, DRY],
  ["4 AWG", "2 AWG", "10 AWG", "2 AWG", null, DRY],
  ["2 AWG", "1/0 AWG", "6 AWG", "1/0 AWG", null, DRY],
  ["1/0 AWG", "4/0 AWG", "4 AWG", "4/0 AWG", 500, DRY],
  ["4/0 AWG", "350 kcmil", "1/0 AWG", "350 kcmil", null, DRY],
  ["350 kcmil", "500 kcmil", "4/0 AWG", "500 kcmil", 825, DRY],
];

/** Split bolts: both conductors lie between one pair of jaws; a spacer keeps them from touching. */
export function splitBolts(): CatalogueItem[] {
  const plain = numbering("BOLT", 101);
  const spaced = numbering("BOLT", 201);
  return [
    ...SPLIT.map((row) => inventedPart(plain, splitBolt(row, "split-bolt"))),
    ...SPLIT_WITH_SPACER.map((row) => inventedPart(spaced, splitBolt(row, "split-bolt-with-spacer"))),
  ];
}

function splitBolt(
  [largeFrom, largeTo, smallFrom, smallTo, torque, places]: SplitRow,
  family: "split-bolt" | "split-bolt-with-spacer",
): Omit<CatalogueItem, "status" | "partNumber"> {
  const spaced = family === "split-bolt-with-spacer";
  const marking = spaced ? "AL9CU" : "CU";
  return {
    description: `split bolt${spaced ? " with spacer" : ""}, ${sizes(largeFrom, largeTo)} with ${sizes(smallFrom, smallTo)}${places === DRY ? "" : ", direct burial"}`,
    family,
    construction: "split-bolt",
    functions: ["splice", "tap"],
    metalMarking: marking,
    ...(spaced ? {} : printedTemperature(90)),
    voltageV: 600,
    insulated: false,
    openingsApart: spaced,
    listings: [{ standard: "UL 486A-486B" }, ...(places === DRY ? [] : [{ standard: "UL 467" }])],
    places,
    lineSide: "unmarked",
    screws: [screw("nut", "split", torque)],
    openings: [
      { id: "run", count: 1, ranges: [range(largeFrom, largeTo)], conductorsMax: 1, screw: "nut", ...strip(1.25) },
      { id: "tap", count: 1, ranges: [range(smallFrom, smallTo)], conductorsMax: 1, screw: "nut", ...strip(1.25) },
    ],
    mounting: { kind: "free" },
    reusable: true,
    bodyMetal: spaced ? "bronze" : "copper",
    plating: spaced ? "tin" : "none",
    ...(spaced ? { compound: "required" as const } : {}),
    packQuantity: 10,
    ...cost(largeTo, 140, spaced ? 8 : 5, 0.2),
  };
}
