import { expect, test } from "vitest";
import { evaluate } from "./arithmetic.js";

// hand
test.each([
  ["50 x 0.58", 29],
  ["41.74 x 500 / 300", 69.56666666666666],
  ["2 + 3 x 4 - 1", 13],
  ["(1 / 3) x 3", 1],
  ["sqrt(3) x 2", 3.4641016151377544],
  ["2 ^ 3", 8],
] as const)("%s is %d", (text, value) => {
  expect(evaluate(text)).toBeCloseTo(value, 9);
});

test.each(["2 +", "2 times 3", "(2", "", "2 3"])("%s is refused", (text) => {
  expect(() => evaluate(text)).toThrow();
});
