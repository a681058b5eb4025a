/** Asks the library a worked case under one edition and tells what is not as expected. */
import { type CalculationFinding, type CalculationName, calculate } from "@landfast/rules";
import type { CaseEdition, Expected, WorkedCase } from "./worked-case.js";

export function faultsOfCase<Name extends CalculationName>(
  name: Name,
  worked: WorkedCase<Name>,
  edition: CaseEdition,
): readonly string[] {
  const finding = calculate(name, worked.asked, { ruleSet: "nfpa70", edition });
  const faults = worked.expected.flatMap((expected) => faultOf(finding, expected));
  return faults.map((fault) => `${worked.id} (${edition}): ${fault}. The library says: ${finding.sentence}`);
}

function faultOf(finding: CalculationFinding, expected: Expected): readonly string[] {
  if ("refused" in expected)
    return finding.refusal?.code === expected.refused ? [] : [`is not refused with ${expected.refused}`];
  if ("missing" in expected)
    return finding.missing.some(({ path }) => path === expected.missing)
      ? []
      : [`does not ask for ${expected.missing}`];
  const { result: wanted, value, unit, within } = expected;
  const found = wanted === undefined ? finding.results[0] : finding.results.find((result) => result.name === wanted);
  if (found === undefined) return [`has no result "${wanted ?? "main"}"`];
  const about = `${found.name} is ${String(found.value)} ${found.unit ?? ""}`;
  const faults: string[] = [];
  if (!agrees(found.value, value, within)) faults.push(`${about}, not ${String(value)}`);
  if (unit !== undefined && found.unit !== unit) faults.push(`${about}, not in ${unit}`);
  return faults;
}

function agrees(found: unknown, value: unknown, within: number | undefined): boolean {
  if (within === undefined) return JSON.stringify(found) === JSON.stringify(value);
  return typeof found === "number" && typeof value === "number" && Math.abs(found - value) <= within;
}
