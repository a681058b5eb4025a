import type { CatalogueItem } from "../../core/connector.js";
import type { Edition } from "../../core/edition.js";
import type { CheckFinding, NotApplicable } from "../../core/finding.js";
import type { Joint } from "../../core/joint.js";
import type { JointSubject, Landing, Rule } from "../../core/rule.js";
import type { Verdict } from "../joint/joint-finding.js";
import { JOINT_RULES } from "../joint/joint-rules.js";
import { landConductors } from "../openings/land-conductors.js";
import { FactNumbers, NumberedFacts } from "./fact-numbers.js";
import { type FactsRead, watchedConnector, watchedJoint } from "./facts-read.js";
import { CatalogueColumns, OutcomeMemory } from "./outcome-memory.js";

/** What one rule says to one joint with one connector: enough to choose by, without the working papers. */
export interface RuleOutcome {
  readonly outcome: CheckFinding["outcome"] | NotApplicable["outcome"];
  readonly conditions: number;
  /** No fact of the connector is among the steps. */
  readonly jointsOwn: boolean;
}

/** A connector of the catalogue and how it fares. */
export interface Standing {
  readonly item: CatalogueItem;
  readonly verdict: Verdict;
  readonly conditions: number;
  readonly failures: number;
  readonly questions: number;
}

/** A connector that is not accepted, with what every rule says. */
export interface Miss extends Standing {
  /** In the order of the rules. */
  readonly outcomes: readonly RuleOutcome[];
}

export interface Survey {
  /** In the order of the catalogue. */
  readonly accepted: readonly Standing[];
  /** How many connectors each rule keeps out by its first failure, else its first question: none is left out. */
  readonly excluded: readonly { readonly rule: string; readonly connectors: number }[];
}

interface LandingRead {
  readonly landings: readonly Landing[];
  readonly read: FactsRead;
}

/** Outcomes remembered at most, two bytes each; beyond it everything is forgotten and found anew. */
const OUTCOMES_KEPT = 32_000_000;
/** Landings are larger, and asked for again only by joints with the same conductors. */
const LANDINGS_KEPT = 100_000;

/** Every outcome there has been, by its code: few differ, and a code is all that is remembered of one. 0: not known. */
const OUTCOMES: (RuleOutcome | undefined)[] = [undefined];
const codes = new Map<string, number>();

/**
 * Judges the connectors of a catalogue for one joint after another, under one edition.
 *
 * A rule is asked once for all joints and connectors that agree in the facts it reads. That is the whole of the
 * saving: there is no second, shorter statement of any rule that could come to disagree with it. What is remembered
 * shows in the time an answer takes and in nothing else.
 */
export class CatalogueJudge {
  readonly #items: readonly CatalogueItem[];
  readonly #edition: Edition;
  readonly #memories: readonly OutcomeMemory<Uint16Array>[];
  readonly #landings: OutcomeMemory<(LandingRead | undefined)[]>;
  readonly #conditions: Int32Array;
  readonly #questions: Int32Array;
  #jointNumbers = new FactNumbers();

  constructor(items: readonly CatalogueItem[], edition: Edition) {
    this.#items = [...items];
    this.#edition = edition;
    const columns = new CatalogueColumns(this.#items);
    this.#memories = JOINT_RULES.map(() => new OutcomeMemory(columns, (groups) => new Uint16Array(groups)));
    this.#landings = new OutcomeMemory(columns, (groups) => new Array<LandingRead | undefined>(groups).fill(undefined));
    this.#conditions = new Int32Array(items.length);
    this.#questions = new Int32Array(items.length);
  }

  /** True where it judges these very connectors. */
  isOf(items: readonly CatalogueItem[]): boolean {
    return items.length === this.#items.length && items.every((item, index) => item === this.#items[index]);
  }

  /**
   * Which connectors every rule accepts, and how many each rule keeps out.
   * @param joint with the basis in force in it.
   * @throws RangeError when a size cannot be read.
   */
  survey(joint: Joint): Survey {
    const asked = this.#numbered(joint);
    const conditions = this.#conditions.fill(0);
    const questions = this.#questions.fill(-1);
    const excluded = new Int32Array(JOINT_RULES.length);
    let left: readonly number[] = this.#items.map((_, index) => index);
    JOINT_RULES.forEach((_, at) => {
      const { outcomes, groups } = this.#outcomes(at, joint, asked, left);
      const kept: number[] = [];
      for (const index of left) {
        const outcome = OUTCOMES[outcomes[groups[index] ?? 0] ?? 0];
        if (outcome === undefined) throw new Error("a connector was left without an outcome");
        if (outcome.outcome === "fail") {
          excluded[at] = (excluded[at] ?? 0) + 1;
          continue;
        }
        kept.push(index);
        conditions[index] = (conditions[index] ?? 0) + outcome.conditions;
        if (outcome.outcome === "missing" && questions[index] === -1) questions[index] = at;
      }
      left = kept;
    });
    const accepted: Standing[] = [];
    for (const index of left) {
      const question = questions[index] ?? -1;
      const item = this.#items[index];
      if (question >= 0) excluded[question] = (excluded[question] ?? 0) + 1;
      else if (item !== undefined) {
        const hangsOn = conditions[index] ?? 0;
        accepted.push({
          item,
          verdict: hangsOn > 0 ? "accept-with-conditions" : "accept",
          conditions: hangsOn,
          failures: 0,
          questions: 0,
        });
      }
    }
    return { accepted, excluded: mostFirst(excluded) };
  }

  /**
   * The connectors that are made for the joint's function and not accepted, with what every rule says to each.
   * @param joint with the basis in force in it.
   * @throws RangeError when a size cannot be read.
   */
  misses(joint: Joint): Miss[] {
    const asked = this.#numbered(joint);
    const indexes: number[] = [];
    this.#items.forEach(({ functions }, index) => {
      if (functions.includes(joint.function)) indexes.push(index);
    });
    const perRule = JOINT_RULES.map((_, at) => this.#outcomes(at, joint, asked, indexes));
    const misses: Miss[] = [];
    for (const index of indexes) {
      const item = this.#items[index];
      if (item === undefined) continue;
      const outcomes = perRule.flatMap((one) => OUTCOMES[one.outcomes[one.groups[index] ?? 0] ?? 0] ?? []);
      let conditions = 0;
      let failures = 0;
      let questions = 0;
      for (const one of outcomes) {
        conditions += one.conditions;
        if (one.outcome === "fail") failures += 1;
        if (one.outcome === "missing") questions += 1;
      }
      if (failures + questions > 0)
        misses.push({
          item,
          verdict: failures > 0 ? "reject" : "needs-information",
          conditions,
          failures,
          questions,
          outcomes,
        });
    }
    return misses;
  }

  /** The equipment frames that lug kits of the catalogue are listed for, sorted. */
  framesWithKits(): string[] {
    const frames = this.#items.flatMap(({ mounting }) => (mounting.kind === "frame" ? mounting.frames : []));
    return [...new Set(frames)].sort();
  }

  #numbered(joint: Joint): NumberedFacts {
    if (this.#landings.size > LANDINGS_KEPT) this.#landings.forget();
    let kept = this.#jointNumbers.size;
    for (const memory of this.#memories) kept += memory.size;
    if (kept > OUTCOMES_KEPT) {
      this.#landings.forget();
      for (const memory of this.#memories) memory.forget();
      this.#jointNumbers = new FactNumbers();
    }
    return new NumberedFacts(joint, this.#jointNumbers);
  }

  /** The outcomes of the rule at a place of the list, by group, complete for the connectors of these indexes. */
  #outcomes(
    at: number,
    joint: Joint,
    asked: NumberedFacts,
    indexes: readonly number[],
  ): { readonly outcomes: Uint16Array; readonly groups: Int32Array } {
    const [rule, memory] = [JOINT_RULES[at], this.#memories[at]];
    if (rule === undefined || memory === undefined) throw new RangeError(`there is no rule at ${String(at)}`);
    let { groups } = memory;
    let outcomes = memory.outcomesFor(asked);
    // A connector asked before the facts grew may stand in a group that has no outcome now: then they are gone through again.
    for (let asking = 0; asking < indexes.length; ) {
      const index = indexes[asking] ?? 0;
      asking += 1;
      if (outcomes[groups[index] ?? 0] !== 0) continue;
      const { outcome, read } = this.#ask(rule, joint, asked, index);
      if (memory.restsOn(read)) {
        groups = memory.groups;
        outcomes = memory.outcomesFor(asked);
        asking = 0;
      }
      outcomes[groups[index] ?? 0] = codeOf(outcome);
    }
    return { outcomes, groups };
  }

  #ask(rule: Rule, joint: Joint, asked: NumberedFacts, index: number): { outcome: RuleOutcome; read: FactsRead } {
    const read: FactsRead = { joint: new Set(), connector: new Set() };
    const answer = rule.check(
      new WatchedSubject(joint, this.#item(index), read, () => this.#land(joint, asked, index)),
      this.#edition,
    );
    return { outcome: answer.outcome === "not-applicable" ? NOT_APPLICABLE : outcomeOf(answer), read };
  }

  #land(joint: Joint, asked: NumberedFacts, index: number): LandingRead {
    const memory = this.#landings;
    const known = memory.outcomesFor(asked)[memory.groups[index] ?? 0];
    if (known !== undefined) return known;
    const read: FactsRead = { joint: new Set(), connector: new Set() };
    const landings = landConductors(
      watchedJoint(joint, read.joint),
      watchedConnector(this.#item(index), read.connector),
    );
    memory.restsOn(read);
    const found: LandingRead = { landings, read };
    memory.outcomesFor(asked)[memory.groups[index] ?? 0] = found;
    return found;
  }

  #item(index: number): CatalogueItem {
    const item = this.#items[index];
    if (item === undefined) throw new RangeError(`the catalogue has no connector at ${String(index)}`);
    return item;
  }
}

/** What a rule is given, with everything it reads noted; the landing rests on what was read to make it. */
class WatchedSubject implements JointSubject {
  readonly joint: Joint;
  readonly connector: CatalogueItem;
  readonly origin = "connector" as const;
  readonly #read: FactsRead;
  readonly #land: () => LandingRead;

  constructor(joint: Joint, item: CatalogueItem, read: FactsRead, land: () => LandingRead) {
    this.joint = watchedJoint(joint, read.joint);
    this.connector = watchedConnector(item, read.connector);
    this.#read = read;
    this.#land = land;
  }

  get landings(): readonly Landing[] {
    const { landings, read } = this.#land();
    for (const path of read.joint) this.#read.joint.add(path);
    for (const path of read.connector) this.#read.connector.add(path);
    return landings;
  }
}

const NOT_APPLICABLE: RuleOutcome = Object.freeze({ outcome: "not-applicable", conditions: 0, jointsOwn: true });

function codeOf(outcome: RuleOutcome): number {
  const text = `${outcome.outcome} ${String(outcome.conditions)} ${String(outcome.jointsOwn)}`;
  let code = codes.get(text);
  if (code === undefined) {
    code = OUTCOMES.length;
    codes.set(text, code);
    OUTCOMES.push(outcome);
  }
  return code;
}

function outcomeOf({ outcome, conditions, steps }: CheckFinding): RuleOutcome {
  return { outcome, conditions: conditions.length, jointsOwn: isJointsOwn(steps) };
}

/** True where no fact of the connector is among the steps. */
function isJointsOwn(steps: CheckFinding["steps"]): boolean {
  return steps.every((step) => step.kind !== "given" || !step.origin.startsWith("connector/"));
}

function mostFirst(excluded: Int32Array): Survey["excluded"] {
  return JOINT_RULES.map(({ id }, at) => ({ rule: id, connectors: excluded[at] ?? 0 }))
    .filter(({ connectors }) => connectors > 0)
    .sort((a, b) => b.connectors - a.connectors || (a.rule < b.rule ? -1 : 1));
}

/** A catalogue does not change while it is in use, so what was learned of it serves for the next joint and the next job. */
const judges = new WeakMap<readonly CatalogueItem[], Map<Edition, CatalogueJudge>>();

/** The judge of a catalogue under an edition, with what it remembers. */
export function judgeOf(catalogue: readonly CatalogueItem[], edition: Edition): CatalogueJudge {
  let byEdition = judges.get(catalogue);
  if (byEdition === undefined) {
    byEdition = new Map();
    judges.set(catalogue, byEdition);
  }
  let judge = byEdition.get(edition);
  if (judge?.isOf(catalogue) !== true) {
    judge = new CatalogueJudge(catalogue, edition);
    byEdition.set(edition, judge);
  }
  return judge;
}
