import { marksOf } from "./part-demand.js";
import type { PartsListGap } from "./parts-list.js";
import type { JointUse, ListedPart, NeedKind } from "./parts-list-question.js";

/** What joints need and nobody has chosen: named, never filled in. */
export function usageGaps(uses: readonly JointUse[], parts: ReadonlyMap<string, ListedPart>): PartsListGap[] {
  return [...needsWithoutPart(uses), ...openingsWithoutPlugs(uses), ...reducersAtOneEnd(uses, parts)];
}

function needsWithoutPart(uses: readonly JointUse[]): PartsListGap[] {
  const open = new Map<NeedKind, JointUse[]>();
  for (const use of uses)
    for (const { kind, partNumber } of use.needs ?? [])
      if (partNumber === null) open.set(kind, [...(open.get(kind) ?? []), use]);
  return [...open]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([kind, members]) => ({
      about: "no-part-chosen",
      sentence: `${words(kind)} needed, and no part is chosen`,
      marks: marksOf(members),
    }));
}

function openingsWithoutPlugs(uses: readonly JointUse[]): PartsListGap[] {
  const open = uses.filter(
    ({ unusedOpenings = 0, needs = [] }) => unusedOpenings > 0 && !needs.some(({ kind }) => kind === "plug"),
  );
  if (open.length === 0) return [];
  const openings = open.reduce((sum, { joints, unusedOpenings = 0 }) => sum + joints * unusedOpenings, 0);
  return [
    {
      about: "no-plugs",
      sentence: `${String(openings)} openings stay empty, and no plugs are listed for them`,
      marks: marksOf(open),
    },
  ];
}

/** A conductor raised for voltage drop seldom fits at either end: a reducer at one end only is worth a look. */
function reducersAtOneEnd(uses: readonly JointUse[], parts: ReadonlyMap<string, ListedPart>): PartsListGap[] {
  const circuits = new Map<string, JointUse[]>();
  for (const use of uses)
    if (use.circuitEnd !== undefined)
      circuits.set(use.circuitEnd.circuit, [...(circuits.get(use.circuitEnd.circuit) ?? []), use]);
  const hasReducer = ({ needs = [], partNumber }: JointUse): boolean =>
    parts.get(partNumber)?.kind === "reducer" || needs.some(({ kind }) => kind === "reducer");
  return [...circuits]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .flatMap(([circuit, members]): PartsListGap[] => {
      const ends = new Set(members.filter(hasReducer).map(({ circuitEnd }) => circuitEnd?.end));
      if (ends.size !== 1) return [];
      const [end] = ends;
      return [
        {
          about: "reducer-at-one-end",
          sentence: `circuit ${circuit} has a reducer at its ${end === "from" ? "supply" : "load"} end only; see whether the other end needs one`,
          marks: marksOf(members),
        },
      ];
    });
}

function words(kind: NeedKind): string {
  return kind.replace("-", " ");
}
