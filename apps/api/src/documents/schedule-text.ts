import type { ConnectorSchedule, ScheduleRow } from "@landfast/rules";
import {
  connectorWithQuantity,
  countsText,
  factName,
  levelText,
  preparationPhrases,
  rowsByArea,
  torqueText,
  VERDICT_WORDS,
} from "./schedule-words.js";
import { type Column, paragraph, tableLines, wrap } from "./text-layout.js";

/** The widest line. */
export const PAGE_WIDTH = 120;

const COLUMNS: readonly Column[] = [
  { head: "Mark", width: 8 },
  { head: "Joint", width: 12 },
  { head: "Conductors", width: 21 },
  { head: "Connector", width: 24 },
  { head: "Verdict", width: 11 },
  { head: "Torque and its source", width: 20 },
  { head: "Preparation, tool", width: 12 },
];

/** A stored schedule as plain text of at most 120 columns, areas one after another. */
export function scheduleText(schedule: ConnectorSchedule): string {
  const lines = [
    `Connector schedule: ${schedule.job}`,
    `${schedule.basis.ruleSet.toUpperCase()} ${schedule.basis.edition}, rules ${schedule.rulesVersion}. ${countsText(schedule)}.`,
  ];
  for (const [area, rows] of rowsByArea(schedule.rows)) {
    lines.push("", area, "=".repeat(Math.min(area.length, PAGE_WIDTH)));
    lines.push(...tableLines(COLUMNS, rows.map(cellsOf)));
  }
  lines.push(...rejections(schedule), ...openQuestions(schedule), ...totals(schedule));
  lines.push("", `${countsText(schedule)}.`, ...wrap(schedule.caution, PAGE_WIDTH));
  return `${lines.flatMap((line) => (line.length > PAGE_WIDTH ? wrap(line, PAGE_WIDTH) : [line])).join("\n")}\n`;
}

function cellsOf(row: ScheduleRow): readonly string[] {
  return [
    row.mark,
    `${row.quantity} x ${row.role} ${row.function}${row.equipmentTag === null ? "" : ` at ${row.equipmentTag}`}`,
    row.conductors.join("\n"),
    connectorWithQuantity(row),
    VERDICT_WORDS[row.verdict],
    row.torque.map((torque) => `${torque.at}: ${torqueText(torque)}${sourceOf(torque)}`).join("\n"),
    briefPreparation(row),
  ];
}

function sourceOf({ level, source }: ScheduleRow["torque"][number]): string {
  return level === null ? "" : ` (${levelText(level)}${level === "code-table" ? `, ${source}` : ""})`;
}

/** What to do, without the reasons: those are in the other documents. */
function briefPreparation(row: ScheduleRow): string {
  return preparationPhrases(row)
    .map((phrase) =>
      phrase.startsWith("brush ") || phrase.startsWith("compound ") ? (phrase.split(":")[0] ?? "") : phrase,
    )
    .join("\n");
}

function section(title: string, lines: readonly string[]): readonly string[] {
  return lines.length === 0 ? [] : ["", title, "=".repeat(title.length), ...lines];
}

function rejections({ rejections: refused }: ConnectorSchedule): readonly string[] {
  return section(
    `Rejected: ${refused.length}`,
    refused.flatMap(({ mark, rule, sentence, clause, fix, instead }) => [
      `${mark}  ${rule}${clause === "" ? "" : `  [${clause}]`}`,
      ...paragraph(sentence, PAGE_WIDTH, 4),
      ...(fix === "" ? [] : paragraph(`Put right: ${fix}`, PAGE_WIDTH, 4, 15)),
      ...(instead === "" ? [] : paragraph(`Instead:   ${instead}`, PAGE_WIDTH, 4, 15)),
    ]),
  );
}

function openQuestions({ openQuestions: asked }: ConnectorSchedule): readonly string[] {
  return section(
    `Open questions: ${asked.length}`,
    asked.flatMap(({ mark, facts, clause }) => [
      `${mark}${clause === "" ? "" : `  [${clause}]`}`,
      ...facts.flatMap(({ path, because }) => paragraph(`${factName(path)} (${path}): ${because}`, PAGE_WIDTH, 4)),
    ]),
  );
}

function totals({ totals: parts }: ConnectorSchedule): readonly string[] {
  if (parts.length === 0) return [];
  const columns = [
    { head: "Part", width: 24 },
    { head: "Quantity", width: 8 },
    { head: "What", width: 46 },
    { head: "Marks", width: 36 },
  ];
  return section(
    "Parts for the accepted joints",
    tableLines(
      columns,
      parts.map(({ partNumber, quantity, description, marks }) => [
        partNumber,
        String(quantity),
        description,
        marks.join(" "),
      ]),
    ),
  );
}
