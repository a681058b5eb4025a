import { describe, expect, test } from "vitest";
import { multiply } from "../core/exact.js";
import type { CheckFinding } from "../core/finding.js";
import { settled } from "../core/rule.js";
import { cellAt } from "../core/table.js";
import { Worksheet } from "../core/worksheet.js";
import { nfpa70Edition2023 } from "../rulesets/nfpa70-2023/edition.js";
import { sampleConnector, sampleJoint, sampleSubject } from "../samples/sample-joint.js";
import { checkJointUnder } from "../topics/joint/check-joint.js";
import { voltageRating } from "../topics/voltage/voltage-rating.js";
import { checkFindingText, jointFindingText } from "./plain-text.js";

const CITE = { standard: "NFPA 70", edition: "2023", locator: "215.2(A)(1)" } as const;

function voltage(systemV: number | undefined): string {
  const joint = sampleJoint({ circuit: systemV === undefined ? { sets: 1 } : { sets: 1, voltageV: systemV } });
  const finding = voltageRating.check(sampleSubject(joint, sampleConnector({ voltageV: 300 })), nfpa70Edition2023);
  if (finding.outcome === "not-applicable") throw new Error("a phase conductor has a voltage");
  return checkFindingText(finding);
}

function everyKindOfStep(): CheckFinding {
  const sheet = new Worksheet();
  const load = sheet.given("continuous load", 180, "joint/circuit/continuousLoadA", "A");
  const factor = sheet.state("factor for continuous load", 1.25, CITE);
  const sized = sheet.multiply("load for sizing", [factor, load], "A", CITE);
  sheet.exactly(
    "the same again",
    multiply(sheet.exact(factor), sheet.exact(load)),
    "A",
    [factor, load],
    "factor x load",
    "1.25 x 180",
  );
  const torque = cellAt(nfpa70Edition2023.tables.torqueSocket, "5/16", "torque");
  if ("refusal" in torque) throw new Error(torque.detail);
  sheet.read("default torque", torque, [load]);
  const mark = sheet.assume("temperature of the terminal", 75, "the equipment bears no mark", CITE, "Cel");
  sheet.missing("ambient", "joint/place/ambient", "it is not given");
  const list = sheet.given("places", ["dry", "damp"], "connector/places");
  const place = sheet.given("place", "wet", "joint/place/location");
  sheet.compare("the place is listed", place, "in", list, CITE);
  sheet.conclude("all of it", "fail", [sized, mark], "two facts say so", CITE);
  return settled("sample-rule", sheet, {
    sentence: "A sample of every kind of step.",
    cite: CITE,
    required: "something",
    offered: "nothing",
    advice: ["Look again."],
    fix: "another part",
  });
}

describe("plain text of a finding", () => {
  test("a failure is followed step by step", () => {
    expect(voltage(480)).toBe(
      [
        "voltage-rating: FAIL. The connector is rated 300 V, below the system's 480 V.",
        "  Clause: 110.4, NFPA 70-2023",
        "  Required: 480 V",
        "  Offered: 300 V",
        "  1. system voltage between lines: 480 V (given at joint/circuit/voltageV)",
        "  2. voltage rating of the connector: 300 V (given at connector/voltageV)",
        "  3. system voltage is within the rating: 480 V <= 300 V does not hold (110.4, NFPA 70-2023)",
        "  Put right by: a connector rated at least 480 V",
        "",
      ].join("\n"),
    );
  });
  test("a condition of one rule stands with it", () => {
    const lines = checkFindingText({
      ...everyKindOfStep(),
      conditions: [{ duty: "cover", sentence: "Fit the cover.", cite: CITE }],
    }).split("\n");
    expect(lines).toContain("  Condition: Fit the cover. (215.2(A)(1), NFPA 70-2023)");
  });
  test("a missing fact is named", () => {
    expect(voltage(undefined)).toContain("\n  1. voltageV: not known; asked for at joint/circuit/voltageV\n");
    expect(voltage(undefined)).toContain("\n  Needed: joint/circuit/voltageV: The system voltage is not given,");
  });

  // hand: 1.25 x 180 = 225
  test("every kind of step has its own form; arithmetic is shown as formula = numbers = value", () => {
    expect(checkFindingText(everyKindOfStep())).toBe(
      [
        "sample-rule: FAIL. A sample of every kind of step.",
        "  Clause: 215.2(A)(1), NFPA 70-2023",
        "  Required: something",
        "  Offered: nothing",
        "  1. continuous load: 180 A (given at joint/circuit/continuousLoadA)",
        "  2. factor for continuous load: 1.25 (215.2(A)(1), NFPA 70-2023)",
        "  3. load for sizing: factor for continuous load x continuous load = 1.25 x 180 = 225 A",
        "     (215.2(A)(1), NFPA 70-2023)",
        "  4. the same again: factor x load = 1.25 x 180 = 225 A",
        "  5. default torque: 275 lbf-in (row 5/16, column torque, Informative Annex I Table I.3, NFPA",
        "     70-2023; no public text has confirmed it yet)",
        "  6. temperature of the terminal: 75 C, because the equipment bears no mark (215.2(A)(1), NFPA",
        "     70-2023)",
        "  7. ambient: not known; asked for at joint/place/ambient",
        "  8. places: [dry, damp] (given at connector/places)",
        "  9. place: wet (given at joint/place/location)",
        "  10. the place is listed: wet in [dry, damp] does not hold (215.2(A)(1), NFPA 70-2023)",
        "  11. all of it: fail, two facts say so [from steps 3, 6] (215.2(A)(1), NFPA 70-2023)",
        "  Advice: Look again.",
        "  Put right by: another part",
        "",
      ].join("\n"),
    );
  });

  // hand: 100 columns less the indent of 2 leave room for a word of 98; a longer one is cut
  test.each([
    [97, ["  ".padEnd(99, "x"), "  yy"]],
    [98, ["  ".padEnd(100, "x"), "  yy"]],
    [99, ["  ".padEnd(100, "x"), "  x yy"]],
    [197, ["  ".padEnd(100, "x"), "  ".padEnd(100, "x"), "  x yy"]],
  ])("a word of %d letters never makes a line longer than 100 columns", (letters, expected) => {
    const finding = { ...everyKindOfStep(), sentence: `${"x".repeat(letters)} yy` };
    expect(
      checkFindingText(finding)
        .split("\n")
        .slice(1, 1 + expected.length),
    ).toEqual(expected);
  });
});

describe("plain text of a joint", () => {
  const basis = { ruleSet: "nfpa70", edition: "2023", installedOn: "2024-05-01" } as const;
  const text = (joint: Parameters<typeof sampleJoint>[0] = {}) =>
    jointFindingText(
      checkJointUnder(
        { joint: sampleJoint(joint), basis, connector: sampleConnector(), origin: "request" },
        nfpa70Edition2023,
      ),
    );

  test("verdict, connector and basis stand first", () => {
    const lines = text().split("\n");
    expect(lines[0]).toMatch(/^Verdict: (ACCEPT|ACCEPT WITH CONDITIONS)$/);
    expect(text()).toContain("\nConnector: set-screw lug, one barrel, as described in the request\n");
    expect(text()).toContain("\nBasis: NFPA 70-2023, installed on 2024-05-01; rules ");
  });
  test("the torque has three units, its drive and its source", () => {
    expect(text()).toContain(
      "  1. conductor screw of opening barrel, 3/0 AWG: Nothing is marked: tighten to 275 lbf-in",
    );
    expect(text().replaceAll(/\n */g, " ")).toContain(
      "Drive: 5/16 in recessed hex or square; default table of the code (Informative Annex I Table I.3, NFPA 70-2023)",
    );
  });
  test("strip length, preparation, openings and duties are told", () => {
    expect(text()).toContain("\n  1. strip for opening barrel: see the connector's instructions\n");
    expect(text()).toContain("\n  2. wire brush: not needed, copper needs only a clean surface (common practice,");
    expect(text()).toContain("\n  1. barrel (1): 1 x 3/0 AWG copper, class-B\n");
    expect(text()).toContain(
      "\n  1. De-energize, lock out and test dead before you touch the joint. (common practice,",
    );
  });
  test("tool, die, crimps and a known strip length are told; what the code supplied and what is missing too", () => {
    const accepted = checkJointUnder(
      { joint: sampleJoint(), basis, connector: sampleConnector(), origin: "catalogue" },
      nfpa70Edition2023,
    );
    const pressed = jointFindingText({
      ...accepted,
      connector: { ...accepted.connector, partNumber: "INV-1" },
      stripLengths: [{ opening: "barrel", length: { value: 1.5, unit: "in" } }],
      tooling: { tool: "T-1", die: "D-2", crimps: 2 },
      conditions: [{ duty: "record-die", sentence: "Record the die.", cite: CITE }],
      assumptions: [{ label: "conductors for each opening", value: "1", because: "nothing is marked", cite: CITE }],
      caveats: ["The connector is invented."],
      findings: [],
    });
    expect(pressed).toContain("\nConnector: INV-1, set-screw lug, one barrel, from the catalogue\n");
    expect(pressed).toContain("\n  1. strip for opening barrel: 1.5 in\n");
    expect(pressed).toContain("\n  4. tool T-1, die D-2, 2 crimps\n");
    expect(pressed).toContain("\nConditions\n  1. Record the die. (215.2(A)(1), NFPA 70-2023)\n");
    expect(pressed).toContain("\n  1. conductors for each opening: 1, nothing is marked (215.2(A)(1), NFPA 70-2023)\n");
    expect(pressed).toContain("\nCaveats\n  1. The connector is invented.\n");
    expect(pressed).not.toContain("\nFindings\n");
    expect(jointFindingText({ ...accepted, tooling: { tool: "T-1" } })).toContain("\n  4. tool T-1\n");
  });
  test("a refusal tells no torque and no duties", () => {
    const refused = text({ circuit: { sets: 1, voltageV: 1000 } });
    expect(refused).toContain("Verdict: REJECT\nDecided by voltage-rating: ");
    expect(refused).not.toContain("\nTorque\n");
    expect(refused).not.toContain("\nDuties on site\n");
  });
  test("a missing fact is named at the top", () => {
    const unknown = text({ circuit: { sets: 1 } });
    expect(unknown).toContain("Verdict: NEEDS INFORMATION\n");
    expect(unknown).toMatch(/\nMissing\n(?:.*\n)*? {2}\d+\. joint\/circuit\/voltageV: /);
  });
  test("no line is longer than 100 columns, and the caution ends the text", () => {
    for (const line of text().split("\n")) expect(line.length).toBeLessThanOrEqual(100);
    expect(text().trimEnd().endsWith("Work de-energized.")).toBe(true);
  });
});
