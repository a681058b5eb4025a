import { decimalOf, type Money, minus, moneyOf, roundedMoney } from "@landfast/stock";
import type { NamedParts } from "../services/named-parts.js";
import type { JobTradeOff } from "../services/stock-plans.js";
import { PAGE_WIDTH } from "./schedule-text.js";
import { paragraph, tableLines } from "./text-layout.js";

/** Characters of the longest bar. */
const BAR = 48;

/**
 * What the connectors that a job names come to, and what fewer or cheaper ones would, for a terminal.
 * @param whole the trade-off for all joints of the job.
 * @param same the trade-off for the joints that the rules accept with the connector they name, so that like is compared
 *   with like; null where there are none.
 */
export function stockText(whole: JobTradeOff, same: JobTradeOff | null): string {
  const title = `Stock: ${whole.from.job.name}`;
  const lines = [title, "=".repeat(title.length)];
  const { asNamed } = whole;
  if (asNamed !== null) {
    lines.push(
      ...paragraph(`As named: ${named(asNamed.all)}. Packs are whole; prices: ${whole.from.prices}.`, PAGE_WIDTH),
      ...paragraph(`Of these the rules accept ${named(asNamed.accepted)}.`, PAGE_WIDTH),
    );
    if (same !== null)
      lines.push(
        "",
        ...paragraph(
          `The same ${String(asNamed.accepted.joints)} joints with any connector of the catalogue that the rules accept:`,
          PAGE_WIDTH,
        ),
        ...curveLines(same, asNamed.accepted),
      );
  }
  lines.push("", `All ${String(whole.joints)} joints that the catalogue can make:`, ...curveLines(whole, null));
  const { noPartNeeded, withoutPart, barred } = whole.notPlanned;
  lines.push(
    "",
    ...paragraph(
      `${String(jointsOf(noPartNeeded))} joints need no part of the catalogue. For ${String(jointsOf(withoutPart))} it has none:`,
      PAGE_WIDTH,
    ),
  );
  for (const { marks, because } of withoutPart)
    lines.push(...paragraph(`${marks.map(({ mark }) => mark).join(", ")}  ${because}`, PAGE_WIDTH, 2, 11));
  if (barred.length > 0) lines.push(`${String(jointsOf(barred))} more cannot be planned:`);
  for (const { marks, because } of barred)
    lines.push(...paragraph(`${marks.join(", ")}  ${because}`, PAGE_WIDTH, 2, 11));
  return `${lines.join("\n")}\n`;
}

/** The points of a curve as lines; what is named stands among them by its number of part numbers. */
function curveLines({ curve }: JobTradeOff, asNamed: NamedParts | null): string[] {
  const [first] = curve.points;
  const cheapest = curve.points.at(-1);
  if (first === undefined || cheapest === undefined) return ["  No plan has a known cost."];
  const rows = curve.points.map(({ partNumbers, cost, proof }, at) => ({
    partNumbers,
    cost,
    words: [
      at === 0 ? "fewest" : at === curve.points.length - 1 ? "cheapest" : "",
      proof.proven ? "proven" : `not proven: ${proof.because}`,
    ]
      .filter((one) => one !== "")
      .join(", "),
  }));
  if (asNamed !== null && asNamed.cost !== null)
    rows.push({ partNumbers: asNamed.partNumbers, cost: asNamed.cost, words: "as named" });
  rows.sort((a, b) => a.partNumbers - b.partNumbers || Number(b.words === "as named") - Number(a.words === "as named"));
  const most = Math.max(...rows.map(({ cost }) => Number(cost.amount)));
  return [
    ...tableLines(
      [
        { head: "Part numbers", width: 12 },
        { head: `Cost ${cheapest.cost.currency}`, width: 10 },
        { head: "Above cheapest", width: 14 },
        { head: "", width: BAR },
        { head: "", width: 24 },
      ],
      rows.map(({ partNumbers, cost, words }) => [
        String(partNumbers),
        shown(cost),
        shown(above(cost, cheapest.cost)),
        "#".repeat(Math.round((Number(cost.amount) / most) * BAR)),
        words,
      ]),
    ),
    ...paragraph(`Fewest: ${first.parts.join(", ")}.`, PAGE_WIDTH),
  ];
}

function named({ partNumbers, joints, cost }: NamedParts): string {
  const price = cost === null ? "cost not known" : `${shown(cost)} ${cost.currency}`;
  return `${String(partNumbers)} part numbers for ${String(joints)} joints, ${price}`;
}

function above(cost: Money, cheapest: Money): Money {
  return moneyOf(minus(decimalOf(cost.amount), decimalOf(cheapest.amount)), cost.currency);
}

/** Rounded half-up to the currency's smallest unit, for reading only. */
function shown({ amount, currency }: Money): string {
  return roundedMoney(decimalOf(amount), currency, "half-up").amount;
}

function jointsOf(some: readonly { readonly joints: number }[]): number {
  return some.reduce((sum, { joints }) => sum + joints, 0);
}
