import { decimalText } from "../money/decimal.js";
import { NO_AREA } from "../problem/group-joints.js";
import { byPart, earliestOf, marksOf, sumOf } from "./part-demand.js";
import type { Kit } from "./parts-list.js";
import type { JointTool, JointUse } from "./parts-list-question.js";

/** Marks without a panel of their own stand under this heading. */
export const NO_PANEL = "no panel stated";

/**
 * What each area, or each panel, is to be handed. The quantities are net, so the kits of a job add up to the net of its
 * list. Headings by code unit.
 */
export function kitsBy(uses: readonly JointUse[], place: "area" | "panel"): Kit[] {
  const groups = new Map<string, JointUse[]>();
  for (const use of uses) {
    const heading = use[place] ?? (place === "area" ? NO_AREA : NO_PANEL);
    const known = groups.get(heading);
    if (known === undefined) groups.set(heading, [use]);
    else known.push(use);
  }
  return [...groups]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([heading, members]) => ({
      heading,
      lines: [...byPart(members)].map(([partNumber, demands]) => ({
        id: partLineId(partNumber),
        partNumber,
        net: decimalText(sumOf(demands)),
        marks: marksOf(demands.map(({ use }) => use)),
      })),
      tools: [...new Set(members.flatMap(({ tools = [] }) => tools.map(toolLineId)))].sort(),
      neededBy: earliestOf(members),
    }));
}

export function partLineId(partNumber: string): string {
  return `part/${partNumber}`;
}

export function toolLineId({ tool, die }: JointTool): string {
  return die === undefined ? `tool/${tool}` : `die/${tool}/${die}`;
}
