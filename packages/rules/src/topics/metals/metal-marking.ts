import type { ConductorGroup, ConductorMetal } from "../../core/conductor.js";
import { conductorPath } from "../../core/conductor-path.js";
import { conductorWords, listWords, metalWords } from "../../core/conductor-words.js";
import type { Edition } from "../../core/edition.js";
import type { CheckFinding } from "../../core/finding.js";
import type { Joint } from "../../core/joint.js";
import { DEVICE_MARK, readMarking } from "../../core/marked-metals.js";
import { asking, type JointSubject, notApplicable, type Rule, settledFrom } from "../../core/rule.js";
import { Worksheet } from "../../core/worksheet.js";
import { isWiringDevice } from "./wiring-device.js";

const ID = "metal-marking";
const DEVICE_MARKS: readonly string[] = Object.freeze([DEVICE_MARK]);
const DEVICE_METALS: readonly string[] = Object.freeze(["copper", "copper-clad-aluminum"]);
/** 404.14(C), 406.3(C): the largest device the mark is for. */
const DEVICE_LIMIT_A = 20;
const DEVICE_LIMIT_TEXT = "a circuit of 20 A or less";

/**
 * Is the connector marked for the metals of the conductors?
 *
 * NFPA 70 110.14 and 110.14(A) (2017, 2020, 2023): terminals and splicing devices are identified for the metal of the
 * conductor. UL 486A-486B marking says which mark stands for which metals; a part without one is for copper only.
 * 404.14(C) and 406.3(C) (404.14(D) and 406.3(D) in 2023): a 15 or 20 A wiring device on aluminum is marked CO/ALR, and no
 * other mark will do; in 2023 one without that mark takes copper and copper-clad aluminum. Our words: every
 * metal of the joint is among the metals of the mark.
 * Worked: two 10 AWG aluminum on a terminal marked CU: aluminum is not among copper, so it is refused. AL9CU takes both.
 * Silent: a part whose marking was not looked at has no default, so it is asked about; so is copper-clad aluminum on a
 * wiring device of 15 or 20 A without a mark before 2023, and the circuit of a device whose mark is another. Larger devices
 * take aluminum by the general marks, and without one copper only.
 */
export const metalMarking: Rule = {
  id: ID,
  title: "Metal marking of the connector",
  clauses: ["unlikeMetals", "terminals", "deviceAluminum", "listedConnectors"],
  needs: [
    "joint/conductors/0/metal",
    "connector/metalMarking",
    "connector/family",
    "joint/equipment/kind",
    "joint/circuit/protection",
  ],
  cannotSee: "a mark worn off or read from another part",
  check(subject, edition) {
    const { joint, connector, origin } = subject;
    if (joint.conductors.length === 0) return notApplicable(ID, "the joint names no conductor");
    const worksheet = new Worksheet();
    const path = `${origin}/metalMarking`;
    const device = isWiringDevice(subject);
    const text = { cite: edition.clauses.terminals, required: requiredText(subject), offered: offeredText(subject) };
    const reading = readMarking(connector, path, device, edition, worksheet);
    if (reading.kind === "not-known") return asking(ID, worksheet, path, reading.because, text);
    if (device && joint.conductors.every(({ metal }) => reading.metals.includes(metal))) {
      const decided = onDevice(subject, edition, worksheet);
      if (decided !== undefined) return decided;
    }
    let unlisted = false;
    for (let group = 0; group < joint.conductors.length; group += 1) {
      const conductor = joint.conductors[group];
      if (conductor === undefined || isRepeated(joint.conductors, group)) continue;
      if (device && conductor.metal === "copper-clad-aluminum" && connector.metalMarking === "unmarked") {
        const small = isSmallDevice(joint, edition, worksheet);
        if (small !== false) {
          if (small === true && edition.unmarkedDeviceTakesCopperClad) writeCopperClad(group, edition, worksheet);
          else unlisted = true;
          continue;
        }
      }
      const given = worksheet.given("metal of the conductor", conductor.metal, conductorPath(group, "metal"));
      if (!worksheet.compare("the mark names the metal of the conductor", given, "in", reading.step, text.cite))
        return settledFrom(ID, worksheet, text, {
          sentence: `The connector ${reading.words}, so it is for ${listWords(reading.metals.map(metalWords))} only; ${conductorWords(conductor)} may not be joined with it.`,
          cite: connector.metalMarking === "unmarked" ? edition.clauses.listedConnectors : text.cite,
          fix: fixFor(conductor.metal),
        });
    }
    if (unlisted)
      return asking(
        ID,
        worksheet,
        edition.unmarkedDeviceTakesCopperClad ? "joint/circuit/protection" : path,
        "Whether this wiring device without a mark takes copper-clad aluminum is not known.",
        text,
      );
    return settledFrom(ID, worksheet, text, {
      sentence: `The connector ${reading.words}, which covers ${metalsWords(subject)}.`,
    });
  },
};

/** Whether the device is of 15 or 20 A, by the circuit it is on; undefined where that is not given. */
function isSmallDevice({ circuit }: Joint, edition: Edition, worksheet: Worksheet): boolean | undefined {
  const protection = circuit?.protection;
  if (protection?.kind !== "device") return undefined;
  const cite = edition.clauses.deviceAluminum;
  const rating = worksheet.given(
    "rating of the circuit's device",
    protection.ratingA,
    "joint/circuit/protection/ratingA",
    "A",
  );
  const limit = worksheet.state("largest wiring device that this is said of", DEVICE_LIMIT_A, cite, "A");
  return worksheet.compare("the wiring device is of 15 or 20 A", rating, "<=", limit, cite);
}

/** Such a device without a mark takes this conductor; the comparison that it is one stands before. */
function writeCopperClad(group: number, edition: Edition, worksheet: Worksheet): void {
  const cite = edition.clauses.deviceAluminum;
  const taken = worksheet.state("metals of such a device without the mark", DEVICE_METALS, cite, undefined, [
    worksheet.last,
  ]);
  const given = worksheet.given("metal of the conductor", "copper-clad-aluminum", conductorPath(group, "metal"));
  worksheet.compare("such a device takes the metal of the conductor", given, "in", taken, cite);
}

/**
 * A device of 15 or 20 A takes aluminum under the mark CO/ALR and no other, and that mark is for no larger device. The
 * device is rated for the circuit it is on, so the circuit's own device says which of the two it is.
 * @returns a refusal or a question; undefined where the device stands in no way.
 */
function onDevice(subject: JointSubject, edition: Edition, worksheet: Worksheet): CheckFinding | undefined {
  const { joint, connector, origin } = subject;
  const { metalMarking = "" } = connector;
  const marked = metalMarking === DEVICE_MARK;
  const aluminum = joint.conductors.some(({ metal }) => metal === "aluminum");
  const clad = joint.conductors.some(({ metal }) => metal === "copper-clad-aluminum");
  if (!(aluminum || (clad && marked))) return undefined;
  const cite = edition.clauses.deviceAluminum;
  const protection = joint.circuit?.protection;
  const text = { cite, required: marked ? DEVICE_LIMIT_TEXT : DEVICE_MARK, offered: offeredText(subject) };
  if (protection?.kind !== "device")
    return marked
      ? undefined
      : asking(
          ID,
          worksheet,
          "joint/circuit/protection",
          `A wiring device of 15 or 20 A on aluminum must be marked ${DEVICE_MARK}; the rating of its circuit is not given.`,
          text,
        );
  const marking = worksheet.given("marking of the wiring device", metalMarking, `${origin}/metalMarking`);
  const rating = worksheet.given(
    "rating of the circuit's device",
    protection.ratingA,
    "joint/circuit/protection/ratingA",
    "A",
  );
  const limit = worksheet.state("largest wiring device the mark is for", DEVICE_LIMIT_A, cite, "A", [marking]);
  const small = worksheet.compare("the wiring device is of 15 or 20 A", rating, "<=", limit, cite);
  if (marked)
    return small
      ? undefined
      : settledFrom(ID, worksheet, text, {
          sentence: `The mark ${DEVICE_MARK} is for wiring devices of 15 and 20 A; this circuit is of ${protection.ratingA} A.`,
          offered: `${DEVICE_MARK} on a circuit of ${protection.ratingA} A`,
          fix: "a device rated for the circuit and marked for aluminum, or a copper pigtail through a splice listed for both",
        });
  if (protection.ratingA > DEVICE_LIMIT_A) return undefined;
  const asked = worksheet.state("mark of such a device on aluminum", DEVICE_MARKS, cite, undefined, [rating]);
  worksheet.compare("the device bears the mark", marking, "in", asked, cite);
  return settledFrom(ID, worksheet, text, {
    sentence: `A wiring device of 15 or 20 A on aluminum must be marked ${DEVICE_MARK}; this one is marked ${text.offered}.`,
    fix: `a device marked ${DEVICE_MARK}, or a copper pigtail through a splice listed for aluminum and copper`,
  });
}

function isRepeated(conductors: readonly ConductorGroup[], group: number): boolean {
  for (let earlier = 0; earlier < group; earlier += 1)
    if (conductors[earlier]?.metal === conductors[group]?.metal) return true;
  return false;
}

/** The metals of the joint, each once, in words. */
function metalsWords({ joint }: JointSubject): string {
  const [only] = joint.conductors;
  if (only !== undefined && joint.conductors.length === 1) return metalWords(only.metal);
  const words = joint.conductors.map(({ metal }) => metalWords(metal));
  return listWords(words.filter((word, at) => words.indexOf(word) === at));
}

function requiredText(subject: JointSubject): string {
  return `marked for ${metalsWords(subject)}`;
}

function offeredText({ connector }: JointSubject): string {
  return connector.metalMarking === "unmarked" ? "no metal marking" : (connector.metalMarking ?? "not known");
}

function fixFor(metal: ConductorMetal): string {
  return metal === "copper"
    ? "a connector marked for copper"
    : `a connector marked for aluminum and copper (AL-CU), or a splice listed for both to a copper conductor`;
}
