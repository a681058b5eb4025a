import type { Citation } from "../../core/citation.js";
import type { ConductorGroup } from "../../core/conductor.js";
import { conductorPath } from "../../core/conductor-path.js";
import type { Edition } from "../../core/edition.js";
import { groundByDevice, groundForPhases, type LeastGround, type PhasesOfGround } from "../../core/equipment-ground.js";
import type { CheckFinding, Step } from "../../core/finding.js";
import { awgOrKcmil, metalMark, writeArea } from "../../core/grounding-area.js";
import type { Joint, Upsizing } from "../../core/joint.js";
import { asking, notApplicable, type Rule, settled } from "../../core/rule.js";
import { Worksheet } from "../../core/worksheet.js";

const ID = "equipment-ground-size";

/**
 * Is the equipment ground large enough for the device ahead of it, and for phases that were raised?
 *
 * NFPA 70 250.122 (2017, 2020, 2023), in our words: (A) the least size by the rating of the device, in its own column
 * for aluminum and copper-clad aluminum, and never larger than the phase conductors; (B) where the phases were raised
 * above the size that would have been enough, the ground is raised in proportion to their areas in kcmil; (F) with
 * parallel sets in separate raceways there is a ground of the full size in each. For a tap to a feeder the feeder's
 * device counts.
 * Worked: 225 A asks for 4 AWG copper, 41.74 kcmil; phases raised from 300 to 500 kcmil ask for
 * 41.74 x 500 / 300 = 69.57 kcmil, so 1 AWG.
 * Silent: raising that nobody stated; the phases limit the ground only where their installed size is stated, and an
 * aluminum ground with copper phases not at all, because at their size it would conduct less than they do.
 */
export const equipmentGroundSize: Rule = {
  id: ID,
  title: "Size of the equipment ground",
  clauses: ["equipmentGroundSize", "equipmentGroundUpsizing", "equipmentGroundParallel", "conductorAreas"],
  needs: ["joint/circuit/protection", "joint/upsizing", "joint/conductors/0/size", "joint/conductors/0/metal"],
  cannotSee: "phase conductors that were raised without being stated here",
  check({ joint }, edition) {
    if (joint.role !== "equipment-ground") return notApplicable(ID, "the conductor is not an equipment ground");
    return groundFinding(ID, GROUND_WORDS, joint, edition);
  },
};

/** How the conductor, and what is ahead of it, are called in sentences. */
export interface GroundWords {
  readonly one: string;
  readonly ahead: string;
}

const GROUND_WORDS: GroundWords = Object.freeze({ one: "ground", ahead: "the ground" });

/**
 * The finding on a conductor that is sized as an equipment ground.
 * @param sizing the clause that sends it to 250.122, where it is no equipment ground.
 */
export function groundFinding(
  rule: string,
  words: GroundWords,
  joint: Joint,
  edition: Edition,
  sizing?: Citation,
): CheckFinding {
  const worksheet = new Worksheet();
  const device = writeDevice(joint, worksheet, words);
  if (device === undefined)
    return asking(
      rule,
      worksheet,
      "joint/circuit/protection",
      `The rating of the device ahead of ${words.ahead} is not given, and its size goes by it.`,
      {
        cite: sizing ?? edition.clauses.equipmentGroundSize,
        required: "the size for the device ahead",
        offered: offeredText(joint.conductors),
      },
    );
  const { upsizing } = joint;
  const problem = upsizing === undefined ? undefined : upsizingProblem(upsizing);
  if (problem !== undefined)
    return asking(rule, worksheet, problem.path, problem.because, {
      cite: edition.clauses.equipmentGroundUpsizing,
      required: `a ${words.one} raised as the phases were`,
      offered: offeredText(joint.conductors),
    });
  return judge({ rule, words, joint, edition, sizing }, worksheet, device);
}

interface SizedGround {
  readonly rule: string;
  readonly words: GroundWords;
  readonly joint: Joint;
  readonly edition: Edition;
  readonly sizing: Citation | undefined;
}

function judge({ rule, words, joint, edition, sizing }: SizedGround, worksheet: Worksheet, device: Step): CheckFinding {
  const cite =
    joint.upsizing === undefined
      ? (sizing ?? edition.clauses.equipmentGroundSize)
      : edition.clauses.equipmentGroundUpsizing;
  const compared: Step[] = [];
  let required: LeastGround | undefined;
  let asked: string | undefined;
  for (const [group, conductor] of joint.conductors.entries()) {
    const size = awgOrKcmil(conductor.size);
    if (size === undefined) {
      asked ??= conductorPath(group, "size");
      continue;
    }
    const needed = writeRequired(joint, worksheet, device, conductor, group, words, edition);
    if (typeof needed === "string")
      return asking(rule, worksheet, "joint/circuit/protection", `${needed}.`, {
        cite,
        required: "the size for the device ahead",
        offered: offeredText(joint.conductors),
      });
    required = needed;
    const given = worksheet.given(`size of the ${words.one}`, size.text, conductorPath(group, "size"));
    const area = writeArea(worksheet, size, [given], edition);
    if (!worksheet.compare(`the ${words.one} is large enough`, area, ">=", needed.area, cite))
      return settled(rule, worksheet, {
        sentence: `The ${words.one} is ${size.text} ${metalMark(conductor.metal)}, smaller than the ${needed.text} asked for: ${needed.because}.`,
        cite,
        required: needed.text,
        offered: `${size.text} ${metalMark(conductor.metal)}`,
        fix: `a ${words.one} of ${needed.text} or larger`,
      });
    compared.push(worksheet.last);
  }
  if (asked !== undefined || required === undefined)
    return asking(
      rule,
      worksheet,
      asked ?? "joint/conductors/0/size",
      `The sizes of equipment grounds are printed in AWG and kcmil; a size of another system cannot be set against them.`,
      {
        cite,
        required: required?.text ?? "the size for the device ahead",
        offered: offeredText(joint.conductors),
      },
    );
  if (compared.length > 1)
    worksheet.conclude(
      `every ${words.one} is large enough`,
      "pass",
      compared,
      "each of them reaches the size asked for",
      cite,
    );
  const each = setsOf(joint) > 1 ? " Parallel sets in separate raceways have one of this size in each." : "";
  return settled(rule, worksheet, {
    sentence: `The ${words.one} is ${offeredText(joint.conductors)}; asked for is ${required.text}: ${required.because}.${each}`,
    cite,
    required: required.text,
    offered: offeredText(joint.conductors),
  });
}

/** The rating that the table is entered with, as a step. */
function writeDevice({ circuit }: Joint, worksheet: Worksheet, { ahead }: GroundWords): Step | undefined {
  const protection = circuit?.protection;
  if (protection?.kind === "device")
    return worksheet.given(`device ahead of ${ahead}`, protection.ratingA, "joint/circuit/protection/ratingA", "A");
  // Behind a transformer no device of the primary sizes the ground; that is a jumper on the supply side.
  if (protection?.kind === "feeder-tap" && protection.through === undefined)
    return worksheet.given(
      `device of the feeder ahead of ${ahead}`,
      protection.feederDeviceA,
      "joint/circuit/protection/feederDeviceA",
      "A",
    );
  return undefined;
}

function upsizingProblem({
  minimum,
  installed,
}: Upsizing): { readonly path: string; readonly because: string } | undefined {
  if (minimum.metal !== installed.metal)
    return {
      path: "joint/upsizing/minimum",
      because:
        "The least phase size is given in another metal than the installed one; their areas say nothing about each other.",
    };
  if (awgOrKcmil(minimum.size) === undefined)
    return {
      path: "joint/upsizing/minimum",
      because: "The least phase size must be given in AWG or kcmil for its area to be compared.",
    };
  if (awgOrKcmil(installed.size) === undefined)
    return {
      path: "joint/upsizing/installed",
      because: "The installed phase size must be given in AWG or kcmil for its area to be compared.",
    };
  return undefined;
}

/** What one ground must at least be, or why the table gives nothing. */
function writeRequired(
  joint: Joint,
  worksheet: Worksheet,
  device: Step,
  { metal }: ConductorGroup,
  group: number,
  { one }: GroundWords,
  edition: Edition,
): LeastGround | string {
  const metalStep = worksheet.given(`metal of the ${one}`, metal, conductorPath(group, "metal"));
  const plain = groundByDevice(worksheet, device, metal, metalStep, edition);
  if ("refusal" in plain) return plain.detail;
  const { upsizing } = joint;
  if (upsizing === undefined) return plain;
  const sets = setsOf(joint);
  const phases: PhasesOfGround = {
    metal: upsizing.installed.metal,
    minimum: worksheet.given("least phase size", upsizing.minimum.size, "joint/upsizing/minimum/size"),
    installed: worksheet.given("installed phase size", upsizing.installed.size, "joint/upsizing/installed/size"),
    sets: sets === 1 ? undefined : worksheet.given("sets of phase conductors", sets, "joint/circuit/sets"),
  };
  return groundForPhases(worksheet, plain, phases, metal, edition);
}

function setsOf({ circuit }: Joint): number {
  return circuit?.sets ?? 1;
}

function offeredText(conductors: readonly ConductorGroup[]): string {
  return conductors.map(({ size, metal }) => `${size} ${metalMark(metal)}`).join(" and ");
}
