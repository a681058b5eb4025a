import { ClassSet } from "./class-set.js";

/** Which items can make which classes, and nothing else: classes and items by place. */
export interface Cover {
  /** For each class the items that can make it. */
  readonly classes: readonly (readonly number[])[];
  /** Items that are taken in any case. */
  readonly taken: readonly number[];
}

/** A smaller question with the same least number of items. */
export interface ReducedCover {
  /** The classes that are left to be covered, and by which of the items left. */
  readonly classes: readonly (readonly number[])[];
  /** Items of some best plan, found without search; `forced` of them because some class has no other. */
  readonly taken: readonly number[];
  readonly forced: readonly number[];
}

/**
 * Makes the question "fewest items that cover every class" smaller. Each step keeps at least one best plan:
 *
 * 1. A class that a taken item can make is covered; it asks for nothing more.
 * 2. A class with one maker: every plan has that item, so it is taken.
 * 3. A class whose makers include all makers of another: whatever covers the other covers it, so it is dropped.
 * 4. An item whose remaining classes are all makeable with another item: in any plan it can be exchanged for the
 *    other, and the plan has no more items than before, so it is dropped. Of two items with the same remaining classes
 *    the one later in order is dropped, so that both never go.
 *
 * The steps are repeated until none applies, since each can make room for the others.
 * Worked: classes {a}, {a, b}, {b, c}: the first forces a, which covers the second; of b and c, equal for the third, b
 * stays and is then forced. Taken: a and b, no search.
 */
export function reduceCover({ classes, taken }: Cover): ReducedCover {
  let left: (readonly number[])[] = [...classes];
  const kept = new Set(taken);
  const forced = new Set<number>(classes.flatMap((makers) => (makers.length === 1 ? makers : [])));
  for (;;) {
    const before = weightOf(left);
    for (const makers of left) if (makers.length === 1) for (const only of makers) kept.add(only);
    left = left.filter((makers) => !makers.some((item) => kept.has(item)));
    left = withoutWiderClasses(left);
    left = withoutLesserItems(left);
    if (weightOf(left) === before) break;
  }
  return { classes: left, taken: [...kept].sort((a, b) => a - b), forced: [...forced].sort((a, b) => a - b) };
}

/** Step 3. Of equal classes the first stays. */
function withoutWiderClasses(classes: readonly (readonly number[])[]): (readonly number[])[] {
  const byFewest = classes
    .map((makers, place) => ({ makers, place }))
    .sort((a, b) => a.makers.length - b.makers.length || a.place - b.place);
  const stay: { makers: readonly number[]; place: number }[] = [];
  for (const one of byFewest) {
    const makers = new Set(one.makers);
    if (!stay.some((other) => other.makers.every((item) => makers.has(item)))) stay.push(one);
  }
  return stay.sort((a, b) => a.place - b.place).map(({ makers }) => makers);
}

/** Step 4. */
function withoutLesserItems(classes: readonly (readonly number[])[]): (readonly number[])[] {
  const covers = new Map<number, ClassSet>();
  const counts = new Map<number, number>();
  classes.forEach((makers, place) => {
    for (const item of makers) {
      let cover = covers.get(item);
      if (cover === undefined) {
        cover = new ClassSet(classes.length);
        covers.set(item, cover);
      }
      cover.add(place);
      counts.set(item, (counts.get(item) ?? 0) + 1);
    }
  });
  const dropped = new Set<number>();
  for (const [item, cover] of covers) {
    const count = counts.get(item) ?? 0;
    // Whoever makes all of its classes makes the one with the fewest makers, so only those need be asked.
    const rivals = classes.filter((makers) => makers.includes(item)).reduce((a, b) => (b.length < a.length ? b : a));
    const isLesser = rivals.some((other) => {
      if (other === item || dropped.has(other)) return false;
      const otherCount = counts.get(other) ?? 0;
      const otherCover = covers.get(other);
      if (otherCover === undefined || otherCount < count || !cover.isWithin(otherCover)) return false;
      return otherCount > count || other < item;
    });
    if (isLesser) dropped.add(item);
  }
  return classes.map((makers) => makers.filter((item) => !dropped.has(item)));
}

function weightOf(classes: readonly (readonly number[])[]): number {
  return classes.reduce((sum, makers) => sum + 1 + makers.length, 0);
}
