import { demoCatalogue, larkfenJob } from "@landfast/data";
import {
  type Basis,
  candidatesFor,
  type Joint,
  type JointCandidates,
  type JointFinding,
  type Remedies,
  remediesFor,
} from "@landfast/rules";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { openService, type Service } from "./open-service.js";
import { workshopJoint, workshopLug } from "./workshop-job.js";

const catalogue = demoCatalogue().items;
const basis: Basis = { ruleSet: "nfpa70", edition: "2023" };
const larkfen = larkfenJob();
/** One of each sort: parts are offered, the equipment serves, nothing fits, a fact is missing. */
const MARKS = ["LKF-001", "LKF-004", "LKF-010", "LKF-024", "LKF-029", "LKF-032", "LKF-050", "LKF-065"];
const plain = (value: unknown): unknown => JSON.parse(JSON.stringify(value));
const context = {
  inJob: ["LF-LUG-0111"],
  approved: ["LF-LUG-0112"],
  leadTimes: [{ partNumber: "LF-LUG-0101", days: 4 }],
};

/** 3/0 AWG aluminum on a breaker that stops at 1/0 AWG. */
const tooLarge = (change: Record<string, unknown> = {}): Joint => {
  const found = larkfen.joints.find(({ mark }) => mark === "LKF-032");
  if (found === undefined) throw new Error("the site has no LKF-032");
  return { ...found, connector: { equipmentTerminal: true }, ...change };
};

describe("candidates and remedies over HTTP", () => {
  let app: Service;
  beforeAll(async () => {
    ({ app } = await openService());
  });
  afterAll(() => app.close());
  const post = (url: string, payload: object) => app.inject({ method: "POST", url, payload });

  it.each(MARKS)("POST /v1/candidates is the library's answer, field for field: %s", async (mark) => {
    const joint = larkfen.joints.find((one) => one.mark === mark);
    if (joint === undefined) throw new Error(`the site has no ${mark}`);
    const inForce = joint.basis ?? larkfen.basis;
    for (const more of [{}, { context }]) {
      const answer = await post("/v1/candidates", { basis: larkfen.basis, joint, ...more });
      expect(answer.statusCode).toBe(200);
      expect(answer.json()).toStrictEqual(plain(candidatesFor({ joint, basis: inForce, catalogue, ...more })));
    }
  });

  it("POST /v1/remedies is the library's answer, and each joint in it is accepted when posted by itself", async () => {
    const joint = tooLarge({ equipment: { ...tooLarge().equipment, frame: "Tarnbeck 200" } });
    const equipmentInstead = [
      { tag: "DP-6L", frame: "Tarnbeck 400", terminalTemperature: { value: 75, unit: "Cel" as const } },
    ];
    const answer = await post("/v1/remedies", { basis, joint, context, equipmentInstead });
    expect(answer.statusCode).toBe(200);
    const found = answer.json<Remedies>();
    expect(found).toStrictEqual(plain(remediesFor({ joint, basis, catalogue, context, equipmentInstead })));
    expect(found.remedies.map(({ kind }) => kind)).toEqual(expect.arrayContaining(["lug-kit", "pin-adapter", "stub"]));
    for (const remedy of found.remedies)
      for (const one of remedy.joints) {
        const checked = await post("/v1/checks/compatibility", { basis, joint: one.joint });
        expect(checked.statusCode).toBe(200);
        expect(checked.json<JointFinding>().verdict).toBe(one.verdict);
      }
  });

  it("where nothing fits, the candidates carry the remedies", async () => {
    // hand: a pad of M20 studs, which no part of the catalogue has a hole for
    const equipment = { tag: "P-1", terminalTemperature: { value: 75, unit: "Cel" }, stud: { holes: 1, bolt: "M20" } };
    const answer = await post("/v1/candidates", { basis, joint: workshopJoint({ equipment, connector: undefined }) });
    const found = answer.json<JointCandidates>();
    expect(found.candidates).toEqual([]);
    expect(found.remedies).not.toBeNull();
    expect(found.because).not.toBe("");
  });

  it("a joint of a stored job is asked with the parts of its other marks", async () => {
    const { job, schedule } = (await post("/v1/jobs", larkfen)).json<{
      job: { id: string };
      schedule: { totals: { partNumber: string; marks: string[] }[] };
    }>();
    for (const mark of MARKS.slice(2, 6)) {
      const joint = larkfen.joints.find((one) => one.mark === mark);
      if (joint === undefined) throw new Error(`the site has no ${mark}`);
      const inJob = schedule.totals
        .filter(({ marks }) => marks.some((one) => one !== mark))
        .map(({ partNumber }) => partNumber);
      const answer = await app.inject(`/v1/jobs/${job.id}/joints/${mark}/candidates`);
      expect(answer.statusCode).toBe(200);
      expect(answer.json()).toStrictEqual(
        plain(candidatesFor({ joint, basis: joint.basis ?? larkfen.basis, catalogue, context: { inJob } })),
      );
    }
    expect((await app.inject(`/v1/jobs/${job.id}/joints/NONE/candidates`)).json()).toMatchObject({
      code: "JOINT_NOT_FOUND",
    });
    expect((await app.inject("/v1/jobs/none/joints/LKF-001/candidates")).json()).toMatchObject({
      code: "JOB_NOT_FOUND",
    });
  });

  it("the same question has the same bytes for an answer, whatever was asked in between", async () => {
    const ask = async (): Promise<string> => (await post("/v1/candidates", { basis, joint: tooLarge() })).body;
    const first = await ask();
    for (const joint of larkfen.joints.slice(0, 20)) await post("/v1/candidates", { basis: larkfen.basis, joint });
    expect(await ask()).toBe(first);
  });

  it.each([
    ["an unknown key", { basis, joint: workshopJoint(), rank: "price" }, "INVALID_REQUEST", "/rank"],
    ["no basis", { joint: workshopJoint() }, "INVALID_REQUEST", "/basis"],
    [
      "days that are text",
      { basis, joint: workshopJoint(), context: { leadTimes: [{ partNumber: "A", days: "3" }] } },
      "INVALID_REQUEST",
      "/context/leadTimes/0/days",
    ],
    [
      "a part that is not in the catalogue",
      { basis, joint: workshopJoint({ connector: { partNumber: "NO-SUCH" } }) },
      "UNKNOWN_PART_NUMBER",
      "/joint/connector/partNumber",
    ],
    [
      "a terminal that is not described",
      { basis, joint: workshopJoint({ connector: { equipmentTerminal: true } }) },
      "INCONSISTENT_REQUEST",
      "/joint/equipment/terminal",
    ],
    [
      "a catalogue that is not there",
      { basis, joint: workshopJoint(), catalogue: { id: "none", version: 1 } },
      "UNKNOWN_CATALOGUE",
      "/catalogue/id",
    ],
  ])("both refuse %s", async (_what, payload, code, pointer) => {
    for (const url of ["/v1/candidates", "/v1/remedies"]) {
      const answer = await post(url, payload);
      expect(answer.statusCode).toBeGreaterThanOrEqual(400);
      expect(answer.json()).toMatchObject({ code });
      expect(answer.json<{ errors: { pointer: string }[] }>().errors.map((one) => one.pointer)).toContain(pointer);
    }
  });

  it("faults of equipment that is named instead are found where they stand", async () => {
    const lug = workshopLug();
    const terminal = { ...lug, openings: [(lug["openings"] as object[])[0], (lug["openings"] as object[])[0]] };
    const answer = await post("/v1/remedies", {
      basis,
      joint: workshopJoint(),
      equipmentInstead: [{ tag: "A" }, { tag: "B", terminal }],
    });
    expect(answer.json()).toMatchObject({
      code: "INCONSISTENT_REQUEST",
      errors: [{ pointer: "/equipmentInstead/1/terminal/openings/1/id" }],
    });
  });

  it("stores nothing", async () => {
    const { app: empty } = await openService();
    await empty.inject({ method: "POST", url: "/v1/candidates", payload: { basis, joint: workshopJoint() } });
    expect((await empty.inject("/v1/jobs")).json()).toEqual({ jobs: [], next: null });
    await empty.close();
  });
});
