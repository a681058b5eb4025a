/** Every threshold, asked one step under it, at it and one step over it, in each edition where it holds. */
import { describe, expect, test } from "vitest";
import { ALL_THRESHOLDS } from "./all-thresholds.js";
import { EDITION_NAMES, isOneStep } from "./threshold.js";

describe.each(ALL_THRESHOLDS)("$name", (threshold) => {
  const { values, answers, step, unit, level } = threshold;
  const [under, at, over] = values;

  test(`${String(under)}, ${String(at)} and ${String(over)} ${unit} lie one step apart`, () => {
    expect([isOneStep(under, at, step), isOneStep(at, over, step)]).toEqual([true, true]);
    if (level === undefined) expect(new Set(answers).size, "the answer turns").toBeGreaterThan(1);
    else expect(new Set(answers).size, "the answer is level").toBe(1);
  });

  test.each(threshold.editions ?? EDITION_NAMES)("%s", (edition) => {
    expect(values.map((value) => threshold.ask(value, edition)).join(" | ")).toBe(answers.join(" | "));
  });
});

test("no threshold stands twice", () => {
  const names = ALL_THRESHOLDS.map(({ name }) => name);
  expect(names.filter((name, index) => names.indexOf(name) !== index)).toEqual([]);
});
