import type { ConductorGroup, Opening, SizeRange } from "@landfast/rules";
import { ask, type Case, type Objection, reject, type Seat } from "../case.js";
import { areaOf, cmilOf } from "../read-table.js";

const CLAUSE = "110.3(B) range";

/** 110.14(A): without a strand mark a part is for class B and class C. */
const takes = (range: SizeRange, conductor: ConductorGroup): boolean =>
  range.strandings === "unmarked"
    ? conductor.stranding === "class-B" || conductor.stranding === "class-C"
    : range.strandings.includes(conductor.stranding);

/** Where a size lies: below, inside or above the range; null where metric meets gauge, which are never compared. */
function within(range: Pick<SizeRange, "from" | "to">, size: string): boolean | null {
  const [from, to, own] = [areaOf(range.from), areaOf(range.to), areaOf(size)];
  if (from.system === "awg" && to.system === "awg" && own.system === "awg")
    return from.cmil <= own.cmil && own.cmil <= to.cmil;
  if (from.system === "metric" && to.system === "metric" && own.system === "metric")
    return from.mm2Thousandths <= own.mm2Thousandths && own.mm2Thousandths <= to.mm2Thousandths;
  return null;
}

export const insideRange = within;

/** 110.3(B), 110.14(A): size and strand form inside what the opening is listed for, by nominal size and never by diameter. */
export function rangeOf(opening: Opening, conductor: ConductorGroup): Objection[] {
  const fits = opening.ranges.map((range) => ({
    size: within(range, conductor.size),
    strands: takes(range, conductor),
  }));
  if (fits.some(({ size, strands }) => size === true && strands)) return [];
  if (fits.some(({ size }) => size === null))
    return [ask(CLAUSE, `${conductor.size} is not listed in its own system of sizes`)];
  if (fits.some(({ size }) => size === true))
    return [reject("110.14(A) strands", `${conductor.stranding} is not listed for ${opening.id}`)];
  return [reject(CLAUSE, `${conductor.size} is outside the range of ${opening.id}`)];
}

/** 110.14(A): a wire-binding screw holds 10 AWG or smaller. */
export function bindingScrew({ connector, joint }: Case): Objection[] {
  if (connector.construction !== "binding-screw") return [];
  return joint.conductors.flatMap(({ size }) => {
    const cmil = cmilOf(size);
    if (cmil === null) return [ask("110.14(A) binding screw", `${size} is no gauge size`)];
    return cmil > 10_380 ? [reject("110.14(A) binding screw", `${size} under a binding screw`)] : [];
  });
}

export function wireRange(_asked: Case, seats: readonly Seat[]): Objection[] {
  return seats.flatMap(({ opening, conductor }) => rangeOf(opening, conductor));
}
