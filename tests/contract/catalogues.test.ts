import { readFileSync } from "node:fs";
import { strToU8, zipSync } from "fflate";
import { afterAll, beforeAll, describe, expect, it, vi } from "vitest";
import { importing, type PartCells, partsFile } from "./import-file.js";
import { openService, type Service } from "./open-service.js";
import { ownCatalogue, workshopPart } from "./own-catalogue.js";
import { workshopJob, workshopJoint } from "./workshop-job.js";

// The thread that reads files starts with the first of them.
vi.setConfig({ testTimeout: 60_000, hookTimeout: 60_000 });

const WORKBOOK = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

interface Report {
  readonly digest: string;
  readonly file: object;
  readonly columns: object;
  readonly suggestion: object;
  readonly rows: { readonly read: number; readonly good: number; readonly bad: number };
  readonly recognised: readonly object[];
  readonly remarks: readonly object[];
  readonly problems: readonly { readonly line: number; readonly column: string | null; readonly reason: string }[];
  readonly sample: readonly Record<string, unknown>[];
}

let app: Service;
beforeAll(async () => {
  ({ app } = await openService());
});
afterAll(() => app.close());

const get = async (url: string, status = 200): Promise<unknown> => {
  const answer = await app.inject(url);
  expect(answer.statusCode, answer.body).toBe(status);
  return answer.json();
};
const post = async (url: string, payload: object, status = 201): Promise<unknown> => {
  const answer = await app.inject({ method: "POST", url, payload });
  expect(answer.statusCode, answer.body).toBe(status);
  return answer.json();
};

/** The report of a dry run. */
async function reportOn(payload: string | Buffer, query = "", type?: string): Promise<Report> {
  const answer = await importing(payload, `?dryRun=true${query}`, type)({ app });
  expect(answer.statusCode, answer.body).toBe(200);
  return JSON.parse(answer.body) as Report;
}

/** What is wrong with the one row of a file. */
async function problemsOf(row: PartCells): Promise<readonly [string | null, string][]> {
  const { problems, rows } = await reportOn(partsFile([row]));
  expect(rows).toMatchObject({ read: 1, good: 0, bad: 1 });
  return problems.map(({ column, reason }) => [column, reason]);
}

describe("a catalogue of one's own", () => {
  it("keeps its versions apart and unchanged", async () => {
    const id = await ownCatalogue(app, [workshopPart()]);
    await post(`/v1/catalogues/${id}/versions`, { items: [workshopPart({ partNumber: "LKW-9" })], note: "second" });
    expect(await get(`/v1/catalogues/${id}`)).toMatchObject({
      versions: [
        { version: 2, note: "second", connectors: 1 },
        { version: 1, connectors: 1, families: [{ family: "set-screw-lug-one-hole", connectors: 1 }] },
      ],
    });
    expect(await get(`/v1/catalogues/${id}/versions/1/connectors`)).toEqual({
      connectors: [workshopPart()],
      next: null,
    });
    expect(await get(`/v1/catalogues/${id}/versions/2/connectors/LKW-9`)).toMatchObject({ partNumber: "LKW-9" });
    expect(await get(`/v1/catalogues/${id}/versions/1/connectors/LKW-9`, 404)).toMatchObject({
      code: "CONNECTOR_NOT_FOUND",
    });
    for (const method of ["PUT", "PATCH", "DELETE"] as const)
      expect((await app.inject({ method, url: `/v1/catalogues/${id}/versions/1` })).statusCode).toBe(405);
  });

  it("lists connectors by family, metal, size, supplier, day and text", async () => {
    const range = (from: string, to: string) => ({
      openings: [{ id: "o", count: 1, ranges: [{ from, to, strandings: ["class-B"] }], screw: "main" }],
    });
    const id = await ownCatalogue(app, [
      workshopPart({ partNumber: "A-1", ...range("14 AWG", "4/0 AWG"), suppliers: [{ name: "Oakridge Supply" }] }),
      workshopPart({ partNumber: "A-2", ...range("250 kcmil", "500 kcmil"), metalMarking: "CU" }),
      workshopPart({
        partNumber: "A-3",
        ...range("16 mm2", "120 mm2"),
        metalMarking: "unmarked",
        validTo: "2026-01-31",
      }),
      workshopPart({ partNumber: "A-4", metalMarking: "HOUSE", family: "split-bolt", description: "brass, odd" }),
    ]);
    const numbers = async (query: string) =>
      (
        (await get(`/v1/catalogues/${id}/versions/1/connectors?${query}`)) as { connectors: { partNumber: string }[] }
      ).connectors.map(({ partNumber }) => partNumber);
    expect(await numbers("family=split-bolt")).toEqual(["A-4"]);
    expect(await numbers("metal=copper")).toEqual(["A-1", "A-2", "A-3"]);
    expect(await numbers("metal=aluminum")).toEqual(["A-1"]);
    expect(await numbers("metal=copper-clad-aluminum")).toEqual(["A-1"]);
    // hand: 4/0 AWG is 211.6 kcmil, so 250 kcmil is one step over; the metric range says nothing of AWG.
    expect(await numbers("size=4/0%20AWG")).toEqual(["A-1", "A-4"]);
    expect(await numbers("size=250%20kcmil")).toEqual(["A-2", "A-4"]);
    expect(await numbers("size=500%20kcmil")).toEqual(["A-2"]);
    expect(await numbers("size=600%20kcmil")).toEqual([]);
    expect(await numbers("size=120%20mm2")).toEqual(["A-3"]);
    expect(await numbers("supplier=Oakridge%20Supply")).toEqual(["A-1"]);
    expect(await numbers("search=ODD")).toEqual(["A-4"]);
    expect(await numbers("on=2026-01-31")).toEqual(["A-1", "A-2", "A-3", "A-4"]);
    expect(await numbers("on=2026-02-01")).toEqual(["A-1", "A-2", "A-4"]);
    expect(await get(`/v1/catalogues/${id}/versions/1/connectors?size=4/0`, 400)).toMatchObject({
      code: "INVALID_REQUEST",
    });

    const first = (await get(`/v1/catalogues/${id}/versions/1/connectors?metal=copper&limit=2`)) as { next: string };
    expect(await numbers(`metal=copper&limit=2&cursor=${first.next}`)).toEqual(["A-3"]);
  });

  it("is found by name and by supplier", async () => {
    await post("/v1/catalogues", { name: "Tarnbeck yard", suppliers: ["Fenmoor Electric"] });
    expect(await get("/v1/catalogues?search=tarnBECK")).toMatchObject({ catalogues: [{ name: "Tarnbeck yard" }] });
    expect(await get("/v1/catalogues?supplier=Fenmoor%20Electric")).toMatchObject({
      catalogues: [{ name: "Tarnbeck yard" }],
    });
    expect(await get("/v1/catalogues?supplier=Fenmoor")).toEqual({ catalogues: [], next: null });
  });

  it.each([
    ["a part number twice", [workshopPart(), workshopPart()], "/items/1/partNumber"],
    [
      "successors in a circle",
      [workshopPart({ supersededBy: "LKW-2" }), workshopPart({ partNumber: "LKW-2", supersededBy: "LKW-1" })],
      "/items/0/supersededBy",
    ],
    ["a part that follows itself", [workshopPart({ supersededBy: "LKW-1" })], "/items/0/supersededBy"],
    ["a description of blanks", [workshopPart({ description: "  " })], "/items/0/description"],
    ["a tool of blanks", [workshopPart({ tooling: { tool: " " } })], "/items/0/tooling/tool"],
    [
      "openings that no cell can hold",
      [
        workshopPart({
          openings: Array.from({ length: 60 }, (_, index) => ({
            id: `opening ${String(index)}`,
            count: 1,
            ranges: Array.from({ length: 20 }, () => ({ from: "6 AWG", to: "4 AWG", strandings: "unmarked" })),
          })),
        }),
      ],
      "/items/0/openings",
    ],
    ["days upside down", [workshopPart({ validFrom: "2026-02-01", validTo: "2026-01-31" })], "/items/0/validTo"],
  ])("takes no version with %s", async (_, items, pointer) => {
    const id = await ownCatalogue(app, []);
    const problem = (await post(`/v1/catalogues/${id}/versions`, { items }, 422)) as { errors: { pointer: string }[] };
    expect(problem).toMatchObject({ code: "INCONSISTENT_REQUEST" });
    expect(problem.errors.map((error) => error.pointer)).toContain(pointer);
    expect(await get(`/v1/catalogues/${id}`)).toMatchObject({ versions: [] });
  });

  it("takes no price: a price list has it", async () => {
    const id = await ownCatalogue(app, []);
    const priced = workshopPart({ price: { amount: "1.00", currency: "USD" } });
    expect(await post(`/v1/catalogues/${id}/versions`, { items: [priced] }, 400)).toMatchObject({
      code: "INVALID_REQUEST",
      errors: [{ pointer: "/items/0/price" }],
    });
  });
});

describe("a job with a catalogue of one's own", () => {
  it("is worked out with its connectors and says so", async () => {
    const id = await ownCatalogue(app, [workshopPart()]);
    const job = workshopJob({
      catalogue: { id, version: 1 },
      joints: [workshopJoint({ connector: { partNumber: "LKW-1" } })],
    });
    const posted = (await post("/v1/jobs", job)) as { job: { id: string } };
    // The made-up clock of the tests says 2026-01-02.
    const catalogue = { id, name: "Larkfen Works", revision: "1", on: "2026-01-02" };
    expect(posted).toMatchObject({ job: { catalogue }, schedule: { rows: [{ connector: { partNumber: "LKW-1" } }] } });
    expect(await get(`/v1/jobs/${posted.job.id}`)).toMatchObject({ job: { catalogue }, posted: job });
  });

  it("keeps the catalogue that the service was started with where none is named", async () => {
    await ownCatalogue(app, [workshopPart()]);
    const { id } = (await get("/v1/catalogue")) as { id: string };
    const posted = await post("/v1/jobs", workshopJob());
    expect(posted).toMatchObject({ job: { catalogue: { id } } });
    expect((posted as { job: { catalogue: object } }).job.catalogue).not.toHaveProperty("on");
  });

  it.each([
    ["2026-01-31", 201, undefined],
    ["2026-02-01", 201, undefined],
    ["2026-03-31", 201, undefined],
    ["2026-04-01", 422, "was in force until 2026-03-31"],
    ["2025-12-31", 422, "is in force from 2026-01-01"],
  ])("takes a part on %s with %d", async (on, status, because) => {
    const id = await ownCatalogue(app, [workshopPart({ validFrom: "2026-01-01", validTo: "2026-03-31" })]);
    const joints = [workshopJoint({ connector: { partNumber: "LKW-1" } })];
    const answer = await post("/v1/jobs", workshopJob({ catalogue: { id, version: 1, on }, joints }), status);
    if (because !== undefined)
      expect(answer).toMatchObject({
        code: "NOT_IN_FORCE",
        errors: [{ pointer: "/joints/0/connector/partNumber", detail: expect.stringContaining(because) as string }],
      });
  });

  it("is refused with a version that is not in force or not there", async () => {
    const id = await ownCatalogue(app, []);
    await post(`/v1/catalogues/${id}/versions`, { items: [workshopPart()], validTo: "2026-01-01" });
    expect(await post("/v1/jobs", workshopJob({ catalogue: { id, version: 1 } }), 422)).toMatchObject({
      code: "NOT_IN_FORCE",
      errors: [{ pointer: "/catalogue/on" }],
    });
    expect(await post("/v1/jobs", workshopJob({ catalogue: { id, version: 2 } }), 422)).toMatchObject({
      code: "UNKNOWN_CATALOGUE",
      errors: [{ pointer: "/catalogue/version" }],
    });
  });
});

describe("a file that is taken in", () => {
  it("is the example of the documentation as it stands", async () => {
    const example = readFileSync(new URL("../../docs/examples/larkfen-works-catalogue.csv", import.meta.url));
    const report = await reportOn(example);
    expect(report.problems).toEqual([]);
    expect(report).toMatchObject({ rows: { read: 6, good: 6 }, recognised: [], remarks: [] });
    const answer = await importing(example)({ app });
    expect(answer.statusCode).toBe(201);
  });

  it("gives the connector that its cells say, and leaves what is empty unknown", async () => {
    const { sample } = await reportOn(partsFile([{ metalMarking: "", voltage: "unmarked", places: "" }]));
    expect(sample).toEqual([
      {
        partNumber: "LKW-1",
        status: "supplied",
        description: "set-screw lug, one barrel",
        family: "set-screw-lug-one-hole",
        construction: "set-screw",
        functions: ["termination"],
        insulated: false,
        openingsApart: true,
        listings: [{ standard: "UL 486A-486B" }],
        screws: [
          {
            id: "screw",
            drive: { kind: "socket", acrossFlats: "5/16" },
            torque: { value: 275, unit: "lbf-in" },
          },
        ],
        openings: [
          {
            id: "opening",
            count: 1,
            ranges: [{ from: "6 AWG", to: "250 kcmil", strandings: ["class-B", "class-C"] }],
            screw: "screw",
            stripLength: { value: 0.75, unit: "in" },
          },
        ],
        mounting: { kind: "integral" },
        reusable: true,
        packQuantity: 6,
        temperature: { value: 90, unit: "Cel" },
        voltageV: "unmarked",
      },
    ]);
  });

  it.each<[PartCells, string, string]>([
    [{ drive: "", torque: "" }, "screw drive", "how the part is tightened is not said"],
    [{ drive: "no screw" }, "screw drive", "yet a screw is described"],
    [{ smallestSize: "4/0" }, "smallest size", "has no unit"],
    [{ smallestSize: "300 kcmil" }, "smallest size", "begins above its end"],
    [{ largestSize: "35 mm2" }, "largest size", "mixes two systems"],
    [{ torque: "275" }, "torque", "has no unit"],
    [{ strandForms: "class-Q" }, "strand forms", "not one of the words"],
    [{ strandForms: "" }, "strand forms", "nothing is said here"],
    [{ insulated: "maybe" }, "insulated body", "neither yes nor no"],
    [{ packQuantity: "0" }, "pack quantity", "not a whole number"],
    [{ fixing: "pad" }, "holes", "nothing is said here"],
    [{ partNumber: "=A1" }, "part number", "holds a sign"],
    [{ supersededBy: "LKW-1" }, "superseded by", "its own successor"],
    [{ description: "tab\there" }, "description", "holds a sign"],
  ])("is refused for %j in %s", async (row, column, because) => {
    const told = await problemsOf(row);
    expect(told.find(([name]) => name === column)?.[1]).toContain(because);
  });

  it("asks for the facts that no part can do without, by column, once", async () => {
    const payload = partsFile([{}, {}], {
      leaveOut: ["insulated", "strandForms"],
      rename: { torque: "Torque (in-lb)" },
    });
    const report = await reportOn(payload);
    expect(report).toMatchObject({
      rows: { read: 2, good: 0, bad: 2 },
      columns: { missing: ["insulated body", "strand forms"], unused: ["Torque (in-lb)"] },
      suggestion: { columns: [{ header: "Torque (in-lb)", field: "torque", unit: "lbf-in" }] },
    });
    expect(report.problems.map(({ line, column }) => [line, column])).toEqual([
      [1, "insulated body"],
      [1, "strand forms"],
    ]);
  });

  it("shows what it recognised, and applies exactly what was confirmed", async () => {
    const id = await ownCatalogue(app, []);
    const send = async (payload: string, query: string) => {
      const url = `/v1/catalogues/${id}/imports${query}`;
      const answer = await app.inject({ method: "POST", url, payload, headers: { "content-type": "text/csv" } });
      return answer.json<Report & { code?: string; version?: { version: number } }>();
    };
    const file = partsFile([{ largestSize: "250 MCM" }, { largestSize: "250 MCM" }]);
    const { digest, recognised } = await send(file, "?dryRun=true");
    expect(recognised).toEqual([
      {
        field: "to",
        column: "largest size",
        written: "250 MCM",
        readAs: "250 kcmil",
        because: "MCM is the older name of kcmil",
        rows: 2,
        lines: [2, 3],
      },
    ]);
    expect((await send(file, "")).code).toBe("IMPORT_NOT_CONFIRMED");
    const changed = partsFile([{ largestSize: "250 MCM" }, { largestSize: "300 MCM" }]);
    expect((await send(changed, `?confirm=${digest}`)).code).toBe("IMPORT_NOT_CONFIRMED");
    expect((await send(file, `?confirm=${digest}`)).version?.version).toBe(1);
  });

  it("stores a double once and neither of two that differ", async () => {
    const file = partsFile([
      { partNumber: "A" },
      { partNumber: "A" },
      { partNumber: "B" },
      { partNumber: "B", torque: "" },
    ]);
    const { problems, rows } = await reportOn(file);
    expect(rows).toMatchObject({ read: 4, good: 1, bad: 3 });
    expect(problems.map(({ line }) => line)).toEqual([3, 4, 5]);
    expect(problems[0]?.reason).toContain("line 2 already, word for word");
    expect(problems[1]?.reason).toContain("line 5, with other content");
  });

  it("remarks on a marking that the rules do not know, and on a successor that is not there", async () => {
    const { remarks, rows } = await reportOn(partsFile([{ metalMarking: "HOUSE", supersededBy: "LKW-77" }]));
    expect(rows.good).toBe(1);
    expect(remarks).toMatchObject([
      { column: "metal marking", written: "HOUSE" },
      { column: "superseded by", written: "LKW-77" },
    ]);
  });

  const good = partsFile([{ description: "lug, µ" }]);
  it.each([
    ["UTF-8 with a byte order mark", Buffer.from(`\ufeff${good}`, "utf8"), { encoding: "utf-8", byteOrderMark: true }],
    ["UTF-16 little-endian", Buffer.from(`\ufeff${good}`, "utf16le"), { encoding: "utf-16le", byteOrderMark: true }],
    ["tabs", Buffer.from(partsFile([{}], { delimiter: "\t" })), { delimiter: "\t" }],
    ["semicolons", Buffer.from(partsFile([{}], { delimiter: ";" })), { delimiter: ";" }],
  ])("is read in %s", async (_, bytes, form) => {
    const { file, rows, problems } = await reportOn(bytes);
    expect(problems).toEqual([]);
    expect(rows).toMatchObject({ good: 1 });
    expect(file).toMatchObject(form);
  });

  it.each([
    ["Windows-1252", Buffer.from(good, "latin1"), "not UTF-8 text, first on line 2"],
    ["UTF-16 big-endian", Buffer.from(`\ufeff${good}`, "utf16le").swap16(), "big-endian"],
    ["UTF-16 without its mark", Buffer.from(good.replace("µ", "u"), "utf16le"), "zero bytes"],
    ["nothing", Buffer.from(" \n"), "empty"],
    ["an empty header", Buffer.from("\n1,2\n"), "first row is empty"],
    ["two signs in the header", Buffer.from("a,b;c\n1,2\n"), "more than one sign"],
    ["a header twice", Buffer.from(good.replace("status", "").replace("torque", "reusable")), "twice"],
    ["a quotation mark never closed", Buffer.from(`${good}\n"x`), "never closed"],
  ])("is refused as %s", async (_, bytes, because) => {
    const answer = await importing(bytes, "?dryRun=true")({ app });
    expect(JSON.parse(answer.body)).toMatchObject({
      code: "IMPORT_UNREADABLE",
      detail: expect.stringContaining(because) as string,
    });
  });

  it("is refused as another media type, in another charset, or not sent at all", async () => {
    for (const type of ["application/json", "text/plain", "text/csv; charset=windows-1252"]) {
      const answer = await importing("{}", "", type)({ app });
      expect(JSON.parse(answer.body), type).toMatchObject({ code: "UNSUPPORTED_MEDIA_TYPE" });
    }
    const id = await ownCatalogue(app, []);
    expect((await app.inject({ method: "POST", url: `/v1/catalogues/${id}/imports` })).statusCode).toBe(415);
    // Files are taken at their own address only.
    const job = { method: "POST", url: "/v1/jobs", payload: good, headers: { "content-type": "text/csv" } } as const;
    expect((await app.inject(job)).statusCode).toBe(415);
  });
});

describe("a workbook that is taken in", () => {
  it("has its formulas, dates and errors refused, and its numbers read as they are", async () => {
    const names = partsFile([{}]).split("\r\n")[0]?.split(",") ?? [];
    const cells = (change: Record<string, string>) =>
      partsFile([{}], { delimiter: "\t" })
        .split("\r\n")[1]
        ?.split("\t")
        .map((text, index) => change[names[index] ?? ""] ?? `<c t="inlineStr"><is><t>${text}</t></is></c>`)
        .join("") ?? "";
    const part = (number: string) => ({ "part number": `<c t="inlineStr"><is><t>${number}</t></is></c>` });
    const rows = [
      names.map((name) => `<c t="inlineStr"><is><t>${name}</t></is></c>`).join(""),
      cells({ ...part("A-1"), "pack quantity": "<c><v>6</v></c>" }),
      cells({ ...part("A-2"), torque: '<c t="str"><f>1+1</f><v>275 lbf-in</v></c>' }),
      cells({ ...part("A-3"), "largest size": '<c s="1"><v>36981</v></c>' }),
      cells({ ...part("A-4"), "metal marking": '<c t="e"><v>#REF!</v></c>' }),
      cells({ ...part("A-5"), "pack quantity": "<c><v>6.5</v></c>" }),
      cells({ ...part("A-6"), description: '<c t="inlineStr"><is><t>=SUM(A1)</t></is></c>' }),
    ];
    const { problems, rows: counts, sample } = await reportOn(workbook(rows), "", WORKBOOK);
    expect(counts).toMatchObject({ read: 6, good: 2, bad: 4 });
    expect(problems.map(({ line, column, reason }) => [line, column, reason.slice(0, 24)])).toEqual([
      [3, "torque", "the cell holds a formula"],
      [4, "largest size", "the spreadsheet has made"],
      [5, "metal marking", "the cell holds an error "],
      [6, "pack quantity", '"6.5" is not a whole num'],
    ]);
    expect(sample[1]).toMatchObject({ partNumber: "A-6", description: "=SUM(A1)" });
  });

  it.each([
    ["no zip", Buffer.from("part number"), "no zip archive"],
    ["no workbook", Buffer.from(zipSync({ "a.txt": strToU8("a") })), "xl/workbook.xml"],
    ["entities", workbook([], '<!DOCTYPE x [<!ENTITY a "b">]>'), "document type"],
    ["two sheets", workbook([], "", '<sheet name="b" r:id="r1"/>'), "which one is meant"],
  ])("is refused with %s", async (_, bytes, because) => {
    const answer = await importing(bytes, "?dryRun=true", WORKBOOK)({ app });
    expect(JSON.parse(answer.body)).toMatchObject({
      code: "IMPORT_UNREADABLE",
      detail: expect.stringContaining(because) as string,
    });
  });
});

/** A workbook as another program could write it: cells without references, one date style. */
function workbook(rows: readonly string[], declaration = "", moreSheets = ""): Buffer {
  const parts = {
    "xl/workbook.xml": `${declaration}<workbook><sheets><sheet name="a" r:id="r1"/>${moreSheets}</sheets></workbook>`,
    "xl/_rels/workbook.xml.rels":
      '<Relationships><Relationship Id="r1" Target="worksheets/sheet1.xml"/></Relationships>',
    "xl/styles.xml": '<styleSheet><cellXfs><xf numFmtId="0"/><xf numFmtId="14"/></cellXfs></styleSheet>',
    "xl/worksheets/sheet1.xml": `<worksheet><sheetData>${rows.map((row) => `<row>${row}</row>`).join("")}</sheetData></worksheet>`,
  };
  return Buffer.from(zipSync(Object.fromEntries(Object.entries(parts).map(([name, xml]) => [name, strToU8(xml)]))));
}

describe("a column mapping", () => {
  it("is saved, listed and used", async () => {
    const mapping = {
      name: "their list",
      columns: [{ header: "partNr", field: "partNumber" }],
      constants: { family: "split-bolt" },
    };
    const { id } = (await post("/v1/import-mappings", mapping)) as { id: string };
    expect(await get(`/v1/import-mappings/${id}`)).toMatchObject({ id, mapping });
    expect(await get("/v1/import-mappings?limit=1")).toMatchObject({ mappings: [{ id, mapping }] });
    const report = await reportOn("partNr,other\nX,1", `&mapping=${id}`);
    expect(report.columns).toMatchObject({ used: [{ column: "partNr", field: "partNumber" }], unused: ["other"] });
    const answer = await importing("other\n1", `?dryRun=true&mapping=${id}`)({ app });
    expect(JSON.parse(answer.body)).toMatchObject({ code: "IMPORT_UNREADABLE" });
  });

  it.each([
    [
      "a field twice",
      {
        columns: [
          { header: "a", field: "to" },
          { header: "b", field: "to" },
        ],
      },
      "/columns/1/field",
    ],
    [
      "a header twice",
      {
        columns: [
          { header: "a", field: "to" },
          { header: "a ", field: "from" },
        ],
      },
      "/columns/1/header",
    ],
    ["a unit out of place", { columns: [{ header: "a", field: "torque", unit: "AWG" }] }, "/columns/0/unit"],
    [
      "a column and a constant",
      { columns: [{ header: "a", field: "to" }], constants: { to: "4 AWG" } },
      "/constants/to",
    ],
    ["a column used and left out", { columns: [{ header: "a", field: "to" }], ignore: ["a"] }, "/ignore/0"],
  ])("is refused with %s", async (_, mapping, pointer) => {
    expect(await post("/v1/import-mappings", { name: "x", ...mapping }, 422)).toMatchObject({
      code: "INCONSISTENT_REQUEST",
      errors: [{ pointer }],
    });
  });
});

describe("prices and labor of one's own", () => {
  const list = (change: object) => ({
    name: "spring",
    supplier: "Oakridge Supply",
    currency: "USD",
    validFrom: "2026-03-01",
    lines: [{ partNumber: "A", unit: "per-100", breaks: [{ from: 1, amount: "125.00" }] }],
    ...change,
  });

  it("are kept as they were posted", async () => {
    const { id } = (await post("/v1/price-lists", list({}))) as { id: string };
    expect(await get(`/v1/price-lists/${id}/lines`)).toEqual({ lines: list({}).lines, next: null });
    expect(await get("/v1/price-lists?supplier=Oakridge%20Supply")).toMatchObject({ priceLists: [{ id, lines: 1 }] });
    const lines = [{ family: "split-bolt", from: "14 AWG", to: "8 AWG", hours: "0.10", unit: "each" }];
    const table = (await post("/v1/labour-tables", { name: "own times", lines })) as { id: string };
    expect(await get(`/v1/labour-tables/${table.id}`)).toMatchObject({ labourTable: { difficulties: {} }, lines });
  });

  it.each([
    ["an unknown currency", { currency: "XYZ" }, "/currency"],
    ["days upside down", { validTo: "2026-02-28" }, "/validTo"],
    ["a part twice", { lines: [...list({}).lines, ...list({}).lines] }, "/lines/1/partNumber"],
    [
      "breaks that do not rise",
      { lines: [{ partNumber: "A", unit: "each", breaks: [5, 5].map((from) => ({ from, amount: "1" })) }] },
      "/lines/0/breaks",
    ],
  ])("are refused with %s", async (_, change, pointer) => {
    expect(await post("/v1/price-lists", list(change), 422)).toMatchObject({
      code: "INCONSISTENT_REQUEST",
      errors: [{ pointer }],
    });
  });

  it("refuses money that is a binary number", async () => {
    const lines = [{ partNumber: "A", unit: "each", breaks: [{ from: 1, amount: 1.25 }] }];
    expect(await post("/v1/price-lists", list({ lines }), 400)).toMatchObject({ code: "INVALID_REQUEST" });
  });

  it.each([
    ["no key", [{ hours: "1", unit: "each" }], "/lines/0"],
    ["two keys", [{ partNumber: "A", family: "split-bolt", hours: "1", unit: "each" }], "/lines/0"],
    ["sizes of one part", [{ partNumber: "A", from: "4 AWG", hours: "1", unit: "each" }], "/lines/0"],
    [
      "bands that meet",
      [
        { family: "split-bolt", to: "8 AWG", hours: "1", unit: "each" },
        { family: "split-bolt", from: "8 AWG", hours: "2", unit: "each" },
      ],
      "/lines/1",
    ],
    [
      "a band upside down",
      [{ family: "split-bolt", from: "8 AWG", to: "14 AWG", hours: "1", unit: "each" }],
      "/lines/0/from",
    ],
  ])("refuses labor lines with %s", async (_, lines, pointer) => {
    expect(await post("/v1/labour-tables", { name: "x", lines }, 422)).toMatchObject({ errors: [{ pointer }] });
  });

  it("takes bands that do not meet: one step apart, or of another condition or system", async () => {
    const line = (change: object) => ({ family: "split-bolt", hours: "1", unit: "each", ...change });
    const lines = [
      line({ to: "10 AWG" }),
      line({ from: "8 AWG" }),
      line({ to: "10 AWG", condition: "overhead" }),
      line({ from: "16 mm2", to: "35 mm2" }),
    ];
    await post("/v1/labour-tables", { name: "x", lines });
  });
});
