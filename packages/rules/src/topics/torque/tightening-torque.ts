import type { Citation } from "../../core/citation.js";
import type { Construction, Screw } from "../../core/connector.js";
import { type DefaultTorque, type DrivenBy, defaultTorque, wayOf } from "../../core/default-torque.js";
import type { Edition } from "../../core/edition.js";
import type { MissingFact, SourceLevel } from "../../core/finding.js";
import { type Torque, torqueInUnits } from "../../core/quantity.js";
import type { JointSubject } from "../../core/rule.js";
import { cellAt, isRefused } from "../../core/table.js";
import { driveText, torqueText } from "../../core/torque-words.js";
import { Worksheet } from "../../core/worksheet.js";
import { type ScrewInUse, screwsInUse } from "./screw-in-use.js";
import type { TorqueAnswer } from "./torque-answer.js";

/** A torque answer without its steps, and the fact it stops at, if it does. */
export type Tightening = Omit<TorqueAnswer, "steps"> & { readonly asks: MissingFact | null };

/** One thing to tighten; `drivenBy` names which way, where the head can be driven in two. */
export interface Tightenable {
  readonly use: ScrewInUse;
  readonly drivenBy: DrivenBy | null;
}

/**
 * How far everything at the joint is tightened: conductor screws, the equipment's terminal where a pin lands, pad bolts.
 *
 * NFPA 70 110.14(D) and Informative Annex I, in our words: the value on the equipment, else on the connector or in its
 * instructions; where they give none, the annex by the kind of head. Pad bolts follow NEMA CC 1 where the equipment says
 * nothing; no two published bolt tables agree, so the answer names its table and the equipment's instructions prevail.
 * Worked: 5/16 in socket, nothing marked: 275 lbf-in. Marked 20 lbf-in on a breaker: 20, whatever the annex says.
 * A screw whose marking is not known gets no value: the annex holds only where the maker gives none.
 * Torques in lbf-in, lbf-ft and N-m; never a value outside a table.
 */
export function tighteningTorque(subject: JointSubject, edition: Edition): TorqueAnswer[] {
  const answers: TorqueAnswer[] = [];
  for (const thing of thingsToTighten(subject)) {
    const worksheet = new Worksheet();
    answers.push(answerOf(tighten(worksheet, thing, edition), worksheet));
  }
  const worksheet = new Worksheet();
  const pad = tightenPad(worksheet, subject, edition);
  if (pad !== null) answers.push(answerOf(pad, worksheet));
  return answers;
}

function answerOf(tightening: Tightening, { steps }: Worksheet): TorqueAnswer {
  const { at, opening, method, torque, level, cite, drive, alternative, sentence } = tightening;
  return { at, opening, method, torque, level, cite, drive, alternative, sentence, steps };
}

/** The joint's screws, with a slotted hexagon twice where nothing is marked on it. */
export function thingsToTighten(subject: JointSubject): readonly Tightenable[] {
  const things: Tightenable[] = [];
  for (const use of screwsInUse(subject)) {
    if (use.screw?.drive.kind === "slotted-hex" && use.screw.torque === "unmarked") {
      things.push(
        { use, drivenBy: use.construction === "split-bolt" ? "split-bolt" : "external-hex" },
        { use, drivenBy: "slot" },
      );
    } else things.push({ use, drivenBy: null });
  }
  return things;
}

/** How one screw is tightened; the steps are written on the worksheet. */
export function tighten(worksheet: Worksheet, { use, drivenBy }: Tightenable, edition: Edition): Tightening {
  const { screw } = use;
  if (screw === undefined || screw.drive.kind === "none") return withoutScrew(worksheet, use, edition);
  const drive = screw.drive;
  const path = screwPath(use);
  worksheet.given("head of the screw", drive.kind, `${path}/drive/kind`);
  if (drive.kind === "breakaway") return breakaway(worksheet, use, edition);
  if (drive.kind === "hand")
    return unmeasured(worksheet, use, "by-hand", edition.clauses.instructions, markingLevel(use), "by hand", HAND);
  if (typeof screw.torque === "object") return marked(worksheet, use, screw, screw.torque, edition);
  if (screw.torque === undefined)
    return seeInstructions(worksheet, use, edition.clauses.torque, `${path}/torque`, MARKING_NOT_KNOWN);
  worksheet.given("torque on the part or in its instructions", "none", `${path}/torque`);
  if (drive.kind === "clamp-bolt")
    return seeInstructions(worksheet, use, edition.clauses.torque, `${path}/torque`, NO_TABLE_FOR_CLAMP);
  const way = drivenBy ?? wayOf(drive);
  const { largest, largestPath } = use;
  const unmarked = { drive, drivePath: `${path}/drive`, largest, largestPath };
  const standard = defaultTorque(worksheet, unmarked, way, edition);
  if ("refused" in standard)
    return seeInstructions(
      worksheet,
      use,
      standard.cite,
      `${path}/torque`,
      `Nothing is marked and no default holds: ${standard.refused}.`,
    );
  return byTable(worksheet, use, screw, standard, way, drivenBy !== null);
}

/** The bolts of the pad, or null where the connector is not bolted to one. */
export function tightenPad(
  worksheet: Worksheet,
  { joint, connector }: JointSubject,
  edition: Edition,
): Tightening | null {
  if (connector.mounting.kind !== "pad") return null;
  const stud = joint.equipment?.stud?.bolt;
  const bolt = stud ?? connector.mounting.pattern.bolt;
  const size = worksheet.given(
    "bolt of the pad",
    bolt,
    stud === undefined ? "connector/mounting/pattern/bolt" : "joint/equipment/stud/bolt",
  );
  const cell = cellAt(edition.tables.padBoltTorque, bolt, "steelOrBronze");
  const metric = bolt.startsWith("M");
  const boltText = metric ? bolt : `${bolt} in`;
  const article = metric ? "an" : "a";
  const at = `pad bolt ${boltText}`;
  const drive = `head of ${article} ${boltText} bolt`;
  if (isRefused(cell) || typeof cell.value !== "number") {
    worksheet.conclude(
      "torque of the pad bolt",
      "see the instructions",
      [size],
      "the bolt table has no value for it",
      edition.tables.padBoltTorque.cite,
    );
    return {
      at,
      opening: "pad",
      drive,
      alternative: null,
      asks: null,
      method: "see-instructions",
      torque: null,
      level: null,
      cite: edition.clauses.instructions,
      sentence: `No table here covers ${article} ${boltText} pad bolt: take the torque from the equipment's instructions.`,
    };
  }
  const torque = torqueInUnits({ value: cell.value, unit: "lbf-in" });
  const read = worksheet.read("torque of a clean, dry steel or bronze bolt", cell, [size]);
  worksheet.conclude(
    "torque of the pad bolt",
    cell.value,
    [read],
    "unless the equipment's instructions give another",
    cell.cite,
    "lbf-in",
  );
  return {
    at,
    opening: "pad",
    drive,
    alternative: null,
    asks: null,
    method: "torque",
    torque,
    level: "trade-practice",
    cite: cell.cite,
    sentence: `Tighten each ${boltText} pad bolt to ${torqueText(torque)}: ${cell.cite.standard}-${cell.cite.edition}, clean and dry steel or bronze bolts. Published bolt tables disagree; the equipment's instructions come first.`,
  };
}

const MARKING_NOT_KNOWN =
  "Whether the part or its instructions give a torque is not known; the default tables hold only where they give none.";
const NO_TABLE_FOR_CLAMP = "No torque is marked on the clamp, and no default table covers a clamp's bolt.";
const HAND = "Turn it by hand as the package says; no torque value applies.";

function marked(worksheet: Worksheet, use: ScrewInUse, screw: Screw, printed: Torque, edition: Edition): Tightening {
  const path = screwPath(use);
  if (!(printed.value > 0 && Number.isFinite(printed.value)))
    return seeInstructions(
      worksheet,
      use,
      edition.clauses.torque,
      `${path}/torque`,
      "The torque given for the screw is not a positive number.",
    );
  const given = worksheet.given(
    "torque on the part or in its instructions",
    printed.value,
    `${path}/torque`,
    printed.unit,
  );
  worksheet.conclude(
    "tightening torque",
    printed.value,
    [given],
    "the maker's value comes before every table",
    edition.clauses.torque,
    printed.unit,
  );
  const torque = torqueInUnits(printed);
  const part = use.origin === "connector" ? "connector" : "equipment";
  return {
    at: placeOf(use),
    opening: openingsOf(use),
    method: "torque",
    torque,
    level: markingLevel(use),
    cite: edition.clauses.torque,
    drive: driveText(screw.drive, null),
    alternative: null,
    sentence: `Tighten to ${torqueText(torque)}, as marked on the ${part} or in its instructions.`,
    asks: null,
  };
}

function byTable(
  worksheet: Worksheet,
  use: ScrewInUse,
  screw: Screw,
  standard: Extract<DefaultTorque, { readonly lbfIn: number }>,
  way: DrivenBy,
  oneOfTwo: boolean,
): Tightening {
  worksheet.conclude(
    "tightening torque",
    standard.lbfIn,
    [standard.step],
    "nothing is marked, so the default holds",
    standard.cite,
    "lbf-in",
  );
  const torque = torqueInUnits({ value: standard.lbfIn, unit: "lbf-in" });
  const alternative = oneOfTwo
    ? way === "slot"
      ? "driven by its slot (No. 10 screw or larger)"
      : "driven by its hexagon"
    : null;
  return {
    at: placeOf(use),
    opening: openingsOf(use),
    method: "torque",
    torque,
    level: "code-table",
    cite: standard.cite,
    drive: driveText(screw.drive, oneOfTwo ? way : null),
    alternative,
    sentence: `Nothing is marked: tighten to ${torqueText(torque)}${alternative === null ? "" : ` if ${alternative}`}, ${standard.cite.locator}, ${standard.by}.`,
    asks: null,
  };
}

function breakaway(worksheet: Worksheet, use: ScrewInUse, edition: Edition): Tightening {
  const sentence = edition.torqueDuty.breakawayAccepted
    ? "Turn the head until it breaks away; the head itself sets the torque."
    : "Turn the head until it breaks away, if the maker's instructions name the head as the way to reach the torque.";
  return unmeasured(
    worksheet,
    use,
    "breakaway-head",
    edition.clauses.torque,
    markingLevel(use),
    "breakaway head",
    sentence,
  );
}

/** Pressed, welded, sprung or twisted; anything else ought to have a screw. */
function withoutScrew(worksheet: Worksheet, use: ScrewInUse, edition: Edition): Tightening {
  const cite = edition.clauses.instructions;
  worksheet.given("how it holds the conductor", use.construction, `${use.origin}/construction`);
  const way = WITHOUT_SCREW[use.construction];
  if (way !== undefined) return unmeasured(worksheet, use, way.method, cite, null, way.drive, way.sentence);
  return seeInstructions(worksheet, use, cite, screwAskedPath(use), NO_SCREW);
}

const NO_SCREW = "The opening is held by a screw or bolt that is not described, so its torque is not known.";

const WITHOUT_SCREW: Readonly<
  Partial<
    Record<Construction, { readonly method: TorqueAnswer["method"]; readonly drive: string; readonly sentence: string }>
  >
> = {
  compression: {
    method: "crimp",
    drive: "crimp tool",
    sentence: "Nothing to tighten: it is pressed with the tool and die named for it.",
  },
  weld: { method: "weld", drive: "none", sentence: "Nothing to tighten: it is welded." },
  spring: { method: "spring", drive: "none", sentence: "Nothing to tighten: its spring holds the conductor." },
  "twist-on": { method: "by-hand", drive: "by hand", sentence: HAND },
};

function unmeasured(
  worksheet: Worksheet,
  use: ScrewInUse,
  method: TorqueAnswer["method"],
  cite: Citation,
  level: SourceLevel | null,
  drive: string,
  sentence: string,
): Tightening {
  worksheet.conclude("how it is made fast", method, [worksheet.last], sentence, cite);
  return {
    at: placeOf(use),
    opening: openingsOf(use),
    method,
    torque: null,
    level,
    cite,
    drive,
    alternative: null,
    sentence,
    asks: null,
  };
}

function seeInstructions(
  worksheet: Worksheet,
  use: ScrewInUse,
  cite: Citation,
  path: string,
  because: string,
): Tightening {
  worksheet.conclude("tightening torque", "see the instructions", [worksheet.last], because, cite);
  return {
    at: placeOf(use),
    opening: openingsOf(use),
    method: "see-instructions",
    torque: null,
    level: null,
    cite,
    drive: use.screw === undefined ? "not known" : driveText(use.screw.drive, null),
    alternative: null,
    sentence: because,
    asks: { path, because },
  };
}

/** Ports of one kind may hold conductors of several sizes, so the size tells them apart. */
function placeOf(use: ScrewInUse): string {
  const kind =
    use.screw === undefined || use.screw.drive.kind === "none"
      ? "opening"
      : use.openings.length === 1
        ? "conductor screw of opening"
        : "bolt across openings";
  const owner = use.origin === "connector" ? "" : " of the equipment's terminal";
  return `${kind} ${openingsOf(use)}${owner}, ${use.largest}`;
}

function openingsOf({ openings }: ScrewInUse): string {
  return openings.join(" and ");
}

function markingLevel({ origin }: ScrewInUse): SourceLevel {
  return origin === "connector" ? "connector-marking" : "equipment-marking";
}

function screwPath({ origin, screwIndex }: ScrewInUse): string {
  return `${origin}/screws/${String(screwIndex)}`;
}

function screwAskedPath(use: ScrewInUse): string {
  return use.screw === undefined
    ? `${use.origin}/openings/${String(use.openingIndex)}/screw`
    : `${screwPath(use)}/drive`;
}
