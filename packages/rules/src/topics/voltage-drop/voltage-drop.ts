import type { Calculation, CalculationFinding } from "../../core/calculation.js";
import { CalculationSheet, isClosed, shown } from "../../core/calculation-sheet.js";
import { type Citation, citationText } from "../../core/citation.js";
import type { ConductorMetal } from "../../core/conductor.js";
import { compareSizes, sizeOf } from "../../core/conductor-size.js";
import type { Edition } from "../../core/edition.js";
import { divide, type Exact, exactOf, multiply } from "../../core/exact.js";
import type { Step } from "../../core/finding.js";
import type { Length } from "../../core/quantity.js";
import { sizesOf } from "../../core/table.js";
import {
  type CircuitImpedance,
  type ImpedanceColumns,
  impedanceColumns,
  impedancePerKft,
} from "./circuit-impedance.js";

const NAME = "voltage-drop";

/** Shares of the supply voltage that the informational notes call reasonable, in percent. */
const ADVISED_PERCENT = 3;
const ADVISED_TOTAL_PERCENT = 5;

export type VoltageDropAsk = "drop" | "size-for-limit" | "longest-run";

export interface VoltageDropQuestion {
  readonly ask: VoltageDropAsk;
  /** "single-phase" is any two-wire ac circuit, also line to neutral; "three-phase" is a balanced load. */
  readonly system: "dc" | "single-phase" | "three-phase";
  /** At the source: between the two wires of the circuit, or between lines of a three-phase system. */
  readonly voltageV: number;
  /** Current of the load, without any addition for sizing. */
  readonly loadA: number;
  /** Conductors in parallel per line. */
  readonly sets: number;
  readonly metal: ConductorMetal;
  readonly impedance: CircuitImpedance;
  /** Needed unless the size is asked for. */
  readonly size?: string;
  /** One way, source to load. Needed unless the length is asked for. */
  readonly length?: Length;
  /** Largest drop in percent of the voltage. Needed when the size or the length is asked for. */
  readonly limitPercent?: number;
}

/**
 * How much voltage does a circuit lose, which size keeps it within a limit, how long may it be?
 *
 * NFPA 70 Chapter 9 Tables 8 and 9 (2017, 2020, 2023): drop in volts = factor x current x ohms per 1000 ft x length in
 * feet / 1000 / sets in parallel. The factor is 2 for two wires, there and back, and the square root of 3 between the
 * lines of three. Direct current takes Table 8 at the conductor temperature; alternating current Table 9, either
 * R cos + X sin at the load's lagging power factor or the printed effective impedance at 0.85.
 * Worked: 100 A three-phase, 150 ft of 1 AWG copper in aluminum conduit, 0.85: 1.732 x 100 x 0.16 x 150 / 1000 =
 * 4.157 V, 1.73 % of 240 V.
 * Silent: the code sets no limit for ordinary circuits; 3 % and 5 % are its advice and change no answer here. Table 9
 * holds for three single conductors in a raceway at 75 C. Leading power factors are not answered.
 */
export const voltageDrop: Calculation<VoltageDropQuestion> = {
  name: NAME,
  title: "Voltage drop",
  clauses: [
    "voltageDropBranch",
    "voltageDropFeeder",
    "resistanceAtTemperature",
    "effectiveImpedance",
    "parallel",
    "equipmentGroundUpsizing",
  ],
  needs: [
    "question/system",
    "question/voltageV",
    "question/loadA",
    "question/sets",
    "question/metal",
    "question/impedance",
    "question/size",
    "question/length",
    "question/limitPercent",
  ],
  cannotSee: "how the load is spread along the run, starting currents, and drops ahead of this circuit",
  answer(question, basis, edition) {
    const sheet = new CalculationSheet(NAME, basis);
    const circuit = circuitOf(sheet, question, edition);
    if (isClosed(circuit)) return circuit;
    switch (question.ask) {
      case "drop":
        return dropOf(circuit);
      case "size-for-limit":
        return sizeForLimit(circuit);
      case "longest-run":
        return longestRun(circuit);
    }
  },
};

/** What every one of the three questions starts from. */
interface CircuitAtWork {
  readonly sheet: CalculationSheet;
  readonly question: VoltageDropQuestion;
  readonly edition: Edition;
  readonly voltage: Step;
  readonly load: Step;
  readonly sets: Step;
  /** 2 or the square root of 3. */
  readonly factor: Step;
  readonly columns: ImpedanceColumns;
  readonly cite: Citation;
}

function circuitOf(
  sheet: CalculationSheet,
  question: VoltageDropQuestion,
  edition: Edition,
): CircuitAtWork | CalculationFinding {
  const { system, impedance } = question;
  const { tables } = edition;
  if ((system === "dc") !== (impedance.kind === "dc-resistance"))
    return sheet.refuse(
      "NOT_COVERED",
      system === "dc"
        ? "Direct current has no reactance: ask with the dc resistance."
        : "The dc resistance leaves out reactance and skin effect: ask with the raceway and the power factor.",
      system === "dc" ? tables.conductorPropertiesStranded.cite : tables.acImpedance.cite,
    );
  const voltage = sheet.positive("source voltage", question.voltageV, "question/voltageV", "V");
  const load = sheet.positive("load current", question.loadA, "question/loadA", "A");
  const sets = sheet.count("sets in parallel", question.sets, "question/sets", "sets");
  const columns = impedanceColumns(sheet, question.metal, impedance, edition);
  if (isClosed(columns)) return columns;
  const factor = factorOf(sheet, system, columns.table.cite);
  return { sheet, question, edition, voltage, load, sets, factor, columns, cite: columns.table.cite };
}

function factorOf(sheet: CalculationSheet, system: VoltageDropQuestion["system"], cite: Citation): Step {
  if (system !== "three-phase") return sheet.state("wires the current flows through, there and back", 2, cite);
  const lines = sheet.state("lines of the system", 3, cite);
  return sheet.approximately(
    "factor between lines",
    Math.sqrt(3),
    "",
    [lines],
    "square root of the number of lines",
    "sqrt(3)",
  );
}

function dropOf(circuit: CircuitAtWork): CalculationFinding {
  const { sheet, question, cite } = circuit;
  const size = sizeStep(circuit);
  if (isClosed(size)) return size;
  const length = lengthStep(circuit);
  if (isClosed(length)) return length;
  const ohms = impedancePerKft(sheet, circuit.columns, size);
  if (isClosed(ohms)) return ohms;
  const volts = dropVolts(circuit, ohms, length);
  if (!sheet.compare("drop is less than the source voltage", volts, "<", circuit.voltage, cite))
    return sheet.refuse(
      "NO_SOLUTION",
      `This circuit would lose ${shown(volts.value, 2)} V of ${String(question.voltageV)} V: it cannot carry that load so far.`,
      cite,
    );
  const left = sheet.subtract("voltage at the load", circuit.voltage, volts, "V");
  const percent = percentOf(circuit, volts);
  return sheet.finish({
    sentence: `The circuit loses ${shown(volts.value, 2)} V, ${shown(percent.value, 2)} % of ${String(question.voltageV)} V.`,
    cite,
    results: [
      { name: "voltage drop in percent", step: percent },
      { name: "voltage drop", step: volts },
      { name: "voltage at the load", step: left },
    ],
    advice: [...adviceOnShare(circuit, Number(percent.value)), ...adviceOnParallel(circuit, String(size.value))],
  });
}

function sizeForLimit(circuit: CircuitAtWork): CalculationFinding {
  const { sheet, edition, columns, cite } = circuit;
  const length = lengthStep(circuit);
  if (isClosed(length)) return length;
  const limit = limitStep(circuit);
  if (isClosed(limit)) return limit;
  const most = largestOhms(circuit, limit, length);
  const smallest =
    circuit.question.sets > 1
      ? sheet.state("smallest size that may be run in parallel", "1/0 AWG", edition.clauses.parallel)
      : undefined;
  for (const text of sizesOf(columns.table)) {
    if (smallest !== undefined && compareSizes(sizeOf(text), sizeOf(String(smallest.value))) < 0) continue;
    if (!columns.isPrinted(text)) continue;
    const tried = sheet.conclude(
      "size tried",
      text,
      smallest === undefined ? [] : [smallest],
      "next size of the table",
    );
    const ohms = impedancePerKft(sheet, columns, tried);
    if (isClosed(ohms)) return ohms;
    if (!sheet.compare("impedance is within the largest allowed", ohms, "<=", most, cite)) continue;
    const within = sheet.last;
    const volts = dropVolts(circuit, ohms, length);
    const percent = percentOf(circuit, volts);
    const size = sheet.conclude(
      "smallest size within the limit",
      text,
      [tried, within],
      "the first size of the table, from the smallest up, that keeps the drop within the limit",
      cite,
    );
    return sheet.finish({
      sentence: `${text} is the smallest size that keeps the drop within ${shown(limit.value)} %: it loses ${shown(volts.value, 2)} V, ${shown(percent.value, 2)} %.`,
      cite,
      results: [
        { name: "smallest size", step: size },
        { name: "voltage drop in percent", step: percent },
        { name: "voltage drop", step: volts },
        { name: "largest impedance allowed", step: most },
      ],
      advice: [
        "The size answers for the drop only: its ampacity and the temperature of its terminals are judged apart.",
        ...adviceOnUpsizing(edition),
      ],
    });
  }
  return sheet.refuse(
    "NO_SOLUTION",
    `No size of ${cite.locator} keeps the drop within ${shown(limit.value)} %: use more sets in parallel, a higher voltage or a shorter run.`,
    cite,
  );
}

function longestRun(circuit: CircuitAtWork): CalculationFinding {
  const { sheet, question, cite } = circuit;
  const size = sizeStep(circuit);
  if (isClosed(size)) return size;
  const limit = limitStep(circuit);
  if (isClosed(limit)) return limit;
  const ohms = impedancePerKft(sheet, circuit.columns, size);
  if (isClosed(ohms)) return ohms;
  const volts = allowedVolts(circuit, limit);
  const { factor, load, sets } = circuit;
  const feet = sheet.exactly(
    "longest run",
    quotient(sheet, [volts, sets], [factor, load, ohms], 1000),
    "ft",
    [volts, sets, factor, load, ohms],
    "drop allowed x 1000 x sets / factor / load / ohms per 1000 ft",
    `${text(volts)} x 1000 x ${text(sets)} / ${text(factor)} / ${text(load)} / ${text(ohms)}`,
    cite,
  );
  const meters = sheet.exactly(
    "longest run in meters",
    multiply(sheet.exact(feet), exactOf("0.3048")),
    "m",
    [feet],
    "length in feet x 0.3048",
    `${text(feet)} x 0.3048`,
  );
  const longest = sheet.conclude(
    "longest one-way run",
    feet.value,
    [feet],
    "at this length the drop equals the limit",
    cite,
    "ft",
  );
  return sheet.finish({
    sentence: `The run may be ${shown(feet.value, 1)} ft (${shown(meters.value, 1)} m) one way before ${String(size.value)} loses more than ${shown(limit.value)} % of ${String(question.voltageV)} V.`,
    cite,
    results: [
      { name: "longest run", step: longest },
      { name: "longest run in meters", step: meters },
      { name: "voltage drop allowed", step: volts },
    ],
    advice: adviceOnParallel(circuit, String(size.value)),
  });
}

function sizeStep({ sheet, question, cite }: CircuitAtWork): Step | CalculationFinding {
  if (question.size === undefined)
    return sheet.ask("question/size", "Without the conductor's size its resistance is not known.", cite);
  return sheet.given("size", sizeOf(question.size).text, "question/size");
}

function lengthStep({ sheet, question, cite }: CircuitAtWork): Step | CalculationFinding {
  if (question.length === undefined)
    return sheet.ask("question/length", "The drop grows with the length of the run, which is not given.", cite);
  return sheet.length("one-way length", question.length, "question/length", "ft");
}

function limitStep({ sheet, question, cite }: CircuitAtWork): Step | CalculationFinding {
  if (question.limitPercent === undefined)
    return sheet.ask(
      "question/limitPercent",
      "The code sets no limit for ordinary circuits, so the drop to keep within must be said.",
      cite,
    );
  return sheet.positive("largest drop allowed", question.limitPercent, "question/limitPercent", "%");
}

function dropVolts({ sheet, factor, load, sets, cite }: CircuitAtWork, ohms: Step, length: Step): Step {
  return sheet.exactly(
    "voltage drop",
    divide(quotient(sheet, [factor, load, ohms, length], [sets], 1), exactOf(1000)),
    "V",
    [factor, load, ohms, length, sets],
    "factor x load x ohms per 1000 ft x length / 1000 / sets",
    `${text(factor)} x ${text(load)} x ${text(ohms)} x ${text(length)} / 1000 / ${text(sets)}`,
    cite,
  );
}

function percentOf({ sheet, voltage }: CircuitAtWork, volts: Step): Step {
  return sheet.exactly(
    "voltage drop in percent",
    quotient(sheet, [volts], [voltage], 100),
    "%",
    [volts, voltage],
    "drop x 100 / source voltage",
    `${text(volts)} x 100 / ${text(voltage)}`,
  );
}

function allowedVolts({ sheet, voltage }: CircuitAtWork, limit: Step): Step {
  return sheet.exactly(
    "drop allowed",
    divide(multiply(sheet.exact(limit), sheet.exact(voltage)), exactOf(100)),
    "V",
    [limit, voltage],
    "limit in percent x source voltage / 100",
    `${text(limit)} x ${text(voltage)} / 100`,
  );
}

function largestOhms(circuit: CircuitAtWork, limit: Step, length: Step): Step {
  const { sheet, factor, load, sets } = circuit;
  const volts = allowedVolts(circuit, limit);
  return sheet.exactly(
    "largest impedance allowed",
    quotient(sheet, [volts, sets], [factor, load, length], 1000),
    "ohm/kft",
    [volts, sets, factor, load, length],
    "drop allowed x 1000 x sets / factor / load / length",
    `${text(volts)} x 1000 x ${text(sets)} / ${text(factor)} / ${text(load)} / ${text(length)}`,
  );
}

function quotient(sheet: CalculationSheet, over: readonly Step[], under: readonly Step[], times: number): Exact {
  let value = exactOf(times);
  for (const step of over) value = multiply(value, sheet.exact(step));
  for (const step of under) value = divide(value, sheet.exact(step));
  return value;
}

function text(step: Step): string {
  return String(step.value);
}

function adviceOnShare({ edition }: CircuitAtWork, percent: number): readonly string[] {
  const { voltageDropBranch, voltageDropFeeder } = edition.clauses;
  if (!(percent > ADVISED_PERCENT)) return [];
  const share = percent > ADVISED_TOTAL_PERCENT ? ADVISED_TOTAL_PERCENT : ADVISED_PERCENT;
  return [
    share === ADVISED_TOTAL_PERCENT
      ? `More than the 5 % over feeder and branch circuit together that is called reasonable (advice, not a limit): ${citationText(voltageDropBranch)}; ${citationText(voltageDropFeeder)}.`
      : `More than the 3 % over a feeder or a branch circuit alone that is called reasonable (advice, not a limit): ${citationText(voltageDropBranch)}; ${citationText(voltageDropFeeder)}.`,
    ...adviceOnUpsizing(edition),
  ];
}

function adviceOnUpsizing({ clauses }: Edition): readonly string[] {
  return [
    `A conductor raised for the drop takes its wire-type equipment ground with it, in proportion to its area: ${citationText(clauses.equipmentGroundUpsizing)}.`,
    "The lugs at both ends must be listed for the raised size; where they are not, a lug kit, a pin adapter or a splice to a smaller tail is needed.",
  ];
}

function adviceOnParallel({ question, edition }: CircuitAtWork, size: string): readonly string[] {
  if (!(question.sets > 1 && compareSizes(sizeOf(size), sizeOf("1/0 AWG")) < 0)) return [];
  return [
    `Conductors smaller than 1/0 AWG may be run in parallel only in special cases: ${citationText(edition.clauses.parallel)}.`,
  ];
}
