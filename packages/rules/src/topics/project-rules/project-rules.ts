import type { Citation } from "../../core/citation.js";
import type { Edition } from "../../core/edition.js";
import type { CheckFinding, NotApplicable, Step } from "../../core/finding.js";
import type { HeldProjectRule } from "../../core/project-rule.js";
import { asking, type JointSubject, type Rule, settled } from "../../core/rule.js";
import { Worksheet } from "../../core/worksheet.js";
import { type Judged, judgeDemand } from "./judge-demand.js";

const ID = "project-rules";

const NONE: NotApplicable = Object.freeze({
  rule: ID,
  outcome: "not-applicable",
  because: "the project has no rule of its own for this joint",
});

/**
 * Is the joint made as the project asks, beyond what the code asks?
 *
 * The text is the project's own; each rule names where it stands. It may forbid a kind of part, a part or a metal,
 * require a kind of part, or lower a limit, for all joints or for those in its scope. It is asked after every rule of the
 * code, and a joint that the code refuses stays refused: a project's permission is no exception from the code.
 * Worked: "compression only from 1/0 AWG on": a set-screw lug with 3/0 AWG is refused; with 1 AWG nothing is said.
 * Silent: where a fact is not known that would say whether the joint is in scope, or whether the rule is kept, it is
 * asked for, unless the rule is kept either way.
 */
export const projectRules: Rule = {
  id: ID,
  title: "Rules of the project",
  clauses: [],
  needs: [
    "joint/area",
    "joint/equipment/kind",
    "joint/place/location",
    "joint/circuit/loadA",
    "connector/partNumber",
    "connector/bodyMetal",
    "connector/plating",
  ],
  cannotSee: "what the project meant beyond the words of its rule",
  check(subject, edition) {
    const held = subject.joint.projectRules;
    return held === undefined ? NONE : judge(subject, held, edition);
  },
};

/** The first rule that is broken decides; then the first that cannot be decided; only then are all kept. */
function judge(
  subject: JointSubject,
  held: readonly HeldProjectRule[],
  edition: Edition,
): CheckFinding | NotApplicable {
  const [first] = held;
  if (first === undefined) return NONE;
  const worksheet = new Worksheet();
  const kept: Step[] = [];
  let asked: { readonly rule: HeldProjectRule; readonly path: string; readonly because: string } | undefined;
  for (const rule of held) {
    const cite = citeOf(rule);
    const stated = worksheet.state("rule of the project", `${rule.id}, ${rule.within}`, cite);
    const judged = judgeDemand(worksheet, subject, rule.demand, cite, edition);
    if (judged.outcome === "pass") kept.push(stated, ...judged.uses);
    else if (rule.openScope !== undefined) asked ??= { rule, ...openScope(rule.id, rule.openScope) };
    else if (judged.outcome === "missing") asked ??= { rule, path: judged.path, because: judged.because };
    else return refused(worksheet, rule, judged, [stated, ...judged.uses]);
  }
  if (asked !== undefined)
    return asking(ID, worksheet, asked.path, asked.because, {
      cite: citeOf(asked.rule),
      required: `what rule ${asked.rule.id} of the project asks`,
    });
  worksheet.conclude("the project's rules are kept", "pass", kept, "every rule for this joint is kept", citeOf(first));
  const ids = held.map(({ id }) => id).join(", ");
  return settled(ID, worksheet, {
    sentence: `The joint keeps the project's own rules: ${ids}.`,
    cite: citeOf(first),
    required: `what the project asks: ${ids}`,
    offered: "kept",
  });
}

function refused(
  worksheet: Worksheet,
  rule: HeldProjectRule,
  judged: Extract<Judged, { outcome: "fail" }>,
  uses: readonly Step[],
): CheckFinding {
  const cite = citeOf(rule);
  worksheet.conclude("the project's rule is kept", "fail", uses, judged.because, cite);
  return settled(ID, worksheet, {
    sentence: `Rule ${rule.id} of the project is broken: ${judged.because}.`,
    cite,
    required: judged.required,
    offered: judged.offered,
    fix: judged.fix,
  });
}

function openScope(id: string, path: string): { readonly path: string; readonly because: string } {
  return { path, because: `Whether rule ${id} of the project is for this joint is not known: ${path} is not given.` };
}

/** The project's own text stands where a clause of the code would. */
function citeOf({ id, source }: HeldProjectRule): Citation {
  return { standard: "rules of the project", edition: "", locator: `${id}: ${source}` };
}
