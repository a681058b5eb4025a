import type { ConnectorSchedule, ScheduleRow, Verdict } from "@landfast/rules";

/** The verdict as a person says it. */
export const VERDICT_WORDS: Readonly<Record<Verdict, string>> = {
  accept: "accept",
  "accept-with-conditions": "accept with conditions",
  reject: "REJECT",
  "needs-information": "needs information",
};

type RowTorque = ScheduleRow["torque"][number];

/** "275 lbf-in, 22.9 lbf-ft, 31.1 N-m", or how it is done instead. */
export function torqueText(torque: RowTorque): string {
  if (torque.lbfIn === null || torque.lbfFt === null || torque.newtonMetre === null)
    return METHOD_WORDS[torque.method] ?? torque.method;
  return `${torque.lbfIn} lbf-in, ${torque.lbfFt} lbf-ft, ${torque.newtonMetre} N-m`;
}

const METHOD_WORDS: Readonly<Record<string, string>> = {
  torque: "torque: see its instructions",
  "breakaway-head": "until the head breaks away",
  "by-hand": "by hand, as its instructions say",
  crimp: "crimp with the tool and die of its instructions",
  weld: "weld",
  spring: "spring, nothing to tighten",
  "see-instructions": "see the connector's instructions",
};

/** "connector marking": the level of source in plain words. */
export function levelText(level: string | null): string {
  return level === null ? "" : level.replaceAll("-", " ");
}

/** The connector of a row: its number where it has one, else what it is. */
export function connectorText({ connector }: ScheduleRow): string {
  if (connector === null) return "none";
  if (connector.origin === "equipment") return `equipment's own terminal: ${connector.description}`;
  return connector.partNumber ?? connector.description;
}

/** "12 x LF-…"; the equipment's own terminal is not bought. */
export function connectorWithQuantity(row: ScheduleRow): string {
  const { connector } = row;
  if (connector === null) return "none";
  return connector.quantity === 0 ? connectorText(row) : `${connector.quantity} x ${connectorText(row)}`;
}

/** Brush, compound, strip lengths, tool and die, each in its own phrase. */
export function preparationPhrases(row: ScheduleRow): readonly string[] {
  const phrases: string[] = [];
  for (const { opening, length } of row.stripLengths)
    phrases.push(`strip ${opening}: ${length ?? "as its instructions say"}`);
  if (row.preparation !== null) phrases.push(`brush ${row.preparation.brush}`, `compound ${row.preparation.compound}`);
  if (row.tooling !== null) phrases.push(toolText(row.tooling));
  return phrases;
}

/** "hex crimp tool, die D-4, 2 crimps". */
export function toolText({ tool, die, crimps }: NonNullable<ScheduleRow["tooling"]>): string {
  return [tool, die === undefined ? "" : `die ${die}`, crimps === undefined ? "" : `${crimps} crimps`]
    .filter((part) => part !== "")
    .join(", ");
}

/** Rows by area, areas in the order in which they first come. */
export function rowsByArea(rows: readonly ScheduleRow[]): ReadonlyMap<string, readonly ScheduleRow[]> {
  const areas = new Map<string, ScheduleRow[]>();
  for (const row of rows) {
    const area = row.area ?? "No area given";
    const held = areas.get(area);
    if (held === undefined) areas.set(area, [row]);
    else held.push(row);
  }
  return areas;
}

/** "15 marks (40 joints) accept, …", verdicts that occur only. */
export function countsText({ counts }: ConnectorSchedule): string {
  const parts = (Object.keys(VERDICT_WORDS) as Verdict[])
    .filter((verdict) => counts.byVerdict[verdict].marks > 0)
    .map((verdict) => `${VERDICT_WORDS[verdict].toLowerCase()} ${tally(counts.byVerdict[verdict])}`);
  return `${tally(counts)}: ${parts.join("; ")}`;
}

function tally({ marks, joints }: { readonly marks: number; readonly joints: number }): string {
  return `${marks} ${marks === 1 ? "mark" : "marks"} (${joints} ${joints === 1 ? "joint" : "joints"})`;
}

/** What is asked for, by the last part of its path: "terminal temperature". */
export function factName(path: string): string {
  const last = path.slice(path.lastIndexOf("/") + 1);
  return last.replace(/([a-z])([A-Z])/g, "$1 $2").replace(/ ([A-Z][a-z])/g, (part) => part.toLowerCase());
}
