/**
 * What the rules of a project say of a joint, stated a second time from what is published about them: the words of the
 * request's schema and of README. Written without sight of the library's own rule.
 */
import type {
  ConductorGroup,
  Connector,
  Joint,
  ProjectDemand,
  ProjectRule,
  ProjectScope,
  Temperature,
} from "@landfast/rules";
import { loadOf, tableAmpacity } from "../oracle/clauses/ampacity.js";
import { areaOf } from "../oracle/read-table.js";

type EditionName = "2017" | "2020" | "2023";

export interface Asked {
  readonly joint: Joint;
  readonly connector: Connector;
  readonly edition: EditionName;
}

/** "kept": the rule is not for this joint, or the joint keeps it. "open": a fact is missing that could break it. */
export type Judgment = "kept" | "broken" | "open";

export function judgeRule(asked: Asked, rule: ProjectRule): Judgment {
  const scope = isMeant(asked.joint, rule.scope ?? {});
  if (scope === "no") return "kept";
  const demand = judgeDemand(asked, rule.demand);
  return scope === "perhaps" && demand === "broken" ? "open" : demand;
}

/** A joint meets a scope when it meets every line of it. A line on a fact that is not given is perhaps met. */
function isMeant(joint: Joint, scope: ProjectScope): "yes" | "no" | "perhaps" {
  const lines = [
    holds(scope.functions, joint.function),
    holds(scope.roles, joint.role),
    holds(scope.areas, joint.area),
    holds(scope.equipmentKinds, joint.equipment?.kind),
    holds(scope.locations, joint.place?.location),
    scope.fromSize === undefined || largestMm2(joint) >= mm2(scope.fromSize) ? "yes" : "no",
  ] as const;
  if (lines.includes("no")) return "no";
  return lines.includes("perhaps") ? "perhaps" : "yes";
}

function holds(words: readonly string[] | undefined, word: string | undefined): "yes" | "no" | "perhaps" {
  if (words === undefined) return "yes";
  if (word === undefined) return "perhaps";
  return words.includes(word) ? "yes" : "no";
}

function judgeDemand(asked: Asked, demand: ProjectDemand): Judgment {
  const { joint, connector } = asked;
  const broken = (is: boolean): Judgment => (is ? "broken" : "kept");
  switch (demand.kind) {
    case "forbid-family":
      return broken(demand.families.includes(connector.family));
    case "forbid-construction":
      return broken(demand.constructions.includes(connector.construction));
    case "forbid-part":
      return isForbidden(asked, demand.partNumbers);
    case "forbid-metal":
      return broken(joint.conductors.some(({ metal }) => demand.metals.includes(metal)));
    case "require-family":
      return broken(!demand.families.includes(connector.family));
    case "require-construction":
      return broken(!demand.constructions.includes(connector.construction));
    case "require-holes":
      return broken(connector.mounting.kind === "pad" && connector.mounting.pattern.holes < demand.holes);
    case "require-body":
      return worst([oneOf(demand.bodyMetals, connector.bodyMetal), oneOf(demand.platings, connector.plating)]);
    case "cap-terminal-temperature":
      return carriedAt(asked, demand.temperature);
    case "cap-conductors-per-opening":
      return broken(isTooFull(joint, connector, demand.conductors));
    case "cap-size":
      return broken(demand.families.includes(connector.family) && largestMm2(joint) > mm2(demand.size));
  }
}

/** The equipment's own terminal is no part; one that is described without its number may be any. */
function isForbidden({ joint, connector }: Asked, partNumbers: readonly string[]): Judgment {
  if (connector === joint.equipment?.terminal) return "kept";
  if (connector.partNumber === undefined) return "open";
  return partNumbers.includes(connector.partNumber) ? "broken" : "kept";
}

/** Capitals make no difference. A word that is not given may be any. */
function oneOf(words: readonly string[] | undefined, word: string | undefined): Judgment {
  if (words === undefined) return "kept";
  if (word === undefined) return "open";
  return words.some((one) => one.toLowerCase() === word.toLowerCase()) ? "kept" : "broken";
}

function worst(judgments: readonly Judgment[]): Judgment {
  if (judgments.includes("broken")) return "broken";
  return judgments.includes("open") ? "open" : "kept";
}

/** No termination stands more than the cap, so the load must be within the column that the cap reaches. */
function carriedAt({ joint, edition }: Asked, cap: Temperature): Judgment {
  const { circuit } = joint;
  if (joint.role !== "phase" && joint.role !== "neutral") return "kept";
  const celsius = cap.unit === "Cel" ? cap.value : ((cap.value - 32) * 5) / 9;
  const column = celsius >= 90 ? 90 : celsius >= 75 ? 75 : 60;
  const load = circuit === undefined ? null : loadOf(circuit);
  return worst(
    joint.conductors
      .filter((group) => isOfThisCircuit(joint, group))
      .map((group) => {
        const one = tableAmpacity(edition, group, column);
        if (one === null || load === null) return "open";
        // The load is in four-millionths of an ampere.
        return one * (circuit?.sets ?? 1) * 4_000_000 < load ? "broken" : "kept";
      }),
  );
}

/** In a tap the conductor that runs through belongs to another circuit; leads of equipment are no building wire. */
function isOfThisCircuit({ function: of }: Joint, { duty, insulation }: ConductorGroup): boolean {
  if (insulation === "equipment-lead" || insulation === "fixture-wire") return false;
  return of !== "tap" || duty === "tap";
}

/** So many conductors in so few openings leave one opening with more than the cap, however they are laid. */
function isTooFull({ conductors }: Joint, { openings }: Connector, cap: number): boolean {
  const total = conductors.reduce((sum, { count }) => sum + count, 0);
  const places = openings.reduce((sum, { count }) => sum + count, 0);
  return total > places * cap;
}

function largestMm2({ conductors }: Joint): number {
  return Math.max(0, ...conductors.map(({ size }) => mm2(size)));
}

/** A circular mil is pi / 4 of a square of a thousandth of an inch. */
function mm2(size: string): number {
  const area = areaOf(size);
  return area.system === "metric" ? area.mm2Thousandths / 1000 : (area.cmil * Math.PI * 0.0254 ** 2) / 4;
}
