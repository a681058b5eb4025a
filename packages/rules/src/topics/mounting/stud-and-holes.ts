import type { HolePattern } from "../../core/connector.js";
import type { Edition } from "../../core/edition.js";
import type { CheckFinding, Step } from "../../core/finding.js";
import { inches, type Length } from "../../core/quantity.js";
import { asking, type JointSubject, notApplicable, type Rule, settled } from "../../core/rule.js";
import { Worksheet } from "../../core/worksheet.js";

const ID = "stud-and-holes";

/**
 * Does the connector fit what it is fixed to?
 *
 * NFPA 70 110.3(B) (2017, 2020, 2023), in our words: a lug is fixed as its listing and the equipment's instructions say. The holes of its tongue
 * are as many as the bolts of the pad, of the same bolt, and as far apart, in inches; a lug kit is one listed for the
 * frame of the equipment. A tongue is never drilled out. A splice or tap hangs free and is made with a part that does.
 * Worked: a tongue with one 3/8 in hole on two 1/2 in bolts at 1.75 in: 1 = 2 does not hold, so it is refused. 44.45 mm
 * is 1.75 in.
 * Silent: what is not known of the pad, the frame or the distance of the holes is asked for.
 */
export const studAndHoles: Rule = {
  id: ID,
  title: "Holes of the lug and bolts of the pad",
  clauses: ["instructions"],
  needs: ["connector/mounting", "joint/equipment/stud", "joint/equipment/frame", "joint/function"],
  cannotSee: "the length of the bolts, and room for the tongue on the pad",
  check(subject, edition) {
    const { joint, connector } = subject;
    const { mounting } = connector;
    if (mounting.kind === "free" || mounting.kind === "integral")
      return notApplicable(
        ID,
        mounting.kind === "free" ? "the connector hangs free" : "the connector comes fixed in its equipment",
      );
    if (joint.function !== "termination")
      return connector.family === "compression-lug-pair"
        ? notApplicable(ID, "the two lugs are bolted to each other, hole to hole")
        : cannotHang(subject, edition);
    return mounting.kind === "frame"
      ? onFrame(subject, mounting.frames, edition)
      : onPad(subject, mounting.pattern, edition);
  },
};

function cannotHang({ joint, connector, origin }: JointSubject, edition: Edition): CheckFinding {
  const cite = edition.clauses.instructions;
  const worksheet = new Worksheet();
  const kind = worksheet.given("how the connector is fixed", connector.mounting.kind, `${origin}/mounting/kind`);
  const made = worksheet.given("kind of joint", joint.function, "joint/function");
  worksheet.conclude("the connector can hang free", "fail", [kind, made], "it is made to be bolted to equipment", cite);
  return settled(ID, worksheet, {
    sentence: `The connector is made to be bolted to equipment; a ${joint.function} hangs free.`,
    cite,
    required: `a connector for a ${joint.function}`,
    offered: connector.mounting.kind === "frame" ? "a lug kit for equipment" : "a lug for a pad",
    fix: `a connector made for a ${joint.function}`,
  });
}

function onFrame({ joint, origin }: JointSubject, frames: readonly string[], edition: Edition): CheckFinding {
  const cite = edition.clauses.instructions;
  const worksheet = new Worksheet();
  const text = { cite, required: "a lug kit listed for the frame of the equipment", offered: frames.join(", ") };
  const listed = worksheet.given("frames the kit is listed for", frames, `${origin}/mounting/frames`);
  const frame = joint.equipment?.frame;
  if (frame === undefined)
    return asking(
      ID,
      worksheet,
      "joint/equipment/frame",
      "The lug kit is listed for certain frames; the frame of the equipment is not given.",
      text,
    );
  const given = worksheet.given("frame of the equipment", frame, "joint/equipment/frame");
  const holds = worksheet.compare("the kit is listed for the frame", given, "in", listed, cite);
  return settled(ID, worksheet, {
    sentence: holds
      ? `The lug kit is listed for frame ${frame}.`
      : `The lug kit is listed for ${text.offered}, not for frame ${frame}.`,
    cite,
    required: `listed for frame ${frame}`,
    offered: text.offered,
    fix: `a lug kit that the maker of the equipment lists for frame ${frame}`,
  });
}

function onPad({ joint, origin }: JointSubject, holes: HolePattern, edition: Edition): CheckFinding {
  const cite = edition.clauses.instructions;
  const worksheet = new Worksheet();
  const lug = `${origin}/mounting/pattern`;
  const pad = "joint/equipment/stud";
  const stud = joint.equipment?.stud;
  const offered = patternWords(holes, "hole");
  if (stud === undefined)
    return asking(ID, worksheet, pad, "The bolts of the pad where the lug is fixed are not given.", {
      cite,
      required: "holes that match the bolts of the pad",
      offered,
    });
  const required = patternWords(stud, "bolt");
  const refused = (difference: string): CheckFinding =>
    settled(ID, worksheet, {
      sentence: `The lug has ${offered}; the pad has ${required}: ${difference}.`,
      cite,
      required,
      offered,
      fix: `a lug with ${patternWords(stud, "hole")}; a tongue is never drilled out`,
    });

  const holeCount = worksheet.given("holes of the lug", holes.holes, `${lug}/holes`);
  const boltCount = worksheet.given("bolts of the pad", stud.holes, `${pad}/holes`);
  if (!worksheet.compare("as many holes as bolts", holeCount, "=", boltCount, cite))
    return refused("the number does not match");
  const lugBolt = worksheet.given("bolt the holes are for", holes.bolt, `${lug}/bolt`);
  const padBolt = worksheet.given("bolt of the pad", stud.bolt, `${pad}/bolt`);
  if (!worksheet.compare("the holes are for this bolt", lugBolt, "=", padBolt, cite))
    return refused("the bolt does not match the hole");
  if (holes.holes > 1) {
    if (holes.spacing === undefined)
      return asksForSpacing(worksheet, `${lug}/spacing`, "the holes of the lug", { cite, required, offered });
    if (stud.spacing === undefined)
      return asksForSpacing(worksheet, `${pad}/spacing`, "the bolts of the pad", { cite, required, offered });
    const apart = spacingStep(worksheet, "distance between the holes", holes.spacing, `${lug}/spacing`);
    const asked = spacingStep(worksheet, "distance between the bolts", stud.spacing, `${pad}/spacing`);
    if (!worksheet.compare("the holes are as far apart as the bolts", apart, "=", asked, cite))
      return refused("the distance does not match");
  }
  return settled(ID, worksheet, { sentence: `The lug has ${offered}, which match the pad.`, cite, required, offered });
}

function asksForSpacing(
  worksheet: Worksheet,
  path: string,
  between: string,
  text: { readonly cite: CheckFinding["cite"]; readonly required: string; readonly offered: string },
): CheckFinding {
  return asking(ID, worksheet, path, `How far ${between} are apart is not given.`, text);
}

const PER_INCH = {
  mm: { formula: "millimeters / 25.4", times: " / 25.4" },
  m: { formula: "meters x 1000 / 25.4", times: " x 1000 / 25.4" },
  ft: { formula: "feet x 12", times: " x 12" },
} as const;

function spacingStep(worksheet: Worksheet, label: string, length: Length, path: string): Step {
  const given = worksheet.given(label, length.value, path, length.unit);
  if (length.unit === "in") return given;
  const { formula, times } = PER_INCH[length.unit];
  return worksheet.exactly(`${label}, in inches`, inches(length), "in", [given], formula, `${length.value}${times}`);
}

/** "2 holes for 1/2 in bolts at 1.75 in", "1 bolt of 3/8 in". */
function patternWords({ holes, bolt, spacing }: HolePattern, thing: "hole" | "bolt"): string {
  const size = bolt.startsWith("M") ? bolt : `${bolt} in`;
  const number = `${holes} ${thing}${holes === 1 ? "" : "s"}`;
  const words = thing === "hole" ? `${number} for ${size} bolts` : `${number} of ${size}`;
  return spacing === undefined || holes < 2 ? words : `${words} at ${spacing.value} ${spacing.unit}`;
}
