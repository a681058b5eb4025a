import { ask, type Case, carriesLoad, type Objection, reject } from "../case.js";

/** 110.3(B): a part is used up to the voltage it is marked for. An uninsulated part needs no mark. */
export function voltage(asked: Case): Objection[] {
  const { joint, connector } = asked;
  if (!carriesLoad(asked)) return [];
  const clause = "110.3(B) voltage";
  const rated = connector.voltageV;
  if (typeof rated !== "number")
    return connector.insulated ? [ask(clause, "voltage rating of the insulated part")] : [];
  const system = joint.circuit?.voltageV;
  if (system === undefined) return [ask(clause, "voltage of the system")];
  return rated < system ? [reject(clause, `${rated} V part on ${system} V`)] : [];
}

/**
 * 110.3(B), 110.28: a part that is used once is not used again.
 * A joint made again with such a part leaves open whether the part is new.
 */
export function reuse({ joint, connector }: Case): Objection[] {
  if (connector.reusable) return [];
  if (joint.partState === "reused") return [reject("110.3(B) reuse", "a one-time part is used again")];
  return joint.rework === true && joint.partState === undefined
    ? [ask("110.3(B) reuse", "whether the part is new")]
    : [];
}

/** Common practice behind 110.3(B): a tool turns the screw on a conductor once; only a joint made anew gets another turn. */
export function secondTurn({ joint, connector }: Case): Objection[] {
  if (joint.tightenedBefore !== true || joint.rework === true) return [];
  const turned = connector.screws.filter(({ drive }) => !["hand", "none"].includes(drive.kind));
  return turned.length > 0 ? [reject("110.3(B) second turn", "a screw that was tightened is tightened again")] : [];
}

/** 110.3(B): a press connector is listed with its tool and its die; no other pair makes the listed joint. */
export function toolAndDie({ joint, connector }: Case): Objection[] {
  const clause = "110.3(B) tool";
  const listed = connector.tooling;
  const chosen = joint.tooling;
  if (listed === undefined)
    return connector.construction === "compression" ? [ask(clause, "tool and die of the listing")] : [];
  if (chosen === undefined) return [];
  if (chosen.tool !== undefined && chosen.tool !== listed.tool) return [reject(clause, `tool ${chosen.tool}`)];
  if (chosen.die === undefined || chosen.die === listed.die) return [];
  return [listed.die === undefined ? ask(clause, "die of the listing") : reject(clause, `die ${chosen.die}`)];
}
