import { existsSync, readFileSync } from "node:fs";
import type { CatalogueItem, Connector, Job, JointFinding } from "@landfast/rules";
import { beforeAll, describe, expect, it } from "vitest";
import { type Comparison, classOf, compare } from "./compare.js";
import { EXPLAINED, MIXED_REFUSALS_PER_THOUSAND } from "./explained.js";
import { generate } from "./generate.js";
import { judge } from "./oracle.js";
import { cmilOf } from "./read-table.js";
import { boltDiameter, ninthsOfCelsius, ofArea, ofDecimal, ofLength } from "./scaled-integer.js";

const JOINTS = Number(process.env["LANDFAST_ORACLE_JOINTS"] ?? "100000");

const demo = (file: string): URL => new URL(`../../data/demo/${file}`, import.meta.url);
const readDemo = (file: string): unknown => JSON.parse(readFileSync(demo(file), "utf8"));

describe("the oracle's own arithmetic", () => {
  it("orders sizes by area and keeps metric ones apart", () => {
    // published: NFPA 70 chapter 9, Table 8. hand: 250 kcmil is 250 000 circular mils by its name.
    expect(["1 AWG", "1/0 AWG", "4/0 AWG", "250 kcmil", "35 mm2"].map(cmilOf)).toEqual([
      83_690,
      105_600,
      211_600,
      250_000,
      null,
    ]);
    expect(() => cmilOf("5/0 AWG")).toThrow("no area");
  });

  it("compares lengths, areas, temperatures and bolts of different units without rounding", () => {
    // hand: 14 x 25.4 = 355.6; 25 x 0.3048 = 7.62; 16 x 645.16 = 10 322.56; (194 - 32) x 5/9 = 90.
    expect(ofLength({ value: 14, unit: "in" })).toBe(ofLength({ value: 355.6, unit: "mm" }));
    expect(ofLength({ value: 25, unit: "ft" })).toBe(ofLength({ value: 7.62, unit: "m" }));
    expect(ofArea({ value: 16, unit: "in2" })).toBe(ofArea({ value: 10_322.56, unit: "mm2" }));
    expect(ninthsOfCelsius({ value: 194, unit: "degF" })).toBe(ninthsOfCelsius({ value: 90, unit: "Cel" }));
    expect(boltDiameter("1/2")).toBe(boltDiameter("4/8"));
    expect(boltDiameter("1/2")).not.toBe(boltDiameter("M12"));
    expect(() => ofDecimal(1 / 3)).toThrow("six decimals");
  });
});

describe("the oracle alone", () => {
  it.skipIf(!existsSync(demo("larkfen-expected.json")))("judges the demonstration site as expected", () => {
    const job = readDemo("larkfen-job.json") as Job;
    const expected = readDemo("larkfen-expected.json") as {
      joints: { mark: string; verdict: JointFinding["verdict"] }[];
    };
    const catalogue = readDemo("catalogue.json") as { items: CatalogueItem[] };
    const parts = new Map<string, Connector>(catalogue.items.map((item) => [item.partNumber, item]));
    const wanted = new Map(expected.joints.map(({ mark, verdict }) => [mark, classOf(verdict)]));
    const wrong = job.joints.flatMap((joint) => {
      const choice = joint.connector;
      const connector =
        choice === undefined || "equipmentTerminal" in choice
          ? joint.equipment?.terminal
          : "described" in choice
            ? choice.described
            : parts.get(choice.partNumber);
      if (connector === undefined) return [`${joint.mark}: no connector`];
      const { verdict, reasons } = judge(joint, connector, job.basis);
      return verdict === wanted.get(joint.mark) ? [] : [`${joint.mark}: ${verdict} ${JSON.stringify(reasons)}`];
    });
    expect(wrong).toEqual([]);
    // hand: the job has 73 rows.
    expect(job.joints).toHaveLength(73);
  });

  it("is asked the same joints for the same numbers", () => {
    expect(JSON.stringify(generate(4711))).toBe(JSON.stringify(generate(4711)));
    expect(JSON.stringify(generate(4711))).not.toBe(JSON.stringify(generate(4712)));
  });
});

describe(`the library and the oracle on ${JOINTS} generated joints`, () => {
  let comparison: Comparison;
  beforeAll(() => {
    comparison = compare(0, JOINTS);
    print(comparison);
  }, 600_000);

  it("accepts nothing that the oracle rejects or asks about", () => {
    const accepted = comparison.differences.filter(({ library }) => library === "accept");
    const shown = accepted.slice(0, 5).map(({ kind, question, reasons }) => ({ kind, reasons, question }));
    expect(JSON.stringify(shown, null, 1)).toBe("[]");
    expect(accepted).toHaveLength(0);
  });

  it("differs otherwise only in ways that are explained, and no more often than they say", () => {
    const counts = new Map<string, number>();
    const unexplained: string[] = [];
    let mixedRefusals = 0;
    for (const { library, oracle, question, about } of comparison.differences) {
      if (library === "accept") continue;
      const why = EXPLAINED.find(
        (each) =>
          each.library === library &&
          each.oracle === oracle &&
          about.every((objection) => each.about.includes(objection)),
      );
      if (why !== undefined) counts.set(why.because, (counts.get(why.because) ?? 0) + 1);
      else if (oracle === "reject") mixedRefusals += 1;
      else unexplained.push(`${library}/${oracle} ${about.join(" + ")}: joint ${question.number}`);
    }
    expect(unexplained).toEqual([]);
    const tooMany = EXPLAINED.filter(({ because, perThousand }) => {
      const count = counts.get(because) ?? 0;
      return count * 1000 > perThousand * comparison.asked + 2000;
    }).map(({ because }) => `${counts.get(because) ?? 0}: ${because}`);
    expect(tooMany).toEqual([]);
    expect((mixedRefusals * 1000) / comparison.asked).toBeLessThan(MIXED_REFUSALS_PER_THOUSAND);
  });

  it("meets joints of every kind, and enough that are allowed", () => {
    // At least a fifth accepted: else the first test would have little to find.
    expect(comparison.accepts / comparison.asked).toBeGreaterThan(0.2);
    // hand: 35 families, 3 functions, 5 roles, 3 editions, 5 kinds of protection, 5 places; each must be met.
    const { families, functions, roles, editions, protections, places } = comparison.met;
    expect([families, functions, roles, editions, protections, places].map(({ size }) => size)).toEqual([
      35, 3, 5, 3, 5, 5,
    ]);
    const seldom = DECIDING.filter((clause) => (comparison.met.decidedAlone.get(clause) ?? 0) < 5);
    expect(seldom).toEqual([]);
  });
});

/** Clauses of which each must have stood alone between a joint and its acceptance, so that leaving it out would be seen. */
const DECIDING = [
  "110.11 agent",
  "110.14 intermix",
  "110.14 metal",
  "110.14 pad",
  "110.14(A) binding screw",
  "110.14(A) count",
  "110.14(A) count of strands",
  "110.14(A) strands",
  "110.14(B) place",
  "110.14(C)",
  "110.14(D)",
  "110.3(B) combination",
  "110.3(B) frame",
  "110.3(B) function",
  "110.3(B) pin",
  "110.3(B) range",
  "110.3(B) reuse",
  "110.3(B) run",
  "110.3(B) second turn",
  "110.3(B) stud",
  "110.3(B) tool",
  "110.3(B) voltage",
  "210.20",
  "230.46",
  "240.21(B)",
  "240.4",
  "240.4(B)",
  "240.4(C)",
  "240.4(D)",
  "250.102",
  "250.104",
  "250.122",
  "250.122(B)",
  "250.64(A)",
  "250.64(C)",
  "250.64(D)",
  "250.66",
  "250.70",
  "310.10(G)",
  "310.10(H)",
  "310.16",
  "310.4 insulation",
  "312.6(A)",
  "312.6(B)",
  "312.8",
  "314.28(E)",
  "314.29",
  "376.56",
  "376.56(B)",
  "408.41",
  "Annex I",
];

function print({ asked, accepts, differences }: Comparison): void {
  const kinds = new Map<string, number>();
  for (const { kind } of differences) kinds.set(kind, (kinds.get(kind) ?? 0) + 1);
  const lines = [...kinds]
    .sort(([, a], [, b]) => b - a)
    .map(([kind, count]) => `${String(count).padStart(7)}  ${kind}`);
  console.log(
    [
      `${asked} joints, ${accepts} accepted by the oracle, ${differences.length} answered differently (library/oracle, clause):`,
      ...lines,
    ].join("\n"),
  );
}
