import { existsSync, readFileSync } from "node:fs";
import type { CatalogueItem, Connector, Job, JointFinding } from "@landfast/rules";
import { beforeAll, describe, expect, it } from "vitest";
import { type Comparison, classOf, compare } from "./compare.js";
import { EXPLAINED } from "./explained.js";
import { generate } from "./generate.js";
import { judge } from "./oracle.js";

const JOINTS = Number(process.env["LANDFAST_ORACLE_JOINTS"] ?? "20000");

const demo = (file: string): URL => new URL(`../../data/demo/${file}`, import.meta.url);
const readDemo = (file: string): unknown => JSON.parse(readFileSync(demo(file), "utf8"));

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
    for (const { library, oracle, question, about } of comparison.differences) {
      if (library === "accept") continue;
      const why = EXPLAINED.find((each) => each.library === library && each.oracle === oracle && each.covers(about));
      if (why === undefined) unexplained.push(`${library}/${oracle} ${about.join(" + ")}: joint ${question.number}`);
      else counts.set(why.because, (counts.get(why.because) ?? 0) + 1);
    }
    expect(unexplained).toEqual([]);
    const tooMany = EXPLAINED.filter(({ because, perThousand }) => {
      const count = counts.get(because) ?? 0;
      return count * 1000 > perThousand * comparison.asked;
    }).map(({ because }) => `${counts.get(because) ?? 0}: ${because}`);
    expect(tooMany).toEqual([]);
  });

  it("meets joints of every kind, and enough that are allowed", () => {
    // At least a fifth accepted: else the first test would have little to find.
    expect(comparison.accepts / comparison.asked).toBeGreaterThan(0.2);
    // hand: 34 families, 3 functions, 5 roles, 3 editions, 5 kinds of protection, 5 places; each must be met.
    const { families, functions, roles, editions, protections, places } = comparison.met;
    expect([families, functions, roles, editions, protections, places].map(({ size }) => size)).toEqual([
      34, 3, 5, 3, 5, 5,
    ]);
  });
});

function print({ asked, accepts, differences }: Comparison): void {
  const kinds = new Map<string, number>();
  for (const { kind } of differences) kinds.set(kind, (kinds.get(kind) ?? 0) + 1);
  const lines = [...kinds].sort(([, a], [, b]) => b - a).map(([kind, count]) => `${String(count).padStart(7)}  ${kind}`);
  console.log(
    [
      `${asked} joints, ${accepts} accepted by the oracle, ${differences.length} answered differently (library/oracle, clause):`,
      ...lines,
    ].join("\n"),
  );
}
