import type { Calculation, CalculationFinding } from "../../core/calculation.js";
import { CalculationSheet, isClosed, shown } from "../../core/calculation-sheet.js";
import { citationText } from "../../core/citation.js";
import type { Unmarked } from "../../core/connector.js";
import type { Edition } from "../../core/edition.js";
import type { Step } from "../../core/finding.js";
import { type MotorConductor, motorConductorSize } from "./motor-conductor.js";
import { type Motor, motorCurrent } from "./motor-current.js";

const NAME = "motor-circuit";

export type MotorCircuitAsk = "conductor" | "overload" | "short-circuit-device";

export interface MotorCircuitQuestion {
  readonly ask: MotorCircuitAsk;
  readonly motor: Motor;
  /** "other": short-time, intermittent, periodic or varying. */
  readonly duty: "continuous" | "other";
  /** The conductor to be sized. Absent: only the ampacity needed is answered. */
  readonly conductor?: MotorConductor;
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
 * What conductor does a single motor need, and what overload device may it have?
 *
 * NFPA 70 430.6(A), 430.22, 430.32(A)(1) (2017, 2020, 2023): the conductor carries 125 percent of the table's current;
 * the separate overload device trips at no more than 125 percent of the nameplate's current for a marked service factor of
 * 1.15 or more or a marked temperature rise of 40 C or less, and at no more than 115 percent for all others. Amperes.
 * Worked: 25 hp, 460 V: 34 x 1.25 = 42.5 A; nameplate 31.6 A at service factor 1.15: 31.6 x 1.25 = 39.5 A.
 * Silent: the short-circuit device goes by Table 430.52, which is not held here, so it is not answered; nor are other
 * duties, motors up to 1 hp, and several motors on one circuit.
 */
export const motorCircuit: Calculation<MotorCircuitQuestion> = {
  name: NAME,
  title: "Conductor and overload device of a motor",
  clauses: [
    "motorCurrent",
    "motorConductors",
    "motorOverload",
    "motorShortCircuitDevice",
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
    "question/conductor",
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
        return sheet.refuse(
          "NOT_COVERED",
          "The largest short-circuit device goes by Table 430.52, which is not held here.",
          edition.clauses.motorShortCircuitDevice,
        );
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
  const current = motorCurrent(sheet, question.motor, edition);
  if (isClosed(current)) return current;
  const factor = sheet.state("factor for the conductor of one motor", CONDUCTOR_FACTOR, clauses.motorConductors);
  const needed = sheet.multiply("ampacity needed", [factor, current], "A", clauses.motorConductors);
  const advice = adviceOnNameplate(question.motor, current, edition);
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
  const size = motorConductorSize(sheet, needed, question.conductor, edition);
  if (isClosed(size)) return size;
  return sheet.finish({
    sentence: `The conductor needs ${shown(needed.value)} A, so ${String(size.value)} ${question.conductor.metal} is the smallest.`,
    cite: clauses.motorConductors,
    results: [
      { name: "smallest size", step: size },
      { name: "ampacity needed", step: needed },
      { name: "motor current", step: current },
    ],
    advice: [
      ...advice,
      "Not in it: correction for a warm place and adjustment for more than three current-carrying conductors.",
    ],
  });
}

function adviceOnNameplate({ build }: Motor, current: Step, { clauses }: Edition): readonly string[] {
  return build === "ordinary" && current.kind === "read"
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

/** Every row of the tables up to 1 hp is a plain fraction or "1". */
function isOverOneHorsepower(horsepower: string): boolean {
  return /^[2-9]|^1-|^\d{2,}/.test(horsepower) && !/^\d+\//.test(horsepower);
}
