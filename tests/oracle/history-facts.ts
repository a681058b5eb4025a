/** Whether the screw was tightened before, thrown by dice of its own: the other facts of a joint do not move with it. */
import { Dice } from "./dice.js";
import type { Draft } from "./draft.js";

export function addHistoryFact({ joint }: Draft, number: number): void {
  const dice = new Dice(Math.imul(number + 1, 0x85ebca6b));
  const before = dice.weighted<boolean | undefined>([3, true], [2, false], [95, undefined]);
  if (before !== undefined) joint.tightenedBefore = before;
}
