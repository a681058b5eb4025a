import { amperesText, isBuildingWire, smallestSizeCarrying, temperatureColumn } from "../../core/conductor-ampacity.js";
import type { Edition } from "../../core/edition.js";
import type { CheckFinding, Step } from "../../core/finding.js";
import type { Joint } from "../../core/joint.js";
import { type AskedFact, isAsked, writeLoad } from "../../core/joint-load.js";
import type { Bound } from "../../core/rating-source.js";
import { asking, type JointSubject, notApplicable, type Rule, settled } from "../../core/rule.js";
import {
  type ConductorLimit,
  carriedA,
  carriedText,
  columnText,
  conductorLimit,
  decideLimit,
  governingRating,
  limitAt,
  refuseInsulation,
  sizeOutsideTable,
  writeAmpacity,
  writeKnownRatings,
  writeLimit,
} from "../../core/termination-limit.js";
import { Worksheet } from "../../core/worksheet.js";

const ID = "terminal-temperature";

/**
 * Does the conductor carry its load at the temperature that the lowest rated part of the joint stands?
 *
 * NFPA 70 110.14(C) (2017, 2020, 2023), in our words: the ampacity is read in the temperature column of the weakest
 * of insulation, connector and terminal, never in a higher one because a single part stands more. 215.2(A)(1): the
 * load counts its continuous part at 125 %. Amperes; conductors in parallel count together; equal is allowed.
 * Worked: 250 kcmil aluminum through a splice marked AL7CU: 75 C, 205 A; a load of 218 A is refused although the 90 C
 * column says 230 A.
 * In a tap the load given is that of the conductors that leave; it also passes through the one that runs on, which must
 * carry at least as much. Leads of listed equipment are not judged
 * by this table, nor is fixture wire joined to building wire. A bare conductor takes the lowest rating of the insulated
 * ones beside it (310.15(D); 310.15(B)(4) in 2017). A neutral whose load is not given is held to the device ahead, which
 * no load of the circuit exceeds (220.61).
 * Silent: correction for the surroundings and adjustment for bundling belong to the run, not to the joint.
 */
export const terminalTemperature: Rule = {
  id: ID,
  title: "Ampacity at the temperature of the termination",
  clauses: [
    "lowestTemperature",
    "terminalsTo100A",
    "terminalsOver100A",
    "separateConnectors",
    "feederLoad",
    "temperatureMark",
  ],
  needs: [
    "joint/circuit/loadA",
    "joint/equipment/terminalTemperature",
    "joint/circuit/endTerminalTemperature",
    "connector/temperature",
    "connector/metalMarking",
    "joint/conductors/0/insulation",
    "joint/place/location",
  ],
  cannotSee:
    "surroundings above 30 C and more than three current-carrying conductors together, which lower the ampacity of the run",
  check(subject, edition) {
    const { joint } = subject;
    if (joint.role !== "phase" && joint.role !== "neutral")
      return notApplicable(ID, "a grounding or bonding conductor carries no load current");
    const judged = judgedGroups(joint);
    if (judged === "only-leads") return notApplicable(ID, "leads of listed equipment are sized by its listing");
    const worksheet = new Worksheet();
    const cite = edition.clauses.lowestTemperature;
    if (judged === "only-fixture-wire")
      return asking(
        ID,
        worksheet,
        "joint/conductors/0/insulation",
        "Only fixture wire meets here; what it may carry (Article 402) is not answered, so the joint is not judged.",
        { cite, required: "ampacity for the load" },
      );
    if (joint.function === "tap" && judged.every((group) => joint.conductors[group]?.duty === "run"))
      return asking(
        ID,
        worksheet,
        "joint/conductors/0/duty",
        "Every conductor of the tap is said to run through, so which one leaves is not known.",
        {
          cite,
          required: "the conductor that leaves the tap",
        },
      );
    const limits: ConductorLimit[] = [];
    for (const group of judged) {
      const limit = conductorLimit(subject, group, edition);
      if (limit !== undefined) limits.push(limit);
    }
    const unfit = limits.find((limit) => limit.unfit !== undefined);
    if (unfit !== undefined) return refuseInsulation(ID, worksheet, subject, unfit, edition);
    const load = writeLoad(worksheet, joint.circuit, edition);
    if (isAsked(load)) {
      if (joint.role === "neutral" && isWithoutLoad(joint)) {
        const bound = deviceBound(joint, limits, worksheet, edition);
        if (bound !== undefined) return settle(subject, worksheet, limits, bound, "low", edition);
      }
      return asking(ID, worksheet, load.path, load.because, { cite, required: "ampacity for the load" });
    }
    return judge(subject, worksheet, limits, load, edition);
  },
};

/** Indexes of the groups that carry the load given, or why there is none. */
function judgedGroups(joint: Joint): readonly number[] | "only-leads" | "only-fixture-wire" {
  const groups: number[] = [];
  joint.conductors.forEach((conductor, group) => {
    if (isBuildingWire(conductor)) groups.push(group);
  });
  if (groups.length > 0) return groups;
  return joint.conductors.some(({ insulation }) => insulation === "fixture-wire") ? "only-fixture-wire" : "only-leads";
}

/** The device's rating as the load of a neutral, where every conductor carries even that; else its load must be asked. */
function deviceBound(
  { circuit }: Joint,
  limits: readonly ConductorLimit[],
  worksheet: Worksheet,
  edition: Edition,
): Step | undefined {
  const protection = circuit?.protection;
  if (protection?.kind !== "device") return undefined;
  const { ratingA } = protection;
  // A size outside the table carries nothing that is known.
  const carried = limits.every((limit) => decideLimit(limit, edition, (amperes) => amperes >= ratingA) === "pass");
  if (!carried) return undefined;
  return worksheet.given(
    "load of the neutral: at most the rating of the device ahead",
    ratingA,
    "joint/circuit/protection/ratingA",
    "A",
  );
}

/** Of a load that is asked for: not even a part of it is given. */
function isWithoutLoad({ circuit }: Joint): boolean {
  return circuit?.continuousLoadA === undefined && circuit?.nonContinuousLoadA === undefined;
}

/** A failure of any conductor decides; then a missing fact; only then do all pass. */
function judge(
  subject: JointSubject,
  worksheet: Worksheet,
  limits: readonly ConductorLimit[],
  load: Step,
  edition: Edition,
): CheckFinding {
  const neededA = typeof load.value === "number" ? load.value : Number.NaN;
  let asked: { readonly limit: ConductorLimit; readonly fact: AskedFact } | undefined;
  for (const limit of limits) {
    const decision =
      limit.outsideTable === undefined
        ? decideLimit(limit, edition, (amperes) => amperes >= neededA)
        : sizeOutsideTable(limit);
    if (decision === "fail") return settle(subject, worksheet, [limit], load, "high", edition);
    if (decision !== "pass") asked ??= { limit, fact: decision };
  }
  return asked === undefined
    ? settle(subject, worksheet, limits, load, "low", edition)
    : ask(subject, worksheet, asked.limit, asked.fact, neededA, edition);
}

function ask(
  subject: JointSubject,
  worksheet: Worksheet,
  limit: ConductorLimit,
  fact: AskedFact,
  neededA: number,
  edition: Edition,
): CheckFinding {
  writeKnownRatings(worksheet, subject, limit);
  return asking(ID, worksheet, fact.path, fact.because, {
    cite: edition.clauses.lowestTemperature,
    required: `${amperesText(neededA)} for the load`,
    offered:
      limit.outsideTable === undefined ? `${amperesText(limit.lowA)} to ${amperesText(limit.highA)}` : "not known",
  });
}

function settle(
  subject: JointSubject,
  worksheet: Worksheet,
  limits: readonly ConductorLimit[],
  load: Step,
  bound: Bound,
  edition: Edition,
): CheckFinding {
  const { lowestTemperature } = edition.clauses;
  const compared: Step[] = [];
  let tightest: ConductorLimit | undefined;
  let holds = true;
  for (const limit of limits) {
    const limitStep = writeLimit(worksheet, subject, limit, bound, edition);
    const ampacity = writeAmpacity(worksheet, limit, bound, limitStep, edition);
    const carries = worksheet.compare("the ampacity carries the load", ampacity, ">=", load, lowestTemperature);
    holds &&= carries;
    compared.push(worksheet.last);
    if (tightest === undefined || carriedA(limit, bound) < carriedA(tightest, bound)) tightest = limit;
  }
  if (tightest === undefined) throw new Error("no conductor was judged");
  if (compared.length > 1)
    worksheet.conclude(
      "every conductor carries the load",
      holds ? "pass" : "fail",
      compared,
      "the smallest conductor decides",
      lowestTemperature,
    );
  const neededA = typeof load.value === "number" ? load.value : Number.NaN;
  const column = columnText(tightest, bound);
  return settled(ID, worksheet, {
    sentence: `${carriedText(tightest, bound)}, ${holds ? "enough for" : "less than"} the load of ${amperesText(neededA)}.`,
    cite: governingRating(tightest, bound)?.cite ?? lowestTemperature,
    required: `${amperesText(neededA)} at ${column}`,
    offered: `${amperesText(carriedA(tightest, bound))} at ${column}`,
    fix: holds ? "" : fixFor(tightest, limitAt(tightest, bound), neededA, edition),
  });
}

/** The smallest size that serves, and parts of a higher rating where those alone would do. */
function fixFor(
  { conductor, sets, sources }: ConductorLimit,
  limitC: number,
  neededA: number,
  edition: Edition,
): string {
  const column = temperatureColumn(limitC);
  if (column === undefined) return "parts rated 60 C or more";
  const size = smallestSizeCarrying(edition, conductor.metal, column, sets, neededA) ?? "more conductors in parallel";
  const insulated = sources.every((source) => source.part !== "insulation" || source.highC >= 75);
  const at75 = smallestSizeCarrying(edition, conductor.metal, 75, sets, neededA);
  return column === 60 && insulated && at75 !== undefined
    ? `${size}; or terminals and connector rated 75 C with ${at75}`
    : size;
}
