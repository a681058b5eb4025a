/** What the lug and its pad are made of, thrown by dice of its own: the other facts of a joint do not move with it. */
import { PAD_METALS, PAD_PLATINGS } from "@landfast/rules";
import { Dice } from "./dice.js";
import type { Draft } from "./draft.js";

export function addPadFacts({ joint, connector }: Draft, number: number): void {
  const lugs = [connector, joint.equipment?.terminal].filter((part) => part?.mounting.kind === "pad");
  if (lugs.length === 0) return;
  const dice = new Dice(Math.imul(number + 1, 0x85ebca6b));
  for (const lug of lugs) {
    if (lug === undefined) continue;
    const bodyMetal = dice.weighted(
      [40, "copper"],
      [35, "aluminum"],
      [5, "bronze"],
      [4, "bimetal"],
      [3, "stainless steel"],
      [3, "pot metal"],
      [10, undefined],
    );
    if (bodyMetal !== undefined) lug.bodyMetal = bodyMetal;
    const plating = dice.weighted(
      [70, "tin"],
      [12, "none"],
      [4, "silver"],
      [4, "nickel"],
      [2, "bright dip"],
      [8, undefined],
    );
    if (plating !== undefined) lug.plating = plating;
  }
  if (joint.equipment === undefined || dice.percent(30)) return;
  const metal = dice.weighted([55, "copper" as const], [30, "aluminum" as const], [15, dice.pick(PAD_METALS)]);
  joint.equipment.padMetal = dice.percent(15) ? { metal } : { metal, plating: dice.pick(PAD_PLATINGS) };
}
