import { parseSize } from "@landfast/rules";
import type { Reading } from "./cell.js";
import type { ColumnUnit } from "./column.js";

const FIGURE = "\\d{1,2}|[1-4]\\/0|0{1,4}";
const NUMBER = "\\d{1,4}(?:[.]\\d{1,3})?";
const GAUGE_SIGN = new RegExp(`^(?:#|no\\.?)\\s*(${FIGURE})(?:\\s*awg)?$`, "i");
const AWG_AFTER = new RegExp(`^(${FIGURE})\\s*-?\\s*awg$`, "i");
const AWG_BEFORE = new RegExp(`^awg\\s*-?\\s*#?\\s*(${FIGURE})$`, "i");
const KCMIL = new RegExp(`^(${NUMBER})\\s*-?\\s*(kcmil|mcm)$`, "i");
const METRIC = new RegExp(`^(${NUMBER})\\s*(?:mm2|mm²|mm\\^2|sq\\.?\\s*mm)$`, "i");
const BARE = new RegExp(`^(?:${FIGURE}|${NUMBER})$`);
const ACCEPTED = 'a size with its system: "14 AWG", "4/0 AWG", "250 kcmil" or "35 mm2"';

/**
 * Reads a conductor size as files in the wild write it. A number without a system is never guessed at: it is asked
 * about unless the column's unit is stated.
 * Worked: "250 MCM" is 250 kcmil; "#4" is 4 AWG; "4/0" is asked about, and is 4/0 AWG in a column stated to be AWG.
 * @param unit what the mapping states for bare numbers in the column.
 */
export function readSize(written: string, unit: ColumnUnit | undefined): Reading<string> {
  if (!("problem" in parseSize(written))) return { value: written };
  const spelled = awgFigure(written);
  if (spelled !== undefined) return understood(written, `${spelled.figure} AWG`, spelled.because);
  const kcmil = KCMIL.exec(written);
  if (kcmil !== null)
    return understood(
      written,
      `${plainNumber(kcmil[1] ?? "")} kcmil`,
      kcmil[2]?.toLowerCase() === "mcm" ? "MCM is the older name of kcmil" : "the usual spelling of kcmil",
    );
  const metric = METRIC.exec(written);
  if (metric !== null)
    return understood(written, `${plainNumber(metric[1] ?? "")} mm2`, "the usual spelling of square millimeters");
  if (BARE.test(written)) return readBare(written, unit);
  return { problem: `${JSON.stringify(written)} is not a conductor size`, accepted: ACCEPTED };
}

function awgFigure(written: string): { readonly figure: string; readonly because: string } | undefined {
  const sign = GAUGE_SIGN.exec(written);
  if (sign !== null) return { figure: aughts(sign[1] ?? ""), because: "# stands for the gauge number, AWG" };
  const match = AWG_AFTER.exec(written) ?? AWG_BEFORE.exec(written);
  if (match === null) return undefined;
  const figure = match[1] ?? "";
  return {
    figure: aughts(figure),
    because: /^0+$/.test(figure) ? "zeros in a row are counted: 0000 is 4/0" : "the usual spelling of AWG",
  };
}

function readBare(written: string, unit: ColumnUnit | undefined): Reading<string> {
  const isGauge = new RegExp(`^(?:${FIGURE})$`).test(written);
  const system = unit === "AWG or kcmil" ? (isGauge ? "AWG" : Number(written) >= 250 ? "kcmil" : undefined) : unit;
  if (unit === undefined)
    return {
      problem: `"${written}" has no unit: AWG, kcmil or mm2 cannot be told apart here`,
      accepted: "the unit in the cell, or the column's unit stated in the mapping",
    };
  if (system === undefined)
    return {
      problem: `"${written}" is neither an AWG figure nor a size of 250 kcmil and up`,
      accepted: ACCEPTED,
    };
  const figure = system === "AWG" ? aughts(written) : plainNumber(written);
  return understood(written, `${figure} ${system}`, `the mapping states ${unit} for this column`);
}

function understood(written: string, value: string, because: string): Reading<string> {
  if ("problem" in parseSize(value))
    return { problem: `"${written}" reads as ${value}, which is not a size that is made`, accepted: ACCEPTED };
  return { value, readAs: value, because };
}

/** "0000" is 4/0; every other figure is left as it is. */
function aughts(figure: string): string {
  return /^0+$/.test(figure) ? `${figure.length}/0` : figure;
}

/** "35.0" is 35. */
function plainNumber(figure: string): string {
  return /^[\d.]+$/.test(figure) ? String(Number(figure)) : figure;
}
