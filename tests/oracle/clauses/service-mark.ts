import { type Case, carriesLoad, type Objection, reject } from "../case.js";
import { isBlock } from "./distribution-block.js";

/**
 * 230.46: splicing and tapping connectors on service conductors are marked for the line side. Not in 2017; in 2020 from the
 * first of January 2023 on; in 2023 always. Distribution blocks: in wireways under every edition (376.56(B)(1)), in boxes
 * under 2017 (314.28(E)(1)), everywhere from 2020 on.
 */
export function serviceMark(asked: Case): Objection[] {
  const { joint, connector, basis } = asked;
  if (!carriesLoad(asked) || joint.circuit?.protection?.kind !== "service") return [];
  const refused = connector.lineSide === "marked" ? [] : [reject("230.46", "no mark for the line side")];
  if (isBlock(asked)) {
    const kind = joint.equipment?.kind;
    return basis.edition !== "2017" || kind === "wireway" || kind === "box" ? refused : [];
  }
  if (joint.function === "termination" || basis.edition === "2017") return [];
  if (basis.edition === "2020") {
    if (basis.installedOn === undefined) throw new Error("the date must be settled first");
    if (basis.installedOn < "2023-01-01") return [];
  }
  return refused;
}
