import type { ConnectorSchedule } from "@landfast/rules";
import { PAGE_WIDTH } from "./schedule-text.js";
import { countsText } from "./schedule-words.js";
import { paragraph, tableLines } from "./text-layout.js";

/** What a catalogue offers for a job whose joints name no connector: the chosen parts, and where nothing fits. */
export function selectionText(schedule: ConnectorSchedule): string {
  const title = `Chosen from the catalogue: ${schedule.job}`;
  const lines = [title, "=".repeat(title.length), ...paragraph(`${countsText(schedule)}.`, PAGE_WIDTH)];
  const chosen = schedule.rows.filter(({ connector }) => connector?.chosen === true);
  lines.push(
    `A connector was chosen for ${chosen.length} of ${schedule.rows.length} marks; ${schedule.totals.length} different parts in all.`,
    "",
  );
  const columns = [
    { head: "Part", width: 24 },
    { head: "Quantity", width: 8 },
    { head: "What", width: 60 },
    { head: "Marks", width: 22 },
  ];
  lines.push(
    ...tableLines(
      columns,
      schedule.totals.map(({ partNumber, quantity, description, marks }) => [
        partNumber,
        String(quantity),
        description,
        `${marks.length} (${marks.slice(0, 2).join(", ")}${marks.length > 2 ? ", …" : ""})`,
      ]),
    ),
  );
  const unsettled = schedule.rows.filter(({ verdict }) => verdict === "reject" || verdict === "needs-information");
  if (unsettled.length > 0) lines.push("", "Nothing chosen:");
  for (const { mark, deciding, selection } of unsettled) {
    lines.push(...paragraph(`${mark}  ${deciding.rule}: ${deciding.sentence}`, PAGE_WIDTH, 2, 11));
    for (const { partNumber, fix } of selection?.nearestMisses.slice(0, 1) ?? [])
      lines.push(...paragraph(`nearest: ${partNumber}; put right: ${fix}`, PAGE_WIDTH, 11));
  }
  return `${lines.join("\n")}\n`;
}
