import { CALCULATIONS, type CalculationName, calculate, EDITIONS } from "@landfast/rules";
import { Ajv2020 } from "ajv/dist/2020.js";
import ajvFormats from "ajv-formats";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { CALCULATION_QUESTIONS } from "../findings/calculation-questions.js";
import { openService, type Service } from "./open-service.js";

const NAMES = Object.keys(CALCULATIONS) as CalculationName[];
const BASIS = { ruleSet: "nfpa70", edition: "2023" } as const;

type Fields = Record<string, unknown>;
interface Asked {
  readonly basis: typeof BASIS;
  readonly question: Fields;
}
interface Refused {
  readonly code: string;
  readonly status: number;
  readonly detail: string;
  readonly errors: readonly { readonly pointer: string; readonly detail: string; readonly accepted: string }[];
}
interface Schema {
  readonly $ref?: string;
  readonly properties?: Readonly<Record<string, Schema>>;
  readonly required?: readonly string[];
  readonly examples?: readonly unknown[];
  readonly oneOf?: readonly Schema[];
}
interface Document {
  readonly paths: Readonly<
    Record<
      string,
      {
        readonly post?: {
          readonly requestBody: { readonly content: Readonly<Record<string, { readonly schema: Schema }>> };
          readonly responses: Readonly<
            Record<string, { readonly content: Readonly<Record<string, { readonly schema: Schema }>> }>
          >;
        };
      }
    >
  >;
  readonly components: { readonly schemas: Readonly<Record<string, Schema>> };
}

let app: Service;
let document: Document;
let ajv: Ajv2020;

beforeAll(async () => {
  ({ app } = await openService());
  document = (await app.inject("/openapi.json")).json<Document>();
  ajv = new Ajv2020({ strict: true, allowUnionTypes: true, strictRequired: false, discriminator: true });
  ajvFormats.default(ajv);
  ajv.addFormat("conductor-size", true);
  ajv.addVocabulary(["openapi", "info", "servers", "tags", "paths", "components"]);
  ajv.addSchema({ ...document, $id: "openapi" });
});
afterAll(() => app.close());

function ask(name: string, payload: unknown) {
  return app.inject({ method: "POST", url: `/v1/calculations/${name}`, payload: payload as object });
}

async function refusal(name: string, payload: unknown, status: number): Promise<Refused> {
  const answer = await ask(name, payload);
  const problem = answer.json<Refused>();
  expect(answer.statusCode, answer.body).toBe(status);
  expect(answer.headers["content-type"]).toMatch(/^application\/problem\+json/);
  expect(problem.status).toBe(status);
  for (const { detail, accepted } of problem.errors) {
    expect(detail).not.toBe("");
    expect(accepted).not.toBe("");
    expect(accepted).not.toContain("OpenAPI");
  }
  return problem;
}

function componentOf({ $ref }: Schema): Schema & { readonly name: string } {
  const name = String($ref).slice(String($ref).lastIndexOf("/") + 1);
  return { name, ...document.components.schemas[name] };
}

function bodySchema(name: CalculationName): Schema & { readonly name: string } {
  const schema = document.paths[`/v1/calculations/${name}`]?.post?.requestBody.content["application/json"]?.schema;
  return componentOf(schema ?? {});
}

function findingSchema(name: CalculationName): Schema & { readonly name: string } {
  const schema =
    document.paths[`/v1/calculations/${name}`]?.post?.responses["200"]?.content["application/json"]?.schema;
  return componentOf(schema ?? {});
}

/** The documented example, anew each time, so that a test may spoil it. */
function example(name: CalculationName): Asked {
  return structuredClone(bodySchema(name).examples?.[0]) as Asked;
}

/** Paths of everything in a value that is neither a list nor an object. */
function leavesOf(value: unknown, path: readonly (string | number)[] = []): (readonly (string | number)[])[] {
  if (typeof value !== "object" || value === null) return [path];
  return Object.entries(value).flatMap(([key, inner]) => leavesOf(inner, [...path, key]));
}

function put(value: unknown, path: readonly (string | number)[], what: unknown): void {
  const last = path.at(-1);
  const holder = path.slice(0, -1).reduce<unknown>((inner, key) => (inner as Fields)[key], value);
  (holder as Fields)[String(last)] = what;
}

function at(value: unknown, path: readonly (string | number)[]): unknown {
  return path.reduce<unknown>((inner, key) => (inner as Fields)[key], value);
}

const pointerOf = (path: readonly (string | number)[]): string => path.map((key) => `/${key}`).join("");

describe.each(NAMES)("POST /v1/calculations/%s", (name) => {
  it("answers its documented example exactly as the library does, in every edition", async () => {
    for (const { ruleSet, edition } of EDITIONS) {
      const { question } = example(name);
      const basis = { ruleSet, edition };
      const answer = await ask(name, { basis, question });
      expect(answer.statusCode, answer.body).toBe(200);
      expect(answer.json()).toEqual(calculate(name, question as never, basis));
    }
    expect((await ask(name, example(name))).json()).toMatchObject({ calculation: name, outcome: "answered" });
  });

  it("answers every question that the library is tried with as the library does, and as described", async () => {
    const { name: component } = findingSchema(name);
    const validate = ajv.compile({ $ref: `openapi#/components/schemas/${component}` });
    for (const question of CALCULATION_QUESTIONS[name]) {
      const answer = await ask(name, { basis: BASIS, question });
      expect(answer.statusCode, `${JSON.stringify(question)} ${answer.body}`).toBe(200);
      const finding = answer.json<{ caution: string; rulesVersion: string }>();
      expect(finding).toEqual(calculate(name, question as never, BASIS));
      expect(finding.caution).toContain("licensed electrician");
      validate(finding);
      expect(validate.errors ?? []).toEqual([]);
    }
  });

  it("documents an answer that it gives", async () => {
    expect((await ask(name, example(name))).json()).toEqual(findingSchema(name).examples?.[0]);
  });

  it("asks for every field that it must have", async () => {
    const { basis, question } = example(name);
    const form = bodySchema(name).properties?.["question"] ?? {};
    const branch = form.oneOf?.find((one) => (one.required ?? []).every((field) => field in question)) ?? form;
    const required = branch.required ?? [];
    expect(required.length).toBeGreaterThan(0);
    for (const field of required) {
      const { [field]: _left, ...rest } = question;
      const { code, errors } = await refusal(name, { basis, question: rest }, 400);
      expect(code).toBe("INVALID_REQUEST");
      expect(errors.map(({ pointer }) => pointer)).toEqual([`/question/${field}`]);
      expect(errors[0]?.detail).toContain("missing");
    }
    for (const whole of ["basis", "question"]) {
      const { errors } = await refusal(name, { ...example(name), [whole]: undefined }, 400);
      expect(errors.map(({ pointer }) => pointer)).toEqual([`/${whole}`]);
    }
  });

  it("takes no field that it does not know", async () => {
    const top = await refusal(name, { ...example(name), remark: "x" }, 400);
    expect(top.errors.map(({ pointer }) => pointer)).toEqual(["/remark"]);
    const { basis, question } = example(name);
    const inner = await refusal(name, { basis, question: { ...question, remark: "x" } }, 400);
    expect(inner.errors.map(({ pointer }) => pointer)).toEqual(["/question/remark"]);
    expect(inner.errors[0]?.accepted).toContain(Object.keys(question)[0]);
  });

  it("takes no value of another type, and points at it", async () => {
    for (const path of leavesOf(example(name))) {
      const asked = example(name);
      const wrong = typeof at(asked, path) === "boolean" ? "yes" : true;
      put(asked, path, wrong);
      const { code, errors } = await refusal(name, asked, 400);
      expect(code).toBe("INVALID_REQUEST");
      expect(errors.length, pointerOf(path)).toBeGreaterThan(0);
      for (const { pointer } of errors) expect(pointerOf(path).startsWith(pointer), pointer).toBe(true);
    }
  });

  it("never fails itself, whatever number stands where", async () => {
    const numbers = [-1, 0, 1e-300, 1e-9, 0.001, 0.5, 3.5, 1, 99, 1000, 1e6, 1e9, 1e300, Number.MAX_SAFE_INTEGER];
    const questions = [example(name).question, ...CALCULATION_QUESTIONS[name].slice(0, 4)] as Fields[];
    for (const question of questions)
      for (const path of leavesOf(question))
        if (typeof at(question, path) === "number")
          for (const number of numbers) {
            const spoilt = structuredClone(question);
            put(spoilt, path, number);
            const { statusCode, body } = await ask(name, { basis: BASIS, question: spoilt });
            const about = `${pointerOf(path)} = ${number}: ${body.slice(0, 300)}`;
            expect([200, 400, 422], about).toContain(statusCode);
            // Nothing that is counted or measured is less than nothing; a temperature may be.
            if (number < 0 && !/temperature|ambient|rating|end\/value/i.test(pointerOf(path)))
              expect(statusCode, about).not.toBe(200);
          }
  });
});

describe("what no work can be done with", () => {
  const withQuestion = (name: CalculationName, change: Fields): Asked => {
    const { basis, question } = example(name);
    return { basis, question: { ...question, ...change } };
  };

  it.each<[string, CalculationName, Fields, number, string, RegExp]>([
    ["a negative load", "voltage-drop", { loadA: -1 }, 400, "/question/loadA", /from 0\.001/],
    ["three and a half conductors", "voltage-drop", { sets: 3.5 }, 400, "/question/sets", /whole number/],
    ["a size without its system", "ampacity", { size: "4/0" }, 400, "/question/size", /4\/0 AWG/],
    ["a size that there is none of", "ampacity", { size: "17 AWG" }, 400, "/question/size", /14 AWG/],
    ["a length without a unit", "voltage-drop", { length: 300 }, 400, "/question/length", /unit/],
    [
      "a power factor above one",
      "voltage-drop",
      {
        impedance: { kind: "resistance-and-reactance", conduit: "steel", powerFactor: 1.01 },
      },
      400,
      "/question/impedance/powerFactor",
      /0\.01 to 1/,
    ],
    [
      "a kind of impedance that is unknown",
      "voltage-drop",
      { impedance: { kind: "guess" } },
      400,
      "/question/impedance/kind",
      /dc-resistance/,
    ],
    [
      "no load at all",
      "conductor-size",
      { continuousLoadA: 0, nonContinuousLoadA: 0 },
      422,
      "/question/continuousLoadA",
      /above 0/,
    ],
    [
      "a trade size that there is none of",
      "raceway-fill",
      { raceway: { kind: "EMT", tradeSize: "2.5" } },
      400,
      "/question/raceway/tradeSize",
      /2-1\/2/,
    ],
    ["several kinds where one is counted", "raceway-fill", { ask: "how-many" }, 422, "/question/conductors", /count 1/],
    ["an empty list", "raceway-fill", { conductors: [] }, 400, "/question/conductors", /list of 1 to 50/],
    [
      "an empty box",
      "box-fill",
      { conductors: [], equipmentGrounds: [] },
      422,
      "/question/conductors",
      /one kind or more/,
    ],
    [
      "a pull to no entry",
      "pull-box",
      { pulls: [{ from: "A", to: "Z", spliced: false }] },
      422,
      "/question/pulls",
      /ids of the entries/,
    ],
    [
      "a pull to itself",
      "pull-box",
      { pulls: [{ from: "A", to: "A", spliced: false }] },
      422,
      "/question/pulls",
      /different/,
    ],
    [
      "sets that cannot be divided",
      "bonding-jumper",
      { racewaysBondedApart: 3 },
      422,
      "/question/racewaysBondedApart",
      /evenly/,
    ],
    [
      "a tool whose range is upside down",
      "torque",
      {
        tool: {
          from: { value: 75, unit: "lbf-ft" },
          to: { value: 60, unit: "lbf-in" },
          bits: [{ kind: "external-hex" }],
        },
      },
      422,
      "/question/tool/from",
      /no larger/,
    ],
    [
      "one reading alone",
      "contact-resistance",
      { readings: [{ joint: "A", microOhm: 18 }] },
      400,
      "/question/readings",
      /list of 2 to 100/,
    ],
    [
      "a reading of nothing",
      "contact-resistance",
      {
        readings: [
          { joint: "A", microOhm: 18 },
          { joint: "B", microOhm: 0 },
        ],
      },
      400,
      "/question/readings/1/microOhm",
      /from 0\.001/,
    ],
    [
      "two readings of one joint",
      "contact-resistance",
      {
        readings: [
          { joint: "A", microOhm: 18 },
          { joint: "A", microOhm: 19 },
        ],
      },
      422,
      "/question/readings/1/joint",
      /of its own/,
    ],
    [
      "a comparison with nothing",
      "temperature-rise",
      { comparisons: [] },
      400,
      "/question/comparisons",
      /list of 1 to 20/,
    ],
    [
      "a comparison with something else",
      "temperature-rise",
      { comparisons: [{ with: "last-year", temperatureRiseC: 3 }] },
      400,
      "/question/comparisons/0/with",
      /like-part/,
    ],
    ["a day that there is none of", "torque", { usedOn: "2026-02-30" }, 400, "/question/usedOn", /2026/],
  ])("refuses %s", async (_, name, change, status, pointer, accepted) => {
    const { errors } = await refusal(name, withQuestion(name, change), status);
    expect(errors.map((error) => error.pointer)).toContain(pointer);
    expect(errors.find((error) => error.pointer === pointer)?.accepted).toMatch(accepted);
  });

  it("refuses a rating beside an insulation whose rating the code gives", async () => {
    const { basis, question } = example("ampacity");
    const run = { ...(question["run"] as Fields), insulationRating: { value: 105, unit: "Cel" } };
    const { code, errors } = await refusal("ampacity", { basis, question: { ...question, run } }, 422);
    expect(code).toBe("INCONSISTENT_REQUEST");
    expect(errors.map(({ pointer }) => pointer)).toEqual(["/question/run/insulationRating"]);
  });

  it("points into a list where a circuit to be counted is wrong", async () => {
    const { basis, question } = example("ampacity");
    const run = { ...(question["run"] as Fields), grouping: { in: "raceway", conductors: [{ kind: "two-wire" }] } };
    const { errors } = await refusal("ampacity", { basis, question: { ...question, run } }, 400);
    expect(errors.map(({ pointer }) => pointer)).toEqual(["/question/run/grouping/conductors/0/count"]);
  });

  it.each([
    { ruleSet: "nfpa70", edition: "1999" },
    { ruleSet: "none", edition: "2023" },
  ])("refuses rules that are not answered: %o", async (basis) => {
    const { code } = await refusal("convert", { ...example("convert"), basis }, 400);
    expect(code).toBe("INVALID_REQUEST");
  });
});

describe("a fact that is not known", () => {
  it("is asked for by its place in the body, with status 200", async () => {
    const { basis, question } = example("voltage-drop");
    const { length: _length, ...rest } = question;
    const answer = await ask("voltage-drop", { basis, question: rest });
    expect(answer.statusCode).toBe(200);
    expect(answer.json()).toMatchObject({ outcome: "missing", missing: [{ path: "question/length" }], results: [] });
  });
});

describe("the names of the calculations", () => {
  it.each(["GET", "POST", "PUT", "DELETE"] as const)(
    "%s of a name that none has says which there are",
    async (method) => {
      const answer = await app.inject({ method, url: "/v1/calculations/none" });
      const problem = answer.json<Refused>();
      expect(answer.statusCode).toBe(404);
      expect(problem.code).toBe("CALCULATION_NOT_FOUND");
      expect(problem.errors.map(({ pointer }) => pointer)).toEqual(["/path/name"]);
      for (const name of NAMES) expect(problem.errors[0]?.accepted).toContain(name);
    },
  );

  it("are listed with the clauses of each edition and what each needs", async () => {
    const { calculations } = (await app.inject("/v1/calculations")).json<{
      calculations: readonly {
        readonly name: CalculationName;
        readonly title: string;
        readonly href: string;
        readonly clauses: readonly { readonly edition: string; readonly cites: readonly unknown[] }[];
        readonly needs: readonly string[];
        readonly cannotSee: string;
      }[];
    }>();
    expect(calculations.map(({ name }) => name)).toEqual(NAMES);
    for (const { name, title, href, clauses, needs, cannotSee } of calculations) {
      const calculation = CALCULATIONS[name];
      expect({ title, needs, cannotSee }).toEqual({
        title: calculation.title,
        needs: calculation.needs,
        cannotSee: calculation.cannotSee,
      });
      expect(clauses).toEqual(
        EDITIONS.map((edition) => ({
          ruleSet: edition.ruleSet,
          edition: edition.edition,
          cites: calculation.clauses.map((clause) => edition.clauses[clause]),
        })),
      );
      expect((await app.inject({ method: "POST", url: href, payload: example(name) })).statusCode).toBe(200);
    }
  });

  it("stand in the register of rules as in their own list", async () => {
    const { calculations } = (await app.inject("/v1/calculations")).json<{ calculations: unknown }>();
    expect((await app.inject("/v1/rules")).json()).toMatchObject({ calculations });
  });

  it("stand in the OpenAPI document with a request and an answer of their own", () => {
    const components = NAMES.flatMap((name) => [bodySchema(name), findingSchema(name)]);
    expect(new Set(components.map(({ name }) => name)).size).toBe(2 * NAMES.length);
    for (const { examples } of components) expect(examples?.length).toBe(1);
  });

  it.each(NAMES)("%s takes no other method than POST", async (name) => {
    const answer = await app.inject(`/v1/calculations/${name}`);
    expect(answer.statusCode).toBe(405);
    expect(answer.headers["allow"]).toBe("POST");
  });
});
