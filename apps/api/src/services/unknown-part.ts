import { Problem } from "../problems/problem.js";
import type { Catalogue } from "./catalogue.js";

/** A part number that the catalogue does not hold, and where it stands in the body. */
export interface UnknownPart {
  readonly pointer: string;
  readonly partNumber: string;
}

/** Refuses part numbers that the catalogue does not hold, or that are not to be used on the day in question. */
export function unknownPart(parts: readonly UnknownPart[], catalogue: Catalogue): Problem {
  const outOfForce = parts.filter(({ partNumber }) => catalogue.outOfForce.has(partNumber));
  if (outOfForce.length > 0)
    return new Problem(
      "NOT_IN_FORCE",
      `The catalogue "${catalogue.name}" holds parts that are named here, but they are not in force.`,
      outOfForce.map(({ pointer, partNumber }) => ({
        pointer,
        detail: `"${partNumber}" ${catalogue.outOfForce.get(partNumber) ?? ""}`,
        accepted: "a part in force on that day, or an earlier version of the catalogue",
      })),
    );
  return new Problem(
    "UNKNOWN_PART_NUMBER",
    `The catalogue "${catalogue.name}" does not hold every part named.`,
    parts.map(({ pointer, partNumber }) => ({
      pointer,
      detail: `the catalogue has no part "${partNumber}"`,
      accepted: `a part number listed by GET ${catalogue.listedAt}`,
    })),
  );
}
