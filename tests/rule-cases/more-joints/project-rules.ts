/**
 * Joints of a job with rules of its own: each kind of rule kept, broken and, where it can be, not known. All of them are
 * one 3/0 AWG copper conductor in a set-screw lug of one hole on a pad, 150 A behind 200 A.
 */
import { type ProjectDemand, type ProjectScope, withProjectRules } from "@landfast/rules";
import type { Draft, OpenConnector, OpenJoint } from "../../oracle/draft.js";
import type { MoreJoint } from "./more-joint.js";

const SOURCE = "electrical specification, 3.2";

function inJob(
  name: string,
  demand: ProjectDemand,
  change: (draft: Draft) => void = () => undefined,
  scope: ProjectScope = {},
): MoreJoint {
  return {
    rule: "project-rules",
    name,
    from: null,
    change: (draft) => {
      draft.basis = { ruleSet: "nfpa70", edition: "2023" };
      draft.joint = plainJoint();
      draft.connector = plainLug();
      change(draft);
      draft.joint = withProjectRules(draft.joint, [{ id: "R-1", source: SOURCE, scope, demand }]) as OpenJoint;
    },
  };
}

function plainJoint(): OpenJoint {
  return {
    mark: "T-1",
    function: "termination",
    role: "phase",
    quantity: 1,
    conductors: [{ count: 1, metal: "copper", size: "3/0 AWG", stranding: "class-B", insulation: "THHN/THWN-2" }],
    circuit: { voltageV: 480, sets: 1, loadA: 150, protection: { kind: "device", ratingA: 200 } },
    equipment: { tag: "P-1", kind: "panelboard", terminalTemperature: { value: 75, unit: "Cel" } },
    place: { location: "dry" },
  };
}

function plainLug(): OpenConnector {
  return {
    partNumber: "LUG-1",
    description: "set-screw lug, one barrel, one hole",
    family: "set-screw-lug-one-hole",
    construction: "set-screw",
    functions: ["termination"],
    metalMarking: "AL9CU",
    voltageV: 600,
    insulated: false,
    openingsApart: true,
    listings: [{ standard: "UL 486A-486B" }],
    places: ["equipment"],
    screws: [{ id: "main", drive: { kind: "socket", acrossFlats: "5/16" }, torque: "unmarked" }],
    openings: [
      {
        id: "barrel",
        count: 1,
        ranges: [{ from: "6 AWG", to: "250 kcmil", strandings: ["class-B"] }],
        conductorsMax: 1,
        screw: "main",
      },
    ],
    mounting: { kind: "pad", pattern: { holes: 1, bolt: "1/2" } },
    reusable: true,
    bodyMetal: "aluminum",
    plating: "tin",
  };
}

const loaded =
  (loadA: number, size = "3/0 AWG") =>
  ({ joint }: Draft): void => {
    joint.circuit = { sets: 1, voltageV: 480, loadA };
    for (const conductor of joint.conductors) conductor.size = size;
  };
const holes =
  (count: number) =>
  ({ connector }: Draft): void => {
    connector.mounting = { kind: "pad", pattern: { holes: count, bolt: "1/2" } };
  };
const sized =
  (size: string) =>
  ({ joint }: Draft): void => {
    for (const conductor of joint.conductors) conductor.size = size;
  };
const together =
  (count: number) =>
  ({ joint, connector }: Draft): void => {
    for (const conductor of joint.conductors) conductor.count = count;
    for (const opening of connector.openings) opening.conductorsMax = count;
  };
const at60 = { kind: "cap-terminal-temperature", temperature: { value: 60, unit: "Cel" } } as const;

export const PROJECT_JOINTS: readonly MoreJoint[] = [
  inJob("a family is forbidden and this is another", { kind: "forbid-family", families: ["split-bolt"] }),
  inJob("its family is forbidden", { kind: "forbid-family", families: ["split-bolt", "set-screw-lug-one-hole"] }),
  inJob("its construction is forbidden", { kind: "forbid-construction", constructions: ["set-screw"] }),
  inJob("a part is forbidden and this is another", { kind: "forbid-part", partNumbers: ["LUG-2"] }),
  inJob("the part is forbidden", { kind: "forbid-part", partNumbers: ["LUG-1", "LUG-2"] }),
  inJob("parts are forbidden and its number is not given", { kind: "forbid-part", partNumbers: ["LUG-1"] }, (draft) => {
    delete draft.connector.partNumber;
  }),
  inJob(
    "parts are forbidden and it is the equipment's own terminal",
    { kind: "forbid-part", partNumbers: ["LUG-1"] },
    (draft) => {
      const { partNumber: _, ...terminal } = plainLug();
      draft.joint.equipment = { tag: "P-1", terminalTemperature: { value: 75, unit: "Cel" }, terminal };
      draft.connector = terminal;
    },
  ),
  inJob("a metal is forbidden and the conductors are of another", { kind: "forbid-metal", metals: ["aluminum"] }),
  inJob(
    "the metal of the second conductor is forbidden",
    { kind: "forbid-metal", metals: ["aluminum"] },
    ({ joint }) => {
      const [one] = joint.conductors;
      if (one !== undefined) joint.conductors.push({ ...one, metal: "aluminum" });
    },
  ),
  inJob("one of two families is required and it is one", {
    kind: "require-family",
    families: ["lug-kit", "set-screw-lug-one-hole"],
  }),
  inJob("another family is required", { kind: "require-family", families: ["compression-lug-two-hole"] }),
  inJob("another construction is required", { kind: "require-construction", constructions: ["compression", "weld"] }),
  inJob("two holes are required and it has two", { kind: "require-holes", holes: 2 }, holes(2)),
  inJob("two holes are required and it has three", { kind: "require-holes", holes: 2 }, holes(3)),
  inJob("two holes are required and it has one", { kind: "require-holes", holes: 2 }),
  inJob("two holes are required and it has no tongue", { kind: "require-holes", holes: 2 }, ({ connector }) => {
    connector.mounting = { kind: "integral" };
  }),
  inJob("metal and plating are required, and it has both", {
    kind: "require-body",
    bodyMetals: ["Copper", "Aluminum"],
    platings: ["tin"],
  }),
  inJob("a plating only is required, and it has it", { kind: "require-body", platings: ["tin"] }),
  inJob(
    "another metal is required, and its plating is not given",
    {
      kind: "require-body",
      bodyMetals: ["copper"],
      platings: ["tin"],
    },
    ({ connector }) => {
      delete connector.plating;
    },
  ),
  inJob(
    "a plating is required and it is bare",
    { kind: "require-body", platings: ["tin", "silver", "nickel"] },
    ({ connector }) => {
      connector.plating = "none";
    },
  ),
  inJob(
    "metal and plating are required, and its metal is not given",
    {
      kind: "require-body",
      bodyMetals: ["copper"],
      platings: ["tin"],
    },
    ({ connector }) => {
      delete connector.bodyMetal;
    },
  ),
  // published: Table 310.16, 3/0 AWG copper: 165 A at 60 C
  ...([164, 165, 166] as const).map((loadA) =>
    inJob(`60 C is the most and the load is ${loadA} A`, at60, loaded(loadA)),
  ),
  inJob("60 C is the most, and two sets carry 330 A", at60, ({ joint }) => {
    joint.circuit = { sets: 2, voltageV: 480, loadA: 330 };
  }),
  inJob("60 C is the most and only the device ahead is known, which the conductor carries", at60, ({ joint }) => {
    joint.circuit = { sets: 1, voltageV: 480, protection: { kind: "device", ratingA: 165 } };
  }),
  inJob(
    "60 C is the most and only the device ahead is known, which the conductor does not carry",
    at60,
    ({ joint }) => {
      joint.circuit = { sets: 1, voltageV: 480, protection: { kind: "device", ratingA: 166 } };
    },
  ),
  inJob("60 C is the most and the table has no such size", at60, loaded(10, "35 mm2")),
  inJob("60 C is the most and the conductor is a ground", at60, ({ joint }) => {
    joint.role = "equipment-ground";
  }),
  inJob("60 C is the most and the conductor is a lead of equipment", at60, ({ joint }) => {
    for (const conductor of joint.conductors) conductor.insulation = "equipment-lead";
  }),
  inJob("59 C is the most, below every column", {
    kind: "cap-terminal-temperature",
    temperature: { value: 59, unit: "Cel" },
  }),
  ...([1, 2, 3] as const).map((count) =>
    inJob(
      `two conductors in an opening are the most, and it holds ${count}`,
      { kind: "cap-conductors-per-opening", conductors: 2 },
      together(count),
    ),
  ),
  ...(["2/0 AWG", "3/0 AWG", "4/0 AWG"] as const).map((size) =>
    inJob(
      `its family takes 3/0 AWG at most, and it is ${size}`,
      { kind: "cap-size", families: ["split-bolt", "set-screw-lug-one-hole"], size: "3/0 AWG" },
      sized(size),
    ),
  ),
  inJob("another family is limited in size", { kind: "cap-size", families: ["split-bolt"], size: "14 AWG" }),
  inJob(
    "every line of its scope is met",
    { kind: "forbid-construction", constructions: ["compression"] },
    ({ joint }) => {
      joint.area = "Roof";
    },
    {
      functions: ["termination", "splice"],
      roles: ["phase"],
      areas: ["Roof", "Yard"],
      equipmentKinds: ["panelboard"],
      locations: ["dry", "damp"],
      fromSize: "1/0 AWG",
    },
  ),
  inJob(
    "its area is not given and would decide",
    { kind: "forbid-construction", constructions: ["set-screw"] },
    undefined,
    { areas: ["Roof"] },
  ),
];
