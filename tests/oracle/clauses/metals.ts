import type { ConductorMetal, Connector } from "@landfast/rules";
import { ask, byHole, type Case, locationOf, type Objection, reject, type Seat } from "../case.js";
import { cell, tableRows } from "../read-table.js";

interface Mark {
  readonly metals: ReadonlySet<string>;
  readonly ratingC: number | null;
  readonly intermixDry: boolean;
}

const MARKS: ReadonlyMap<string, Mark> = new Map(
  tableRows("ul486", "2023", "marking-codes").map((row) => [
    cell(row, "key"),
    {
      metals: new Set(cell(row, "metals").split(" ")),
      ratingC: cell(row, "ratingC") === "" ? null : Number(cell(row, "ratingC")),
      intermixDry: cell(row, "intermix") === "dry",
    },
  ]),
);

/** All marks of the table and the missing mark: what an unknown mark may turn out to be. */
export const EVERY_MARK: readonly string[] = [...MARKS.keys(), "unmarked"];

/** What a mark says; a part without one takes copper only; null for a code that is not in the table. */
export function markOf(connector: Connector): Mark | null {
  const code = connector.metalMarking;
  if (code === undefined) throw new Error("the mark must be settled first");
  if (code === "unmarked") return { metals: new Set(["copper"]), ratingC: null, intermixDry: false };
  return MARKS.get(code) ?? null;
}

const aluminumWithin = (metal: ConductorMetal): boolean => metal !== "copper";

/**
 * 110.14, first part: a terminal takes only the metals it is marked for. Copper-clad aluminum needs a mark with both
 * metals. 404.14(C) and 406.3(C): a device of 15 or 20 A takes aluminum only under the mark CO/ALR, and that mark is one
 * of such devices alone.
 */
export function metalMark(asked: Case): Objection[] {
  const { joint, connector } = asked;
  const clause = "110.14 metal";
  const mark = markOf(connector);
  if (mark === null) return [ask(clause, `the mark ${connector.metalMarking ?? ""} is not known`)];
  const objections: Objection[] = [];
  const metals = new Set(joint.conductors.map(({ metal }) => metal));
  const device =
    connector.family === "wiring-device-terminal" || (asked.ownTerminal && joint.equipment?.kind === "wiring-device");
  const protection = joint.circuit?.protection;
  for (const metal of metals) {
    // 404.14(D), 406.3(D) of 2023: devices of 15 and 20 A without CO/ALR are for copper and copper-clad aluminum. Larger
    // ones without a mark are for copper, as any other part.
    const larger = protection?.kind === "device" && !(protection.ratingA <= 20);
    if (device && metal === "copper-clad-aluminum" && connector.metalMarking === "unmarked" && !larger) {
      if (asked.basis.edition !== "2023" || protection?.kind !== "device")
        objections.push(ask(clause, "copper-clad aluminum on a device without a mark"));
      continue;
    }
    const taken =
      metal === "copper-clad-aluminum"
        ? mark.metals.has("copper") && mark.metals.has("aluminum")
        : mark.metals.has(metal);
    if (!taken) objections.push(reject(clause, `${metal} under the mark ${connector.metalMarking ?? ""}`));
  }
  if (![...metals].some(aluminumWithin)) return objections;
  const coAlr = connector.metalMarking === "CO/ALR";
  if (!device) {
    if (coAlr) objections.push(reject(clause, "CO/ALR is a mark of wiring devices"));
    return objections;
  }
  if (protection?.kind !== "device") {
    if (!coAlr) objections.push(ask(clause, "rating of the wiring device"));
  } else if (protection.ratingA <= 20) {
    if (!coAlr && metals.has("aluminum"))
      objections.push(reject(clause, "aluminum on a 15 or 20 A device needs CO/ALR"));
  } else if (coAlr) objections.push(reject(clause, "CO/ALR serves devices up to 20 A"));
  return objections;
}

/**
 * 110.14, first part: unlike metals do not touch, unless the part is identified for it; the intermixing mark holds in dry
 * places. From 2020 on copper and copper-clad aluminum are no longer unlike.
 */
export function touchingMetals(asked: Case, seats: readonly Seat[]): Objection[] {
  const { connector, basis } = asked;
  const touching = connector.openingsApart ? byHole(seats) : [seats];
  for (const group of touching) {
    const metals = new Set(group.map(({ conductor }) => conductor.metal));
    if (basis.edition !== "2017" && !metals.has("aluminum")) continue;
    if (metals.size < 2) continue;
    const mark = markOf(connector);
    if (mark === null) return [ask("110.14 intermix", "the mark is not known")];
    if (!mark.intermixDry) return [reject("110.14 intermix", "unlike metals touch without the intermixing mark")];
    if (locationOf(asked) !== "dry") return [reject("110.14 intermix", "the intermixing mark holds in dry places")];
  }
  return [];
}
