import type { Calculation, CalculationFinding } from "../../core/calculation.js";
import { CalculationSheet, isClosed } from "../../core/calculation-sheet.js";
import { type Citation, citationText } from "../../core/citation.js";
import type { Drive, Unmarked } from "../../core/connector.js";
import { type DrivenBy, defaultTorque, wayOf } from "../../core/default-torque.js";
import type { Edition } from "../../core/edition.js";
import type { SourceLevel, Step } from "../../core/finding.js";
import { type Torque, type TorqueUnit, torqueInUnits } from "../../core/quantity.js";
import { driveText, torqueText } from "../../core/torque-words.js";
import { convertedTorque } from "../../core/unit-conversion.js";
import { type TorqueTool, toolVerdict } from "./torque-tool.js";

const NAME = "torque";

/** A torque as it stands on a part or in its instructions. */
export interface MarkedTorque {
  readonly torque: Torque;
  readonly on: "equipment" | "connector";
}

export interface TorqueQuestion {
  readonly drive: Drive;
  /** The equipment's mark where it has one, else the connector's; "unmarked" where neither gives a torque. */
  readonly marked?: MarkedTorque | Unmarked;
  /** The largest conductor under the screw. Needed for default torques, but not of a recessed head. */
  readonly largestConductor?: string;
  /** How a slotted hexagon head is driven. */
  readonly drivenBy?: "slot" | "hexagon";
  readonly tool?: TorqueTool;
  /** "2026-05-31"; absent: the day of installation that the basis names. */
  readonly usedOn?: string;
}

/**
 * How far is a screw tightened, where does the value come from, and can this tool reach it?
 *
 * NFPA 70 110.14(D) and Informative Annex I (2017, 2020, 2023), in our words: the torque marked on the equipment, else on
 * the connector or in its instructions; where neither gives one, the annex by the kind of head and the largest conductor.
 * Torques in lbf-in, lbf-ft and N-m.
 * Worked: 5/16 in recessed hexagon, nothing marked: 275 lbf-in, 22.9 lbf-ft, 31.1 N-m.
 * Silent: the annex has no value for a clamp's bolt and for heads and conductors outside its rows, and none is made up. A
 * split bolt is asked as such, whatever its slot.
 */
export const torque: Calculation<TorqueQuestion> = {
  name: NAME,
  title: "Tightening torque of a screw",
  clauses: ["torque", "instructions"],
  needs: [
    "question/drive",
    "question/marked",
    "question/largestConductor",
    "question/drivenBy",
    "question/tool",
    "question/usedOn",
  ],
  cannotSee: "whether the screw is tightened, and which tool is in hand",
  answer(question, basis, edition) {
    const sheet = new CalculationSheet(NAME, basis);
    const head = sheet.given("head of the screw", question.drive.kind, "question/drive/kind");
    const other = withoutTorque(sheet, question, edition);
    if (other !== undefined) return other;
    const found = torqueOf(sheet, question, head, edition);
    if (isClosed(found)) return found;
    return finish(sheet, question, head, found, question.usedOn ?? basis.installedOn, edition);
  },
};

interface FoundTorque {
  readonly step: Step;
  readonly printed: Torque;
  readonly level: SourceLevel;
  readonly drivenBy: DrivenBy;
  readonly cite: Citation;
  readonly source: string;
}

/** Heads that no torque tool turns. */
function withoutTorque(
  sheet: CalculationSheet,
  { drive }: TorqueQuestion,
  { clauses, torqueDuty }: Edition,
): CalculationFinding | undefined {
  switch (drive.kind) {
    case "breakaway":
      return sheet.refuse(
        "NOT_COVERED",
        torqueDuty.breakawayAccepted
          ? "The head breaks away at its torque: no value is set on a tool."
          : "The head breaks away at its torque: no value is set on a tool, if the maker's instructions name the head as the method.",
        clauses.torque,
      );
    case "hand":
      return sheet.refuse(
        "NOT_COVERED",
        "It is turned by hand as its package says: no torque applies.",
        clauses.instructions,
      );
    case "none":
      return sheet.refuse(
        "NOT_COVERED",
        "Nothing is tightened: it is pressed, welded or sprung.",
        clauses.instructions,
      );
    default:
      return undefined;
  }
}

function torqueOf(
  sheet: CalculationSheet,
  question: TorqueQuestion,
  head: Step,
  edition: Edition,
): FoundTorque | CalculationFinding {
  const { marked, drive } = question;
  const cite = edition.clauses.torque;
  if (marked === undefined)
    return sheet.ask(
      "question/marked",
      "Whether a torque is marked or given in the instructions is not known; the default holds only where none is.",
      cite,
    );
  const isTwoWay = drive.kind === "slotted-hex" && (marked === "unmarked" || question.tool !== undefined);
  if (isTwoWay && question.drivenBy === undefined)
    return sheet.ask(
      "question/drivenBy",
      "A slotted hexagon can be driven by its slot or by its hexagon; which one, is not given.",
      cite,
    );
  if (drive.kind === "slotted-hex" && question.drivenBy !== undefined)
    sheet.given("driven by", question.drivenBy, "question/drivenBy");
  const drivenBy = drive.kind === "slotted-hex" && question.drivenBy === "hexagon" ? "external-hex" : wayOf(drive);
  if (marked === "unmarked") return byDefault(sheet, question, head, drivenBy, edition);
  const { value, unit } = marked.torque;
  const posted = sheet.positive(`torque marked on the ${marked.on}`, value, "question/marked/torque", unit);
  return {
    step: posted,
    printed: { value, unit },
    level: marked.on === "equipment" ? "equipment-marking" : "connector-marking",
    drivenBy,
    cite,
    source: `as marked on the ${marked.on} or in its instructions`,
  };
}

/** Nothing is marked: the annex, if it has a row for this head and conductor. */
function byDefault(
  sheet: CalculationSheet,
  { drive, largestConductor }: TorqueQuestion,
  head: Step,
  drivenBy: DrivenBy,
  edition: Edition,
): FoundTorque | CalculationFinding {
  const { clauses, tables } = edition;
  sheet.given("torque on the part or in its instructions", "none", "question/marked");
  if (drive.kind === "clamp-bolt")
    return sheet.refuse(
      "NOT_COVERED",
      "No torque is marked on the clamp, and no default table covers a clamp's bolt.",
      clauses.torque,
    );
  if (largestConductor === undefined && drive.kind !== "socket")
    return sheet.ask(
      "question/largestConductor",
      "The default torque of this head goes by the largest conductor under it, which is not given.",
      tables.torqueByConductor.cite,
    );
  const standard = defaultTorque(
    sheet,
    {
      drive,
      drivePath: "question/drive",
      largest: largestConductor ?? "",
      largestPath: "question/largestConductor",
    },
    drivenBy,
    edition,
  );
  if ("refused" in standard)
    return sheet.refuse("OUTSIDE_TABLE", `Nothing is marked and no default holds: ${standard.refused}.`, standard.cite);
  return {
    step: sheet.conclude(
      "default torque for this head",
      standard.lbfIn,
      [standard.step, head],
      standard.by,
      standard.cite,
      "lbf-in",
    ),
    printed: { value: standard.lbfIn, unit: "lbf-in" },
    level: "code-table",
    drivenBy,
    cite: standard.cite,
    source: `nothing is marked, and ${standard.cite.locator} gives it for ${standard.by}`,
  };
}

function finish(
  sheet: CalculationSheet,
  { drive, tool }: TorqueQuestion,
  head: Step,
  { step, printed, level, drivenBy, cite, source }: FoundTorque,
  usedOn: string | undefined,
  edition: Edition,
): CalculationFinding {
  const converted = UNITS.filter((unit) => unit !== printed.unit).map((unit) => {
    const { value, arithmetic } = convertedTorque(printed, unit);
    const name = `torque in ${unit}`;
    return { name, step: sheet.exactly(name, value, unit, [step], `torque in ${printed.unit}, converted`, arithmetic) };
  });
  const levelStep = sheet.conclude(
    "where the torque comes from",
    level,
    [step],
    "a mark comes before every table",
    cite,
  );
  const way = drive.kind === "slotted-hex" ? drivenBy : null;
  const feature = sheet.conclude("what the tool must fit", driveText(drive, way), [head], "the head of the screw");
  const verdict =
    tool === undefined
      ? undefined
      : toolVerdict(sheet, tool, { step, printed }, { drive, drivenBy, step: feature }, usedOn, edition.clauses.torque);
  if (verdict !== undefined && "calculation" in verdict) return verdict;
  const result = sheet.conclude("tightening torque", printed.value, [step], "as printed there", cite, printed.unit);
  const tightened = `Tighten to ${torqueText(torqueInUnits(printed))}: ${source}.`;
  return sheet.finish({
    sentence: verdict === undefined ? tightened : `${tightened} ${verdict.text}`,
    cite,
    results: [
      { name: "torque", step: result },
      { name: "where the torque comes from", step: levelStep },
      ...converted,
      { name: "what the tool must fit", step: feature },
      ...(verdict === undefined ? [] : [{ name: "the tool serves", step: verdict.step }]),
    ],
    advice: [
      `${edition.torqueDuty.sentence} (${citationText(edition.clauses.torque)})`,
      ...(level === "code-table"
        ? ["The value is a default: a torque found on the part or in its instructions comes before it."]
        : []),
    ],
  });
}

const UNITS: readonly TorqueUnit[] = ["lbf-in", "lbf-ft", "N-m"];
