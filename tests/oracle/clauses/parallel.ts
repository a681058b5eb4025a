import { ask, type Case, type Objection, reject } from "../case.js";
import { areaOf } from "../read-table.js";

/**
 * 310.10(G), in the 2017 edition 310.10(H): conductors in parallel are 1/0 AWG or larger, and alike in length, metal, size,
 * insulation and manner of termination. Equipment grounds in parallel must be alike too, but may be smaller (250.122(F)).
 */
export function parallel({ joint, basis }: Case): Objection[] {
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
    for (const { size, duty } of joint.conductors) {
      if (duty === "run" && circuit.protection?.kind === "feeder-tap") continue;
      const area = areaOf(size);
      // 1/0 AWG is 105 600 circular mils, 53.5 mm2.
      if (area.system === "awg" ? area.cmil < 105_600 : area.mm2Thousandths < 53_500)
        objections.push(reject(clause, `${size} in parallel`));
    }
    const legs = new Set(joint.conductors.map(({ size, metal, insulation }) => `${size} ${metal} ${insulation}`));
    if (joint.function === "termination" && legs.size > 1)
      objections.push(reject(clause, "unlike legs in one terminal"));
  }
  return objections;
}
