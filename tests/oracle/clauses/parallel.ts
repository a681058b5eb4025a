import type { ConductorGroup } from "@landfast/rules";
import { ask, type Case, type Objection, reject } from "../case.js";
import { areaOf } from "../read-table.js";
import { ofDecimal } from "../scaled-integer.js";
import { loadOf, tableAmpacity } from "./ampacity.js";
import { COLUMNS, type Column, insulationColumn, lowestColumn } from "./temperature.js";

/**
 * 310.10(G), in the 2017 edition 310.10(H): conductors in parallel are 1/0 AWG or larger, and alike in length, metal, size,
 * insulation and manner of termination. Equipment grounds in parallel must be alike too, but may be smaller (250.122(F)).
 */
export function parallel(asked: Case): Objection[] {
  const { joint, basis } = asked;
  const { role, circuit } = joint;
  if (circuit === undefined || circuit.sets < 2 || role === "electrode-conductor") return [];
  const clause = basis.edition === "2017" ? "310.10(H)" : "310.10(G)";
  const objections: Objection[] = [];
  if (circuit.parallelLegsAlike !== true)
    objections.push(
      circuit.parallelLegsAlike === false
        ? reject(clause, "the legs are not alike")
        : ask(clause, "whether the legs are alike"),
    );
  if (role === "phase" || role === "neutral") {
    for (const group of joint.conductors) {
      const { size, duty } = group;
      if (duty === "run" && circuit.protection?.kind === "feeder-tap") continue;
      const area = areaOf(size);
      // 1/0 AWG is 105 600 circular mils, 53.5 mm2.
      if (area.system === "awg" ? area.cmil >= 105_600 : area.mm2Thousandths >= 53_500) continue;
      objections.push(...smallLeg(asked, group, clause));
    }
    const legs = new Set(joint.conductors.map(({ size, metal, insulation }) => `${size} ${metal} ${insulation}`));
    if (joint.function === "termination" && legs.size > 1)
      objections.push(reject(clause, "unlike legs in one terminal"));
  }
  return objections;
}

/**
 * Exceptions for legs below 1/0 AWG. No. 1, control power and 360 Hz and more: each leg carries the whole load, and the
 * device is within the ampacity of one. No. 2: neutrals of 2 and 1 AWG in an existing installation.
 */
function smallLeg(asked: Case, group: ConductorGroup, clause: string): Objection[] {
  const { joint, basis } = asked;
  const { circuit } = joint;
  const use = circuit?.smallLegs;
  const area = areaOf(group.size);
  if (circuit === undefined || use === undefined) return [reject(clause, `${group.size} in parallel`)];
  if (use === "existing-neutral")
    // 2 AWG is 66 360 circular mils.
    return joint.role === "neutral" && area.system === "awg" && area.cmil >= 66_360
      ? []
      : [reject(clause, `${group.size} is no neutral of 2 or 1 AWG`)];
  const load = loadOf(circuit);
  if (circuit.protection?.kind !== "device" || load === null) return [ask(clause, "load and device of small legs")];
  const needed = Math.max(load, ofDecimal(circuit.protection.ratingA) * 4);
  const own = insulationColumn(asked, group);
  if (own === "no-table") return [ask(clause, "what a lead carries by itself")];
  if (own === null || own === "unsuited") return [ask(clause, "insulation")];
  const columns: readonly Column[] = own === "unknown" ? COLUMNS : [own];
  const enough = columns.map((column) => {
    const lowest = lowestColumn(asked, group, column);
    const each = lowest === null ? null : tableAmpacity(basis.edition, group, lowest);
    return each !== null && ofDecimal(each) * 4 >= needed;
  });
  if (enough.every((holds) => holds)) return [];
  return enough.some((holds) => holds)
    ? [ask(clause, "the temperature rating of the insulation")]
    : [reject(clause, `${group.size} does not carry the whole load by itself`)];
}
