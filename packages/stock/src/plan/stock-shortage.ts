import type { Model, ModelColumn, ModelRow, SolveLimits, Solver } from "../solver/solver.js";
import { OutOfTime } from "../solver/solver.js";
import { type Offer, type OfferedClass, unservableOf } from "./offer.js";

/**
 * Where cost counts, an item without a price can only be used from stock. Classes that have no other maker compete for
 * that stock; those that it does not reach for are taken out of the offer and named. As many joints as can be are
 * kept, a class as a whole or not at all.
 * Worked: 4 parts on hand, no price; classes of 3 and 2 joints can be made with nothing else: the class of 3 is kept.
 */
export async function withoutShortClasses(offer: Offer, solver: Solver, limits: SolveLimits): Promise<Offer> {
  const isStockOnly = (item: number): boolean => offer.items[item]?.price === null;
  const atRisk = offer.classes.filter(({ makers }) => makers.every(({ item }) => isStockOnly(item)));
  if (atRisk.length === 0) return offer;
  const answer = await solver.solve(shortageModel(atRisk, offer), limits);
  if (answer.status !== "optimal") throw new OutOfTime("the stock on hand could not be shared out in time");
  const short = new Set(atRisk.filter((_, place) => (answer.values[place] ?? 0) < 0.5));
  return {
    ...offer,
    classes: offer.classes.filter((one) => !short.has(one)),
    unservable: [
      ...offer.unservable,
      ...[...short].map(({ jointClass, makers }) =>
        unservableOf(
          jointClass,
          makers.map(({ item }) => {
            const { partNumber = "", onHand = 0 } = offer.items[item] ?? {};
            return `${partNumber} has no price, and the ${String(onHand)} on hand are too few for it`;
          }),
        ),
      ),
    ],
  };
}

/** One column for each class, 1 when it is kept, then one for each way to make it. */
function shortageModel(classes: readonly OfferedClass[], offer: Offer): Model {
  const columns: ModelColumn[] = classes.map(({ jointClass }) => ({
    cost: -jointClass.joints,
    lower: 0,
    upper: 1,
    integer: true,
  }));
  const rows: ModelRow[] = [];
  const uses = new Map<number, { columns: number[]; coefficients: number[] }>();
  classes.forEach(({ alike, jointClass, makers }, place) => {
    const each = alike ? jointClass.joints : 1;
    const made: number[] = [];
    for (const { item, partsPerJoint } of makers) {
      made.push(columns.length);
      const use = uses.get(item) ?? { columns: [], coefficients: [] };
      use.columns.push(columns.length);
      use.coefficients.push(each * partsPerJoint);
      uses.set(item, use);
      columns.push({ cost: 0, lower: 0, upper: jointClass.joints / each, integer: true });
    }
    rows.push({
      lower: 0,
      upper: 0,
      columns: [...made, place],
      coefficients: [...made.map(() => 1), -jointClass.joints / each],
    });
  });
  for (const [item, use] of uses)
    rows.push({ lower: Number.NEGATIVE_INFINITY, upper: offer.items[item]?.onHand ?? 0, ...use });
  return { columns, rows, step: 1 };
}
