/** Which joints may be out of reach once the building is finished: what the code names, and nothing else. */
import type { Citation } from "./citation.js";
import type { ConnectorFamily, Electrode } from "./connector.js";
import type { Edition } from "./edition.js";
import type { Bonding, EquipmentKind } from "./joint.js";
import type { AskedFact } from "./joint-load.js";
import type { JointSubject } from "./rule.js";

/**
 * "irreversible-splice": of an electrode conductor, pressed or welded. "buried-splice": listed for the earth and lying in it
 * without a box. "buried-electrode": a connection in the earth or in concrete to an electrode there. "fireproofed-steel": a
 * pressed or welded end on structural steel behind its fireproofing.
 */
export type HidingAllowed = "irreversible-splice" | "buried-splice" | "buried-electrode" | "fireproofed-steel";

export type Hiding =
  | { readonly kind: "allowed"; readonly as: HidingAllowed }
  | { readonly kind: "refused" }
  | ({ readonly kind: "open" } & AskedFact);

/**
 * Whether the joint may be hidden.
 *
 * NFPA 70 (2017, 2020, 2023), in our words: 300.15, splices, taps and terminations lie in a box or the like, and 314.29, the box
 * stays accessible without taking off part of the building or digging; 300.5(E), conductors buried directly are spliced
 * without a box by a means listed for it. 250.68(A), what ends a conductor on an electrode stays accessible, except in
 * the earth or in concrete (Exception 1), and except for pressed or welded ends on fireproofed structural metal (2).
 * 250.64(C): an electrode conductor is joined by what cannot be undone, which needs no tending. 250.104: on pipes without
 * exception; on structural metal as by Exception 2.
 */
export function hidingAllowed(subject: JointSubject): Hiding {
  return subject.joint.function === "termination" ? ofTermination(subject) : ofSplice(subject);
}

/** The clause that keeps this joint accessible. */
export function accessClause({ joint, connector }: JointSubject, { clauses }: Edition): Citation {
  const kind = joint.equipment?.kind;
  if (joint.function === "termination" && (joint.role === "electrode-conductor" || joint.role === "bonding")) {
    const bonding = joint.grounding?.bonding;
    if (joint.role === "bonding") {
      if (bonding === "water-pipe") return clauses.waterPipeBonding;
      if (bonding === "other-pipe") return clauses.otherPipeBonding;
      if (bonding === "structural-metal") return clauses.structuralMetalBonding;
    }
    if (kind === "electrode" || isClamp(connector.family)) return clauses.accessibleElectrodes;
  }
  return kind !== undefined && BOXES.includes(kind) ? clauses.accessibleBoxes : clauses.boxAtEachJoint;
}

const REFUSED: Hiding = Object.freeze({ kind: "refused" });
const IRREVERSIBLE_SPLICE: Hiding = Object.freeze({ kind: "allowed", as: "irreversible-splice" });
const BURIED_SPLICE: Hiding = Object.freeze({ kind: "allowed", as: "buried-splice" });
const BURIED_ELECTRODE: Hiding = Object.freeze({ kind: "allowed", as: "buried-electrode" });
const FIREPROOFED_STEEL: Hiding = Object.freeze({ kind: "allowed", as: "fireproofed-steel" });

const BOXES: readonly EquipmentKind[] = ["box", "handhole", "pedestal", "wireway"];
/** Where a joint in the earth has no box around it. */
const WITHOUT_BOX: readonly EquipmentKind[] = ["trench", "electrode", "other"];
/** Where an electrode may be, beside the electrode itself. */
const BESIDE_ELECTRODE: readonly EquipmentKind[] = ["box", "handhole", "trench", "pedestal", "other"];
const IN_EARTH: readonly Electrode[] = [
  "copper-bonded-rod",
  "galvanized-rod",
  "stainless-rod",
  "concrete-encased-rebar",
  "water-pipe",
  "ground-ring",
  "plate",
];
/** Jumpers that end on an electrode as an electrode conductor does. */
const TO_ELECTRODES: readonly Bonding[] = ["electrode-system", "by-design"];

function ofSplice({ joint, connector, origin }: JointSubject): Hiding {
  if (joint.role === "electrode-conductor" && isIrreversible(connector)) return IRREVERSIBLE_SPLICE;
  const kind = joint.equipment?.kind;
  if (joint.place?.location !== "direct-burial" || (kind !== undefined && !WITHOUT_BOX.includes(kind))) return REFUSED;
  const { places } = connector;
  if (places === undefined || places === "unmarked" || places.length === 0)
    return {
      kind: "open",
      path: `${origin}/places`,
      because:
        "A splice may be out of reach in the earth if it is listed for direct burial; whether it is, is not known.",
    };
  return places.includes("direct-burial") ? BURIED_SPLICE : REFUSED;
}

function ofTermination(subject: JointSubject): Hiding {
  const { joint, connector } = subject;
  const { role } = joint;
  if (role !== "electrode-conductor" && role !== "bonding") return REFUSED;
  const bonding = joint.grounding?.bonding;
  const steel = role === "bonding" && bonding === "structural-metal";
  if (role === "bonding" && bonding !== undefined && !steel && !TO_ELECTRODES.includes(bonding)) return REFUSED;
  const onElectrode = endsOnElectrode(subject);
  if (onElectrode === false) return REFUSED;

  const electrode = steel ? "building-steel" : joint.grounding?.electrode;
  const location = joint.place?.location;
  const buried = location === "direct-burial" || location === "concrete";
  const irreversible = isIrreversible(connector);
  let allowed = REFUSED;
  if (electrode === "building-steel") allowed = irreversible ? FIREPROOFED_STEEL : REFUSED;
  else if (electrode !== undefined) allowed = buried && IN_EARTH.includes(electrode) ? BURIED_ELECTRODE : REFUSED;
  else if (buried || irreversible) return ELECTRODE_OPEN;
  if (allowed === REFUSED) return REFUSED;
  if (role === "bonding" && bonding === undefined) return BONDING_OPEN;
  return onElectrode === undefined ? KIND_OPEN : allowed;
}

const ELECTRODE_OPEN: Hiding = Object.freeze({
  kind: "open",
  path: "joint/grounding/electrode",
  because: "Whether the connection may be out of reach depends on the electrode, which is not given.",
});
const BONDING_OPEN: Hiding = Object.freeze({
  kind: "open",
  path: "joint/grounding/bonding",
  because: "Whether the connection may be out of reach depends on what the jumper bonds, which is not given.",
});
const KIND_OPEN: Hiding = Object.freeze({
  kind: "open",
  path: "joint/equipment/kind",
  because: "Only a connection at the electrode itself may be out of reach; where the conductor ends is not given.",
});

/** Undefined where nothing says it. */
function endsOnElectrode({ joint, connector }: JointSubject): boolean | undefined {
  const kind = joint.equipment?.kind;
  if (kind === "electrode") return true;
  const made = isClamp(connector.family) || (connector.grounding?.electrodes.length ?? 0) > 0;
  if (kind === undefined) return made ? true : undefined;
  return made && BESIDE_ELECTRODE.includes(kind);
}

function isClamp(family: ConnectorFamily): boolean {
  return family === "rod-clamp" || family === "pipe-clamp" || family === "rebar-clamp";
}

function isIrreversible({ construction }: JointSubject["connector"]): boolean {
  return construction === "compression" || construction === "weld";
}
