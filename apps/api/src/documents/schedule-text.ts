import type { ConnectorSchedule, ScheduleRow } from "@landfast/rules";
import {
  basisText,
  connectorWithQuantity,
  countsText,
  factName,
  levelText,
  marksText,
  preparationPhrases,
  rowsByArea,
  type SentenceOfMarks,
  sentencesByMarks,
  torqueText,
  VERDICT_WORDS,
} from "./schedule-words.js";
import { type Column, paragraph, tableLines, wrap } from "./text-layout.js";

/** The widest line. */
export const PAGE_WIDTH = 120;

const COLUMNS: readonly Column[] = [
  { head: "Mark", width: 9 },
  { head: "Joint", width: 24 },
  { head: "Conductors", width: 36 },
  { head: "Connector", width: 23 },
  { head: "Verdict", width: 20 },
];

/** Where the lines under a row begin: below its second column. */
const UNDER = 11;

/** A stored schedule as plain text of at most 120 columns, areas one after another. */
export function scheduleText(schedule: ConnectorSchedule): string {
  const lines = [
    `Connector schedule: ${schedule.job}`,
    `${basisText(schedule.basis)}, rules ${schedule.rulesVersion}. ${countsText(schedule)}.`,
  ];
  for (const [area, rows] of rowsByArea(schedule.rows)) {
    lines.push("", area, "=".repeat(Math.min(area.length, PAGE_WIDTH)));
    lines.push(...tableLines(COLUMNS, []));
    for (const row of rows) lines.push(...rowLines(row));
  }
  lines.push(...rejections(schedule), ...openQuestions(schedule), ...totals(schedule));
  lines.push(
    ...sentences("On site, at the joints that are accepted", sentencesByMarks(schedule, "dutiesOnSite")),
    ...sentences("To be kept in mind", sentencesByMarks(schedule, "caveats")),
  );
  lines.push("", `${countsText(schedule)}.`, ...wrap(schedule.caution, PAGE_WIDTH));
  return `${lines.flatMap((line) => (line.length > PAGE_WIDTH ? wrap(line, PAGE_WIDTH) : [line])).join("\n")}\n`;
}

/**
 * The row itself, and under it how the joint is made: each thing that is tightened, preparation and tool,
 * and what the acceptance hangs on.
 */
function rowLines(row: ScheduleRow): readonly string[] {
  const [, , ...cells] = tableLines(COLUMNS, [
    [
      row.mark,
      `${row.quantity} x ${row.role} ${row.function}${row.equipmentTag === null ? "" : ` at ${row.equipmentTag}`}`,
      row.conductors.join("\n"),
      connectorWithQuantity(row),
      isSettled(row) ? VERDICT_WORDS[row.verdict] : `${VERDICT_WORDS[row.verdict]}: ${row.deciding.rule}`,
    ],
  ]);
  const making = [
    ...row.torque.map((torque) => `${torque.at}: ${torqueText(torque)}${sourceOf(torque)}`),
    preparationPhrases(row).join("; "),
    ...row.conditions.map((condition) => `if: ${condition}`),
  ].filter((line) => line !== "");
  return [...cells, ...making.flatMap((line) => paragraph(line, PAGE_WIDTH, UNDER, UNDER + 2))];
}

function isSettled({ verdict }: ScheduleRow): boolean {
  return verdict === "accept" || verdict === "accept-with-conditions";
}

function sourceOf({ level, source }: ScheduleRow["torque"][number]): string {
  if (level === null) return "";
  return level === "code-table" || level === "trade-practice" ? ` [${source}]` : ` [${levelText(level)}]`;
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

function sentences(title: string, held: readonly SentenceOfMarks[]): readonly string[] {
  return section(
    title,
    held.flatMap(({ sentence, marks }) => {
      const named = marks.length <= 3 ? marks.join(", ") : marksText(marks.length);
      return paragraph(`${named}: ${sentence}`, PAGE_WIDTH, 0, 4);
    }),
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
