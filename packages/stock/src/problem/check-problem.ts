import { priceProblems } from "../prices/item-price.js";
import type { StockProblem } from "./stock-problem.js";

/** Parts and joints above this are a slip of the pen; below it every sum is exact. */
const MOST = 10_000_000;

/** A stock problem that cannot be answered as it stands, with every reason. */
export class UnusableProblem extends RangeError {
  override readonly name: string = "UnusableProblem";
  readonly problems: readonly string[];

  constructor(problems: readonly string[]) {
    super(problems.join("; "));
    this.problems = problems;
  }
}

/** Everything that is wrong with a problem, one sentence each; empty when it can be planned. Prices' currencies are compared when a plan is made. */
export function problemFaults(problem: StockProblem): string[] {
  const faults: string[] = [];
  const classIds = problem.classes.map(({ id }) => id);
  const partNumbers = problem.items.map(({ partNumber }) => partNumber);
  for (const id of repeated(classIds)) faults.push(`class ${id} stands there more than once`);
  for (const id of repeated(partNumbers)) faults.push(`item ${id} stands there more than once`);
  for (const { id, joints, areas } of problem.classes) {
    if (!isCount(joints, 1)) faults.push(`class ${id}: joints is a whole number from 1 up`);
    const inAreas = areas.reduce((sum, area) => sum + area.joints, 0);
    if (areas.length > 0 && inAreas !== joints)
      faults.push(`class ${id}: its areas hold ${String(inAreas)} joints, not ${String(joints)}`);
  }
  for (const { partNumber, packQuantity, onHand = 0, price, must, mustNot } of problem.items) {
    if (!isCount(packQuantity, 1)) faults.push(`item ${partNumber}: packQuantity is a whole number from 1 up`);
    if (!isCount(onHand, 0)) faults.push(`item ${partNumber}: onHand is a whole number from 0 up`);
    if (must === true && mustNot === true) faults.push(`item ${partNumber} both must and must not be stocked`);
    if (price !== undefined) faults.push(...priceProblems(price).map((one) => `item ${partNumber}: ${one}`));
  }
  faults.push(...feasibleFaults(problem, new Set(classIds), new Set(partNumbers)));
  return faults;
}

/** @throws UnusableProblem with every fault. */
export function refuseFaults(problem: StockProblem): void {
  const faults = problemFaults(problem);
  if (faults.length > 0) throw new UnusableProblem(faults);
}

function feasibleFaults(
  { feasible }: StockProblem,
  classIds: ReadonlySet<string>,
  partNumbers: ReadonlySet<string>,
): string[] {
  const faults: string[] = [];
  for (const id of repeated(feasible.map(({ classId }) => classId)))
    faults.push(`feasible: class ${id} stands there more than once`);
  for (const { classId, makers } of feasible) {
    if (!classIds.has(classId)) faults.push(`feasible: there is no class ${classId}`);
    for (const id of repeated(makers.map(({ partNumber }) => partNumber)))
      faults.push(`feasible: class ${classId} names item ${id} more than once`);
    for (const { partNumber, verdict, partsPerJoint, labourHours } of makers) {
      const where = `feasible: class ${classId}, item ${partNumber}`;
      if (!partNumbers.has(partNumber)) faults.push(`${where}: there is no such item`);
      if (!isMaking(verdict)) faults.push(`${where}: the verdict ${JSON.stringify(verdict)} does not let it be made`);
      if (!isCount(partsPerJoint, 1)) faults.push(`${where}: partsPerJoint is a whole number from 1 up`);
      if (labourHours !== undefined && !(Number.isFinite(labourHours) && labourHours >= 0))
        faults.push(`${where}: labourHours is a number, not below 0`);
    }
  }
  return faults;
}

/** Asked at run time too: a part that the rules refuse must never get into a plan through data. */
function isMaking(verdict: unknown): boolean {
  return verdict === "accept" || verdict === "accept-with-conditions";
}

function isCount(value: number, least: number): boolean {
  return Number.isSafeInteger(value) && value >= least && value <= MOST;
}

function repeated(values: readonly string[]): string[] {
  const seen = new Set<string>();
  const again = new Set<string>();
  for (const value of values) {
    if (seen.has(value)) again.add(value);
    seen.add(value);
  }
  return [...again].sort();
}
