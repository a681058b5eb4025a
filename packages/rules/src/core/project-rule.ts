/**
 * Rules that a project makes for itself, beyond the code: they may refuse what the code allows, and allow nothing that
 * it refuses.
 */
import type { ConductorMetal, ConductorRole } from "./conductor.js";
import type { ConnectorFamily, Construction } from "./connector.js";
import type { EquipmentKind } from "./equipment-kind.js";
import type { JointFunction } from "./joint-function.js";
import type { Location } from "./location.js";
import type { Temperature } from "./quantity.js";

/** The lowest temperature that a project may cap terminations at: the ampacity tables begin there. Degrees Celsius. */
export const LOWEST_CAP_C = 60;

/** Which joints a rule is for: those that meet every line given. Without a line it is for all of them. */
export interface ProjectScope {
  readonly functions?: readonly JointFunction[];
  readonly roles?: readonly ConductorRole[];
  /** As the joints name them. */
  readonly areas?: readonly string[];
  readonly equipmentKinds?: readonly EquipmentKind[];
  readonly locations?: readonly Location[];
  /** Joints with a conductor of this size or larger, by area. */
  readonly fromSize?: string;
}

/** What a rule demands. */
export type ProjectDemand =
  | { readonly kind: "forbid-family"; readonly families: readonly ConnectorFamily[] }
  | { readonly kind: "forbid-construction"; readonly constructions: readonly Construction[] }
  | { readonly kind: "forbid-part"; readonly partNumbers: readonly string[] }
  /** Of the conductors. */
  | { readonly kind: "forbid-metal"; readonly metals: readonly ConductorMetal[] }
  | { readonly kind: "require-family"; readonly families: readonly ConnectorFamily[] }
  | { readonly kind: "require-construction"; readonly constructions: readonly Construction[] }
  /** A lug whose tongue has as many holes or more. */
  | { readonly kind: "require-holes"; readonly holes: number }
  /** The body's metal and its plating, each one of the words given; capitals make no difference. */
  | {
      readonly kind: "require-body";
      readonly bodyMetals?: readonly string[];
      readonly platings?: readonly string[];
    }
  /** Load is carried as if no termination stood more than this. */
  | { readonly kind: "cap-terminal-temperature"; readonly temperature: Temperature }
  | { readonly kind: "cap-conductors-per-opening"; readonly conductors: number }
  /** Parts of these families take no conductor above the size. */
  | { readonly kind: "cap-size"; readonly families: readonly ConnectorFamily[]; readonly size: string };

export type ProjectRuleKind = ProjectDemand["kind"];
export const PROJECT_RULE_KINDS: readonly ProjectRuleKind[] = [
  "forbid-family",
  "forbid-construction",
  "forbid-part",
  "forbid-metal",
  "require-family",
  "require-construction",
  "require-holes",
  "require-body",
  "cap-terminal-temperature",
  "cap-conductors-per-opening",
  "cap-size",
];

export interface ProjectRule {
  /** Unique in its project: "R-3". */
  readonly id: string;
  /** Where the project says so: "electrical specification, 3.2". */
  readonly source: string;
  readonly scope?: ProjectScope;
  readonly demand: ProjectDemand;
}

/** A rule whose scope the joint meets, or may meet. */
export interface HeldProjectRule {
  readonly id: string;
  readonly source: string;
  /** The scope in words: "terminations of phase conductors". */
  readonly within: string;
  readonly demand: ProjectDemand;
  /** The fact that would say whether the joint is in scope. */
  readonly openScope?: string;
}
