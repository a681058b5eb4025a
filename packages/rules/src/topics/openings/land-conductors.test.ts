import { describe, expect, test } from "vitest";
import type { ConductorGroup } from "../../core/conductor.js";
import { sizeOf } from "../../core/conductor-size.js";
import type { Connector, Opening } from "../../core/connector.js";
import type { Joint } from "../../core/joint.js";
import { dutyFit, type Fit, sizeFit, strandingFit } from "../../core/opening-fit.js";
import type { Landing } from "../../core/rule.js";
import { sampleConductor, sampleConnector, sampleJoint, sampleOpening } from "../../samples/sample-joint.js";
import { landConductors } from "./land-conductors.js";

const PLAIN = ["solid", "class-B", "class-C", "compact"] as const;

function range(from: string, to: string, change: Partial<Opening> = {}): Opening {
  return sampleOpening({ id: `${from} to ${to}`, ranges: [{ from, to, strandings: PLAIN }], ...change });
}

function copper(size: string, change: Partial<ConductorGroup> = {}): ConductorGroup {
  return sampleConductor({ size, ...change });
}

function land(conductors: readonly ConductorGroup[], openings: readonly Opening[], tap = false): Landing[] {
  const joint = sampleJoint({ function: tap ? "tap" : "splice", conductors });
  return landConductors(joint, sampleConnector({ functions: ["splice", "tap"], openings }));
}

/** "14 AWG to 4 AWG#1: 1 x 4 AWG". */
function shown(landings: readonly Landing[]): string[] {
  return landings.map(
    ({ opening, instance, conductors }) =>
      `${opening.id}#${String(instance)}: ${conductors.map(({ count, conductor }) => `${String(count)} x ${conductor.size}`).join(" + ")}`,
  );
}

describe("landing of conductors in openings", () => {
  // hand: only the second opening takes 250 kcmil, so 4 AWG has to go to the first, whichever is named first
  test.each([[["4 AWG", "250 kcmil"]], [["250 kcmil", "4 AWG"]]])("exact matching beats greedy: %s", (sizes) => {
    const openings = [range("14 AWG", "4 AWG"), range("14 AWG", "250 kcmil")];
    expect(
      shown(
        land(
          sizes.map((size) => copper(size)),
          openings,
        ),
      ),
    ).toEqual(["14 AWG to 4 AWG#1: 1 x 4 AWG", "14 AWG to 250 kcmil#1: 1 x 250 kcmil"]);
  });

  // hand: A takes 14-10, B 12-4, C 8-1/0; the one perfect landing is 10 in A, 6 in B, 2 in C
  test("a chain in which each conductor has two places", () => {
    const openings = [range("8 AWG", "1/0 AWG"), range("12 AWG", "4 AWG"), range("14 AWG", "10 AWG")];
    expect(shown(land([copper("6 AWG"), copper("10 AWG"), copper("2 AWG")], openings))).toEqual([
      "8 AWG to 1/0 AWG#1: 1 x 2 AWG",
      "12 AWG to 4 AWG#1: 1 x 6 AWG",
      "14 AWG to 10 AWG#1: 1 x 10 AWG",
    ]);
  });

  test("a group is split over several openings where one does not hold it", () => {
    const openings = [range("14 AWG", "2 AWG", { id: "a", count: 2 }), range("14 AWG", "2 AWG", { id: "b", count: 1 })];
    expect(shown(land([copper("6 AWG", { count: 3 })], openings))).toEqual([
      "a#1: 1 x 6 AWG",
      "a#2: 1 x 6 AWG",
      "b#1: 1 x 6 AWG",
    ]);
  });

  test("a bar takes one conductor for each hole before any hole is shared", () => {
    const bar = range("14 AWG", "4 AWG", {
      id: "bar",
      count: 8,
      conductorsMax: 2,
      shared: { sameSize: true, sameMetal: true },
    });
    expect(shown(land([copper("12 AWG", { count: 3 }), copper("10 AWG", { count: 2 })], [bar]))).toEqual([
      "bar#1: 1 x 10 AWG",
      "bar#2: 1 x 10 AWG",
      "bar#3: 1 x 12 AWG",
      "bar#4: 1 x 12 AWG",
      "bar#5: 1 x 12 AWG",
    ]);
  });

  // hand: five in four holes marked for two: 2 + 1 + 1 + 1
  test("one group in equal openings is spread evenly", () => {
    const bar = range("14 AWG", "4 AWG", { id: "bar", count: 4, conductorsMax: 2 });
    expect(land([copper("12 AWG", { count: 5 })], [bar]).map(({ conductors }) => conductors[0]?.count)).toEqual([
      2, 1, 1, 1,
    ]);
  });

  test("unlike sizes are kept apart where sharing needs one size", () => {
    const bar = range("14 AWG", "4 AWG", {
      id: "bar",
      count: 2,
      conductorsMax: 2,
      shared: { sameSize: true, sameMetal: true },
    });
    expect(shown(land([copper("12 AWG", { count: 2 }), copper("10 AWG", { count: 2 })], [bar]))).toEqual([
      "bar#1: 2 x 10 AWG",
      "bar#2: 2 x 12 AWG",
    ]);
  });

  test("unlike metals are kept apart where there is a choice", () => {
    const port = range("14 AWG", "4 AWG", {
      id: "port",
      count: 2,
      conductorsMax: 2,
      shared: { sameSize: false, sameMetal: false },
    });
    const landings = land([copper("12 AWG", { count: 2 }), copper("12 AWG", { metal: "aluminum" })], [port]);
    expect(landings.map(({ conductors }) => conductors.map(({ conductor }) => conductor.metal))).toEqual([
      ["aluminum"],
      ["copper"],
    ]);
  });

  test("in a tap the run conductor lies in the run opening although the tap opening takes it too", () => {
    const openings = [
      range("8 AWG", "500 kcmil", { id: "branch", duty: "tap" }),
      range("8 AWG", "500 kcmil", { id: "main", duty: "run" }),
    ];
    const conductors = [copper("500 kcmil", { duty: "run" }), copper("8 AWG", { duty: "tap" })];
    expect(shown(land(conductors, openings, true))).toEqual(["branch#1: 1 x 8 AWG", "main#1: 1 x 500 kcmil"]);
    expect(shown(land([...conductors].reverse(), openings, true))).toEqual([
      "branch#1: 1 x 8 AWG",
      "main#1: 1 x 500 kcmil",
    ]);
  });

  // hand: of the splits of 2 x 12 and 2 x 14 over two openings only {12, 14} twice is listed twice
  test("a listed combination decides how conductors are put together", () => {
    const opening = range("14 AWG", "10 AWG", {
      id: "cap",
      count: 2,
      conductorsMax: 4,
      combinations: [
        [
          { size: "14 AWG", count: 1 },
          { size: "12 AWG", count: 1 },
        ],
      ],
    });
    expect(shown(land([copper("12 AWG", { count: 2 }), copper("14 AWG", { count: 2 })], [opening]))).toEqual([
      "cap#1: 1 x 12 AWG + 1 x 14 AWG",
      "cap#2: 1 x 12 AWG + 1 x 14 AWG",
    ]);
  });

  test("without a perfect landing every conductor still lies somewhere", () => {
    const landings = land(
      [copper("500 kcmil"), copper("4/0 AWG", { count: 3 })],
      [range("14 AWG", "4 AWG"), range("6 AWG", "250 kcmil")],
    );
    const total = landings.flatMap(({ conductors }) => conductors).reduce((sum, { count }) => sum + count, 0);
    expect(total).toBe(4);
  });

  test("more conductors than any connector takes are dealt out without a search", () => {
    const landings = land(
      [copper("12 AWG", { count: 300 }), copper("10 AWG", { count: 5 })],
      [range("14 AWG", "4 AWG", { count: 3 })],
    );
    const total = landings.flatMap(({ conductors }) => conductors).reduce((sum, { count }) => sum + count, 0);
    expect(total).toBe(305);
    expect(landings).toHaveLength(3);
  });
  // hand: 201 of 12 AWG go round the three small ports, 67 to each, and 4/0 AWG to the large one
  test("dealt out, each group still goes to the openings that suit it", () => {
    const openings = [
      range("14 AWG", "4 AWG", { id: "small", count: 3 }),
      range("1/0 AWG", "250 kcmil", { id: "large" }),
    ];
    expect(shown(land([copper("4/0 AWG"), copper("12 AWG", { count: 201 })], openings))).toEqual([
      "small#1: 67 x 12 AWG",
      "small#2: 67 x 12 AWG",
      "small#3: 67 x 12 AWG",
      "large#1: 1 x 4/0 AWG",
    ]);
  });
  // hand: nine ports for one each, twelve conductors: three too many wherever they go
  test("a search without end is broken off with every conductor landed", () => {
    const awg = ["14 AWG", "12 AWG", "10 AWG", "8 AWG", "6 AWG", "4 AWG", "3 AWG", "2 AWG", "1 AWG"];
    const openings = awg.map((size) => range("18 AWG", size, { conductorsMax: 1 }));
    const conductors = [...awg, "14 AWG", "12 AWG", "10 AWG"].map((size, at) =>
      copper(size, { metal: at % 2 === 0 ? "copper" : "aluminum", stranding: at % 3 === 0 ? "solid" : "compact" }),
    );
    const landings = land(conductors, openings);
    expect(landings.flatMap(({ conductors: landed }) => landed)).toHaveLength(12);
  });

  test("without an opening, or without a conductor, nothing is landed", () => {
    expect(land([copper("12 AWG")], [])).toEqual([]);
    expect(land([copper("12 AWG"), copper("10 AWG")], [])).toEqual([]);
    expect(land([], [range("14 AWG", "4 AWG")])).toEqual([]);
  });

  // hand: of four 12 AWG in two caps only 3 + 1 is listed, which even dealing would not find
  test("one group in equal openings is split as the listed combinations have it", () => {
    const cap = (count: number) =>
      range("14 AWG", "10 AWG", {
        id: "cap",
        count,
        conductorsMax: 4,
        combinations: [[{ size: "12 AWG", count: 3 }], [{ size: "12 AWG", count: 1 }]],
      });
    expect(shown(land([copper("12 AWG", { count: 4 })], [cap(2)]))).toEqual(["cap#1: 3 x 12 AWG", "cap#2: 1 x 12 AWG"]);
    expect(shown(land([copper("12 AWG", { count: 3 })], [cap(1)]))).toEqual(["cap#1: 3 x 12 AWG"]);
  });

  test("equal openings are used in their order, unlike ones between them keep their place", () => {
    const wide = (id: string) => range("14 AWG", "4 AWG", { id });
    const openings = [wide("a"), range("2 AWG", "250 kcmil", { id: "b" }), wide("c"), wide("d")];
    expect(shown(land([copper("12 AWG"), copper("4/0 AWG"), copper("10 AWG")], openings))).toEqual([
      "a#1: 1 x 10 AWG",
      "b#1: 1 x 4/0 AWG",
      "c#1: 1 x 12 AWG",
    ]);
  });

  test("a hard case ends: fourteen unlike ports, fourteen conductors, none perfect", () => {
    const sizes = [
      "14 AWG",
      "12 AWG",
      "10 AWG",
      "8 AWG",
      "6 AWG",
      "4 AWG",
      "3 AWG",
      "2 AWG",
      "1 AWG",
      "1/0 AWG",
      "2/0 AWG",
      "3/0 AWG",
      "4/0 AWG",
      "250 kcmil",
    ];
    const openings = sizes.map((size) => range("18 AWG", size));
    const conductors = [...sizes.slice(1), "500 kcmil"].map((size) => copper(size));
    const landings = land(conductors, openings);
    expect(landings.flatMap(({ conductors: landed }) => landed)).toHaveLength(14);
  });
});

/** A small generator of test cases, the same on every run. */
function dice(seed: number): (sides: number) => number {
  let state = seed;
  return (sides) => {
    state = (state * 1103515245 + 12345) % 2147483648;
    return Math.floor((state / 2147483648) * sides);
  };
}

/** One hole and the conductors in it, each as the number of its group. */
interface Hole {
  readonly opening: Opening;
  readonly inside: number[];
}

/**
 * What stands against one way to land, heaviest first: violations, unlike metals in one opening, questions, shared
 * openings. Written apart from the search, hole by hole.
 */
function faults(joint: Joint, connector: Connector, holes: readonly Hole[]): readonly number[] {
  let [violations, unlikeMetals, questions, sharing] = [0, 0, 0, 0];
  const note = (fit: string, times = 1): void => {
    if (fit === "refused") violations += times;
    if (fit === "unknown") questions += times;
  };
  for (const { opening, inside } of holes) {
    const conductors = inside.flatMap((group) => joint.conductors[group] ?? []);
    conductors.forEach((conductor, at) => {
      note(sizeFit(conductor, opening));
      note(strandingFit(conductor.stranding, opening));
      note(dutyFit(joint, inside[at] ?? 0, opening));
    });
    const count = conductors.length;
    if (count > 0 && (connector.construction === "twist-on" || opening.combinations !== undefined))
      note(listed(conductors, opening));
    if (count < 2) continue;
    if (joint.role === "neutral" && joint.equipment?.kind === "panelboard") violations += count - 1;
    else sharing += count - 1;
    const { conductorsMax, combinations } = opening;
    const max = conductorsMax === "unmarked" ? 1 : conductorsMax;
    if (typeof conductorsMax === "number" || combinations === undefined) {
      if (max === undefined) questions += count - 1;
      else if (count > max) violations += count - max;
    }
    unlikeMetals += new Set(conductors.map(({ metal }) => metal)).size - 1;
    note(sharingFit(conductors, opening));
  }
  return [violations, unlikeMetals, questions, sharing];
}

function listed(conductors: readonly ConductorGroup[], { combinations }: Opening): Fit {
  if (combinations === undefined) return "unknown";
  const written = (sizes: readonly string[]) => [...sizes].sort().join(", ");
  const lists = combinations.map((list) =>
    written(list.flatMap(({ size, count }) => Array.from({ length: count }, () => size))),
  );
  return lists.includes(written(conductors.map(({ size }) => size))) ? "fits" : "refused";
}

function sharingFit(conductors: readonly ConductorGroup[], { shared, combinations }: Opening): Fit {
  const sizes = new Set(conductors.map(({ size }) => size)).size;
  const metals = new Set(conductors.map(({ metal }) => metal)).size;
  if (shared === undefined) return combinations === undefined && sizes + metals > 2 ? "unknown" : "fits";
  if ((shared.sameSize && sizes > 1) || (shared.sameMetal && metals > 1)) return "refused";
  if (shared.to === undefined) return "fits";
  const largest = sizeOf(shared.to);
  if (largest.series === "metric") return "unknown";
  return conductors.some(({ size }) => sizeOf(size).areaKcmil > largest.areaKcmil) ? "refused" : "fits";
}

/** Negative where the first is better: the heaviest fault that differs decides. */
function compared(one: readonly number[], other: readonly number[]): number {
  for (const [at, fault] of one.entries()) if (fault !== other[at]) return fault - (other[at] ?? 0);
  return 0;
}

/** The least faults of all ways to lay each conductor into each hole. */
function leastFaults(joint: Joint, connector: Connector): readonly number[] {
  const holes = connector.openings.flatMap((opening) =>
    Array.from({ length: opening.count }, (): Hole => ({ opening, inside: [] })),
  );
  const singles = joint.conductors.flatMap(({ count }, group) => Array.from({ length: count }, () => group));
  let best: readonly number[] = [Number.POSITIVE_INFINITY];
  const place = (at: number): void => {
    const group = singles[at];
    if (group === undefined) {
      const found = faults(joint, connector, holes);
      if (compared(found, best) < 0) best = found;
      return;
    }
    for (const { inside } of holes) {
      inside.push(group);
      place(at + 1);
      inside.pop();
    }
  };
  place(0);
  return best;
}

describe("landing compared with every way to land", () => {
  const sizes = ["12 AWG", "8 AWG", "4 AWG", "1/0 AWG"];
  const roll = dice(11);
  const pick = <T>(from: readonly T[]): T => from[roll(from.length)] as T;

  function conductor(tap: boolean, count: number): ConductorGroup {
    const duty = tap ? pick(["run", "tap", undefined] as const) : undefined;
    return copper(pick(sizes), {
      count,
      metal: pick(["copper", "copper", "aluminum"] as const),
      stranding: pick(["class-B", "class-B", "compact"] as const),
      ...(duty === undefined ? {} : { duty }),
    });
  }

  function port(at: number, tap: boolean, count: number): Opening {
    const low = roll(3);
    const metric = roll(8) === 0;
    const { conductorsMax: _max, ...plain } = range(metric ? "2.5 mm2" : (sizes[low] ?? ""), "", {
      id: `port ${String(at)}`,
      count,
      ranges: [
        {
          from: metric ? "2.5 mm2" : (sizes[low] ?? ""),
          to: metric ? "50 mm2" : (sizes[low + roll(4 - low)] ?? ""),
          strandings: roll(4) === 0 ? ["class-B"] : PLAIN,
        },
      ],
    });
    const conductorsMax = pick([1, 1, 2, 3, "unmarked", undefined] as const);
    const duty = tap ? pick(["run", "tap", undefined] as const) : undefined;
    const shared = pick([
      undefined,
      undefined,
      { sameSize: false, sameMetal: false },
      { sameSize: true, sameMetal: false },
      { sameSize: false, sameMetal: true },
      { sameSize: false, sameMetal: false, to: "8 AWG" },
      { sameSize: false, sameMetal: false, to: "10 mm2" },
    ] as const);
    const combinations =
      roll(4) > 0
        ? undefined
        : [
            [{ size: pick(sizes), count: 1 + roll(2) }],
            [
              { size: pick(sizes), count: 1 },
              { size: pick(sizes), count: 1 },
            ],
          ];
    return {
      ...plain,
      ...(conductorsMax === undefined ? {} : { conductorsMax }),
      ...(duty === undefined ? {} : { duty }),
      ...(shared === undefined ? {} : { shared }),
      ...(combinations === undefined ? {} : { combinations }),
    };
  }

  function question(): { joint: Joint; connector: Connector } {
    const kind = pick(["splice", "splice", "tap", "neutral"] as const);
    const tap = kind === "tap";
    const conductors = Array.from({ length: 1 + roll(3) }, (_, at) => conductor(tap, at < 2 ? 1 + roll(2) : 1));
    const holes = 1 + roll(3);
    const openings = Array.from({ length: holes }, (_, at) => port(at, tap, holes === 1 ? 1 + roll(3) : 1));
    // Some parts have openings that are alike.
    const [first] = openings;
    if (first !== undefined && roll(3) === 0) openings.push({ ...first, id: "like the first", count: 1 });
    return {
      joint: sampleJoint({
        function: kind === "neutral" ? "termination" : kind,
        role: kind === "neutral" ? "neutral" : "phase",
        conductors,
      }),
      connector: sampleConnector({
        functions: ["splice", "tap", "termination"],
        construction: roll(6) === 0 ? "twist-on" : "set-screw",
        openings,
      }),
    };
  }

  function asHoles(landings: readonly Landing[]): Hole[] {
    return landings.map(({ opening, conductors }) => ({
      opening,
      inside: conductors.flatMap(({ group, count }) => Array.from({ length: count }, () => group)),
    }));
  }

  /** Everything about a landing but the order in which the conductors are named. */
  function described(landings: readonly Landing[]): string[] {
    return landings.map(
      ({ opening, instance, conductors }) =>
        `${opening.id}#${String(instance)}: ${conductors
          .flatMap(({ conductor: { size, metal, stranding, duty }, count }) =>
            Array.from({ length: count }, () => `${size} ${metal} ${stranding} ${duty ?? ""}`),
          )
          .sort()
          .join(" + ")}`,
    );
  }

  test("none is better, and the order of conductors and openings does not matter", () => {
    const met = [0, 0, 0, 0];
    for (let round = 0; round < 120; round += 1) {
      const { joint, connector } = question();
      const least = leastFaults(joint, connector);
      least.forEach((fault, at) => {
        if (fault > 0) met[at] = (met[at] ?? 0) + 1;
      });
      const landings = landConductors(joint, connector);
      const places = landings.map(({ openingIndex, instance }) => openingIndex * 10 + instance);
      expect(places).toEqual([...places].sort((a, b) => a - b));
      expect(faults(joint, connector, asHoles(landings))).toEqual(least);
      joint.conductors.forEach(({ count }, group) => {
        expect(asHoles(landings).flatMap(({ inside }) => inside.filter((one) => one === group))).toHaveLength(count);
      });
      const turned = { ...joint, conductors: [...joint.conductors].reverse() };
      expect(described(landConductors(turned, connector))).toEqual(described(landings));
      const other = { ...connector, openings: [...connector.openings].reverse() };
      expect(faults(joint, other, asHoles(landConductors(joint, other)))).toEqual(least);
    }
    // Every kind of fault must have been met, and not always, or the comparison shows little.
    for (const times of met) {
      expect(times).toBeGreaterThan(8);
      expect(times).toBeLessThan(100);
    }
  });
});
