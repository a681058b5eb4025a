import { exactOf } from "@landfast/rules";
import { decimalOf, times, ZERO } from "../money/decimal.js";
import { type Money, roundedMoney } from "../money/money.js";
import { toolLineId } from "./kits.js";
import { marksOf } from "./part-demand.js";
import type { PartsListGap, ToolLine } from "./parts-list.js";
import type { JointTool, JointUse, PartsListQuestion, ToolTerms } from "./parts-list-question.js";

/**
 * One line for each tool and each die, whoever uses it: a tool is had once for the job. What is owned costs nothing more;
 * what is not stated is not known.
 * Worked: three marks crimped with one tool and two dies: one line for the tool, one for each die.
 */
export function toolLines(
  uses: readonly JointUse[],
  terms: readonly ToolTerms[],
  rounding: PartsListQuestion["rounding"],
  currency: string | null,
  gaps: PartsListGap[],
): ToolLine[] {
  const users = new Map<string, { tool: JointTool; uses: JointUse[] }>();
  for (const use of uses)
    for (const { tool, die } of use.tools ?? [])
      for (const one of die === undefined ? [{ tool }] : [{ tool }, { tool, die }]) {
        const known = users.get(toolLineId(one));
        if (known === undefined) users.set(toolLineId(one), { tool: one, uses: [use] });
        else known.uses.push(use);
      }
  const stated = new Map(terms.map((one) => [toolLineId(one), one.terms]));
  return [...users]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([id, { tool, uses: mine }]): ToolLine => {
      const how = stated.get(id);
      const marks = marksOf(mine);
      if (how === undefined)
        gaps.push({ about: "tool-terms", sentence: `${id}: not stated whether it is owned, hired or bought`, marks });
      return {
        id,
        tool: tool.tool,
        die: tool.die ?? null,
        terms: how?.kind ?? "not-stated",
        days: how?.kind === "hired" ? how.days : null,
        cost: toolCost(how, rounding, currency),
        marks,
      };
    });
}

function toolCost(
  how: ToolTerms["terms"] | undefined,
  rounding: PartsListQuestion["rounding"],
  currency: string | null,
): Money | null {
  if (how?.kind === "owned") return currency === null ? null : roundedMoney(ZERO, currency, rounding);
  if (how?.kind === "hired")
    return roundedMoney(times(decimalOf(how.perDay.amount), exactOf(how.days)), how.perDay.currency, rounding);
  return how?.kind === "bought" ? roundedMoney(decimalOf(how.price.amount), how.price.currency, rounding) : null;
}
