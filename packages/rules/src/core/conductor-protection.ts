/**
 * Whether a device protects a conductor by its ampacity.
 *
 * NFPA 70 240.4 (2017, 2020, 2023), in our words: the ampacity reaches the device's rating; (B) or the device is up to
 * 800 A, the next standard rating above the ampacity, and the circuit feeds no more than one receptacle for plugged-in
 * portable loads; (C) above 800 A the ampacity itself reaches it; (D) 14, 12 and 10 AWG have a largest device of their
 * own, whatever their ampacity.
 * Worked: 180 A under 200 A: 200 A is the next standard rating, allowed; 205 A under 225 A: allowed; 65 A under 80 A:
 * 70 A is the next one, refused.
 */
import type { CalculationSheet } from "./calculation-sheet.js";
import type { CircuitKind } from "./circuit-load.js";
import type { Citation } from "./citation.js";
import type { ConductorMetal } from "./conductor.js";
import type { Edition } from "./edition.js";
import type { Step } from "./finding.js";
import { CAPPED_SIZES, smallConductorCap } from "./small-conductor.js";
import { type DeviceKind, NEXT_RATING_UP_TO_A, standardRatingFrom } from "./standard-rating.js";
import { cellAt, isRefused } from "./table.js";

export interface ProtectedConductor {
  readonly size: Step;
  readonly metal: ConductorMetal;
  /** Of all sets, after correction and at the terminations. */
  readonly ampacity: Step;
  readonly device: Step;
  readonly deviceKind: DeviceKind;
  readonly circuit: CircuitKind;
}

export interface Protection {
  readonly holds: boolean;
  /** The next standard rating above the ampacity was made use of. */
  readonly byNextRating: boolean;
  readonly because: string;
  readonly cite: Citation;
  readonly uses: readonly Step[];
}

export function protectionOf(sheet: CalculationSheet, conductor: ProtectedConductor, edition: Edition): Protection {
  const byAmpacity = protectionByAmpacity(sheet, conductor, edition);
  if (!byAmpacity.holds || !CAPPED_SIZES.includes(String(conductor.size.value))) return byAmpacity;
  const cite = edition.clauses.smallConductors;
  const size = String(conductor.size.value);
  const cap = smallConductorCap(edition, conductor.metal, size);
  if (isRefused(cap))
    return {
      ...byAmpacity,
      holds: false,
      because: `${size} in this metal is allowed for uses listed one by one only`,
      cite,
    };
  const most = sheet.read("largest device of a small conductor", cap, [conductor.size]);
  const holds = sheet.compare("the device is within the cap of a small conductor", conductor.device, "<=", most, cite);
  return holds
    ? { ...byAmpacity, uses: [...byAmpacity.uses, sheet.last] }
    : {
        holds,
        byNextRating: false,
        because: `${size} is protected at no more than ${String(most.value)} A, whatever its ampacity`,
        cite,
        uses: [...byAmpacity.uses, sheet.last],
      };
}

function protectionByAmpacity(
  sheet: CalculationSheet,
  { ampacity, device, deviceKind, circuit }: ProtectedConductor,
  edition: Edition,
): Protection {
  const { clauses } = edition;
  if (sheet.compare("the ampacity reaches the device", ampacity, ">=", device, clauses.ampacityProtection))
    return {
      holds: true,
      byNextRating: false,
      because: "the ampacity reaches the rating of the device",
      cite: clauses.ampacityProtection,
      uses: [sheet.last],
    };
  const uses = [sheet.last];
  const refused = (because: string, cite: Citation): Protection => ({
    holds: false,
    byNextRating: false,
    because,
    cite,
    uses: [...uses, sheet.last],
  });
  const top = sheet.state("largest device above the ampacity", NEXT_RATING_UP_TO_A, clauses.over800A, "A");
  if (!sheet.compare("the device may be the next standard rating", device, "<=", top, clauses.over800A))
    return refused("above 800 A the ampacity itself reaches the device", clauses.over800A);
  uses.push(sheet.last);
  if (circuit === "receptacle-branch-circuit") {
    uses.push(sheet.given("kind of circuit", circuit, "question/circuit"));
    return refused(
      "a circuit with more than one receptacle for plugged-in loads has no device above its ampacity",
      clauses.nextStandardRating,
    );
  }
  const next = standardRatingStep(sheet, ampacity, deviceKind, edition);
  if (!sheet.compare("the device is the next standard rating", device, "=", next, clauses.nextStandardRating))
    return refused(
      "neither the ampacity nor the next standard rating above it reaches the device",
      clauses.ampacityProtection,
    );
  return {
    holds: true,
    byNextRating: true,
    because: "the device is the next standard rating above the ampacity",
    cite: clauses.nextStandardRating,
    uses: [...uses, sheet.last],
  };
}

/** The smallest standard rating that is not below the amperes, as a step; 0 where the list ends before. */
export function standardRatingStep(sheet: CalculationSheet, amperes: Step, kind: DeviceKind, edition: Edition): Step {
  const cite = edition.clauses.standardRatings;
  const label = "standard rating at or above it";
  const ratingA = standardRatingFrom(edition, Number(amperes.value), kind);
  const listed = ratingA === undefined ? undefined : cellAt(edition.tables.standardRatings, String(ratingA), "use");
  if (ratingA === undefined || listed === undefined || isRefused(listed))
    return sheet.conclude(label, 0, [amperes], "the list ends below it", cite, "A");
  const use = sheet.read(`who may use ${String(ratingA)} A`, listed, []);
  return sheet.conclude(
    label,
    ratingA,
    [amperes, use],
    "the first of the standard ratings that is not below it",
    cite,
    "A",
  );
}
