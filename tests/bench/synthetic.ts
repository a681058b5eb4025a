/** Catalogues and jobs as large as one likes, made from the invented ones: the same for the same seed. */
import { demoCatalogue, larkfenJob } from "@landfast/data";
import { type Basis, type CatalogueItem, type Joint, type Opening, type SizeRange, sizeOf } from "@landfast/rules";
import { Dice } from "../oracle/dice.js";
import { indexOf, sizeAt } from "../oracle/scenes.js";

/** Marks of connectors that take both metals, and that take one. */
const MARKS = ["AL9CU", "AL9CU", "AL7CU", "AL7CU", "CU9AL", "CU", "AL9"];

/**
 * Connectors no two of which are alike in what the rules read: the invented ones, with ranges moved and marks, voltage,
 * places and prices changed.
 */
export function syntheticCatalogue(items: number, seed: number): CatalogueItem[] {
  const dice = new Dice(seed);
  const from = demoCatalogue().items;
  const known = new Set<string>();
  const made: CatalogueItem[] = [];
  for (let tries = 0; made.length < items && tries < items * 50; tries += 1) {
    const item = tries < from.length ? from[tries] : varied(dice.pick(from), dice);
    if (item === undefined) continue;
    const { partNumber: _number, price: _price, labourHours: _hours, description: _words, ...facts } = item;
    const text = JSON.stringify(facts);
    if (known.has(text)) continue;
    known.add(text);
    made.push({ ...item, partNumber: `SYN-${String(made.length).padStart(5, "0")}` });
  }
  if (made.length < items) throw new Error(`only ${String(made.length)} different connectors were found`);
  return made;
}

function varied(item: CatalogueItem, dice: Dice): CatalogueItem {
  const by = dice.pick([-3, -2, -1, 0, 1, 2, 3]);
  const wider = dice.pick([0, 0, 1, 2]);
  const openings = item.openings.map((opening): Opening => ({ ...opening, ranges: opening.ranges.map(moved) }));
  function moved(range: SizeRange): SizeRange {
    const [low, high] = [shifted(range.from, by - wider), shifted(range.to, by + wider)];
    return sizeOf(low).areaKcmil <= sizeOf(high).areaKcmil ? { ...range, from: low, to: high } : range;
  }
  return {
    ...item,
    openings,
    ...(item.metalMarking === undefined || dice.pick([true, false]) ? {} : { metalMarking: dice.pick(MARKS) }),
    ...(typeof item.voltageV === "number" ? { voltageV: dice.pick([300, 600, 600, 600, 1000]) } : {}),
    ...(dice.pick([true, false]) && Array.isArray(item.places) && item.places.includes("dry")
      ? { places: dice.pick([["dry"], ["dry", "damp"], ["dry", "damp", "wet"]] as const) }
      : {}),
    price: {
      amount: `${String(dice.pick([2, 5, 9, 14, 22, 40]))}.${dice.pick(["05", "10", "49", "95"])}`,
      currency: "USD",
    },
  };
}

function shifted(size: string, by: number): string {
  return sizeOf(size).series === "metric" ? size : sizeAt(indexOf(size) + by);
}

export const SYNTHETIC_BASIS: Basis = larkfenJob().basis;

/** Joints of so many kinds: those of the site with other sizes and loads, dealt out in turn. */
export function syntheticJoints(joints: number, kinds: number, seed: number): Joint[] {
  const dice = new Dice(seed);
  const from = larkfenJob().joints.map(
    ({ connector: _connector, partState: _state, tooling: _tooling, ...joint }): Joint => ({
      ...joint,
      partState: "new",
    }),
  );
  const models: Joint[] = [];
  for (let kind = 0; kind < kinds; kind += 1) {
    const joint = kind < from.length ? from[kind] : dice.pick(from);
    if (joint !== undefined) models.push(kind < from.length ? joint : changed(joint, kind, dice));
  }
  const made: Joint[] = [];
  for (let index = 0; index < joints; index += 1) {
    const model = models[index % models.length];
    if (model !== undefined) made.push({ ...model, mark: `M-${String(index)}` });
  }
  return made;
}

/** The load differs by a trifle from kind to kind, so that no two are equal. */
function changed(joint: Joint, kind: number, dice: Dice): Joint {
  const by = dice.pick([-2, -1, 0, 0, 1, 2]);
  const loadA = joint.circuit?.loadA;
  return {
    ...joint,
    conductors: joint.conductors.map((group) => ({ ...group, size: shifted(group.size, by) })),
    circuit: {
      sets: 1,
      ...joint.circuit,
      ...(loadA === undefined ? { voltageV: 100 + kind / 1e6 } : { loadA: loadA * 0.8 - kind / 1e6 }),
    },
  };
}
