import { describe, expect, it } from "vitest";
import { faultLine } from "./fault.js";
import { planGenerated } from "./plan-generated.js";
import { bytesOf, SAME_SAMPLE, SAMPLES, type SampleJson, sampleFiles } from "./sample-files.js";

type Files = Map<string, Uint8Array>;
type Break = (files: Files) => void;

const SIZE = "std/2023/by-size";
const RANGE = "std/2023/by-range";
const INTERVAL = "std/2023/by-interval";
const TERM = "std/2023/by-term";

/** Writes a changed sidecar: the change gets a deep copy it may alter. */
const meta =
  (place: string, change: (json: SampleJson) => void): Break =>
  (files) => {
    const json = structuredClone(SAMPLES[place]?.meta ?? {});
    change(json);
    files.set(`${place}.meta.json`, bytesOf(`${JSON.stringify(json)}\n`));
  };

/** Replaces one piece of the CSV, which must be there. */
const csv =
  (place: string, from: string, to: string): Break =>
  (files) => {
    const text = SAMPLES[place]?.csv ?? "";
    if (!text.includes(from)) throw new Error(`the sample ${place} holds no ${JSON.stringify(from)}`);
    files.set(`${place}.csv`, bytesOf(text.replace(from, to)));
  };

const inner = (json: SampleJson, key: string): SampleJson => json[key] as SampleJson;

const broken: readonly (readonly [name: string, change: Break, line: string])[] = [
  // The sidecar
  ["an unknown key", meta(SIZE, (json) => (json["remark"] = "x")), 'by-size.meta.json: unknown key "remark"'],
  [
    "an unknown key inside",
    meta(SIZE, (json) => (inner(json, "source")["page"] = "7")),
    'by-size.meta.json: unknown key "source.page"',
  ],
  ["a missing key", meta(SIZE, (json) => delete json["unit"]), 'by-size.meta.json: missing key "unit"'],
  [
    "a missing key inside",
    meta(SIZE, (json) => delete inner(json, "checked")["method"]),
    'missing key "checked.method"',
  ],
  [
    "a date that is not in the calendar",
    meta(SIZE, (json) => (inner(json, "transcribed")["on"] = "2023-02-29")),
    "by-size.meta.json: transcribed.on is not a real date",
  ],
  [
    "a date in another form",
    meta(SIZE, (json) => (inner(json, "checked")["on"] = "1 March 2024")),
    "checked.on is not a real date",
  ],
  [
    "a check before the transcription",
    meta(SIZE, (json) => (inner(json, "checked")["on"] = "2024-02-28")),
    "checked.on lies before transcribed.on",
  ],
  [
    "the same person twice",
    meta(SIZE, (json) => (inner(json, "checked")["by"] = "one")),
    "transcribed.by and checked.by must not be the same",
  ],
  ["a made-up status", meta(SIZE, (json) => (json["status"] = "sure")), "status must be one of published"],
  [
    "an id that is not the file's name",
    meta(SIZE, (json) => (json["id"] = "by-other")),
    'id "by-other" is not the name of the file',
  ],
  [
    "an edition that is not the folder's",
    meta(SIZE, (json) => (inner(json, "source")["edition"] = "2020")),
    'source.edition "2020" is not the folder\'s edition "2023"',
  ],
  [
    "a column of numbers without its sum",
    meta(SIZE, (json) => delete inner(inner(json, "checks"), "columnSums")["warm"]),
    'missing key "checks.columnSums.warm"',
  ],
  [
    "an order of a column that is not declared",
    meta(SIZE, (json) => (inner(json, "checks")["nonDecreasing"] = ["hot"])),
    'checks.nonDecreasing names the column "hot"',
  ],
  [
    "a mark on a column that is not declared",
    meta(SIZE, (json) => (json["cells"] = [{ columns: ["hot"], status: "unconfirmed", note: "x" }])),
    'cells names the column "hot"',
  ],
  [
    "a mark that would raise the trust in a cell",
    meta(SIZE, (json) => (json["cells"] = [{ status: "published", note: "x" }])),
    "cells[0].status must be one of unconfirmed",
  ],
  [
    "marks in a table that is unconfirmed as a whole",
    meta(SIZE, (json) => (json["status"] = "unconfirmed")),
    "the whole table is unconfirmed already",
  ],
  [
    "an interval without declared ends",
    meta(INTERVAL, (json) => delete inner(json, "checks")["openEnds"]),
    'missing key "checks.openEnds"',
  ],
  [
    "an interval without a unit",
    meta(INTERVAL, (json) => delete inner(json, "rowKey")["unit"]),
    'missing key "rowKey.unit"',
  ],
  [
    "a sum of words",
    meta(TERM, (json) => (inner(json, "checks")["columnSums"] = { use: 1 })),
    "checks.columnSums.use sums a column of words",
  ],
  ["a sidecar that is not JSON", (files) => files.set(`${SIZE}.meta.json`, bytesOf("{\n")), "is not JSON"],

  // The file
  [
    "bytes that are not UTF-8",
    (files) => files.set(`${SIZE}.csv`, new Uint8Array([0x73, 0xff, 0x0a])),
    "by-size.csv: is not UTF-8",
  ],
  ["a byte order mark", csv(SIZE, "size", "\uFEFFsize"), "by-size.csv: starts with a byte order mark"],
  ["a CR line end", csv(SIZE, "\n", "\r\n"), "by-size.csv: has CR line ends"],
  ["a missing last line end", csv(TERM, "beta,no\n", "beta,no"), "by-term.csv: does not end with a line end"],
  ["an open quote", csv(TERM, "beta,no", 'beta,"no'), "by-term.csv: is not CSV"],
  ["a missing CSV", (files) => files.delete(`${SIZE}.csv`), "by-size.meta.json: has no by-size.csv beside it"],
  [
    "a CSV without a sidecar",
    (files) => files.set("std/2023/stray.csv", bytesOf("key\n")),
    "std/2023/stray.csv: has no sidecar",
  ],
  [
    "a file of another kind",
    (files) => files.set("std/2023/by-size.xlsx", bytesOf("x")),
    "by-size.xlsx: is not standard/edition/table-id.csv",
  ],

  // Header and rows
  ["a header that is not declared", csv(SIZE, "cold", "cool"), "by-size.csv, column cool: header is not declared"],
  ["a declared column that is missing", csv(SIZE, "cold", "cool"), "column cold: declared column is missing"],
  ["columns in another order", csv(SIZE, "cold,warm", "warm,cold"), "columns stand in another order"],
  [
    "a row that is too short",
    csv(SIZE, "20.2,30", "20.2"),
    "by-size.csv, row 1 AWG: has 2 cells where the header has 3",
  ],
  ["a blank line", csv(TERM, "alpha", "\nalpha"), "by-term.csv, row in line 2: has 1 cells where the header has 2"],
  [
    "a blank that is not declared",
    meta(SIZE, (json) => delete json["blank"]),
    "by-size.csv, row 14 AWG, column warm: is blank",
  ],
  ["a word in a column of numbers", csv(SIZE, "30,60", "30,many"), 'row 250 kcmil, column warm: "many" is neither'],
  ["a thousands separator", csv(SIZE, "30,60", '30,"1,060"'), 'column warm: "1,060" is neither a plain decimal'],
  ["an exponent", csv(SIZE, "30,60", "30,6e1"), 'column warm: "6e1" is neither a plain decimal'],
  ["a leading zero", csv(SIZE, "30,60", "30,060"), 'column warm: "060" is neither a plain decimal'],
  ["blanks around a number", csv(SIZE, "30,60", "30, 60"), "column warm: has blanks at its ends"],
  ["a sum that is broken", csv(SIZE, "20.2", "20.1"), "column cold: sums to 60.2 where 60.3 is declared"],
  ["a row too many", csv(SIZE, "250 kcmil", "4/0 AWG,,\n250 kcmil"), "has 5 rows where 4 are declared"],
  ["a row too few", csv(TERM, "beta,no\n", ""), "has 1 rows where 2 are declared"],
  ["a column that falls", csv(SIZE, "30,60", "20.1,60"), "row 250 kcmil, column cold: falls to 20.1 after 20.2"],
  ["columns out of order in a row", csv(SIZE, "20.2,30", "20.2,20"), "row 1 AWG, column warm: lies below column cold"],
  [
    "a mark on a row that is not there",
    csv(SIZE, "250 kcmil", "300 kcmil"),
    "row 250 kcmil: is marked in the sidecar, but the table has no such row",
  ],

  // Sizes
  [
    "a size that does not exist",
    csv(SIZE, "1 AWG", "5 AWG"),
    'row 5 AWG, column size: "5 AWG" is not a known conductor',
  ],
  ["a size without its system", csv(SIZE, "14 AWG", "14"), 'row 14, column size: "14" is not a known conductor size'],
  [
    "sizes in order of their text",
    csv(SIZE, "1 AWG,20.2,30\n1/0 AWG,none,none", "1/0 AWG,none,none\n1 AWG,20.2,30"),
    "row 1 AWG, column size: stands out of order",
  ],
  ["a size twice", csv(SIZE, "1/0 AWG", "1 AWG"), "row 1 AWG: duplicate key"],
  ["a range that ends below its start", csv(RANGE, "14 AWG,8 AWG", "14 AWG,16 AWG"), "column to: is smaller than"],
  ["ranges that overlap", csv(RANGE, "6 AWG,", "8 AWG,"), "row 8 AWG, column from: overlaps the range above"],
  [
    "a range to a size that does not exist",
    csv(RANGE, "8 AWG", "7 AWG"),
    'row 14 AWG, column to: "7 AWG" is not a known',
  ],
  ["a cell that is no size", csv(INTERVAL, "12 AWG", "12"), 'column wire: "12" is neither a known conductor size'],
  [
    "sizes in cells that fall",
    csv(INTERVAL, "12 AWG", "16 AWG"),
    "row 15-20.5, column wire: falls to 16 AWG after 14 AWG",
  ],

  // Intervals
  ["a gap", csv(INTERVAL, "20.5,60", "21,60"), "row 21-60, column over: leaves a gap: the row above ends at 20.5"],
  [
    "an overlap",
    csv(INTERVAL, "20.5,60", "20,60"),
    "row 20-60, column over: overlaps the row above, which ends at 20.5",
  ],
  [
    "a missing open lower end",
    csv(INTERVAL, ",15,", "0,15,"),
    "row 0-15, column over: the declared open lower end is missing",
  ],
  [
    "an open upper end that is not declared",
    csv(INTERVAL, "20.5,60", "20.5,"),
    "row 20.5-, column upTo: an open upper end is not declared",
  ],
  [
    "a missing open upper end",
    meta(INTERVAL, (json) => (inner(json, "checks")["openEnds"] = ["over", "upTo"])),
    "row 20.5-60, column upTo: the declared open upper end is missing",
  ],
  [
    "an open lower end that is not declared",
    meta(INTERVAL, (json) => (inner(json, "checks")["openEnds"] = [])),
    "row -15, column over: an open lower end is not declared",
  ],
  ["an open end inside", csv(INTERVAL, "15,20.5", "15,"), "row 15-, column upTo: is blank inside the table"],
  ["an interval upside down", csv(INTERVAL, "15,20.5", "15,15"), "column upTo: does not lie above the lower end"],
  ["a limit that is no number", csv(INTERVAL, "15,20.5", "15,some"), 'column upTo: "some" is not a plain decimal'],

  // Terms
  [
    "a word that is not in the list",
    csv(TERM, "beta,no", "beta,maybe"),
    'row beta, column use: "maybe" is not one of yes, no',
  ],
  ["a term twice", csv(TERM, "beta", "alpha"), "row alpha: duplicate key"],
  ["an empty term", csv(TERM, "beta", ""), "column key: must be a word"],

  // The same table in another edition
  [
    "sameAs an edition without the table",
    (files) =>
      files.set("std/2020/by-term.meta.json", bytesOf(`${JSON.stringify({ ...SAME_SAMPLE, sameAs: "2017" })}\n`)),
    'std/2020/by-term.meta.json: sameAs "2017": that edition has no such table',
  ],
  [
    "sameAs with a CSV beside it",
    (files) => files.set("std/2020/by-term.csv", bytesOf("key,use\n")),
    "std/2020/by-term.csv: stands beside a sidecar that says sameAs",
  ],
  [
    "sameAs with numbers of its own",
    (files) => files.set("std/2020/by-term.meta.json", bytesOf(`${JSON.stringify({ ...SAME_SAMPLE, unit: "A" })}\n`)),
    'std/2020/by-term.meta.json: unknown key "unit"',
  ],
];

describe("the build refuses, naming file, row and column", () => {
  it.each(broken)("%s", (_name, change, line) => {
    const files = sampleFiles();
    change(files);
    const { faults } = planGenerated(files);
    expect(faults.map(faultLine).join("\n")).toContain(line);
  });
});

describe("the build writes", () => {
  it("every table of a clean set, its edition's index and the list of all", () => {
    const { faults, sources } = planGenerated(sampleFiles());
    expect(faults).toEqual([]);
    expect([...sources.keys()].sort()).toEqual([
      "index.ts",
      "std-2020/by-term.ts",
      "std-2020/index.ts",
      "std-2023/by-interval.ts",
      "std-2023/by-range.ts",
      "std-2023/by-size.ts",
      "std-2023/by-term.ts",
      "std-2023/index.ts",
    ]);
    expect(sources.get("index.ts")).toContain("  std_2020.byTerm,\n  std_2023.byInterval,\n");
  });

  it("keys, cells and marks as printed", () => {
    const text = planGenerated(sampleFiles()).sources.get("std-2023/by-size.ts");
    expect(text).toContain('{"key":["14 AWG"],"cells":["10.1",""]}');
    expect(text).toContain('{"key":["250 kcmil"],"cells":["30","60"],"unconfirmed":[1]}');
    expect(text).toContain('{"id":"warm","title":"warm","unit":"A"}');
  });

  it("a mark on every cell of a table that is unconfirmed as a whole", () => {
    const text = planGenerated(sampleFiles()).sources.get("std-2023/by-range.ts");
    expect(text).toContain('{"key":["14 AWG","8 AWG"],"cells":["1.5"],"unconfirmed":[0]}');
  });

  it("the digest of the CSV's bytes", () => {
    // hand: printf 'key,use\nalpha,yes\nbeta,no\n' | sha256sum
    expect(planGenerated(sampleFiles()).sources.get("std-2023/by-term.ts")).toContain(
      'digest: "sha256:22ed6e50bbb5e057dbc4bad49e4d7c97401b18376145afa6bfc7a74bfdd967cc"',
    );
  });

  it("a shared table from the other edition's file, with its own source", () => {
    const text = planGenerated(sampleFiles()).sources.get("std-2020/by-term.ts");
    expect(text).toContain('import { byTerm as base } from "../std-2023/by-term.js";');
    expect(text).toContain('source: {"standard":"STD 1","edition":"2020","locator":"Table 4 (old)"}');
  });
});
