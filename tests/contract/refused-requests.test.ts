import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { openService, type Service } from "./open-service.js";
import { workshopJob, workshopJoint, workshopLug, workshopOpening } from "./workshop-job.js";

interface ProblemBody {
  readonly type: string;
  readonly status: number;
  readonly title: string;
  readonly detail: string;
  readonly instance: string;
  readonly code: string;
  readonly errors: readonly { readonly pointer: string; readonly detail: string; readonly accepted: string }[];
}

interface Refusal {
  readonly what: string;
  readonly body: unknown;
  readonly status: number;
  readonly code: string;
  readonly pointer: string;
  /** Words that must stand in what would be accepted. */
  readonly accepted: string;
}

const circuit = (change: Record<string, unknown>) =>
  workshopJob({ joints: [workshopJoint({ circuit: { voltageV: 480, loadA: 150, sets: 1, ...change } })] });
const conductor = (change: Record<string, unknown>) =>
  workshopJob({
    joints: [
      workshopJoint({
        conductors: [
          { count: 1, metal: "copper", size: "3/0 AWG", stranding: "class-B", insulation: "THHN/THWN-2", ...change },
        ],
      }),
    ],
  });
const described = (change: Record<string, unknown>) =>
  workshopJob({ joints: [workshopJoint({ connector: { described: workshopLug(change) } })] });
const joint = (change: Record<string, unknown>) => workshopJob({ joints: [workshopJoint(change)] });
const lug = "/joints/0/connector/described";

const REFUSED: readonly Refusal[] = [
  // Form
  {
    what: "an unknown field",
    body: { ...workshopJob(), note: "x" },
    status: 400,
    code: "INVALID_REQUEST",
    pointer: "/note",
    accepted: "name, basis, catalogue, joints",
  },
  {
    what: "access to the joint in words",
    body: joint({ place: { location: "dry", accessible: "yes" } }),
    status: 400,
    code: "INVALID_REQUEST",
    pointer: "/joints/0/place/accessible",
    accepted: "true or false",
  },
  {
    what: "no strands at all",
    body: conductor({ strands: 0 }),
    status: 400,
    code: "INVALID_REQUEST",
    pointer: "/joints/0/conductors/0/strands",
    accepted: "whole number from 1",
  },
  {
    what: "half a strand",
    body: conductor({ strands: 18.5 }),
    status: 400,
    code: "INVALID_REQUEST",
    pointer: "/joints/0/conductors/0/strands",
    accepted: "whole number from 1",
  },
  {
    what: "a misspelt field",
    body: circuit({ laodA: 3 }),
    status: 400,
    code: "INVALID_REQUEST",
    pointer: "/joints/0/circuit/laodA",
    accepted: "loadA",
  },
  {
    what: "a field named like a built-in",
    body: JSON.parse('{"__proto__":1}'),
    status: 400,
    code: "INVALID_REQUEST",
    pointer: "/__proto__",
    accepted: "name, basis, catalogue, joints",
  },
  {
    what: "a missing field",
    body: joint({ quantity: undefined }),
    status: 400,
    code: "INVALID_REQUEST",
    pointer: "/joints/0/quantity",
    accepted: "whole number",
  },
  {
    what: "a number as text",
    body: circuit({ loadA: "150" }),
    status: 400,
    code: "INVALID_REQUEST",
    pointer: "/joints/0/circuit/loadA",
    accepted: "number",
  },
  {
    what: "true for a number",
    body: circuit({ loadA: true }),
    status: 400,
    code: "INVALID_REQUEST",
    pointer: "/joints/0/circuit/loadA",
    accepted: "number",
  },
  {
    what: "null for a number",
    body: circuit({ loadA: null }),
    status: 400,
    code: "INVALID_REQUEST",
    pointer: "/joints/0/circuit/loadA",
    accepted: "number",
  },
  {
    what: "NaN as text",
    body: circuit({ loadA: "NaN" }),
    status: 400,
    code: "INVALID_REQUEST",
    pointer: "/joints/0/circuit/loadA",
    accepted: "number",
  },
  {
    what: "a list for an object",
    body: joint({ circuit: [] }),
    status: 400,
    code: "INVALID_REQUEST",
    pointer: "/joints/0/circuit",
    accepted: "object",
  },
  { what: "a body that is a list", body: [], status: 400, code: "INVALID_REQUEST", pointer: "", accepted: "object" },
  {
    what: "a negative load",
    body: circuit({ loadA: -1 }),
    status: 400,
    code: "INVALID_REQUEST",
    pointer: "/joints/0/circuit/loadA",
    accepted: "from 0",
  },
  {
    what: "a voltage of zero",
    body: circuit({ voltageV: 0 }),
    status: 400,
    code: "INVALID_REQUEST",
    pointer: "/joints/0/circuit/voltageV",
    accepted: "above 0",
  },
  {
    what: "no sets",
    body: circuit({ sets: 0 }),
    status: 400,
    code: "INVALID_REQUEST",
    pointer: "/joints/0/circuit/sets",
    accepted: "from 1",
  },
  {
    what: "a bare temperature",
    body: circuit({ endTerminalTemperature: 75 }),
    status: 400,
    code: "INVALID_REQUEST",
    pointer: "/joints/0/circuit/endTerminalTemperature",
    accepted: '"unmarked"',
  },
  {
    what: "a temperature in an unknown unit",
    body: circuit({ endTerminalTemperature: { value: 75, unit: "C" } }),
    status: 400,
    code: "INVALID_REQUEST",
    pointer: "/joints/0/circuit/endTerminalTemperature/unit",
    accepted: "Cel, degF",
  },
  {
    what: "an unknown kind of protection",
    body: circuit({ protection: { kind: "fuse", ratingA: 3 } }),
    status: 400,
    code: "INVALID_REQUEST",
    pointer: "/joints/0/circuit/protection/kind",
    accepted: "device",
  },
  {
    what: "protection without its rating",
    body: circuit({ protection: { kind: "device" } }),
    status: 400,
    code: "INVALID_REQUEST",
    pointer: "/joints/0/circuit/protection/ratingA",
    accepted: "above 0",
  },
  {
    what: "a size without AWG",
    body: conductor({ size: "4/0" }),
    status: 400,
    code: "INVALID_REQUEST",
    pointer: "/joints/0/conductors/0/size",
    accepted: "4/0 AWG",
  },
  {
    what: "a size without kcmil",
    body: conductor({ size: "250" }),
    status: 400,
    code: "INVALID_REQUEST",
    pointer: "/joints/0/conductors/0/size",
    accepted: "250 kcmil",
  },
  {
    what: "a size in MCM",
    body: conductor({ size: "250 MCM" }),
    status: 400,
    code: "INVALID_REQUEST",
    pointer: "/joints/0/conductors/0/size",
    accepted: "250 kcmil",
  },
  {
    what: "three and a half conductors",
    body: conductor({ count: 3.5 }),
    status: 400,
    code: "INVALID_REQUEST",
    pointer: "/joints/0/conductors/0/count",
    accepted: "whole number",
  },
  {
    what: "an unknown metal",
    body: conductor({ metal: "aluminium" }),
    status: 400,
    code: "INVALID_REQUEST",
    pointer: "/joints/0/conductors/0/metal",
    accepted: "aluminum",
  },
  {
    what: "an unknown edition",
    body: workshopJob({ basis: { ruleSet: "nfpa70", edition: "2014" } }),
    status: 400,
    code: "INVALID_REQUEST",
    pointer: "/basis/edition",
    accepted: "2017, 2020, 2023",
  },
  {
    what: "an unknown edition for one joint",
    body: joint({ basis: { ruleSet: "nfpa70", edition: "2014" } }),
    status: 400,
    code: "INVALID_REQUEST",
    pointer: "/joints/0/basis/edition",
    accepted: "2017, 2020, 2023",
  },
  {
    what: "a day that is none",
    body: workshopJob({ basis: { ruleSet: "nfpa70", edition: "2023", installedOn: "2023-02-29" } }),
    status: 400,
    code: "INVALID_REQUEST",
    pointer: "/basis/installedOn",
    accepted: "2024-05-01",
  },
  {
    what: "an empty job",
    body: workshopJob({ joints: [] }),
    status: 400,
    code: "INVALID_REQUEST",
    pointer: "/joints",
    accepted: "1 to 10000",
  },
  {
    what: "a joint without conductors",
    body: joint({ conductors: [] }),
    status: 400,
    code: "INVALID_REQUEST",
    pointer: "/joints/0/conductors",
    accepted: "1 to 20",
  },
  {
    what: "a name of nothing",
    body: workshopJob({ name: "" }),
    status: 400,
    code: "INVALID_REQUEST",
    pointer: "/name",
    accepted: "1 to 200",
  },
  {
    what: "a name too long",
    body: workshopJob({ name: "x".repeat(201) }),
    status: 400,
    code: "INVALID_REQUEST",
    pointer: "/name",
    accepted: "1 to 200",
  },
  {
    what: "a mark with a line break",
    body: joint({ mark: "A\nB" }),
    status: 400,
    code: "INVALID_REQUEST",
    pointer: "/joints/0/mark",
    accepted: "letters, digits",
  },
  {
    what: "a mark that is a way up",
    body: joint({ mark: ".." }),
    status: 400,
    code: "INVALID_REQUEST",
    pointer: "/joints/0/mark",
    accepted: "letters, digits",
  },
  {
    what: "a connector of no kind",
    body: joint({ connector: {} }),
    status: 400,
    code: "INVALID_REQUEST",
    pointer: "/joints/0/connector",
    accepted: "partNumber",
  },
  {
    what: "a connector of two kinds",
    body: joint({ connector: { partNumber: "X", described: workshopLug() } }),
    status: 400,
    code: "INVALID_REQUEST",
    pointer: "/joints/0/connector",
    accepted: "partNumber",
  },
  {
    what: "a drive that is none",
    body: described({ screws: [{ id: "main", drive: { kind: "torx" } }] }),
    status: 400,
    code: "INVALID_REQUEST",
    pointer: `${lug}/screws/0/drive/kind`,
    accepted: "socket",
  },
  {
    what: "a torque without its unit",
    body: described({ screws: [{ id: "main", drive: { kind: "external-hex" }, torque: 275 }] }),
    status: 400,
    code: "INVALID_REQUEST",
    pointer: `${lug}/screws/0/torque`,
    accepted: '"unmarked"',
  },
  // Facts that contradict each other
  {
    what: "a conductor said to stay uncut that does not run through",
    body: conductor({ duty: "tap", uncut: true }),
    status: 422,
    code: "INCONSISTENT_REQUEST",
    pointer: "/joints/0/conductors/0/uncut",
    accepted: "run",
  },
  {
    what: "a joint tightened before in a connector that is not named",
    body: joint({ tightenedBefore: true, connector: undefined }),
    status: 422,
    code: "INCONSISTENT_REQUEST",
    pointer: "/joints/0/tightenedBefore",
    accepted: "the connector that they lie in",
  },
  {
    what: "two joints with one mark",
    body: workshopJob({ joints: [workshopJoint(), workshopJoint()] }),
    status: 422,
    code: "INCONSISTENT_REQUEST",
    pointer: "/joints/1/mark",
    accepted: "no other joint",
  },
  {
    what: "a load given twice",
    body: circuit({ continuousLoadA: 100 }),
    status: 422,
    code: "INCONSISTENT_REQUEST",
    pointer: "/joints/0/circuit/loadA",
    accepted: "loadA alone",
  },
  {
    what: "a rating beside insulation that has one",
    body: conductor({ insulationRating: { value: 90, unit: "Cel" } }),
    status: 422,
    code: "INCONSISTENT_REQUEST",
    pointer: "/joints/0/conductors/0/insulationRating",
    accepted: "other",
  },
  {
    what: "a range upside down",
    body: described({
      openings: [workshopOpening({ ranges: [{ from: "250 kcmil", to: "6 AWG", strandings: "unmarked" }] })],
    }),
    status: 422,
    code: "INCONSISTENT_REQUEST",
    pointer: `${lug}/openings/0/ranges/0/from`,
    accepted: "6 AWG",
  },
  {
    what: "a range of two systems",
    body: described({
      openings: [workshopOpening({ ranges: [{ from: "6 AWG", to: "120 mm2", strandings: "unmarked" }] })],
    }),
    status: 422,
    code: "INCONSISTENT_REQUEST",
    pointer: `${lug}/openings/0/ranges/0/to`,
    accepted: "both",
  },
  {
    what: "an opening tightened by no screw of the part",
    body: described({ openings: [workshopOpening({ screw: "other" })] }),
    status: 422,
    code: "INCONSISTENT_REQUEST",
    pointer: `${lug}/openings/0/screw`,
    accepted: "main",
  },
  {
    what: "two openings with one id",
    body: described({ openings: [workshopOpening(), workshopOpening()] }),
    status: 422,
    code: "INCONSISTENT_REQUEST",
    pointer: `${lug}/openings/1/id`,
    accepted: "once",
  },
  {
    what: "two holes without their spacing",
    body: described({ mounting: { kind: "pad", pattern: { holes: 2, bolt: "1/2" } } }),
    status: 422,
    code: "INCONSISTENT_REQUEST",
    pointer: `${lug}/mounting/pattern/spacing`,
    accepted: "length",
  },
  {
    what: "a terminal that is not described",
    body: joint({ connector: { equipmentTerminal: true } }),
    status: 422,
    code: "INCONSISTENT_REQUEST",
    pointer: "/joints/0/equipment/terminal",
    accepted: "description",
  },
  {
    what: "a part that the catalogue does not hold",
    body: joint({ connector: { partNumber: "NO-SUCH-PART" } }),
    status: 422,
    code: "UNKNOWN_PART_NUMBER",
    pointer: "/joints/0/connector/partNumber",
    accepted: "/v1/catalogue/connectors",
  },
  {
    what: "more joints than a job may have",
    body: workshopJob({ joints: Array.from({ length: 10_001 }, (_, index) => workshopJoint({ mark: `B-${index}` })) }),
    status: 422,
    code: "TOO_MANY_JOINTS",
    pointer: "/joints",
    accepted: "10000",
  },
];

/** Bodies that only text can hold. */
const AS_TEXT: readonly (Omit<Refusal, "body"> & { readonly text: string | Buffer })[] = [
  {
    what: "broken JSON",
    text: '{"name": "x",',
    status: 400,
    code: "MALFORMED_JSON",
    pointer: "",
    accepted: "one JSON object",
  },
  {
    what: "NaN",
    text: text('"loadA":150', '"loadA":NaN'),
    status: 400,
    code: "MALFORMED_JSON",
    pointer: "",
    accepted: "one JSON object",
  },
  { what: "nothing", text: "", status: 400, code: "MALFORMED_JSON", pointer: "", accepted: "one JSON object" },
  {
    what: "a number beyond all bounds",
    text: text('"loadA":150', '"loadA":1e999'),
    status: 400,
    code: "INVALID_REQUEST",
    pointer: "/joints/0/circuit/loadA",
    accepted: "number",
  },
  {
    what: "half of a surrogate pair",
    text: text('"name":"Workshop"', '"name":"Work\\ud83dshop"'),
    status: 400,
    code: "MALFORMED_JSON",
    pointer: "/name",
    accepted: "both halves",
  },
  {
    what: "half of a surrogate pair in a name",
    text: text('"name":"Workshop"', '"name":"x","\\udc00":1'),
    status: 400,
    code: "MALFORMED_JSON",
    pointer: "",
    accepted: "both halves",
  },
  {
    what: "a name given twice",
    text: text('"loadA":150', '"loadA":10,"loadA":150'),
    status: 400,
    code: "MALFORMED_JSON",
    pointer: "/joints/0/circuit/loadA",
    accepted: "once",
  },
  {
    what: "a name given twice, once in escapes",
    text: text('"loadA":150', '"loadA":10,"lo\\u0061dA":150'),
    status: 400,
    code: "MALFORMED_JSON",
    pointer: "/joints/0/circuit/loadA",
    accepted: "once",
  },
  {
    what: "bytes that are not UTF-8",
    text: Buffer.from([0x7b, 0xff, 0x7d]),
    status: 400,
    code: "MALFORMED_JSON",
    pointer: "",
    accepted: "UTF-8",
  },
  {
    what: "nesting without end",
    text: `${"[".repeat(100_000)}${"]".repeat(100_000)}`,
    status: 400,
    code: "MALFORMED_JSON",
    pointer: "",
    accepted: "levels",
  },
];

function text(from: string, to: string): string {
  const good = JSON.stringify(workshopJob());
  if (!good.includes(from)) throw new Error(`the good body has no ${from}`);
  return good.replace(from, to);
}

describe("a request that is wrong", () => {
  let app: Service;
  beforeAll(async () => {
    ({ app } = await openService());
  });
  afterAll(() => app.close());

  async function post(payload: string | Buffer, url = "/v1/jobs"): Promise<{ problem: ProblemBody; type: string }> {
    const answer = await app.inject({ method: "POST", url, payload, headers: { "content-type": "application/json" } });
    return { problem: answer.json<ProblemBody>(), type: String(answer.headers["content-type"]) };
  }

  async function nothingIsStored(): Promise<void> {
    const { jobs } = (await app.inject("/v1/jobs")).json<{ jobs: unknown[] }>();
    expect(jobs).toEqual([]);
  }

  it("is not the body from which the others depart", async () => {
    const { app: other } = await openService();
    const answer = await other.inject({ method: "POST", url: "/v1/jobs", payload: workshopJob() });
    expect(answer.statusCode).toBe(201);
    await other.close();
  });

  it.each([...REFUSED.map(({ body, ...rest }) => ({ ...rest, text: JSON.stringify(body) })), ...AS_TEXT])(
    "$what is refused with $status $code at $pointer, and nothing is stored",
    async ({ text: payload, status, code, pointer, accepted }) => {
      const { problem, type } = await post(payload);
      expect(type).toBe("application/problem+json; charset=utf-8");
      expect(problem).toMatchObject({ status, code, instance: "/v1/jobs" });
      expect(problem.type).toBe(`/problems/${code.toLowerCase().replaceAll("_", "-")}`);
      const fault = problem.errors.find((error) => error.pointer === pointer);
      expect(problem.errors.map((error) => error.pointer)).toContain(pointer);
      expect(`${fault?.detail ?? ""} ${fault?.accepted ?? ""}`).toContain(accepted);
      expect(fault?.accepted).not.toBe("");
      await nothingIsStored();
    },
  );

  it("names every fault at once", async () => {
    const { problem } = await post(JSON.stringify({ ...circuit({ loadA: -1, voltageV: "480" }), note: 1 }));
    expect(problem.errors.map(({ pointer }) => pointer).sort()).toEqual([
      "/joints/0/circuit/loadA",
      "/joints/0/circuit/voltageV",
      "/note",
    ]);
  });

  it("says what a misspelt field may have meant", async () => {
    const { problem } = await post(JSON.stringify(circuit({ laodA: 3 })));
    expect(problem.errors[0]?.detail).toContain('is "loadA" meant?');
  });

  it("names a hundred faults of a body that has more, and stays quick", async () => {
    const joints = Array.from({ length: 3000 }, () => 0);
    const start = performance.now();
    const { problem } = await post(JSON.stringify(workshopJob({ joints })));
    expect(problem.errors).toHaveLength(100);
    expect(performance.now() - start).toBeLessThan(1000);
  });

  it("stays quick with a large body that is wrong all over", async () => {
    const start = performance.now();
    const { problem } = await post(`{"name":"x","joints":[${"0,".repeat(4_000_000)}0]}`);
    expect(problem.status).toBeGreaterThanOrEqual(400);
    expect(performance.now() - start).toBeLessThan(5000);
  });

  it("of more than 16 MiB is refused with 413", async () => {
    const { problem } = await post(`{"name":"${"x".repeat(16 * 1024 * 1024)}"}`);
    expect(problem).toMatchObject({ status: 413, code: "BODY_TOO_LARGE" });
    await nothingIsStored();
  });

  it.each([
    ["text/plain", "{}"],
    ["application/xml", "<job/>"],
    ["application/x-www-form-urlencoded", "name=x"],
  ])("sent as %s is refused with 415", async (type, payload) => {
    const answer = await app.inject({ method: "POST", url: "/v1/jobs", payload, headers: { "content-type": type } });
    expect(answer.json<ProblemBody>()).toMatchObject({ status: 415, code: "UNSUPPORTED_MEDIA_TYPE" });
  });

  it.each([
    ["/v1/jobs?limit=0", "INVALID_REQUEST", "/query/limit"],
    ["/v1/jobs?limit=201", "INVALID_REQUEST", "/query/limit"],
    ["/v1/jobs?limit=ten", "INVALID_REQUEST", "/query/limit"],
    ["/v1/jobs?page=2", "INVALID_REQUEST", "/query/page"],
    ["/v1/jobs?cursor=!!", "INVALID_REQUEST", "/query/cursor"],
    ["/v1/jobs?cursor=abcdef", "INVALID_REQUEST", "/query/cursor"],
    ["/v1/catalogue/connectors?family=lug", "INVALID_REQUEST", "/query/family"],
  ])("%s is refused with 400 %s at %s", async (url, code, pointer) => {
    const problem = (await app.inject(url)).json<ProblemBody>();
    expect(problem).toMatchObject({ status: 400, code });
    expect(problem.errors.map((error) => error.pointer)).toEqual([pointer]);
  });

  it.each([
    ["/nowhere", "ROUTE_NOT_FOUND"],
    ["/v1/jobs/none", "JOB_NOT_FOUND"],
    ["/v1/jobs/none/schedule", "JOB_NOT_FOUND"],
    ["/v1/jobs/none/joints/B-01", "JOB_NOT_FOUND"],
    ["/v1/catalogue/connectors/none", "CONNECTOR_NOT_FOUND"],
    ["/v1/tables/nfpa-70-2023/none", "TABLE_NOT_FOUND"],
    ["/problems/none", "PROBLEM_NOT_FOUND"],
  ])("%s is refused with 404 %s", async (url, code) => {
    expect((await app.inject(url)).json<ProblemBody>()).toMatchObject({ status: 404, code, instance: url });
  });

  it("with a method that the address does not take is refused with 405 and the methods it takes", async () => {
    const answer = await app.inject({ method: "DELETE", url: "/v1/jobs" });
    expect(answer.json<ProblemBody>()).toMatchObject({ status: 405, code: "METHOD_NOT_ALLOWED" });
    expect(answer.headers["allow"]).toBe("POST, GET, HEAD");
  });

  it("with an address that cannot be decoded is refused with 400", async () => {
    const answer = await app.inject("/v1/jobs/%E0%A4%A");
    expect(answer.json<ProblemBody>()).toMatchObject({ status: 400, code: "MALFORMED_REQUEST" });
  });

  it("checks a joint no less strictly than a job does", async () => {
    const { problem } = await post(
      JSON.stringify({ basis: { ruleSet: "nfpa70", edition: "2023" }, joint: workshopJoint({ quantity: 1.5 }) }),
      "/v1/checks/compatibility",
    );
    expect(problem).toMatchObject({ status: 400, code: "INVALID_REQUEST" });
    expect(problem.errors.map(({ pointer }) => pointer)).toEqual(["/joint/quantity"]);
  });

  it("asks for a connector where none is named", async () => {
    const { problem } = await post(
      JSON.stringify({ basis: { ruleSet: "nfpa70", edition: "2023" }, joint: workshopJoint({ connector: undefined }) }),
      "/v1/checks/compatibility",
    );
    expect(problem).toMatchObject({ status: 422, code: "INCONSISTENT_REQUEST" });
    expect(problem.errors.map(({ pointer }) => pointer)).toEqual(["/joint/connector"]);
  });
});
