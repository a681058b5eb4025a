import { type Case, carriesLoad, type Objection, reject } from "../case.js";

/**
 * 230.46: splicing and tapping connectors on service conductors are marked for the line side. Not in 2017; in 2020 from the
 * first of January 2023 on; in 2023 always.
 */
export function serviceMark(asked: Case): Objection[] {
  const { joint, connector, basis } = asked;
  if (joint.function === "termination" || !carriesLoad(asked) || joint.circuit?.protection?.kind !== "service")
    return [];
  if (basis.edition === "2017") return [];
  if (basis.edition === "2020") {
    if (basis.installedOn === undefined) throw new Error("the date must be settled first");
    if (basis.installedOn < "2023-01-01") return [];
  }
  return connector.lineSide === "marked" ? [] : [reject("230.46", "no mark for the line side")];
}
