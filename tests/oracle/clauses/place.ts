import { ask, type Case, locationOf, type Objection, reject } from "../case.js";

/** Places beyond dry ones that each listing serves. Equipment parts are for the inside of enclosures, dry or damp. */
const SERVES: Readonly<Record<string, readonly string[]>> = {
  equipment: ["damp"],
  dry: [],
  damp: ["damp"],
  wet: ["damp", "wet"],
  "direct-burial": ["damp", "wet", "direct-burial"],
  concrete: ["concrete"],
};

/**
 * 110.11, 110.14(B), 300.5(E), 314.30(C), 250.70: the listing covers the place. Burial and concrete must be listed; a
 * grounding part for burial serves in concrete too. A dry place asks for no listing of its own, so that a part without any
 * such mark is for dry places.
 */
export function place(asked: Case): Objection[] {
  const { connector } = asked;
  const location = locationOf(asked);
  const clause = "110.14(B) place";
  const listed = connector.places;
  if (location === "dry") return [];
  if (listed === undefined) return [ask(clause, "places of the listing")];
  if (listed === "unmarked") return [reject(clause, `an unmarked part in a ${location} place`)];
  if (listed.some((listing) => SERVES[listing]?.includes(location))) return [];
  if (location === "concrete" && connector.grounding?.listed === true && listed.includes("direct-burial")) return [];
  return [reject(clause, `${listed.join(", ")} part in a ${location} place`)];
}

/**
 * 110.11, 300.6: where something attacks metal, the part must be stated to withstand it. A statement about other agents is
 * none about this one; no statement at all is asked for.
 */
export function deterioratingAgent({ joint, connector }: Case): Objection[] {
  const agent = joint.place?.deterioratingAgent;
  if (agent === undefined || connector.withstands?.includes(agent) === true) return [];
  return connector.withstands === undefined
    ? [ask("110.11 agent", `whether the part withstands ${agent}`)]
    : [reject("110.11 agent", `a part stated for ${connector.withstands.join(", ")} beside ${agent}`)];
}
