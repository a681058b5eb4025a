/** Whether the finished joint can be reached, thrown by dice of its own: the other facts of a joint do not move with it. */
import { Dice } from "./dice.js";
import type { Draft } from "./draft.js";

export function addAccessFact({ joint }: Draft, number: number): void {
  if (joint.place === undefined) return;
  const dice = new Dice(Math.imul(number + 1, 0xc2b2ae35));
  // What lies in the earth or in concrete is hidden more often.
  const buried = joint.place.location === "direct-burial" || joint.place.location === "concrete";
  const grounds = joint.role === "electrode-conductor" || joint.role === "bonding";
  const accessible = dice.weighted<boolean | undefined>(
    [buried || grounds ? 25 : 3, false],
    [5, true],
    [buried || grounds ? 70 : 92, undefined],
  );
  if (accessible !== undefined) joint.place.accessible = accessible;
}
