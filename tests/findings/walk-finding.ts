/**
 * Walks the derivation of a finding as a reader with the book would, and names the first place where it does not
 * hold together.
 */
import { PUBLISHED_TABLES, type Step } from "@landfast/rules";
import { evaluate } from "./arithmetic.js";

const TABLES = new Map<string, (typeof PUBLISHED_TABLES)[number]>(
  PUBLISHED_TABLES.map((table) => [`${table.source.standard}-${table.source.edition}/${table.id}`, table] as const),
);

/** Every fault of the steps; an empty list means that they can be walked from the first to the last. */
export function faultsOf(steps: readonly Step[]): string[] {
  const faults: string[] = [];
  if (steps.length === 0) faults.push("no steps");
  steps.forEach((step, index) => {
    const say = (fault: string): void => {
      faults.push(`step ${String(step.id)} (${step.label}): ${fault}`);
    };
    if (step.id !== index + 1) say("ids must count 1, 2, 3 …");
    for (const used of step.uses)
      if (!(used >= 1 && used < step.id)) say(`uses ${String(used)}, which is not an earlier step`);
    if (typeof step.value === "number" && !Number.isFinite(step.value)) say("value is not finite");
    if (step.label.trim() === "") say("has no label");
    if (step.kind === "read") cellFaults(step).forEach(say);
    if (step.kind === "computed") arithmeticFaults(step, steps).forEach(say);
    if (step.kind === "compared") comparisonFaults(step, steps).forEach(say);
  });
  return faults;
}

function cellFaults(step: Extract<Step, { kind: "read" }>): string[] {
  const { cell } = step;
  const table = TABLES.get(cell.table);
  if (table === undefined) return [`reads the unknown table ${cell.table}`];
  const faults: string[] = [];
  if (table.digest !== cell.digest) faults.push(`reads ${cell.table} at another digest`);
  const column = table.columns.findIndex(({ id }) => id === cell.column);
  if (column < 0) return [...faults, `reads the unknown column ${cell.column}`];
  const row = table.rows.find(({ key }) => labelsOf(table.rowKey.kind, key).includes(cell.row));
  if (row === undefined) return [...faults, `reads the unknown row ${cell.row}`];
  if (row.cells[column] !== cell.printed)
    faults.push(`reads ${cell.printed} where the table prints ${String(row.cells[column])}`);
  const value = typeof step.value === "number" ? step.value : String(step.value);
  if (typeof value === "number" ? value !== Number(cell.printed) : value !== cell.printed)
    faults.push("value is not what is printed");
  return faults;
}

function labelsOf(kind: string, [first = "", second = ""]: readonly string[]): string[] {
  if (kind === "size" || kind === "term") return [first];
  if (kind === "size-range") return [first === second ? first : `${first} to ${second}`];
  return [first === "" ? `up to ${second}` : second === "" ? `over ${first}` : `over ${first} to ${second}`];
}

function arithmeticFaults(step: Extract<Step, { kind: "computed" }>, steps: readonly Step[]): string[] {
  const faults: string[] = [];
  const reworked = evaluate(step.substituted);
  if (typeof step.value !== "number") return ["is computed but no number"];
  if (!(Math.abs(reworked - step.value) <= 1e-11 * Math.max(1, Math.abs(reworked))))
    faults.push(`${step.substituted} is ${String(reworked)}, not ${String(step.value)}`);
  if (step.uses.length === 0) faults.push("is computed from nothing");
  for (const id of step.uses) {
    const used = steps[id - 1];
    if (typeof used?.value === "number" && used.kind !== "computed" && !step.substituted.includes(String(used.value)))
      faults.push(`does not show the value of step ${String(id)}`);
  }
  return faults;
}

function comparisonFaults(step: Extract<Step, { kind: "compared" }>, steps: readonly Step[]): string[] {
  const left = steps[step.left - 1]?.value;
  const right = steps[step.right - 1]?.value;
  if (left === undefined || right === undefined) return ["compares steps that do not exist"];
  return holds(left, step.relation, right) === step.value
    ? []
    : [`${String(left)} ${step.relation} ${String(right)} is not ${String(step.value)}`];
}

function holds(left: Step["value"], relation: string, right: Step["value"]): boolean {
  if (relation === "in") return Array.isArray(right) && right.includes(left);
  if (relation === "=") return left === right;
  if (typeof left !== "number" || typeof right !== "number") return false;
  if (relation === "<=") return left <= right;
  if (relation === "<") return left < right;
  return relation === ">=" ? left >= right : left > right;
}
