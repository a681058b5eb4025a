/** One breaker terminal, described in full: a good joint from which a test departs in one place. */
export function workshopJoint(change: Record<string, unknown> = {}): Record<string, unknown> {
  return {
    mark: "B-01",
    function: "termination",
    role: "phase",
    quantity: 3,
    conductors: [{ count: 1, metal: "copper", size: "3/0 AWG", stranding: "class-B", insulation: "THHN/THWN-2" }],
    circuit: { voltageV: 480, loadA: 150, sets: 1, protection: { kind: "device", ratingA: 200 } },
    equipment: { tag: "P-1", kind: "panelboard", terminalTemperature: { value: 75, unit: "Cel" } },
    place: { location: "dry" },
    connector: { described: workshopLug() },
    ...change,
  };
}

/** A set-screw lug with one barrel. */
export function workshopLug(change: Record<string, unknown> = {}): Record<string, unknown> {
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
    openings: [workshopOpening()],
    mounting: { kind: "integral" },
    reusable: true,
    ...change,
  };
}

export function workshopOpening(change: Record<string, unknown> = {}): Record<string, unknown> {
  return {
    id: "barrel",
    count: 1,
    ranges: [{ from: "6 AWG", to: "250 kcmil", strandings: ["class-B", "class-C", "compact", "compressed"] }],
    conductorsMax: 1,
    screw: "main",
    ...change,
  };
}

export function workshopJob(change: Record<string, unknown> = {}): Record<string, unknown> {
  return { name: "Workshop", basis: { ruleSet: "nfpa70", edition: "2023" }, joints: [workshopJoint()], ...change };
}
