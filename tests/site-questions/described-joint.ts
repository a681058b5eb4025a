/** Joints and parts as one describes them on site, and the verdict on them. All are made up; none is in a catalogue. */
import {
  type Basis,
  type ConductorGroup,
  type Connector,
  checkJoint,
  type Joint,
  type JointFinding,
  type Opening,
} from "@landfast/rules";

export const BASIS_2023: Basis = { ruleSet: "nfpa70", edition: "2023" };
export const BASIS_2020: Basis = { ruleSet: "nfpa70", edition: "2020" };
export const BASIS_2017: Basis = { ruleSet: "nfpa70", edition: "2017" };

const EVERY_FORM = ["solid", "class-B", "class-C", "compressed", "compact"] as const;

export function conductor(size: string, change: Partial<ConductorGroup> = {}): ConductorGroup {
  return { count: 1, metal: "copper", size, stranding: "class-B", insulation: "THHN/THWN-2", ...change };
}

export function opening(from: string, to: string, change: Partial<Opening> = {}): Opening {
  return {
    id: "opening",
    count: 1,
    ranges: [{ from, to, strandings: EVERY_FORM }],
    conductorsMax: 1,
    screw: "screw",
    ...change,
  };
}

/** A set-screw lug that came with its equipment: AL9CU, 600 V, a 5/16 in socket screw without a marked torque. */
export function equipmentLug(from: string, to: string, change: Partial<Connector> = {}): Connector {
  return {
    description: "lug of the equipment",
    family: "equipment-terminal",
    construction: "set-screw",
    functions: ["termination"],
    metalMarking: "AL9CU",
    voltageV: 600,
    insulated: false,
    openingsApart: true,
    listings: [{ standard: "UL 486A-486B" }],
    places: ["equipment"],
    screws: [{ id: "screw", drive: { kind: "socket", acrossFlats: "5/16" }, torque: "unmarked" }],
    openings: [opening(from, to)],
    mounting: { kind: "integral" },
    reusable: true,
    ...change,
  };
}

/** An insulated splice with a port for each conductor, hanging free. */
export function splice(openings: readonly Opening[], change: Partial<Connector> = {}): Connector {
  return {
    ...equipmentLug("14 AWG", "4 AWG"),
    description: "insulated splice",
    family: "multi-tap-block",
    functions: ["splice", "tap"],
    insulated: true,
    places: ["dry", "damp"],
    openings,
    mounting: { kind: "free" },
    ...change,
  };
}

/** A tin-plated compression lug with one 3/8 in hole, its tool and die named. */
export function pressedLug(size: string, change: Partial<Connector> = {}): Connector {
  const { screw: _, ...barrel } = opening(size, size, { ranges: [{ from: size, to: size, strandings: EVERY_FORM }] });
  return {
    ...equipmentLug(size, size),
    description: "compression lug, one 3/8 in hole",
    family: "compression-lug-one-hole",
    construction: "compression",
    screws: [],
    openings: [barrel],
    mounting: { kind: "pad", pattern: { holes: 1, bolt: "3/8" } },
    tooling: { tool: "press A", die: "die 12", crimps: 2 },
    reusable: false,
    bodyMetal: "aluminum",
    plating: "tin",
    ...change,
  };
}

/** A clamp for electrodes, listed for direct burial. */
export function clamp(change: Partial<Connector> = {}): Connector {
  return {
    ...equipmentLug("8 AWG", "4 AWG"),
    description: "rod clamp",
    family: "rod-clamp",
    construction: "bolted-clamp",
    metalMarking: "CU",
    listings: [{ standard: "UL 467" }],
    places: ["dry", "damp", "wet", "direct-burial"],
    grounding: { listed: true, electrodes: ["copper-bonded-rod"], conductorsPerClamp: "unmarked" },
    screws: [{ id: "bolt", drive: { kind: "clamp-bolt" }, torque: { value: 150, unit: "lbf-in" } }],
    openings: [opening("8 AWG", "4 AWG", { conductorsMax: "unmarked", screw: "bolt" })],
    mounting: { kind: "free" },
    ...change,
  };
}

/** Conductors that end on the 75 C terminals of a panelboard, 480 V, in a dry place. */
export function termination(conductors: readonly ConductorGroup[], change: Partial<Joint> = {}): Joint {
  return {
    mark: "Q-1",
    function: "termination",
    role: "phase",
    quantity: 1,
    conductors,
    circuit: { voltageV: 480, loadA: 10, sets: 1, protection: { kind: "device", ratingA: 15 } },
    equipment: { tag: "P-1", kind: "panelboard", terminalTemperature: { value: 75, unit: "Cel" } },
    place: { location: "dry" },
    ...change,
  };
}

/** Conductors joined in a dry box; their ends are on 75 C terminals. */
export function spliced(conductors: readonly ConductorGroup[], change: Partial<Joint> = {}): Joint {
  return {
    ...termination(conductors),
    function: "splice",
    circuit: {
      voltageV: 480,
      loadA: 10,
      sets: 1,
      protection: { kind: "device", ratingA: 15 },
      endTerminalTemperature: { value: 75, unit: "Cel" },
    },
    equipment: { tag: "JB-1", kind: "box" },
    ...change,
  };
}

export function circuit(loadA: number, ratingA: number, change: Partial<NonNullable<Joint["circuit"]>> = {}) {
  return { voltageV: 480, loadA, sets: 1, protection: { kind: "device", ratingA }, ...change } as const;
}

export function finding(joint: Joint, connector: Connector, basis: Basis = BASIS_2023): JointFinding {
  const origin = connector.mounting.kind === "integral" ? "equipment" : "request";
  return checkJoint({ joint, connector, basis, origin });
}

/** "accept", or the verdict and the rules that stand in the way: "reject: wire-range". */
export function verdict(joint: Joint, connector: Connector, basis: Basis = BASIS_2023): string {
  const { verdict: given, findings, missing } = finding(joint, connector, basis);
  if (given === "accept" || given === "accept-with-conditions") return "accept";
  const outcome = given === "reject" ? "fail" : "missing";
  const rules = findings.filter((one) => one.outcome === outcome).map(({ rule }) => rule);
  return `${given}: ${rules.join(", ")}${given === "reject" ? "" : ` (${missing.map(({ path }) => path).join(", ")})`}`;
}
