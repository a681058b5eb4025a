import type { ConductorGroup } from "@landfast/rules";
import { ask, byHole, type Case, type Objection, reject, type Seat } from "../case.js";
import { insideRange } from "./wire-range.js";

const alike = (a: ConductorGroup, b: ConductorGroup): boolean =>
  a.size === b.size && a.metal === b.metal && a.stranding === b.stranding;

/** How many conductors of each size, as one line of text: "10 AWG:1 12 AWG:2". */
function multiset(parts: Iterable<readonly [string, number]>): string {
  const counts = new Map<string, number>();
  for (const [size, count] of parts) counts.set(size, (counts.get(size) ?? 0) + count);
  return [...counts]
    .filter(([, count]) => count > 0)
    .map(([size, count]) => `${size}:${count}`)
    .sort()
    .join(" ");
}

/**
 * 110.14(A): one conductor in an opening, unless the part is identified for more, and then only such as its marking says.
 * Where a package lists combinations (UL 486C), only those.
 */
export function conductorsPerOpening({ connector }: Case, seats: readonly Seat[]): Objection[] {
  const clause = "110.14(A) count";
  return byHole(seats).flatMap((held) => {
    const first = held[0];
    if (first === undefined) return [];
    const { opening } = first;
    const here = held.map(({ conductor }) => conductor);
    const max = opening.conductorsMax;
    const most = max === "unmarked" || max === undefined ? 1 : max;
    if (opening.combinations !== undefined) {
      const asked = multiset(here.map(({ size }) => [size, 1]));
      const listed = opening.combinations.map((parts) => multiset(parts.map(({ size, count }) => [size, count])));
      if (!listed.includes(asked)) return [reject("110.3(B) combination", `${asked} is no listed combination`)];
      if (typeof max === "number" && here.length > max)
        return [reject(clause, `${here.length} in an opening for ${max}`)];
    } else if (connector.family === "twist-on") {
      return [ask("110.3(B) combination", "the combinations of the package are not known")];
    } else if (here.length > most) return [reject(clause, `${here.length} in an opening for ${most}`)];
    if (here.length < 2) return [];
    const shared = opening.shared;
    const mixed = here.some((conductor) => !alike(conductor, first.conductor));
    if (shared === undefined)
      return mixed && opening.combinations === undefined ? [ask(clause, "which conductors may share an opening")] : [];
    if (shared.sameSize && here.some(({ size }) => size !== first.conductor.size))
      return [reject(clause, "sizes differ in one opening")];
    if (shared.sameMetal && here.some(({ metal }) => metal !== first.conductor.metal))
      return [reject(clause, "metals differ in one opening")];
    const { metals } = shared;
    if (metals !== undefined && here.some(({ metal }) => !metals.includes(metal)))
      return [reject(clause, "a metal that may not share the opening")];
    const { from, to } = shared;
    if (from === undefined && to === undefined) return [];
    return here.flatMap(({ size }) => {
      const fits = insideRange({ from: from ?? "18 AWG", to: to ?? "2000 kcmil" }, size);
      if (fits === null) return [ask(clause, `${size} is not of the listed system of sizes`)];
      return fits ? [] : [reject(clause, `${size} may not share the opening`)];
    });
  });
}

/**
 * 408.41: each neutral of a panelboard has a terminal of its own, whatever number the label allows for grounds. Parallel
 * conductors of one circuit may share a terminal identified for them.
 */
export function panelNeutral({ joint }: Case, seats: readonly Seat[]): Objection[] {
  if (joint.role !== "neutral" || joint.function !== "termination" || joint.equipment?.kind !== "panelboard") return [];
  const sets = joint.circuit?.sets ?? 1;
  return byHole(seats).flatMap((held) =>
    held.length > 1 && held.length > sets ? [reject("408.41", `${held.length} neutrals in one terminal`)] : [],
  );
}
