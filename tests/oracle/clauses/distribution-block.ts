import { ask, type Case, type Objection, reject } from "../case.js";

export const isBlock = ({ connector }: Pick<Case, "connector">): boolean =>
  connector.family === "power-distribution-block";

/**
 * 376.56(B), 314.28(E): a power distribution block in a wireway or a box has no live parts that lie open with the cover off;
 * the box is larger than 100 cubic inches.
 */
export function distributionBlock(asked: Case): Objection[] {
  const { joint, connector } = asked;
  if (!isBlock(asked)) return [];
  const kind = joint.equipment?.kind;
  if (kind === undefined) return [ask("376.56(B)", "where the block stands")];
  if (kind !== "wireway" && kind !== "box") return [];
  const clause = kind === "wireway" ? "376.56(B)" : "314.28(E)";
  const objections: Objection[] = [];
  if (!connector.insulated && connector.coverPart === undefined)
    objections.push(reject(clause, "live parts of the block lie open"));
  if (kind === "wireway") return objections;
  const volume = joint.equipment?.boxVolumeIn3;
  if (volume === undefined) objections.push(ask(clause, "the volume of the box"));
  else if (volume <= 100) objections.push(reject(clause, `a box of ${volume} cubic inches`));
  return objections;
}
