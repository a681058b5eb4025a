import type { Citation } from "../../core/citation.js";
import type { Edition } from "../../core/edition.js";
import { compareExact, divide, type Exact, exactOf, multiply } from "../../core/exact.js";
import type { CheckFinding, Duty, Step } from "../../core/finding.js";
import type { SpaceSection } from "../../core/joint.js";
import { type Area, squareInches } from "../../core/quantity.js";
import { asking, NO_CONDITIONS, notApplicable, type Rule, settled } from "../../core/rule.js";
import { Worksheet } from "../../core/worksheet.js";

const ID = "enclosure-fill";
const CONDUCTORS_PERCENT = 40;
const WITH_SPLICES_PERCENT = 75;

/**
 * Do the conductors and their splices leave room in the cross-section where they lie?
 *
 * NFPA 70 312.8(A) (2017, 2020, 2023), in our words: at no cross-section of a switch or panel enclosure do conductors
 * that pass, are spliced or are tapped fill more than 40 % of the wiring space, nor with splices and taps more than
 * 75 %; and a label on the enclosure names the disconnect ahead of the conductors fed from elsewhere. 376.56(A): in a
 * wireway conductors with splices and taps fill at most 75 %.
 * Worked: 19 conductors of 0.3237 in2, 6.1503 in2, in 16 in2: 6.1503 <= 16 x 40 / 100 = 6.4 holds; 20 of them, 6.474,
 * do not.
 * Silent here: the 20 % of a wireway away from its splices, which is a matter of the wireway and not of the joint.
 */
export const enclosureFill: Rule = {
  id: ID,
  title: "Fill of the enclosure at the joint",
  clauses: ["enclosureFill", "wirewayFill"],
  needs: ["joint/equipment/space"],
  cannotSee: "conductors laid in later, and whether the section given is the fullest",
  check({ joint }, edition) {
    const space = joint.equipment?.space;
    if (space === undefined)
      return notApplicable(ID, "the cross-section of the enclosure and what lies in it is not given");
    const worksheet = new Worksheet();
    if (!(space.section.value > 0))
      return asking(
        ID,
        worksheet,
        "joint/equipment/space/section",
        "The cross-section of the enclosure must be above zero for its fill to be judged.",
        {
          cite: clauseOf(space, edition),
          required: requiredText(space),
        },
      );
    return judge(space, worksheet, edition);
  },
};

function judge(space: SpaceSection, worksheet: Worksheet, edition: Edition): CheckFinding {
  const cite = clauseOf(space, edition);
  const section = writeArea(worksheet, "cross-section", space.section, "section");
  const conductors = writeArea(worksheet, "area of the conductors", space.conductors, "conductors");
  const splices = writeArea(worksheet, "area of the splices and taps", space.splices, "splices");
  const compared: Step[] = [];
  let holds = true;
  if (space.kind === "enclosure") {
    const limit = writeLimit(worksheet, section, CONDUCTORS_PERCENT, cite);
    holds = worksheet.compare("the conductors leave room", conductors, "<=", limit, cite);
    compared.push(worksheet.last);
  }
  const together = worksheet.add("area of conductors, splices and taps", [conductors, splices], "in2");
  const limit = writeLimit(worksheet, section, WITH_SPLICES_PERCENT, cite);
  const roomLeft = worksheet.compare("the conductors with splices and taps leave room", together, "<=", limit, cite);
  holds &&= roomLeft;
  compared.push(worksheet.last);
  if (compared.length > 1)
    worksheet.conclude(
      "the fill is allowed",
      holds ? "pass" : "fail",
      compared,
      holds ? "both limits are kept" : "a limit is passed",
      cite,
    );
  const whole = worksheet.exact(section);
  const shares: Shares = {
    conductors: percentText(worksheet.exact(conductors), whole, CONDUCTORS_PERCENT),
    together: percentText(worksheet.exact(together), whole, WITH_SPLICES_PERCENT),
  };
  return settled(ID, worksheet, {
    sentence: sentenceFor(space, shares, holds),
    cite,
    required: requiredText(space),
    offered: space.kind === "enclosure" ? `${shares.conductors} / ${shares.together}` : shares.together,
    conditions: space.kind === "enclosure" ? [labelDuty(cite)] : NO_CONDITIONS,
    fix: "carry a circuit another way, or make the splice in an adjoining wireway or box",
  });
}

/** An area in square inches: as posted, or converted. */
function writeArea(worksheet: Worksheet, label: string, area: Area, field: string): Step {
  const given = worksheet.given(label, area.value, `joint/equipment/space/${field}`, area.unit);
  if (area.unit === "in2") return given;
  const value = String(area.value);
  return area.unit === "mm2"
    ? worksheet.exactly(
        `${label} in square inches`,
        squareInches(area),
        "in2",
        [given],
        "mm2 / 645.16",
        `${value} / 645.16`,
      )
    : worksheet.exactly(
        `${label} in square inches`,
        squareInches(area),
        "in2",
        [given],
        "cm2 x 100 / 645.16",
        `${value} x 100 / 645.16`,
      );
}

function writeLimit(worksheet: Worksheet, section: Step, percent: number, cite: Citation): Step {
  const share = worksheet.state(`part of the section that may be filled, ${String(percent)} %`, percent / 100, cite);
  return worksheet.multiply(`${String(percent)} % of the section`, [section, share], "in2", cite);
}

function sentenceFor({ kind }: SpaceSection, { conductors, together }: Shares, holds: boolean): string {
  const filled =
    kind === "enclosure"
      ? `Conductors fill ${conductors} of the section and ${together} with splices and taps; 40 % and 75 % are allowed`
      : `Conductors with splices and taps fill ${together} of the section; 75 % is allowed`;
  return `${filled}${holds ? "" : ", so there is too little room"}.`;
}

function requiredText({ kind }: SpaceSection): string {
  return kind === "enclosure" ? "<= 40 % conductors, <= 75 % with splices" : "<= 75 % with splices";
}

/** How much of the section is filled, for people: "38.4 %". */
interface Shares {
  readonly conductors: string;
  readonly together: string;
}

/** One decimal, to the nearest; upward where the nearest would hide that the limit is passed. */
function percentText(part: Exact, whole: Exact, limitPercent: number): string {
  const percent = divide(multiply(part, exactOf(100)), whole);
  const tenths = multiply(percent, exactOf(10));
  const nearest = (tenths.numerator * 2n + tenths.denominator) / (tenths.denominator * 2n);
  const hides = compareExact(percent, exactOf(limitPercent)) > 0 && Number(nearest) / 10 <= limitPercent;
  return `${String(Number(hides ? nearest + 1n : nearest) / 10)} %`;
}

function clauseOf({ kind }: SpaceSection, { clauses }: Edition): Citation {
  return kind === "enclosure" ? clauses.enclosureFill : clauses.wirewayFill;
}

function labelDuty(cite: Citation): Duty {
  return {
    duty: "label-upstream-disconnect",
    sentence:
      "Put a warning label on the enclosure that names the nearest disconnect ahead of the conductors fed from elsewhere.",
    cite,
  };
}
