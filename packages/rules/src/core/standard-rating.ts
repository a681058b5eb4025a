/**
 * Standard ampere ratings of fuses and circuit breakers.
 *
 * NFPA 70 240.6(A) (2017, 2020, 2023): the list, some of its ratings for fuses only.
 * Silent: adjustable trips, whose rating is their highest setting unless access to it is restricted (240.6(B), (C)).
 */
import type { Edition } from "./edition.js";
import { cellAt, isRefused, type TableRow } from "./table.js";

export const DEVICE_KINDS = ["circuit-breaker", "fuse"] as const;
export type DeviceKind = (typeof DEVICE_KINDS)[number];

/** Up to this rating the next standard one above the ampacity may protect a conductor (240.4(B)). */
export const NEXT_RATING_UP_TO_A = 800;

/** The smallest standard rating that is not below the amperes, of any device or of one kind; undefined above the last. */
export function standardRatingFrom(edition: Edition, amperes: number, kind?: DeviceKind): number | undefined {
  for (const row of edition.tables.standardRatings.rows) {
    const ratingA = Number(row.key[0]);
    if (ratingA >= amperes && isFor(edition, row, kind)) return ratingA;
  }
  return undefined;
}

/** The largest standard rating that is not above the amperes; undefined below the first. */
export function standardRatingTo(edition: Edition, amperes: number, kind: DeviceKind): number | undefined {
  let found: number | undefined;
  for (const row of edition.tables.standardRatings.rows) {
    const ratingA = Number(row.key[0]);
    if (ratingA <= amperes && isFor(edition, row, kind)) found = ratingA;
  }
  return found;
}

function isFor({ tables }: Edition, row: TableRow, kind: DeviceKind | undefined): boolean {
  if (kind !== "circuit-breaker") return true;
  const use = cellAt(tables.standardRatings, row.label, "use");
  return !isRefused(use) && use.value !== "fuse-only";
}
