import { compareSizes, sizeOf } from "@landfast/rules";
import { decimalOf, isDecimalText } from "@landfast/stock";
import { FAULTS_SHOWN, type Fault, Problem, pointerTo } from "../problems/problem.js";
import type {
  LabourTableHead,
  LabourTableLine,
  LabourTablePage,
  LabourTableRecord,
  LabourTableRepository,
} from "../repositories/labour-table-repository.js";

/** A labor table as posted. */
export interface PostedLabourTable extends Omit<LabourTableHead, "id" | "lines" | "createdAt" | "difficulties"> {
  /** Absent: the user works with no factors. */
  readonly difficulties?: LabourTableHead["difficulties"];
  readonly lines: readonly LabourTableLine[];
}

export interface LabourTableService {
  /** @throws Problem INCONSISTENT_REQUEST for lines that contradict each other; nothing is stored then. */
  add(posted: PostedLabourTable): Promise<LabourTableHead>;
  list(limit: number, before: number | null): Promise<LabourTablePage>;
  /**
   * The whole table: the user's own hours and factors in decimal text. No hours are built in: what no line names has
   * none, which is not zero.
   * @throws Problem LABOUR_TABLE_NOT_FOUND.
   */
  labourTableFor(id: string): Promise<LabourTableRecord>;
}

/** What the service needs around it. */
export interface LabourTableServiceParts {
  readonly labourTables: LabourTableRepository;
  readonly tenantId: string;
  /** RFC 3339, UTC. */
  readonly now: () => string;
  readonly newId: () => string;
}

export function labourTableService({
  labourTables,
  tenantId,
  now,
  newId,
}: LabourTableServiceParts): LabourTableService {
  return {
    async add({ lines, difficulties = {}, ...posted }) {
      refuseBadLines(lines, difficulties);
      const head: LabourTableHead = { id: newId(), ...posted, difficulties, lines: lines.length, createdAt: now() };
      await labourTables.add(tenantId, { head, lines });
      return head;
    },
    list(limit, before) {
      return labourTables.list(tenantId, limit, before);
    },
    async labourTableFor(id) {
      const record = await labourTables.get(tenantId, id);
      if (record === null) throw new Problem("LABOUR_TABLE_NOT_FOUND", `There is no labor table "${id}".`);
      return record;
    },
  };
}

function refuseBadLines(lines: readonly LabourTableLine[], difficulties: LabourTableHead["difficulties"]): void {
  const faults: Fault[] = [];
  for (const [name, factor] of Object.entries(difficulties))
    if (!isDecimalText(factor) || decimalOf(factor).numerator <= 0n)
      faults.push({
        pointer: pointerTo("/difficulties", name),
        detail: `"${factor}" is not a factor above 0`,
        accepted: 'decimal text above 0: "1.25"',
      });
  const seen = new Map<string, { readonly line: LabourTableLine; readonly index: number }[]>();
  for (const [index, line] of lines.entries()) {
    if (faults.length >= FAULTS_SHOWN) break;
    const pointer = pointerTo("/lines", index);
    const unkeyed = keyFault(line, pointer);
    if (unkeyed !== undefined) {
      faults.push(unkeyed);
      continue;
    }
    if (!isDecimalText(line.hours) || line.hours.startsWith("-"))
      faults.push({
        pointer: pointerTo(pointer, "hours"),
        detail: `"${line.hours}" is not a number of hours`,
        accepted: 'decimal text, 0 or more: "0.35"',
      });
    if (!rangeIsGood(line, pointer, faults)) continue;
    const key = JSON.stringify(["partNumber" in line ? line.partNumber : null, familyOf(line), line.condition ?? null]);
    const others = seen.get(key) ?? [];
    const other = others.find((one) => overlap(one.line, line));
    if (other !== undefined)
      faults.push({
        pointer,
        detail: `the line is for sizes or a part that line ${other.index} is for already`,
        accepted: "one line only for each part, and bands of a family that do not meet",
      });
    others.push({ line, index });
    seen.set(key, others);
  }
  if (faults.length > 0) throw new Problem("INCONSISTENT_REQUEST", "The labor table contradicts itself.", faults);
}

/** A line is for one part or for a family; sizes narrow a family only. */
function keyFault(line: Partial<Record<string, string>>, pointer: string): Fault | undefined {
  const { partNumber, family, from, to } = line;
  if ((partNumber === undefined) !== (family === undefined) && (family !== undefined || (from ?? to) === undefined))
    return undefined;
  return {
    pointer,
    detail: "the line does not say one thing that its hours are for",
    accepted: "partNumber alone, or family with from and to as wished",
  };
}

function familyOf(line: LabourTableLine): string | null {
  return "family" in line ? line.family : null;
}

function rangeIsGood(line: LabourTableLine, pointer: string, faults: Fault[]): boolean {
  if (!("family" in line) || line.from === undefined || line.to === undefined) return true;
  const [from, to] = [sizeOf(line.from), sizeOf(line.to)];
  if (from.series === to.series && compareSizes(from, to) <= 0) return true;
  faults.push({
    pointer: pointerTo(pointer, "from"),
    detail:
      from.series === to.series
        ? `the band begins above its end: ${line.from} is larger than ${line.to}`
        : `the band mixes two systems: ${line.from} and ${line.to}`,
    accepted: `a size no larger than ${line.to}, of the same system`,
  });
  return false;
}

/** Whether two lines of one key could both be meant. A band without an end has no limit there. */
function overlap(a: LabourTableLine, b: LabourTableLine): boolean {
  if (!("family" in a) || !("family" in b)) return true;
  const ends = [a.from, a.to, b.from, b.to].flatMap((text) => (text === undefined ? [] : [sizeOf(text).series]));
  // Bands of two systems never meet: a metric conductor is none of AWG.
  if (new Set(ends).size > 1) return false;
  return !isBelow(a.to, b.from) && !isBelow(b.to, a.from);
}

function isBelow(end: string | undefined, start: string | undefined): boolean {
  return end !== undefined && start !== undefined && compareSizes(sizeOf(end), sizeOf(start)) < 0;
}
