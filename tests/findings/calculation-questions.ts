/** Questions to every calculation: answered, missing a fact and refused alike. */
import {
  BOLT_KINDS,
  type CalculationName,
  type CalculationQuestions,
  type ConductorRun,
  type FillConductor,
  SHORT_CIRCUIT_DEVICES,
  TAP_ALLOWANCES,
  TAP_CONDITIONS,
} from "@landfast/rules";

const c = (value: number) => ({ value, unit: "Cel" }) as const;
const ft = (value: number) => ({ value, unit: "ft" }) as const;
const inches = (value: number) => ({ value, unit: "in" }) as const;

const WIRES: readonly FillConductor[] = [
  { kind: "conductor", count: 3, size: "3/0 AWG", insulation: "THHN/THWN-2", stranding: "class-B" },
  { kind: "conductor", count: 1, size: "4 AWG", insulation: "bare", stranding: "class-B" },
  { kind: "conductor", count: 2, size: "2 AWG", insulation: "XHHW-2", stranding: "compact" },
  { kind: "cable", count: 1, diameter: { value: 11, unit: "mm" } },
  {
    kind: "conductor",
    count: 1,
    size: "2 AWG",
    insulation: "USE-2",
    stranding: "class-B",
    measuredArea: { value: 70, unit: "mm2" },
  },
];
const DC = {
  kind: "dc-resistance",
  stranding: "stranded",
  coating: "coated",
  temperature: { value: 140, unit: "degF" },
} as const;
const AC = { kind: "resistance-and-reactance", conduit: "steel", powerFactor: 0.83 } as const;
const CIRCUIT = { voltageV: 480, loadA: 187.3, sets: 2, metal: "copper", limitPercent: 2.7, length: ft(413) } as const;
const FAULT = { metal: "copper", currentA: 12345, timeS: 0.37 } as const;
const CMIL = {
  kind: "circular-mil",
  initialTemperature: { value: 167, unit: "degF" },
  finalTemperature: c(150),
} as const;
const K = { kind: "k-factor", arrangement: "bundled", insulation: "PVC 70 C" } as const;
const MOTOR = { kind: "squirrel-cage", horsepower: "75", voltageV: 460, build: "ordinary", nameplateA: 90.7 } as const;

const SMALL_BOX = {
  boxVolumeIn3: 18,
  conductors: [{ count: 2, size: "14 AWG", manner: "ends-or-spliced" }],
  equipmentGrounds: [],
  internalClamps: true,
  supportFittings: 0,
  devices: [],
} as const;

/** Conductors that no table of areas holds: by size, by type, by make-up, and for want of a fact. */
const UNLISTED: readonly FillConductor[] = [
  { kind: "conductor", count: 3, size: "1250 kcmil", insulation: "THHN", stranding: "class-B" },
  { kind: "conductor", count: 3, size: "3 AWG", insulation: "XHHW-2", stranding: "compact" },
  { kind: "conductor", count: 1, size: "6 AWG", insulation: "bare", stranding: "solid" },
  { kind: "conductor", count: 3, size: "35 mm2", insulation: "THWN-2", stranding: "class-B" },
  { kind: "conductor", count: 3, size: "2 AWG", insulation: "USE-2", stranding: "class-B" },
  { kind: "conductor", count: 3, size: "2 AWG", insulation: "RHW-2", stranding: "compact" },
  { kind: "conductor", count: 3, size: "2 AWG", insulation: "THWN-2", stranding: "class-K" },
  { kind: "conductor", count: 3, size: "2 AWG", insulation: "THWN-2", stranding: "unknown" },
  { kind: "conductor", count: 3, size: "2 AWG", insulation: "RHW-2", stranding: "class-B" },
];

const RUN: ConductorRun = {
  metal: "copper",
  insulation: "THHN",
  place: "damp",
  sets: 2,
  manner: "raceway",
  ambient: { value: 104, unit: "degF" },
  sunlitRoof: "none",
  grouping: {
    in: "raceway",
    conductors: [
      { kind: "three-phase-four-wire-wye", count: 2, mostlyNonlinear: true },
      { kind: "spare", count: 1 },
    ],
  },
  supplyEnd: { value: 167, unit: "degF" },
  loadEnd: "unmarked",
};
const ROOF_RUN: ConductorRun = {
  metal: "aluminum",
  insulation: "other",
  sets: 1,
  manner: "raceway",
  ambient: c(37.5),
  sunlitRoof: { aboveRoof: { value: 10, unit: "mm" } },
  grouping: { in: "metal-wireway", conductors: 12 },
  loadEnd: c(75),
};
const CABLE_RUN: ConductorRun = {
  ...RUN,
  insulation: "NM",
  place: "dry",
  sets: 1,
  grouping: { in: "cable", conductors: 2 },
};
const RUNS: readonly ConductorRun[] = [
  RUN,
  ROOF_RUN,
  { ...ROOF_RUN, insulation: "XHHW-2", supplyEnd: c(90) },
  CABLE_RUN,
  { ...RUN, manner: "free-air", sets: 1, grouping: { in: "apart" } },
  { ...RUN, grouping: { in: "nipple", length: { value: 600, unit: "mm" }, conductors: 31 } },
];

const TAP = {
  deviceAheadA: 125,
  endDeviceA: 60,
  continuousLoadA: 31.3,
  nonContinuousLoadA: 5,
  length: { value: 2.9, unit: "m" },
  physicallyProtected: true,
  leavesEnclosure: true,
  primaryV: 480,
  secondaryV: 208,
  highBay: { wallHeight: ft(36), horizontalLength: ft(20), tapAboveFloor: { value: 10, unit: "m" } },
  windings: "delta-delta",
  transformerSecondaryA: 90,
  conditionsMet: TAP_CONDITIONS,
  run: {
    ...ROOF_RUN,
    metal: "copper",
    insulation: "XHHW-2",
    supplyEnd: c(90),
    sunlitRoof: "none",
    grouping: { in: "raceway", conductors: 6 },
  },
} as const;
const WRONG_TAP = {
  ...TAP,
  deviceAheadA: 900,
  continuousLoadA: 61.3,
  length: ft(101),
  physicallyProtected: false,
  highBay: { wallHeight: ft(35), horizontalLength: ft(26), tapAboveFloor: ft(29) },
  windings: "other",
  conditionsMet: [],
  run: { ...TAP.run, sets: 2 },
} as const;

function without<const Question extends object, Fact extends keyof Question>(
  fact: Fact,
  question: Question,
): Omit<Question, Fact> {
  const { [fact]: _left, ...rest } = question;
  return rest;
}

export const CALCULATION_QUESTIONS: { readonly [Name in CalculationName]: readonly CalculationQuestions[Name][] } = {
  ampacity: RUNS.flatMap((run) => [
    { size: "2/0 AWG", run },
    { size: "2/0 AWG", run, circuitRatingA: 150 },
    { size: "12 AWG", run },
  ]),
  "bolt-torque": [
    ...BOLT_KINDS.flatMap((bolt) =>
      [true, false].map((lubricated) => ({ table: "both", diameter: "3/4", bolt, lubricated }) as const),
    ),
    { table: "NEMA CC 1", diameter: "1/2", bolt: "stainless-steel", lubricated: false },
    { table: "NETA ATS", diameter: "1/2", bolt: "aluminum" },
  ],
  "box-fill": [
    {
      boxVolumeIn3: 42,
      conductors: [
        { count: 4, size: "12 AWG", manner: "unbroken-loop" },
        { count: 3, size: "14 AWG", manner: "stays-inside" },
      ],
      equipmentGrounds: [
        { count: 5, size: "14 AWG" },
        { count: 1, size: "12 AWG", isolated: true },
      ],
      internalClamps: true,
      supportFittings: 1,
      devices: [{ largestConductor: "12 AWG", gangs: 2 }],
      terminalBlocks: [{ largestConductor: "12 AWG" }],
    },
    // Sizes without an allowance: too large for one, too small for one, and of another series.
    ...["4 AWG", "20 AWG", "2.5 mm2"].map((size) => ({
      ...SMALL_BOX,
      conductors: [{ count: 2, size, manner: "ends-or-spliced" } as const],
    })),
    { ...SMALL_BOX, equipmentGrounds: [{ count: 1, size: "20 AWG" }] },
    { ...SMALL_BOX, devices: [{ largestConductor: "4 AWG", gangs: 1 }] },
    { ...SMALL_BOX, terminalBlocks: [{ largestConductor: "20 AWG" }] },
  ],
  convert: [
    { kind: "torque", torque: { value: 31.1, unit: "N-m" }, to: "lbf-ft" },
    { kind: "length", length: { value: 100, unit: "m" }, to: "ft" },
    { kind: "area", area: { value: 70, unit: "mm2" }, to: "in2" },
    { kind: "temperature", temperature: { value: -40.5, unit: "degF" }, to: "Cel" },
    { kind: "temperature", temperature: c(-40.5), to: "degF" },
    { kind: "temperature", temperature: { value: 90.1, unit: "degF" }, to: "degF" },
    { kind: "wire-geometry", size: "10 AWG" },
    { kind: "wire-geometry", size: "4/0 AWG" },
    { kind: "wire-geometry", size: "250 kcmil" },
    { kind: "size-area", size: "35 mm2" },
    { kind: "size-area", size: "250 kcmil" },
    { kind: "size-area", size: "3/0 AWG" },
  ],
  "contact-resistance": [
    [18, 19, 30],
    [18, 19, 27],
    [0.1, 0.15],
    [7.77, 7.77, 11.655, 11.656],
  ].map((readings) => ({
    readings: readings.map((microOhm, index) => ({ joint: `phase ${"ABCD"[index] ?? ""}`, microOhm })),
  })),
  "dc-resistance": [
    { metal: "copper", stranding: "solid", coating: "uncoated", size: "12 AWG", temperature: c(20), length: ft(77.7) },
    { metal: "aluminum", stranding: "stranded", size: "750 kcmil", temperature: { value: -4, unit: "degF" } },
    { metal: "copper", stranding: "stranded", size: "2 AWG", temperature: c(75) },
  ],
  "motor-circuit": [
    { ask: "short-circuit-device", motor: MOTOR, duty: "continuous" },
    ...SHORT_CIRCUIT_DEVICES.flatMap((kind) =>
      [false, true].map(
        (failsToStart) =>
          ({
            ask: "short-circuit-device",
            motor: MOTOR,
            duty: "continuous",
            shortCircuitDevice: { kind, failsToStart, efficientDesignB: failsToStart },
          }) as const,
      ),
    ),
    {
      ask: "short-circuit-device",
      motor: { ...MOTOR, kind: "wound-rotor", horsepower: "30" },
      duty: "continuous",
      shortCircuitDevice: { kind: "time-delay-fuse" },
    },
    {
      ask: "short-circuit-device",
      motor: { ...MOTOR, voltageV: 230 },
      duty: "continuous",
      shortCircuitDevice: { kind: "inverse-time-breaker", failsToStart: true },
    },
    {
      ask: "short-circuit-device",
      motor: { ...MOTOR, build: "multispeed", nameplateA: 3000 },
      duty: "continuous",
      shortCircuitDevice: { kind: "nontime-delay-fuse" },
    },
    { ask: "conductor", motor: MOTOR, duty: "continuous" },
    {
      ask: "conductor",
      motor: MOTOR,
      duty: "continuous",
      conductor: { metal: "aluminum", terminalTemperature: c(60) },
    },
    {
      ask: "conductor",
      motor: MOTOR,
      duty: "continuous",
      conductor: {
        metal: "copper",
        insulationRating: { value: 194, unit: "degF" },
        terminalTemperature: "unmarked",
        designLetter: "B",
      },
    },
    { ask: "conductor", motor: MOTOR, duty: "continuous", conductor: { metal: "copper" } },
    { ask: "overload", motor: MOTOR, duty: "continuous", serviceFactor: "unmarked", temperatureRiseC: 50 },
    { ask: "overload", motor: MOTOR, duty: "continuous", serviceFactor: 1, temperatureRiseC: 40 },
    { ask: "overload", motor: MOTOR, duty: "continuous", serviceFactor: "unmarked", temperatureRiseC: 41 },
    { ask: "overload", motor: MOTOR, duty: "other" },
    { ask: "conductor", motor: { ...MOTOR, build: "multispeed" }, duty: "continuous" },
    { ask: "conductor", motor: { ...MOTOR, kind: "synchronous" }, duty: "continuous" },
    { ask: "conductor", motor: { ...MOTOR, voltageV: 481 }, duty: "continuous" },
    { ask: "conductor", motor: MOTOR, duty: "continuous", otherMotors: [MOTOR] },
    ...[undefined, { metal: "copper", insulationRating: c(90), terminalTemperature: c(75) } as const].map(
      (conductor) =>
        ({
          ask: "conductor",
          motor: { ...MOTOR, horsepower: "25" },
          duty: "continuous",
          otherMotors: [MOTOR],
          otherContinuousLoadA: 12.5,
          otherLoadA: 7,
          ...(conductor && { conductor }),
        }) as const,
    ),
  ],
  "pull-box": [undefined, { width: inches(20), height: inches(24), depth: inches(10) }].map((box) => ({
    largestConductor: "350 kcmil",
    entries: [
      { id: "A", wall: "left", row: 1, tradeSize: "2-1/2" },
      { id: "B", wall: "right", row: 1, tradeSize: "2" },
      { id: "C", wall: "left", row: 1, tradeSize: "3/4" },
      { id: "D", wall: "top", row: 1, tradeSize: "1-1/4" },
      { id: "E", wall: "back", row: 1, tradeSize: "2" },
    ],
    pulls: [
      { from: "A", to: "B", spliced: false },
      { from: "C", to: "D", spliced: false, apart: { value: 200, unit: "mm" } },
      { from: "E", to: "D", spliced: false, apart: inches(13) },
    ],
    ...(box && { box }),
  })),
  "raceway-fill": [
    { ask: "smallest-trade-size", raceway: { kind: "FMC" }, conductors: [{ ...WIRES[0], count: 90 } as FillConductor] },
    { ask: "fill", raceway: { kind: "EMT", tradeSize: "2-1/2" }, conductors: WIRES },
    { ask: "fill", raceway: { kind: "RMC", tradeSize: "2" }, conductors: WIRES.slice(0, 1), nippleLength: ft(1.5) },
    { ask: "smallest-trade-size", raceway: { kind: "PVC-80" }, conductors: WIRES },
    {
      ask: "how-many",
      raceway: { kind: "IMC", tradeSize: "1" },
      conductors: [{ ...WIRES[1], count: 1 } as FillConductor],
    },
    {
      ask: "how-many",
      raceway: { kind: "IMC", tradeSize: "1/2" },
      conductors: [{ ...WIRES[0], count: 1 } as FillConductor],
    },
    ...UNLISTED.map(
      (conductor) => ({ ask: "fill", raceway: { kind: "RMC", tradeSize: "4" }, conductors: [conductor] }) as const,
    ),
    { ask: "fill", raceway: { kind: "EMT" }, conductors: WIRES },
    { ask: "fill", raceway: { kind: "EMT", tradeSize: "5" }, conductors: WIRES },
    { ask: "fill", raceway: { kind: "LFMC", tradeSize: "3/8" }, conductors: WIRES.slice(0, 1) },
    { ask: "smallest-trade-size", raceway: { kind: "EMT" }, conductors: [{ ...WIRES[0], count: 60 } as FillConductor] },
  ],
  "short-circuit": [
    ...[CMIL, K].flatMap((heating) =>
      (["smallest-size", "longest-time", "largest-current"] as const).map((ask) => ({
        ...FAULT,
        ask,
        heating,
        size: heating === K ? "400 mm2" : "350 kcmil",
      })),
    ),
    { ...FAULT, ask: "longest-time", heating: K, size: "300 mm2", currentA: 800 },
  ],
  "voltage-drop": [
    ...(["drop", "size-for-limit", "longest-run"] as const).flatMap((ask) => [
      { ...CIRCUIT, ask, system: "three-phase", impedance: AC, size: "1/0 AWG" } as const,
      {
        ...CIRCUIT,
        ask,
        system: "single-phase",
        impedance: { kind: "effective-impedance", conduit: "PVC" },
        size: "2 AWG",
      } as const,
      { ...CIRCUIT, ask, system: "dc", impedance: DC, size: "250 kcmil" } as const,
    ]),
    { ...CIRCUIT, ask: "drop", system: "dc", impedance: AC, size: "250 kcmil" },
  ],
  "wireway-fill": (["metal-wireway", "nonmetallic-wireway", "enclosure"] as const).flatMap((kind) => [
    {
      ask: "fill",
      kind,
      width: inches(6),
      height: { value: 100, unit: "mm" },
      conductors: WIRES,
      splices: { value: 30, unit: "cm2" },
    } as const,
    { ask: "smallest-section", kind, conductors: WIRES, splices: { value: 9, unit: "in2" } } as const,
    { ask: "smallest-section", kind, conductors: WIRES.slice(0, 1) } as const,
    { ask: "fill", kind, height: inches(4), conductors: WIRES } as const,
    { ask: "fill", kind, width: inches(4), conductors: WIRES } as const,
    ...UNLISTED.map((conductor) => ({ ask: "smallest-section", kind, conductors: [conductor] }) as const),
  ]),
  "conductor-size": RUNS.flatMap((run) =>
    (["feeder", "branch-circuit", "receptacle-branch-circuit"] as const).flatMap((circuit) => [
      {
        circuit,
        continuousLoadA: 61.7,
        nonContinuousLoadA: 33.3,
        deviceA: "smallest",
        deviceKind: "circuit-breaker",
        run,
      } as const,
      { circuit, continuousLoadA: 0, nonContinuousLoadA: 12.5, deviceA: 20, deviceKind: "fuse", run } as const,
      {
        circuit,
        continuousLoadA: 700,
        nonContinuousLoadA: 100,
        deviceA: 1000,
        deviceKind: "fuse",
        listedFor100Percent: true,
        run,
      } as const,
    ]),
  ),
  "overcurrent-device": [
    ...RUNS.flatMap((run) =>
      (["smallest-for-load", "largest-for-conductor", "check"] as const).flatMap((ask) =>
        (["fuse", "circuit-breaker"] as const).map(
          (deviceKind) =>
            ({
              ask,
              circuit: "branch-circuit",
              serves: "ordinary",
              deviceKind,
              deviceA: 125,
              continuousLoadA: 61.7,
              nonContinuousLoadA: 33.3,
              conductor: { size: "1/0 AWG", run },
            }) as const,
        ),
      ),
    ),
    { ask: "check", circuit: "feeder", serves: "motor", deviceKind: "fuse" },
  ],
  "strand-class": [
    ...[1, 7, 19, 37, 49, 133, 259, 532, 1330, 2107, 5320].flatMap((strands) =>
      ["14 AWG", "3 AWG", "4/0 AWG", "500 kcmil"].map((size) => ({ size, metal: "copper", strands }) as const),
    ),
    { size: "4/0 AWG", metal: "aluminum", strands: 19 },
    { size: "3 AWG", metal: "copper", strands: 133, lay: "bunched" },
    { size: "3 AWG", metal: "copper", strands: 133, lay: "concentric" },
    { size: "2/0 AWG", metal: "aluminum", strands: 1330 },
    { size: "2 AWG", metal: "copper", strands: 19 },
    { size: "35 mm2", metal: "copper", strands: 7 },
  ],
  tap: [
    // Taps that are wrong in every way that their allowance knows
    ...(
      [
        "feeder-tap-in-high-bay",
        "secondary-protected-by-primary",
        "industrial-secondary-to-25-ft",
        "secondary-outdoors",
      ] as const
    ).flatMap((allowance) => [
      { ...WRONG_TAP, ask: "check", allowance, size: "12 AWG" } as const,
      { ...WRONG_TAP, ask: "smallest-size", allowance } as const,
    ]),
    ...TAP_ALLOWANCES.map((allowance) => ({ ...TAP, ask: "check", allowance, size: "4/0 AWG" }) as const),
    ...(
      [
        ["feeder-tap-to-25-ft", ["length", "endDeviceA", "continuousLoadA"]],
        ["secondary-to-25-ft", ["primaryV", "secondaryV"]],
        ["feeder-tap-in-high-bay", ["highBay"]],
        ["secondary-protected-by-primary", ["windings"]],
        ["industrial-secondary-to-25-ft", ["endDeviceA", "transformerSecondaryA"]],
      ] as const
    ).flatMap(([allowance, facts]) =>
      facts.map((fact) => without(fact, { ...TAP, ask: "check", allowance, size: "4/0 AWG" })),
    ),
    without("conditionsMet", { ...TAP, ask: "check", allowance: "secondary-to-25-ft", size: "4/0 AWG" }),
    without("leavesEnclosure", {
      ...TAP,
      ask: "check",
      allowance: "feeder-tap-to-10-ft",
      deviceAheadA: 3000,
      size: "4/0 AWG",
    }),
    without("conditionsMet", { ...TAP, ask: "smallest-size", allowance: "secondary-outdoors" }),
    { ...TAP, ask: "check", allowance: "feeder-tap-outdoors" },
    { ...TAP, ask: "smallest-size", allowance: "feeder-tap-outdoors", run: { ...TAP.run, sets: 2 } },
    { ...TAP, ask: "smallest-size", allowance: "feeder-tap-outdoors", endDeviceA: 900 },
    ...TAP_ALLOWANCES.flatMap((allowance) =>
      RUNS.slice(1, 4).map((run) => ({ ...TAP, ask: "smallest-size", allowance, run }) as const),
    ),
  ],
  "equipment-ground": [
    { deviceA: 225, metal: "copper" },
    ...[true, false].flatMap((separateRaceways) =>
      ["300 kcmil", "500 kcmil", "12 AWG"].map(
        (minimum) =>
          ({
            deviceA: 800,
            metal: "aluminum",
            phases: { metal: "aluminum", installed: "500 kcmil", minimum, sets: 3, separateRaceways },
          }) as const,
      ),
    ),
    { metal: "copper" },
  ],
  "electrode-conductor": (
    ["copper-bonded-rod", "concrete-encased-rebar", "ground-ring", "water-pipe"] as const
  ).flatMap((electrode) => [
    {
      service: { size: "4/0 AWG", metal: "aluminum", sets: 5 },
      metal: "copper",
      electrode,
      soleConnection: true,
      ringSize: "2 AWG",
    } as const,
    { service: { size: "4/0 AWG", metal: "aluminum", sets: 5 }, metal: "aluminum", electrode } as const,
  ]),
  "bonding-jumper": [
    { kind: "load-side", metal: "copper", deviceA: 225 },
    { kind: "main", metal: "aluminum", supply: { size: "3/0 AWG", metal: "copper", sets: 2 } },
    {
      kind: "supply-side",
      metal: "copper",
      supply: { size: "750 kcmil", metal: "copper", sets: 6 },
      racewaysBondedApart: 3,
    },
    {
      kind: "system",
      metal: "copper",
      supply: { size: "750 kcmil", metal: "aluminum", sets: 3 },
      equivalentSupply: { size: "600 kcmil", metal: "copper", sets: 3 },
    },
    { kind: "system", metal: "copper" },
  ],
  "dwelling-service": [
    ...RUNS.flatMap((run) =>
      [100, 200, 320, 401].map(
        (ratingA) => ({ ratingA, system: "single-phase-120/240", carriesWholeLoad: true, run }) as const,
      ),
    ),
    {
      ratingA: 200,
      system: "single-phase-120/240",
      carriesWholeLoad: true,
      run: { ...RUN, sets: 1, ambient: c(30), supplyEnd: c(75), grouping: { in: "raceway", conductors: 3 } },
    },
  ],
  "bending-space": (["opposite", "side"] as const).flatMap((entry) =>
    [undefined, true, false].flatMap((removableTerminal) =>
      ["12 AWG", "4/0 AWG", "500 kcmil"].flatMap((size) =>
        [undefined, { value: 170, unit: "mm" } as const].map((available) => ({
          size,
          metal: "aluminum" as const,
          stranding: "compact" as const,
          entry,
          wiresPerTerminal: 1,
          ...(removableTerminal !== undefined && { removableTerminal }),
          ...(available && { available }),
        })),
      ),
    ),
  ),
  "temperature-rise": [
    ...[12, 0.4, 1, 3.5, 15, 15.2, 0, -4].map(
      (temperatureRiseC) => ({ comparisons: [{ with: "like-part", temperatureRiseC, likeLoad: true }] }) as const,
    ),
    ...[10, 10.5, 20, 33.3, 40, 41, -1].map(
      (temperatureRiseC) => ({ comparisons: [{ with: "air", temperatureRiseC }] }) as const,
    ),
    {
      comparisons: [
        { with: "like-part", temperatureRiseC: 2, likeLoad: true },
        { with: "air", temperatureRiseC: 25 },
      ],
    },
    { comparisons: [{ with: "like-part", temperatureRiseC: 12 }] },
    { comparisons: [{ with: "like-part", temperatureRiseC: 12, likeLoad: false }] },
  ],
  torque: [
    {
      drive: { kind: "socket", acrossFlats: "5/16" },
      marked: "unmarked",
      tool: {
        from: { value: 5, unit: "lbf-ft" },
        to: { value: 40, unit: "N-m" },
        bits: [{ kind: "recessed", acrossFlats: "5/16" }],
        calibration: "none",
      },
    },
    ...(
      [
        { kind: "socket", acrossFlats: "5/16" },
        { kind: "external-hex" },
        { kind: "split-bolt" },
        { kind: "breakaway" },
        { kind: "clamp-bolt" },
        { kind: "slotted-hex", slotWidth: inches(0.06), slotLength: { value: 7, unit: "mm" } },
        { kind: "slotted", screwSize: "under-10", slotWidth: inches(0.04), slotLength: inches(0.2) },
      ] as const
    ).flatMap((drive) =>
      (["unmarked", { torque: { value: 31, unit: "N-m" }, on: "connector" }] as const).flatMap((marked) => [
        { drive, marked, largestConductor: "8 AWG", drivenBy: "slot" } as const,
        {
          drive,
          marked,
          largestConductor: "4/0 AWG",
          drivenBy: "hexagon",
          usedOn: "2026-05-31",
          tool: {
            from: { value: 5, unit: "lbf-ft" },
            to: { value: 40, unit: "N-m" },
            bits: [{ kind: "recessed", acrossFlats: "5/16" }, { kind: "external-hex" }],
            calibration: { validUntil: "2026-06-01" },
          },
        } as const,
      ]),
    ),
  ],
};
