import { demoCatalogue } from "@landfast/data";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { openService, type Service } from "../contract/open-service.js";
import { ownCatalogue, workshopPart } from "../contract/own-catalogue.js";

const CSV = "text/csv";
const WORKBOOK = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

type Entry = Record<string, unknown> & { readonly partNumber: string };

/** The connectors of the demonstration catalogue as a catalogue of the user's own holds them: without price and hours. */
function demoEntries(): Entry[] {
  return demoCatalogue().items.map(({ price: _price, labourHours: _hours, ...item }) => ({ ...item }));
}

/** Connectors that are awkward to write into cells. */
const AWKWARD: readonly Entry[] = [
  {
    partNumber: "LKW-1",
    description: "=SUM(A1:A9)",
    bodyMetal: "+copper",
    plating: "-tin",
    tooling: { tool: "@press" },
  },
  { partNumber: "LKW-2", description: "'=quoted already", bodyMetal: "''-twice", plating: "'plain apostrophe" },
  {
    partNumber: "LKW-3",
    description: 'lug, 1/2" stud; "large", with a comma',
    withstands: ["oil; hot", "none", " brine"],
  },
  { partNumber: "LKW-4", description: " blanks around ", withstands: [], listings: [] },
  { partNumber: "LKW-5", description: "_x0041_ & <b> \u00b5 \u{1f50c} \ufffe", withstands: ["none"] },
  { partNumber: "LKW-6", description: "dates", validFrom: "2026-01-01", validTo: "2026-12-31", supersededBy: "LKW-7" },
  {
    partNumber: "LKW-7",
    description: "suppliers",
    suppliers: [{ name: "Oakridge Supply", partNumber: "OS-7731" }, { name: "Fenmoor Electric" }],
  },
  {
    partNumber: "LKW-8",
    description: "small and large numbers",
    voltageV: 0.1,
    temperature: { value: 1e-7, unit: "Cel" },
    screws: [{ id: "main", drive: { kind: "breakaway" }, torque: { value: 0.1 + 0.2, unit: "N-m" } }],
  },
  {
    partNumber: "LKW-9",
    description: "two ranges in one opening, two screws",
    screws: [
      { id: "a", drive: { kind: "hand" } },
      { id: "b", drive: { kind: "none" }, torque: "unmarked" },
    ],
    openings: [
      {
        id: "one",
        count: 3,
        ranges: [
          { from: "14 AWG", to: "8 AWG", strandings: "unmarked" },
          { from: "2.5 mm2", to: "16 mm2", strandings: ["solid"] },
        ],
        screw: "b",
      },
    ],
  },
  {
    partNumber: "LKW-10",
    description: "a screw that tightens nothing named",
    openings: [{ id: "o", count: 1, ranges: [] }],
  },
  {
    partNumber: "LKW-11",
    description: "no screw at all",
    construction: "set-screw",
    screws: [],
    openings: [plainOpening()],
  },
  {
    partNumber: "LKW-12",
    description: "equipment frames",
    mounting: { kind: "frame", frames: ["Tarnbeck 400", "Tarnbeck 600"] },
    lineSide: "unmarked",
    places: "unmarked",
    metalMarking: "unmarked",
    temperature: "unmarked",
    voltageV: "unmarked",
    grounding: { listed: false, electrodes: [], conductorsPerClamp: "unmarked" },
    pin: { size: "35 mm2", metal: "copper-clad-aluminum" },
    compound: "pre-filled",
    tooling: { tool: "press", die: "D-1", crimps: 2 },
  },
  { partNumber: "LKW-13", description: "no frame named", mounting: { kind: "frame", frames: [] }, status: "invented" },
].map((change) => ({ ...workshopPart(), ...change }));

function plainOpening(): Record<string, unknown> {
  return { id: "barrel", count: 1, ranges: [{ from: "6 AWG", to: "1 AWG", strandings: ["class-B"] }] };
}

describe("a version that is exported and imported again", { timeout: 60_000 }, () => {
  let app: Service;
  beforeAll(async () => {
    ({ app } = await openService());
  });
  afterAll(() => app.close());

  async function allConnectors(id: string): Promise<Entry[]> {
    const connectors: Entry[] = [];
    let cursor = "";
    do {
      const url = `/v1/catalogues/${id}/versions/1/connectors?limit=200${cursor === "" ? "" : `&cursor=${cursor}`}`;
      const page = (await app.inject(url)).json<{ connectors: Entry[]; next: string | null }>();
      connectors.push(...page.connectors);
      cursor = page.next ?? "";
    } while (cursor !== "");
    return connectors;
  }

  async function importedAgain(id: string, type: string): Promise<Entry[]> {
    const file = await app.inject({ url: `/v1/catalogues/${id}/versions/1/file`, headers: { accept: type } });
    expect(file.statusCode, file.body).toBe(200);
    const made = await app.inject({ method: "POST", url: "/v1/catalogues", payload: { name: "again" } });
    const again = made.json<{ id: string }>().id;
    const answer = await app.inject({
      method: "POST",
      url: `/v1/catalogues/${again}/imports`,
      headers: { "content-type": type },
      payload: file.rawPayload,
    });
    expect(answer.statusCode, answer.body.slice(0, 2000)).toBe(201);
    const { report } = answer.json<{ report: { recognised: unknown[]; rows: { bad: number; blank: number } } }>();
    // Nothing in a file of ours has to be understood.
    expect(report.recognised).toEqual([]);
    expect(report.rows).toMatchObject({ bad: 0, blank: 0 });
    return allConnectors(again);
  }

  it.each([
    ["the demonstration catalogue", CSV, demoEntries()],
    ["the demonstration catalogue", WORKBOOK, demoEntries()],
    ["awkward connectors", CSV, AWKWARD],
    ["awkward connectors", WORKBOOK, AWKWARD],
  ])("is the very same: %s as %s", async (_, type, entries) => {
    const id = await ownCatalogue(app, entries);
    expect(await allConnectors(id)).toEqual(entries);
    expect(await importedAgain(id, type)).toEqual(entries);
  });
});
