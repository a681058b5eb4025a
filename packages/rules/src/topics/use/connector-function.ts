import type { ConductorRole } from "../../core/conductor.js";
import type { Connector, ConnectorFamily, Electrode } from "../../core/connector.js";
import type { Edition } from "../../core/edition.js";
import type { CheckFinding, Duty } from "../../core/finding.js";
import { type JointSubject, NO_CONDITIONS, type Rule, settled } from "../../core/rule.js";
import { Worksheet } from "../../core/worksheet.js";

const ID = "connector-function";

const CLAMP_ROLES: readonly ConductorRole[] = Object.freeze(["electrode-conductor", "bonding"]);
const GROUND_ROLES: readonly ConductorRole[] = Object.freeze(["equipment-ground", "electrode-conductor", "bonding"]);
const NEUTRAL_ROLES: readonly ConductorRole[] = Object.freeze(["neutral", ...GROUND_ROLES]);

/** Parts that serve some conductors only. */
const ROLES: Partial<Record<ConnectorFamily, readonly ConductorRole[]>> = {
  "rod-clamp": CLAMP_ROLES,
  "pipe-clamp": CLAMP_ROLES,
  "rebar-clamp": CLAMP_ROLES,
  "ground-bar": GROUND_ROLES,
  "ground-bar-lug": GROUND_ROLES,
  "neutral-bar": NEUTRAL_ROLES,
};

const NO_ELECTRODES: readonly Electrode[] = Object.freeze([]);

const ROLE_WORDS: Readonly<Record<ConductorRole, string>> = {
  phase: "a phase conductor",
  neutral: "a neutral",
  "equipment-ground": "an equipment ground",
  "electrode-conductor": "a grounding electrode conductor",
  bonding: "a bonding jumper",
};

const FAMILY_WORDS: Partial<Record<ConnectorFamily, string>> = {
  "rod-clamp": "A rod clamp",
  "pipe-clamp": "A pipe clamp",
  "rebar-clamp": "A rebar clamp",
  "ground-bar": "A ground bar",
  "ground-bar-lug": "A lug of a ground bar",
  "neutral-bar": "A neutral bar",
  "exothermic-weld": "A weld to an electrode",
};

/**
 * Is the connector made for this kind of joint and for this conductor?
 *
 * NFPA 70 110.3(B) and 110.14 (2017, 2020, 2023), in our words: a connector is used for what it is listed
 * and identified: splice, tap or termination. Clamps for electrodes serve electrode conductors and bonding jumpers; a
 * weld to an electrode serves no phase conductor and no neutral; a ground bar holds no phase conductor and no neutral;
 * a neutral bar holds no phase conductor.
 * Worked: a lug listed for terminations in a splice: splice is not among its functions, so it is refused.
 * Silent: whether a neutral bar is where grounds belong too is written on the equipment, so a ground on a neutral bar
 * hangs on that.
 */
export const connectorFunction: Rule = {
  id: ID,
  title: "Kind of joint and of conductor the connector is for",
  clauses: ["instructions"],
  needs: ["joint/function", "joint/role", "connector/functions", "connector/family", "connector/grounding/electrodes"],
  cannotSee: "a part put to another use than the one stated",
  check(subject, edition) {
    const { joint, connector, origin } = subject;
    const cite = edition.clauses.instructions;
    const worksheet = new Worksheet();
    const made = worksheet.given("kind of joint", joint.function, "joint/function");
    const listed = worksheet.given("kinds of joint the connector is for", connector.functions, `${origin}/functions`);
    const functions = connector.functions.join(", ") || "none stated";
    if (!worksheet.compare("the connector is for this kind of joint", made, "in", listed, cite))
      return settled(ID, worksheet, {
        sentence: `The connector is for ${functions}, not for a ${joint.function}.`,
        cite,
        required: `a connector for a ${joint.function}`,
        offered: functions,
        fix: `a connector listed for a ${joint.function}`,
      });
    const roles = weldedElectrodes(connector).length > 0 ? GROUND_ROLES : ROLES[connector.family];
    if (roles !== undefined) return servesRole(subject, edition, worksheet, roles);
    return settled(ID, worksheet, {
      sentence: `The connector is for a ${joint.function}.`,
      cite,
      required: `a connector for a ${joint.function}`,
      offered: functions,
    });
  },
};

/** Electrodes that a mold welds a conductor to; none of molds that join conductors of any role, or of other parts. */
function weldedElectrodes({ family, grounding }: Connector): readonly Electrode[] {
  return (family === "exothermic-weld" ? grounding?.electrodes : undefined) ?? NO_ELECTRODES;
}

function servesRole(
  { joint, connector, origin }: JointSubject,
  edition: Edition,
  worksheet: Worksheet,
  roles: readonly ConductorRole[],
): CheckFinding {
  const cite = edition.clauses.instructions;
  const part = FAMILY_WORDS[connector.family] ?? "The connector";
  const role = worksheet.given("role of the conductors", joint.role, "joint/role");
  const family = worksheet.given("kind of part", connector.family, `${origin}/family`);
  const facts = [family];
  const electrodes = weldedElectrodes(connector);
  if (electrodes.length > 0)
    facts.push(worksheet.given("electrodes of the listing", electrodes, `${origin}/grounding/electrodes`));
  const served = worksheet.state("roles that such a part serves", roles, cite, undefined, facts);
  const holds = worksheet.compare("the part serves this conductor", role, "in", served, cite);
  const words = ROLE_WORDS[joint.role];
  const onNeutralBar = connector.family === "neutral-bar" && joint.role !== "neutral";
  return settled(ID, worksheet, {
    sentence: holds ? `${part} serves ${words}.` : `${part} is not for ${words}.`,
    cite,
    required: `a part for ${words}`,
    offered: part.toLowerCase(),
    fix: `a part made for ${words}`,
    conditions: onNeutralBar ? [groundsOnNeutralBar(edition)] : NO_CONDITIONS,
  });
}

function groundsOnNeutralBar({ clauses }: Edition): Duty {
  return {
    duty: "grounds-on-neutral-bar",
    sentence:
      "See on the equipment's label that this neutral bar is bonded to the enclosure and takes grounds: at the service disconnect or at the first disconnect of a separately derived system, nowhere else.",
    cite: clauses.instructions,
  };
}
