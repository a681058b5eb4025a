import { describe, expect, test } from "vitest";
import type { CalculationFinding } from "../core/calculation.js";
import { CalculationSheet, isClosed } from "../core/calculation-sheet.js";
import { nfpa70Edition2023 } from "../rulesets/nfpa70-2023/edition.js";
import { calculationFindingText } from "./calculation-text.js";

const CITE = { standard: "NFPA 70", edition: "2023", locator: "215.2(A)(1)" } as const;
const BASIS = { ruleSet: "nfpa70", edition: "2023", installedOn: "2026-05-31" } as const;

function everything(): CalculationFinding {
  const sheet = new CalculationSheet("sample", BASIS);
  const sets = sheet.count("sets in parallel", 1, "question/sets", "sets");
  const mark = sheet.assume("rating of the terminal", 75, "the terminal bears no mark", CITE, "Cel", [sets]);
  const torque = sheet.readAt("default torque", nfpa70Edition2023.tables.torqueSocket, "5/16", "torque", []);
  if (isClosed(torque)) throw new Error(torque.sentence);
  const root = sheet.approximately("factor", Math.sqrt(3), "", [sets], "square root of 3", "sqrt(3)", CITE);
  const small = sheet.approximately("share", 0.00123456789, "", [root], "share", "0.00123456789");
  const result = sheet.multiply("product", [root, torque], "lbf-in", CITE);
  return sheet.finish({
    sentence: "A sample of an answer.",
    cite: CITE,
    results: [
      { name: "product", step: result },
      { name: "share", step: small },
      { name: "rating", step: mark },
    ],
    advice: ["Look again."],
  });
}

describe("plain text of a calculation", () => {
  // hand: sqrt(3) = 1.7320508…, times 275 = 476.31397…; 0.00123456789 to 5 digits is 0.0012346
  test("sentence, clause and basis first, then results rounded, then every step, the caution last", () => {
    expect(calculationFindingText(everything())).toBe(
      [
        "sample: ANSWERED. A sample of an answer.",
        "Clause: 215.2(A)(1), NFPA 70-2023",
        "Basis: NFPA 70-2023, installed on 2026-05-31; rules 0.1.0",
        "",
        "Results",
        "  1. product: 476.31 lbf-in (step 6)",
        "  2. share: 0.0012346 (step 5)",
        "  3. rating: 75 C (step 2)",
        "",
        "Steps",
        "  1. sets in parallel: 1 set (given at question/sets)",
        "  2. rating of the terminal: 75 C, because the terminal bears no mark (215.2(A)(1), NFPA 70-2023)",
        "  3. default torque: 275 lbf-in (row 5/16, column torque, Informative Annex I Table I.3, NFPA",
        "     70-2023; no public text has confirmed it yet)",
        "  4. factor: square root of 3 = sqrt(3) = 1.73205… (215.2(A)(1), NFPA 70-2023)",
        "  5. share: share = 0.00123456… = 0.00123456…",
        "  6. product: factor x default torque = 1.73205… x 275 = 476.313… lbf-in (215.2(A)(1), NFPA 70-2023)",
        "",
        "Advice",
        "  1. Look again.",
        "",
        "Taken from the code where the part bears no mark",
        "  1. rating of the terminal: 75 Cel, the terminal bears no mark (215.2(A)(1), NFPA 70-2023)",
        "",
        "Caveats",
        "  1. No public text has yet confirmed 275 at 5/16 in Informative Annex I Table I.3, NFPA 70-2023;",
        "     compare with the book.",
        "",
        "This answer covers listing, size, place and published values only. The code as locally adopted, the",
        "authority having jurisdiction and a licensed electrician decide. Work de-energized.",
        "",
      ].join("\n"),
    );
  });

  test("a missing fact is named, and no result is shown", () => {
    const text = calculationFindingText(
      new CalculationSheet("sample", BASIS).ask("question/length", "The length is not given.", CITE),
    );
    expect(text).toContain("sample: NOT KNOWN. The length is not given.\n");
    expect(text).toContain("\nMissing\n  1. question/length: The length is not given.\n");
    expect(text).toContain("\nSteps\n  1. length: not known; asked for at question/length\n");
    expect(text).not.toContain("Results");
  });

  test("what nothing published answers says so", () => {
    const text = calculationFindingText(
      new CalculationSheet("sample", BASIS).refuse("NOT_COVERED", "The table is not held.", CITE),
    );
    expect(text).toContain("sample: NOT ANSWERED. The table is not held.\n");
  });
});
