import type { Calculation, CalculationFinding } from "../../core/calculation.js";
import { CalculationSheet, shown } from "../../core/calculation-sheet.js";
import { type Citation, citationText } from "../../core/citation.js";
import type { Edition } from "../../core/edition.js";
import { compareExact } from "../../core/exact.js";
import type { Step } from "../../core/finding.js";
import { lbfInches, type TorqueUnit } from "../../core/quantity.js";
import { cellAt, isRefused, type Table } from "../../core/table.js";
import { convertedTorque } from "../../core/unit-conversion.js";

const NAME = "bolt-torque";

/** Bolts as the two tables tell them apart. Graded steel is heat-treated and plated with zinc or cadmium. */
export const BOLT_KINDS = [
  "steel-grade-1",
  "steel-grade-2",
  "steel-grade-5",
  "steel-grade-7",
  "steel-grade-8",
  "galvanized-steel",
  "stainless-steel",
  "silicon-bronze",
  "aluminum",
] as const;
export type BoltKind = (typeof BOLT_KINDS)[number];

export const BOLT_TABLES = ["NEMA CC 1", "NETA ATS"] as const;
export type BoltTable = (typeof BOLT_TABLES)[number];

export interface BoltTorqueQuestion {
  /** Which table is asked; with "both" each answers under its own name. */
  readonly table: BoltTable | "both";
  /** Of the bolt, in inches as printed: "1/2". */
  readonly diameter: string;
  readonly bolt: BoltKind;
  /** Whether the thread is lubricated. */
  readonly lubricated?: boolean;
}

/**
 * How far is the bolt of a pad or bus tightened?
 *
 * NEMA CC 1 (installation torque table) and NETA ATS Tables 100.12.1 to 100.12.4, each by diameter, metal and lubrication.
 * The two are different documents and differ in places, so an answer names its table and none is preferred or averaged.
 * Worked: 1/2 in stainless, dry: NEMA CC 1 480 lbf-in, NETA ATS 40 lbf-ft, the same torque.
 * Silent: a cell that is blank is not filled from its neighbors. What the maker of the lug or the equipment says comes first.
 */
export const boltTorque: Calculation<BoltTorqueQuestion> = {
  name: NAME,
  title: "Torque of a pad or bus bolt",
  clauses: ["padBolts", "torque"],
  needs: ["question/table", "question/diameter", "question/bolt", "question/lubricated"],
  cannotSee: "washers, the state of the threads, and instructions of the maker, which come first",
  answer(question, basis, edition) {
    const sheet = new CalculationSheet(NAME, basis);
    const tables = tablesAsked(question, edition);
    const [first] = tables;
    const diameter = sheet.given("diameter of the bolt in inches", question.diameter, "question/diameter");
    const bolt = sheet.given("bolt", question.bolt, "question/bolt");
    if (question.lubricated === undefined)
      return sheet.ask(
        "question/lubricated",
        "A lubricated thread takes another torque than a dry one; which it is, is not given.",
        first.table.cite,
      );
    const lubricated = sheet.given("lubricated thread", question.lubricated, "question/lubricated");
    const readings: Reading[] = [];
    const refusals: Refused[] = [];
    for (const asked of tables) {
      const column = asked.columnFor(question.bolt, question.lubricated);
      const cell = column === undefined ? undefined : cellAt(asked.table, question.diameter, column);
      if (cell === undefined)
        refusals.push({
          code: "NOT_COVERED",
          detail: `${asked.name} has no column for ${boltText(question)}`,
          cite: asked.table.cite,
        });
      else if (isRefused(cell))
        refusals.push({ code: "OUTSIDE_TABLE", detail: `${asked.name}: ${cell.detail}`, cite: asked.table.cite });
      else
        readings.push({
          name: asked.name,
          step: sheet.read(`torque by ${asked.name}`, cell, [diameter, bolt, lubricated]),
          unit: asked.unit,
          cite: asked.table.cite,
        });
    }
    return answerOf(sheet, question, readings, refusals, edition);
  },
};

/** One table ready to be asked. */
interface AskedTable {
  readonly name: BoltTable;
  readonly table: Table;
  readonly unit: TorqueUnit;
  readonly columnFor: (bolt: BoltKind, lubricated: boolean) => string | undefined;
}

interface Reading {
  readonly name: BoltTable;
  readonly step: Step;
  readonly unit: TorqueUnit;
  readonly cite: Citation;
}

interface Refused {
  readonly code: "NOT_COVERED" | "OUTSIDE_TABLE";
  readonly detail: string;
  readonly cite: Citation;
}

function tablesAsked({ table }: BoltTorqueQuestion, { tables }: Edition): readonly [AskedTable, ...AskedTable[]] {
  const nema: AskedTable = {
    name: "NEMA CC 1",
    table: tables.padBoltTorque,
    unit: "lbf-in",
    columnFor: (bolt, lubricated) => (lubricated ? NEMA_LUBRICATED : NEMA_DRY)[bolt],
  };
  const neta: AskedTable = {
    name: "NETA ATS",
    table: tables.boltTorqueNeta,
    unit: "lbf-ft",
    columnFor: (bolt, lubricated) => (lubricated ? NETA_LUBRICATED : NETA_DRY)[bolt],
  };
  if (table === "both") return [nema, neta];
  return table === "NEMA CC 1" ? [nema] : [neta];
}

function answerOf(
  sheet: CalculationSheet,
  question: BoltTorqueQuestion,
  readings: readonly Reading[],
  refusals: readonly Refused[],
  edition: Edition,
): CalculationFinding {
  const [first, second] = readings;
  if (first === undefined) {
    const [refusal] = refusals;
    if (refusal === undefined) throw new Error("no table was asked");
    return sheet.refuse(refusal.code, `${refusals.map(({ detail }) => detail).join("; ")}.`, refusal.cite);
  }
  const converted = readings.flatMap((reading) => conversionsOf(sheet, reading));
  const texts = readings.map((reading) => `${torqueText(reading.step, reading.unit)} by ${reading.name}`);
  const agree = second === undefined || isSameTorque(first, second);
  const { cite } = first;
  const main = sheet.conclude(
    "torque",
    second === undefined ? first.step.value : texts,
    readings.map(({ step }) => step),
    second === undefined ? `as printed by ${first.name}` : "each as its own table prints it",
    cite,
    second === undefined ? first.unit : undefined,
  );
  return sheet.finish({
    sentence: `A ${question.diameter} in ${boltText(question)} is tightened to ${texts.join(", and to ")}${agree ? "" : "; the two tables differ"}.`,
    cite,
    results: [
      { name: second === undefined ? `torque by ${first.name}` : "torque by each table", step: main },
      ...(second === undefined ? [] : readings.map(({ name, step }) => ({ name: `torque by ${name}`, step }))),
      ...converted,
    ],
    advice: [
      `The maker's instructions for the lug and the equipment come before either table: ${citationText(edition.clauses.torque)}.`,
      ...refusals.map(({ detail }) => `${detail}, so only the other table answers.`),
      ...(agree
        ? []
        : [
            "Where the tables differ the job's specification says which one applies; a torque between them is neither's.",
          ]),
    ],
  });
}

/** The printed torque in the two units it is not printed in. */
function conversionsOf(
  sheet: CalculationSheet,
  { name, step, unit }: Reading,
): readonly { name: string; step: Step }[] {
  const value = Number(step.value);
  return UNITS.filter((other) => other !== unit).map((other) => {
    const { value: exact, arithmetic } = convertedTorque({ value, unit }, other);
    const label = `torque by ${name} in ${other}`;
    return {
      name: label,
      step: sheet.exactly(label, exact, other, [step], `torque in ${unit}, converted`, arithmetic),
    };
  });
}

function isSameTorque(a: Reading, b: Reading): boolean {
  const inches = ({ step, unit }: Reading) => lbfInches({ value: Number(step.value), unit });
  return compareExact(inches(a), inches(b)) === 0;
}

function torqueText(step: Step, unit: TorqueUnit): string {
  return `${shown(step.value)} ${unit}`;
}

function boltText({ bolt, lubricated }: BoltTorqueQuestion): string {
  return `${bolt} bolt with ${lubricated === true ? "lubricated" : "dry"} thread`;
}

const UNITS: readonly TorqueUnit[] = ["lbf-in", "lbf-ft", "N-m"];

type Columns = Readonly<Partial<Record<BoltKind, string>>>;
const NEMA_DRY: Columns = {
  "galvanized-steel": "steelOrBronze",
  "stainless-steel": "steelOrBronze",
  "silicon-bronze": "steelOrBronze",
};
const NEMA_LUBRICATED: Columns = { aluminum: "aluminumLubricated" };
const NETA_DRY: Columns = {
  "steel-grade-1": "steelGrade1And2",
  "steel-grade-2": "steelGrade1And2",
  "steel-grade-5": "steelGrade5",
  "steel-grade-7": "steelGrade7",
  "steel-grade-8": "steelGrade8",
  "silicon-bronze": "siliconBronzeUnlubricated",
  "stainless-steel": "stainlessUncoated",
};
const NETA_LUBRICATED: Columns = { "silicon-bronze": "siliconBronzeLubricated", aluminum: "aluminumLubricated" };
