import type { ConductorGroup } from "../../core/conductor.js";
import { isBuildingWire } from "../../core/conductor-ampacity.js";
import { sizeOf } from "../../core/conductor-size.js";
import { metalWords } from "../../core/conductor-words.js";
import type { Joint } from "../../core/joint.js";
import type { Remedy } from "./remedy.js";
import { inOwnTerminal, remedyOf, withPart } from "./remedy-joint.js";
import type { RemedyQuestion } from "./remedy-question.js";
import { ofSize, sizesDownFrom } from "./stub.js";

/** More legs than this are a design of their own. */
const LEGS_MAX = 4;

/**
 * Several smaller conductors in parallel in place of one that is too large to land.
 *
 * NFPA 70 310.10(G) (2020, 2023; 310.10(H) in 2017), in our words: legs of 1/0 AWG or larger that are alike in length,
 * metal, size and insulation and end in the same manner. The legs together have at least the area of the conductor they
 * replace, so that what it was sized for (load, voltage drop) still holds. The fewest legs, and of those the smallest.
 * Worked: 500 kcmil as two legs: each at least 250 kcmil, because 4/0 AWG twice is 423.2 kcmil.
 * Silent: raceways, grounds in each of them and the other end of the run are another matter and are named.
 */
export function parallelSets(question: RemedyQuestion): Remedy[] {
  const { joint, edition } = question;
  const [conductor, other] = joint.conductors;
  const { circuit } = joint;
  if (conductor === undefined || other !== undefined || circuit === undefined) return [];
  if (conductor.count !== 1 || circuit.sets !== 1 || !isBuildingWire(conductor)) return [];
  const area = sizeOf(conductor.size).areaKcmil;
  const sizes = sizesDownFrom(conductor.size, edition).toReversed();
  for (let legs = 2; legs <= LEGS_MAX; legs += 1)
    for (const size of sizes) {
      if (!(sizeOf(size).areaKcmil * legs >= area) || size === conductor.size) continue;
      const leg: ConductorGroup = { ...ofSize(conductor, size), count: legs };
      const inParallel: Joint = {
        ...joint,
        conductors: [leg],
        circuit: { ...circuit, sets: legs, parallelLegsAlike: true },
      };
      const made = inOwnTerminal(question, inParallel) ?? withPart(question, inParallel);
      if (made === undefined) continue;
      return [
        remedyOf(
          {
            kind: "parallel-sets",
            sentence: `Run ${String(legs)} conductors of ${size} ${metalWords(conductor.metal)} in parallel in place of one of ${conductor.size}, and land them in ${made.joint.connector.description}.`,
            provided: [
              "All legs have the same length, metal, size and insulation and end in the same manner.",
              "The other end of the run has to take the legs too, and each raceway needs its ground.",
              "The price leaves out the conductors and raceways.",
            ],
          },
          [made],
        ),
      ];
    }
  return [];
}
