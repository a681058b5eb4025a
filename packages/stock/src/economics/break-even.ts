import { compareExact, type Exact, reduced } from "@landfast/rules";
import { minus, over, roundedText, ZERO } from "../money/decimal.js";
import type { BreakEven } from "./economics.js";

/** What is paid for each joint, and once. */
export interface CostLine {
  readonly name: string;
  readonly each: Exact;
  readonly once: Exact;
}

/**
 * From how many joints on which way is cheaper. Two straight lines of cost: once + joints x each. They cross at
 *   joints = (once of second - once of first) / (each of first - each of second),
 * which is a break-even only where it is above zero.
 * Worked: first 20 a joint and nothing once, second 12 a joint and 1000 once: 1000 / 8 = 125 joints; the second is
 * cheaper from 126 on.
 */
export function breakEven(first: CostLine, second: CostLine): BreakEven {
  const savedEach = minus(first.each, second.each);
  const paidOnce = minus(second.once, first.once);
  const [each, once] = [signOf(savedEach), signOf(paidOnce)];
  if (each === 0 && once === 0) return { kind: "same", because: "both cost the same for each joint and once" };
  // For no joints at all nothing is made: only counts from one up are compared.
  if (each >= 0 && once <= 0) return always(second, first, each, once);
  if (each <= 0 && once >= 0) return always(first, second, each, once);
  const joints = reduced(over(paidOnce, savedEach));
  // Where the second saves on each joint it wins above the crossing, else below.
  const [below, above] = each > 0 ? [first.name, second.name] : [second.name, first.name];
  const decimal = roundedText(joints, 6, "half-up");
  const cheaperFrom = (joints.numerator / joints.denominator + 1n).toString();
  return {
    kind: "crosses",
    joints: { numerator: joints.numerator.toString(), denominator: joints.denominator.toString(), decimal },
    cheaperBelow: below,
    cheaperAbove: above,
    cheaperFrom,
    because: `what is paid once differs as much as ${decimal} joints save; from ${cheaperFrom} joints on ${above} costs less`,
  };
}

function always(cheaper: CostLine, dearer: CostLine, each: number, once: number): BreakEven {
  const words = [
    each === 0 ? "the same for each joint" : "less for each joint",
    once === 0 ? "the same once" : "less once",
  ];
  return {
    kind: "always",
    cheaper: cheaper.name,
    because: `${cheaper.name} against ${dearer.name}: ${words.join(", ")}`,
  };
}

function signOf(value: Exact): number {
  return compareExact(value, ZERO);
}
