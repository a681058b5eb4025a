import {
  type Basis,
  type CatalogueItem,
  type ConnectorSchedule,
  candidatesForJob,
  checkJoint,
  type Job,
  type Joint,
  type JointFinding,
  type MissingFact,
  type ScheduleRow,
  selectConnectors,
  withProjectRules,
} from "@landfast/rules";
import type { MakingVerdict } from "@landfast/stock";

/** One mark of a class, with what the plan never depends on. */
export interface StockMark {
  readonly mark: string;
  readonly joints: number;
  readonly area: string | null;
  readonly panel: string | null;
}

/** A connector of the catalogue with which the rules accept the joints of a class. */
export interface StockMaker {
  readonly item: CatalogueItem;
  readonly verdict: MakingVerdict;
}

/** Equal joints of a job: the rules say the same to all of them with any connector. */
export interface StockClass {
  /** The first of its marks, by code unit: the same whatever the order of the joints. */
  readonly id: string;
  readonly marks: readonly StockMark[];
  readonly joints: number;
  /** One of them as the catalogue is asked about it: without the connector that was offered. */
  readonly joint: Joint;
  readonly basis: Basis;
  /** By part number; never empty. */
  readonly makers: readonly StockMaker[];
}

/** Joints that need no part of the catalogue, and why. */
export interface NoPartNeeded {
  readonly mark: string;
  readonly joints: number;
  readonly because: string;
}

/** Joints for which the catalogue has nothing. They are named in every answer and never dropped. */
export interface WithoutPart {
  readonly marks: readonly { readonly mark: string; readonly joints: number }[];
  readonly joints: number;
  /** "needs-information": a fact that is missing stands in the way, else no connector is allowed. */
  readonly verdict: "reject" | "needs-information";
  readonly because: string;
  readonly missing: readonly MissingFact[];
}

/** What a job asks of the catalogue. */
export interface JobStock {
  /** By id. */
  readonly classes: readonly StockClass[];
  readonly noPartNeeded: readonly NoPartNeeded[];
  readonly withoutPart: readonly WithoutPart[];
}

/**
 * Works out, for all joints of a stored job, which connectors of the catalogue the rules accept; pauses after every
 * class. A joint that its equipment's own terminal takes, or for which the job describes a connector of its own, needs
 * no part of the catalogue. What the joint was offered does not limit what it may be made with.
 * @param schedule the stored schedule of the job, its rows in the order of the job's joints.
 */
export function* jobStockInSteps(
  job: Job,
  schedule: ConnectorSchedule,
  catalogue: readonly CatalogueItem[],
): Generator<undefined, JobStock> {
  const noPartNeeded: NoPartNeeded[] = [];
  const withoutPart: WithoutPart[] = [];
  const asked = new Map<string, { readonly joint: Joint; readonly basis: Basis; readonly marks: StockMark[] }>();
  for (const [at, posted] of job.joints.entries()) {
    const joint = withProjectRules(posted, job.projectRules);
    const row = schedule.rows[at];
    if (row === undefined || row.mark !== joint.mark)
      throw new RangeError(`the schedule has no row for joint ${joint.mark}`);
    const settled = settledElsewhere(row);
    if (settled !== null) {
      if ("verdict" in settled) withoutPart.push(settled);
      else noPartNeeded.push(settled);
      continue;
    }
    const basis = joint.basis ?? job.basis;
    const question = withoutOffer(joint);
    const key = classOf(question, basis);
    const known = asked.get(key) ?? { joint: question, basis, marks: [] };
    known.marks.push({
      mark: joint.mark,
      joints: joint.quantity,
      area: joint.area ?? null,
      panel: joint.equipment?.tag ?? null,
    });
    asked.set(key, known);
  }
  const classes: StockClass[] = [];
  const items = new Map(catalogue.map((item) => [item.partNumber, item]));
  for (const { joint, basis, marks: unsorted } of asked.values()) {
    const marks = unsorted.toSorted((a, b) => byText(a.mark, b.mark));
    const [first] = marks;
    if (first === undefined) continue;
    const joints = marks.reduce((sum, one) => sum + one.joints, 0);
    const makers = makersOf(joint, basis, catalogue, items);
    if (makers.length > 0) classes.push({ id: first.mark, marks, joints, joint, basis, makers });
    else withoutPart.push(nothingFor(joint, basis, catalogue, marks, joints));
    yield undefined;
  }
  return {
    classes: classes.sort((a, b) => byText(a.id, b.id)),
    noPartNeeded: noPartNeeded.sort((a, b) => byText(a.mark, b.mark)),
    withoutPart: withoutPart.sort((a, b) => byText(a.marks[0]?.mark ?? "", b.marks[0]?.mark ?? "")),
  };
}

/** Order by code unit. */
export function byText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

/**
 * The full check of a class with a connector that it is to be made with. Whatever an answer proposes goes through here
 * once more by itself: an accept rests on the rules, not on how the plan was found.
 * @throws Error where the rules do not accept it: a defect, and no answer is given then.
 */
export function makingFinding(
  { id, joint, basis, makers }: StockClass,
  partNumber: string,
): { readonly item: CatalogueItem; readonly finding: JointFinding } {
  const maker = makers.find(({ item }) => item.partNumber === partNumber);
  if (maker === undefined) throw new Error(`${partNumber} is no connector for ${id}`);
  const finding = checkJoint({ joint, basis, connector: maker.item, origin: "catalogue" });
  if (finding.verdict !== maker.verdict)
    throw new Error(`${partNumber} for ${id}: ${finding.verdict}, where the plan has ${maker.verdict}`);
  return { item: maker.item, finding };
}

/** What the acceptance of a class with a connector hangs on, one sentence each. */
export function makingConditions(one: StockClass, partNumber: string, verdict: MakingVerdict): string[] {
  const { finding } = makingFinding(one, partNumber);
  if (finding.verdict !== verdict) throw new Error(`${partNumber} for ${one.id}: ${finding.verdict}, not ${verdict}`);
  return finding.conditions.map(({ sentence }) => sentence);
}

function makersOf(
  joint: Joint,
  basis: Basis,
  catalogue: readonly CatalogueItem[],
  items: ReadonlyMap<string, CatalogueItem>,
): StockMaker[] {
  const [found] = candidatesForJob({ joints: [joint], basis, catalogue });
  return (found?.candidates ?? [])
    .flatMap(({ partNumber, verdict }): StockMaker[] => {
      const item = items.get(partNumber);
      return item !== undefined && (verdict === "accept" || verdict === "accept-with-conditions")
        ? [{ item, verdict }]
        : [];
    })
    .sort((a, b) => byText(a.item.partNumber, b.item.partNumber));
}

/** What the stored schedule has settled without the catalogue; null where the catalogue is asked. */
function settledElsewhere({
  mark,
  quantity,
  connector,
  verdict,
  deciding,
  missing,
}: ScheduleRow): NoPartNeeded | WithoutPart | null {
  if (connector === null || connector.origin === "catalogue") return null;
  const made =
    connector.origin === "equipment"
      ? "it is made in its equipment's own terminal"
      : `the job describes its connector itself: ${connector.description}`;
  if (verdict === "accept" || verdict === "accept-with-conditions") return { mark, joints: quantity, because: made };
  // A terminal or connector that is only short of a fact may well serve: no other part is bought on that account.
  if (verdict === "needs-information")
    return {
      marks: [{ mark, joints: quantity }],
      joints: quantity,
      verdict,
      because: `${made}, and ${deciding.sentence}`,
      missing,
    };
  return null;
}

function nothingFor(
  joint: Joint,
  basis: Basis,
  catalogue: readonly CatalogueItem[],
  marks: readonly StockMark[],
  joints: number,
): WithoutPart {
  const { selection, finding } = selectConnectors({ joint, basis, catalogue });
  const isOpen = finding?.verdict === "needs-information";
  return {
    marks: marks.map(({ mark, joints: own }) => ({ mark, joints: own })),
    joints,
    verdict: isOpen ? "needs-information" : "reject",
    because: selection.because,
    missing: isOpen ? finding.missing : [],
  };
}

/** The joint as the catalogue is asked about it: another connector is a new part with its own tooling. */
function withoutOffer(joint: Joint): Joint {
  const { connector: _connector, partState: _partState, tooling: _tooling, ...rest } = joint;
  return { ...rest, partState: "new" };
}

/** Everything that can change an answer: what is left out here names the joint and nothing else. */
function classOf(joint: Joint, basis: Basis): string {
  const {
    mark: _mark,
    area: _area,
    description: _description,
    quantity: _quantity,
    basis: _basis,
    equipment,
    ...facts
  } = joint;
  if (equipment === undefined) return textOf([basis, facts]);
  const { tag: _tag, ...equipmentFacts } = equipment;
  return textOf([basis, facts, equipmentFacts]);
}

/** JSON text with the fields of every object in one order: how a joint was written down makes no difference. */
function textOf(value: unknown): string {
  return JSON.stringify(value, (_key, part: unknown) =>
    typeof part === "object" && part !== null && !Array.isArray(part)
      ? Object.fromEntries(Object.entries(part).sort(([a], [b]) => byText(a, b)))
      : part,
  );
}
