/**
 * Explains one answer: reads a question from a file, asks the service in this process, and prints the finding as
 * numbered lines that a person can follow with the book open.
 */
import { randomUUID } from "node:crypto";
import { readFileSync } from "node:fs";
import { demoCatalogue } from "@landfast/data";
import { type JointFinding, jointFindingText } from "@landfast/rules";
import { buildApp, LOCAL_TENANT, loadCatalogueIfNone, openStore, slicedRunner } from "./app.js";

const USAGE = `Usage: npm run explain -- FILE
FILE holds one question as POST /v1/checks/compatibility takes it: { "basis": …, "joint": … }.
`;

await main(process.argv[2]);

async function main(file: string | undefined): Promise<void> {
  if (file === undefined) {
    process.stderr.write(USAGE);
    process.exitCode = 2;
    return;
  }
  let payload: string;
  try {
    payload = readFileSync(file, "utf8");
  } catch (error) {
    process.stderr.write(`${error instanceof Error ? error.message : String(error)}\n${USAGE}`);
    process.exitCode = 2;
    return;
  }
  const clock = { now: () => new Date().toISOString(), newId: randomUUID };
  const store = openStore(":memory:");
  await loadCatalogueIfNone(store.catalogues, LOCAL_TENANT, demoCatalogue, clock);
  const app = await buildApp({ store, runner: slicedRunner(() => performance.now()), ...clock, log: false });
  const answer = await app.inject({
    method: "POST",
    url: "/v1/checks/compatibility",
    headers: { "content-type": "application/json" },
    payload,
  });
  await app.close();
  store.close();
  if (answer.statusCode === 200) process.stdout.write(jointFindingText(answer.json<JointFinding>()));
  else {
    process.stderr.write(refusalText(answer.json()));
    process.exitCode = 1;
  }
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
