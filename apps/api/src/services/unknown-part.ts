import { Problem } from "../problems/problem.js";
import type { Catalogue } from "./catalogue.js";

/** A part number that the catalogue does not hold, and where it stands in the body. */
export interface UnknownPart {
  readonly pointer: string;
  readonly partNumber: string;
}

/** Refuses part numbers that the catalogue does not hold. */
export function unknownPart(parts: readonly UnknownPart[], catalogue: Catalogue): Problem {
  return new Problem(
    "UNKNOWN_PART_NUMBER",
    `The catalogue "${catalogue.name}" does not hold every part named.`,
    parts.map(({ pointer, partNumber }) => ({
      pointer,
      detail: `the catalogue has no part "${partNumber}"`,
      accepted: "a part number listed by GET /v1/catalogue/connectors",
    })),
  );
}
