/**
 * Explains one answer: asks the service in this process, and writes the finding as numbered lines that a person can
 * follow with the book open.
 */
import { randomUUID } from "node:crypto";
import { demoCatalogue } from "@landfast/data";
import { type CalculationFinding, calculationFindingText, type JointFinding, jointFindingText } from "@landfast/rules";
import { buildApp, LOCAL_TENANT, loadCatalogueIfNone, openStore, slicedRunner } from "./app.js";
import { readJson } from "./problems/read-json.js";

export interface Explanation {
  /** The finding, or what is wrong with the question. */
  readonly text: string;
  readonly isAnswered: boolean;
}

/**
 * @param question JSON: of a joint, { "basis", "joint" }, with the demonstration catalogue at hand; or of a
 * calculation, { "calculation", "basis", "question" }.
 */
export async function explainQuestion(question: string): Promise<Explanation> {
  const clock = { now: () => new Date().toISOString(), newId: randomUUID };
  const store = openStore(":memory:");
  await loadCatalogueIfNone(store.catalogues, LOCAL_TENANT, demoCatalogue, clock);
  const app = await buildApp({ store, runner: slicedRunner(() => performance.now()), ...clock, log: false });
  const { url, payload, textOf } = addressed(question);
  const answer = await app.inject({
    method: "POST",
    url,
    headers: { "content-type": "application/json" },
    payload,
  });
  await app.close();
  store.close();
  return answer.statusCode === 200
    ? { text: textOf(answer.json()), isAnswered: true }
    : { text: refusalText(answer.json()), isAnswered: false };
}

interface AddressedQuestion {
  readonly url: string;
  readonly payload: string;
  readonly textOf: (finding: unknown) => string;
}

/** Whom to ask: a calculation where one is named, else about a joint. What is wrong with it, the service says. */
function addressed(question: string): AddressedQuestion {
  const ofJoint: AddressedQuestion = {
    url: "/v1/checks/compatibility",
    payload: question,
    textOf: (finding) => jointFindingText(finding as JointFinding),
  };
  let value: unknown;
  try {
    ({ value } = readJson(Buffer.from(question)));
  } catch {
    return ofJoint;
  }
  if (typeof value !== "object" || value === null || !("calculation" in value)) return ofJoint;
  const { calculation, ...body } = value;
  return {
    url: `/v1/calculations/${encodeURIComponent(String(calculation))}`,
    payload: JSON.stringify(body),
    textOf: (finding) => calculationFindingText(finding as CalculationFinding),
  };
}

interface RefusedQuestion {
  readonly title: string;
  readonly detail: string;
  readonly errors?: readonly { readonly pointer: string; readonly detail: string; readonly accepted: string }[];
}

function refusalText({ title, detail, errors = [] }: RefusedQuestion): string {
  const places = errors.map((one) => `  ${one.pointer}: ${one.detail}\n    accepted: ${one.accepted}\n`);
  return `${title}.\n${places.length === 0 ? `  ${detail}\n` : places.join("")}`;
}
