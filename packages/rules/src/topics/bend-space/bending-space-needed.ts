import {
  BENDING_NOT_SPECIFIED,
  type BendingEntry,
  bendingCell,
  bendingClause,
  bendingReduction,
  bendingTable,
} from "../../core/bending-table.js";
import type { Calculation, CalculationFinding } from "../../core/calculation.js";
import { CalculationSheet, isClosed, shown } from "../../core/calculation-sheet.js";
import type { Citation } from "../../core/citation.js";
import type { ConductorMetal, Stranding } from "../../core/conductor.js";
import { sizeOf } from "../../core/conductor-size.js";
import type { Step } from "../../core/finding.js";
import type { Length } from "../../core/quantity.js";
import { type Cell, isRefused } from "../../core/table.js";

const NAME = "bending-space";
const REMOVABLE_PATH = "question/removableTerminal";

export interface BendingSpaceQuestion {
  readonly size: string;
  readonly metal: ConductorMetal;
  readonly stranding: Stranding;
  /** Through the wall opposite its terminal, or through another; a wiring gutter is read as another. */
  readonly entry: BendingEntry;
  readonly wiresPerTerminal: number;
  /** A removable or lay-in terminal for one wire. */
  readonly removableTerminal?: boolean;
  /** What is there, to be compared. */
  readonly available?: Length;
}

/**
 * How much space does a conductor need to be bent into its terminal?
 *
 * NFPA 70 312.6(A), (B) (2017, 2020, 2023), in our words: the space of the table by size and wires per terminal, in
 * inches, straight from the end of the terminal to the wall: Table 312.6(B)(2) through the opposite wall, less the
 * reduction for a removable or lay-in terminal for one wire; Table 312.6(A) through another wall and for gutters. Compact
 * aluminum is read in its own column.
 * Worked: 4/0 AWG copper, opposite wall: 7 in with one wire per terminal, 7.5 in with two; through a side wall 4 in.
 * Silent: the tables lay down nothing for 14 to 10 AWG. Aluminum of unknown stranding takes the larger space of ordinary
 * conductors. The further ways of 312.6(B) to leave through the opposite wall are not answered.
 */
export const bendingSpaceNeeded: Calculation<BendingSpaceQuestion> = {
  name: NAME,
  title: "Space to bend a conductor at its terminal",
  clauses: ["bendingOpposite", "bendingSide"],
  needs: [
    "question/size",
    "question/metal",
    "question/stranding",
    "question/entry",
    "question/wiresPerTerminal",
    REMOVABLE_PATH,
    "question/available",
  ],
  cannotSee: "what else stands in the way of the conductor",
  answer(question, basis, edition) {
    const sheet = new CalculationSheet(NAME, basis);
    const { size, entry, wiresPerTerminal } = question;
    const table = bendingTable(question, entry, edition);
    const cite = bendingClause(entry, edition);
    const facts = [
      sheet.given("size", sizeOf(size).text, "question/size"),
      sheet.given("metal", question.metal, "question/metal"),
      sheet.given("stranding", question.stranding, "question/stranding"),
      sheet.given("wall the conductor leaves through", entry, "question/entry"),
      sheet.count("wires per terminal", wiresPerTerminal, "question/wiresPerTerminal", "wires"),
    ];
    const available =
      question.available === undefined
        ? undefined
        : sheet.length("space available", question.available, "question/available", "in");
    const cell = bendingCell(table, size, entry, wiresPerTerminal);
    if (isRefused(cell)) return sheet.outsideTable(cell, table.cite);
    const full = sheet.read("space by the table", cell, facts);
    if (full.value === BENDING_NOT_SPECIFIED) return unspecified(sheet, question, full, cite);
    const reduction = bendingReduction(table, size, entry, wiresPerTerminal);
    const needed = reduction === undefined ? full : reduced(sheet, question, full, reduction, available, facts, cite);
    return isClosed(needed) ? needed : finish(sheet, question, needed, full, available, cite);
  },
};

function unspecified(
  sheet: CalculationSheet,
  { size }: BendingSpaceQuestion,
  full: Step,
  cite: Citation,
): CalculationFinding {
  const result = sheet.conclude(
    "space to bend the conductor",
    BENDING_NOT_SPECIFIED,
    [full],
    "the tables lay down no space for conductors this small",
    cite,
  );
  return sheet.finish({
    sentence: `No bending space is laid down for ${size}.`,
    cite,
    results: [{ name: "space needed", step: result }],
  });
}

/** The space with the reduction, where the terminal is known to earn it; asked about where that decides. */
function reduced(
  sheet: CalculationSheet,
  { removableTerminal }: BendingSpaceQuestion,
  full: Step,
  reduction: Cell,
  available: Step | undefined,
  facts: readonly Step[],
  cite: Citation,
): Step | CalculationFinding {
  if (removableTerminal === false) {
    sheet.given("removable or lay-in terminal for one wire", false, REMOVABLE_PATH);
    return full;
  }
  const take = sheet.read("reduction for a removable terminal", reduction, facts);
  const less = sheet.subtract("space with the reduction", full, take, "in", cite);
  if (removableTerminal === true) {
    const removable = sheet.given("removable or lay-in terminal for one wire", true, REMOVABLE_PATH);
    return sheet.conclude(
      "space for a removable terminal",
      less.value,
      [less, removable],
      "the reduction is earned",
      cite,
      "in",
    );
  }
  // Room for the full space is room in either case, and no room for the reduced one is room in neither.
  const isSettled =
    available !== undefined &&
    (sheet.compare("there is room without the reduction", available, ">=", full, cite) ||
      !sheet.compare("there is room with the reduction", available, ">=", less, cite));
  return isSettled
    ? full
    : sheet.ask(
        REMOVABLE_PATH,
        `A removable or lay-in terminal for one wire needs ${shown(less.value)} in instead of ${shown(full.value)} in; whether it is one, is not given.`,
        cite,
      );
}

function finish(
  sheet: CalculationSheet,
  question: BendingSpaceQuestion,
  needed: Step,
  full: Step,
  available: Step | undefined,
  cite: Citation,
): CalculationFinding {
  const room =
    available === undefined
      ? undefined
      : {
          holds: sheet.compare("there is room to bend the conductor", available, ">=", needed, cite),
          step: sheet.last,
          there: shown(available.value, 2),
        };
  const result = sheet.conclude(
    "space to bend the conductor",
    needed.value,
    [needed],
    "from the end of the terminal straight to the wall",
    cite,
    "in",
  );
  const wall = question.entry === "opposite" ? "the opposite wall" : "a side wall";
  const wires = question.wiresPerTerminal === 1 ? "one wire" : `${String(question.wiresPerTerminal)} wires`;
  const needs = `${question.size} through ${wall} needs ${shown(needed.value)} in with ${wires} per terminal`;
  return sheet.finish({
    sentence: room === undefined ? `${needs}.` : `${needs}, and ${room.holds ? "" : "only "}${room.there} in is there.`,
    cite,
    results: [
      { name: "space needed", step: result },
      { name: "space by the table", step: full },
      ...(room === undefined ? [] : [{ name: "there is room", step: room.step }]),
    ],
  });
}
