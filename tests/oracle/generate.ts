/**
 * Joints without end, the same ones for the same seed: a scene from a site, then up to three facts of it made wrong, made
 * unknown, left unmarked, or moved to one side of a limit.
 */
import {
  type Basis,
  BONDINGS,
  CONDUCTOR_METALS,
  CONDUCTOR_ROLES,
  ELECTRODES,
  INSULATIONS,
  JOINT_FUNCTIONS,
  LOCATIONS,
  PLACE_LISTINGS,
  SMALL_LEGS,
  STRANDINGS,
} from "@landfast/rules";
import { addAccessFact } from "./access-facts.js";
import { Dice } from "./dice.js";
import type { Draft } from "./draft.js";
import { addHistoryFact } from "./history-facts.js";
import { addPadFacts } from "./pad-facts.js";
import { cmilOf } from "./read-table.js";
import { indexOf, SCENES, sizeAt } from "./scenes.js";
import { addStrandFacts } from "./strand-facts.js";

export interface Generated extends Draft {
  readonly number: number;
}

/** Joint number so-and-so of the endless row. */
export function generate(number: number): Generated {
  const dice = new Dice(Math.imul(number + 1, 0x9e3779b1));
  const basis = basisFor(dice);
  const scene = dice.weighted(...SCENES);
  const draft: Draft = { ...scene(dice, basis.edition), basis };
  draft.joint.mark = `T-${number}`;
  const changes = dice.weighted([40, 0], [33, 1], [17, 2], [10, 3]);
  for (let change = 0; change < changes; change += 1) dice.pick(CHANGES)(draft, dice);
  addPadFacts(draft, number);
  addAccessFact(draft, number);
  addStrandFacts(draft, number);
  addHistoryFact(draft, number);
  return { ...draft, number };
}

function basisFor(dice: Dice): Basis {
  const edition = dice.weighted<Basis["edition"]>([25, "2017"], [30, "2020"], [45, "2023"]);
  const installedOn = dice.weighted<string | undefined>(
    [50, "2024-05-01"],
    [15, "2023-01-01"],
    [15, "2022-12-31"],
    [20, undefined],
  );
  return { ruleSet: "nfpa70", edition, ...(installedOn === undefined ? {} : { installedOn }) };
}

type Change = (draft: Draft, dice: Dice) => void;

const step = (dice: Dice): number => dice.pick([-2, -1, -1, 1, 1, 2]);
const moved = (size: string, by: number): string => (cmilOf(size) === null ? size : sizeAt(indexOf(size) + by));

const CONDUCTORS: readonly Change[] = [
  ({ joint }, dice) => {
    const group = dice.pick(joint.conductors);
    group.size = moved(group.size, step(dice));
  },
  ({ joint }, dice) => {
    dice.pick(joint.conductors).metal = dice.pick(CONDUCTOR_METALS);
  },
  ({ joint }, dice) => {
    const group = dice.pick(joint.conductors);
    const gauge = cmilOf(group.size) !== null;
    group.stranding = dice.pick(STRANDINGS.filter((form) => form === "unknown" || form.startsWith("iec") !== gauge));
  },
  ({ joint }, dice) => {
    const group = dice.pick(joint.conductors);
    group.insulation = dice.pick(INSULATIONS);
    delete group.insulationRating;
    if (group.insulation === "other" || group.insulation === "equipment-lead")
      if (dice.percent(80))
        group.insulationRating = dice.pick([
          { value: 194, unit: "degF" },
          { value: 105, unit: "Cel" },
          { value: 60, unit: "Cel" },
        ]);
  },
  ({ joint }, dice) => {
    const group = dice.pick(joint.conductors);
    if (joint.conductors.reduce((sum, { count }) => sum + count, 0) < 5) group.count += 1;
  },
  ({ joint }, dice) => {
    const group = dice.pick(joint.conductors);
    if (joint.conductors.length < 3)
      joint.conductors.push({
        ...group,
        count: 1,
        size: moved(group.size, step(dice)),
        metal: dice.pick(CONDUCTOR_METALS),
      });
  },
  ({ joint }, dice) => {
    const group = dice.pick(joint.conductors);
    group.size = dice.pick(["16 mm2", "35 mm2", "70 mm2"]);
    group.stranding = dice.pick(["iec-class-2", "iec-class-5"]);
  },
  ({ joint }, dice) => {
    delete dice.pick(joint.conductors).duty;
  },
  ({ joint }, dice) => {
    joint.role = dice.pick(CONDUCTOR_ROLES);
  },
  ({ joint }, dice) => {
    joint.function = dice.pick(JOINT_FUNCTIONS);
  },
];

const CIRCUIT: readonly Change[] = [
  ({ joint }, dice) => {
    if (joint.circuit?.loadA !== undefined) joint.circuit.loadA += dice.pick([-1, 1, 5, 0.5]);
    if ((joint.circuit?.loadA ?? 1) <= 0 && joint.circuit) joint.circuit.loadA = 1;
  },
  ({ joint }) => {
    if (joint.circuit === undefined) return;
    delete joint.circuit.loadA;
    delete joint.circuit.continuousLoadA;
    delete joint.circuit.nonContinuousLoadA;
  },
  ({ joint }, dice) => {
    const protection = joint.circuit?.protection;
    if (protection?.kind === "device")
      protection.ratingA = dice.pick([15, 20, 30, 60, 100, 101, 125, 200, 400, 700, 800, 1000, 1200, 4000]);
  },
  ({ joint }, dice) => {
    const protection = joint.circuit?.protection;
    if (protection?.kind === "device") protection.ratingA += dice.pick([-5, -1, 1, 5]);
    if (protection?.kind === "feeder-tap") protection.endDeviceA += dice.pick([-5, 1, 5]);
  },
  ({ joint }, dice) => {
    if (joint.circuit === undefined) return;
    joint.circuit.protection = dice.pick([
      { kind: "service" },
      { kind: "motor-circuit" },
      { kind: "none-stated", because: "no device" },
      { kind: "device", ratingA: 100 },
      {
        kind: "feeder-tap",
        feederDeviceA: 400,
        length: { value: 10, unit: "ft" },
        endDeviceA: 60,
        leavesEnclosure: true,
        physicallyProtected: true,
      },
    ] as const);
  },
  ({ joint }) => {
    delete joint.circuit?.protection;
  },
  ({ joint }) => {
    delete joint.circuit;
  },
  ({ joint }, dice) => {
    if (joint.circuit === undefined) return;
    joint.circuit.sets = dice.pick([1, 2, 3]);
    if (dice.percent(70)) joint.circuit.parallelLegsAlike = dice.percent(75);
  },
  ({ joint }) => {
    delete joint.circuit?.parallelLegsAlike;
  },
  ({ joint }, dice) => {
    if (joint.circuit === undefined || joint.circuit.sets < 2) return;
    joint.circuit.smallLegs = dice.pick(SMALL_LEGS);
    if (joint.circuit.smallLegs === "existing-neutral") {
      if (dice.percent(70)) joint.role = "neutral";
      for (const group of joint.conductors) group.size = dice.pick(["3 AWG", "2 AWG", "1 AWG"]);
      return;
    }
    for (const group of joint.conductors) group.size = dice.pick(["12 AWG", "10 AWG", "8 AWG"]);
    joint.circuit.protection = { kind: "device", ratingA: dice.pick([20, 25, 30, 40]) };
    delete joint.circuit.continuousLoadA;
    delete joint.circuit.nonContinuousLoadA;
    joint.circuit.loadA = dice.pick([15, 20, 25]);
  },
  ({ joint }, dice) => {
    if (joint.circuit === undefined) return;
    if (dice.percent(30)) delete joint.circuit.voltageV;
    else joint.circuit.voltageV = dice.pick([120, 300, 301, 480, 600, 601, 1000]);
  },
  ({ joint }, dice) => {
    const { circuit } = joint;
    if (circuit === undefined || joint.function === "termination") return;
    if (dice.percent(50)) delete circuit.endTerminalTemperature;
    else
      circuit.endTerminalTemperature = dice.pick([
        "unmarked",
        { value: 60, unit: "Cel" },
        { value: 194, unit: "degF" },
      ] as const);
  },
  ({ joint }, dice) => {
    const tap = joint.circuit?.protection;
    if (tap?.kind !== "feeder-tap") return;
    dice.pick([
      () => {
        tap.leavesEnclosure = !tap.leavesEnclosure;
      },
      () => {
        tap.physicallyProtected = !tap.physicallyProtected;
      },
      () => {
        tap.outdoors = !(tap.outdoors ?? false);
      },
      () => {
        delete tap.outdoors;
      },
      () => {
        tap.length = dice.pick([
          { value: 3.048, unit: "m" },
          { value: 3.049, unit: "m" },
          { value: 300, unit: "in" },
          { value: 7621, unit: "mm" },
        ] as const);
      },
      () => {
        tap.feederDeviceA = dice.pick([200, 400, 800, 1200]);
      },
      () => {
        tap.through = dice.pick([
          { primaryV: 480, secondaryV: 208 },
          { primaryV: 480, secondaryV: 240 },
          { primaryV: 208, secondaryV: 480 },
        ]);
      },
    ])();
  },
];

const EQUIPMENT: readonly Change[] = [
  ({ joint }, dice) => {
    if (joint.equipment === undefined) return;
    if (dice.percent(40)) delete joint.equipment.terminalTemperature;
    else
      joint.equipment.terminalTemperature = dice.pick([
        "unmarked",
        { value: 60, unit: "Cel" },
        { value: 90, unit: "Cel" },
        { value: 140, unit: "degF" },
      ] as const);
  },
  ({ joint }, dice) => {
    if (joint.equipment === undefined) return;
    if (dice.percent(30)) delete joint.equipment.stud;
    else
      joint.equipment.stud = dice.pick([
        { holes: 1, bolt: "3/8" },
        { holes: 1, bolt: "M10" },
        { holes: 1, bolt: "1/2" },
        { holes: 2, bolt: "1/2", spacing: { value: 1.75, unit: "in" } },
        { holes: 2, bolt: "1/2", spacing: { value: 44.45, unit: "mm" } },
        { holes: 2, bolt: "1/2", spacing: { value: 45, unit: "mm" } },
        { holes: 2, bolt: "1/2" },
      ] as const);
  },
  ({ joint }, dice) => {
    if (joint.equipment === undefined || joint.function !== "termination") return;
    joint.equipment.bending = {
      entry: dice.pick(["opposite", "side"] as const),
      available: dice.pick([
        { value: 2, unit: "in" },
        { value: 5.5, unit: "in" },
        { value: 177.8, unit: "mm" },
        { value: 177.7, unit: "mm" },
        { value: 1, unit: "ft" },
        { value: 0.3556, unit: "m" },
      ] as const),
      wiresPerTerminal: dice.pick([1, 1, 2, 3, 4]),
      ...(dice.percent(40) ? { removableTerminal: dice.percent(70) } : {}),
    };
  },
  ({ joint }, dice) => {
    if (joint.equipment === undefined) return;
    const value = dice.pick([16, 36]);
    const unit = dice.pick(["in2", "cm2", "mm2"] as const);
    joint.equipment.space = {
      kind: dice.pick(["enclosure", "wireway"] as const),
      section: { value, unit },
      conductors: { value: (value * dice.pick([2000, 4000, 4001])) / 10_000, unit },
      splices: { value: (value * dice.pick([0, 3499, 3500, 3501, 5500])) / 10_000, unit },
    };
  },
  ({ joint }, dice) => {
    if (joint.equipment === undefined) return;
    if (dice.percent(40)) delete joint.equipment.kind;
    else
      joint.equipment.kind = dice.pick([
        "panelboard",
        "handhole",
        "other",
        "electrode",
        "ground-bus",
        "switchboard",
        "wiring-device",
        "wireway",
        "box",
      ] as const);
  },
  ({ joint }, dice) => {
    if (joint.equipment?.boxVolumeIn3 === undefined) return;
    if (dice.percent(40)) delete joint.equipment.boxVolumeIn3;
    else joint.equipment.boxVolumeIn3 = dice.pick([99.5, 100, 100.5]);
  },
  ({ joint }, dice) => {
    if (joint.equipment?.frame === undefined) return;
    if (dice.percent(50)) delete joint.equipment.frame;
    else joint.equipment.frame = "Frame 9";
  },
  ({ joint }) => {
    if (joint.equipment?.terminal !== undefined && joint.connector !== undefined && "described" in joint.connector)
      delete joint.equipment.terminal;
  },
  ({ joint }) => {
    if (joint.connector !== undefined && !("equipmentTerminal" in joint.connector)) delete joint.equipment;
  },
  ({ joint }, dice) => {
    if (dice.percent(30)) delete joint.place;
    else joint.place = { location: dice.pick(LOCATIONS) };
  },
  ({ joint }) => {
    if (joint.place !== undefined) joint.place.deterioratingAgent = "hydrogen sulfide";
  },
  ({ joint }, dice) => {
    joint.partState = dice.pick(["new", "reused"] as const);
  },
  ({ joint }, dice) => {
    joint.rework = true;
    if (dice.percent(50)) joint.partState = "new";
  },
  ({ joint }, dice) => {
    joint.tooling = dice.pick([
      { tool: "hand press Alder" },
      { tool: "hand press Alder", die: "A-7" },
      { tool: "hand press Alder", die: "A-8" },
      { tool: "hand press Rowan", die: "A-7" },
      { die: "A-7" },
      { die: "A-9" },
    ]);
  },
];

const GROUNDING: readonly Change[] = [
  ({ joint }) => {
    delete joint.grounding;
  },
  ({ joint }) => {
    delete joint.grounding?.service;
  },
  ({ joint }) => {
    delete joint.grounding?.soleConnection;
  },
  ({ joint }) => {
    delete joint.grounding?.electrode;
  },
  ({ joint }, dice) => {
    if (joint.grounding !== undefined) joint.grounding.electrode = dice.pick(ELECTRODES);
  },
  ({ joint }, dice) => {
    if (joint.grounding?.service !== undefined)
      joint.grounding.service.size = moved(joint.grounding.service.size, step(dice));
  },
  ({ joint }, dice) => {
    if (joint.grounding === undefined) return;
    if (dice.percent(40)) delete joint.grounding.bonding;
    else if (joint.role === "bonding") joint.grounding.bonding = dice.pick(BONDINGS);
  },
  ({ joint }) => {
    delete joint.grounding?.equivalentService;
  },
  ({ joint }, dice) => {
    if (joint.upsizing === undefined) return;
    if (dice.percent(30)) delete joint.upsizing;
    else joint.upsizing.installed.size = moved(joint.upsizing.installed.size, step(dice));
  },
  ({ connector }, dice) => {
    if (connector.grounding === undefined) return;
    if (dice.percent(40)) delete connector.grounding;
    else if (dice.percent(50)) connector.grounding.listed = false;
    else connector.grounding.electrodes = [dice.pick(ELECTRODES), dice.pick(ELECTRODES)];
  },
  ({ connector }, dice) => {
    if (connector.grounding === undefined) return;
    if (dice.percent(40)) delete connector.grounding.conductorsPerClamp;
    else connector.grounding.conductorsPerClamp = dice.pick(["unmarked", 1, 2] as const);
  },
  ({ joint, connector }, dice) => {
    const [group] = joint.conductors;
    const [opening] = connector.openings;
    if (group === undefined || opening === undefined || connector.grounding === undefined) return;
    group.count = 2;
    opening.conductorsMax = dice.pick([1, 2, 2]);
    connector.grounding.conductorsPerClamp = dice.pick(["unmarked", 1, 2] as const);
  },
];

const CONNECTOR: readonly Change[] = [
  ({ connector }, dice) => {
    if (dice.percent(20)) delete connector.metalMarking;
    else
      connector.metalMarking = dice.pick([
        "unmarked",
        "CU",
        "CU7",
        "CU9",
        "AL",
        "AL7",
        "AL9",
        "AL7CU",
        "AL9CU",
        "AL-CU",
        "AL-CU-INTERMIX-DRY",
        "CO/ALR",
        "ZZ",
      ]);
  },
  ({ connector }, dice) => {
    if (dice.percent(30)) delete connector.temperature;
    else
      connector.temperature = dice.pick([
        "unmarked",
        { value: 60, unit: "Cel" },
        { value: 75, unit: "Cel" },
        { value: 194, unit: "degF" },
      ] as const);
  },
  ({ connector }, dice) => {
    if (dice.percent(30)) delete connector.voltageV;
    else connector.voltageV = dice.pick(["unmarked", 300, 600, 1000] as const);
  },
  ({ connector }) => {
    connector.insulated = !connector.insulated;
  },
  ({ connector }) => {
    connector.openingsApart = !connector.openingsApart;
  },
  ({ connector }, dice) => {
    const way = dice.pick(["absent", "unmarked", "one", "one"]);
    if (way === "absent") delete connector.places;
    else connector.places = way === "unmarked" ? "unmarked" : [dice.pick(PLACE_LISTINGS)];
  },
  ({ connector }, dice) => {
    if (dice.percent(40)) delete connector.lineSide;
    else connector.lineSide = dice.pick(["marked", "unmarked"] as const);
  },
  ({ connector }, dice) => {
    const range = dice.pick(dice.pick(connector.openings).ranges);
    range.from = moved(range.from, step(dice));
    if ((cmilOf(range.from) ?? 0) > (cmilOf(range.to) ?? 0)) range.from = range.to;
  },
  ({ connector }, dice) => {
    const range = dice.pick(dice.pick(connector.openings).ranges);
    range.to = moved(range.to, step(dice));
    if ((cmilOf(range.from) ?? 0) > (cmilOf(range.to) ?? 0)) range.to = range.from;
  },
  ({ connector }, dice) => {
    const range = dice.pick(dice.pick(connector.openings).ranges);
    range.strandings = dice.percent(50) ? "unmarked" : [dice.pick(STRANDINGS.slice(0, 11)), "class-B"];
  },
  ({ connector }, dice) => {
    const opening = dice.pick(connector.openings);
    if (dice.percent(30)) delete opening.conductorsMax;
    else opening.conductorsMax = dice.pick(["unmarked", 1, 2, 3] as const);
  },
  ({ connector }, dice) => {
    const opening = dice.pick(connector.openings);
    if (dice.percent(40)) delete opening.shared;
    else
      opening.shared = {
        sameSize: dice.percent(50),
        sameMetal: dice.percent(60),
        ...(dice.percent(30) ? { from: "14 AWG", to: "10 AWG" } : {}),
        ...(dice.percent(30) ? { metals: ["copper"] } : {}),
      };
  },
  ({ connector }, dice) => {
    const opening = dice.pick(connector.openings);
    opening.count = dice.pick([1, 1, 2, 3]);
  },
  ({ connector }, dice) => {
    const opening = dice.pick(connector.openings);
    if (dice.percent(60)) delete opening.combinations;
    else opening.combinations = [[{ size: "12 AWG", count: 3 }]];
  },
  ({ connector }) => {
    connector.reusable = !connector.reusable;
  },
  ({ connector }, dice) => {
    if (dice.percent(50)) delete connector.withstands;
    else connector.withstands = [dice.pick(["hydrogen sulfide", "salt air"])];
  },
  ({ connector }, dice) => {
    if (connector.tooling === undefined) return;
    if (dice.percent(60)) delete connector.tooling;
    else delete connector.tooling.die;
  },
  ({ connector }, dice) => {
    connector.functions = [dice.pick(["splice", "termination", "tap"] as const)];
  },
  ({ connector }, dice) => {
    if (connector.screws.length === 0) return;
    const screw = dice.pick(connector.screws);
    if (dice.percent(40)) delete screw.torque;
    else screw.torque = "unmarked";
  },
  ({ connector }, dice) => {
    if (connector.screws.length === 0) return;
    const screw = dice.pick(connector.screws);
    const slot = {
      slotWidth: dice.pick([
        { value: 0.047, unit: "in" },
        { value: 0.048, unit: "in" },
        { value: 1.1938, unit: "mm" },
      ] as const),
      slotLength: dice.pick([
        { value: 0.25, unit: "in" },
        { value: 0.251, unit: "in" },
        { value: 0.28125, unit: "in" },
        { value: 6.35, unit: "mm" },
      ] as const),
    };
    screw.torque = "unmarked";
    screw.drive = dice.pick([
      { kind: "clamp-bolt" },
      { kind: "socket", acrossFlats: dice.pick(["1/8", "5/16", "9/16", "11/16"]) },
      { kind: "external-hex" },
      { kind: "slotted", screwSize: "10-and-larger", ...slot },
      { kind: "slotted", screwSize: "under-10", ...slot },
      { kind: "slotted-hex", ...slot },
      { kind: "split-bolt" },
      { kind: "breakaway" },
    ] as const);
  },
  ({ connector }, dice) => {
    if (connector.mounting.kind !== "pad") return;
    connector.mounting.pattern = dice.pick([
      { holes: 1, bolt: "3/8" },
      { holes: 2, bolt: "1/2" },
      { holes: 2, bolt: "1/2", spacing: { value: 1.75, unit: "in" } },
    ] as const);
  },
  ({ connector }, dice) => {
    if (connector.pin !== undefined)
      connector.pin = { size: moved(connector.pin.size, step(dice)), metal: dice.pick(["copper", "aluminum"]) };
  },
  ({ basis }) => {
    delete basis.installedOn;
  },
];

const CHANGES: readonly Change[] = [...CONDUCTORS, ...CIRCUIT, ...EQUIPMENT, ...GROUNDING, ...CONNECTOR];
