import type { Calculation } from "../../core/calculation.js";
import { CalculationSheet, isClosed, shown } from "../../core/calculation-sheet.js";
import { sizeOf } from "../../core/conductor-size.js";
import {
  type DirectCurrentConductor,
  dcResistancePerKft,
  printedResistance,
} from "../../core/dc-resistance-per-kft.js";
import { divide, exactOf, multiply } from "../../core/exact.js";
import type { Length } from "../../core/quantity.js";

const NAME = "dc-resistance";

/** A conductor whose resistance is asked for; of one length of it, or of 1000 ft where no length is given. */
export interface DcResistanceQuestion extends DirectCurrentConductor {
  /** "12 AWG", "250 kcmil". */
  readonly size: string;
  /** Of the conductor itself: there and back is twice the run. */
  readonly length?: Length;
}

/**
 * What is the direct-current resistance of a conductor?
 *
 * NFPA 70 Chapter 9 Table 8 (2017, 2020, 2023): the printed resistance per 1000 ft by size, metal, coating and make-up,
 * brought to the conductor's temperature by the table's note, times the length. Ohms.
 * Worked: 250 ft of stranded 4 AWG uncoated copper at 75 C: 0.308 x 250 / 1000 = 0.077 ohm.
 * Silent: conductors finer than class B have a few percent more; the table does not list them.
 */
export const dcResistance: Calculation<DcResistanceQuestion> = {
  name: NAME,
  title: "Direct-current resistance of a conductor",
  clauses: ["resistanceAtTemperature"],
  needs: [
    "question/metal",
    "question/size",
    "question/stranding",
    "question/coating",
    "question/temperature",
    "question/length",
  ],
  cannotSee: "joints and terminals, which add their own resistance",
  answer(question, basis, edition) {
    const sheet = new CalculationSheet(NAME, basis);
    const size = sheet.given("size", sizeOf(question.size).text, "question/size");
    const printed = printedResistance(sheet, question, "question", edition);
    if (isClosed(printed)) return printed;
    const perKft = dcResistancePerKft(sheet, printed, size);
    if (isClosed(perKft)) return perKft;
    const { cite } = printed.table;
    if (question.length === undefined) {
      const result = sheet.conclude(
        "dc resistance per 1000 ft",
        perKft.value,
        [perKft],
        "no length was given, so the answer is for 1000 ft",
        cite,
        "ohm/kft",
      );
      return sheet.finish({
        sentence: `1000 ft of this conductor has ${shown(result.value)} ohm at ${temperatureText(question)}.`,
        cite,
        results: [{ name: "resistance per 1000 ft", step: result }],
      });
    }
    const length = sheet.length("length of conductor", question.length, "question/length", "ft");
    const total = sheet.exactly(
      "dc resistance",
      divide(multiply(sheet.exact(perKft), sheet.exact(length)), exactOf(1000)),
      "ohm",
      [perKft, length],
      "resistance per 1000 ft x length / 1000",
      `${String(perKft.value)} x ${String(length.value)} / 1000`,
      cite,
    );
    return sheet.finish({
      sentence: `${String(question.length.value)} ${question.length.unit} of this conductor has ${shown(total.value)} ohm at ${temperatureText(question)}.`,
      cite,
      results: [
        { name: "resistance", step: total },
        { name: "resistance per 1000 ft", step: perKft },
      ],
    });
  },
};

function temperatureText({ temperature }: DcResistanceQuestion): string {
  return `${String(temperature.value)} ${temperature.unit === "Cel" ? "C" : "F"}`;
}
