import { demoCatalogue, larkfenJob } from "@landfast/data";
import { scheduleJob } from "@landfast/rules";
import { afterAll, beforeAll, describe, expect, it, vi } from "vitest";
import { openService, type Service } from "./open-service.js";
import { workshopJob, workshopJoint } from "./workshop-job.js";

vi.setConfig({ testTimeout: 60_000, hookTimeout: 60_000 });

const basis = { ruleSet: "nfpa70", edition: "2023" } as const;
const forbidSetScrews = {
  id: "R-1",
  source: "specification, 3.2",
  demand: { kind: "forbid-construction", constructions: ["set-screw"] },
} as const;

let app: Service;
beforeAll(async () => {
  ({ app } = await openService());
});
afterAll(() => app.close());

const check = (projectRules: unknown) =>
  app.inject({
    method: "POST",
    url: "/v1/checks/compatibility",
    payload: { basis, joint: workshopJoint(), projectRules } as object,
  });

describe("rules of the project", () => {
  it("turn an acceptance into a refusal that names the project's own text", async () => {
    expect((await check([])).json<{ verdict: string }>().verdict).toMatch(/^accept/);
    expect((await check([forbidSetScrews])).json()).toMatchObject({
      verdict: "reject",
      deciding: { rule: "project-rules", cite: { locator: "R-1: specification, 3.2", edition: "" } },
    });
  });

  it("hold for every joint of a job, as the library has it", async () => {
    const job = { ...larkfenJob(), projectRules: [forbidSetScrews] };
    const answer = await app.inject({ method: "POST", url: "/v1/jobs", payload: job });
    expect(answer.statusCode).toBe(201);
    const { schedule } = answer.json<{
      schedule: { rows: readonly { connector: { description: string } | null }[] };
    }>();
    expect(schedule).toEqual(scheduleJob(job, demoCatalogue().items).schedule);
  });

  it("hold for the candidates of a joint, stored or not", async () => {
    const { connector: _connector, ...open } = workshopJoint();
    const posted = await app.inject({
      method: "POST",
      url: "/v1/jobs",
      payload: { ...workshopJob({ joints: [open] as never }), projectRules: [forbidSetScrews] },
    });
    const stored = await app.inject(`${String(posted.headers["location"])}/joints/${String(open["mark"])}/candidates`);
    const asked = await app.inject({
      method: "POST",
      url: "/v1/candidates",
      payload: { basis, joint: open, projectRules: [forbidSetScrews] },
    });
    const kinds = new Map(demoCatalogue().items.map((item) => [item.partNumber, item.construction]));
    for (const answer of [stored, asked]) {
      expect(answer.statusCode, answer.body).toBe(200);
      const { candidates } = answer.json<{ candidates: readonly { partNumber: string }[] }>();
      for (const { partNumber } of candidates) expect(kinds.get(partNumber)).not.toBe("set-screw");
    }
  });

  it.each<[string, unknown, number, string]>([
    ["an unknown kind", [{ ...forbidSetScrews, demand: { kind: "allow-all" } }], 400, "/projectRules/0/demand/kind"],
    ["no source", [{ id: "R-1", demand: forbidSetScrews.demand }], 400, "/projectRules/0/source"],
    ["an unknown field", [{ ...forbidSetScrews, except: [] }], 400, "/projectRules/0/except"],
    [
      "an empty list",
      [{ ...forbidSetScrews, demand: { kind: "forbid-metal", metals: [] } }],
      400,
      "/projectRules/0/demand/metals",
    ],
    ["an unknown scope", [{ ...forbidSetScrews, scope: { floors: ["2"] } }], 400, "/projectRules/0/scope/floors"],
    ["one id twice", [forbidSetScrews, forbidSetScrews], 422, "/projectRules/1/id"],
    [
      "a temperature below every column",
      [{ ...forbidSetScrews, demand: { kind: "cap-terminal-temperature", temperature: { value: 59, unit: "Cel" } } }],
      422,
      "/projectRules/0/demand/temperature",
    ],
  ])("are refused with %s", async (_, projectRules, status, pointer) => {
    const answer = await check(projectRules);
    expect(answer.statusCode, answer.body).toBe(status);
    expect(answer.json<{ errors: readonly { pointer: string }[] }>().errors.map((error) => error.pointer)).toContain(
      pointer,
    );
  });
});
