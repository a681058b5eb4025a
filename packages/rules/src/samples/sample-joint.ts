/** Plain joints, connectors and subjects for the tests of the rules. Not part of the library. */
import type { ConductorGroup } from "../core/conductor.js";
import type { Connector, Opening } from "../core/connector.js";
import type { Joint } from "../core/joint.js";
import type { JointSubject, Landing } from "../core/rule.js";

/** A set-screw lug on a dry 480 V panel: accepted with 3/0 AWG copper. */
export function sampleConductor(change: Partial<ConductorGroup> = {}): ConductorGroup {
  return { count: 1, metal: "copper", size: "3/0 AWG", stranding: "class-B", insulation: "THHN/THWN-2", ...change };
}

export function sampleOpening(change: Partial<Opening> = {}): Opening {
  return {
    id: "barrel",
    count: 1,
    ranges: [{ from: "6 AWG", to: "250 kcmil", strandings: ["solid", "class-B", "class-C", "compact", "compressed"] }],
    conductorsMax: 1,
    screw: "main",
    ...change,
  };
}

export function sampleConnector(change: Partial<Connector> = {}): Connector {
  return {
    description: "set-screw lug, one barrel",
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
    openings: [sampleOpening()],
    mounting: { kind: "integral" },
    reusable: true,
    ...change,
  };
}

export function sampleJoint(change: Partial<Joint> = {}): Joint {
  return {
    mark: "T-001",
    function: "termination",
    role: "phase",
    quantity: 3,
    conductors: [sampleConductor()],
    circuit: { voltageV: 480, loadA: 150, sets: 1, protection: { kind: "device", ratingA: 200 } },
    equipment: { tag: "P-1", kind: "panelboard", terminalTemperature: { value: 75, unit: "Cel" } },
    place: { location: "dry" },
    ...change,
  };
}

/** Puts conductor group n into opening n, or all of them into the only opening. */
export function sampleSubject(joint: Joint = sampleJoint(), connector: Connector = sampleConnector()): JointSubject {
  const openings = connector.openings;
  const landings: Landing[] = openings
    .map(
      (opening, openingIndex): Landing => ({
        openingIndex,
        opening,
        instance: 1,
        conductors: joint.conductors
          .map((conductor, group) => ({ group, conductor, count: conductor.count }))
          .filter(({ group }) => openings.length === 1 || group === openingIndex),
      }),
    )
    .filter((landing) => landing.conductors.length > 0);
  return { joint, connector, origin: "connector", landings };
}
