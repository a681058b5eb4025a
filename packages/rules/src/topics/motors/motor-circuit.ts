import type { Calculation, CalculationFinding } from "../../core/calculation.js";
import { CalculationSheet, isClosed, shown } from "../../core/calculation-sheet.js";
import { citationText } from "../../core/citation.js";
import type { Unmarked } from "../../core/connector.js";
import type { Edition } from "../../core/edition.js";
import type { Step } from "../../core/finding.js";
import { type MotorConductor, motorConductorSize } from "./motor-conductor.js";
import { type Motor, motorCurrent } from "./motor-current.js";
import { type ShortCircuitDevice, shortCircuitDevice } from "./short-circuit-device.js";

const NAME = "motor-circuit";

export type MotorCircuitAsk = "conductor" | "overload" | "short-circuit-device";

export interface MotorCircuitQuestion {
  readonly ask: MotorCircuitAsk;
  /** Of several motors on one conductor, any one of them. */
  readonly motor: Motor;
  /** The other motors on the same conductor, for its ampacity. */
  readonly otherMotors?: readonly Motor[];
  /** What else the conductor feeds beside the motors, or beside the one motor, the continuous part apart. */
  readonly otherContinuousLoadA?: number;
  readonly otherLoadA?: number;
  /** "other": short-time, intermittent, periodic or varying. */
  readonly duty: "continuous" | "other";
  /** The conductor to be sized. Absent: only the ampacity needed is answered. */
  readonly conductor?: MotorConductor;
  /** Needed for the short-circuit device. */
  readonly shortCircuitDevice?: ShortCircuitDevice;
  /** As marked. One of the two is needed for the overload device; the other where the first does not settle it. */
  readonly serviceFactor?: number | Unmarked;
  readonly temperatureRiseC?: number | Unmarked;
}

const CONDUCTOR_FACTOR = 1.25;
const OVERLOAD_RAISED_PERCENT = 125;
const OVERLOAD_PERCENT = 115;
const RAISED_FROM_SERVICE_FACTOR = 1.15;
const RAISED_TO_RISE_C = 40;

/**
 * What conductor do motors need, and what overload and short-circuit device may one of them have?
 *
 * NFPA 70 430.6(A), 430.22, 430.24, 430.32(A)(1), 430.52 (2017, 2020, 2023): the conductor carries 125 percent of the table's
 * current, and of several motors 125 percent of the largest, all of the others, and other loads as a feeder counts them;
 * the separate overload device trips at no more than 125 percent of the nameplate's current for a marked service factor of
 * 1.15 or more or a marked temperature rise of 40 C or less, and at no more than 115 percent for all others. Amperes.
 * Worked: 25 hp, 460 V: 34 x 1.25 = 42.5 A; nameplate 31.6 A at service factor 1.15: 31.6 x 1.25 = 39.5 A.
 * Worked: 34 A, 27 A and 21 A on one conductor: 34 x 1.25 + 27 + 21 = 90.5 A; 34 A and 10 A of other load: 52.5 A.
 * Silent: other duties, overload devices of motors up to 1 hp, the device ahead of several motors (430.53, 430.62).
 */
export const motorCircuit: Calculation<MotorCircuitQuestion> = {
  name: NAME,
  title: "Conductor, overload and short-circuit device of a motor",
  clauses: [
    "motorCurrent",
    "motorConductors",
    "motorOverload",
    "motorShortCircuitDevice",
    "motorTripSetting",
    "severalMotorConductors",
    "standardRatings",
    "motorTerminals",
    "terminalsTo100A",
    "terminalsOver100A",
    "lowestTemperature",
  ],
  needs: [
    "question/ask",
    "question/motor",
    "question/motor/nameplateA",
    "question/duty",
    "question/otherMotors",
    "question/otherContinuousLoadA",
    "question/otherLoadA",
    "question/conductor",
    "question/shortCircuitDevice",
    "question/serviceFactor",
    "question/temperatureRiseC",
  ],
  cannotSee: "how often the motor starts, what it drives, and what else is on the circuit",
  answer(question, basis, edition) {
    const sheet = new CalculationSheet(NAME, basis);
    switch (question.ask) {
      case "conductor":
        return conductorAnswer(sheet, question, edition);
      case "overload":
        return overloadAnswer(sheet, question, edition);
      case "short-circuit-device":
        return shortCircuitDevice(sheet, question.motor, question.shortCircuitDevice, edition);
    }
  },
};

function conductorAnswer(
  sheet: CalculationSheet,
  question: MotorCircuitQuestion,
  edition: Edition,
): CalculationFinding {
  const { clauses } = edition;
  if (question.duty !== "continuous")
    return sheet.refuse(
      "NOT_COVERED",
      "For other than continuous duty the conductor goes by a table of duties, which is not held here.",
      clauses.motorConductors,
    );
  const { otherMotors = [], otherContinuousLoadA, otherLoadA } = question;
  if (otherMotors.length > 0 || otherContinuousLoadA !== undefined || otherLoadA !== undefined)
    return sharedConductorAnswer(sheet, question, otherMotors, edition);
  const current = motorCurrent(sheet, question.motor, edition);
  if (isClosed(current)) return current;
  const factor = sheet.state("factor for the conductor of one motor", CONDUCTOR_FACTOR, clauses.motorConductors);
  const needed = sheet.multiply("ampacity needed", [factor, current], "A", clauses.motorConductors);
  const advice = adviceOnNameplate(question.motor, edition);
  if (question.conductor === undefined)
    return sheet.finish({
      sentence: `The conductor needs ${shown(needed.value)} A, 125 % of the motor's ${shown(current.value)} A.`,
      cite: clauses.motorConductors,
      results: [
        { name: "ampacity needed", step: needed },
        { name: "motor current", step: current },
      ],
      advice,
    });
  const size = motorConductorSize(sheet, needed, question.conductor, true, edition);
  if (isClosed(size)) return size;
  return sheet.finish({
    sentence: `The conductor needs ${shown(needed.value)} A, so ${String(size.value)} ${question.conductor.metal} is the smallest.`,
    cite: clauses.motorConductors,
    results: [
      { name: "smallest size", step: size },
      { name: "ampacity needed", step: needed },
      { name: "motor current", step: current },
    ],
    advice: [...advice, NOT_CORRECTED],
  });
}

const NOT_CORRECTED =
  "Not in it: correction for a warm place and adjustment for more than three current-carrying conductors.";

/** 430.24: 125 % of the largest motor, all of the others, and other loads with their continuous part at 125 %. */
function sharedConductorAnswer(
  sheet: CalculationSheet,
  question: MotorCircuitQuestion,
  others: readonly Motor[],
  edition: Edition,
): CalculationFinding {
  const cite = edition.clauses.severalMotorConductors;
  const currents: Step[] = [];
  for (const [index, motor] of [question.motor, ...others].entries()) {
    const head = index === 0 ? "question/motor" : `question/otherMotors/${String(index - 1)}`;
    const current = motorCurrent(sheet, motor, edition, head);
    if (isClosed(current)) return current;
    currents.push(current);
  }
  const largestA = Math.max(...currents.map(({ value }) => Number(value)));
  const largest = currents.find(({ value }) => Number(value) === largestA);
  if (largest === undefined) throw new Error("one of the motors is the largest");
  const factor = sheet.state("factor for the largest motor and for continuous load", CONDUCTOR_FACTOR, cite);
  const terms: Step[] = [
    sheet.multiply("largest motor counted", [factor, largest], "A", cite),
    ...currents.filter((current) => current !== largest),
  ];
  const { otherContinuousLoadA, otherLoadA } = question;
  if (otherContinuousLoadA !== undefined) {
    const path = "question/otherContinuousLoadA";
    const load = sheet.positive("other continuous load", otherContinuousLoadA, path, "A");
    terms.push(sheet.multiply("other continuous load counted", [factor, load], "A", cite));
  }
  if (otherLoadA !== undefined) terms.push(sheet.positive("other load", otherLoadA, "question/otherLoadA", "A"));
  const needed = sheet.add("ampacity needed", terms, "A", cite);
  const ofWhat = others.length > 0 ? `${String(currents.length)} motors` : "a motor and other load";
  const largestWords = others.length > 0 ? "the largest" : "the motor's";
  const text = `The conductor to ${ofWhat} needs ${shown(needed.value)} A: 125 % of ${largestWords}, ${shown(largest.value)} A, and all of the rest`;
  const advice = ["Loads that are kept from running together may count as one (430.24); that is not in it."];
  if (question.conductor === undefined)
    return sheet.finish({ sentence: `${text}.`, cite, results: [{ name: "ampacity needed", step: needed }], advice });
  const size = motorConductorSize(sheet, needed, question.conductor, false, edition);
  if (isClosed(size)) return size;
  return sheet.finish({
    sentence: `${text}, so ${String(size.value)} ${question.conductor.metal} is the smallest.`,
    cite,
    results: [
      { name: "smallest size", step: size },
      { name: "ampacity needed", step: needed },
    ],
    advice: [...advice, NOT_CORRECTED],
  });
}

function adviceOnNameplate({ build }: Motor, { clauses }: Edition): readonly string[] {
  return build === "ordinary"
    ? [`The nameplate current is for the overload device only: ${citationText(clauses.motorCurrent)}.`]
    : [];
}

function overloadAnswer(sheet: CalculationSheet, question: MotorCircuitQuestion, edition: Edition): CalculationFinding {
  const cite = edition.clauses.motorOverload;
  const { motor } = question;
  const horsepower = sheet.given("horsepower", motor.horsepower, "question/motor/horsepower");
  if (!isOverOneHorsepower(motor.horsepower) || question.duty !== "continuous")
    return sheet.refuse(
      "NOT_COVERED",
      `Answered is continuous duty of motors over 1 hp, not ${String(horsepower.value)} hp at ${question.duty} duty.`,
      cite,
    );
  if (motor.nameplateA === undefined)
    return sheet.ask(
      "question/motor/nameplateA",
      "The overload device goes by the nameplate current, which is not given.",
      cite,
    );
  const nameplate = sheet.positive("current of the nameplate", motor.nameplateA, "question/motor/nameplateA", "A");
  const percent = overloadPercent(sheet, question, edition);
  if (isClosed(percent)) return percent;
  const hundred = sheet.state("the whole", 100, cite, "%");
  const most = sheet.divide(
    "largest trip current of the overload device",
    sheet.multiply("nameplate current x percent", [nameplate, percent], "A"),
    hundred,
    "A",
    cite,
  );
  return sheet.finish({
    sentence: `The overload device trips at no more than ${shown(most.value)} A, ${String(percent.value)} % of the nameplate's ${shown(nameplate.value)} A.`,
    cite,
    results: [
      { name: "largest overload trip current", step: most },
      { name: "percent of the nameplate current", step: percent },
    ],
  });
}

function overloadPercent(
  sheet: CalculationSheet,
  { serviceFactor, temperatureRiseC }: MotorCircuitQuestion,
  { clauses }: Edition,
): Step | CalculationFinding {
  const cite = clauses.motorOverload;
  const grounds: Step[] = [];
  if (serviceFactor !== undefined) {
    const marked = markedStep(sheet, "service factor", serviceFactor, "question/serviceFactor", "");
    const from = sheet.state("service factor from which 125 % is allowed", RAISED_FROM_SERVICE_FACTOR, cite);
    if (sheet.compare("the service factor allows 125 %", marked, ">=", from, cite))
      return sheet.state("percent for this motor", OVERLOAD_RAISED_PERCENT, cite, "%", [sheet.last]);
    grounds.push(sheet.last);
  }
  if (temperatureRiseC !== undefined) {
    const marked = markedStep(sheet, "temperature rise", temperatureRiseC, "question/temperatureRiseC", "Cel");
    const to = sheet.state("temperature rise up to which 125 % is allowed", RAISED_TO_RISE_C, cite, "Cel");
    if (sheet.compare("the temperature rise allows 125 %", marked, "<=", to, cite))
      return sheet.state("percent for this motor", OVERLOAD_RAISED_PERCENT, cite, "%", [sheet.last]);
    grounds.push(sheet.last);
  }
  if (serviceFactor === undefined)
    return sheet.ask(
      "question/serviceFactor",
      "A marked service factor of 1.15 or more would allow 125 % instead of 115 %.",
      cite,
    );
  if (temperatureRiseC === undefined)
    return sheet.ask(
      "question/temperatureRiseC",
      "A marked temperature rise of 40 C or less would allow 125 % instead of 115 %.",
      cite,
    );
  return sheet.state("percent for this motor", OVERLOAD_PERCENT, cite, "%", grounds);
}

function markedStep(
  sheet: CalculationSheet,
  label: string,
  value: number | Unmarked,
  path: string,
  unit: string,
): Step {
  return value === "unmarked"
    ? sheet.given(`marked ${label}`, value, path)
    : sheet.positive(`marked ${label}`, value, path, unit);
}

/** "1-1/2" and "2" are, "1" and "3/4" are not. */
function isOverOneHorsepower(horsepower: string): boolean {
  const [whole, fraction] = horsepower.split("-");
  return Number(whole) > 1 || (whole === "1" && fraction !== undefined);
}
