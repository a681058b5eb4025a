import { parseSize, sizeOf } from "../../core/conductor-size.js";
import { listWords } from "../../core/conductor-words.js";
import type { Joint } from "../../core/joint.js";
import type { HeldProjectRule, ProjectRule, ProjectScope } from "../../core/project-rule.js";

/**
 * The joint with the project's rules that are for it, or may be; the same joint where there are none. Scope is settled
 * here, once, so that joints of two areas under one and the same rule are still equal to every rule of the joint.
 */
export function withProjectRules(joint: Joint, rules: readonly ProjectRule[] | undefined): Joint {
  if (rules === undefined || rules.length === 0) return joint;
  const held = rules.flatMap((rule) => heldBy(joint, rule));
  return held.length === 0 ? joint : { ...joint, projectRules: held };
}

function heldBy(joint: Joint, { id, source, scope = {}, demand }: ProjectRule): readonly HeldProjectRule[] {
  const lines = scopeLines(joint, scope);
  if (lines.some(({ meets }) => meets === false)) return [];
  const open = lines.find(({ meets }) => meets === "not-known");
  const within = scopeWords(scope);
  return [open === undefined ? { id, source, within, demand } : { id, source, within, demand, openScope: open.path }];
}

interface ScopeLine {
  readonly meets: boolean | "not-known";
  readonly path: string;
}

function scopeLines(joint: Joint, scope: ProjectScope): readonly ScopeLine[] {
  return [
    line(scope.functions, joint.function, "joint/function"),
    line(scope.roles, joint.role, "joint/role"),
    line(scope.areas, joint.area, "joint/area"),
    line(scope.equipmentKinds, joint.equipment?.kind, "joint/equipment/kind"),
    line(scope.locations, joint.place?.location, "joint/place/location"),
    { meets: scope.fromSize === undefined || hasSizeFrom(joint, scope.fromSize), path: "joint/conductors" },
  ];
}

function line<T>(words: readonly T[] | undefined, word: T | undefined, path: string): ScopeLine {
  if (words === undefined) return { meets: true, path };
  return { meets: word === undefined ? "not-known" : words.includes(word), path };
}

/** A size that cannot be read is left to the rules that read sizes. */
function hasSizeFrom({ conductors }: Joint, from: string): boolean {
  const least = sizeOf(from);
  return conductors.some(({ size }) => {
    const parsed = parseSize(size);
    return "problem" in parsed || parsed.areaKcmil >= least.areaKcmil;
  });
}

/** "every joint", "termination; phase; area Roof; from 1/0 AWG". */
function scopeWords(scope: ProjectScope): string {
  const words = [
    ...wordsOf(scope.functions, ""),
    ...wordsOf(scope.roles, ""),
    ...wordsOf(scope.areas, "area "),
    ...wordsOf(scope.equipmentKinds, "at "),
    ...wordsOf(scope.locations, "place "),
    ...(scope.fromSize === undefined ? [] : [`from ${scope.fromSize}`]),
  ];
  return words.length === 0 ? "every joint" : words.join("; ");
}

function wordsOf(words: readonly string[] | undefined, before: string): readonly string[] {
  return words === undefined ? [] : [`${before}${listWords(words)}`];
}
