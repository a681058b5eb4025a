import {
  BENDING_NOT_SPECIFIED,
  type BendingEntry,
  bendingCell,
  bendingClause,
  bendingReduction,
  bendingTable,
} from "../../core/bending-table.js";
import type { Citation } from "../../core/citation.js";
import type { ConductorGroup } from "../../core/conductor.js";
import { conductorPath } from "../../core/conductor-path.js";
import type { Edition } from "../../core/edition.js";
import { compareExact, type Exact, exactOf, subtract } from "../../core/exact.js";
import type { CheckFinding, Step } from "../../core/finding.js";
import type { BendingSpace, Joint } from "../../core/joint.js";
import { inches } from "../../core/quantity.js";
import { asking, type JointSubject, type Landing, notApplicable, type Rule, settled } from "../../core/rule.js";
import { type Cell, isRefused, type Table, type TableRefusal } from "../../core/table.js";
import { Worksheet } from "../../core/worksheet.js";

const ID = "bending-space";

/**
 * Is there room to bend the conductor into its terminal?
 *
 * NFPA 70 312.6(B) (2017, 2020, 2023), in our words: between the terminal and the wall there is at least the space of
 * the table, in inches, by size and by wires per terminal: Table 312.6(B)(2) where the conductor leaves through the
 * wall opposite its terminal, Table 312.6(A) where it leaves through another. Compact aluminum is read in its own
 * column. A removable or lay-in terminal for one wire needs less by the figure beside the space.
 * Worked: 4/0 AWG copper straight in needs 7 in, and 7 in is enough; 500 kcmil needs 14 in, and 12 in is refused.
 * The terminals of a power distribution block are such terminals. A terminal that comes fixed in its equipment is not removable. Aluminum that is compact is taken to be of the 8000
 * series, as building wire is.
 * Silent: the table lays down nothing for the smallest sizes; the further ways of 312.6(B) to leave through the
 * opposite wall.
 */
export const bendingSpace: Rule = {
  id: ID,
  title: "Space to bend the conductor at its terminal",
  clauses: ["bendingOpposite", "bendingSide"],
  needs: [
    "joint/equipment/bending",
    "joint/conductors/0/size",
    "joint/conductors/0/stranding",
    "joint/function",
    "connector/family",
  ],
  cannotSee: "what else stands in the way of the conductor",
  check(subject, edition) {
    const { joint } = subject;
    if (joint.function !== "termination" && !isBlock(subject))
      return notApplicable(ID, "no conductor ends on a terminal of the equipment");
    const bending = joint.equipment?.bending;
    if (bending === undefined) return notApplicable(ID, `the bending space is not given${spaceAsked(joint, edition)}`);
    if (joint.conductors.every((conductor) => isUnspecified(conductor, bending.entry, edition)))
      return notApplicable(ID, "the tables lay down no bending space for conductors this small");
    return judge(subject, new Worksheet(), bending, edition);
  },
};

/** 376.56(B)(3), 314.28(E)(3): the conductors on a distribution block bend as those on a terminal do. */
function isBlock({ connector }: JointSubject): boolean {
  return connector.family === "power-distribution-block";
}

/** A failure of any conductor decides; then a missing fact; only then do all pass. */
function judge(subject: JointSubject, worksheet: Worksheet, bending: BendingSpace, edition: Edition): CheckFinding {
  const cite = bendingClause(bending.entry, edition);
  const offered = spaceText(bending);
  const crowded = subject.landings.find((landing) => wiresIn(landing) > bending.wiresPerTerminal);
  if (crowded !== undefined)
    return asking(
      ID,
      worksheet,
      "joint/equipment/bending/wiresPerTerminal",
      `More conductors lie in opening "${crowded.opening.id}" than the ${String(bending.wiresPerTerminal)} per terminal that the space is given for.`,
      { cite, required: "space for the wires in the terminal", offered },
    );
  const availableIn = inches(bending.available);
  const spaces: Space[] = [];
  let asked: AskedFact | undefined;
  for (const [group, conductor] of subject.joint.conductors.entries()) {
    if (isUnspecified(conductor, bending.entry, edition)) continue;
    const space = spaceFor(subject, group, conductor, bending, edition);
    if ("path" in space) asked ??= space;
    else if (holds(availableIn, space.requiredIn)) spaces.push(space);
    else if (space.leastIn !== undefined && holds(availableIn, space.leastIn)) asked ??= REMOVABLE_ASKED;
    else return settle(subject, worksheet, [space], bending, edition);
  }
  return asked === undefined
    ? settle(subject, worksheet, spaces, bending, edition)
    : asking(ID, worksheet, asked.path, asked.because, { cite, required: "the space of the table", offered });
}

/** The space that one conductor needs. */
interface Space {
  readonly group: number;
  readonly conductor: ConductorGroup;
  readonly cell: Cell;
  /** Taken off because the terminal is removable. */
  readonly reduction?: Cell;
  readonly requiredIn: Exact;
  /** What would be enough if the terminal turned out to be removable; absent where that is known. */
  readonly leastIn?: Exact;
}

interface AskedFact {
  readonly path: string;
  readonly because: string;
}

const REMOVABLE_ASKED: AskedFact = Object.freeze({
  path: "joint/equipment/bending/removableTerminal",
  because:
    "The space is enough only if the terminal is a removable or lay-in one for one wire; whether it is, is not given.",
});

function spaceFor(
  { connector }: JointSubject,
  group: number,
  conductor: ConductorGroup,
  bending: BendingSpace,
  edition: Edition,
): Space | AskedFact {
  const { entry, wiresPerTerminal } = bending;
  const table = bendingTable(conductor, entry, edition);
  const cell = bendingCell(table, conductor.size, entry, wiresPerTerminal);
  if (isRefused(cell) || typeof cell.value !== "number") return refused(cell, group, table);
  const full = exactOf(cell.value);
  // A terminal that comes fixed in its equipment is not removable; any other may be.
  const removable = bending.removableTerminal ?? (connector.mounting.kind === "integral" ? false : undefined);
  const reduction = removable === false ? undefined : bendingReduction(table, conductor.size, entry, wiresPerTerminal);
  if (reduction === undefined) return { group, conductor, cell, requiredIn: full };
  const reduced = subtract(full, exactOf(Number(reduction.value)));
  return removable === true
    ? { group, conductor, cell, reduction, requiredIn: reduced }
    : { group, conductor, cell, requiredIn: full, leastIn: reduced };
}

/** What to ask where the table has no number: another size, or another number of wires. */
function refused(cell: Cell | TableRefusal, group: number, table: Table): AskedFact {
  const why = isRefused(cell) ? cell.detail : `${table.cite.locator} prints "${String(cell.value)}"`;
  const bySize = isRefused(cell) && cell.refusal === "OUTSIDE_TABLE";
  return {
    path: bySize ? conductorPath(group, "size") : "joint/equipment/bending/wiresPerTerminal",
    because: `${why}, so the space needed is not known.`,
  };
}

function settle(
  { connector }: JointSubject,
  worksheet: Worksheet,
  spaces: readonly Space[],
  bending: BendingSpace,
  edition: Edition,
): CheckFinding {
  const cite = bendingClause(bending.entry, edition);
  const entry = worksheet.given("wall the conductor leaves through", bending.entry, "joint/equipment/bending/entry");
  const wires = worksheet.given(
    "wires per terminal",
    bending.wiresPerTerminal,
    "joint/equipment/bending/wiresPerTerminal",
  );
  const available = writeAvailable(worksheet, bending);
  const compared: Step[] = [];
  let enough = true;
  let widest: { readonly space: Space; readonly requiredIn: number } | undefined;
  for (const space of spaces) {
    const required = writeRequired(
      worksheet,
      space,
      [entry, wires],
      connector.mounting.kind === "integral",
      bending,
      cite,
    );
    const fits = worksheet.compare("there is room to bend the conductor", available, ">=", required, cite);
    enough &&= fits;
    compared.push(worksheet.last);
    const requiredIn = typeof required.value === "number" ? required.value : Number.NaN;
    if (widest === undefined || requiredIn > widest.requiredIn) widest = { space, requiredIn };
  }
  if (widest === undefined) throw new Error("no conductor was judged");
  if (compared.length > 1)
    worksheet.conclude(
      "there is room for every conductor",
      enough ? "pass" : "fail",
      compared,
      "the widest space asked for decides",
      cite,
    );
  const required = `${String(widest.requiredIn)} in`;
  const wall = bending.entry === "opposite" ? "the opposite wall" : "a side wall";
  const needs = `${widest.space.conductor.size} through ${wall} needs ${required} with ${wiresText(bending)}`;
  return settled(ID, worksheet, {
    sentence: enough
      ? `${needs}, and ${spaceText(bending)} is there.`
      : `${needs}, and only ${spaceText(bending)} is there.`,
    cite,
    required,
    offered: spaceText(bending),
    fix: enough ? "" : fixFor(widest.space, bending, edition),
  });
}

function writeRequired(
  worksheet: Worksheet,
  { group, conductor, cell, reduction }: Space,
  uses: readonly Step[],
  integral: boolean,
  bending: BendingSpace,
  cite: Citation,
): Step {
  const head = `joint/conductors/${String(group)}`;
  const facts = [
    ...uses,
    worksheet.given("conductor size", conductor.size, `${head}/size`),
    worksheet.given("conductor metal", conductor.metal, `${head}/metal`),
    worksheet.given("how the conductor is stranded", conductor.stranding, `${head}/stranding`),
  ];
  const full = worksheet.read("space by the table", cell, facts);
  if (bending.removableTerminal !== undefined)
    facts.push(
      worksheet.given(
        "removable or lay-in terminal for one wire",
        bending.removableTerminal,
        "joint/equipment/bending/removableTerminal",
      ),
    );
  else if (integral)
    facts.push(
      worksheet.conclude(
        "removable or lay-in terminal for one wire",
        false,
        [],
        "the terminal comes fixed in its equipment",
      ),
    );
  if (reduction === undefined) return full;
  return worksheet.subtract(
    "space with the reduction",
    full,
    worksheet.read("reduction for a removable terminal", reduction, facts),
    "in",
    cite,
  );
}

/** The space that is there, in inches. */
function writeAvailable(worksheet: Worksheet, { available }: BendingSpace): Step {
  const { value, unit } = available;
  const given = worksheet.given("space available", value, "joint/equipment/bending/available", unit);
  if (unit === "in") return given;
  const shown =
    unit === "ft" ? `${String(value)} x 12` : unit === "mm" ? `${String(value)} / 25.4` : `${String(value)} / 0.0254`;
  const formula = unit === "ft" ? "ft x 12" : unit === "mm" ? "mm / 25.4" : "m / 0.0254";
  return worksheet.exactly("space available in inches", inches(available), "in", [given], formula, shown);
}

function fixFor({ conductor }: Space, bending: BendingSpace, edition: Edition): string {
  const deeper = "a deeper enclosure, or smaller conductors in parallel";
  if (bending.entry === "side") return deeper;
  const side = spaceAt(conductor, "side", bending.wiresPerTerminal, edition);
  return side === undefined ? deeper : `enter through a side wall (${String(side)} in needed), or ${deeper}`;
}

/** What is said to a person who did not give the space: how much to look for. */
function spaceAsked({ conductors }: Joint, edition: Edition): string {
  const [conductor] = conductors;
  if (conductor === undefined) return "";
  const opposite = spaceAt(conductor, "opposite", 1, edition);
  const side = spaceAt(conductor, "side", 1, edition);
  if (opposite === undefined || side === undefined) return "";
  return `; ${conductor.size}, one wire per terminal, needs ${String(opposite)} in through the opposite wall and ${String(side)} in through a side wall`;
}

function spaceAt(conductor: ConductorGroup, entry: BendingEntry, wires: number, edition: Edition): number | undefined {
  const cell = bendingCell(bendingTable(conductor, entry, edition), conductor.size, entry, wires);
  return isRefused(cell) || typeof cell.value !== "number" ? undefined : cell.value;
}

function isUnspecified(conductor: ConductorGroup, entry: BendingEntry, edition: Edition): boolean {
  const cell = bendingCell(bendingTable(conductor, entry, edition), conductor.size, entry, 1);
  return !isRefused(cell) && cell.value === BENDING_NOT_SPECIFIED;
}

function holds(availableIn: Exact, requiredIn: Exact): boolean {
  return compareExact(availableIn, requiredIn) >= 0;
}

function wiresIn({ conductors }: Landing): number {
  let total = 0;
  for (const { count } of conductors) total += count;
  return total;
}

function wiresText({ wiresPerTerminal }: BendingSpace): string {
  return wiresPerTerminal === 1 ? "one wire per terminal" : `${String(wiresPerTerminal)} wires per terminal`;
}

function spaceText({ available }: BendingSpace): string {
  return `${String(available.value)} ${available.unit}`;
}
