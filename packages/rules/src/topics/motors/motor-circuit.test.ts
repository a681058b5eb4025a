import { describe, expect, test } from "vitest";
import type { Edition } from "../../core/edition.js";
import { nfpa70Edition2017 } from "../../rulesets/nfpa70-2017/edition.js";
import { nfpa70Edition2020 } from "../../rulesets/nfpa70-2020/edition.js";
import { nfpa70Edition2023 } from "../../rulesets/nfpa70-2023/edition.js";
import { type MotorCircuitQuestion, motorCircuit } from "./motor-circuit.js";
import type { MotorConductor } from "./motor-conductor.js";
import { MOTOR_BUILDS, MOTOR_KINDS, type Motor } from "./motor-current.js";

function motor(horsepower: string, change: Partial<Motor> = {}): Motor {
  return { kind: "squirrel-cage", horsepower, voltageV: 460, build: "ordinary", ...change };
}

function ask(
  question: Omit<MotorCircuitQuestion, "duty"> & { readonly duty?: "other" },
  edition: Edition = nfpa70Edition2023,
) {
  return motorCircuit.answer(
    { duty: "continuous", ...question },
    { ruleSet: "nfpa70", edition: edition.edition },
    edition,
  );
}

function main(question: Parameters<typeof ask>[0], edition: Edition = nfpa70Edition2023) {
  const finding = ask(question, edition);
  if (finding.outcome !== "answered") throw new Error(finding.sentence);
  return finding.results[0]?.value;
}

const c = (value: number) => ({ value, unit: "Cel" }) as const;
const COPPER: MotorConductor = {
  metal: "copper",
  insulationRating: c(90),
  terminalTemperature: c(75),
  designLetter: "B",
};

describe("published worked example: NFPA 70 Informative Annex D, Example D8 (from memory)", () => {
  // published: 25 hp squirrel-cage, 460 V three-phase: 34 A x 1.25 = 42.5 A (430.6(A), 430.22)
  // published: 30 hp wound-rotor, 460 V three-phase: 40 A x 1.25 = 50 A
  test.each([
    ["25", "squirrel-cage", 34, 42.5],
    ["30", "wound-rotor", 40, 50],
  ] as const)("%s hp %s: %d A, conductor for %d A", (horsepower, kind, current, needed) => {
    for (const edition of [nfpa70Edition2017, nfpa70Edition2020, nfpa70Edition2023]) {
      const finding = ask({ ask: "conductor", motor: motor(horsepower, { kind }) }, edition);
      expect(finding.results.map(({ value }) => value)).toEqual([needed, current]);
      expect(finding.cite.edition).toBe(edition.edition);
    }
  });
  // published: nameplate 31.6 A, service factor 1.15: not over 39.5 A; nameplate 36.4 A, 40 C rise: not over 45.5 A
  test("overload devices of not over 39.5 A and 45.5 A", () => {
    expect(main({ ask: "overload", motor: motor("25", { nameplateA: 31.6 }), serviceFactor: 1.15 })).toBe(39.5);
    expect(
      main({ ask: "overload", motor: motor("30", { kind: "wound-rotor", nameplateA: 36.4 }), temperatureRiseC: 40 }),
    ).toBe(45.5);
  });
});

describe("current of the tables", () => {
  // hand: cells of Tables 430.248 and 430.250, x 1.25
  test.each([
    ["5", "single-phase", 230, 35],
    ["5", "single-phase", 240, 35],
    ["5", "single-phase", 220, 35],
    ["5", "single-phase", 208, 38.5],
    ["7-1/2", "squirrel-cage", 230, 27.5],
    ["100", "squirrel-cage", 440, 155],
    ["100", "squirrel-cage", 480, 155],
    ["100", "squirrel-cage", 200, 356.25],
    ["100", "squirrel-cage", 600, 123.75],
    ["100", "squirrel-cage", 2300, 32.5],
  ] as const)("%s hp %s at %d V needs %d A", (horsepower, kind, voltageV, needed) => {
    expect(main({ ask: "conductor", motor: motor(horsepower, { kind, voltageV }) })).toBe(needed);
  });

  test("the nameplate's current is not used for an ordinary motor", () => {
    const finding = ask({ ask: "conductor", motor: motor("25", { nameplateA: 31.6 }) });
    expect(finding.results[0]?.value).toBe(42.5);
    expect(finding.advice[0]).toContain("430.6(A)(1)");
  });
  // hand: 31.6 x 1.25 = 39.5
  test("it is used for motors of low speed, high torque or several speeds, and asked for", () => {
    const build = { build: "multispeed" } as const;
    expect(main({ ask: "conductor", motor: motor("25", { ...build, nameplateA: 31.6 }) })).toBe(39.5);
    expect(ask({ ask: "conductor", motor: motor("25", build) })).toMatchObject({
      outcome: "missing",
      missing: [{ path: "question/motor/nameplateA" }],
    });
  });

  // hand: the ends of each column's voltages, cells of Tables 430.248 and 430.250 for 5 hp, x 1.25
  test.each([
    ["single-phase", [110, 115, 120], 70],
    ["single-phase", [200], 40.25],
    ["single-phase", [208], 38.5],
    ["single-phase", [220, 230, 240], 35],
    ["squirrel-cage", [200], 21.875],
    ["squirrel-cage", [208], 20.875],
    ["squirrel-cage", [220, 230, 240], 19],
    ["squirrel-cage", [440, 460, 480], 9.5],
    ["squirrel-cage", [550, 575, 600], 7.625],
  ] as const)("5 hp %s at any of %j V needs %d A", (kind, volts, needed) => {
    for (const voltageV of volts)
      expect(main({ ask: "conductor", motor: motor("5", { kind, voltageV }) }), String(voltageV)).toBe(needed);
  });
  test.each([
    ["single-phase", [109, 121, 199, 201, 207, 209, 219, 241, 460]],
    ["squirrel-cage", [109, 121, 199, 201, 207, 209, 219, 241, 439, 481, 549, 601, 2299, 2301]],
  ] as const)("5 hp %s: no column is for any of %j V", (kind, volts) => {
    for (const voltageV of volts)
      expect(ask({ ask: "conductor", motor: motor("5", { kind, voltageV }) }), String(voltageV)).toMatchObject({
        outcome: "refused",
        refusal: {
          code: "OUTSIDE_TABLE",
          detail: expect.stringContaining(`no column for ${String(voltageV)} V`) as string,
        },
      });
  });
  // hand: 5 hp at 230 V: 15.2 A three-phase and 28 A single-phase, x 1.25; the other two tables are not held
  test("every kind and build of motor is answered, asked about or refused", () => {
    const at = (change: Partial<Motor>) => {
      const { outcome, results } = ask({ ask: "conductor", motor: motor("5", { voltageV: 230, ...change }) });
      return results[0]?.value ?? outcome;
    };
    expect(MOTOR_KINDS.map((kind) => [kind, at({ kind })])).toEqual([
      ["squirrel-cage", 19],
      ["wound-rotor", 19],
      ["synchronous", "refused"],
      ["direct-current", "refused"],
      ["single-phase", 35],
    ]);
    expect(MOTOR_BUILDS.map((build) => [build, at({ build })])).toEqual([
      ["ordinary", 19],
      ["low-speed-or-high-torque", "missing"],
      ["multispeed", "missing"],
    ]);
  });
  // hand: 16 x 1.25 = 20
  test("no advice against the nameplate where it is the nameplate that counts", () => {
    const finding = ask({ ask: "conductor", motor: motor("5", { build: "multispeed", nameplateA: 16 }) });
    expect(finding.results[0]?.value).toBe(20);
    expect(finding.advice).toEqual([]);
  });

  test.each([
    [{ motor: motor("25", { voltageV: 2300 }) }, "OUTSIDE_TABLE"],
    [{ motor: motor("28") }, "OUTSIDE_TABLE"],
    [{ motor: motor("5", { kind: "single-phase" }) }, "OUTSIDE_TABLE"],
    [{ motor: motor("25", { kind: "synchronous" }) }, "NOT_COVERED"],
    [{ motor: motor("25", { kind: "direct-current" }) }, "NOT_COVERED"],
    [{ motor: motor("25"), duty: "other" }, "NOT_COVERED"],
    [{ motor: motor("500"), conductor: { ...COPPER, terminalTemperature: c(60) } }, "NO_SOLUTION"],
    [{ motor: motor("25"), conductor: { ...COPPER, terminalTemperature: c(59) } }, "OUTSIDE_TABLE"],
    [{ motor: motor("25"), conductor: { ...COPPER, insulationRating: c(59) } }, "OUTSIDE_TABLE"],
  ] as const)("%j is refused with %s", (part, code) => {
    expect(ask({ ask: "conductor", ...part })).toMatchObject({ outcome: "refused", refusal: { code }, results: [] });
  });
});

describe("conductor of a motor", () => {
  // hand: 42.5 A: copper 75 C 8 AWG 50 A; 60 C 6 AWG 55 A (8 AWG has 40)
  test.each([
    [{ ...COPPER }, "8 AWG"],
    [{ ...COPPER, terminalTemperature: c(60) }, "6 AWG"],
    [{ ...COPPER, insulationRating: c(60) }, "6 AWG"],
    [{ ...COPPER, terminalTemperature: "unmarked" }, "6 AWG"],
    [{ ...COPPER, designLetter: "unmarked" }, "6 AWG"],
    [{ ...COPPER, designLetter: "A" }, "6 AWG"],
    [{ ...COPPER, designLetter: "C" }, "8 AWG"],
    [{ ...COPPER, designLetter: "D" }, "8 AWG"],
    [{ ...COPPER, metal: "aluminum" }, "6 AWG"],
  ] as const)("25 hp with %j takes %s", (conductor, size) => {
    expect(main({ ask: "conductor", motor: motor("25"), conductor })).toBe(size);
  });

  // hand, unmarked terminals: 96 A x 1.25 = 120 A is over 100 A. 1 AWG counts as 60 C (110 A, not enough), 1/0 AWG as
  // 75 C (150 A). 77 A x 1.25 = 96.25 A is up to 100 A: 60 C, 1 AWG 110 A. 80 A x 1.25 = 100 A: 60 C, 1 AWG
  test.each([
    [motor("75"), "1/0 AWG"],
    [motor("75", { voltageV: 575 }), "1 AWG"],
    [motor("30", { voltageV: 230 }), "1 AWG"],
  ])("%j on unmarked terminals takes %s", (one, size) => {
    const conductor = { ...COPPER, terminalTemperature: "unmarked" } as const;
    expect(main({ ask: "conductor", motor: one, conductor })).toBe(size);
  });

  // hand: 248 A x 1.25 = 310 A: 350 kcmil at 75 C is exactly 310 A
  test("a size that carries exactly the current needed is enough", () => {
    expect(main({ ask: "conductor", motor: motor("100", { voltageV: 230 }), conductor: COPPER })).toBe("350 kcmil");
  });

  test.each(["insulationRating", "terminalTemperature", "designLetter"] as const)(
    "%s is asked for where it decides",
    (fact) => {
      const { [fact]: _left, ...conductor } = COPPER;
      expect(ask({ ask: "conductor", motor: motor("25"), conductor })).toMatchObject({
        outcome: "missing",
        missing: [{ path: `question/conductor/${fact}` }],
      });
    },
  );
  // hand: 310 A at 75 C is 350 kcmil whether the motor of over 100 A is unmarked or of design B
  test("no design letter is asked for above 100 A, where an unmarked terminal counts as 75 C", () => {
    const { designLetter: _left, ...conductor } = COPPER;
    for (const letter of [{}, { designLetter: "A" }, { designLetter: "unmarked" }, { designLetter: "B" }])
      expect(
        main({ ask: "conductor", motor: motor("100", { voltageV: 230 }), conductor: { ...conductor, ...letter } }),
      ).toBe("350 kcmil");
  });
  // hand: 42.5 A, terminals 60 to 75 C and the rest 75 C: 8 AWG or 6 AWG. 310 A: at 60 C 500 kcmil, at 75 C 350 kcmil
  test("the terminals are asked for above 100 A too: not given is not unmarked", () => {
    const { terminalTemperature: _left, ...conductor } = COPPER;
    expect(ask({ ask: "conductor", motor: motor("100", { voltageV: 230 }), conductor }).missing[0]?.path).toBe(
      "question/conductor/terminalTemperature",
    );
  });
  // hand: 42.5 A: 8 AWG carries 40 A at 60 C, 50 A at 75 C and 55 A at 90 C
  test.each([
    [74.9, "6 AWG"],
    [75, "8 AWG"],
    [89.9, "8 AWG"],
    [105, "8 AWG"],
  ])("terminals rated %d C take the column below: %s", (rated, size) => {
    expect(
      main({ ask: "conductor", motor: motor("25"), conductor: { ...COPPER, terminalTemperature: c(rated) } }),
    ).toBe(size);
  });
  test("it is not asked for where it does not: a 60 C terminal settles the column", () => {
    const conductor = { metal: "copper", terminalTemperature: c(60) } as const;
    expect(main({ ask: "conductor", motor: motor("25"), conductor })).toBe("6 AWG");
  });
  // hand: 2.7 A x 1.25 = 3.375 A: 14 AWG at any column
  test("nor for a motor so small that the smallest size is enough", () => {
    expect(main({ ask: "conductor", motor: motor("2", { voltageV: 575 }), conductor: { metal: "copper" } })).toBe(
      "14 AWG",
    );
    // published: Table 310.16, 14 AWG copper at 60 C: 15 A; what is not known counts at its lowest
    const small = ask({ ask: "conductor", motor: motor("2", { voltageV: 575 }), conductor: { metal: "copper" } });
    expect(small.steps.find(({ label }) => label === "ampacity at that limit")?.value).toBe(15);
  });
});

describe("overload device", () => {
  const question = { ask: "overload", motor: motor("25", { nameplateA: 30 }) } as const;
  // hand: 30 x 1.25 = 37.5, 30 x 1.15 = 34.5
  test.each([
    [1.14, 41, 34.5],
    [1.15, 41, 37.5],
    [1.16, 41, 37.5],
    [1, 39, 37.5],
    [1, 40, 37.5],
    [1, 41, 34.5],
    ["unmarked", "unmarked", 34.5],
    ["unmarked", 40, 37.5],
  ] as const)("service factor %s, rise %s: %d A", (serviceFactor, temperatureRiseC, most) => {
    expect(main({ ...question, serviceFactor, temperatureRiseC })).toBe(most);
  });
  test.each([
    [{}, "question/serviceFactor"],
    [{ temperatureRiseC: 50 }, "question/serviceFactor"],
    [{ serviceFactor: 1 }, "question/temperatureRiseC"],
  ] as const)("%j asks for %s", (part, path) => {
    expect(ask({ ...question, ...part })).toMatchObject({ outcome: "missing", missing: [{ path }] });
  });
  test("one fact that allows 125 % is enough", () => {
    expect(main({ ...question, temperatureRiseC: 40 })).toBe(37.5);
  });
  test("the nameplate's current is asked for", () => {
    expect(ask({ ask: "overload", motor: motor("25"), serviceFactor: 1.15 })).toMatchObject({
      outcome: "missing",
      missing: [{ path: "question/motor/nameplateA" }],
    });
  });
  test("duty other than continuous is not answered, whatever the horsepower", () => {
    expect(ask({ ...question, duty: "other", serviceFactor: 1.15 })).toMatchObject({
      outcome: "refused",
      refusal: { code: "NOT_COVERED" },
    });
  });
  test.each([Number.NaN, 0, -1])("a service factor or rise of %d is no mark", (marked) => {
    expect(() => ask({ ...question, serviceFactor: marked, temperatureRiseC: 40 })).toThrow(RangeError);
    expect(() => ask({ ...question, serviceFactor: 1, temperatureRiseC: marked })).toThrow(RangeError);
  });
  test.each([
    ["1/6", "refused"],
    ["1/2", "refused"],
    ["3/4", "refused"],
    ["1", "refused"],
    ["1-1/2", "answered"],
    ["2", "answered"],
    ["10", "answered"],
  ])("%s hp: %s", (horsepower, outcome) => {
    expect(ask({ ask: "overload", motor: motor(horsepower, { nameplateA: 3 }), serviceFactor: 1.15 }).outcome).toBe(
      outcome,
    );
  });
});

describe("short-circuit device", () => {
  const device = (
    horsepower: string,
    shortCircuitDevice: MotorCircuitQuestion["shortCircuitDevice"],
    change: Partial<Motor> = {},
    edition?: Edition,
  ) =>
    ask(
      {
        ask: "short-circuit-device",
        motor: motor(horsepower, change),
        ...(shortCircuitDevice && { shortCircuitDevice }),
      },
      edition,
    );

  // published: NFPA 70 Informative Annex D, Example D8 (from memory): 25 hp, 34 A, nontime-delay fuse 34 x 3.00 = 102 A, next
  // standard 110 A; time-delay not in it
  // hand: 34 x 1.75 = 59.5, 60 A; 34 x 2.50 = 85, 90 A; wound rotor 40 x 1.50 = 60 A, itself a standard rating
  test.each([
    ["25", "nontime-delay-fuse", {}, 110, 102],
    ["25", "time-delay-fuse", {}, 60, 59.5],
    ["25", "inverse-time-breaker", {}, 90, 85],
    ["30", "inverse-time-breaker", { kind: "wound-rotor" }, 60, 60],
    ["30", "time-delay-fuse", { kind: "wound-rotor" }, 60, 60],
    ["5", "inverse-time-breaker", { kind: "single-phase", voltageV: 230 }, 70, 70],
    ["5", "nontime-delay-fuse", { kind: "single-phase", voltageV: 230 }, 90, 84],
  ] as const)("%s hp, %s, %j: %d A", (horsepower, kind, change, largest, byTable) => {
    for (const edition of [nfpa70Edition2017, nfpa70Edition2020, nfpa70Edition2023]) {
      const finding = device(horsepower, { kind }, change, edition);
      expect(finding.results.slice(0, 2).map(({ value }) => value)).toEqual([largest, byTable]);
      expect(finding.cite).toMatchObject({ edition: edition.edition, locator: "430.52(C)(1)" });
    }
  });
  // hand: 34 x 2.5 = 85, so 90 A; 30 hp wound-rotor 40 x 1.5 = 60 A, a standard rating itself
  test("the next rating above is spoken of only where there is one", () => {
    const breaker = { kind: "inverse-time-breaker" } as const;
    expect(device("25", breaker).sentence).toBe(
      "The inverse-time breaker is of 90 A or less: 85 A by the table, and the next standard rating above it.",
    );
    const exact = device("30", breaker, { kind: "wound-rotor" });
    expect(exact.sentence).toBe("The inverse-time breaker is of 60 A or less: 60 A by the table.");
    expect(exact.steps.at(-1)).toMatchObject({ because: "the value of the table is a standard rating" });
    expect(device("25", { kind: "time-delay-fuse" }).sentence).toContain("The time-delay fuse is of 60 A or less");
  });
  test("the table stands in another place in 2023", () => {
    const locator = (edition: Edition) =>
      device("25", { kind: "time-delay-fuse" }, {}, edition).steps.find(
        (step) => step.kind === "read" && step.label.startsWith("percent"),
      );
    expect(locator(nfpa70Edition2020)).toMatchObject({ cite: { locator: "Table 430.52" } });
    expect(locator(nfpa70Edition2023)).toMatchObject({ cite: { locator: "Table 430.52(C)(1)" } });
  });

  // hand: 34 x 4 = 136: 125 A; x 2.25 = 76.5: 70 A. 100 hp at 460 V 124 A: breaker 124 x 2.5 = 310, 350 A; x 3 = 372: 350 A.
  // 200 hp 240 A: nontime-delay 720, 800 A; 4 x 240 = 960, but only up to 600 A; x 3 = 720: 700 A, less than 800 A stands.
  // 150 hp at 230 V 360 A: time-delay 630, 700 A; 2.25 x 360 = 810 up to 600 A; 3 x 360 = 1080 above: 1000 A
  test.each([
    ["25", "nontime-delay-fuse", {}, 125, 110],
    ["25", "time-delay-fuse", {}, 70, 60],
    ["25", "inverse-time-breaker", {}, 125, 90],
    ["100", "inverse-time-breaker", {}, 350, 350],
    ["200", "nontime-delay-fuse", {}, 800, 800],
    ["150", "time-delay-fuse", { voltageV: 230 }, 1000, 700],
  ] as const)("%s hp on %s that fails to start it, %j: %d A", (horsepower, kind, change, largest, before) => {
    const finding = device(horsepower, { kind, failsToStart: true }, change);
    expect(finding.results.slice(0, 2).map(({ value }) => value)).toEqual([largest, before]);
  });
  // hand: motor current 99 A: 396 %: 350 A; 100 A: x 4 = 400 A; 101 A: x 3 = 303: 300 A, and 252.5 by the table: 300 A;
  // 120 A: x 3 = 360: 350 A, and 300 A by the table
  test.each([
    [99, 250, 350],
    [100, 250, 400],
    [101, 300, 300],
    [120, 300, 350],
  ])("a breaker for %d A: %d A, and %d A where the motor does not start", (nameplateA, before, largest) => {
    const built = { build: "multispeed", nameplateA } as const;
    expect(device("25", { kind: "inverse-time-breaker" }, built).results[0]?.value).toBe(before);
    expect(
      device("25", { kind: "inverse-time-breaker", failsToStart: true }, built).results.map(({ value }) => value),
    ).toEqual([largest, before, nameplateA * 2.5, nameplateA]);
  });
  // hand, time-delay: 221 x 2.25 = 497.25: 450 A, and 500 or 600 A are beyond it, so the 300 % of larger fuses (663 A) does
  // not make it "601 A or less". 266 A: 598.5, 500 A. 267 A: 600.75, 600 A, and 267 x 3 = 801 for larger ones: 800 A
  test("the 300 % of larger fuses counts only where 600 A is allowed too", () => {
    const fails = { kind: "time-delay-fuse", failsToStart: true } as const;
    expect(device("75", fails, { voltageV: 200 }).results[0]?.value).toBe(450);
    const at = (nameplateA: number) => device("75", fails, { build: "multispeed", nameplateA }).results[0]?.value;
    expect([at(266), at(267)]).toEqual([500, 800]);
  });
  // hand: 800 x 3 = 2400: 2000 A; nontime-delay fuses have 2400 A by the table, and 2500 A as the next rating above it
  test.each(["time-delay-fuse", "nontime-delay-fuse"] as const)("a %s above 600 A has 300 percent", (kind) => {
    const built = { build: "multispeed", nameplateA: 800 } as const;
    expect(device("75", { kind, failsToStart: true }, built).results[0]?.value).toBe(
      kind === "time-delay-fuse" ? 2000 : 2500,
    );
  });
  // hand, nontime-delay: 150 A x 4 = 600 A; 151 A: 604, but 600 A is the last rating of that limit, and 453 is below it
  test("400 % is for fuses up to 600 A", () => {
    const fails = { kind: "nontime-delay-fuse", failsToStart: true } as const;
    const at = (nameplateA: number) => device("25", fails, { build: "multispeed", nameplateA }).results[0]?.value;
    expect([at(149), at(150), at(151), at(199)]).toEqual([500, 600, 600, 600]);
  });
  // hand: 2400 x 2.5 = 6000 A, the last rating; 2401 A needs more than any standard one
  test("above the last standard rating there is no answer", () => {
    const at = (nameplateA: number) =>
      device("25", { kind: "inverse-time-breaker" }, { build: "multispeed", nameplateA });
    expect(at(2400).results[0]?.value).toBe(6000);
    expect(at(2401)).toMatchObject({ outcome: "refused", refusal: { code: "NO_SOLUTION" }, results: [] });
  });
  // hand: 4 A x 1.5 = 6 A: a fuse of 6 A is standard, a breaker of 10 A from 2023 on, one of 15 A before
  test.each([
    [nfpa70Edition2017, 15],
    [nfpa70Edition2020, 15],
    [nfpa70Edition2023, 10],
  ])("the smallest ratings are those of fuses (%#)", (edition, breakerA) => {
    const small = { kind: "wound-rotor", build: "multispeed", nameplateA: 4 } as const;
    expect(device("2", { kind: "time-delay-fuse" }, small, edition).results[0]?.value).toBe(6);
    expect(device("2", { kind: "inverse-time-breaker" }, small, edition).results[0]?.value).toBe(breakerA);
  });
  test("what closes the motor's current closes the device", () => {
    expect(device("25", { kind: "time-delay-fuse" }, { build: "multispeed" }).missing[0]?.path).toBe(
      "question/motor/nameplateA",
    );
    expect(device("25", { kind: "time-delay-fuse" }, { voltageV: 481 }).refusal?.code).toBe("OUTSIDE_TABLE");
  });
  // hand: 10 x 2.50 = 25 A: direct-current motors have 250 % instead of 800 % for an instantaneous trip
  test("a motor that goes by its nameplate has the percent of its kind", () => {
    const built = { kind: "direct-current", build: "low-speed-or-high-torque", nameplateA: 10 } as const;
    expect(device("5", { kind: "instantaneous-trip-breaker" }, built).results[0]?.value).toBe(25);
  });

  // hand: at 100 A 400 % and above it 300 %: 30 hp at 200 V has 92 A, 368: 350 A; 40 hp 120 A, 360: 350 A
  test.each([
    ["30", 350],
    ["40", 350],
  ] as const)("%s hp at 200 V on a breaker that fails to start it: %d A", (horsepower, largest) => {
    expect(
      device(horsepower, { kind: "inverse-time-breaker", failsToStart: true }, { voltageV: 200 }).results[0]?.value,
    ).toBe(largest);
  });

  // hand: 34 x 8 = 272, x 11 = 374, x 13 = 442, x 17 = 578 A
  test.each([
    [false, false, 272],
    [true, false, 374],
    [false, true, 442],
    [true, true, 578],
  ])(
    "instantaneous trip, efficient Design B %s, fails to start %s: %d A",
    (efficientDesignB, failsToStart, setting) => {
      const finding = device("25", { kind: "instantaneous-trip-breaker", efficientDesignB, failsToStart });
      expect(finding.results[0]).toMatchObject({ name: "largest setting", value: setting });
      expect(finding.cite.locator).toBe("430.52(C)(3)");
    },
  );
  // hand: 40 x 8 = 320, 40 x 13 = 520: Design B is a squirrel-cage motor, so its 1100 % and 1700 % are for no other kind
  test.each([
    [false, 320],
    [true, 520],
  ])("a wound-rotor motor said to be efficient Design B has no higher trip, fails to start %s: %d A", (fails, most) => {
    const trip = { kind: "instantaneous-trip-breaker", efficientDesignB: true, failsToStart: fails } as const;
    expect(device("30", trip, { kind: "wound-rotor" }).results[0]?.value).toBe(most);
  });
  test("what is missing is asked for where it decides", () => {
    expect(device("25", undefined).missing[0]?.path).toBe("question/shortCircuitDevice");
    expect(device("25", { kind: "instantaneous-trip-breaker" }).missing[0]?.path).toBe(
      "question/shortCircuitDevice/efficientDesignB",
    );
    // hand: 40 x 8 = 320
    expect(device("30", { kind: "instantaneous-trip-breaker" }, { kind: "wound-rotor" }).results[0]?.value).toBe(320);
  });
});

describe("several motors on one conductor (430.24)", () => {
  const other = (horsepower: string) => motor(horsepower);
  // published: Example D8 (from memory): 25 hp and two of 30 hp wound-rotor, 34 + 40 + 40: 40 x 1.25 + 40 + 34 = 124 A
  test("the largest counts at 125 %, the others as they are", () => {
    const wound = motor("30", { kind: "wound-rotor" });
    for (const edition of [nfpa70Edition2017, nfpa70Edition2020, nfpa70Edition2023]) {
      const finding = ask({ ask: "conductor", motor: motor("25"), otherMotors: [wound, wound] }, edition);
      expect(finding.results[0]?.value).toBe(124);
      expect(finding.cite.locator).toBe("430.24");
    }
  });
  // hand: 34 x 1.25 + 27 + 21 = 90.5; with 20 A continuous and 10 A beside: 25 + 10 more, 125.5
  test("other loads count as a feeder counts them", () => {
    const question = { ask: "conductor", motor: motor("20"), otherMotors: [other("25"), other("15")] } as const;
    expect(main(question)).toBe(90.5);
    expect(main({ ...question, otherContinuousLoadA: 20, otherLoadA: 10 })).toBe(125.5);
  });
  // hand: 90.5 A, unmarked terminals, up to 100 A: 60 C, 2 AWG 95 A; at 75 C 3 AWG 100 A; no design letter is asked for
  test("its size goes by its terminals, not by those of a motor", () => {
    const question = { ask: "conductor", motor: motor("20"), otherMotors: [other("25"), other("15")] } as const;
    const conductor = { metal: "copper", insulationRating: c(90) } as const;
    expect(main({ ...question, conductor: { ...conductor, terminalTemperature: "unmarked" } })).toBe("2 AWG");
    expect(main({ ...question, conductor: { ...conductor, terminalTemperature: c(75) } })).toBe("3 AWG");
    expect(ask({ ...question, conductor }).missing[0]?.path).toBe("question/conductor/terminalTemperature");
  });
  // hand: 34 x 1.25 + 20 x 1.25 = 67.5; with 10 A more 77.5; 10 A alone 52.5; 77.5 A at 75 C: 4 AWG 85 A
  test("one motor with other load beside it is counted with that load", () => {
    const question = { ask: "conductor", motor: motor("25") } as const;
    expect(main({ ...question, otherContinuousLoadA: 20 })).toBe(67.5);
    expect(main({ ...question, otherLoadA: 10 })).toBe(52.5);
    const both = { ...question, otherContinuousLoadA: 20, otherLoadA: 10 };
    expect(main(both)).toBe(77.5);
    expect(main({ ...both, conductor: COPPER })).toBe("4 AWG");
    expect(ask(both).cite.locator).toBe("430.24");
    expect(ask(both).sentence).toBe(
      "The conductor to a motor and other load needs 77.5 A: 125 % of the motor's, 34 A, and all of the rest.",
    );
  });
  test("an empty list of other motors is none", () => {
    expect(ask({ ask: "conductor", motor: motor("25"), otherMotors: [] }).cite.locator).toBe("430.22");
  });
  // hand: 1.25 x 10 A = 12.5 A, 90 C all through: 18 AWG carries 14 A there, but is no wire for such a circuit
  test("no conductor is smaller than 14 AWG copper or 12 AWG aluminum", () => {
    const conductor = { ...COPPER, terminalTemperature: c(90) } as const;
    const small = motor("1", { build: "multispeed", nameplateA: 5 });
    const question = { ask: "conductor", motor: small, otherMotors: [small] } as const;
    expect(main({ ...question, conductor })).toBe("14 AWG");
    expect(main({ ...question, conductor: { ...conductor, metal: "aluminum" } })).toBe("12 AWG");
  });
  test("a fact of another motor is asked for where it stands", () => {
    expect(
      ask({ ask: "conductor", motor: motor("20"), otherMotors: [motor("25", { build: "multispeed" })] }).missing[0]
        ?.path,
    ).toBe("question/otherMotors/0/nameplateA");
  });
});

test("numbers that are none are not accepted", () => {
  expect(() => ask({ ask: "conductor", motor: motor("25", { voltageV: Number.NaN }) })).toThrow(RangeError);
  expect(() => ask({ ask: "overload", motor: motor("25", { nameplateA: 0 }), serviceFactor: 1.15 })).toThrow(
    RangeError,
  );
});
