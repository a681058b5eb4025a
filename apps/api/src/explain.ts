/** Prints the explanation of the question in a file: npm run explain -- FILE. */
import { readFileSync } from "node:fs";
import { explainQuestion } from "./explain-question.js";

const USAGE = `Usage: npm run explain -- FILE
FILE holds one question: of a joint, as POST /v1/checks/compatibility takes it, { "basis": …, "joint": … };
or of a calculation, { "calculation": "ampacity", "basis": …, "question": … }. docs/examples holds some of each.
`;

await main(process.argv[2]);

async function main(file: string | undefined): Promise<void> {
  if (file === undefined) {
    process.stderr.write(USAGE);
    process.exitCode = 2;
    return;
  }
  let question: string;
  try {
    question = readFileSync(file, "utf8");
  } catch (error) {
    process.stderr.write(`${error instanceof Error ? error.message : String(error)}\n${USAGE}`);
    process.exitCode = 2;
    return;
  }
  const { text, isAnswered } = await explainQuestion(question);
  (isAnswered ? process.stdout : process.stderr).write(text);
  process.exitCode = isAnswered ? 0 : 1;
}
