import { ask, type Case, type Objection, reject } from "../case.js";

const CLAUSE = "314.29";

/** What an exception says of a hidden joint: it covers it, it does not, or it would if a fact were known. */
type Says = "covers" | "no" | { readonly open: string };

/** 300.5(E): conductors laid straight in the earth are spliced there without a box, by a means listed for burial. */
function directBurial({ joint, connector }: Case): Says {
  const inBox = !["trench", "electrode", "other", undefined].includes(joint.equipment?.kind);
  if (joint.function === "termination" || joint.place?.location !== "direct-burial" || inBox) return "no";
  if (connector.places === undefined || connector.places === "unmarked" || connector.places.length === 0)
    return { open: "whether the splice is listed for direct burial" };
  return connector.places.includes("direct-burial") ? "covers" : "no";
}

/** 250.64(C): what joins an electrode conductor for good. */
function joinedForGood({ joint, connector }: Case): Says {
  const good = connector.construction === "weld" || connector.construction === "compression";
  return joint.function !== "termination" && joint.role === "electrode-conductor" && good ? "covers" : "no";
}

/** Does the conductor end at an electrode? Clamps and molds made for electrodes do, unless they sit inside equipment. */
function atElectrode({ joint, connector }: Case): "yes" | "no" | "perhaps" {
  const { equipment, role } = joint;
  if (joint.function !== "termination" || (role !== "electrode-conductor" && role !== "bonding")) return "no";
  if (equipment?.kind === "electrode") return "yes";
  const forElectrodes =
    connector.family.endsWith("-clamp") && connector.family !== "spring-clamp-splice"
      ? true
      : connector.grounding !== undefined && connector.grounding.electrodes.length > 0;
  if (equipment?.kind === undefined) return forElectrodes ? "yes" : "perhaps";
  const outside = ["box", "handhole", "trench", "pedestal", "other"].includes(equipment.kind);
  return forElectrodes && outside ? "yes" : "no";
}

/** 250.68(A) with its two exceptions; 250.104(A) and (B) have none, and (C) only the second. */
function electrodeException(asked: Case): Says {
  const where = atElectrode(asked);
  if (where === "no") return "no";
  const { joint, connector } = asked;
  const bonds = joint.role === "bonding" ? (joint.grounding?.bonding ?? "not given") : "electrode-system";
  const toSteel = bonds === "structural-metal";
  if (!toSteel && !["electrode-system", "by-design", "not given"].includes(bonds)) return "no";
  const electrode = toSteel ? "building-steel" : joint.grounding?.electrode;
  if (electrode === undefined) throw new Error("the electrode must be settled first");
  const pressedOrWelded = ["compression", "weld"].includes(connector.construction);
  const buried = ["direct-burial", "concrete"].includes(joint.place?.location ?? "");
  const excepted = electrode === "building-steel" ? pressedOrWelded : buried;
  if (!excepted) return "no";
  if (bonds === "not given") return { open: "what the jumper bonds" };
  return where === "yes" ? "covers" : { open: "whether it ends at the electrode" };
}

/**
 * 300.15, 314.29, 250.68(A): the joint can be reached without taking the building apart or digging. Where nothing is said of
 * that the joint is not judged by it.
 */
export function access(asked: Case): Objection[] {
  if (asked.joint.place?.accessible !== false) return [];
  const said = [directBurial(asked), joinedForGood(asked), electrodeException(asked)];
  if (said.includes("covers")) return [];
  const open = said.find((each) => typeof each === "object");
  return [open === undefined ? reject(CLAUSE, "a hidden joint") : ask(CLAUSE, open.open)];
}
