import type { CalculationFinding } from "../../core/calculation.js";
import type { CalculationSheet } from "../../core/calculation-sheet.js";
import type { Citation } from "../../core/citation.js";
import { listWords } from "../../core/conductor-words.js";
import type { Drive } from "../../core/connector.js";
import type { DrivenBy } from "../../core/default-torque.js";
import { compareExact } from "../../core/exact.js";
import type { Step } from "../../core/finding.js";
import { lbfInches, type Torque } from "../../core/quantity.js";
import { convertedTorque } from "../../core/unit-conversion.js";
import { UnusableFact } from "../../core/unusable-fact.js";

/** What a torque tool can drive. A hexagon is turned from outside; a recessed one has a width across its flats. */
export type ToolBit =
  | { readonly kind: "recessed"; readonly acrossFlats: string }
  | { readonly kind: "external-hex" }
  | { readonly kind: "slotted" };

export interface TorqueTool {
  /** The torques it is made for. */
  readonly from: Torque;
  readonly to: Torque;
  readonly bits: readonly ToolBit[];
  /** "none": it has never been calibrated, or no record says so. Days as "2026-05-31". */
  readonly calibration?: { readonly validUntil: string } | "none";
}

export interface ToolVerdict {
  readonly step: Step;
  readonly text: string;
}

const DAY = /^\d{4}-\d{2}-\d{2}$/;

/**
 * Whether a tool can reach a torque on a head: the torque lies within its range, a bit fits, its calibration holds.
 *
 * NFPA 70 110.14(D) (2017: a calibrated torque tool; 2020, 2023: an approved means), in our words. A tool whose
 * calibration has run out shows no torque that could be relied on, so it serves under none of them.
 * Worked: 275 lbf-in with a tool of 5 to 75 lbf-ft: 60 to 900 lbf-in, within its range.
 */
export function toolVerdict(
  sheet: CalculationSheet,
  tool: TorqueTool,
  torque: { readonly step: Step; readonly printed: Torque },
  head: { readonly drive: Drive; readonly drivenBy: DrivenBy; readonly step: Step },
  usedOn: string | undefined,
  cite: Citation,
): ToolVerdict | CalculationFinding {
  if (compareExact(lbfInches(tool.from), lbfInches(tool.to)) > 0)
    throw new UnusableFact(
      "question/tool/from",
      "is a larger torque than question/tool/to",
      "a torque no larger than that of to",
    );
  const wrong: string[] = [];
  const uses: Step[] = [];
  const judge = (step: Step, holds: boolean, failing: string): void => {
    uses.push(step);
    if (!holds) wrong.push(failing);
  };
  const inches = inLbfInches(sheet, "torque", torque.printed, torque.step);
  const least = rangeEnd(sheet, "smallest torque of the tool", tool.from, "question/tool/from");
  const most = rangeEnd(sheet, "largest torque of the tool", tool.to, "question/tool/to");
  const isAbove = sheet.compare("the torque is no smaller than the tool's range", inches, ">=", least, cite);
  judge(sheet.last, isAbove, "the torque is below its range");
  const isBelow = sheet.compare("the torque is no larger than the tool's range", inches, "<=", most, cite);
  judge(sheet.last, isBelow, "the torque is above its range");
  const fits = tool.bits.some((bit) => isFitting(bit, head.drive, head.drivenBy));
  const bits = sheet.given("bits of the tool", tool.bits.map(bitText), "question/tool/bits");
  judge(
    sheet.conclude(
      "a bit fits the head",
      fits,
      [bits, head.step],
      "the bit must be of the head's kind and width",
      cite,
    ),
    fits,
    "no bit of it fits the head",
  );
  const calibrated = calibrationOf(sheet, tool, usedOn, cite);
  if ("calculation" in calibrated) return calibrated;
  judge(calibrated.step, calibrated.holds, "its calibration does not hold");
  const serves = wrong.length === 0;
  return {
    step: sheet.conclude(
      "the tool serves",
      serves,
      uses,
      serves ? "range, bit and calibration are as needed" : listWords(wrong),
      cite,
    ),
    text: serves ? "The tool serves." : `The tool does not serve: ${listWords(wrong)}.`,
  };
}

function calibrationOf(
  sheet: CalculationSheet,
  { calibration }: TorqueTool,
  usedOn: string | undefined,
  cite: Citation,
): { readonly step: Step; readonly holds: boolean } | CalculationFinding {
  const path = "question/tool/calibration";
  if (calibration === undefined)
    return sheet.ask(path, "Whether the tool is calibrated, and until when, is not given.", cite);
  const label = "the calibration holds on the day of use";
  if (calibration === "none")
    return {
      step: sheet.conclude(label, false, [sheet.given("calibration", "none", path)], "there is none", cite),
      holds: false,
    };
  if (usedOn === undefined)
    return sheet.ask(
      "question/usedOn",
      "The day of use is not given, so it is not known whether the calibration holds.",
      cite,
    );
  const until = dayStep(sheet, "calibration valid until", calibration.validUntil, `${path}/validUntil`);
  const day = dayStep(sheet, "day of use", usedOn, "question/usedOn");
  // Days written this way stand in the order of time when they stand in the order of letters.
  const holds = usedOn <= calibration.validUntil;
  return { step: sheet.conclude(label, holds, [until, day], "the last day of the calibration counts", cite), holds };
}

function dayStep(sheet: CalculationSheet, label: string, day: string, path: string): Step {
  if (!DAY.test(day))
    throw new UnusableFact(path, `must be a day as "2026-05-31", not "${day.slice(0, 40)}"`, 'a day as "2026-05-31"');
  return sheet.given(label, day, path);
}

function rangeEnd(sheet: CalculationSheet, label: string, end: Torque, path: string): Step {
  return inLbfInches(sheet, label, end, sheet.positive(label, end.value, path, end.unit));
}

function inLbfInches(sheet: CalculationSheet, label: string, torque: Torque, of: Step): Step {
  if (torque.unit === "lbf-in") return of;
  const { value, arithmetic } = convertedTorque(torque, "lbf-in");
  return sheet.exactly(
    `${label} in lbf-in`,
    value,
    "lbf-in",
    [of],
    `${label} in ${torque.unit}, converted`,
    arithmetic,
  );
}

function isFitting(bit: ToolBit, drive: Drive, drivenBy: DrivenBy): boolean {
  if (drive.kind === "socket") return bit.kind === "recessed" && bit.acrossFlats === drive.acrossFlats;
  return bit.kind === (drivenBy === "slot" ? "slotted" : "external-hex");
}

function bitText(bit: ToolBit): string {
  return bit.kind === "recessed" ? `${bit.acrossFlats} in recessed hex or square` : bit.kind;
}
