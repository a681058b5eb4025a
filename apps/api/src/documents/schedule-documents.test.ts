import type { ConnectorSchedule, ScheduleRow } from "@landfast/rules";
import { describe, expect, it } from "vitest";
import { scheduleCsv } from "./schedule-csv.js";
import { scheduleHtml } from "./schedule-html.js";
import { PAGE_WIDTH, scheduleText } from "./schedule-text.js";
import { selectionText } from "./selection-text.js";
import { wrap } from "./text-layout.js";

const row: ScheduleRow = {
  mark: "T-01",
  area: "Pump house",
  equipmentTag: "P-1",
  description: "feeder <east>",
  function: "termination",
  role: "phase",
  quantity: 3,
  basis: { ruleSet: "nfpa70", edition: "2023" },
  conductors: ["1 x 3/0 AWG copper, class-B, THHN/THWN-2"],
  connector: { partNumber: "LF-1", description: "lug, one barrel", origin: "catalogue", chosen: true, quantity: 3 },
  openingsUsed: ["barrel: 1 x 3/0 AWG copper"],
  verdict: "accept-with-conditions",
  deciding: { rule: "terminal-temperature", sentence: "200 A is within 200 A.", clause: "110.14(C)" },
  torque: [
    {
      at: "screw of barrel",
      method: "torque",
      lbfIn: 275,
      lbfFt: 22.9,
      newtonMetre: 31.1,
      printed: "275 lbf-in",
      level: "code-table",
      drive: "5/16 in socket",
      source: "Table I.3",
    },
    {
      at: "pad bolt",
      method: "see-instructions",
      lbfIn: null,
      lbfFt: null,
      newtonMetre: null,
      printed: null,
      level: null,
      drive: "",
      source: "110.3(B)",
    },
  ],
  stripLengths: [{ opening: "barrel", length: null }],
  preparation: { brush: "no: copper", compound: "not-needed: copper" },
  tooling: null,
  conditions: ["Photograph the mark."],
  dutiesOnSite: ["No strand is nicked."],
  missing: [],
  caveats: ["This cell is unconfirmed."],
  fix: "",
  selection: null,
};

function schedule(rows: readonly ScheduleRow[]): ConnectorSchedule {
  const none = { marks: 0, joints: 0 };
  return {
    job: "Test job",
    basis: row.basis,
    rulesVersion: "1",
    rows,
    totals: [{ partNumber: "LF-1", description: "lug, one barrel", quantity: 3, marks: ["T-01"] }],
    rejections: [
      {
        mark: "T-02",
        rule: "wire-range",
        sentence: "Too large.",
        clause: "110.14",
        fix: "a larger lug",
        instead: "LF-2, lug",
      },
    ],
    openQuestions: [
      { mark: "T-03", facts: [{ path: "joint/place/location", because: "The place decides." }], clause: "110.28" },
    ],
    counts: {
      marks: 1,
      joints: 3,
      byVerdict: {
        accept: none,
        "accept-with-conditions": { marks: 1, joints: 3 },
        reject: none,
        "needs-information": none,
      },
    },
    caution: "A licensed electrician decides.",
  };
}

/** Reads RFC 4180 text, independently of what wrote it. */
function readCsv(text: string): string[][] {
  const lines: string[][] = [[]];
  for (const [, quoted, bare, end] of text.matchAll(/(?:"((?:[^"]|"")*)"|([^",\r\n]*))(,|\r\n|$)/g)) {
    lines.at(-1)?.push(quoted === undefined ? (bare ?? "") : quoted.replaceAll('""', '"'));
    if (end === "\r\n") lines.push([]);
    if (end === "") break;
  }
  return lines.filter((line) => line.length > 1);
}

describe("the schedule as CSV", () => {
  it("has a header, one line for each thing tightened, CRLF, and the torque as a number", () => {
    const text = scheduleCsv(schedule([row]));
    const [head = [], first = [], second = [], ...more] = readCsv(text);
    expect(more).toEqual([]);
    expect(text.endsWith("\r\n")).toBe(true);
    const cell = (line: string[], name: string) => line[head.indexOf(name)];
    expect([cell(first, "mark"), cell(first, "torqueLbfIn"), cell(first, "torqueNm")]).toEqual(["T-01", "275", "31.1"]);
    expect([cell(second, "method"), cell(second, "torqueLbfIn")]).toEqual(["see-instructions", ""]);
    expect(cell(first, "connectorDescription")).toBe("lug, one barrel");
  });

  it.each(["=1+1", "+1", "-1", "@x", "\t=1", "\r=1", '=HYPERLINK("x","y")'])(
    "marks %j as text, so that no spreadsheet works it out",
    (description) => {
      const [head = [], line = []] = readCsv(scheduleCsv(schedule([{ ...row, description }])));
      expect(line[head.indexOf("description")]).toBe(`'${description}`);
    },
  );

  it("keeps quotes, commas and line breaks inside their cell", () => {
    const description = 'a "b", c\r\nd';
    const [head = [], line = []] = readCsv(scheduleCsv(schedule([{ ...row, description }])));
    expect(line[head.indexOf("description")]).toBe(description);
  });
});

describe("the schedule as a page", () => {
  it("holds rows, refusals with their clause and remedy, questions, parts and the caution", () => {
    const page = scheduleHtml(schedule([row]));
    for (const words of [
      "T-01",
      "275 lbf-in / 22.9 lbf-ft / 31.1 N-m",
      "T-02",
      "a larger lug",
      "LF-2, lug",
      "The place decides.",
      "No strand is nicked.",
      "This cell is unconfirmed.",
      "A licensed electrician decides.",
    ])
      expect(page).toContain(words);
  });

  it("shows markup in a text as text", () => {
    const page = scheduleHtml({ ...schedule([{ ...row, mark: `<img src=x onerror="a('b')">&` }]), job: "<script>" });
    expect(page).not.toMatch(/<img|<script/);
    expect(page).toContain("&lt;img src=x onerror=&quot;a(&#39;b&#39;)&quot;&gt;&amp;");
  });

  it("needs nothing from elsewhere", () => {
    expect(scheduleHtml(schedule([row]))).not.toMatch(/(?:src|href)=|url\(|@import/);
  });
});

describe("the schedule as text", () => {
  it("keeps within its width, whatever is in it", () => {
    const long = { ...row, mark: "M".repeat(64), conductors: ["x".repeat(200)], area: "A".repeat(200) };
    const text = scheduleText(schedule([row, long]));
    expect(Math.max(...text.split("\n").map((line) => line.length))).toBeLessThanOrEqual(PAGE_WIDTH);
  });

  it("says under each area what is done, and after it what is refused and asked", () => {
    const text = scheduleText(schedule([row]));
    const places = [
      "Pump house",
      "T-01",
      "275 lbf-in",
      "Rejected: 1",
      "Put right: a larger lug",
      "Instead:   LF-2, lug",
      "Open questions: 1",
      "location (joint/place/location)",
      "Parts for the accepted joints",
      "T-01: No strand is nicked.",
      "T-01: This cell is unconfirmed.",
      "A licensed electrician decides.",
    ].map((words) => text.indexOf(words));
    expect(places).toEqual([...places].sort((a, b) => a - b));
    expect(places).not.toContain(-1);
  });

  it("sums up what was chosen", () => {
    expect(selectionText(schedule([row]))).toContain("A connector was chosen for 1 of 1 marks");
  });
});

describe("breaking lines", () => {
  it.each([
    ["a bb ccc", 4, ["a bb", "ccc"]],
    ["abcdef", 4, ["abcd", "ef"]],
    ["", 4, [""]],
    ["a\nb", 4, ["a", "b"]],
    ["abcd efgh", 4, ["abcd", "efgh"]],
    ["ab cdefgh i", 4, ["ab", "cdef", "gh i"]],
  ])("%j at %d is %j", (text, width, lines) => {
    expect(wrap(text, width)).toEqual(lines);
  });
});
