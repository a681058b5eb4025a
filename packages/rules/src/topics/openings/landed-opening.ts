import { conductorPath } from "../../core/conductor-path.js";
import { sizeOf } from "../../core/conductor-size.js";
import { listWords, metalWords } from "../../core/conductor-words.js";
import type { Step } from "../../core/finding.js";
import type { Landing } from "../../core/rule.js";
import type { Worksheet } from "../../core/worksheet.js";

/** How many conductors lie in the opening. */
export function conductorsIn({ conductors }: Landing): number {
  let total = 0;
  for (const { count } of conductors) total += count;
  return total;
}

/** The opening that holds most, the first of several; undefined where none holds any. */
export function fullestOf(landings: readonly Landing[]): Landing | undefined {
  let fullest: Landing | undefined;
  for (const landing of landings)
    if (fullest === undefined || conductorsIn(landing) > conductorsIn(fullest)) fullest = landing;
  return fullest;
}

/** Openings of one kind that hold the same are judged once: forty neutrals in forty holes are one question. */
export function unlikeLandings(landings: readonly Landing[]): Landing[] {
  const kept: Landing[] = [];
  for (const landing of landings) if (!kept.some((one) => isLike(one, landing))) kept.push(landing);
  return kept;
}

function isLike(one: Landing, other: Landing): boolean {
  return (
    one.openingIndex === other.openingIndex &&
    one.conductors.length === other.conductors.length &&
    one.conductors.every((landed, at) => {
      const against = other.conductors[at];
      return landed.group === against?.group && landed.count === against.count;
    })
  );
}

/** The number of conductors in an opening, as the landing puts them there. */
export function insideStep(worksheet: Worksheet, landing: Landing): Step {
  const groups = landing.conductors.map(({ group, conductor }) =>
    worksheet.given(
      `${conductor.size} ${metalWords(conductor.metal)} conductors of the joint`,
      conductor.count,
      conductorPath(group, "count"),
    ),
  );
  return worksheet.conclude(
    `conductors in one opening "${landing.opening.id}"`,
    conductorsIn(landing),
    groups,
    "as the conductors are landed",
  );
}

/** "2 x 12 AWG copper and 1 x 10 AWG copper", largest first. */
export function contentWords({ conductors }: Landing): string {
  return listWords(
    [...conductors]
      .sort((a, b) => sizeOf(b.conductor.size).areaKcmil - sizeOf(a.conductor.size).areaKcmil)
      .map(({ conductor, count }) => `${count} x ${conductor.size} ${metalWords(conductor.metal)}`),
  );
}

/** "1 conductor", "2 conductors". */
export function conductorCount(count: number): string {
  return count === 1 ? "1 conductor" : `${count} conductors`;
}
