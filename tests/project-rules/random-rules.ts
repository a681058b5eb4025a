/** Rules of a project without end, half of them about facts that the joint has, so that both sides are met. */
import {
  CONDUCTOR_METALS,
  CONDUCTOR_ROLES,
  CONNECTOR_FAMILIES,
  CONSTRUCTIONS,
  EQUIPMENT_KINDS,
  JOINT_FUNCTIONS,
  LOCATIONS,
  PROJECT_RULE_KINDS,
  type ProjectDemand,
  type ProjectRule,
  type ProjectScope,
} from "@landfast/rules";
import type { Dice } from "../oracle/dice.js";
import type { Generated } from "../oracle/generate.js";

const SIZES = ["14 AWG", "8 AWG", "4 AWG", "1/0 AWG", "4/0 AWG", "350 kcmil", "500 kcmil", "35 mm2"] as const;

export function randomRule(dice: Dice, asked: Generated, id: string): ProjectRule {
  const scope = dice.percent(60) ? randomScope(dice, asked) : undefined;
  return { id, source: "electrical specification", demand: randomDemand(dice, asked), ...(scope && { scope }) };
}

/** A few of the words, the joint's own among them half of the time. */
function some<Word>(dice: Dice, words: readonly Word[], own: Word | undefined): readonly Word[] {
  const picked = new Set(Array.from({ length: 1 + dice.int(3) }, () => dice.pick(words)));
  if (own !== undefined && dice.percent(50)) picked.add(own);
  return [...picked];
}

function randomScope(dice: Dice, { joint }: Generated): ProjectScope {
  const size = dice.percent(50) ? joint.conductors[0]?.size : undefined;
  return {
    ...(dice.percent(40) && { functions: some(dice, JOINT_FUNCTIONS, joint.function) }),
    ...(dice.percent(40) && { roles: some(dice, CONDUCTOR_ROLES, joint.role) }),
    ...(dice.percent(15) && { areas: some(dice, ["roof", "basement", "hall"], joint.area) }),
    ...(dice.percent(25) && { equipmentKinds: some(dice, EQUIPMENT_KINDS, joint.equipment?.kind) }),
    ...(dice.percent(25) && { locations: some(dice, LOCATIONS, joint.place?.location) }),
    ...(dice.percent(30) && { fromSize: size ?? dice.pick(SIZES) }),
  };
}

function randomDemand(dice: Dice, { joint, connector }: Generated): ProjectDemand {
  const kind = dice.pick(PROJECT_RULE_KINDS);
  switch (kind) {
    case "forbid-family":
    case "require-family":
      return { kind, families: some(dice, CONNECTOR_FAMILIES, connector.family) };
    case "forbid-construction":
    case "require-construction":
      return { kind, constructions: some(dice, CONSTRUCTIONS, connector.construction) };
    case "forbid-part":
      return { kind, partNumbers: some(dice, ["C-1", "C-2"], connector.partNumber) };
    case "forbid-metal":
      return { kind, metals: some(dice, CONDUCTOR_METALS, joint.conductors[0]?.metal) };
    case "require-holes":
      return { kind, holes: 1 + dice.int(3) };
    case "require-body": {
      const bodyMetals = some(dice, ["copper", "Aluminum", "bronze"], connector.bodyMetal);
      const platings = some(dice, ["Tin", "silver"], connector.plating);
      return dice.weighted<ProjectDemand>(
        [1, { kind, bodyMetals }],
        [1, { kind, platings }],
        [1, { kind, bodyMetals, platings }],
      );
    }
    case "cap-terminal-temperature":
      return {
        kind,
        temperature: dice.pick([
          { value: 60, unit: "Cel" },
          { value: 75, unit: "Cel" },
          { value: 167, unit: "degF" },
          { value: 166, unit: "degF" },
          { value: 90, unit: "Cel" },
        ] as const),
      };
    case "cap-conductors-per-opening":
      return { kind, conductors: 1 + dice.int(3) };
    case "cap-size":
      return {
        kind,
        families: some(dice, CONNECTOR_FAMILIES, connector.family),
        size: (dice.percent(50) ? joint.conductors[0]?.size : undefined) ?? dice.pick(SIZES),
      };
  }
}
