import { describe, expect, test } from "vitest";
import type { ConductorGroup } from "../../core/conductor.js";
import type { Connector, Drive, Screw } from "../../core/connector.js";
import type { Joint } from "../../core/joint.js";
import type { Length, Torque } from "../../core/quantity.js";
import { nfpa70Edition2017 } from "../../rulesets/nfpa70-2017/edition.js";
import { nfpa70Edition2023 } from "../../rulesets/nfpa70-2023/edition.js";
import {
  sampleConductor,
  sampleConnector,
  sampleJoint,
  sampleOpening,
  sampleSubject,
} from "../../samples/sample-joint.js";
import { tighteningTorque } from "./tightening-torque.js";

function screw(drive: Drive, torque?: Torque | "unmarked"): Screw {
  return torque === undefined ? { id: "main", drive } : { id: "main", drive, torque };
}

function torques(
  connector: Partial<Connector>,
  conductors: readonly Partial<ConductorGroup>[] = [{}],
  joint: Partial<Joint> = {},
) {
  const subject = sampleSubject(
    sampleJoint({ conductors: conductors.map(sampleConductor), ...joint }),
    sampleConnector(connector),
  );
  return tighteningTorque(subject, nfpa70Edition2023);
}

const lbfIn = (answers: ReturnType<typeof torques>) => answers.map(({ torque, method }) => torque?.lbfIn ?? method);
const inch = (value: number): Length => ({ value, unit: "in" });

function defaultFor(drive: Drive, size = "3/0 AWG", change: Partial<Connector> = {}) {
  return lbfIn(torques({ screws: [screw(drive, "unmarked")], ...change }, [{ size }]))[0];
}

describe("marked torque (NFPA 70-2023 110.14(D))", () => {
  // hand: 20 lbf-in = 1.7 lbf-ft = 2.3 N-m; the annex would give 35 for 12 AWG under a wide slot
  test("a marked value comes before the annex and is given in three units", () => {
    const drive: Drive = { kind: "slotted", screwSize: "10-and-larger", slotWidth: inch(0.06), slotLength: inch(0.3) };
    const [answer] = torques({ screws: [screw(drive, { value: 20, unit: "lbf-in" })] }, [{ size: "12 AWG" }]);
    expect(answer).toMatchObject({
      at: "conductor screw of opening barrel, 12 AWG",
      method: "torque",
      torque: { lbfIn: 20, lbfFt: 1.7, newtonMetre: 2.3, printed: { value: 20, unit: "lbf-in" } },
      level: "connector-marking",
      cite: { locator: "110.14(D)" },
      sentence: "Tighten to 20 lbf-in (1.7 lbf-ft, 2.3 N-m), as marked on the connector or in its instructions.",
    });
  });
  // hand: 31 N-m / 0.1129848290276167 = 274.37 lbf-in; / 12 = 22.86 lbf-ft
  test("a torque printed in N-m stays as printed", () => {
    const [answer] = torques({ screws: [screw({ kind: "socket", acrossFlats: "5/16" }, { value: 31, unit: "N-m" })] });
    expect(answer?.torque).toEqual({ lbfIn: 274.4, lbfFt: 22.9, newtonMetre: 31, printed: { value: 31, unit: "N-m" } });
    expect(answer?.sentence).toContain("31 N-m (274.4 lbf-in, 22.9 lbf-ft)");
  });
  test("a terminal of the equipment is a marking of the equipment", () => {
    const connector = sampleConnector({
      screws: [screw({ kind: "socket", acrossFlats: "3/8" }, { value: 375, unit: "lbf-in" })],
    });
    const subject = { ...sampleSubject(sampleJoint(), connector), origin: "joint/equipment/terminal" } as const;
    expect(tighteningTorque(subject, nfpa70Edition2023)[0]).toMatchObject({
      level: "equipment-marking",
      torque: { lbfIn: 375 },
      sentence: expect.stringContaining("as marked on the equipment or in its instructions") as string,
    });
  });
  test.each([Number.NaN, 0, -5, Number.POSITIVE_INFINITY])("a torque of %d is no torque", (value) => {
    expect(lbfIn(torques({ screws: [screw({ kind: "external-hex" }, { value, unit: "lbf-in" })] }))).toEqual([
      "see-instructions",
    ]);
  });
  test("where the marking is not known, no default is given in its stead", () => {
    expect(torques({ screws: [screw({ kind: "socket", acrossFlats: "5/16" })] })[0]).toMatchObject({
      method: "see-instructions",
      torque: null,
      level: null,
    });
  });
});

describe("default torque of a socket drive (NFPA 70-2023 Informative Annex I Table I.3)", () => {
  // published: Table I.3, lbf-in by width across flats; 3/16 confirmed in a public text, the others not yet
  test.each([
    ["1/8", 45],
    ["5/32", 100],
    ["3/16", 120],
    ["7/32", 150],
    ["1/4", 200],
    ["5/16", 275],
    ["3/8", 375],
    ["1/2", 500],
    ["9/16", 600],
  ])("%s in: %d lbf-in whatever the conductor", (acrossFlats, expected) => {
    expect(defaultFor({ kind: "socket", acrossFlats })).toBe(expected);
    expect(defaultFor({ kind: "socket", acrossFlats }, "14 AWG")).toBe(expected);
  });
  test.each(["5/8", "0.3125", "8 mm"])("%s is in no row, so nothing is made up", (acrossFlats) => {
    expect(defaultFor({ kind: "socket", acrossFlats })).toBe("see-instructions");
  });
  test("the answer names table, drive and level", () => {
    expect(torques({})[0]).toMatchObject({
      level: "code-table",
      cite: { standard: "NFPA 70", edition: "2023", locator: "Informative Annex I Table I.3" },
      drive: "5/16 in recessed hex or square",
      sentence:
        "Nothing is marked: tighten to 275 lbf-in (22.9 lbf-ft, 31.1 N-m), Informative Annex I Table I.3, a 5/16 in recessed drive.",
    });
  });
});

describe("default torque by conductor (NFPA 70-2023 Informative Annex I Table I.1)", () => {
  // published: Table I.1, lbf-in; the external hexagon column is confirmed at 2 AWG only
  test.each([
    ["external-hex", "10 AWG", 75],
    ["external-hex", "2 AWG", 150],
    ["external-hex", "2/0 AWG", 180],
    ["external-hex", "3/0 AWG", 250],
    ["external-hex", "350 kcmil", 325],
    ["external-hex", "400 kcmil", 325],
    ["external-hex", "500 kcmil", 375],
    ["external-hex", "2000 kcmil", 600],
    ["split-bolt", "10 AWG", 80],
    ["split-bolt", "2 AWG", 275],
    ["split-bolt", "1/0 AWG", 385],
    ["split-bolt", "400 kcmil", 825],
  ] as const)("%s over %s: %d lbf-in", (kind, size, expected) => {
    expect(defaultFor({ kind }, size)).toBe(expected);
  });
  // hand: the row 250 to 350 kcmil holds 300.5; no row holds 380, and metric sizes are in none
  test("a size between the ends of a row has its value, one between two rows or in mm2 has none", () => {
    expect(defaultFor({ kind: "external-hex" }, "300.5 kcmil")).toBe(325);
    expect(defaultFor({ kind: "external-hex" }, "380 kcmil")).toBe("see-instructions");
    expect(defaultFor({ kind: "external-hex" }, "35 mm2")).toBe("see-instructions");
  });

  const slotted = (
    width: number,
    length: number,
    unit: Length["unit"] = "in",
  ): Extract<Drive, { kind: "slotted" }> => ({
    kind: "slotted",
    screwSize: "10-and-larger",
    slotWidth: { value: width, unit },
    slotLength: { value: length, unit },
  });
  // published: Table I.1, 12 AWG: 20 lbf-in for a slot at most 0.047 in by 1/4 in, else 35; both limits belong to the lower
  test.each([
    [0.046, 0.25, 20],
    [0.047, 0.25, 20],
    [0.048, 0.25, 35],
    [0.047, 0.249, 20],
    [0.047, 0.251, 35],
    [0.06, 0.3, 35],
    [0.06, 0.2, 35],
  ])("slot %d in wide and %d in long, 12 AWG: %d lbf-in", (width, length, expected) => {
    expect(defaultFor(slotted(width, length), "12 AWG")).toBe(expected);
  });
  // published: the same limits as printed in millimetres, 1.2 mm and 6.4 mm
  test.each([
    [1.2, 6.4, 20],
    [1.3, 6.4, 35],
    [1.2, 6.5, 35],
  ])("slot %d mm wide and %d mm long, 12 AWG: %d lbf-in", (width, length, expected) => {
    expect(defaultFor(slotted(width, length, "mm"), "12 AWG")).toBe(expected);
  });
  // hand: 0.02 ft = 0.24 in <= 0.25 in; 0.0012 m = 1.2 mm
  test("other units are converted exactly", () => {
    const drive: Drive = {
      kind: "slotted",
      screwSize: "10-and-larger",
      slotWidth: { value: 0.0012, unit: "m" },
      slotLength: { value: 0.02, unit: "ft" },
    };
    expect(defaultFor(drive, "12 AWG")).toBe(20);
  });
  // published: Table I.1 has no lower-column value from 1 AWG up, and no slotted value over 1000 kcmil
  test("a blank cell gives no value", () => {
    expect(defaultFor(slotted(0.047, 0.25), "2 AWG")).toBe(40);
    expect(defaultFor(slotted(0.047, 0.25), "1 AWG")).toBe("see-instructions");
    expect(defaultFor(slotted(0.06, 0.3), "1000 kcmil")).toBe(50);
    expect(defaultFor(slotted(0.06, 0.3), "1250 kcmil")).toBe("see-instructions");
  });
  test.each([Number.NaN, 0, -1])("a slot measured as %d has no column", (value) => {
    expect(defaultFor(slotted(value, 0.25), "12 AWG")).toBe("see-instructions");
    expect(defaultFor(slotted(0.047, value), "12 AWG")).toBe("see-instructions");
    expect(defaultFor({ ...slotted(0.047, value), screwSize: "under-10" }, "12 AWG")).toBe("see-instructions");
  });

  // published: Table I.1, 3/0 AWG: 250 by the hexagon, 50 by a wide slot
  test("a slotted hexagon has both values, each named", () => {
    const drive: Drive = { kind: "slotted-hex", slotWidth: inch(0.06), slotLength: inch(0.3) };
    const answers = torques({ screws: [screw(drive, "unmarked")] });
    expect(lbfIn(answers)).toEqual([250, 50]);
    expect(answers.map(({ alternative }) => alternative)).toEqual([
      "driven by its hexagon",
      "driven by its slot (No. 10 screw or larger)",
    ]);
    expect(answers.map(({ drive: head }) => head)).toEqual(["external hex", "slotted"]);
    expect(answers.map(({ sentence }) => sentence)).toEqual([
      "Nothing is marked: tighten to 250 lbf-in (20.8 lbf-ft, 28.2 N-m) if driven by its hexagon, Informative Annex I Table I.1, 3/0 AWG under an external hexagon.",
      "Nothing is marked: tighten to 50 lbf-in (4.2 lbf-ft, 5.6 N-m) if driven by its slot (No. 10 screw or larger), Informative Annex I Table I.1, 3/0 AWG under a wide or long slot.",
    ]);
    expect(lbfIn(torques({ screws: [screw(drive, "unmarked")], construction: "split-bolt" }))).toEqual([500, 50]);
    expect(lbfIn(torques({ screws: [screw(drive, { value: 180, unit: "lbf-in" })] }))).toEqual([180]);
  });
});

describe("default torque of small slotted screws (NFPA 70-2023 Informative Annex I Table I.2)", () => {
  const small = (width: number, length: number, unit: Length["unit"] = "in"): Drive => ({
    kind: "slotted",
    screwSize: "under-10",
    slotWidth: { value: width, unit },
    slotLength: { value: length, unit },
  });
  // published: Table I.2, wide column by slot length; a length between two rows takes the shorter row
  test.each([
    [0.15, 9],
    [0.15625, 12],
    [0.2, 12],
    [0.25, 12],
    [0.28, 12],
    [0.28125, 15],
    [0.282, 20],
  ])("wide slot %d in long: %d lbf-in", (length, expected) => {
    expect(defaultFor(small(0.047, length), "12 AWG")).toBe(expected);
  });
  // published: Table I.2, row 1/4 in: 9 under 0.047 in wide, 12 from 0.047 in on
  test.each([
    [0.046, 9],
    [0.047, 12],
    [0.048, 12],
  ])("slot %d in wide and 1/4 in long: %d lbf-in", (width, expected) => {
    expect(defaultFor(small(width, 0.25), "12 AWG")).toBe(expected);
  });
  test("a length just under 1/4 in takes the row 7/32 in", () => {
    expect(defaultFor(small(0.046, 0.249), "12 AWG")).toBe(7);
  });
  // published: the same rows in millimetres, 6.4 mm and 7.1 mm
  test("millimetres are read against the printed millimetres", () => {
    expect(defaultFor(small(1.1, 6.4, "mm"), "12 AWG")).toBe(9);
    expect(defaultFor(small(1.1, 6.3, "mm"), "12 AWG")).toBe(7);
    expect(defaultFor(small(1.2, 7.1, "mm"), "12 AWG")).toBe(15);
  });
  test("no value for a narrow slot of 9/32 in, nor for a conductor over 8 AWG", () => {
    expect(defaultFor(small(0.046, 0.28125), "12 AWG")).toBe("see-instructions");
    expect(defaultFor(small(0.047, 0.25), "8 AWG")).toBe(12);
    expect(defaultFor(small(0.047, 0.25), "6 AWG")).toBe("see-instructions");
    expect(defaultFor(small(0.047, 0.25), "4 mm2")).toBe("see-instructions");
  });
});

describe("screws, ports and bolts", () => {
  const wide: Drive = { kind: "slotted", screwSize: "10-and-larger", slotWidth: inch(0.06), slotLength: inch(0.3) };

  // published: Table I.1 split-bolt column, 1/0 AWG 385; the 2 AWG beside it would give 275
  test("one bolt over two openings is set by the largest conductor", () => {
    const answers = torques(
      {
        construction: "split-bolt",
        screws: [screw({ kind: "split-bolt" }, "unmarked")],
        openings: [sampleOpening({ id: "tap" }), sampleOpening({ id: "run" })],
      },
      [{ size: "2 AWG" }, { size: "1/0 AWG" }],
    );
    expect(lbfIn(answers)).toEqual([385]);
    expect(answers[0]?.at).toBe("bolt across openings tap and run, 1/0 AWG");
  });
  // published: Table I.1 external hexagon, 1/0 AWG 180, 2 AWG 150; one bolt draws both halves together
  test.each(["bolted-clamp", "insulation-piercing", "split-bolt"] as const)(
    "the one bolt of a %s is set by the largest conductor under it, in whichever opening it lies",
    (construction) => {
      for (const sizes of [
        ["2 AWG", "1/0 AWG"],
        ["1/0 AWG", "2 AWG"],
      ]) {
        const answers = torques(
          {
            construction,
            screws: [screw({ kind: "external-hex" }, "unmarked")],
            openings: [sampleOpening({ id: "tap" }), sampleOpening({ id: "run" })],
          },
          sizes.map((size) => ({ size })),
        );
        expect(lbfIn(answers)).toEqual([180]);
        expect(answers[0]?.at).toBe("bolt across openings tap and run, 1/0 AWG");
      }
    },
  );
  test("openings of a clamp whose bolt is not described are asked about one by one", () => {
    const answers = torques(
      {
        construction: "bolted-clamp",
        screws: [],
        openings: [sampleOpening({ id: "tap" }), sampleOpening({ id: "run" })],
      },
      [{ size: "2 AWG" }, { size: "1/0 AWG" }],
    );
    expect(answers.map(({ at, drive }) => [at, drive])).toEqual([
      ["opening tap, 2 AWG", "not known"],
      ["opening run, 1/0 AWG", "not known"],
    ]);
  });
  // published: as above; the annex goes by the largest conductor under the screw
  test.each([
    [["1/0 AWG", "2 AWG"], 180, "joint/conductors/0/size"],
    [["2 AWG", "1/0 AWG"], 180, "joint/conductors/1/size"],
    [["2 AWG", "2 AWG"], 150, "joint/conductors/0/size"],
    [["1/0 AWG", "no size"], "see-instructions", "joint/conductors/1/size"],
    [["no size", "1/0 AWG"], "see-instructions", "joint/conductors/0/size"],
  ] as const)("of %j under one screw: %s", (sizes, expected, origin) => {
    const [answer] = torques(
      { screws: [screw({ kind: "external-hex" }, "unmarked")] },
      sizes.map((size) => ({ size })),
    );
    expect([answer?.torque?.lbfIn ?? answer?.method]).toEqual([expected]);
    expect(answer?.steps).toContainEqual(
      expect.objectContaining({ label: "largest conductor under the screw", origin }),
    );
  });
  // published: Table I.1 wide slot, 6 AWG 45 and 10 AWG 35
  test.each(["one screw id", "two screw ids"])(
    "set screws of two ports are set by their own conductor (%s)",
    (form) => {
      const other = form === "one screw id" ? "main" : "second";
      const answers = torques(
        {
          screws: [screw(wide, "unmarked"), { ...screw(wide, "unmarked"), id: "second" }],
          openings: [sampleOpening({ id: "a" }), sampleOpening({ id: "b", screw: other })],
        },
        [{ size: "6 AWG" }, { size: "10 AWG" }],
      );
      expect(lbfIn(answers)).toEqual([45, 35]);
    },
  );
  test("equal ports of one opening: one answer for each conductor size", () => {
    const landingsOf = (drive: Drive) => {
      const subject = sampleSubject(sampleJoint(), sampleConnector({ screws: [screw(drive, "unmarked")] }));
      const [first] = subject.landings;
      if (first === undefined) throw new Error("the sample lands its conductor");
      const landed = (size: string, instance: number) => ({
        ...first,
        instance,
        conductors: [{ group: 0, conductor: sampleConductor({ size }), count: 1 }],
      });
      return { ...subject, landings: [landed("2 AWG", 1), landed("10 AWG", 2), landed("10 AWG", 3)] };
    };
    expect(lbfIn(tighteningTorque(landingsOf(wide), nfpa70Edition2023))).toEqual([50, 35]);
    expect(lbfIn(tighteningTorque(landingsOf({ kind: "socket", acrossFlats: "5/32" }), nfpa70Edition2023))).toEqual([
      100, 100,
    ]);
  });
  // published: Table I.1 external hexagon, 500 kcmil 375 and 2/0 AWG 180
  test("main and tap of a gutter tap have each their own bolt", () => {
    const hex: Drive = { kind: "external-hex" };
    const answers = torques(
      {
        construction: "bolted-clamp",
        screws: [screw(hex, "unmarked"), { ...screw(hex, "unmarked"), id: "tap" }],
        openings: [sampleOpening({ id: "run" }), sampleOpening({ id: "tap", screw: "tap" })],
      },
      [{ size: "500 kcmil" }, { size: "2/0 AWG" }],
    );
    expect(lbfIn(answers)).toEqual([375, 180]);
  });

  test("a pin is tightened in the equipment's own terminal, by the pin's size", () => {
    const terminal = sampleConnector({ screws: [screw({ kind: "external-hex" }, "unmarked")] });
    const pinned: Partial<Connector> = {
      family: "pin-adapter",
      construction: "compression",
      screws: [],
      openings: [sampleOpening({ screw: "none" })],
      pin: { size: "1/0 AWG", metal: "copper" },
    };
    const answers = torques(pinned, [{}], { equipment: { tag: "DP-6", terminal } });
    // published: Table I.1 external hexagon, 1/0 AWG 180
    expect(lbfIn(answers)).toEqual(["crimp", 180]);
    expect(answers[1]?.at).toBe("conductor screw of opening barrel of the equipment's terminal, 1/0 AWG");
    const marked = sampleConnector({
      screws: [screw({ kind: "socket", acrossFlats: "3/16" }, { value: 120, unit: "lbf-in" })],
    });
    expect(torques(pinned, [{}], { equipment: { tag: "DP-6", terminal: marked } })[1]).toMatchObject({
      torque: { lbfIn: 120 },
      level: "equipment-marking",
    });
  });

  // published: Table I.1 external hexagon, 2 AWG 150, 1/0 AWG 180, 250 kcmil 325; the opening's ends belong to it
  test.each([
    ["2 AWG", "opening small of the equipment's terminal, 2 AWG", 150],
    ["1/0 AWG", "opening large of the equipment's terminal, 1/0 AWG", 180],
    ["250 kcmil", "opening large of the equipment's terminal, 250 kcmil", 325],
  ] as const)("a pin of %s lands in the opening that takes it: %s", (size, at, expected) => {
    const hex: Drive = { kind: "external-hex" };
    const terminal = sampleConnector({
      screws: [{ ...screw(hex, "unmarked"), id: "little" }, screw(hex, "unmarked")],
      openings: [
        sampleOpening({
          id: "small",
          screw: "little",
          ranges: [
            { from: "14 AWG", to: "10 AWG", strandings: ["solid"] },
            { from: "8 AWG", to: "2 AWG", strandings: ["class-B"] },
          ],
        }),
        sampleOpening({ id: "large", ranges: [{ from: "1/0 AWG", to: "250 kcmil", strandings: ["class-B"] }] }),
      ],
    });
    const pinned = { construction: "compression", screws: [], pin: { size, metal: "copper" } } as const;
    const answer = torques(pinned, [{}], { equipment: { tag: "DP-6", terminal } })[1];
    expect(answer).toMatchObject({ at: `conductor screw of ${at}`, torque: { lbfIn: expected } });
  });
  test("a terminal in which nothing lands is not tightened here", () => {
    const equipment = { tag: "DP-6", terminal: sampleConnector() };
    expect(torques({}, [{}], { equipment })).toHaveLength(1);
    const own = sampleSubject(sampleJoint({ equipment }), sampleConnector({ pin: { size: "2 AWG", metal: "copper" } }));
    expect(tighteningTorque({ ...own, origin: "joint/equipment/terminal" }, nfpa70Edition2023)).toHaveLength(1);
  });

  test("what is not tightened is named by its opening and what makes it fast", () => {
    const none = { screws: [], openings: [sampleOpening()] };
    const of = (change: Partial<Connector>) => torques(change).map(({ at, drive }) => `${at}: ${drive}`);
    expect(of({ ...none, construction: "compression" })).toEqual(["opening barrel, 3/0 AWG: crimp tool"]);
    expect(of({ ...none, construction: "weld" })).toEqual(["opening barrel, 3/0 AWG: none"]);
    expect(of({ ...none, construction: "spring" })).toEqual(["opening barrel, 3/0 AWG: none"]);
    expect(of({ screws: [screw({ kind: "none" })], construction: "weld" })).toEqual(["opening barrel, 3/0 AWG: none"]);
    expect(of({ screws: [screw({ kind: "clamp-bolt" }, "unmarked")] })).toEqual([
      "conductor screw of opening barrel, 3/0 AWG: clamp bolt",
    ]);
  });
  test("nothing to tighten: pressed, welded, sprung, turned by hand, sheared", () => {
    const none = { screws: [], openings: [sampleOpening()] };
    expect(lbfIn(torques({ ...none, construction: "compression" }))).toEqual(["crimp"]);
    expect(lbfIn(torques({ ...none, construction: "weld" }))).toEqual(["weld"]);
    expect(lbfIn(torques({ ...none, construction: "spring" }))).toEqual(["spring"]);
    expect(lbfIn(torques({ ...none, construction: "twist-on" }))).toEqual(["by-hand"]);
    expect(lbfIn(torques({ screws: [screw({ kind: "hand" })], construction: "twist-on" }))).toEqual(["by-hand"]);
    expect(lbfIn(torques({ screws: [screw({ kind: "none" })], construction: "compression" }))).toEqual(["crimp"]);
    expect(lbfIn(torques({ screws: [screw({ kind: "breakaway" })] }))).toEqual(["breakaway-head"]);
    expect(lbfIn(torques({ ...none, construction: "set-screw" }))).toEqual(["see-instructions"]);
    expect(lbfIn(torques({ screws: [screw({ kind: "clamp-bolt" }, "unmarked")] }))).toEqual(["see-instructions"]);
  });
  test("2017: a breakaway head counts only where the maker names it as the method", () => {
    const subject = sampleSubject(sampleJoint(), sampleConnector({ screws: [screw({ kind: "breakaway" })] }));
    expect(tighteningTorque(subject, nfpa70Edition2017)[0]?.sentence).toContain(
      "if the maker's instructions name the head",
    );
    expect(tighteningTorque(subject, nfpa70Edition2023)[0]?.sentence).not.toContain("if the maker");
  });

  // published (from memory, not yet confirmed): NEMA CC 1-2009, steel or bronze: 1/2 in 480, 3/8 in 240 lbf-in
  test.each([
    ["1/2", 480],
    ["3/8", 240],
    ["3/4", "see-instructions"],
    ["M12", "see-instructions"],
  ])("pad bolt %s: %s", (bolt, expected) => {
    const answers = torques({
      construction: "compression",
      screws: [],
      mounting: { kind: "pad", pattern: { holes: 1, bolt } },
    });
    expect(lbfIn(answers)).toEqual(["crimp", expected]);
  });
  test("a metric pad bolt is named as such, and its torque left to the instructions", () => {
    const answer = torques({ mounting: { kind: "pad", pattern: { holes: 1, bolt: "M12" } } }).at(-1);
    expect(answer).toMatchObject({
      at: "pad bolt M12",
      opening: "pad",
      drive: "head of an M12 bolt",
      sentence: "No table here covers an M12 pad bolt: take the torque from the equipment's instructions.",
      torque: null,
      steps: [
        { value: "M12", origin: "connector/mounting/pattern/bolt" },
        { value: "see the instructions", uses: [1] },
      ],
    });
  });
  test("the bolt that is there goes before the hole it goes through, and the table is named", () => {
    const pad = { mounting: { kind: "pad", pattern: { holes: 1, bolt: "1/2" } } } as const;
    const answer = torques(pad, [{}], { equipment: { tag: "T-1", stud: { holes: 1, bolt: "3/8" } } }).at(-1);
    expect(answer).toMatchObject({
      at: "pad bolt 3/8 in",
      opening: "pad",
      torque: { lbfIn: 240, lbfFt: 20, newtonMetre: 27.1 },
      level: "trade-practice",
      cite: { standard: "NEMA CC 1", edition: "2009" },
    });
    expect(answer?.steps[0]).toMatchObject({ value: "3/8", origin: "joint/equipment/stud/bolt" });
    expect(answer?.sentence).toContain("the equipment's instructions come first");
  });

  test("every answer has steps, the last of which is the answer", () => {
    for (const answer of torques({ mounting: { kind: "pad", pattern: { holes: 1, bolt: "1/2" } } })) {
      expect(answer.steps.at(-1)).toMatchObject({ kind: "concluded", value: answer.torque?.printed.value });
      for (const step of answer.steps) for (const used of step.uses) expect(used).toBeLessThan(step.id);
    }
  });
});
