/** Sizes and ranges as they stand on a worksheet. */
import { areaMm2, type ConductorSize } from "./conductor-size.js";
import type { Step } from "./finding.js";
import type { Worksheet } from "./worksheet.js";

/** The area of a size, in kcmil for AWG and kcmil and in mm2 for metric sizes, so that sizes are compared by nothing else. */
export function areaStep(worksheet: Worksheet, size: ConductorSize, of: Step): Step {
  const metric = size.series === "metric";
  return worksheet.conclude(
    `area of ${size.text}`,
    metric ? areaMm2(size) : size.areaKcmil,
    [of],
    "sizes are compared by cross-section area only",
    undefined,
    metric ? "mm2" : "kcmil",
  );
}

/** "6 AWG to 3/0 AWG"; one size where both ends are the same. */
export function rangeWords(range: { readonly from: string; readonly to: string }): string {
  let words = ranges.get(range);
  if (words === undefined) {
    words = range.from === range.to ? range.from : `${range.from} to ${range.to}`;
    ranges.set(range, words);
  }
  return words;
}

/** A listed range is asked about again and again, so its words are put together once. */
const ranges = new WeakMap<object, string>();
