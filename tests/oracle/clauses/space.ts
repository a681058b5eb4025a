import { ask, type Case, type Objection, reject } from "../case.js";
import { cell, cmilOf, type Row, tableRows } from "../read-table.js";
import { ofArea, ofLength } from "../scaled-integer.js";
import { isBlock } from "./distribution-block.js";

const TABLES = {
  side: tableRows("nfpa70", "2023", "bending-side"),
  sideCompact: tableRows("nfpa70", "2023", "bending-side-compact"),
  opposite: tableRows("nfpa70", "2023", "bending-opposite"),
  oppositeCompact: tableRows("nfpa70", "2023", "bending-opposite-compact"),
} as const;

function rowFor(rows: readonly Row[], cmil: number): Row | undefined {
  return rows.find((row) => (cmilOf(cell(row, "from")) ?? 0) <= cmil && cmil <= (cmilOf(cell(row, "to")) ?? 0));
}

/**
 * 312.6(B): the space between a terminal and the wall. Table (A) where the conductor leaves through another wall, Table (B)
 * where it leaves through the wall opposite its terminal; compact aluminum has its own sizes in both. Table (B) gives less
 * for removable and lay-in terminals of one wire.
 */
export function bendingSpace(asked: Case): Objection[] {
  const { joint } = asked;
  const bending = joint.equipment?.bending;
  if (bending === undefined || (joint.function !== "termination" && !isBlock(asked))) return [];
  const opposite = bending.entry === "opposite";
  const clause = opposite ? "312.6(B)" : "312.6(A)";
  const available = ofLength(bending.available);
  return joint.conductors.flatMap((group) => {
    const cmil = cmilOf(group.size);
    if (cmil === null) return [ask(clause, `${group.size} is no gauge size`)];
    const compact = group.stranding === "compact" && group.metal === "aluminum";
    const row = rowFor(TABLES[`${bending.entry}${compact ? "Compact" : ""}`], cmil);
    const printed = row?.[`wires${bending.wiresPerTerminal}`] ?? "";
    // No minimum for one wire of this size: none for more of them either.
    if (row?.["wires1"] === "not specified") return [];
    if (row === undefined || printed === "") return [ask(clause, `${group.size}, ${bending.wiresPerTerminal} wires`)];
    const reduction = opposite && bending.removableTerminal === true ? row[`reduction${bending.wiresPerTerminal}`] : "";
    const inches = Number(printed) - (reduction === "" || reduction === undefined ? 0 : Number(reduction));
    return available >= ofLength({ value: inches, unit: "in" }) ? [] : [reject(clause, `${inches} in are asked for`)];
  });
}

/**
 * 312.8(A): conductors fill 40 % of the wiring space of an enclosure at most, with splices and taps 75 %. 376.56(A): in a
 * wireway conductors, splices and taps fill 75 % at most.
 */
export function fill({ joint }: Case): Objection[] {
  const space = joint.equipment?.space;
  if (space === undefined) return [];
  const section = ofArea(space.section);
  const conductors = ofArea(space.conductors);
  const all = conductors + ofArea(space.splices);
  const objections: Objection[] = [];
  if (space.kind === "enclosure" && conductors * 5 > section * 2)
    objections.push(reject("312.8", "conductors fill more than 40 %"));
  if (all * 4 > section * 3)
    objections.push(
      reject(space.kind === "enclosure" ? "312.8" : "376.56", "conductors and splices fill more than 75 %"),
    );
  return objections;
}
