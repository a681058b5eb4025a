/**
 * What more than one conductor in an opening must keep to. The landing of conductors and the rules of the openings both
 * ask here.
 */
import type { ConductorGroup } from "../../core/conductor.js";
import { sizeOf } from "../../core/conductor-size.js";
import type { Connector, Opening } from "../../core/connector.js";
import type { Joint } from "../../core/joint.js";
import { type Fit, positionIn } from "../../core/opening-fit.js";

/** Equal conductors that lie in one opening. */
export interface OpeningMember {
  readonly conductor: ConductorGroup;
  readonly count: number;
}

/** Conductors an opening takes: 1 where it is unmarked (110.14(A)), undefined where that is not known. */
export function conductorsMaxOf(opening: Opening): number | undefined {
  return opening.conductorsMax === "unmarked" ? 1 : opening.conductorsMax;
}

/** May so many conductors lie in the opening? One always may; listed combinations set their own count. */
export function countFit(opening: Opening, count: number): Fit {
  if (count <= 1) return "fits";
  if (opening.combinations !== undefined && typeof opening.conductorsMax !== "number") return "fits";
  const max = conductorsMaxOf(opening);
  if (max === undefined) return "unknown";
  return count <= max ? "fits" : "refused";
}

/** What stands against conductors sharing an opening, if anything. */
export type ShareFit =
  | "fits"
  | "unlike-sizes"
  | "unlike-metals"
  | "metal-not-listed"
  | "size-not-listed"
  /** The mark limits sizes of the other series (AWG against mm2). */
  | "size-not-comparable"
  /** The conductors differ and it is not known whether they may. */
  | "sharing-not-known";

/** May these conductors share the opening? Only what differs between them, or a limit marked for sharing, can stand against it. */
export function shareFit(opening: Opening, members: readonly OpeningMember[], count: number): ShareFit {
  if (count <= 1) return "fits";
  const { shared } = opening;
  const sameSize = areAlike(members, "size");
  const sameMetal = areAlike(members, "metal");
  if (shared === undefined)
    return (sameSize && sameMetal) || opening.combinations !== undefined ? "fits" : "sharing-not-known";
  if (shared.sameSize && !sameSize) return "unlike-sizes";
  if (shared.sameMetal && !sameMetal) return "unlike-metals";
  if (shared.metals !== undefined)
    for (const { conductor } of members) if (!shared.metals.includes(conductor.metal)) return "metal-not-listed";
  return sizeLimitFit(opening, members);
}

/** Does 408.41 keep this joint's conductors apart? Conductors in parallel of one circuit may share a terminal marked for it. */
export function standAlone(joint: Joint): boolean {
  return (
    joint.role === "neutral" &&
    joint.function === "termination" &&
    joint.equipment?.kind === "panelboard" &&
    !((joint.circuit?.sets ?? 1) > 1)
  );
}

/** True where only listed combinations may lie in the opening, be it of one conductor. */
export function needsListedCombination(connector: Connector, opening: Opening): boolean {
  return connector.construction === "twist-on" || opening.combinations !== undefined;
}

/** Is the multiset of sizes one of the opening's listed combinations? Order never matters. */
export function combinationFit(opening: Opening, members: readonly OpeningMember[]): Fit {
  if (opening.combinations === undefined) return "unknown";
  for (const combination of opening.combinations) {
    let remaining = 0;
    for (const part of combination) remaining += part.count;
    for (const { count } of members) remaining -= count;
    if (
      remaining === 0 &&
      members.every(({ conductor }) => countOf(members, conductor.size) === countIn(combination, conductor.size))
    )
      return "fits";
  }
  return "refused";
}

function countOf(members: readonly OpeningMember[], size: string): number {
  let total = 0;
  for (const { conductor, count } of members) if (conductor.size === size) total += count;
  return total;
}

function countIn(combination: readonly { readonly size: string; readonly count: number }[], size: string): number {
  let total = 0;
  for (const part of combination) if (part.size === size) total += part.count;
  return total;
}

function sizeLimitFit({ shared }: Opening, members: readonly OpeningMember[]): ShareFit {
  if (shared?.from === undefined && shared?.to === undefined) return "fits";
  const limits = {
    from: shared.from ?? shared.to ?? "",
    to: shared.to ?? shared.from ?? "",
    strandings: "unmarked",
  } as const;
  let comparable = true;
  for (const { conductor } of members) {
    const position = positionIn(limits, sizeOf(conductor.size));
    if (position === "other-series") comparable = false;
    else if (position === "below" && shared.from !== undefined) return "size-not-listed";
    else if (position === "above" && shared.to !== undefined) return "size-not-listed";
  }
  return comparable ? "fits" : "size-not-comparable";
}

function areAlike(members: readonly OpeningMember[], fact: "size" | "metal"): boolean {
  const first = members[0]?.conductor[fact];
  return members.every(({ conductor }) => conductor[fact] === first);
}
