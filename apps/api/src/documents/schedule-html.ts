import type { ConnectorSchedule, ScheduleRow } from "@landfast/rules";
import {
  basisText,
  connectorWithQuantity,
  countsText,
  factName,
  levelText,
  preparationPhrases,
  rowsByArea,
  type SentenceOfMarks,
  sentencesByMarks,
  torqueText,
  VERDICT_WORDS,
} from "./schedule-words.js";

/** A piece of markup, never text from outside. */
interface Markup {
  readonly html: string;
}

/** A stored schedule as one page that needs nothing from elsewhere: to read on a screen and to print. */
export function scheduleHtml(schedule: ConnectorSchedule): string {
  const areas = [...rowsByArea(schedule.rows)].map(([area, rows]) => areaTable(area, rows));
  return markup`<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>Connector schedule: ${schedule.job}</title>
<style>${{ html: STYLE }}</style>
</head>
<body>
<h1>Connector schedule</h1>
<p class="job">${schedule.job}</p>
<p>${basisText(schedule.basis)}, rules ${schedule.rulesVersion}. ${countsText(schedule)}.</p>
<p class="caution">${schedule.caution}</p>
${areas}
${rejections(schedule)}
${openQuestions(schedule)}
${totals(schedule)}
${sentences("On site, at the joints that are accepted", sentencesByMarks(schedule, "dutiesOnSite"))}
${sentences("To be kept in mind", sentencesByMarks(schedule, "caveats"))}
</body>
</html>
`.html;
}

function areaTable(area: string, rows: readonly ScheduleRow[]): Markup {
  return markup`<h2>${area}</h2>
<div class="wide"><table>
<thead><tr><th scope="col">Mark</th><th scope="col">Joint</th><th scope="col">Conductors</th><th scope="col">Connector</th><th scope="col">Verdict</th><th scope="col">Torque</th><th scope="col">Preparation, tool</th><th scope="col">Conditions</th></tr></thead>
<tbody>
${rows.map(rowMarkup)}</tbody>
</table></div>
`;
}

function rowMarkup(row: ScheduleRow): Markup {
  return markup`<tr class="${row.verdict}">
<th scope="row">${row.mark}</th>
<td>${row.quantity} x ${row.role} ${row.function}${row.equipmentTag === null ? "" : ` at ${row.equipmentTag}`}<br><small>${row.description ?? ""}</small></td>
<td>${list(row.conductors)}</td>
<td>${connectorWithQuantity(row)}<br><small>${row.connector?.description ?? ""}</small>${list(row.openingsUsed)}</td>
<td><b>${VERDICT_WORDS[row.verdict]}</b><br><small>${row.deciding.sentence}${row.deciding.clause === "" ? "" : ` [${row.deciding.clause}]`}</small></td>
<td>${list(row.torque.map((torque) => `${torque.at}: ${torqueText(torque)}. ${sourceText(torque)}`))}</td>
<td>${list(preparationPhrases(row))}</td>
<td>${list(row.conditions)}</td>
</tr>
`;
}

function sourceText({ level, source, drive }: ScheduleRow["torque"][number]): string {
  return [drive, levelText(level), source].filter((part) => part !== "").join("; ");
}

function rejections({ rejections: refused }: ConnectorSchedule): Markup {
  if (refused.length === 0) return NOTHING;
  return markup`<h2>Rejected</h2>
<dl>
${refused.map(
  ({ mark, rule, sentence, clause, fix, instead }) => markup`<dt>${mark}: ${rule} [${clause}]</dt>
<dd>${sentence}${fix === "" ? NOTHING : markup`<br>Put right: ${fix}`}${instead === "" ? NOTHING : markup`<br>Instead: ${instead}`}</dd>
`,
)}</dl>
`;
}

function openQuestions({ openQuestions: asked }: ConnectorSchedule): Markup {
  if (asked.length === 0) return NOTHING;
  return markup`<h2>Open questions</h2>
<dl>
${asked.map(
  ({ mark, facts, clause }) => markup`<dt>${mark} [${clause}]</dt>
<dd>${list(facts.map(({ path, because }) => `${factName(path)}: ${because}`))}</dd>
`,
)}</dl>
`;
}

function sentences(title: string, held: readonly SentenceOfMarks[]): Markup {
  if (held.length === 0) return NOTHING;
  return markup`<h2>${title}</h2>
<dl>
${held.map(
  ({ sentence, marks }) => markup`<dt>${sentence}</dt>
<dd>${marks.join(", ")}</dd>
`,
)}</dl>
`;
}

function totals({ totals: parts }: ConnectorSchedule): Markup {
  if (parts.length === 0) return NOTHING;
  return markup`<h2>Parts for the accepted joints</h2>
<table>
<thead><tr><th scope="col">Part</th><th scope="col">Quantity</th><th scope="col">What</th><th scope="col">Marks</th></tr></thead>
<tbody>
${parts.map(
  ({ partNumber, quantity, description, marks }) =>
    markup`<tr><th scope="row">${partNumber}</th><td>${quantity}</td><td>${description}</td><td>${marks.join(", ")}</td></tr>
`,
)}</tbody>
</table>
`;
}

const NOTHING: Markup = { html: "" };

function list(items: readonly string[]): Markup {
  if (items.length === 0) return NOTHING;
  return markup`<ul>${items.map((item) => markup`<li>${item}</li>`)}</ul>`;
}

/** Puts text into markup with its special signs escaped; markup itself goes in as it is. */
function markup(
  parts: TemplateStringsArray,
  ...values: readonly (string | number | Markup | readonly Markup[])[]
): Markup {
  return { html: parts.reduce((all, part, index) => `${all}${inserted(values[index - 1])}${part}`) };
}

function inserted(value: string | number | Markup | readonly Markup[] | undefined): string {
  if (value === undefined) return "";
  if (typeof value === "string") return escaped(value);
  if (typeof value === "number") return String(value);
  return "html" in value ? value.html : value.map(({ html }) => html).join("");
}

function escaped(text: string): string {
  return text
    .replaceAll("&", "&amp;")
    .replaceAll("<", "&lt;")
    .replaceAll(">", "&gt;")
    .replaceAll('"', "&quot;")
    .replaceAll("'", "&#39;");
}

const STYLE = `
body { font: 14px/1.4 system-ui, sans-serif; margin: 2rem; color: #1b1b1b; background: #fff; }
h1 { font-size: 1.6rem; margin: 0; }
h2 { font-size: 1.15rem; margin: 1.6rem 0 .4rem; }
.job { font-size: 1.2rem; margin: .2rem 0; }
.caution { border-left: 4px solid #6b4e00; padding: .3rem .8rem; background: #fff8e6; }
.wide { overflow-x: auto; }
table { border-collapse: collapse; width: 100%; }
th, td { border: 1px solid #b8b8b8; padding: .3rem .45rem; text-align: left; vertical-align: top; }
thead th { background: #eeeeea; }
ul { margin: 0; padding-left: 1.1rem; }
small { color: #444; }
tbody th { white-space: nowrap; }
tr.reject td:nth-of-type(4) { background: #fbe3e1; }
tr.needs-information td:nth-of-type(4) { background: #fdf1cf; }
tr.accept td:nth-of-type(4), tr.accept-with-conditions td:nth-of-type(4) { background: #e6f2e4; }
dt { font-weight: 600; margin-top: .5rem; }
dd { margin-left: 1.2rem; }
@media print {
  @page { size: landscape; margin: 12mm; }
  body { margin: 0; font-size: 9px; }
  thead { display: table-header-group; }
  tr, dt, dd { break-inside: avoid; }
  .wide { overflow: visible; }
}
`;
