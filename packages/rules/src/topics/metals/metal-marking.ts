import type { Citation } from "../../core/citation.js";
import type { ConductorGroup, ConductorMetal } from "../../core/conductor.js";
import { conductorWords, listWords, metalWords } from "../../core/conductor-words.js";
import type { Edition } from "../../core/edition.js";
import type { Step } from "../../core/finding.js";
import { DEVICE_MARK, readMarking } from "../../core/marked-metals.js";
import { asking, type JointSubject, notApplicable, type Rule, settled } from "../../core/rule.js";
import { Worksheet } from "../../core/worksheet.js";

const ID = "metal-marking";
const DEVICE_MARKS: readonly string[] = Object.freeze([DEVICE_MARK]);

/**
 * Is the connector marked for the metals of the conductors?
 *
 * NFPA 70 110.14 and 110.14(A) (2017, 2020, 2023): terminals and splicing devices are identified for the metal of the
 * conductor. UL 486A-486B marking says which mark stands for which metals; a part without one is for copper only.
 * 404.14(C) and 406.3(C): a 15 or 20 A wiring device on aluminum is marked CO/ALR, and no other mark will do. Our words: every
 * metal of the joint is among the metals of the mark.
 * Worked: two 10 AWG aluminum on a terminal marked CU: aluminum is not among copper, so it is refused. AL9CU takes both.
 * Silent: a part whose marking was not looked at has no default, so it is asked about; so is copper-clad aluminum on a
 * wiring device without a mark. Larger wiring devices are described as terminals of equipment.
 */
export const metalMarking: Rule = {
  id: ID,
  title: "Metal marking of the connector",
  clauses: ["unlikeMetals", "terminals", "deviceAluminum", "listedConnectors"],
  needs: ["joint/conductors/0/metal", "connector/metalMarking", "connector/family"],
  cannotSee: "a mark worn off or read from another part",
  check(subject, edition) {
    const { joint, connector, origin } = subject;
    if (joint.conductors.length === 0) return notApplicable(ID, "the joint names no conductor");
    const worksheet = new Worksheet();
    const path = `${origin}/metalMarking`;
    const device = connector.family === "wiring-device-terminal";
    const cite = edition.clauses.terminals;
    const required = requiredText(subject);
    const reading = readMarking(connector, path, edition, worksheet);
    if (reading.kind === "not-known")
      return asking(ID, worksheet, path, reading.because, { cite, required, offered: offeredText(subject) });

    let held: Step | undefined;
    for (let group = 0; group < joint.conductors.length; group += 1) {
      const conductor = joint.conductors[group];
      if (conductor === undefined || isRepeated(joint.conductors, group)) continue;
      const { metal } = conductor;
      const given = worksheet.given("metal of the conductor", metal, `joint/conductors/${group}/metal`);
      if (device && metal === "aluminum") {
        if (!isMarkedForDevice(worksheet, subject, edition))
          return settled(ID, worksheet, {
            sentence: `A wiring device on aluminum must be marked ${DEVICE_MARK}; this one ${reading.words}.`,
            cite: edition.clauses.deviceAluminum,
            required: DEVICE_MARK,
            offered: offeredText(subject),
            fix: `a device marked ${DEVICE_MARK}, or a copper pigtail through a splice listed for aluminum and copper`,
          });
      } else if (device && metal === "copper-clad-aluminum" && connector.metalMarking === "unmarked")
        return asking(
          ID,
          worksheet,
          path,
          "Whether this wiring device without a mark takes copper-clad aluminum is not known.",
          {
            cite,
            required,
            offered: offeredText(subject),
          },
        );
      if (!worksheet.compare("the mark names the metal of the conductor", given, "in", reading.step, cite))
        return settled(ID, worksheet, {
          sentence: `The connector ${reading.words}, so it is for ${listWords(reading.metals.map(metalWords))} only; ${conductorWords(conductor)} may not be joined with it.`,
          cite: citeFor(subject, edition),
          required,
          offered: offeredText(subject),
          fix: fixFor(metal),
        });
      held = worksheet.last;
    }
    if (held === undefined) return notApplicable(ID, "the joint names no conductor");
    return settled(ID, worksheet, {
      sentence: `The connector ${reading.words}, which covers ${listWords(metalsOf(subject).map(metalWords))}.`,
      cite,
      required,
      offered: offeredText(subject),
    });
  },
};

function isMarkedForDevice(worksheet: Worksheet, { connector, origin }: JointSubject, { clauses }: Edition): boolean {
  const marking = worksheet.given(
    "marking of the wiring device",
    connector.metalMarking ?? "not known",
    `${origin}/metalMarking`,
  );
  const asked = worksheet.state("mark of a wiring device that takes aluminum", DEVICE_MARKS, clauses.deviceAluminum);
  return worksheet.compare("the device bears the mark", marking, "in", asked, clauses.deviceAluminum);
}

function isRepeated(conductors: readonly ConductorGroup[], group: number): boolean {
  for (let earlier = 0; earlier < group; earlier += 1)
    if (conductors[earlier]?.metal === conductors[group]?.metal) return true;
  return false;
}

function metalsOf({ joint }: JointSubject): ConductorMetal[] {
  return joint.conductors.filter((_, group) => !isRepeated(joint.conductors, group)).map(({ metal }) => metal);
}

function citeFor({ connector }: JointSubject, { clauses }: Edition): Citation {
  return connector.metalMarking === "unmarked" ? clauses.listedConnectors : clauses.terminals;
}

function requiredText(subject: JointSubject): string {
  return `marked for ${listWords(metalsOf(subject).map(metalWords))}`;
}

function offeredText({ connector }: JointSubject): string {
  return connector.metalMarking === "unmarked" ? "no metal marking" : (connector.metalMarking ?? "not known");
}

function fixFor(metal: ConductorMetal): string {
  return metal === "copper"
    ? "a connector marked for copper"
    : `a connector marked for aluminum and copper (AL-CU), or a splice listed for both to a copper conductor`;
}
