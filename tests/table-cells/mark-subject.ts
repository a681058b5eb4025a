/** Joints that make the rules read a marking code: each metal alone, and copper with aluminum. */
import type { ConductorMetal, Connector, Joint, JointSubject } from "@landfast/rules";

export function markSubject(metalMarking: string): readonly JointSubject[] {
  return (
    [["copper"], ["aluminum"], ["copper-clad-aluminum"], ["copper", "aluminum"]] as const satisfies ConductorMetal[][]
  ).map((metals) => {
    const joint: Joint = {
      mark: "M-1",
      function: "splice",
      role: "phase",
      quantity: 1,
      conductors: metals.map((metal) => ({
        count: 1,
        metal,
        size: "10 AWG",
        stranding: "class-B",
        insulation: "THHN",
      })),
      circuit: { voltageV: 240, loadA: 15, sets: 1, protection: { kind: "device", ratingA: 20 } },
      place: { location: "dry" },
    };
    const connector: Connector = {
      description: "connector for the test",
      family: "splicer-reducer",
      construction: "set-screw",
      functions: ["splice"],
      metalMarking,
      voltageV: 600,
      insulated: false,
      openingsApart: false,
      listings: [{ standard: "UL 486A-486B" }],
      places: ["equipment"],
      screws: [],
      openings: [
        { id: "a", count: 2, ranges: [{ from: "14 AWG", to: "2 AWG", strandings: "unmarked" }], conductorsMax: 1 },
      ],
      mounting: { kind: "free" },
      reusable: true,
    };
    const [opening] = connector.openings;
    if (opening === undefined) throw new Error("the connector has an opening");
    return {
      joint,
      connector,
      origin: "connector",
      landings: joint.conductors.map((conductor, group) => ({
        openingIndex: 0,
        opening,
        instance: group + 1,
        conductors: [{ group, conductor, count: 1 }],
      })),
    };
  });
}
