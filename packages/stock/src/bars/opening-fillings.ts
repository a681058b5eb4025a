import { parseSize, type sizeOf } from "@landfast/rules";
import { UnusableProblem } from "../problem/check-problem.js";
import type { BarConductor, BarOpening, BarRole, OpeningPermit } from "./bar-question.js";

/** How many of each conductor, by place in the question, lie in one opening. */
export type Filling = ReadonlyMap<number, number>;

/** A bar's marking with more different fillings than this is a slip: real ones have dozens. */
const MOST_FILLINGS = 5000;

/**
 * Every way to fill one opening as its marking permits. A neutral lies alone (NFPA 70 408.41: each grounded conductor
 * of a panelboard has a terminal to itself, unlike the equipment grounding conductors); that conductors in parallel may
 * be an exception is not used. Sizes are compared by area and within one series only: a range in AWG says nothing of
 * mm2.
 * Worked: permits "one, 14-4" and "two alike, 14-12", a 12 AWG neutral and 12 and 14 AWG grounds, all copper: {neutral},
 * {12}, {14}, {12, 12}, {14, 14}.
 * @throws UnusableProblem for an unreadable size or a marking with too many fillings.
 */
export function openingFillings(
  opening: BarOpening,
  takes: readonly BarRole[],
  conductors: readonly BarConductor[],
): readonly Filling[] {
  const fillings = new Map<string, Filling>();
  for (const permit of opening.permits) {
    const fitting = conductors.flatMap((conductor, place) =>
      takes.includes(conductor.role) && isPermitted(conductor, permit) ? [place] : [],
    );
    const singles = permit.conductors === 1 ? fitting : [];
    for (const place of singles) fillings.set(String(place), new Map([[place, 1]]));
    if (permit.conductors < 2) continue;
    const grounds = fitting.filter((place) => conductors[place]?.role === "equipment-ground");
    for (const places of multisets(grounds, permit.conductors, (chosen) => goTogether(chosen, permit, conductors))) {
      const counts = new Map<number, number>();
      for (const place of places) counts.set(place, (counts.get(place) ?? 0) + 1);
      fillings.set(places.join(","), counts);
      if (fillings.size > MOST_FILLINGS)
        throw new UnusableProblem([`opening ${opening.id}: its marking permits too many different fillings`]);
    }
  }
  return [...fillings.values()];
}

function isPermitted({ size, metal, stranding }: BarConductor, permit: OpeningPermit): boolean {
  const strandings = permit.strandings === "unmarked" ? (["class-B", "class-C"] as const) : permit.strandings;
  if (!permit.metals.includes(metal) || !strandings.some((one) => one === stranding)) return false;
  const [one, from, to] = [size, permit.from, permit.to].map(readSize);
  if (one === undefined || from === undefined || to === undefined) return false;
  return (
    one.series === from.series &&
    one.series === to.series &&
    one.areaKcmil >= from.areaKcmil &&
    one.areaKcmil <= to.areaKcmil
  );
}

function goTogether(places: readonly number[], permit: OpeningPermit, conductors: readonly BarConductor[]): boolean {
  const [first, ...others] = places.map((place) => conductors[place]);
  return others.every(
    (one) => (!permit.sameSize || one?.size === first?.size) && (!permit.sameMetal || one?.metal === first?.metal),
  );
}

/** Every choice of `count` places, repeats allowed, in rising order, that passes as it grows. */
function* multisets(
  places: readonly number[],
  count: number,
  passes: (chosen: readonly number[]) => boolean,
  chosen: readonly number[] = [],
): Generator<readonly number[]> {
  if (chosen.length === count) {
    yield chosen;
    return;
  }
  for (const place of places) {
    if (place < (chosen.at(-1) ?? 0)) continue;
    const next = [...chosen, place];
    if (passes(next)) yield* multisets(places, count, passes, next);
  }
}

function readSize(text: string): ReturnType<typeof sizeOf> {
  const size = parseSize(text);
  if ("problem" in size) throw new UnusableProblem([size.problem]);
  return size;
}
