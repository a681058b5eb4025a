/** Strands that were counted, thrown by dice of their own: the other facts of a joint do not move with them. */
import { Dice } from "./dice.js";
import type { Draft } from "./draft.js";

const COUNTS = [1, 7, 19, 37, 61, 49, 133, 259, 427, 665, 1050, 1330, 2107] as const;

export function addStrandFacts({ joint }: Draft, number: number): void {
  const dice = new Dice(Math.imul(number + 1, 0x27d4eb2f));
  for (const group of joint.conductors) {
    const counted = dice.percent(group.stranding === "unknown" ? 60 : 4);
    const strands = dice.weighted<number>([30, 19], [20, 7], [15, 37], [35, dice.pick(COUNTS)]);
    if (counted) group.strands = group.stranding === "solid" && dice.percent(80) ? 1 : strands;
  }
}
