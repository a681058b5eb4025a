import type { Basis, ConnectorSchedule, ScheduleRow, Verdict } from "@landfast/rules";

/** The verdict as a person says it. */
export const VERDICT_WORDS: Readonly<Record<Verdict, string>> = {
  accept: "accept",
  "accept-with-conditions": "accept with conditions",
  reject: "REJECT",
  "needs-information": "needs information",
};

type RowTorque = ScheduleRow["torque"][number];

/** "275 lbf-in / 22.9 lbf-ft / 31.1 N-m", or how it is done instead. */
export function torqueText(torque: RowTorque): string {
  if (torque.lbfIn === null || torque.lbfFt === null || torque.newtonMetre === null)
    return METHOD_WORDS[torque.method] ?? torque.method;
  return `${torque.lbfIn} lbf-in / ${torque.lbfFt} lbf-ft / ${torque.newtonMetre} N-m`;
}

const METHOD_WORDS: Readonly<Record<string, string>> = {
  torque: "torque: see its instructions",
  "breakaway-head": "until the head breaks away",
  "by-hand": "by hand, as its instructions say",
  crimp: "crimp",
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

/** The publication that the rules follow: "NFPA 70-2023". */
export function basisText({ ruleSet, edition }: Basis): string {
  return `${PUBLICATIONS[ruleSet]}-${edition}`;
}

const PUBLICATIONS: Readonly<Record<Basis["ruleSet"], string>> = { nfpa70: "NFPA 70" };

/** Strip lengths, brush, compound, tool and die, each in its own phrase, without the reasons. */
export function preparationPhrases({ stripLengths, preparation, tooling }: ScheduleRow): readonly string[] {
  const phrases = stripLengths.map(({ opening, length }) => `strip ${opening} ${length ?? "as its instructions say"}`);
  if (preparation !== null) {
    if (headOf(preparation.brush) === "yes") phrases.push("brush");
    const compound = headOf(preparation.compound);
    phrases.push(COMPOUND_WORDS[compound] ?? `compound ${compound}`);
  }
  if (tooling !== null) phrases.push(toolText(tooling));
  return phrases.filter((phrase) => phrase !== "");
}

const COMPOUND_WORDS: Readonly<Record<string, string>> = {
  required: "apply compound",
  "pre-filled": "compound is pre-filled",
  "per-instructions": "compound as its instructions say",
  "not-needed": "",
};

/** What stands before the reason: "yes" of "yes: aluminum". */
function headOf(text: string): string {
  const end = text.indexOf(":");
  return end === -1 ? text : text.slice(0, end);
}

/** "hydraulic press, die D-4, 2 crimps". */
export function toolText({ tool, die, crimps }: NonNullable<ScheduleRow["tooling"]>): string {
  const parts = [tool];
  if (die !== undefined) parts.push(`die ${die}`);
  if (crimps !== undefined) parts.push(crimps === 1 ? "1 crimp" : `${crimps} crimps`);
  return parts.join(", ");
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
  return `${marksText(marks)} (${joints} ${joints === 1 ? "joint" : "joints"})`;
}

/** A sentence that holds for several marks. */
export interface SentenceOfMarks {
  readonly sentence: string;
  readonly marks: readonly string[];
}

/** Each caveat, or each duty on site, once and with the marks that it holds for; the one of most marks first. */
export function sentencesByMarks(
  { rows }: ConnectorSchedule,
  which: "caveats" | "dutiesOnSite",
): readonly SentenceOfMarks[] {
  const held = new Map<string, string[]>();
  for (const row of rows)
    for (const sentence of row[which]) {
      const marks = held.get(sentence);
      if (marks === undefined) held.set(sentence, [row.mark]);
      else marks.push(row.mark);
    }
  return [...held].map(([sentence, marks]) => ({ sentence, marks })).sort((a, b) => b.marks.length - a.marks.length);
}

/** "3 marks". */
export function marksText(count: number): string {
  return `${count} ${count === 1 ? "mark" : "marks"}`;
}

/** What is asked for, by the last part of its path: "terminal temperature". */
export function factName(path: string): string {
  const last = path.slice(path.lastIndexOf("/") + 1);
  return last.replace(/([a-z])([A-Z])/g, "$1 $2").replace(/ ([A-Z][a-z])/g, (part) => part.toLowerCase());
}
