import { CAUTION } from "../../core/caution.js";
import { citationText } from "../../core/citation.js";
import type { ConductorGroup } from "../../core/conductor.js";
import type { CatalogueItem } from "../../core/connector.js";
import type { Edition } from "../../core/edition.js";
import type { CheckFinding } from "../../core/finding.js";
import type { Basis, Job, Joint } from "../../core/joint.js";
import { RULES_VERSION } from "../../core/rules-version.js";
import { checkJointUnder, decidingFinding } from "../joint/check-joint.js";
import type { JointFinding, OpeningUse, Verdict } from "../joint/joint-finding.js";
import { withProjectRules } from "../project-rules/rules-in-scope.js";
import { jointClass, withoutOffer } from "../selection/joint-class.js";
import { selectConnectorsUnder } from "../selection/select-connectors.js";
import type { Selection } from "../selection/selection.js";
import type { ConnectorSchedule, OpenQuestion, PartTotal, Rejection, ScheduleRow } from "./connector-schedule.js";

/** A schedule and, per row and in the same order, the full finding behind it. Equal joints share one finding. */
export interface ScheduledJob {
  readonly schedule: ConnectorSchedule;
  readonly findings: readonly (JointFinding | null)[];
}

/** What was found for one class of equal joints: about the connector that is its answer, or why it has none. */
type JointAnswer =
  | {
      readonly connectorStands: true;
      readonly finding: JointFinding;
      readonly selection: Selection | null;
      readonly chosen: boolean;
    }
  | {
      readonly connectorStands: false;
      /** Of the nearest miss, which is refused or asks; null: no connector is made for this kind of joint. */
      readonly finding: JointFinding | null;
      readonly selection: Selection;
    };

/**
 * Makes the connector schedule of a job, pausing after every joint so that a caller can let other work in between.
 * Joints that differ only in mark, area, description, tag and quantity are judged once.
 * @throws RangeError for an unknown part number or edition, or an unreadable size: callers validate these first.
 */
export function* scheduleInSteps(
  job: Job,
  catalogue: readonly CatalogueItem[],
  editionOf: (basis: Basis) => Edition,
): Generator<undefined, ScheduledJob> {
  const items = new Map(catalogue.map((item) => [item.partNumber, item]));
  const firsts = new Map<string, { readonly row: ScheduleRow; readonly finding: JointFinding | null }>();
  const rows: ScheduleRow[] = [];
  const findings: (JointFinding | null)[] = [];
  for (const posted of job.joints) {
    const joint = withProjectRules(posted, job.projectRules);
    const basis = joint.basis ?? job.basis;
    const key = jointClass(joint, basis);
    const first = firsts.get(key);
    if (first === undefined) {
      const answer = answerJoint(joint, basis, items, catalogue, editionOf(basis));
      const row = rowOf(joint, basis, answer);
      firsts.set(key, { row, finding: answer.finding });
      rows.push(row);
      findings.push(answer.finding);
    } else {
      rows.push(rowLike(first.row, joint));
      findings.push(first.finding);
    }
    yield undefined;
  }
  return { schedule: closeSchedule(job, rows), findings };
}

function answerJoint(
  joint: Joint,
  basis: Basis,
  items: ReadonlyMap<string, CatalogueItem>,
  catalogue: readonly CatalogueItem[],
  edition: Edition,
): JointAnswer {
  const offered = offeredFinding(joint, basis, items, edition);
  if (offered !== null && (joint.connector !== undefined || isAccepted(offered.verdict)))
    return {
      finding: offered,
      selection:
        offered.verdict === "reject"
          ? selectConnectorsUnder(withoutOffer(joint), basis, catalogue, edition).selection
          : null,
      connectorStands: true,
      chosen: false,
    };
  const { selection, finding } = selectConnectorsUnder(withoutOffer(joint), basis, catalogue, edition);
  // The equipment's own terminal explains a refusal better than the nearest part of a catalogue does.
  if (selection.chosen === null && offered !== null)
    return { finding: offered, selection, connectorStands: true, chosen: false };
  return finding === null || selection.chosen === null
    ? { finding, selection, connectorStands: false }
    : { finding, selection, connectorStands: true, chosen: true };
}

/** The finding for the connector that the joint names, or for its equipment's own terminal. */
function offeredFinding(
  joint: Joint,
  basis: Basis,
  items: ReadonlyMap<string, CatalogueItem>,
  edition: Edition,
): JointFinding | null {
  const choice = joint.connector;
  if (choice !== undefined && "partNumber" in choice) {
    const connector = items.get(choice.partNumber);
    if (connector === undefined)
      throw new RangeError(`joint ${joint.mark}: the catalogue has no part ${choice.partNumber}`);
    return checkJointUnder({ joint, basis, connector, origin: "catalogue" }, edition);
  }
  if (choice !== undefined && "described" in choice)
    return checkJointUnder({ joint, basis, connector: choice.described, origin: "request" }, edition);
  const terminal = joint.equipment?.terminal;
  if (terminal === undefined) {
    if (choice !== undefined)
      throw new RangeError(`joint ${joint.mark}: its equipment has no terminal of its own described`);
    return null;
  }
  return checkJointUnder({ joint, basis, connector: terminal, origin: "equipment" }, edition);
}

function rowOf(joint: Joint, basis: Basis, answer: JointAnswer): ScheduleRow {
  const { finding, selection } = answer;
  return {
    mark: joint.mark,
    area: joint.area ?? null,
    equipmentTag: joint.equipment?.tag ?? null,
    description: joint.description ?? null,
    function: joint.function,
    role: joint.role,
    quantity: joint.quantity,
    basis,
    conductors: joint.conductors.map(conductorText),
    connector: answer.connectorStands
      ? {
          partNumber: answer.finding.connector.partNumber,
          description: answer.finding.connector.description,
          origin: answer.finding.connector.origin,
          chosen: answer.chosen,
          quantity: partsFor(joint, answer.finding.connector.origin),
        }
      : null,
    openingsUsed: answer.connectorStands ? answer.finding.openings.map(useText) : [],
    verdict: finding?.verdict ?? "reject",
    deciding: decidingOf(answer),
    torque: (finding?.torque ?? []).map((answer) => ({
      at: answer.at,
      method: answer.method,
      lbfIn: answer.torque?.lbfIn ?? null,
      lbfFt: answer.torque?.lbfFt ?? null,
      newtonMetre: answer.torque?.newtonMetre ?? null,
      printed: answer.torque === null ? null : `${String(answer.torque.printed.value)} ${answer.torque.printed.unit}`,
      level: answer.level,
      drive: answer.drive,
      source: citationText(answer.cite),
    })),
    stripLengths: (finding?.stripLengths ?? []).map(({ opening, length }) => ({
      opening,
      length: length === null ? null : `${String(length.value)} ${length.unit}`,
    })),
    preparation:
      finding?.preparation == null
        ? null
        : {
            brush: `${finding.preparation.brush.needed ? "yes" : "no"}: ${finding.preparation.brush.because}`,
            compound: `${finding.preparation.compound.need}: ${finding.preparation.compound.because}`,
          },
    tooling: finding?.tooling ?? null,
    conditions: (finding?.conditions ?? []).map(({ sentence }) => sentence),
    dutiesOnSite: (finding?.dutiesOnSite ?? []).map(({ sentence }) => sentence),
    missing: finding?.missing ?? [],
    caveats: finding?.caveats ?? [],
    fix: fixOf(answer),
    selection,
  };
}

/** One for each joint of the mark; none for the equipment's own terminal, which comes with it. */
function partsFor({ quantity }: Joint, origin: "catalogue" | "request" | "equipment"): number {
  return origin === "equipment" ? 0 : quantity;
}

/**
 * The row of a joint equal to an earlier one: it shares every part that does not name the joint itself, so that a
 * caller can tell by identity which rows say the same.
 */
function rowLike(first: ScheduleRow, joint: Joint): ScheduleRow {
  const { connector } = first;
  return {
    mark: joint.mark,
    area: joint.area ?? null,
    equipmentTag: joint.equipment?.tag ?? null,
    description: joint.description ?? null,
    function: first.function,
    role: first.role,
    quantity: joint.quantity,
    basis: first.basis,
    conductors: first.conductors,
    connector:
      connector === null
        ? null
        : {
            partNumber: connector.partNumber,
            description: connector.description,
            origin: connector.origin,
            chosen: connector.chosen,
            quantity: partsFor(joint, connector.origin),
          },
    openingsUsed: first.openingsUsed,
    verdict: first.verdict,
    deciding: first.deciding,
    torque: first.torque,
    stripLengths: first.stripLengths,
    preparation: first.preparation,
    tooling: first.tooling,
    conditions: first.conditions,
    dutiesOnSite: first.dutiesOnSite,
    missing: first.missing,
    caveats: first.caveats,
    fix: first.fix,
    selection: first.selection,
  };
}

function decidingOf(answer: JointAnswer): ScheduleRow["deciding"] {
  if (answer.connectorStands) return whatDecides(answer.finding);
  const { finding, selection } = answer;
  if (finding === null) return { rule: "selection", sentence: selection.because, clause: "" };
  if (finding.verdict === "needs-information") return whatDecides(finding);
  const { rule, cite } = nearestFailure(finding, selection);
  return { rule, sentence: selection.because, clause: citationText(cite) };
}

function whatDecides({ deciding: { rule, sentence, cite } }: JointFinding): ScheduleRow["deciding"] {
  return { rule, sentence, clause: citationText(cite) };
}

/** The finding is that of the nearest connector, and the selection says which of its failures decides. */
function nearestFailure({ findings }: JointFinding, { nearestMisses: [nearest] }: Selection): CheckFinding {
  return findings.find(({ rule }) => rule === nearest?.rule) ?? decidingFinding(findings);
}

function fixOf(answer: JointAnswer): string {
  if (answer.finding === null) return "";
  const failure = answer.connectorStands
    ? answer.finding.findings.find(({ outcome }) => outcome === "fail")
    : nearestFailure(answer.finding, answer.selection);
  return failure?.fix ?? "";
}

function closeSchedule(job: Job, rows: readonly ScheduleRow[]): ConnectorSchedule {
  return {
    job: job.name,
    basis: job.basis,
    rulesVersion: RULES_VERSION,
    rows,
    totals: totalsOf(rows),
    rejections: rows.filter(({ verdict }) => verdict === "reject").map(rejectionOf),
    openQuestions: rows.filter(({ verdict }) => verdict === "needs-information").map(questionOf),
    counts: countsOf(rows),
    caution: CAUTION,
  };
}

/** Parts of accepted joints only: a refused part is not to be bought. */
function totalsOf(rows: readonly ScheduleRow[]): PartTotal[] {
  const totals = new Map<string, { description: string; quantity: number; marks: string[] }>();
  for (const { connector, verdict, mark } of rows) {
    if (connector?.partNumber == null || connector.quantity === 0 || !isAccepted(verdict)) continue;
    const total = totals.get(connector.partNumber) ?? { description: connector.description, quantity: 0, marks: [] };
    total.quantity += connector.quantity;
    total.marks.push(mark);
    totals.set(connector.partNumber, total);
  }
  return [...totals]
    .map(([partNumber, total]) => ({ partNumber, ...total }))
    .sort((a, b) => (a.partNumber < b.partNumber ? -1 : 1));
}

function rejectionOf(row: ScheduleRow): Rejection {
  return {
    mark: row.mark,
    rule: row.deciding.rule,
    sentence: row.deciding.sentence,
    clause: row.deciding.clause,
    fix: row.fix,
    instead: insteadText(row.selection),
  };
}

function insteadText(selection: Selection | null): string {
  if (selection === null) return "";
  const { chosen } = selection;
  if (chosen === null) return selection.because;
  const hangs =
    chosen.verdict === "accept" ? "" : ` (${String(chosen.conditions)} condition${chosen.conditions === 1 ? "" : "s"})`;
  return `${chosen.partNumber}, ${chosen.description}${hangs}`;
}

function questionOf(row: ScheduleRow): OpenQuestion {
  return { mark: row.mark, facts: row.missing, clause: row.deciding.clause };
}

function countsOf(rows: readonly ScheduleRow[]): ConnectorSchedule["counts"] {
  const tally = (verdict: Verdict): { marks: number; joints: number } => {
    const some = rows.filter((row) => row.verdict === verdict);
    return { marks: some.length, joints: jointsIn(some) };
  };
  return {
    marks: rows.length,
    joints: jointsIn(rows),
    byVerdict: {
      accept: tally("accept"),
      "accept-with-conditions": tally("accept-with-conditions"),
      reject: tally("reject"),
      "needs-information": tally("needs-information"),
    },
  };
}

function jointsIn(rows: readonly ScheduleRow[]): number {
  return rows.reduce((sum, row) => sum + row.quantity, 0);
}

function isAccepted(verdict: Verdict): boolean {
  return verdict === "accept" || verdict === "accept-with-conditions";
}

/** "run: 1 x 500 kcmil copper". */
function useText({ opening, conductors }: OpeningUse): string {
  return `${opening}: ${conductors.map(({ count, size, metal }) => `${String(count)} x ${size} ${metal}`).join(" + ")}`;
}

/** "1 x 4/0 AWG copper, class-B, THHN/THWN-2". */
function conductorText(group: ConductorGroup): string {
  const { count, size, metal, stranding, strands, insulation } = group;
  const counted = strands === undefined ? stranding : `${String(strands)} strands`;
  const form = stranding === "unknown" || strands === undefined ? counted : `${stranding}, ${counted}`;
  return `${String(count)} x ${size} ${metal}, ${form}, ${insulation}`;
}
