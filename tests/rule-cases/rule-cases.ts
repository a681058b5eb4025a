/** The cases of the rules: which joints show which way through which rule. */
import { type CheckFinding, type JointFinding, RULES } from "@landfast/rules";
import { libraryFinding } from "../oracle/compare.js";
import { generate } from "../oracle/generate.js";
import { descriptionLines, ruleLines, wayOf } from "./finding-lines.js";
import { MORE_JOINTS } from "./more-joints/all-more-joints.js";
import { moreJoint } from "./more-joints/more-joint.js";

/** Of the endless row of joints, these are looked at. */
const LOOKED_AT = 6000;
/** Ways shown of one rule; the ways of several conductors and openings multiply without end. */
const SHOWN = 24;

export interface RuleCase {
  readonly joint: number;
  readonly finding: CheckFinding;
}

/** One case of each way through each rule, first found first; the three outcomes before anything else. */
export function chooseRuleCases(): ReadonlyMap<string, readonly RuleCase[]> {
  const ways = new Map<string, Map<string, RuleCase>>(RULES.map(({ id }) => [id, new Map()]));
  for (let joint = 0; joint < LOOKED_AT; joint += 1)
    for (const finding of libraryFinding(generate(joint)).findings) {
      const seen = ways.get(finding.rule);
      const way = wayOf(finding);
      if (seen !== undefined && !seen.has(way)) seen.set(way, { joint, finding });
    }
  return new Map([...ways].map(([rule, seen]) => [rule, shown([...seen.values()])]));
}

function shown(cases: readonly RuleCase[]): readonly RuleCase[] {
  const each = ["pass", "fail", "missing"].map((outcome) => cases.filter(({ finding }) => finding.outcome === outcome));
  const chosen = each.flatMap((all) => all.slice(0, SHOWN / 3));
  const rest = cases.filter((one) => !chosen.includes(one));
  return [...chosen, ...rest.slice(0, SHOWN - chosen.length)].sort((a, b) => a.joint - b.joint);
}

/** The same joints asked again: what the rule says of each. */
export function ruleCasesAt(rule: string, joints: readonly number[]): readonly RuleCase[] {
  return joints.map((joint) => {
    const { findings, notApplicable }: JointFinding = libraryFinding(generate(joint));
    const finding = findings.find((one) => one.rule === rule);
    if (finding === undefined)
      throw new Error(
        `${rule} has nothing to say of joint ${joint}: ${notApplicable.find((one) => one.rule === rule)?.because ?? ""}`,
      );
    return { joint, finding };
  });
}

/** What a rule says of the joints with a changed fact; nothing where it has nothing to say, with the reason. */
export function changedCasesOf(rule: string): readonly { readonly name: string; readonly finding: CheckFinding }[] {
  return MORE_JOINTS.filter((one) => one.rule === rule).map((one) => {
    const { findings } = libraryFinding(moreJoint(one));
    const finding = findings.find((each) => each.rule === rule);
    if (finding === undefined) throw new Error(`${rule} has nothing to say where ${one.name}`);
    return { name: one.from === null ? one.name : `${one.name}, else as joint ${one.from}`, finding };
  });
}

export function ruleText(rule: string, cases: readonly RuleCase[]): string {
  const titled = [
    ...cases.map(({ joint, finding }) => [`Joint ${joint}, ${generate(joint).basis.edition}`, finding] as const),
    ...changedCasesOf(rule).map(({ name, finding }) => [`Where ${name}`, finding] as const),
  ];
  const described = RULES.find(({ id }) => id === rule);
  if (described === undefined) throw new Error(`no rule ${rule}`);
  const head = descriptionLines(described).join("\n");
  return head + titled.map(([title, finding]) => [title, ...ruleLines(finding), ""].join("\n")).join("\n");
}

/** The joints that a text was made of. */
export function jointsOf(text: string): readonly number[] {
  return [...text.matchAll(/^Joint (\d+),/gm)].map(([, number]) => Number(number));
}
