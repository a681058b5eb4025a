/** Joints as they are met on a site, mostly allowed: what `generate` then spoils. */
import type {
  ConductorMetal,
  ConnectorFamily,
  Construction,
  Drive,
  Electrode,
  Insulation,
  Location,
  PlaceListing,
  Stranding,
  Torque,
} from "@landfast/rules";
import { tableAmpacity } from "./clauses/ampacity.js";
import type { Dice } from "./dice.js";
import type { Draft, OpenCircuit, OpenConnector, OpenEquipment, OpenGroup, OpenJoint, OpenOpening } from "./draft.js";
import { cell, cmilOf, SIZES, tableRows } from "./read-table.js";

type Edition = "2017" | "2020" | "2023";

const BUILDING_STRANDS: readonly Stranding[] = ["solid", "class-B", "class-C", "compressed", "compact"];
const STANDARD = tableRows("nfpa70", "2023", "standard-ratings").map((row) => Number(cell(row, "key")));
const SOCKETS = tableRows("nfpa70", "2023", "torque-socket").map((row) => cell(row, "key"));
const EQUIPMENT_GROUND = tableRows("nfpa70", "2023", "equipment-ground");

export const sizeAt = (index: number): string => SIZES[Math.min(Math.max(index, 0), SIZES.length - 1)] ?? "2 AWG";
export const indexOf = (size: string): number => SIZES.indexOf(size);
const between = (dice: Dice, from: string, to: string): string =>
  sizeAt(indexOf(from) + dice.int(indexOf(to) - indexOf(from) + 1));

interface Part {
  readonly family: ConnectorFamily;
  readonly construction: Construction;
  readonly functions: OpenConnector["functions"];
  readonly openings: OpenOpening[];
}

function part(
  dice: Dice,
  { family, construction, functions, openings }: Part,
  change: Partial<OpenConnector> = {},
): OpenConnector {
  const connector: OpenConnector = {
    description: `${family} for the test`,
    family,
    construction,
    functions,
    metalMarking: dice.weighted([50, "AL9CU"], [20, "AL7CU"], [5, "CU9AL"], [5, "CU7AL"], [10, "AL-CU"], [10, "CU-AL"]),
    voltageV: 600,
    insulated: false,
    openingsApart: true,
    listings: [{ standard: change.grounding === undefined ? "UL 486A-486B" : "UL 467" }],
    places: ["equipment"],
    lineSide: "unmarked",
    screws: [],
    openings,
    mounting: { kind: "free" },
    reusable: true,
    ...change,
  };
  if (construction === "compression") {
    connector.reusable = false;
    connector.tooling = { tool: "hand press Alder", die: "A-7", crimps: 2 };
  } else if (construction === "weld") {
    connector.reusable = false;
    connector.tooling = { tool: "mold Birch", die: "charge 115" };
  } else {
    const ids = new Set(openings.map(({ screw }) => screw).filter((id) => id !== undefined));
    const drive = driveFor(dice, construction, openings);
    connector.screws = [...ids].map((id) => ({ id, drive, torque: torqueFor(dice, drive) }));
  }
  return connector;
}

function driveFor(dice: Dice, construction: Construction, openings: readonly OpenOpening[]): Drive {
  if (construction === "split-bolt") return { kind: "split-bolt" };
  if (construction === "insulation-piercing")
    return dice.percent(80) ? { kind: "breakaway" } : { kind: "external-hex" };
  if (construction === "twist-on") return { kind: "hand" };
  if (construction === "spring") return { kind: "none" };
  const largest = Math.max(...openings.flatMap(({ ranges }) => ranges.map(({ to }) => cmilOf(to) ?? 0)));
  const slot = {
    slotWidth: { value: dice.pick([0.04, 0.047, 0.048, 0.06]), unit: "in" },
    slotLength: { value: dice.pick([0.2, 0.25, 0.26, 0.3]), unit: "in" },
  } as const;
  if (construction === "bolted-clamp")
    return dice.weighted<Drive>([50, { kind: "clamp-bolt" }], [50, { kind: "external-hex" }]);
  if (construction === "binding-screw") return { kind: "slotted", screwSize: "under-10", ...slot };
  if (largest <= 41_740)
    return dice.weighted<Drive>(
      [60, { kind: "slotted", screwSize: "10-and-larger", ...slot }],
      [20, { kind: "slotted-hex", ...slot }],
      [20, { kind: "socket", acrossFlats: dice.pick(SOCKETS) }],
    );
  return dice.weighted<Drive>(
    [75, { kind: "socket", acrossFlats: dice.pick(SOCKETS) }],
    [25, { kind: "external-hex" }],
  );
}

function torqueFor(dice: Dice, drive: Drive): Torque | "unmarked" {
  if (drive.kind === "clamp-bolt") return { value: 150, unit: "lbf-in" };
  return dice.weighted<Torque | "unmarked">(
    [55, "unmarked"],
    [25, { value: 275, unit: "lbf-in" }],
    [10, { value: 31, unit: "lbf-ft" }],
    [10, { value: 42, unit: "N-m" }],
  );
}

/** An opening whose range holds the size; now and then the size is exactly at one end. */
function openingFor(dice: Dice, id: string, size: string, more: Partial<OpenOpening> = {}): OpenOpening {
  const at = indexOf(size);
  const below = dice.weighted([20, 0], [80, 1 + dice.int(6)]);
  const above = dice.weighted([20, 0], [80, 1 + dice.int(4)]);
  return {
    id,
    count: 1,
    ranges: [{ from: sizeAt(at - below), to: sizeAt(at + above), strandings: [...BUILDING_STRANDS] }],
    conductorsMax: dice.weighted<number | "unmarked">([80, 1], [20, "unmarked"]),
    screw: id,
    ...more,
  };
}

const exactOpening = (id: string, size: string, strandings: readonly Stranding[] = BUILDING_STRANDS): OpenOpening => ({
  id,
  count: 1,
  ranges: [{ from: size, to: size, strandings: [...strandings] }],
  conductorsMax: 1,
});

const metalFor = (dice: Dice): ConductorMetal =>
  dice.weighted<ConductorMetal>([58, "copper"], [36, "aluminum"], [6, "copper-clad-aluminum"]);

function strandingFor(dice: Dice, metal: ConductorMetal, size: string): Stranding {
  const cmil = cmilOf(size) ?? 0;
  if (cmil <= 10_380 && dice.percent(50)) return "solid";
  if (metal === "aluminum") return dice.weighted<Stranding>([80, "compact"], [20, "class-B"]);
  return dice.weighted<Stranding>([80, "class-B"], [10, "class-C"], [5, "compressed"], [5, "compact"]);
}

const insulationFor = (dice: Dice): Insulation =>
  dice.weighted<Insulation>(
    [40, "THHN/THWN-2"],
    [25, "XHHW-2"],
    [10, "RHH/RHW-2"],
    [8, "THWN"],
    [5, "THW"],
    [5, "USE-2"],
    [4, "XHHW"],
    [3, "THHN"],
  );

function group(dice: Dice, metal: ConductorMetal, size: string, more: Partial<OpenGroup> = {}): OpenGroup {
  return {
    count: 1,
    metal,
    size,
    stranding: strandingFor(dice, metal, size),
    insulation: insulationFor(dice),
    ...more,
  };
}

/** A device, and a load with it, around the ampacity of the conductor. */
function circuitFor(
  dice: Dice,
  edition: Edition,
  each: Pick<OpenGroup, "metal" | "size">,
  sets: number,
  column: 60 | 75 | 90,
): OpenCircuit {
  const ampacity = (tableAmpacity(edition, each, column) ?? 20) * sets;
  const down = STANDARD.findLast((rating) => rating <= ampacity) ?? 15;
  const up = STANDARD.find((rating) => rating >= ampacity) ?? 6000;
  const beyond = STANDARD.find((rating) => rating > up) ?? 6000;
  const small = (cmilOf(each.size) ?? 0) <= 10_380;
  const cap = {
    "14 AWG": 15,
    "12 AWG": each.metal === "copper" ? 20 : 15,
    "10 AWG": each.metal === "copper" ? 30 : 25,
  }[each.size];
  const ratingA = small
    ? (cap ?? 15)
    : dice.weighted(
        [50, down],
        [28, up],
        [4, beyond],
        [8, ampacity],
        [5, ampacity + 1],
        [5, Math.max(ampacity - 1, 1)],
      );
  const most = Math.min(ratingA, ampacity);
  const circuit: OpenCircuit = {
    voltageV: dice.pick([120, 208, 240, 480, 480, 480, 600]),
    sets,
    protection: { kind: "device", ratingA },
  };
  if (dice.percent(20)) {
    circuit.continuousLoadA = Math.floor((most * 4) / 5) - dice.weighted([30, 0], [70, 3]);
    circuit.nonContinuousLoadA = dice.weighted([50, 0], [50, 1]);
  } else
    circuit.loadA = dice.weighted(
      [12, most],
      [8, ampacity],
      [2, ampacity + 1],
      [78, Math.max(Math.floor((most * 7) / 10), 1)],
    );
  if (sets > 1) circuit.parallelLegsAlike = true;
  return circuit;
}

const terminalTemperature = (dice: Dice): NonNullable<OpenEquipment["terminalTemperature"]> =>
  dice.weighted<NonNullable<OpenEquipment["terminalTemperature"]>>(
    [68, { value: 75, unit: "Cel" }],
    [7, { value: 167, unit: "degF" }],
    [5, { value: 60, unit: "Cel" }],
    [5, { value: 90, unit: "Cel" }],
    [15, "unmarked"],
  );

const columnFor = (dice: Dice): 60 | 75 | 90 => dice.weighted<60 | 75 | 90>([10, 60], [87, 75], [3, 90]);

function jointOf(
  of: Pick<OpenJoint, "function" | "role" | "conductors"> & Partial<OpenJoint>,
  location: Location = "dry",
): OpenJoint {
  return { mark: "T-1", quantity: 1, place: { location }, ...of };
}

const described = (draft: Omit<Draft, "basis">): Omit<Draft, "basis"> => {
  draft.joint.connector = { described: draft.connector };
  return draft;
};

type Scene = (dice: Dice, edition: Edition) => Omit<Draft, "basis">;

/** A phase or neutral on a lug, a kit or the equipment's own terminal. */
const feeder: Scene = (dice, edition) => {
  const metal = metalFor(dice);
  const sets = dice.weighted([75, 1], [15, 2], [10, 3]);
  const size = sets > 1 ? between(dice, "1/0 AWG", "600 kcmil") : between(dice, "8 AWG", "1000 kcmil");
  const role = dice.weighted<OpenJoint["role"]>([80, "phase"], [20, "neutral"]);
  const conductors = [group(dice, metal, size)];
  const equipment: OpenEquipment = {
    tag: "E-1",
    kind: dice.pick([
      "panelboard",
      "switchboard",
      "disconnect",
      "motor-control-center",
      "transformer",
      "transfer-switch",
    ]),
    terminalTemperature: terminalTemperature(dice),
  };
  const circuit = circuitFor(dice, edition, { metal, size }, sets, columnFor(dice));
  if (dice.percent(35)) {
    const compact = metal === "aluminum" && conductors[0]?.stranding === "compact";
    equipment.bending = {
      entry: dice.pick(["opposite", "side"] as const),
      available: dice.weighted(
        [40, { value: dice.pick([4, 5, 6, 6.5, 7, 8, 8.5, 10, 12, 14]), unit: "in" as const }],
        [60, { value: compact ? 16 : 24, unit: "in" as const }],
      ),
      wiresPerTerminal: dice.weighted([80, 1], [20, 2]),
      ...(dice.percent(25) ? { removableTerminal: true } : {}),
    };
  }
  const joint = jointOf(
    { function: "termination", role, conductors, circuit, equipment },
    dice.weighted<Location>([85, "dry"], [15, "damp"]),
  );
  const style = dice.weighted([25, "own"], [25, "set-screw"], [30, "press"], [10, "kit"], [10, "barrels"]);
  if (style === "own") {
    const connector = part(
      dice,
      {
        family: "equipment-terminal",
        construction: "set-screw",
        functions: ["termination"],
        openings: [openingFor(dice, "main", size)],
      },
      { mounting: { kind: "integral" }, lineSide: "unmarked" },
    );
    equipment.terminal = connector;
    joint.connector = { equipmentTerminal: true };
    return { joint, connector };
  }
  if (style === "kit") {
    equipment.frame = "Frame 4";
    const mounting = { kind: "frame" as const, frames: ["Frame 2", "Frame 4"] };
    const openings = [openingFor(dice, "main", size)];
    return described({
      joint,
      connector: part(
        dice,
        { family: "lug-kit", construction: "set-screw", functions: ["termination"], openings },
        { mounting },
      ),
    });
  }
  const two = dice.percent(40);
  const pattern = two
    ? { holes: 2, bolt: "1/2", spacing: { value: 1.75, unit: "in" as const } }
    : { holes: 1, bolt: dice.pick(["1/4", "3/8", "1/2", "M10"]) };
  equipment.stud =
    two && dice.percent(20) ? { ...pattern, spacing: { value: 44.45, unit: "mm" } } : structuredClone(pattern);
  const mounting = { kind: "pad" as const, pattern };
  if (style === "press") {
    const family = two ? "compression-lug-two-hole" : "compression-lug-one-hole";
    const mark =
      metal === "copper" && dice.percent(60)
        ? { metalMarking: "CU", temperature: { value: 90, unit: "Cel" as const } }
        : {};
    return described({
      joint,
      connector: part(
        dice,
        { family, construction: "compression", functions: ["termination"], openings: [exactOpening("barrel", size)] },
        { mounting, ...mark },
      ),
    });
  }
  if (style === "barrels") {
    const opening = openingFor(dice, "barrel", size, { count: 2 + dice.int(2) });
    return described({
      joint,
      connector: part(
        dice,
        { family: "multi-barrel-lug", construction: "set-screw", functions: ["termination"], openings: [opening] },
        { mounting },
      ),
    });
  }
  const family = two ? "set-screw-lug-two-hole" : "set-screw-lug-one-hole";
  return described({
    joint,
    connector: part(
      dice,
      { family, construction: "set-screw", functions: ["termination"], openings: [openingFor(dice, "main", size)] },
      { mounting },
    ),
  });
};

/** Small wires on device screws and breaker screws. */
const branch: Scene = (dice, edition) => {
  const metal = dice.weighted<ConductorMetal>([70, "copper"], [25, "aluminum"], [5, "copper-clad-aluminum"]);
  const size = metal === "copper" ? between(dice, "14 AWG", "8 AWG") : between(dice, "12 AWG", "8 AWG");
  const device = dice.percent(50) && (size !== "8 AWG" || dice.percent(30));
  const circuit = circuitFor(dice, edition, { metal, size }, 1, 60);
  const equipment: OpenEquipment = {
    tag: "R-1",
    kind: device ? "wiring-device" : dice.pick(["panelboard", "disconnect"]),
    terminalTemperature: dice.weighted<NonNullable<OpenEquipment["terminalTemperature"]>>(
      [60, "unmarked"],
      [20, { value: 60, unit: "Cel" }],
      [20, { value: 75, unit: "Cel" }],
    ),
  };
  const opening = openingFor(dice, "screw", size);
  const connector = part(
    dice,
    {
      family: device ? "wiring-device-terminal" : "equipment-terminal",
      construction: device ? "binding-screw" : "set-screw",
      functions: ["termination"],
      openings: [opening],
    },
    { mounting: { kind: "integral" }, ...(device ? { metalMarking: metal === "copper" ? "CU" : "CO/ALR" } : {}) },
  );
  equipment.terminal = connector;
  const insulation = dice.weighted<Insulation>([50, "THHN/THWN-2"], [30, "NM"], [20, "TW"]);
  const joint = jointOf({
    function: "termination",
    role: "phase",
    conductors: [group(dice, metal, size, { insulation })],
    circuit,
    equipment,
  });
  joint.connector = { equipmentTerminal: true };
  return { joint, connector };
};

/** Neutrals and grounds on the bars of a panelboard. */
const bar: Scene = (dice, edition) => {
  const neutral = dice.percent(50);
  const size = between(dice, "14 AWG", "6 AWG");
  const count = dice.weighted([60, 1], [30, 2], [10, 3]);
  const circuit = circuitFor(dice, edition, { metal: "copper", size }, 1, 60);
  const two = dice.percent(60);
  const opening = openingFor(dice, "hole", size, {
    count: dice.pick([1, 1, 4]),
    conductorsMax: two ? count + dice.int(2) : 1,
    ...(two
      ? { shared: { sameSize: true, sameMetal: true, ...(dice.percent(50) ? { from: "14 AWG", to: size } : {}) } }
      : {}),
  });
  const connector = part(
    dice,
    {
      family: neutral ? "neutral-bar" : "ground-bar",
      construction: "set-screw",
      functions: ["termination"],
      openings: [opening],
    },
    {
      mounting: { kind: "frame", frames: ["Panel 2"] },
      ...(neutral ? {} : { grounding: { listed: true, electrodes: [] } }),
    },
  );
  const equipment: OpenEquipment = {
    tag: "LP-1",
    kind: dice.weighted<NonNullable<OpenEquipment["kind"]>>([75, "panelboard"], [25, "switchboard"]),
    frame: "Panel 2",
    terminalTemperature: terminalTemperature(dice),
  };
  const conductors = [group(dice, "copper", size, { count })];
  return described({
    joint: jointOf({
      function: "termination",
      role: neutral ? "neutral" : "equipment-ground",
      conductors,
      circuit,
      equipment,
    }),
    connector,
  });
};

/** Larger conductors joined, dry, wet or in the ground. */
const splice: Scene = (dice, edition) => {
  const metal = metalFor(dice);
  const size = between(dice, "6 AWG", "500 kcmil");
  const circuit = circuitFor(dice, edition, { metal, size }, 1, columnFor(dice));
  circuit.endTerminalTemperature = terminalTemperature(dice);
  const location = dice.weighted<Location>([60, "dry"], [15, "damp"], [15, "wet"], [10, "direct-burial"]);
  const wet: PlaceListing[] =
    location === "direct-burial" ? ["dry", "damp", "wet", "direct-burial"] : ["dry", "damp", "wet"];
  const places: PlaceListing[] = location === "dry" ? ["dry"] : wet;
  const shared = { places, insulated: true };
  const second = dice.percent(25) ? metalFor(dice) : metal;
  // Where the metal changes, so does the size, to carry the same current.
  const other = second === metal ? size : sizeAt(indexOf(size) + (second === "copper" ? 0 : 2));
  const conductors =
    second === metal && other === size
      ? [group(dice, metal, size, { count: 2 })]
      : [group(dice, metal, size), group(dice, second, other)];
  const joint = jointOf(
    {
      function: "splice",
      role: dice.weighted<OpenJoint["role"]>([85, "phase"], [15, "neutral"]),
      conductors,
      circuit,
      equipment: { tag: "JB-1", kind: dice.pick(["box", "wireway"]) },
    },
    location,
  );
  if (dice.percent(20)) {
    const section = dice.pick([16, 36]);
    joint.equipment = {
      tag: "WW-1",
      kind: "wireway",
      space: {
        kind: dice.pick(["enclosure", "wireway"] as const),
        section: { value: section, unit: "in2" },
        conductors: { value: (section * dice.pick([20, 38, 40, 40.5])) / 100, unit: "in2" },
        splices: { value: (section * dice.pick([10, 35, 36])) / 100, unit: "in2" },
      },
    };
  }
  const apart = [openingFor(dice, "line", size), openingFor(dice, "load", other)];
  const family = dice.pick([
    "in-line-splice",
    "splicer-reducer",
    "multi-tap-block",
    "split-bolt",
    "split-bolt-with-spacer",
    "compression-sleeve",
    "sealed-splice",
    "sealed-multi-tap",
    "direct-burial-splice",
  ] as const);
  if (family === "split-bolt" || family === "split-bolt-with-spacer") {
    const openings = apart.map((opening) => ({ ...opening, screw: "nut" }));
    return described({
      joint,
      connector: part(
        dice,
        { family, construction: "split-bolt", functions: ["splice", "tap"], openings },
        { ...shared, insulated: false, openingsApart: family === "split-bolt-with-spacer" },
      ),
    });
  }
  if (family === "compression-sleeve") {
    const openings = [exactOpening("line", size), exactOpening("load", other)];
    return described({
      joint,
      connector: part(
        dice,
        { family, construction: "compression", functions: ["splice"], openings },
        { ...shared, insulated: false },
      ),
    });
  }
  if (family === "multi-tap-block" || family === "sealed-multi-tap") {
    const low = sizeAt(Math.min(indexOf(size), indexOf(other)) - dice.int(4));
    const high = sizeAt(Math.max(indexOf(size), indexOf(other)) + dice.int(3));
    const opening = openingFor(dice, "port", size, {
      count: 2 + dice.int(4),
      ranges: [{ from: low, to: high, strandings: [...BUILDING_STRANDS] }],
    });
    return described({
      joint,
      connector: part(
        dice,
        { family, construction: "set-screw", functions: ["splice", "tap"], openings: [opening] },
        shared,
      ),
    });
  }
  return described({
    joint,
    connector: part(dice, { family, construction: "set-screw", functions: ["splice"], openings: apart }, shared),
  });
};

/** A distribution block in a wireway, a box or a switchboard, on a feeder or on the service. */
const block: Scene = (dice, edition) => {
  const size = between(dice, "6 AWG", "350 kcmil");
  const metal = metalFor(dice);
  const circuit = circuitFor(dice, edition, { metal, size }, 1, columnFor(dice));
  if (dice.percent(30)) circuit.protection = { kind: "service" };
  circuit.endTerminalTemperature = terminalTemperature(dice);
  const kind = dice.weighted<NonNullable<OpenEquipment["kind"]>>([40, "wireway"], [40, "box"], [20, "switchboard"]);
  const insulated = dice.percent(60);
  const joint = jointOf({
    function: "splice",
    role: dice.weighted<OpenJoint["role"]>([80, "phase"], [20, "neutral"]),
    conductors: [group(dice, metal, size, { count: 2 })],
    circuit,
    equipment: {
      tag: "DB-1",
      kind,
      ...(kind === "box" ? { boxVolumeIn3: dice.pick([90, 100, 101, 250, 400, 400, 400]) } : {}),
    },
  });
  return described({
    joint,
    connector: part(
      dice,
      {
        family: "power-distribution-block",
        construction: "set-screw",
        functions: ["splice", "tap"],
        openings: [openingFor(dice, "line", size), openingFor(dice, "load", size, { count: 3 })],
      },
      {
        insulated,
        ...(insulated || dice.percent(30) ? {} : { coverPart: "B-9" }),
        lineSide: dice.weighted<"marked" | "unmarked">([70, "marked"], [30, "unmarked"]),
        temperature: { value: 75, unit: "Cel" },
      },
    ),
  });
};

/** Small wires joined: twist-on, lever and spring splices, old aluminum with copper. */
const smallSplice: Scene = (dice, edition) => {
  const size = between(dice, "14 AWG", "10 AWG");
  const other = dice.percent(50) ? size : sizeAt(Math.max(indexOf(size) - 1, indexOf("14 AWG")));
  const intermix = dice.percent(30);
  const small = cmilOf(other) ?? 0;
  const circuit = circuitFor(
    dice,
    edition,
    { metal: intermix ? "aluminum" : "copper", size: small < (cmilOf(size) ?? 0) ? other : size },
    1,
    60,
  );
  circuit.voltageV = dice.pick([120, 208, 277, 480]);
  circuit.endTerminalTemperature = dice.pick([
    "unmarked",
    { value: 60, unit: "Cel" } as const,
    { value: 75, unit: "Cel" } as const,
  ]);
  const role = dice.weighted<OpenJoint["role"]>([70, "phase"], [30, "neutral"]);
  const [more, one] = [1 + dice.int(3), 1];
  const conductors = [
    group(dice, "copper", size, { count: more }),
    group(dice, intermix ? "aluminum" : "copper", other, { count: one }),
  ];
  const location = dice.weighted<Location>([75, "dry"], [20, "damp"], [5, "wet"]);
  const places: PlaceListing[] = location === "wet" ? ["wet"] : dice.pick<PlaceListing[]>([["dry"], ["dry", "damp"]]);
  const joint = jointOf(
    { function: "splice", role, conductors, circuit, equipment: { tag: "JB-2", kind: "box" } },
    location,
  );
  const base = { places, insulated: true, reusable: false, voltageV: dice.pick([300, 600, 600]) };
  const range = {
    from: sizeAt(indexOf("18 AWG") + dice.int(3)),
    to: sizeAt(indexOf("10 AWG") + dice.int(2)),
    strandings: [...BUILDING_STRANDS],
  };
  if (intermix) {
    const opening: OpenOpening = {
      id: "chamber",
      count: 1,
      ranges: [range],
      conductorsMax: 3,
      shared: { sameSize: false, sameMetal: false },
      screw: "main",
    };
    return described({
      joint,
      connector: part(
        dice,
        { family: "intermix-splice", construction: "set-screw", functions: ["splice"], openings: [opening] },
        { ...base, metalMarking: "AL-CU-INTERMIX-DRY", temperature: { value: 90, unit: "Cel" }, openingsApart: false },
      ),
    });
  }
  const cu = {
    metalMarking: "CU",
    temperature: dice.weighted<NonNullable<OpenConnector["temperature"]>>(
      [70, { value: 75, unit: "Cel" }],
      [20, { value: 90, unit: "Cel" }],
      [10, "unmarked"],
    ),
  };
  if (dice.percent(50)) {
    const own =
      size === other
        ? [{ size, count: more + one }]
        : [
            { size, count: more },
            { size: other, count: one },
          ];
    const combinations = [[{ size: "12 AWG", count: 2 }], [{ size: "14 AWG", count: 3 }], own];
    const opening: OpenOpening = {
      id: "shell",
      count: 1,
      ranges: [range],
      conductorsMax: dice.pick([4, 5, more + one]),
      combinations: dice.percent(85) ? combinations : combinations.slice(0, 2),
      shared: { sameSize: false, sameMetal: true, metals: ["copper"] },
      screw: "shell",
    };
    return described({
      joint,
      connector: part(
        dice,
        { family: "twist-on", construction: "twist-on", functions: ["splice"], openings: [opening] },
        { ...base, ...cu, openingsApart: false },
      ),
    });
  }
  const family = dice.pick(["lever-splice", "spring-clamp-splice"] as const);
  const opening: OpenOpening = {
    id: "port",
    count: 2 + dice.int(4),
    ranges: [range],
    conductorsMax: 1,
    screw: "spring",
  };
  return described({
    joint,
    connector: part(
      dice,
      { family, construction: "spring", functions: ["splice", "tap"], openings: [opening] },
      { ...base, ...cu },
    ),
  });
};

/** Taps to a feeder, to service conductors, or of one circuit. */
const tap: Scene = (dice, edition) => {
  const runMetal = dice.weighted<ConductorMetal>([65, "copper"], [35, "aluminum"]);
  const runSize = between(dice, "2/0 AWG", "750 kcmil");
  const tapSize = between(dice, "10 AWG", "4/0 AWG");
  const kind = dice.weighted([55, "feeder-tap"], [30, "service"], [15, "device"]);
  const column = columnFor(dice);
  const circuit = circuitFor(dice, edition, { metal: "copper", size: tapSize }, 1, column);
  const ampacity = tableAmpacity(edition, { metal: "copper", size: tapSize }, column) ?? 30;
  if (kind === "service") circuit.protection = { kind: "service" };
  else if (kind === "feeder-tap") {
    const feet = dice.pick([5, 8, 9.9, 10, 10, 10.1, 20, 25, 25, 25.1, 40]);
    const share = feet <= 10 ? 10 : 3;
    const end = STANDARD.findLast((rating) => rating <= ampacity) ?? 15;
    circuit.protection = {
      kind: "feeder-tap",
      feederDeviceA: dice.weighted(
        [30, ampacity * share],
        [10, ampacity * share + 1],
        [60, Math.max(ampacity * share - 100, end)],
      ),
      length: dice.percent(80)
        ? { value: feet, unit: "ft" }
        : dice.pick([
            { value: 3.048, unit: "m" },
            { value: 120, unit: "in" },
            { value: 7.62, unit: "m" },
          ] as const),
      endDeviceA: dice.weighted([60, end], [25, ampacity], [10, ampacity + 1], [5, end * 2]),
      leavesEnclosure: dice.percent(75),
      physicallyProtected: dice.percent(90),
      ...(dice.percent(60) ? { outdoors: dice.percent(30) } : {}),
    };
    circuit.loadA = Math.min(circuit.loadA ?? 10, end);
    delete circuit.continuousLoadA;
    delete circuit.nonContinuousLoadA;
  }
  circuit.endTerminalTemperature = terminalTemperature(dice);
  const location = dice.weighted<Location>([80, "dry"], [20, "wet"]);
  const places: PlaceListing[] = location === "dry" ? ["dry"] : ["dry", "damp", "wet"];
  const uncut = dice.weighted<boolean | undefined>([45, true], [45, false], [10, undefined]);
  const conductors = [
    group(dice, runMetal, runSize, { duty: "run", ...(uncut === undefined ? {} : { uncut }) }),
    group(dice, "copper", tapSize, { duty: "tap" }),
  ];
  const joint = jointOf(
    {
      function: "tap",
      role: dice.weighted<OpenJoint["role"]>([85, "phase"], [15, "neutral"]),
      conductors,
      circuit,
      equipment: { tag: "WW-2", kind: "wireway" },
    },
    location,
  );
  const family = dice.pick([
    "piercing-tap",
    "gutter-tap",
    "parallel-tap",
    "compression-tap",
    "multi-tap-block",
    "split-bolt-with-spacer",
  ] as const);
  const construction = (
    {
      "piercing-tap": "insulation-piercing",
      "gutter-tap": "set-screw",
      "parallel-tap": "bolted-clamp",
      "compression-tap": "compression",
      "multi-tap-block": "set-screw",
      "split-bolt-with-spacer": "split-bolt",
    } as const
  )[family];
  const openings =
    family === "multi-tap-block"
      ? [
          openingFor(dice, "port", tapSize, {
            count: 4,
            ranges: [{ from: "14 AWG", to: "750 kcmil", strandings: [...BUILDING_STRANDS] }],
          }),
        ]
      : [openingFor(dice, "run", runSize, { duty: "run" }), openingFor(dice, "tap", tapSize, { duty: "tap" })];
  const lineSide =
    kind === "service" ? dice.weighted<"marked" | "unmarked">([75, "marked"], [25, "unmarked"]) : "unmarked";
  const reusable = family !== "piercing-tap";
  return described({
    joint,
    connector: part(
      dice,
      { family, construction, functions: ["tap", "splice"], openings },
      { places, lineSide, reusable, insulated: family === "piercing-tap" },
    ),
  });
};

/** Equipment grounds, raised with the phases or not. */
const ground: Scene = (dice) => {
  const row = dice.pick(EQUIPMENT_GROUND);
  const ratingA = Number(cell(row, "upTo")) + dice.weighted([70, 0], [15, 1], [15, -1]);
  const metal = dice.weighted<ConductorMetal>([75, "copper"], [22, "aluminum"], [3, "copper-clad-aluminum"]);
  const base = cell(row, metal === "copper" ? "copper" : "aluminum");
  const sets = dice.weighted([80, 1], [20, 3]);
  const joint = jointOf({ function: "termination", role: "equipment-ground", conductors: [] });
  joint.circuit = {
    sets,
    voltageV: 480,
    protection: { kind: "device", ratingA },
    ...(sets > 1 ? { parallelLegsAlike: true } : {}),
  };
  let size = base;
  if (dice.percent(40)) {
    const smallest = between(dice, "12 AWG", "400 kcmil");
    const installed = sizeAt(indexOf(smallest) + dice.int(5));
    const phase = metalFor(dice);
    joint.upsizing = { minimum: { size: smallest, metal: phase }, installed: { size: installed, metal: phase } };
    const needed = ((cmilOf(base) ?? 0) * (cmilOf(installed) ?? 1)) / (cmilOf(smallest) ?? 1);
    const enough = SIZES.find((each) => (cmilOf(each) ?? 0) >= needed) ?? "2000 kcmil";
    size = sizeAt(indexOf(enough) - dice.weighted([80, 0], [20, 1]));
  }
  joint.conductors = [group(dice, metal, size, { insulation: dice.pick(["bare", "THHN/THWN-2"]) })];
  joint.equipment = { tag: "GB-1", kind: "ground-bus" };
  if (dice.percent(30)) {
    joint.equipment.stud = { holes: 1, bolt: "3/8" };
    return described({
      joint,
      connector: part(
        dice,
        {
          family: "compression-lug-one-hole",
          construction: "compression",
          functions: ["termination"],
          openings: [exactOpening("barrel", size)],
        },
        { mounting: { kind: "pad", pattern: { holes: 1, bolt: "3/8" } } },
      ),
    });
  }
  return described({
    joint,
    connector: part(
      dice,
      {
        family: "ground-bar-lug",
        construction: "set-screw",
        functions: ["termination"],
        openings: [openingFor(dice, "main", size)],
      },
      { mounting: { kind: "integral" }, grounding: { listed: true, electrodes: [] } },
    ),
  });
};

type Grounding = NonNullable<OpenJoint["grounding"]>;

/** What a jumper to this electrode bonds, with the conductors that its share is taken of where they are asked for. */
function bondingFor(dice: Dice, kind: Electrode, service: NonNullable<Grounding["service"]>): Partial<Grounding> {
  const bonding = dice.weighted<NonNullable<Grounding["bonding"]>>(
    [35, kind === "building-steel" ? "structural-metal" : "water-pipe"],
    [20, "electrode-system"],
    [10, "main"],
    [10, "system"],
    [15, "supply-side"],
    [10, "by-design"],
  );
  const equivalentService =
    service.metal === "copper"
      ? { size: sizeAt(indexOf(service.size) + 2), metal: "aluminum" as const, sets: service.sets }
      : { size: sizeAt(indexOf(service.size) - 2), metal: "copper" as const, sets: service.sets };
  return {
    bonding,
    ...(dice.percent(80) ? { equivalentService } : {}),
    ...(dice.percent(30) ? { racewaysBondedApart: service.sets } : {}),
  };
}

/** Electrode conductors and bonding jumpers, ended and spliced. */
const electrode: Scene = (dice) => {
  const bonding = dice.percent(25);
  const kind = dice.pick<Electrode>([
    "copper-bonded-rod",
    "galvanized-rod",
    "stainless-rod",
    "plate",
    "concrete-encased-rebar",
    "water-pipe",
    "building-steel",
    "ground-ring",
  ]);
  const metal = dice.weighted<ConductorMetal>([88, "copper"], [12, "aluminum"]);
  const serviceMetal = dice.weighted<"copper" | "aluminum" | "copper-clad-aluminum">(
    [50, "copper"],
    [45, "aluminum"],
    [5, "copper-clad-aluminum"],
  );
  const service = {
    size: between(dice, "4 AWG", "900 kcmil"),
    metal: serviceMetal,
    sets: dice.weighted([60, 1], [25, 2], [15, 4]),
  };
  const sole = dice.percent(50);
  const size =
    sole && dice.percent(60)
      ? dice.pick(["6 AWG", "4 AWG"])
      : dice.pick(["2 AWG", "1/0 AWG", "2/0 AWG", "3/0 AWG", "250 kcmil"]);
  const location =
    kind === "concrete-encased-rebar" ? "concrete" : dice.weighted<Location>([30, "dry"], [70, "direct-burial"]);
  const places: PlaceListing[] =
    location === "concrete"
      ? dice.pick<PlaceListing[]>([["concrete"], ["direct-burial", "concrete"]])
      : ["dry", "damp", "wet", "direct-burial"];
  const spliced = dice.percent(25);
  const joint = jointOf(
    {
      function: spliced ? "splice" : "termination",
      role: bonding ? "bonding" : "electrode-conductor",
      conductors: [group(dice, metal, size, { insulation: "bare", count: spliced ? 2 : 1 })],
      grounding: {
        electrode: kind,
        service,
        soleConnection: sole,
        ...(kind === "ground-ring" && dice.percent(80) ? { ringSize: dice.pick(["2 AWG", "1/0 AWG", "4 AWG"]) } : {}),
        ...(bonding ? bondingFor(dice, kind, service) : {}),
      },
      equipment: { tag: "EL-1", kind: spliced ? "box" : "electrode" },
    },
    location,
  );
  const marks = {
    metalMarking: metal === "copper" ? "CU" : "AL9CU",
    places,
    temperature: "unmarked",
    voltageV: "unmarked",
  } as const;
  const grounding = {
    listed: true,
    electrodes: [kind],
    conductorsPerClamp: dice.weighted<number | "unmarked">([50, 1], [50, "unmarked"]),
  };
  const more = { ...marks, places: [...places], grounding, openingsApart: false };
  if (spliced) {
    const family = dice.weighted<ConnectorFamily>(
      [40, "compression-sleeve"],
      [25, "compression-tap"],
      [20, "exothermic-weld"],
      [15, "split-bolt"],
    );
    const construction = family === "exothermic-weld" ? "weld" : family === "split-bolt" ? "split-bolt" : "compression";
    const opening: OpenOpening = {
      ...exactOpening("jaw", size),
      count: 2,
      ...(construction === "split-bolt" ? { screw: "nut" } : {}),
    };
    return described({
      joint,
      connector: part(
        dice,
        { family, construction, functions: ["splice", "tap"], openings: [opening] },
        { ...more, grounding: { listed: true, electrodes: [] } },
      ),
    });
  }
  if (dice.percent(20))
    return described({
      joint,
      connector: part(
        dice,
        {
          family: "exothermic-weld",
          construction: "weld",
          functions: ["termination"],
          openings: [exactOpening("mold", size)],
        },
        more,
      ),
    });
  if (dice.percent(25)) {
    joint.equipment = { tag: "GB-2", kind: "ground-bus" };
    return described({
      joint,
      connector: part(
        dice,
        {
          family: "ground-bar-lug",
          construction: "set-screw",
          functions: ["termination"],
          openings: [openingFor(dice, "main", size)],
        },
        { ...marks, places: [...places], mounting: { kind: "integral" } },
      ),
    });
  }
  const family = kind === "water-pipe" ? "pipe-clamp" : kind === "concrete-encased-rebar" ? "rebar-clamp" : "rod-clamp";
  return described({
    joint,
    connector: part(
      dice,
      { family, construction: "bolted-clamp", functions: ["termination"], openings: [openingFor(dice, "jaw", size)] },
      more,
    ),
  });
};

/** Grounds and electrode conductors joined to each other, and tapped. */
const groundJoin: Scene = (dice) => {
  const role = dice.weighted<OpenJoint["role"]>([45, "equipment-ground"], [35, "electrode-conductor"], [20, "bonding"]);
  const size =
    role === "equipment-ground" ? dice.pick(["10 AWG", "8 AWG", "6 AWG"]) : dice.pick(["2 AWG", "1/0 AWG", "3/0 AWG"]);
  const kind = dice.weighted<OpenJoint["function"]>([55, "splice"], [45, "tap"]);
  const metal = dice.weighted<ConductorMetal>([85, "copper"], [15, "aluminum"]);
  const insulation = dice.pick(["bare", "THHN/THWN-2"] as const);
  const smaller = dice.percent(70) ? size : sizeAt(indexOf(size) - 1);
  const conductors =
    kind === "tap"
      ? [
          group(dice, metal, size, { duty: "run", insulation, uncut: dice.percent(50) }),
          group(dice, metal, smaller, { duty: "tap", insulation }),
        ]
      : [group(dice, metal, size, { insulation }), group(dice, metal, smaller, { insulation })];
  const location = dice.weighted<Location>([60, "dry"], [20, "damp"], [20, "direct-burial"]);
  const joint = jointOf({ function: kind, role, conductors, equipment: { tag: "JB-3", kind: "box" } }, location);
  if (role === "equipment-ground") {
    const protection: NonNullable<OpenCircuit["protection"]> = dice.percent(75)
      ? { kind: "device", ratingA: dice.pick([20, 60, 61, 100, 200]) }
      : {
          kind: "feeder-tap",
          feederDeviceA: dice.pick([60, 100, 200]),
          length: { value: 10, unit: "ft" },
          endDeviceA: 30,
          leavesEnclosure: true,
          physicallyProtected: true,
        };
    joint.circuit = { voltageV: 480, sets: 1, protection };
  } else if (role === "electrode-conductor")
    joint.grounding = {
      electrode: dice.pick<Electrode>(["water-pipe", "copper-bonded-rod"]),
      service: { size: dice.pick(["3 AWG", "2/0 AWG", "350 kcmil", "600 kcmil"]), metal: "copper", sets: 1 },
      soleConnection: dice.percent(30),
      ...(kind === "tap" && dice.percent(60)
        ? { tapService: { size: dice.pick(["3 AWG", "2/0 AWG", "350 kcmil"]), metal: "copper" as const, sets: 1 } }
        : {}),
    };
  else {
    const device = dice.percent(50);
    joint.grounding = device
      ? { bonding: dice.pick(["load-side", "other-pipe"]) }
      : {
          bonding: dice.weighted<NonNullable<Grounding["bonding"]>>([75, "supply-side"], [25, "by-design"]),
          service: { size: dice.pick(["2/0 AWG", "500 kcmil", "900 kcmil"]), metal: "copper", sets: dice.pick([1, 2]) },
        };
    if (device)
      joint.circuit = {
        voltageV: 480,
        sets: 1,
        protection: { kind: "device", ratingA: dice.pick([400, 600, 800, 801, 1000]) },
      };
  }
  const construction = dice.weighted<Construction>(
    [45, "compression"],
    [30, "split-bolt"],
    [15, "set-screw"],
    [10, "weld"],
  );
  const family = (
    {
      compression: "compression-tap",
      "split-bolt": "split-bolt",
      "set-screw": "multi-tap-block",
      weld: "exothermic-weld",
    } as Partial<Record<Construction, ConnectorFamily>>
  )[construction];
  if (family === undefined) throw new Error("no such part");
  const screws = construction === "split-bolt" || construction === "set-screw" ? { screw: "nut" } : {};
  const openings: OpenOpening[] = [
    { ...openingFor(dice, "one", size), ...screws, conductorsMax: 1 },
    { ...openingFor(dice, "two", smaller), ...screws, conductorsMax: 1 },
  ];
  const places: PlaceListing[] =
    location === "direct-burial" ? ["dry", "damp", "wet", "direct-burial"] : ["dry", "damp"];
  return described({
    joint,
    connector: part(
      dice,
      { family, construction, functions: ["splice", "tap"], openings },
      { places, ...(dice.percent(75) ? { grounding: { listed: dice.percent(85), electrodes: [] } } : {}) },
    ),
  });
};

/** A conductor too large for its terminal, on a pin. */
const pin: Scene = (dice, edition) => {
  const size = between(dice, "2 AWG", "500 kcmil");
  const pinSize = sizeAt(indexOf(size) - 2);
  const conductors = [group(dice, "aluminum", size)];
  const terminal = part(
    dice,
    {
      family: "equipment-terminal",
      construction: "set-screw",
      functions: ["termination"],
      openings: [openingFor(dice, "main", pinSize)],
    },
    { mounting: { kind: "integral" } },
  );
  const equipment: OpenEquipment = {
    tag: "D-1",
    kind: "disconnect",
    terminalTemperature: terminalTemperature(dice),
    terminal,
  };
  const joint = jointOf({
    function: "termination",
    role: "phase",
    conductors,
    circuit: circuitFor(dice, edition, { metal: "aluminum", size }, 1, 75),
    equipment,
  });
  return described({
    joint,
    connector: part(
      dice,
      {
        family: "pin-adapter",
        construction: "compression",
        functions: ["termination"],
        openings: [exactOpening("barrel", size)],
      },
      { pin: { size: pinSize, metal: dice.pick(["copper", "aluminum"]) } },
    ),
  });
};

/** Leads of motors, fine cables of battery strings, and metric leads of imported machines. */
const lead: Scene = (dice, edition) => {
  const style = dice.pick(["motor", "battery", "metric"] as const);
  const size = style === "metric" ? dice.pick(["16 mm2", "35 mm2", "70 mm2"]) : between(dice, "10 AWG", "4/0 AWG");
  const fine: Stranding = style === "metric" ? "iec-class-5" : dice.pick(["class-G", "class-K", "class-D", "class-I"]);
  const circuit: OpenCircuit = { voltageV: 480, sets: 1, loadA: 20, protection: { kind: "motor-circuit" } };
  if (style === "battery") {
    circuit.protection = { kind: "none-stated", because: "the string has no device of its own" };
    circuit.loadA = tableAmpacity(edition, { metal: "copper", size }, 75) ?? 20;
  }
  if (style === "metric") circuit.protection = { kind: "device", ratingA: 30 };
  const equipment: OpenEquipment = {
    tag: "M-1",
    kind: style === "motor" ? "motor" : "battery",
    terminalTemperature: { value: 75, unit: "Cel" },
    stud: { holes: 1, bolt: "3/8" },
  };
  if (style === "motor") {
    const lineSize = dice.percent(50) ? size : sizeAt(indexOf(size) + 1);
    circuit.endTerminalTemperature = { value: 75, unit: "Cel" };
    circuit.loadA = (tableAmpacity(edition, { metal: "copper", size: lineSize }, 75) ?? 20) - dice.int(3);
    const openings = [exactOpening("line", lineSize), exactOpening("lead", size, [fine, "class-B"])];
    const conductors = [
      group(dice, "copper", lineSize),
      { ...group(dice, "copper", size), stranding: fine, insulation: "equipment-lead" as const },
    ];
    return described({
      joint: jointOf({
        function: "splice",
        role: "phase",
        conductors,
        circuit,
        equipment: { tag: "M-1", kind: "motor" },
      }),
      connector: part(
        dice,
        { family: "compression-lug-pair", construction: "compression", functions: ["splice", "termination"], openings },
        {
          metalMarking: "CU",
          temperature: { value: 90, unit: "Cel" },
          mounting: { kind: "pad", pattern: { holes: 1, bolt: "3/8" } },
        },
      ),
    });
  }
  const conductors: OpenGroup[] = [
    {
      count: 1,
      metal: "copper",
      size,
      stranding: fine,
      insulation: "other",
      insulationRating: { value: dice.pick([60, 75, 90, 105]), unit: "Cel" },
    },
  ];
  const listed = dice.percent(75);
  const opening =
    style === "metric" && !listed
      ? openingFor(dice, "barrel", "2 AWG")
      : exactOpening("barrel", size, listed ? [fine, "class-B", "class-C"] : ["class-B", "class-C"]);
  return described({
    joint: jointOf({ function: "termination", role: "phase", conductors, circuit, equipment }),
    connector: part(
      dice,
      {
        family: "compression-lug-one-hole",
        construction: "compression",
        functions: ["termination"],
        openings: [opening],
      },
      {
        metalMarking: "CU",
        temperature: { value: 90, unit: "Cel" },
        mounting: { kind: "pad", pattern: { holes: 1, bolt: "3/8" } },
      },
    ),
  });
};

/** Sealed splices in handholes and trenches. */
const yard: Scene = (dice, edition) => {
  const size = between(dice, "12 AWG", "2 AWG");
  const trench = dice.percent(40);
  const circuit = circuitFor(dice, edition, { metal: "copper", size }, 1, 60);
  circuit.endTerminalTemperature = dice.pick([
    "unmarked",
    { value: 60, unit: "Cel" } as const,
    { value: 75, unit: "Cel" } as const,
  ]);
  const joint = jointOf(
    {
      function: "splice",
      role: dice.weighted<OpenJoint["role"]>([70, "phase"], [30, "neutral"]),
      conductors: [
        group(dice, "copper", size, {
          count: 2 + dice.int(2),
          insulation: dice.pick(["THWN-2", "XHHW-2", "THHN/THWN-2", "UF", "USE-2"]),
        }),
      ],
      circuit,
      equipment: { tag: "HH-1", kind: trench ? "trench" : "handhole" },
    },
    trench ? "direct-burial" : dice.weighted<Location>([70, "wet"], [15, "damp"], [15, "dry"]),
  );
  const places: PlaceListing[] = trench
    ? ["wet", "direct-burial"]
    : dice.pick<PlaceListing[]>([["wet"], ["dry", "damp", "wet"], ["direct-burial"]]);
  const family = trench ? "direct-burial-splice" : "sealed-multi-tap";
  const opening = openingFor(dice, "port", size, { count: 2 + dice.int(3) });
  return described({
    joint,
    connector: part(
      dice,
      { family, construction: "set-screw", functions: ["splice"], openings: [opening] },
      { places, insulated: true },
    ),
  });
};

export const SCENES: readonly (readonly [number, Scene])[] = [
  [24, feeder],
  [10, branch],
  [9, bar],
  [15, splice],
  [5, block],
  [10, smallSplice],
  [14, tap],
  [9, ground],
  [11, electrode],
  [6, groundJoin],
  [4, pin],
  [7, lead],
  [5, yard],
];
