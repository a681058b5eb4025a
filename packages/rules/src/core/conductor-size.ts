/**
 * Conductor sizes: text with a system, ordered by cross-section area only.
 *
 * "4/0 AWG" is smaller than "250 kcmil", "1 AWG" is smaller than "1/0 AWG": neither text nor number gives the order,
 * the area does. AWG and mm2 are never taken as equivalents of each other: a listing in one system says nothing about
 * a conductor of the other.
 */
export type SizeSystem = "AWG" | "kcmil" | "mm2";

/** Where a size's listing can be looked up: AWG and kcmil are one series, metric another. */
export type SizeSeries = "awg-kcmil" | "metric";

export interface ConductorSize {
  /** Canonical text: "14 AWG", "4/0 AWG", "250 kcmil", "35 mm2". */
  readonly text: string;
  readonly system: SizeSystem;
  readonly series: SizeSeries;
  /** Area in thousands of circular mils, as NFPA 70 Chapter 9 Table 8 prints it for the sizes it has. */
  readonly areaKcmil: number;
}

export interface SizeProblem {
  readonly problem: string;
}

/** Circular mils of NFPA 70 Chapter 9 Table 8 (2023), in thousands; ASTM B258 for the sizes below 18 AWG. */
const AWG_KCMIL: Readonly<Record<string, number>> = {
  "30": 0.1005,
  "28": 0.1598,
  "26": 0.2541,
  "24": 0.404,
  "22": 0.6424,
  "20": 1.022,
  "18": 1.62,
  "16": 2.58,
  "14": 4.11,
  "12": 6.53,
  "10": 10.38,
  "8": 16.51,
  "6": 26.24,
  "5": 33.09,
  "4": 41.74,
  "3": 52.62,
  "2": 66.36,
  "1": 83.69,
  "1/0": 105.6,
  "2/0": 133.1,
  "3/0": 167.8,
  "4/0": 211.6,
};

/** One thousand circular mils in mm2: (pi/4) x 0.0254^2 x 1000. */
export const MM2_PER_KCMIL = 0.5067074790974977;

const FORM = /^(\d{1,2}|[1-4]\/0|\d{1,4}(?:\.\d{1,3})?) (AWG|kcmil|mm2)$/;
const read = new Map<string, ConductorSize | SizeProblem>();

/**
 * Reads a size. Accepts exactly the canonical forms; free text ("#4", "MCM") is for a separate reading call.
 * @returns the size, or a problem that says what would be accepted.
 */
export function parseSize(text: string): ConductorSize | SizeProblem {
  const known = read.get(text);
  if (known !== undefined) return known;
  const result = parse(text);
  // Only good sizes are kept: there are finitely many real ones, while bad text is unbounded.
  if (!("problem" in result) && read.size < 2000) read.set(text, result);
  return result;
}

/** Reads a size that is already known to be well formed. @throws RangeError when it is not. */
export function sizeOf(text: string): ConductorSize {
  const size = parseSize(text);
  if ("problem" in size) throw new RangeError(size.problem);
  return size;
}

/** Negative, zero or positive as a's area is less than, equal to or greater than b's. */
export function compareSizes(a: ConductorSize, b: ConductorSize): number {
  return a.areaKcmil < b.areaKcmil ? -1 : a.areaKcmil > b.areaKcmil ? 1 : 0;
}

/** Area in mm2: the printed figure for a metric size, converted for the others. */
export function areaMm2(size: ConductorSize): number {
  return size.system === "mm2" ? Number(size.text.slice(0, -4)) : size.areaKcmil * MM2_PER_KCMIL;
}

function parse(text: string): ConductorSize | SizeProblem {
  const match = FORM.exec(text);
  if (match === null) return { problem: explain(text) };
  const [, figure = "", system = ""] = match;
  if (system === "AWG") {
    const areaKcmil = AWG_KCMIL[figure];
    if (areaKcmil === undefined) return { problem: explain(text) };
    return { text, system, series: "awg-kcmil", areaKcmil };
  }
  const value = Number(figure);
  if (String(value) !== figure || !(value > 0)) return { problem: explain(text) };
  if (system === "kcmil") {
    // Sizes in kcmil begin where AWG ends, just above 4/0 AWG (211.6 kcmil).
    if (!(value > 211.6 && value <= 5000)) return { problem: explain(text) };
    return { text, system, series: "awg-kcmil", areaKcmil: value };
  }
  if (system === "mm2" && value <= 2500)
    return { text, system: "mm2", series: "metric", areaKcmil: value / MM2_PER_KCMIL };
  return { problem: explain(text) };
}

function explain(text: string): string {
  const accepted = 'a size with its system: "14 AWG", "4/0 AWG", "250 kcmil" or "35 mm2"';
  const figure = text.trim();
  if (/^[1-4]\/0$/.test(figure)) return `"${text}" has no system; write "${figure} AWG"; accepted is ${accepted}`;
  if (/^\d+(\.\d+)?$/.test(figure))
    return `"${text}" has no system; write "${figure} AWG", "${figure} kcmil" or "${figure} mm2", whichever it is`;
  return `"${text.slice(0, 40)}" is not a conductor size; accepted is ${accepted}`;
}
