/** Answers that differ between two editions: what changed, in which of the questions. */
import { demoCatalogue, larkfenJob } from "@landfast/data";
import {
  CALCULATIONS,
  type CalculationName,
  type CalculationQuestions,
  calculate,
  type JointFinding,
  scheduleJob,
} from "@landfast/rules";
import { libraryFinding } from "../oracle/compare.js";
import { generate } from "../oracle/generate.js";
import { questionsOf } from "../rule-cases/calculation-cases.js";
import { EDITION_PAIRS, type EditionPair } from "./edition-pairs.js";

/** Joints of the endless row that are asked under each edition. */
export const JOINTS_ASKED = 3000;

/** One kind of change, and the questions in which it was met. */
export interface Change {
  readonly pair: string;
  /** "line-side-mark: says nothing -> fail". */
  readonly kind: string;
  readonly at: readonly string[];
}

/** What is compared of an answer about a joint, under its name. Sentences and citations are not: they name the edition. */
function jointFacts(finding: JointFinding): ReadonlyMap<string, string> {
  const facts = new Map<string, string>();
  for (const { rule, outcome, required } of finding.findings) {
    facts.set(rule, outcome);
    if (/\d/.test(required)) facts.set(`${rule}, what is required`, required);
  }
  for (const { rule } of finding.notApplicable) facts.set(rule, "says nothing");
  // A refused joint has no torque and no duties: that follows from its verdict and is no change of its own.
  if (finding.verdict === "accept" || finding.verdict === "accept-with-conditions") {
    for (const [index, { torque, method, alternative }] of finding.torque.entries())
      facts.set(
        `torque ${index + 1}`,
        `${method} ${torque === null ? "" : `${torque.lbfIn} lbf-in`} ${alternative ?? ""}`,
      );
    for (const { duty } of finding.conditions) facts.set(`condition ${duty}`, "yes");
    for (const { duty, sentence } of finding.dutiesOnSite) facts.set(`duty ${duty}`, sentence);
  }
  facts.set("verdict", finding.verdict);
  return facts;
}

function calculationFacts(
  name: CalculationName,
  question: unknown,
  { ruleSet, edition }: EditionPair["from"],
): ReadonlyMap<string, string> {
  const { outcome, results, refusal, missing } = calculate(name, question as never, { ruleSet, edition });
  const facts = new Map<string, string>([[name, outcome]]);
  for (const { name: result, value, unit } of results)
    facts.set(`${name}, ${result}`, `${String(value)}${unit === undefined ? "" : ` ${unit}`}`);
  if (refusal !== null) facts.set(`${name}, refusal`, refusal.code);
  for (const { path } of missing) facts.set(`${name}, missing`, path);
  return facts;
}

class Changes {
  readonly #found = new Map<string, { pair: string; kind: string; at: string[] }>();

  note(pair: string, at: string, before: ReadonlyMap<string, string>, after: ReadonlyMap<string, string>): void {
    const made = (facts: ReadonlyMap<string, string>): boolean => facts.get("verdict")?.startsWith("accept") ?? true;
    const both = made(before) && made(after);
    for (const name of new Set([...before.keys(), ...after.keys()])) {
      if (!both && /^(torque|condition|duty) /.test(name)) continue;
      const [old = "none", now = "none"] = [before.get(name), after.get(name)];
      if (old === now) continue;
      const kind = `${name}: ${old} -> ${now}`;
      const known = this.#found.get(`${pair} ${kind}`);
      if (known === undefined) this.#found.set(`${pair} ${kind}`, { pair, kind, at: [at] });
      else known.at.push(at);
    }
  }

  get all(): readonly Change[] {
    return [...this.#found.values()];
  }
}

/** Each question under both editions of each pair. */
function compareAll<Asked>(
  questions: readonly (readonly [at: string, asked: Asked])[],
  factsOf: (asked: Asked, edition: EditionPair["from"]) => ReadonlyMap<string, string>,
): readonly Change[] {
  const changes = new Changes();
  for (const [at, asked] of questions) {
    const known = new Map<EditionPair["from"], ReadonlyMap<string, string>>();
    const under = (edition: EditionPair["from"]): ReadonlyMap<string, string> => {
      const facts = known.get(edition) ?? factsOf(asked, edition);
      known.set(edition, facts);
      return facts;
    };
    for (const { name, from, to } of EDITION_PAIRS) changes.note(name, at, under(from), under(to));
  }
  return changes.all;
}

export function siteChanges(): readonly Change[] {
  const job = larkfenJob();
  const catalogue = demoCatalogue().items;
  const under = (edition: EditionPair["from"]) =>
    scheduleJob({ ...job, basis: { ...job.basis, edition: edition.edition } }, catalogue).findings;
  const findings = new Map(
    EDITION_PAIRS.flatMap(({ from, to }) => [from, to]).map((edition) => [edition, under(edition)]),
  );
  return compareAll(
    job.joints.map(({ mark }, index) => [mark, index] as const),
    (index, edition) => {
      const finding = findings.get(edition)?.[index];
      return finding === null || finding === undefined ? new Map() : jointFacts(finding);
    },
  );
}

export function jointChanges(): readonly Change[] {
  return compareAll(
    Array.from({ length: JOINTS_ASKED }, (_none, number) => [String(number), number] as const),
    (number, { edition }) => {
      const question = generate(number);
      return jointFacts(libraryFinding({ ...question, basis: { ...question.basis, edition } }));
    },
  );
}

export function calculationChanges(): readonly Change[] {
  return (Object.keys(CALCULATIONS) as CalculationName[]).flatMap((name) => {
    const questions: readonly CalculationQuestions[CalculationName][] = questionsOf(name);
    return compareAll(
      questions.map((question) => [JSON.stringify(question), question] as const),
      (question, edition) => calculationFacts(name, question, edition),
    );
  });
}
