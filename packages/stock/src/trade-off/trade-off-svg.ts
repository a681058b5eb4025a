import { numberOf } from "@landfast/rules";
import { decimalOf } from "../money/decimal.js";
import { roundedMoney } from "../money/money.js";
import type { TradeOffCurve, TradeOffPoint } from "./trade-off-curve.js";

const WIDTH = 720;
const HEIGHT = 420;
const LEFT = 96;
const RIGHT = 84;
const TOP = 56;
const BOTTOM = 64;
/** Points up to which each is labeled with its cost; more would overlap. */
const LABELLED = 12;

const INK = "#22313a";
const FAINT = "#d5dde0";
const LINE = "#8a5a1f";
const DOUBT = "#b3382c";

/**
 * The trade-off curve as a picture: number of part numbers to the right, cost upward. A step line, because between two
 * numbers there is nothing; a hollow dot where the cost is not proven to be the least. One self-contained SVG: no
 * script, no style sheet, no font and nothing from elsewhere.
 */
export function tradeOffSvg({ points, currency }: Pick<TradeOffCurve, "points" | "currency">): string {
  const [first] = points;
  const last = points.at(-1);
  if (first === undefined || last === undefined || currency === null)
    return frame("", "Nothing to show: no plan has a known cost.");
  const costs = points.map(costOf);
  const scale = axis(Math.min(...costs), Math.max(...costs));
  const from = first.partNumbers;
  const to = Math.max(last.partNumbers, from + 1);
  const x = (partNumbers: number): number => LEFT + ((partNumbers - from) / (to - from)) * (WIDTH - LEFT - RIGHT);
  const y = (cost: number): number =>
    HEIGHT - BOTTOM - ((cost - scale.from) / (scale.to - scale.from)) * (HEIGHT - TOP - BOTTOM);
  const parts = [
    ...scale.ticks.map(
      (cost) =>
        `<line x1="${n(LEFT)}" x2="${n(WIDTH - RIGHT)}" y1="${n(y(cost))}" y2="${n(y(cost))}" stroke="${FAINT}"/>` +
        text(LEFT - 10, y(cost) + 4, tickText(cost, scale.step), "end"),
    ),
    ...wholeTicks(from, to).map(
      (count) =>
        `<line x1="${n(x(count))}" x2="${n(x(count))}" y1="${n(HEIGHT - BOTTOM)}" y2="${n(HEIGHT - BOTTOM + 6)}" stroke="${INK}"/>` +
        text(x(count), HEIGHT - BOTTOM + 22, String(count), "middle"),
    ),
    `<path d="M${n(LEFT)} ${n(TOP)}V${n(HEIGHT - BOTTOM)}H${n(WIDTH - RIGHT)}" fill="none" stroke="${INK}"/>`,
    text((LEFT + WIDTH - RIGHT) / 2, HEIGHT - 18, "Part numbers stocked", "middle"),
    text(LEFT, TOP - 14, `Cost of the plan, ${escaped(currency)}`, "start"),
    `<path d="${stepPath(points, x, y)}" fill="none" stroke="${LINE}" stroke-width="2.5"/>`,
    ...points.map((point) => dot(point, points.length, x, y)),
  ];
  const shown = points.some(({ proof }) => !proof.proven) ? "Hollow: not proven to be the least cost." : "";
  return frame(parts.join("\n"), shown);
}

function dot(
  point: TradeOffPoint,
  count: number,
  x: (partNumbers: number) => number,
  y: (cost: number) => number,
): string {
  const cx = x(point.partNumbers);
  const cy = y(costOf(point));
  const fill = point.proof.proven ? LINE : "#ffffff";
  const stroke = point.proof.proven ? LINE : DOUBT;
  const cost = shownCost(point);
  const title = `${String(point.partNumbers)} part numbers: ${cost} ${escaped(point.cost.currency)}`;
  const circle = `<circle cx="${n(cx)}" cy="${n(cy)}" r="5" fill="${fill}" stroke="${stroke}" stroke-width="2"><title>${title}</title></circle>`;
  return count > LABELLED ? circle : circle + text(cx + 9, cy - 9, cost, "start");
}

/** Rounded half-up to the currency's smallest unit, for reading only. */
function shownCost({ cost }: TradeOffPoint): string {
  return roundedMoney(decimalOf(cost.amount), cost.currency, "half-up").amount;
}

function stepPath(
  points: readonly TradeOffPoint[],
  x: (partNumbers: number) => number,
  y: (cost: number) => number,
): string {
  return points
    .map((point, at) =>
      at === 0
        ? `M${n(x(point.partNumbers))} ${n(y(costOf(point)))}`
        : `H${n(x(point.partNumbers))}V${n(y(costOf(point)))}`,
    )
    .join("");
}

function costOf({ cost }: TradeOffPoint): number {
  return numberOf(decimalOf(cost.amount));
}

/** Round ticks from below the least to above the greatest value. The axis need not begin at zero: it shows differences. */
function axis(least: number, greatest: number): { from: number; to: number; step: number; ticks: number[] } {
  const span = greatest - least || Math.max(1, Math.abs(greatest) * 0.1);
  const rough = span / 5;
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = power * ([1, 2, 5, 10].find((one) => one * power >= rough) ?? 10);
  // Half a hair's breadth outward, so that a value on a tick, or one value alone, still has room on both sides.
  const low = Math.max(0, Math.floor(least / step - 1e-6));
  const high = Math.ceil(greatest / step + 1e-6);
  const ticks = Array.from({ length: high - low + 1 }, (_, at) => (low + at) * step);
  return { from: low * step, to: high * step, step, ticks };
}

function wholeTicks(from: number, to: number): number[] {
  const step = Math.max(1, Math.ceil((to - from) / 14));
  const ticks: number[] = [];
  for (let count = from; count <= to; count += step) ticks.push(count);
  return ticks;
}

function tickText(value: number, step: number): string {
  return value.toFixed(step >= 1 ? 0 : Math.min(6, Math.ceil(-Math.log10(step))));
}

/** Coordinates with one decimal: the same text on every machine. */
function n(value: number): string {
  return String(Math.round(value * 10) / 10);
}

function text(x: number, y: number, words: string, anchor: "start" | "middle" | "end"): string {
  return `<text x="${n(x)}" y="${n(y)}" text-anchor="${anchor}">${words}</text>`;
}

function frame(body: string, note: string): string {
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${String(WIDTH)} ${String(HEIGHT)}" width="${String(WIDTH)}" height="${String(HEIGHT)}" role="img" aria-labelledby="heading" font-family="Verdana, sans-serif" font-size="12" fill="${INK}">`,
    `<rect width="${String(WIDTH)}" height="${String(HEIGHT)}" fill="#ffffff"/>`,
    `<text id="heading" x="${String(LEFT)}" y="24" font-size="15" font-weight="bold">What fewer part numbers cost</text>`,
    body,
    note === "" ? "" : text(WIDTH - RIGHT, TOP - 14, note, "end"),
    "</svg>",
    "",
  ]
    .filter((line, at, all) => line !== "" || at === all.length - 1)
    .join("\n");
}

function escaped(words: string): string {
  return words.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll('"', "&quot;");
}
