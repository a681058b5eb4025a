import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { openService, type Service } from "../contract/open-service.js";
import { ownCatalogue } from "../contract/own-catalogue.js";
import { MESSY_MAPPING, type MessyRow, messyFile, RECOGNISED_IN, REFUSED_IN } from "./messy-file.js";

interface Report {
  readonly digest: string;
  readonly file: object;
  readonly columns: { readonly unused: readonly string[]; readonly missing: readonly string[] };
  readonly rows: object;
  readonly recognised: readonly { readonly column: string; readonly rows: number }[];
  readonly remarks: readonly { readonly remark: string; readonly rows: number }[];
  readonly problems: readonly {
    readonly line: number;
    readonly column: string | null;
    readonly reason: string;
    readonly accepted: string;
  }[];
}

describe("a messy file of ten thousand rows", { timeout: 120_000 }, () => {
  const { bytes, rows, blankLines } = messyFile(20260325);
  const bad = rows.filter(({ kind }) => REFUSED_IN[kind] !== undefined);
  const good = rows.filter(({ kind }) => REFUSED_IN[kind] === undefined);
  let app: Service;
  let catalogue = "";
  let mapping = "";
  let report: Report;

  const post = (query: string) =>
    app.inject({
      method: "POST",
      url: `/v1/catalogues/${catalogue}/imports?mapping=${mapping}${query}`,
      headers: { "content-type": "text/csv" },
      payload: bytes,
    });

  beforeAll(async () => {
    ({ app } = await openService());
    catalogue = await ownCatalogue(app, []);
    const saved = await app.inject({ method: "POST", url: "/v1/import-mappings", payload: MESSY_MAPPING });
    mapping = saved.json<{ id: string }>().id;
    const answer = await post("&dryRun=true");
    expect(answer.statusCode, answer.body.slice(0, 500)).toBe(200);
    report = answer.json<Report>();
  }, 120_000);
  afterAll(() => app.close());

  // hand: the kinds of row that are refused have 150 + 50 + 25 + 120 + 30 + 40 + 70 + 100 + 120 + 90 + 25 + 55 + 45 +
  // 35 + 50 + 30 + 10 + 12 + 40 + 15 + 20 + 20 = 1152 rows.
  it("is counted row by row", () => {
    expect(bad).toHaveLength(1152);
    expect(report.rows).toEqual({ read: 10_000, good: 8848, bad: 1152, blank: blankLines });
    expect(report.file).toMatchObject({ form: "csv", encoding: "utf-8", byteOrderMark: true, delimiter: ";" });
    expect(report.columns).toMatchObject({ unused: [], missing: [] });
  });

  it("has every bad row reported by its line, and no good one", () => {
    const lines = [...new Set(report.problems.map(({ line }) => line))];
    expect(lines).toEqual(bad.map(({ line }) => line));
  });

  it("has each slip reported in its own column, with a reason and what would be accepted", () => {
    for (const { line, kind } of bad) {
      const told = report.problems.filter((problem) => problem.line === line);
      expect(
        told.map(({ column }) => column),
        kind,
      ).toEqual([REFUSED_IN[kind]]);
      for (const { reason, accepted } of told) expect(reason.length * accepted.length).toBeGreaterThan(0);
    }
  });

  it("has everything that was recognised shown and counted", () => {
    const expected: Record<string, number> = {};
    for (const { kind } of good) {
      const column = RECOGNISED_IN[kind];
      if (column !== undefined) expected[column] = (expected[column] ?? 0) + 1;
    }
    const shown: Record<string, number> = {};
    for (const { column, rows: count } of report.recognised) shown[column] = (shown[column] ?? 0) + count;
    expect(shown).toEqual(expected);
    // hand: 300 with MCM; 400 + 100 + 100 torques; 130 line breaks, each a text of its own.
    expect(expected).toMatchObject({ "Max wire": 300, Torque: 600, Text: 130 });
    const apostrophes = report.remarks.filter(({ remark }) => remark.includes("apostrophe"));
    expect(apostrophes.reduce((sum, { rows: count }) => sum + count, 0)).toBe(20);
  });

  it("stores nothing unasked, and the good rows once asked and confirmed", async () => {
    const whole = await post("");
    expect(whole.json()).toMatchObject({ code: "IMPORT_ROWS_REFUSED", status: 422 });
    const unseen = await post("&partial=true");
    expect(unseen.json()).toMatchObject({ code: "IMPORT_NOT_CONFIRMED", status: 422 });
    const other = await post(`&partial=true&confirm=sha256:${"0".repeat(64)}`);
    expect(other.json()).toMatchObject({ code: "IMPORT_NOT_CONFIRMED", status: 422 });
    expect((await app.inject(`/v1/catalogues/${catalogue}`)).json()).toMatchObject({ versions: [] });

    const stored = await post(`&partial=true&confirm=${report.digest}`);
    expect(stored.statusCode, stored.body.slice(0, 500)).toBe(201);
    const told = stored.json<{ version: object; report: Report; import: { id: string } }>();
    expect(told.version).toMatchObject({ version: 1, connectors: 8848 });
    expect(told.report).toEqual(report);
    const kept = await app.inject(`/v1/catalogues/${catalogue}/imports/${told.import.id}`);
    expect(kept.json<{ report: Report }>().report).toEqual(report);

    const held = await connectorsOf(app, catalogue);
    expect(held.map(({ partNumber }) => partNumber)).toEqual(good.map(({ partNumber }) => partNumber));
    for (const [index, row] of good.entries()) expectAsWritten(held[index], row);
  });
});

interface Held {
  readonly partNumber: string;
  readonly description: string;
  readonly openings: readonly { readonly ranges: readonly { readonly from: string; readonly to: string }[] }[];
  readonly screws: readonly { readonly torque: { readonly value: number; readonly unit: string } }[];
}

async function connectorsOf(app: Service, catalogue: string): Promise<readonly Held[]> {
  const held: Held[] = [];
  let cursor: string | null = null;
  do {
    const after = cursor === null ? "" : `&cursor=${cursor}`;
    const { body }: { readonly body: string } = await app.inject(
      `/v1/catalogues/${catalogue}/versions/1/connectors?limit=200${after}`,
    );
    const page = JSON.parse(body) as { connectors: Held[]; next: string | null };
    held.push(...page.connectors);
    cursor = page.next;
  } while (cursor !== null);
  return held;
}

/** Texts are what they were, and figures are what they say in the unit that they were given in. */
function expectAsWritten(held: Held | undefined, { kind, description }: MessyRow): void {
  const text =
    kind === "line break in the description"
      ? description.replace("\n", " ")
      : kind === "text marked with an apostrophe"
        ? description.slice(1)
        : description;
  const torques: Record<string, object> = {
    "torque in in-lb": { value: 275, unit: "lbf-in" },
    "torque in ft-lb": { value: 23, unit: "lbf-ft" },
    "torque in N·m": { value: 31, unit: "N-m" },
  };
  expect({
    kind,
    text: held?.description,
    range: held?.openings[0]?.ranges[0],
    torque: held?.screws[0]?.torque,
  }).toEqual({
    kind,
    text,
    range: {
      from: kind === "size with #" ? "12 AWG" : "14 AWG",
      to: kind === "size in MCM" ? "250 kcmil" : "4/0 AWG",
      strandings: ["class-B", "class-C"],
    },
    torque: torques[kind] ?? { value: 120, unit: "lbf-in" },
  });
}
