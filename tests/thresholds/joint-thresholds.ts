/** Joints checked: sizes, ratings and room at which a rule turns. */
import type { Connector, Joint } from "@landfast/rules";
import {
  circuit,
  clamp,
  conductor,
  equipmentLug,
  opening,
  splice,
  spliced,
  termination,
} from "../site-questions/described-joint.js";
import { checked, ruled } from "./asked.js";
import { type EditionName, overNumbers, overWords, type Threshold } from "./threshold.js";

const SPLICE_PLACE = { endTerminalTemperature: { value: 75, unit: "Cel" } } as const;

/** A block in a box of so many cubic inches. */
function blockInBox(boxVolumeIn3: number, edition: EditionName): string {
  const joint = spliced([conductor("2 AWG"), conductor("10 AWG")], {
    equipment: { tag: "JB-1", kind: "box", boxVolumeIn3 },
  });
  return ruled(
    "distribution-block",
    joint,
    splice([opening("12 AWG", "1/0 AWG", { count: 2 })], { family: "power-distribution-block" }),
    edition,
  );
}

/** Two legs of a size on a lug that takes any of them. */
function legs(size: string, change: Partial<Joint>, edition: EditionName): string {
  const joint = termination([conductor(size, { count: 2 })], {
    circuit: circuit(100, 125, { sets: 2, parallelLegsAlike: true, ...change.circuit }),
    role: change.role ?? "phase",
  });
  return ruled(
    "parallel-legs",
    joint,
    equipmentLug("14 AWG", "500 kcmil", { openings: [opening("14 AWG", "500 kcmil", { count: 2 })] }),
    edition,
  );
}

function onWiringDevice(
  ratingA: number,
  metalMarking: string,
  metal: "aluminum" | "copper-clad-aluminum",
  edition: EditionName,
): string {
  const joint = termination([conductor("10 AWG", { metal, stranding: "solid" })], {
    circuit: circuit(12, ratingA, { voltageV: 120 }),
    equipment: { tag: "R-1", kind: "wiring-device" },
  });
  return ruled(
    "metal-marking",
    joint,
    equipmentLug("14 AWG", "10 AWG", { family: "wiring-device-terminal", metalMarking }),
    edition,
  );
}

function splicing(size: string, metal: "copper" | "aluminum", edition: EditionName): string {
  const stranding = size.endsWith("mm2") ? "iec-class-1" : metal === "copper" ? "class-B" : "solid";
  return ruled(
    "listing",
    spliced([conductor(size, { metal, stranding })]),
    splice([opening("18 AWG", "1/0 AWG", { count: 2 })], { listings: [{ standard: "UL 486C" }] }),
    edition,
  );
}

function filled(conductors: number, splices: number, kind: "enclosure" | "wireway", edition: EditionName): string {
  const joint = spliced([conductor("12 AWG")], {
    equipment: {
      tag: "W-1",
      kind: kind === "wireway" ? "wireway" : "panelboard",
      space: {
        kind,
        section: { value: 100, unit: "in2" },
        conductors: { value: conductors, unit: "in2" },
        splices: { value: splices, unit: "in2" },
      },
    },
  });
  return ruled("enclosure-fill", joint, splice([opening("14 AWG", "10 AWG", { count: 2 })]), edition);
}

/** 1/0 AWG on a lug for 250 kcmil, both of so many degrees, with so much load. */
function loaded(
  load: Partial<NonNullable<Joint["circuit"]>>,
  terminal: NonNullable<Joint["equipment"]>["terminalTemperature"],
  temperature: Connector["temperature"],
  edition: EditionName,
  size = "1/0 AWG",
): string {
  const joint = termination([conductor(size, { insulation: "XHHW-2" })], {
    circuit: { voltageV: 480, sets: 1, protection: { kind: "device", ratingA: 200 }, ...load },
    equipment: { tag: "P-1", kind: "panelboard", ...(terminal && { terminalTemperature: terminal }) },
  });
  return ruled(
    "terminal-temperature",
    joint,
    equipmentLug("6 AWG", "250 kcmil", {
      metalMarking: "AL-CU",
      mounting: { kind: "free" },
      ...(temperature && { temperature }),
    }),
    edition,
  );
}

const C90 = { value: 90, unit: "Cel" } as const;

/** A tap of 3 AWG copper, 100 A at 75 C. */
function tapped(
  tap: { readonly feederDeviceA?: number; readonly lengthFt?: number; readonly endDeviceA?: number },
  edition: EditionName,
): string {
  const joint = spliced([conductor("500 kcmil", { duty: "run", uncut: true }), conductor("3 AWG", { duty: "tap" })], {
    function: "tap",
    circuit: {
      voltageV: 480,
      loadA: 60,
      sets: 1,
      ...SPLICE_PLACE,
      protection: {
        kind: "feeder-tap",
        feederDeviceA: tap.feederDeviceA ?? 400,
        length: { value: tap.lengthFt ?? 8, unit: "ft" },
        endDeviceA: tap.endDeviceA ?? 100,
        leavesEnclosure: true,
        physicallyProtected: true,
        outdoors: false,
      },
    },
  });
  return ruled(
    "feeder-tap",
    joint,
    splice([
      opening("4/0 AWG", "500 kcmil", { id: "run", duty: "run" }),
      opening("8 AWG", "1/0 AWG", { id: "tap", duty: "tap" }),
    ]),
    edition,
  );
}

function toElectrode(
  size: string,
  metal: "copper" | "aluminum",
  electrode: "copper-bonded-rod" | "concrete-encased-rebar" | "ground-ring",
  edition: EditionName,
  ringSize?: string,
): string {
  const joint = termination([conductor(size, { metal, insulation: "bare" })], {
    role: "electrode-conductor",
    grounding: {
      electrode,
      soleConnection: true,
      service: { size: "500 kcmil", metal: "copper", sets: 2 },
      ...(ringSize !== undefined && { ringSize }),
    },
  });
  return ruled("electrode-conductor-size", joint, clamp(), edition);
}

function bonded(
  size: string,
  metal: "copper" | "aluminum",
  bonding: "water-pipe" | "structural-metal" | "supply-side",
  edition: EditionName,
): string {
  const joint = termination([conductor(size, { metal })], {
    role: "bonding",
    grounding: { bonding, service: { size: "500 kcmil", metal, sets: 4 } },
  });
  return ruled("bonding-jumper-size", joint, clamp(), edition);
}

function unmarkedOnService(installedOn: string, edition: EditionName): string {
  const joint = spliced([conductor("2 AWG", { count: 2 })], {
    circuit: { voltageV: 480, loadA: 80, sets: 1, protection: { kind: "service" }, ...SPLICE_PLACE },
  });
  return ruled(
    "line-side-mark",
    joint,
    splice([opening("6 AWG", "1/0 AWG", { count: 2 })], { lineSide: "unmarked" }),
    edition,
    installedOn,
  );
}

export const JOINT_THRESHOLDS: readonly Threshold[] = [
  overNumbers({
    name: "volume that a box with a distribution block must exceed",
    where: ["topics/blocks/distribution-block.ts BOX_OVER_IN3"],
    kind: "published",
    source: "NFPA 70 314.28(E): boxes over 100 cubic inches",
    unit: "in3",
    step: 0.1,
    values: [99.9, 100, 100.1],
    answers: ["fail", "fail", "pass"],
    ask: blockInBox,
  }),
  overWords({
    name: "smallest leg in parallel",
    where: ["topics/parallel/parallel-legs.ts SMALLEST"],
    kind: "published",
    source: "NFPA 70 310.10(G)(1) (310.10(H)(1) in 2017): 1/0 AWG and larger",
    unit: "size",
    step: "conductor size",
    values: ["1 AWG", "1/0 AWG", "2/0 AWG"],
    answers: ["fail", "pass", "pass"],
    ask: (size, edition) => legs(size, {}, edition),
  }),
  overWords({
    name: "smallest neutral in parallel in an existing installation",
    where: ["topics/parallel/parallel-legs.ts SMALLEST_EXISTING_NEUTRAL"],
    kind: "published",
    source: "NFPA 70 310.10(G)(1) exception 2 (310.10(H)(1) in 2017): 2 AWG and 1 AWG neutrals",
    unit: "size",
    step: "conductor size",
    values: ["3 AWG", "2 AWG", "1 AWG"],
    answers: ["fail", "pass", "pass"],
    ask: (size, edition) =>
      legs(size, { role: "neutral", circuit: { sets: 2, smallLegs: "existing-neutral" } }, edition),
  }),
  overNumbers({
    name: "largest circuit of a wiring device marked CO/ALR",
    where: ["topics/metals/metal-marking.ts DEVICE_LIMIT_A"],
    kind: "published",
    source: "NFPA 70 404.14(C), 406.3(C) ((D) of both in 2023): devices of 20 A or less",
    unit: "A",
    step: 1,
    values: [19, 20, 21],
    answers: ["pass", "pass", "fail"],
    ask: (ratingA, edition) => onWiringDevice(ratingA, "CO/ALR", "aluminum", edition),
  }),
  ...(
    [
      [["2023"], "pass", "404.14(D), 406.3(D): devices of 20 A or less take it"],
      [["2017", "2020"], "missing", "404.14(C), 406.3(C): nothing is said of devices of 20 A or less"],
    ] as const
  ).map(([editions, small, says]) =>
    overNumbers({
      name: `largest circuit of an unmarked wiring device on copper-clad aluminum, ${editions[0]}`,
      where: ["topics/metals/metal-marking.ts DEVICE_LIMIT_A"],
      editions,
      kind: "published",
      source: `NFPA 70 ${says}; a larger one without a mark is for copper only`,
      unit: "A",
      step: 1,
      values: [19, 20, 21],
      answers: [small, small, "fail"],
      ask: (ratingA, edition) => onWiringDevice(ratingA, "unmarked", "copper-clad-aluminum", edition),
    }),
  ),
  overWords({
    name: "size from which the bending space is to be measured",
    where: ["topics/preparation/duties-on-site.ts SMALLEST_WITH_BENDING_DUTY"],
    kind: "hand",
    source:
      "NFPA 70 312.6(A): space by tables; the duty is said of 4 AWG and larger, which Table 312.6(B)(2) gives 3 in",
    unit: "size",
    step: "conductor size",
    values: ["6 AWG", "4 AWG", "3 AWG"],
    answers: ["silent", "said", "said"],
    ask: (size, edition) => {
      const joint = termination([conductor(size)], { circuit: circuit(30, 50) });
      const { dutiesOnSite } = checked(joint, equipmentLug("8 AWG", "1/0 AWG"), edition);
      return dutiesOnSite.some(({ duty }) => duty === "measure-bending-space") ? "said" : "silent";
    },
  }),
  overWords({
    name: "largest conductor under a binding screw",
    where: ["topics/range/wire-range.ts BINDING_SCREW_MAX"],
    kind: "published",
    source: "NFPA 70 110.14(A): 10 AWG and smaller",
    unit: "size",
    step: "conductor size",
    values: ["12 AWG", "10 AWG", "8 AWG"],
    answers: ["pass", "pass", "fail"],
    ask: (size, edition) =>
      ruled(
        "wire-range",
        termination([conductor(size)]),
        equipmentLug("14 AWG", "8 AWG", { construction: "binding-screw" }),
        edition,
      ),
  }),
  ...(
    [
      [
        "largest copper",
        "copper",
        "LARGEST",
        ["8 AWG", "6 AWG", "4 AWG"],
        ["pass", "pass", "fail"],
        "6 AWG and smaller",
      ],
      [
        "smallest aluminum",
        "aluminum",
        "SMALLEST_ALUMINUM",
        ["14 AWG", "12 AWG", "10 AWG"],
        ["fail", "pass", "pass"],
        "aluminum from 12 AWG",
      ],
      [
        "largest solid aluminum",
        "aluminum",
        "LARGEST_SOLID_ALUMINUM",
        ["12 AWG", "10 AWG", "8 AWG"],
        ["pass", "pass", "fail"],
        "solid aluminum to 10 AWG",
      ],
    ] as const
  ).map(([what, metal, where, values, answers, words]) =>
    overWords({
      name: `${what} of a splicing connector`,
      where: [`topics/use/listing.ts ${where}.areaKcmil`],
      kind: "published",
      source: `UL 486C, scope: ${words}`,
      unit: "size",
      step: "conductor size",
      values,
      answers,
      ask: (size, edition) => splicing(size, metal, edition),
    }),
  ),
  ...(
    [
      [
        "largest copper",
        "copper",
        "LARGEST",
        ["13.2 mm2", "13.3 mm2", "13.4 mm2"],
        ["pass", "pass", "fail"],
        "13.3 mm2",
      ],
      [
        "smallest aluminum",
        "aluminum",
        "SMALLEST_ALUMINUM",
        ["3.2 mm2", "3.3 mm2", "3.4 mm2"],
        ["fail", "pass", "pass"],
        "3.3 mm2",
      ],
      [
        "largest solid aluminum",
        "aluminum",
        "LARGEST_SOLID_ALUMINUM",
        ["5.2 mm2", "5.3 mm2", "5.4 mm2"],
        ["pass", "pass", "fail"],
        "5.3 mm2",
      ],
    ] as const
  ).map(([what, metal, where, values, answers, words]) =>
    overWords({
      name: `${what} of a splicing connector, metric`,
      where: [`topics/use/listing.ts ${where}.areaMm2`],
      kind: "published",
      source: `UL 486C, scope: ${words}`,
      unit: "size",
      step: 0.1,
      values,
      answers,
      ask: (size, edition) => splicing(size, metal, edition),
    }),
  ),
  overNumbers({
    name: "share of an enclosure that conductors fill",
    where: ["topics/space/enclosure-fill.ts CONDUCTORS_PERCENT"],
    kind: "published",
    source: "NFPA 70 312.8(A)(1): 40 %",
    unit: "in2 of 100",
    step: 0.01,
    values: [39.99, 40, 40.01],
    answers: ["pass", "pass", "fail"],
    ask: (conductors, edition) => filled(conductors, 1, "enclosure", edition),
  }),
  ...(["enclosure", "wireway"] as const).map((kind) =>
    overNumbers({
      name: `share of the ${kind} that conductors with splices fill`,
      where: ["topics/space/enclosure-fill.ts WITH_SPLICES_PERCENT"],
      kind: "published",
      source: "NFPA 70 312.8(A)(2), 376.56(A): 75 %",
      unit: "in2 of 100",
      step: 0.01,
      values: [44.99, 45, 45.01],
      answers: ["pass", "pass", "fail"],
      ask: (splices, edition) => filled(30, splices, kind, edition),
    }),
  ),
  overNumbers({
    name: "load of a connector without a temperature mark",
    where: ["core/rating-source.ts UNMARKED_CONNECTOR_C"],
    kind: "published",
    source:
      "UL 486A-486B: a connector without a mark counts as 75 C; 1/0 AWG copper carries 150 A there, 170 A at 90 C",
    unit: "A",
    step: 1,
    values: [149, 150, 151],
    answers: ["pass", "pass", "fail"],
    ask: (loadA, edition) => loaded({ loadA }, C90, "unmarked", edition),
  }),
  overNumbers({
    name: "load of an unmarked terminal on a circuit over 100 A",
    where: ["core/unmarked-terminal.ts LARGE.valueC"],
    kind: "published",
    source: "NFPA 70 110.14(C)(1)(b): 75 C; 1/0 AWG copper carries 150 A there, 170 A at 90 C",
    unit: "A",
    step: 1,
    values: [149, 150, 151],
    answers: ["pass", "pass", "fail"],
    ask: (loadA, edition) => loaded({ loadA }, "unmarked", C90, edition),
  }),
  overNumbers({
    name: "load of an unmarked terminal on 1 AWG",
    where: ["core/unmarked-terminal.ts BY_SIZE.valueC"],
    kind: "published",
    source: "NFPA 70 110.14(C)(1)(a): 60 C; 1 AWG copper carries 110 A there, 130 A at 75 C",
    unit: "A",
    step: 1,
    values: [109, 110, 111],
    answers: ["pass", "pass", "fail"],
    ask: (loadA, edition) => loaded({ loadA }, "unmarked", C90, edition, "1 AWG"),
  }),
  overNumbers({
    name: "load of an unmarked terminal on a circuit of unknown rating",
    where: ["core/rating-source.ts UNMARKED_SMALL_C"],
    kind: "published",
    source:
      "NFPA 70 110.14(C)(1): 60 C at least, where 1/0 AWG copper carries 125 A; over 100 A of load the circuit is over 100 A",
    level: "1/0 AWG carries the load whatever the rating of the circuit, so nothing is asked",
    unit: "A",
    step: 1,
    values: [99, 100, 101],
    answers: ["pass", "pass", "pass"],
    ask: (loadA, edition) =>
      loaded({ loadA, protection: { kind: "none-stated", because: "not given" } }, "unmarked", C90, edition),
  }),
  overNumbers({
    name: "continuous load at 125 %, at a terminal",
    where: ["core/joint-load.ts loadForSizing: 1.25", "core/joint-load.ts loadFromParts: 1.25"],
    kind: "published",
    source: "NFPA 70 215.2(A)(1): 1.25 x 120 = 150 A, what 1/0 AWG copper carries at 75 C",
    unit: "A",
    step: 0.1,
    values: [119.9, 120, 120.1],
    answers: ["pass", "pass", "fail"],
    ask: (continuousLoadA, edition) =>
      loaded({ continuousLoadA, nonContinuousLoadA: 0 }, { value: 75, unit: "Cel" }, C90, edition),
  }),
  overWords({
    name: "largest device that may be the next standard rating, at a joint",
    where: ["core/standard-rating.ts NEXT_RATING_UP_TO_A"],
    kind: "published",
    source: "NFPA 70 240.4(B), (C): up to 800 A. At 75 C 2 x 400 kcmil 670 A, 2 x 500 kcmil 760 A, 2 x 750 kcmil 950 A",
    unit: "A",
    step: "standard device",
    values: ["700 A", "800 A", "1000 A"],
    answers: ["pass", "pass", "fail"],
    ask: (device, edition) => {
      const size = device === "700 A" ? "400 kcmil" : device === "800 A" ? "500 kcmil" : "750 kcmil";
      const joint = termination([conductor(size, { count: 2 })], {
        circuit: circuit(600, Number(device.split(" ")[0]), { sets: 2, parallelLegsAlike: true }),
      });
      return ruled(
        "device-protection",
        joint,
        equipmentLug("1/0 AWG", "750 kcmil", { openings: [opening("1/0 AWG", "750 kcmil", { count: 2 })] }),
        edition,
      );
    },
  }),
  ...(
    [
      ["14 AWG", "copper", 15],
      ["12 AWG", "copper", 20],
      ["10 AWG", "copper", 30],
      ["12 AWG", "aluminum", 15],
      ["10 AWG", "aluminum", 25],
      ["12 AWG", "copper-clad-aluminum", 15],
      ["10 AWG", "copper-clad-aluminum", 25],
    ] as const
  ).map(([size, metal, limit]) =>
    overNumbers({
      name: `largest device of ${size} ${metal}`,
      where: ["core/small-conductor.ts CAPPED_SIZES"],
      kind: "published",
      source: `NFPA 70 240.4(D): ${String(limit)} A`,
      unit: "A",
      step: 1,
      values: [limit - 1, limit, limit + 1],
      answers: ["pass", "pass", "fail"],
      ask: (ratingA, edition) =>
        ruled(
          "device-protection",
          termination([conductor(size, { metal, insulation: "XHHW-2" })], {
            circuit: circuit(5, ratingA, { voltageV: 240 }),
            equipment: { tag: "P-1", kind: "panelboard", terminalTemperature: { value: 75, unit: "Cel" } },
          }),
          equipmentLug("14 AWG", "8 AWG"),
          edition,
        ),
    }),
  ),
  overNumbers({
    name: "longest tap to a tenth of its feeder, at a joint",
    where: [
      "core/tap-allowance.ts SHORT_TAP_UP_TO_FT",
      "topics/taps/feeder-tap.ts allowanceFor: compareExact(lengthFt, SHORT_UP_TO) <= 0",
    ],
    kind: "published",
    source: "NFPA 70 240.21(B)(1): 10 ft; 100 A are a tenth of 1000 A but no third",
    unit: "ft",
    step: 0.01,
    values: [9.99, 10, 10.01],
    answers: ["pass", "pass", "fail"],
    ask: (lengthFt, edition) => tapped({ feederDeviceA: 1000, lengthFt }, edition),
  }),
  overNumbers({
    name: "longest tap to a third of its feeder, at a joint",
    where: [
      "core/tap-allowance.ts LONG_TAP_UP_TO_FT",
      "topics/taps/feeder-tap.ts allowanceFor: compareExact(lengthFt, LONG_UP_TO) <= 0",
    ],
    kind: "published",
    source: "NFPA 70 240.21(B)(2): 25 ft",
    unit: "ft",
    step: 0.01,
    values: [24.99, 25, 25.01],
    answers: ["pass", "pass", "fail"],
    ask: (lengthFt, edition) => tapped({ feederDeviceA: 300, lengthFt }, edition),
  }),
  ...(
    [
      ["tenth", "SHORT_TAP_DIVISOR", 10, 8],
      ["third", "LONG_TAP_DIVISOR", 3, 20],
    ] as const
  ).map(([share, where, times, lengthFt]) =>
    overNumbers({
      name: `feeder device whose ${share} a tap reaches, at a joint`,
      where: [`core/tap-allowance.ts ${where}`],
      kind: "published",
      source: `NFPA 70 240.21(B)(1), (2): 3 AWG carries 100 A, a ${share} of ${String(times * 100)} A`,
      unit: "A",
      step: 1,
      values: [times * 100 - 1, times * 100, times * 100 + 1],
      answers: ["pass", "pass", "fail"],
      ask: (feederDeviceA, edition) => tapped({ feederDeviceA, lengthFt }, edition),
    }),
  ),
  ...(
    [
      [
        "rod, copper",
        "ROD_COPPER",
        "copper",
        "copper-bonded-rod",
        ["8 AWG", "6 AWG", "4 AWG"],
        "250.66(A): 6 AWG copper",
      ],
      [
        "rod, aluminum",
        "ROD_ALUMINUM",
        "aluminum",
        "copper-bonded-rod",
        ["6 AWG", "4 AWG", "3 AWG"],
        "250.66(A): 4 AWG aluminum",
      ],
      [
        "concrete-encased electrode, copper",
        "CONCRETE_COPPER",
        "copper",
        "concrete-encased-rebar",
        ["6 AWG", "4 AWG", "3 AWG"],
        "250.66(B): 4 AWG copper",
      ],
    ] as const
  ).map(([what, where, metal, electrode, values, clause]) =>
    overWords({
      name: `smallest conductor to a ${what}`,
      where: [`core/electrode-conductor.ts ${where}.size`],
      kind: "published",
      source: `NFPA 70 ${clause}; by the table 1000 kcmil would take 2/0 AWG`,
      unit: "size",
      step: "conductor size",
      values,
      answers: ["fail", "pass", "pass"],
      ask: (size, edition) => toElectrode(size, metal, electrode, edition),
    }),
  ),
  overWords({
    name: "smallest ground ring that limits its conductor",
    where: ["topics/grounding/electrode-conductor-size.ts SMALLEST_RING"],
    kind: "published",
    source: "NFPA 70 250.52(A)(4), 250.66(C): a ring of 2 AWG or larger; 2 AWG reaches it, and no ring of 1 AWG",
    unit: "size",
    step: "conductor size",
    values: ["3 AWG", "2 AWG", "1 AWG"],
    answers: ["missing", "pass", "fail"],
    ask: (ringSize, edition) => toElectrode("2 AWG", "copper", "ground-ring", edition, ringSize),
  }),
  ...(["water-pipe", "structural-metal"] as const).flatMap((bonding) =>
    (
      [
        ["copper", ["2/0 AWG", "3/0 AWG", "4/0 AWG"]],
        ["aluminum", ["4/0 AWG", "250 kcmil", "300 kcmil"]],
      ] as const
    ).map(([metal, values]) =>
      overWords({
        name: `size that a ${metal} jumper to a ${bonding} need not exceed`,
        where: [`edition 2020 pipeBondingCap.${metal}`, `edition 2023 pipeBondingCap.${metal}`],
        editions: ["2020", "2023"],
        kind: "published",
        source:
          "NFPA 70 250.104(A)(1), (C): no larger than 3/0 AWG copper or 250 kcmil aluminum; 12.5 % of 2000 kcmil were 250. Seen in print for water pipes in 2023; 2020 and (C) from memory, of two hands",
        unit: "size",
        step: "conductor size",
        values,
        answers: ["fail", "pass", "pass"],
        ask: (size, edition) => bonded(size, metal, bonding, edition),
      }),
    ),
  ),
  overWords({
    name: "size of a jumper beyond the table, at a joint",
    where: ["core/bonding-jumper.ts SHARE_PERCENT"],
    kind: "published",
    source: "NFPA 70 250.102(C)(1): 12.5 % of 2000 kcmil = 250 kcmil",
    unit: "size",
    step: 1,
    values: ["249 kcmil", "250 kcmil", "251 kcmil"],
    answers: ["fail", "pass", "pass"],
    ask: (size, edition) => bonded(size, "copper", "supply-side", edition),
  }),
  overWords({
    name: "day from which the line-side mark is asked for",
    where: ["edition 2020 lineSideMark.date"],
    editions: ["2020"],
    kind: "published",
    source: "NFPA 70-2020 230.46: effective January 1, 2023",
    unit: "",
    step: "day",
    values: ["2022-12-31", "2023-01-01", "2023-01-02"],
    answers: ["pass", "fail", "fail"],
    ask: unmarkedOnService,
  }),
];
