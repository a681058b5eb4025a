import { describe, expect, test } from "vitest";
import { sampleConnector, sampleJoint } from "../../samples/sample-joint.js";
import { factText, watchedConnector, watchedJoint } from "./facts-read.js";

const FROZEN = Object.freeze(sampleJoint({ circuit: Object.freeze({ voltageV: 480, loadA: 100, sets: 1 }) }));

function readOf(look: (joint: typeof FROZEN) => unknown): string[] {
  const read = new Set<string>();
  look(watchedJoint(FROZEN, read));
  return [...read].sort();
}

// hand: what a line of code reads is there to be seen
describe("what is read of a joint is noted", () => {
  test.each([
    ["a field", ["role"], (joint: typeof FROZEN) => joint.role],
    [
      "a field of the circuit, and that there is a circuit",
      ["circuit", "circuit/voltageV"],
      (joint: typeof FROZEN) => joint.circuit?.voltageV,
    ],
    ["a part that is not there", ["grounding"], (joint: typeof FROZEN) => joint.grounding?.electrode],
    ["whether a field is there", ["rework"], (joint: typeof FROZEN) => "rework" in joint],
    ["all of it", ["*"], (joint: typeof FROZEN) => Object.keys(joint)],
    [
      "all of the circuit",
      ["circuit", "circuit/*"],
      (joint: typeof FROZEN) => (joint.circuit === undefined ? [] : Object.keys(joint.circuit)),
    ],
    [
      "a copy of the circuit",
      ["circuit", "circuit/*", "circuit/loadA", "circuit/sets", "circuit/voltageV"],
      (joint: typeof FROZEN) => ({ ...joint.circuit }),
    ],
  ])("%s", (_name, expected, look) => {
    expect(readOf(look)).toEqual(expected);
  });
  test("and the values read are the joint's own, frozen or not", () => {
    const joint = watchedJoint(FROZEN, new Set());
    expect(joint.circuit?.voltageV).toBe(480);
    expect(joint.conductors).toBe(FROZEN.conductors);
    expect({ ...joint }).toMatchObject({ role: FROZEN.role, mark: FROZEN.mark });
  });
  test("two watchings of one joint are two objects: nothing can be kept by the object and pass unseen", () => {
    expect(watchedJoint(FROZEN, new Set())).not.toBe(watchedJoint(FROZEN, new Set()));
  });
  test("the words that describe a connector are for an answer's text and are not noted", () => {
    const read = new Set<string>();
    const connector = watchedConnector(sampleConnector(), read);
    expect([connector.description, connector.family]).not.toContain(undefined);
    expect([...read]).toEqual(["family"]);
  });
});

describe("the text of a fact tells unequal values apart", () => {
  test("absent, unmarked, a number and its text", () => {
    const texts = [
      {},
      { voltageV: "unmarked" },
      { voltageV: 600 },
      { voltageV: "600" },
      { voltageV: "absent" },
      { voltageV: null },
    ];
    expect(new Set(texts.map((one) => factText(one, "voltageV"))).size).toBe(texts.length);
  });
  test("a part stands for whether it is there, its fields for themselves, and a star for all of it", () => {
    const other = { ...FROZEN, circuit: { voltageV: 480, loadA: 101, sets: 1 } };
    expect(factText(other, "circuit")).toBe(factText(FROZEN, "circuit"));
    expect(factText(other, "circuit")).not.toBe(factText({}, "circuit"));
    expect(factText(other, "circuit/voltageV")).toBe(factText(FROZEN, "circuit/voltageV"));
    expect(factText(other, "circuit/loadA")).not.toBe(factText(FROZEN, "circuit/loadA"));
    expect(factText(other, "circuit/*")).not.toBe(factText(FROZEN, "circuit/*"));
    expect(factText(other, "*")).not.toBe(factText(FROZEN, "*"));
  });
});
