/**
 * The invented site, joint by joint: 73 marks, 286 joints, each with the verdict and the torque that was worked by
 * hand from the clauses before the library existed. Expected values: hand (data/demo/larkfen-expected.json gives the
 * working of each in its reason).
 */
import { demoCatalogue, larkfenExpected, larkfenJob, larkfenOpenJob } from "@landfast/data";
import { type JointFinding, RULES, type ScheduleRow, scheduleJob } from "@landfast/rules";
import { describe, expect, test } from "vitest";
import { faultsOf } from "../findings/walk-finding.js";

const catalogue = demoCatalogue().items;
const scheduled = scheduleJob(larkfenJob(), catalogue);
const open = scheduleJob(larkfenOpenJob(), catalogue);

function answerFor(mark: string): { row: ScheduleRow; finding: JointFinding } {
  const index = scheduled.schedule.rows.findIndex((row) => row.mark === mark);
  const row = scheduled.schedule.rows[index];
  const finding = scheduled.findings[index];
  if (row === undefined || finding === undefined || finding === null) throw new Error(`no answer for ${mark}`);
  return { row, finding };
}

function outcomesOf(finding: JointFinding, outcome: string): string[] {
  return finding.findings.filter((one) => one.outcome === outcome).map(({ rule }) => rule);
}

describe("Larkfen Works, each joint with the connector it was offered", () => {
  test.each(larkfenExpected().joints)("$mark: $verdict", (expected) => {
    const { row, finding } = answerFor(expected.mark);
    expect({ verdict: row.verdict, deciding: row.deciding.sentence }).toMatchObject({ verdict: expected.verdict });
    const decides =
      expected.verdict === "reject" ? "fail" : expected.verdict === "needs-information" ? "missing" : "pass";
    const known = new Set(RULES.map(({ id }) => id));
    expect(expected.rules.filter((rule) => !known.has(rule))).toEqual([]);
    expect(outcomesOf(finding, decides)).toEqual(expect.arrayContaining([...expected.rules]));
    if (decides === "fail") expect(expected.rules).toContain(row.deciding.rule);
  });

  test.each(larkfenExpected().joints)("$mark: torque $torqueLbfIn", (expected) => {
    const { row } = answerFor(expected.mark);
    const given = row.torque.map(({ lbfIn }) => lbfIn).filter((lbfIn) => lbfIn !== null);
    const wanted = expected.torqueLbfIn.filter((lbfIn) => lbfIn !== null);
    expect(given.slice(0, wanted.length)).toEqual(wanted);
    // A joint that is pressed, welded, sheared or turned by hand gives no figure to set a wrench to.
    if (wanted.length === 0) expect(given).toEqual([]);
  });

  test("counts by verdict are those of the expected list", () => {
    // hand: 221 of 286 joints are accepted; 47 core marks
    const { byVerdict, joints, marks } = scheduled.schedule.counts;
    expect({ marks, joints }).toEqual({ marks: 73, joints: 286 });
    expect(byVerdict.accept.joints + byVerdict["accept-with-conditions"].joints).toBe(221);
    expect(byVerdict["needs-information"].marks).toBe(2);
    expect(byVerdict.reject.marks).toBe(24);
  });

  test("every rejection says what would put it right, and what the catalogue has instead", () => {
    for (const rejection of scheduled.schedule.rejections) {
      expect(rejection.fix, rejection.mark).not.toBe("");
      expect(rejection.instead, rejection.mark).not.toBe("");
      expect(rejection.clause, rejection.mark).not.toBe("");
    }
  });

  test("a refused or questioned joint shows no torque, and every accepted one its duties and caution", () => {
    for (const row of scheduled.schedule.rows) {
      const accepted = row.verdict === "accept" || row.verdict === "accept-with-conditions";
      expect(row.torque.length > 0, row.mark).toBe(accepted);
      expect(row.dutiesOnSite.length > 0, row.mark).toBe(accepted);
      expect(row.conditions.length > 0, row.mark).toBe(row.verdict === "accept-with-conditions");
    }
  });
});

describe("every finding of the site can be walked", () => {
  const answers = [...scheduled.findings, ...open.findings].filter((finding) => finding !== null);
  test.each(answers.map((finding, index) => [index, finding] as const))("answer %d", (_index, finding) => {
    for (const check of finding.findings) {
      expect(faultsOf(check.steps), check.rule).toEqual([]);
      const last = check.steps.at(-1);
      const said =
        last?.kind === "compared" ? (last.value ? "pass" : "fail") : last?.kind === "missing" ? "missing" : last?.value;
      expect(said, check.rule).toBe(check.outcome);
    }
    for (const torque of finding.torque) expect(faultsOf(torque.steps), torque.at).toEqual([]);
  });
});

describe("Larkfen Works with no connector named", () => {
  test("each joint gets a connector that every rule accepts, or the reason why there is none", () => {
    for (const [index, row] of open.schedule.rows.entries()) {
      if (row.connector === null || row.verdict === "reject" || row.verdict === "needs-information") {
        expect(row.deciding.sentence, row.mark).not.toBe("");
        continue;
      }
      expect(["accept", "accept-with-conditions"]).toContain(open.findings[index]?.verdict);
    }
  });

  test("what is chosen does not depend on the order of the catalogue", () => {
    const reversed = scheduleJob(larkfenOpenJob(), [...catalogue].reverse());
    expect(JSON.stringify(reversed.schedule)).toBe(JSON.stringify(open.schedule));
  });
});

describe("the same question gives the same bytes", () => {
  test("a second run is equal to the first, byte for byte", () => {
    const again = scheduleJob(larkfenJob(), demoCatalogue().items);
    expect(JSON.stringify(again)).toBe(JSON.stringify(scheduled));
  });
  test("an answer survives JSON unchanged", () => {
    expect(JSON.parse(JSON.stringify(scheduled))).toEqual(scheduled);
  });
});
