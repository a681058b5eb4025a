import type { Circuit, ConductorGroup } from "@landfast/rules";
import { ask, type Case, carriesLoad, type Objection, reject } from "../case.js";
import { areaOf, cell, cmilOf, type Row, tableRows } from "../read-table.js";
import { ofDecimal, ofLength } from "../scaled-integer.js";
import { COLUMNS, type Column, insulationColumn, lowestColumn } from "./temperature.js";

type Edition = "2017" | "2020" | "2023";
const EDITIONS: readonly Edition[] = ["2017", "2020", "2023"];
const keyed = (table: string, key: string): Readonly<Record<Edition, ReadonlyMap<string, Row>>> => {
  const of = (edition: Edition): ReadonlyMap<string, Row> =>
    new Map(tableRows("nfpa70", edition, table).map((row) => [cell(row, key), row]));
  return { "2017": of("2017"), "2020": of("2020"), "2023": of("2023") };
};
const AMPACITY = keyed("ampacity-raceway", "size");
const SMALL = keyed("small-conductor", "size");
/** Standard ratings of 240.6(A) in millionths of an ampere, rising. */
const STANDARD = Object.fromEntries(
  EDITIONS.map((edition) => [
    edition,
    tableRows("nfpa70", edition, "standard-ratings").map((row) => ofDecimal(Number(cell(row, "key")))),
  ]),
) as unknown as Readonly<Record<Edition, readonly number[]>>;

/** Ampacity of one conductor in amperes; null where the table has no figure. */
export function tableAmpacity(
  edition: Edition,
  group: Pick<ConductorGroup, "metal" | "size">,
  column: Column,
): number | null {
  const row = AMPACITY[edition].get(group.size);
  const printed = row === undefined ? "" : cell(row, `${group.metal === "copper" ? "copper" : "aluminum"}${column}`);
  return printed === "" ? null : Number(printed);
}

/** The largest device of 240.4(D) in amperes; undefined where the size is none of its sizes. */
export function smallConductorLimit(
  edition: Edition,
  group: Pick<ConductorGroup, "metal" | "size">,
): number | null | undefined {
  const row = SMALL[edition].get(group.size);
  if (row === undefined) return undefined;
  const column = { copper: "copper", aluminum: "aluminum", "copper-clad-aluminum": "copperClad" }[group.metal];
  const printed = cell(row, column);
  return printed === "" ? null : Number(printed);
}

/** Load in four-millionths of an ampere, with 125 % of its continuous part; null where none is given. */
export function loadOf(circuit: Circuit): number | null {
  if (circuit.loadA !== undefined) return ofDecimal(circuit.loadA) * 4;
  if (circuit.continuousLoadA === undefined && circuit.nonContinuousLoadA === undefined) return null;
  return ofDecimal(circuit.continuousLoadA ?? 0) * 5 + ofDecimal(circuit.nonContinuousLoadA ?? 0) * 4;
}

/** The objections of 110.14(C), 240.4 and 240.21(B) to each conductor that carries load, at its column. */
export function ampacity(asked: Case): Objection[] {
  if (!carriesLoad(asked)) return [];
  const { joint } = asked;
  const sized = joint.conductors.filter((group) => insulationColumn(asked, group) !== "no-table");
  if (sized.length === 0) return [];
  const { circuit } = joint;
  if (circuit === undefined) return [ask("110.14(C)", "the circuit is not known")];
  return sized.flatMap((group) => {
    // The conductor that runs through a feeder tap belongs to the feeder and is no question of this joint.
    if (circuit.protection?.kind === "feeder-tap" && joint.function === "tap" && group.duty === "run") return [];
    const insulation = insulationColumn(asked, group);
    if (insulation === "unsuited") return [reject("310.4 insulation", `${group.insulation} in this place`)];
    if (insulation === null) return [ask("110.14(C)", "the insulation is rated below 60 C")];
    if (insulation !== "unknown") return atColumn(asked, circuit, group, insulation as Column);
    // Nothing gives the rating: what holds at every column holds.
    const outcomes = COLUMNS.map((column) => atColumn(asked, circuit, group, column));
    if (outcomes.every((objections) => objections.length === 0)) return [];
    if (outcomes.every((objections) => objections.some(({ kind }) => kind === "reject"))) return outcomes[2] ?? [];
    return [ask("110.14(C)", "the temperature rating of the insulation")];
  });
}

function atColumn(asked: Case, circuit: Circuit, group: ConductorGroup, insulation: Column): Objection[] {
  const clause = "110.14(C)";
  const { edition } = asked.basis;
  if (areaOf(group.size).system === "metric") return [ask("310.16", `no ampacity for ${group.size}`)];
  const column = lowestColumn(asked, group, insulation);
  if (column === null) return [ask(clause, "a terminal is rated below 60 C")];
  const each = tableAmpacity(edition, group, column);
  if (each === null) return [ask("310.16", `no ampacity for ${group.size} ${group.metal} at ${column} C`)];
  const total = each * circuit.sets;
  const millionths = total * 1_000_000;
  const load = loadOf(circuit);
  const objections: Objection[] = [];
  if (load !== null && load > millionths * 4) objections.push(reject(clause, `load above ${total} A at ${column} C`));
  const { protection } = circuit;
  if (protection === undefined) {
    if (asked.joint.role === "phase") objections.push(ask("240.4", "what protects the conductor"));
    else if (load === null) objections.push(ask(clause, "the load"));
    return objections;
  }
  // A load that is not given is bounded by the device, or, on a tap, by the device at its end.
  const bound =
    protection.kind === "device" ? protection.ratingA : protection.kind === "feeder-tap" ? protection.endDeviceA : null;
  if (load === null && (bound === null || ofDecimal(bound) > millionths)) objections.push(ask(clause, "the load"));
  if (asked.joint.role !== "phase") return objections;
  if (protection.kind === "device")
    objections.push(...deviceProtection(edition, group, millionths, protection.ratingA));
  if (protection.kind === "feeder-tap") objections.push(...feederTap(asked, millionths));
  return objections;
}

/** 240.4(B), (C), (D) with 240.6(A): the largest device ahead of a conductor. */
function deviceProtection(
  edition: Edition,
  group: ConductorGroup,
  ampacityMillionths: number,
  ratingA: number,
): Objection[] {
  const rating = ofDecimal(ratingA);
  const small = smallConductorLimit(edition, group);
  if (small !== undefined) {
    if (small === null) return [ask("240.4(D)", `no device for ${group.size} ${group.metal}`)];
    if (ratingA > small) return [reject("240.4(D)", `${ratingA} A on ${group.size}, at most ${small} A`)];
    const cmil = cmilOf(group.size) ?? 0;
    // 18 and 16 AWG, and 14 AWG copper-clad: only with loads and devices that are not among the facts of a joint.
    if (cmil < 4110 || (cmil === 4110 && group.metal !== "copper"))
      return [ask("240.4(D)", `kind of device and load for ${group.size}`)];
  }
  if (rating <= ampacityMillionths) return [];
  if (rating > 800_000_000) return [reject("240.4(C)", `${ratingA} A above the ampacity`)];
  const next = STANDARD[edition].find((standard) => standard >= ampacityMillionths);
  return rating === next ? [] : [reject("240.4(B)", `${ratingA} A is not the next standard rating`)];
}

const FOOT = ofLength({ value: 1, unit: "ft" });

/**
 * 240.21(B)(1), (2) and (5): three ways for a tap to be allowed, and one is enough. 240.4(B) does not help a tap: its
 * ampacity reaches the device at its end.
 */
function feederTap({ joint }: Case, ampacityMillionths: number): Objection[] {
  const tap = joint.circuit?.protection;
  if (tap?.kind !== "feeder-tap") return [];
  const length = ofLength(tap.length);
  // 240.21(C)(2), (4), (6): on a transformer's secondary the device of the primary counts by the ratio of the voltages, and
  // 240.21(C) keeps 240.4(B) away too. Both sides are multiplied by the secondary voltage.
  const [primaryV, secondaryV] = tap.through === undefined ? [1, 1] : [tap.through.primaryV, tap.through.secondaryV];
  const feeder = ofDecimal(tap.feederDeviceA) * primaryV;
  if (ampacityMillionths < ofDecimal(tap.endDeviceA))
    return [reject("240.21(B)", "ampacity below the device at the end of the tap")];
  const short =
    length <= 10 * FOOT &&
    (!tap.leavesEnclosure || (ampacityMillionths * 10 * secondaryV >= feeder && tap.physicallyProtected));
  const longer = length <= 25 * FOOT && ampacityMillionths * 3 * secondaryV >= feeder && tap.physicallyProtected;
  if (short || longer) return [];
  if (tap.physicallyProtected && tap.outdoors === true) return [];
  return [reject("240.21(B)", "neither the 10 ft, the 25 ft nor the outdoor rule is met")];
}
