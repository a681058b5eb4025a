import { ask, type Case, conductorCount, locationOf, type Objection, reject } from "../case.js";

const CLAMPS: readonly string[] = ["rod-clamp", "pipe-clamp", "rebar-clamp"];

/**
 * 250.70: an electrode is reached by a weld, or by a lug, connector or clamp listed for grounding; a clamp is listed for the
 * electrode's kind, and takes one conductor unless listed for more.
 */
export function electrodeConnection({ joint, connector }: Case): Objection[] {
  if (joint.function !== "termination" || (joint.role !== "electrode-conductor" && joint.role !== "bonding")) return [];
  const clause = "250.70";
  const clamp = CLAMPS.includes(connector.family) || (connector.grounding?.electrodes.length ?? 0) > 0;
  const weld = connector.construction === "weld";
  if (!clamp && joint.equipment?.kind !== "electrode") return [];
  const { grounding } = connector;
  const objections: Objection[] = [];
  if (!weld) {
    if (grounding === undefined) return [ask(clause, "whether the part is listed for grounding")];
    if (!grounding.listed) objections.push(reject(clause, "the part is not listed for grounding"));
    const electrode = joint.grounding?.electrode;
    if (clamp) {
      if (electrode === undefined) throw new Error("the electrode must be settled first");
      if (!grounding.electrodes.includes(electrode)) objections.push(reject(clause, `not listed for a ${electrode}`));
    }
  }
  const most = grounding?.conductorsPerClamp;
  const count = conductorCount(joint);
  if (clamp && count > 1) {
    if (most === undefined) objections.push(ask(clause, "how many conductors the clamp is listed for"));
    else if (count > (most === "unmarked" ? 1 : most))
      objections.push(reject(clause, `${count} conductors in one clamp`));
  }
  return objections;
}

/**
 * 250.64(C): an electrode conductor is spliced only by irreversible compression connectors listed for grounding or by
 * exothermic welding. 250.64(D)(1): a tap to it takes a weld or any connector listed for grounding.
 */
export function electrodeSplice({ joint, connector }: Case): Objection[] {
  if (joint.role !== "electrode-conductor" || joint.function === "termination") return [];
  if (connector.construction === "weld") return [];
  const splice = joint.function === "splice";
  const clause = splice ? "250.64(C)" : "250.64(D)";
  if (splice && connector.construction !== "compression") return [reject(clause, "the splice can be undone")];
  if (connector.grounding?.listed === false) return [reject(clause, "the part is not listed for grounding")];
  const reversible = connector.construction !== "compression";
  const runs = joint.conductors.filter(({ duty }) => duty === "run");
  // The common conductor stays without a splice: cut, it is joined again by what cannot be undone.
  if (reversible && runs.some(({ uncut }) => uncut === false)) return [reject(clause, "the common conductor is cut")];
  if (connector.grounding === undefined) return [ask(clause, "whether the part is listed for grounding")];
  if (reversible && !runs.every(({ uncut }) => uncut === true)) return [ask(clause, "whether the common one is uncut")];
  return [];
}

/**
 * 250.64(A): a bare electrode conductor of aluminum or copper-clad aluminum does not lie in the earth or in concrete, and
 * none ends there.
 */
export function electrodeAluminum(asked: Case): Objection[] {
  const { joint } = asked;
  const location = locationOf(asked);
  if (joint.role !== "electrode-conductor" || (location !== "direct-burial" && location !== "concrete")) return [];
  const touches = joint.conductors.some(
    ({ metal, insulation }) => metal !== "copper" && (joint.function === "termination" || insulation === "bare"),
  );
  return touches ? [reject("250.64(A)", "aluminum in the earth or in concrete")] : [];
}
