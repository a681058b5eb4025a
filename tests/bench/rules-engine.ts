import { demoCatalogue, larkfenJob } from "@landfast/data";
import {
  type Basis,
  type CatalogueItem,
  type CheckFinding,
  CONNECTOR_FAMILIES,
  type Edition,
  editionOf,
  type Joint,
  type JointSubject,
  type NotApplicable,
  RULES,
  type Step,
  sizeOf,
} from "@landfast/rules";
import { Engine, type RuleProperties } from "json-rules-engine";
import { cpuSeconds, shown, spreadOf } from "./ratio.js";

/** Ten rules that are one comparison each, so that the general engine can state them as they are. */
const TEN = [
  "metal-marking",
  "wire-range",
  "strand-class",
  "conductors-per-opening",
  "voltage-rating",
  "place-listing",
  "part-reuse",
  "connector-function",
  "stud-and-holes",
  "line-side-mark",
] as const;

const ROUNDS = 7;

interface Pair {
  readonly subject: JointSubject;
  readonly edition: Edition;
  readonly facts: Readonly<Record<string, unknown>>;
}

/**
 * The library's ten rules, each with its full derivation, against the same ten stated for a general rules engine, in
 * checks per second of processor time. Both are first shown to agree on every pair. A third turn writes the same
 * findings over again from those already reached, deciding nothing: no library that records these steps as plain data
 * for each check can do better, so its ratio says how much of the way is left.
 */
export async function benchRulesEngine(): Promise<void> {
  const rules = TEN.map((id) => {
    const rule = RULES.find((one) => one.id === id);
    if (rule === undefined) throw new Error(`there is no rule ${id}`);
    return rule;
  });
  const engine = new Engine(engineRules(), { allowUndefinedFacts: true });
  const pairs = somePairs();
  const library = ({ subject, edition }: Pair): string[] =>
    rules.filter((rule) => rule.check(subject, edition).outcome === "fail").map(({ id }) => id);
  for (const pair of pairs) {
    const { events } = await engine.run(pair.facts);
    const said = events.map(({ type }) => type).sort();
    const own = library(pair).sort();
    if (JSON.stringify(said) !== JSON.stringify(own))
      throw new Error(`the two disagree on ${pair.subject.joint.mark}: ${said.join(", ")} against ${own.join(", ")}`);
  }
  const reached = pairs.map(({ subject, edition }) => rules.map((rule) => rule.check(subject, edition)));
  const ratios: number[] = [];
  const ceilings: number[] = [];
  const rates: number[] = [];
  secondsFor(() => {
    for (const pair of pairs) library(pair);
  });
  for (let round = 0; round < ROUNDS; round += 1) {
    const own = secondsFor(() => {
      for (const pair of pairs) library(pair);
    });
    const writing = secondsFor(() => {
      for (const findings of reached) for (const finding of findings) written(finding);
    });
    const start = cpuSeconds();
    for (const { facts } of pairs) await engine.run(facts);
    const theirs = cpuSeconds() - start;
    ratios.push(theirs / own);
    ceilings.push(theirs / writing);
    rates.push(pairs.length / own);
  }
  console.log("Ten rules with the full derivation, over the same ten rules in json-rules-engine");
  console.log(`  ratio ${shown(spreadOf(ratios, ROUNDS))}; aim 100 or better`);
  const steps = reached.flat().reduce((sum, one) => sum + ("steps" in one ? one.steps.length : 0), 0) / pairs.length;
  console.log(
    `  ratio of writing the same ${steps.toFixed(0)} steps and deciding nothing ${shown(spreadOf(ceilings, ROUNDS))}`,
  );
  console.log(`  checks of ten rules per second of processor time ${spreadOf(rates, ROUNDS).median.toFixed(0)}`);
}

/** A finding written over again: new steps, the same texts. */
function written(one: CheckFinding | NotApplicable): CheckFinding | NotApplicable {
  if (one.outcome === "not-applicable") return { rule: one.rule, outcome: one.outcome, because: one.because };
  const { rule: id, outcome, sentence, cite, required, offered, conditions, missing, advice, fix } = one;
  const steps: Step[] = [];
  for (const step of one.steps) steps.push(writtenStep(step));
  return { rule: id, outcome, sentence, cite, required, offered, steps, conditions, missing, advice, fix };
}

function writtenStep(step: Step): Step {
  const { id, label, value } = step;
  const uses = step.uses.length === 0 ? step.uses : step.uses.slice();
  switch (step.kind) {
    case "given":
      return step.unit === undefined
        ? { id, kind: "given", label, value, uses, origin: step.origin }
        : { id, kind: "given", label, value, unit: step.unit, uses, origin: step.origin };
    case "compared":
      return {
        id,
        kind: "compared",
        label,
        value,
        uses,
        left: step.left,
        relation: step.relation,
        right: step.right,
        cite: step.cite,
      };
    case "read":
      return { id, kind: "read", label, value, unit: step.unit ?? "", uses, cell: step.cell, cite: step.cite };
    case "missing":
      return { id, kind: "missing", label, value, uses, path: step.path, because: step.because };
    case "stated":
      return { id, kind: "stated", label, value, uses, cite: step.cite };
    case "assumed":
      return { id, kind: "assumed", label, value, uses, because: step.because, cite: step.cite };
    case "concluded":
      return step.cite === undefined
        ? { id, kind: "concluded", label, value, uses, because: step.because }
        : { id, kind: "concluded", label, value, uses, because: step.because, cite: step.cite };
    case "computed":
      return {
        id,
        kind: "computed",
        label,
        value,
        unit: step.unit ?? "",
        uses,
        formula: step.formula,
        substituted: step.substituted,
      };
  }
}

/** Seconds of processor time for one pass, from as many passes as make the clock's grain small. */
function secondsFor(pass: () => void): number {
  let passes = 0;
  const start = cpuSeconds();
  do {
    pass();
    passes += 1;
  } while (cpuSeconds() - start < 0.5);
  return (cpuSeconds() - start) / passes;
}

/** One-conductor terminations of the site, each with many connectors: accepts and refusals of every rule. */
function somePairs(): Pair[] {
  const { items } = demoCatalogue();
  const job = larkfenJob();
  const pairs: Pair[] = [];
  for (const joint of job.joints) {
    const [conductor, other] = joint.conductors;
    if (conductor === undefined || other !== undefined || conductor.count !== 1) continue;
    if (joint.function !== "termination" || conductor.size.endsWith("mm2") || joint.place === undefined) continue;
    if (joint.place.location === "concrete") continue;
    for (const connector of items) {
      const pair = pairOf(joint, joint.basis ?? job.basis, connector);
      if (pair !== undefined) pairs.push(pair);
    }
  }
  return pairs.filter((_, index) => index % 7 === 0).slice(0, 400);
}

function pairOf(joint: Joint, basis: Basis, connector: CatalogueItem): Pair | undefined {
  const [conductor] = joint.conductors;
  const [opening, second] = connector.openings;
  const [range, third] = opening?.ranges ?? [];
  if (conductor === undefined || opening === undefined || range === undefined) return undefined;
  // What takes more than one comparison to judge is left to the library alone.
  if (second !== undefined || third !== undefined || typeof range.strandings === "string") return undefined;
  if (!PLAIN.has(connector.family) || typeof connector.voltageV !== "number") return undefined;
  const subject: JointSubject = {
    joint: { ...joint, basis },
    connector,
    origin: "connector",
    landings: [{ openingIndex: 0, opening, instance: 1, conductors: [{ group: 0, conductor, count: 1 }] }],
  };
  return { subject, edition: editionOf(basis), facts: factsOf(subject) };
}

const PLAIN = new Set<string>(
  CONNECTOR_FAMILIES.filter((family) => family.startsWith("set-screw-lug") || family.startsWith("compression-lug-o")),
);

/** The same facts, flat, as a general engine wants them. */
function factsOf({ joint, connector, landings }: JointSubject): Record<string, unknown> {
  const [landing] = landings;
  const [landed] = landing?.conductors ?? [];
  const [range] = landing?.opening.ranges ?? [];
  if (landed === undefined || range === undefined) throw new Error("nothing is landed");
  const size = sizeOf(landed.conductor.size);
  const live = joint.role === "phase" || joint.role === "neutral";
  const mark = connector.metalMarking ?? "";
  return {
    metal: landed.conductor.metal,
    markedMetals: mark.includes("AL") ? ["aluminum", "copper"] : ["copper"],
    area: size.areaKcmil,
    areaFrom: sizeOf(range.from).areaKcmil,
    areaTo: sizeOf(range.to).areaKcmil,
    stranding: landed.conductor.stranding,
    listedStrandings: range.strandings,
    count: landed.count,
    countMax: typeof landing?.opening.conductorsMax === "number" ? landing.opening.conductorsMax : 1,
    live,
    systemV: joint.circuit?.voltageV ?? 0,
    ratedV: connector.voltageV,
    location: joint.place?.location,
    places: connector.places,
    reused: joint.partState === "reused",
    reusable: connector.reusable,
    jointFunction: joint.function,
    functions: connector.functions,
    onService: joint.circuit?.protection?.kind === "service" && joint.function !== "termination",
    lineSide: connector.lineSide,
    padded: connector.mounting.kind === "pad" && joint.equipment?.stud !== undefined,
    holes: connector.mounting.kind === "pad" ? patternText(connector.mounting.pattern) : "",
    bolts: joint.equipment?.stud === undefined ? "" : patternText(joint.equipment.stud),
  };
}

function patternText({ holes, bolt, spacing }: { holes: number; bolt: string; spacing?: { value: number } }): string {
  return `${String(holes)} x ${bolt}${holes > 1 ? ` at ${String(spacing?.value)}` : ""}`;
}

/** Each event names the rule that fails. */
function engineRules(): RuleProperties[] {
  const fact = (name: string) => ({ fact: name });
  return [
    rule("metal-marking", { all: [{ fact: "markedMetals", operator: "doesNotContain", value: fact("metal") }] }),
    rule("wire-range", {
      any: [
        { fact: "area", operator: "lessThan", value: fact("areaFrom") },
        { fact: "area", operator: "greaterThan", value: fact("areaTo") },
      ],
    }),
    rule("strand-class", { all: [{ fact: "listedStrandings", operator: "doesNotContain", value: fact("stranding") }] }),
    rule("conductors-per-opening", { all: [{ fact: "count", operator: "greaterThan", value: fact("countMax") }] }),
    rule("voltage-rating", {
      all: [
        { fact: "live", operator: "equal", value: true },
        { fact: "systemV", operator: "greaterThan", value: fact("ratedV") },
      ],
    }),
    rule("place-listing", {
      any: [
        {
          all: [
            { fact: "location", operator: "equal", value: "direct-burial" },
            { fact: "places", operator: "doesNotContain", value: "direct-burial" },
          ],
        },
      ],
    }),
    rule("part-reuse", {
      all: [
        { fact: "reused", operator: "equal", value: true },
        { fact: "reusable", operator: "equal", value: false },
      ],
    }),
    rule("connector-function", {
      all: [{ fact: "functions", operator: "doesNotContain", value: fact("jointFunction") }],
    }),
    rule("stud-and-holes", {
      all: [
        { fact: "padded", operator: "equal", value: true },
        { fact: "holes", operator: "notEqual", value: fact("bolts") },
      ],
    }),
    rule("line-side-mark", {
      all: [
        { fact: "onService", operator: "equal", value: true },
        { fact: "lineSide", operator: "equal", value: "unmarked" },
      ],
    }),
  ];
}

function rule(id: string, conditions: RuleProperties["conditions"]): RuleProperties {
  return { name: id, conditions, event: { type: id } };
}
