import type { Verdict } from "@landfast/rules";
import type { ItemPrice } from "../prices/item-price.js";

/** Joints in one area or at one panel. */
export interface AreaCount {
  readonly area: string;
  readonly joints: number;
}

/** Equal joints: whatever one of them needs, all need. */
export interface JointClass {
  /** Unique in the problem. */
  readonly id: string;
  readonly joints: number;
  readonly marks: readonly string[];
  readonly areas: readonly AreaCount[];
  /** The earliest day any of them is needed, "2026-03-31". */
  readonly neededBy?: string;
  /**
   * Whether all of them get the same part. True unless stated: equal joints made alike have one torque and one tool,
   * and conductors in parallel have to be terminated in the same manner.
   */
  readonly alike?: boolean;
}

/** A part number that could be stocked. */
export interface StockItem {
  readonly partNumber: string;
  /** Parts in one pack; a part sold singly has 1. */
  readonly packQuantity: number;
  /** Absent: not known. It is then never taken as free. */
  readonly price?: ItemPrice;
  /** Parts in store. They cost nothing more. */
  readonly onHand?: number;
  /** Has to be stocked, whatever the plan makes of it: the owner asks for it. */
  readonly must?: boolean;
  /** Is not to be used. */
  readonly mustNot?: boolean;
}

/** A verdict on which a joint may be made. */
export type MakingVerdict = Extract<Verdict, "accept" | "accept-with-conditions">;

/** An item with which the rules accept a joint of a class. */
export interface Maker {
  readonly partNumber: string;
  readonly verdict: MakingVerdict;
  /** Parts that one joint takes; a whole number from 1 up. */
  readonly partsPerJoint: number;
  /** Electrician-hours for one joint made with it. Absent: not known. */
  readonly labourHours?: number;
}

/** Which items can make the joints of one class. */
export interface Feasible {
  readonly classId: string;
  readonly makers: readonly Maker[];
}

/** What there is to decide: plain data. Which item suits which joint is for the rules and settled beforehand. */
export interface StockProblem {
  readonly classes: readonly JointClass[];
  readonly items: readonly StockItem[];
  /** One entry for each class that any item can make. */
  readonly feasible: readonly Feasible[];
}

/** True where all joints of the class get the same part. */
export function isAlike(jointClass: JointClass): boolean {
  return jointClass.alike ?? true;
}
