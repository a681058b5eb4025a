import { COMMON_PRACTICE } from "../../core/citation.js";
import type { Connector } from "../../core/connector.js";
import type { Edition } from "../../core/edition.js";
import type { CheckFinding, Duty, Step } from "../../core/finding.js";
import type { PadMetal } from "../../core/joint.js";
import {
  asking,
  type CommonText,
  type JointSubject,
  NO_ADVICE,
  NO_CONDITIONS,
  notApplicable,
  type Rule,
  settledFrom,
} from "../../core/rule.js";
import { Worksheet } from "../../core/worksheet.js";
import { attack, lugBody, lugPlating, lugSurfaces, padSurfaces, type Surface } from "./contact-surface.js";

const ID = "lug-on-pad";
const PAD = "joint/equipment/padMetal";
const PAIR = "bare aluminum does not touch copper or silver";

/**
 * May the lug lie on the metal of its pad or bus?
 *
 * NFPA 70 110.14 (2017, 2020, 2023), in our words: unlike metals do not touch unless the part is identified for it, and
 * 110.3(B): a part is used as its instructions say. The text speaks of conductors in a connector; that a tongue on a bus is
 * held to the same is common practice, and so is what counts as kept apart (NEMA CC 1, from memory): tin or nickel on one of
 * the two faces. So bare aluminum does not lie on copper, bronze, brass or silver, whichever of them is the lug. A bimetal
 * lug lies with the pad's metal on the pad. No threshold, no units.
 * Worked: a bare copper lug on a bare aluminum bus: refused. The same lug, tin-plated: allowed, with the compound and the
 * washers that the equipment's instructions name. Copper on copper: allowed.
 * Silent: pad, plating and body are asked about only where they decide; a tin-plated lug passes on every pad. A word for metal
 * or plating that is not known here counts as not given. A lug kit is listed for its frame and is not judged.
 */
export const lugOnPad: Rule = {
  id: ID,
  title: "Metal of the lug and of the pad",
  clauses: ["unlikeMetals", "instructions"],
  needs: ["connector/mounting", "connector/bodyMetal", "connector/plating", PAD, `${PAD}/plating`, "joint/function"],
  cannotSee: "plating that was scraped or filed off, and which washers are fitted",
  check(subject, edition) {
    const { joint, connector } = subject;
    if (connector.mounting.kind !== "pad") return notApplicable(ID, "the connector is not bolted to a pad");
    if (joint.function !== "termination") return notApplicable(ID, "nothing is bolted to equipment in this joint");
    const worksheet = new Worksheet();
    const pad = joint.equipment?.padMetal;
    const facts = factSteps(subject, worksheet);
    if (lugBody(connector) === "bimetal") return bimetalFinding(subject, worksheet, facts, edition);

    const lugs = lugSurfaces(connector);
    const pads = padSurfaces(pad);
    let attacked = 0;
    for (const one of lugs) for (const other of pads) if (attack(one, other)) attacked += 1;
    const text: CommonText = {
      cite: edition.clauses.unlikeMetals,
      required: `${PAIR}: tin or nickel between them`,
      offered: `${lugWords(connector)} on ${padWords(pad)}`,
    };
    if (attacked > 0 && attacked < lugs.length * pads.length) {
      const { path, because } = openFact(subject, lugs);
      return asking(ID, worksheet, path, because, text);
    }
    if (attacked > 0) {
      worksheet.conclude(PAIR, "fail", facts, `${faceWords(lugs)} lies on ${faceWords(pads)}`, text.cite);
      return settledFrom(ID, worksheet, text, {
        sentence: `${capital(lugWords(connector))} lies on ${padWords(pad)}: bare aluminum and ${noble(lugs, pads)} eat each other where they touch.`,
        fix: "a lug plated with tin, with the compound and washers that the equipment's instructions name, or a bimetal plate between",
      });
    }
    worksheet.conclude(PAIR, "pass", facts, "no two faces that may touch are such a pair", text.cite);
    return settledFrom(ID, worksheet, text, {
      sentence: `${capital(lugWords(connector))} may lie on ${padWords(pad)}.`,
      conditions: conditionsFor(connector, pad, edition),
      advice: pad === undefined ? IF_ALUMINUM : NO_ADVICE,
    });
  },
};

const IF_ALUMINUM: readonly string[] = Object.freeze([
  "The metal of the pad is not given. If it is aluminum, use the compound and the spring (Belleville) washers that the equipment's instructions name.",
]);

/** Every fact that is given, also in a word that is not known here. */
function factSteps({ joint, connector, origin }: JointSubject, worksheet: Worksheet): Step[] {
  const { bodyMetal, plating } = connector;
  const pad = joint.equipment?.padMetal;
  const steps = [worksheet.given("how the connector is fixed", "pad", `${origin}/mounting/kind`)];
  if (bodyMetal !== undefined) steps.push(worksheet.given("metal of the lug", bodyMetal, `${origin}/bodyMetal`));
  if (plating !== undefined) steps.push(worksheet.given("plating of the lug", plating, `${origin}/plating`));
  if (pad === undefined) return steps;
  steps.push(worksheet.given("metal of the pad", pad.metal, `${PAD}/metal`));
  if (pad.plating !== undefined) steps.push(worksheet.given("plating of the pad", pad.plating, `${PAD}/plating`));
  return steps;
}

/** The first fact that is not known. One of them is open where some faces that may touch are such a pair and others not. */
function openFact(
  { joint, connector, origin }: JointSubject,
  lugs: readonly Surface[],
): { readonly path: string; readonly because: string } {
  const pad = joint.equipment?.padMetal;
  const lug = `The lug may show ${faceWords(lugs)}`;
  if (pad === undefined)
    return {
      path: PAD,
      because: `${lug}; whether that may lie on the pad hangs on the pad's metal, which is not given.`,
    };
  if (pad.plating === undefined)
    return {
      path: `${PAD}/plating`,
      because: `${lug}; whether that may lie on the ${pad.metal} pad hangs on its plating, which is not given.`,
    };
  const onPad = `whether the lug may lie on ${padWords(pad)} hangs on it.`;
  if (lugPlating(connector) === undefined)
    return { path: `${origin}/plating`, because: `The plating of the lug is not known; ${onPad}` };
  return { path: `${origin}/bodyMetal`, because: `The metal of the lug is not known; ${onPad}` };
}

/** A bimetal lug has a face for each metal; which one lies on the pad is seen on site. */
function bimetalFinding(
  { joint, connector }: JointSubject,
  worksheet: Worksheet,
  facts: readonly Step[],
  edition: Edition,
): CheckFinding {
  const pad = joint.equipment?.padMetal;
  const { unlikeMetals: cite, instructions } = edition.clauses;
  const side: Duty = {
    duty: "bimetal-side",
    sentence:
      pad === undefined
        ? "See that the tongue of the bimetal lug is of the same metal as the pad."
        : `See that the tongue of the bimetal lug is ${pad.metal}, as the pad is.`,
    cite: instructions,
  };
  worksheet.conclude(PAIR, "pass", facts, "the lug is made of both metals, one for the pad", cite);
  return settledFrom(
    ID,
    worksheet,
    { cite, required: "the pad's own metal on the pad", offered: `${lugWords(connector)} on ${padWords(pad)}` },
    {
      sentence: `${capital(lugWords(connector))} may lie on ${padWords(pad)} with the side that is made for it.`,
      conditions: [side, ...conditionsFor(connector, pad, edition)],
      advice: pad === undefined ? IF_ALUMINUM : NO_ADVICE,
    },
  );
}

function conditionsFor(connector: Connector, pad: PadMetal | undefined, { clauses }: Edition): readonly Duty[] {
  if (pad?.metal === "aluminum")
    return [
      {
        duty: "aluminum-pad",
        sentence:
          "On the aluminum pad use the compound, the flat and spring (Belleville) washers and the bolts that the equipment's instructions name; brush a bare face first, never a plated one.",
        cite: clauses.instructions,
      },
    ];
  const body = lugBody(connector);
  const plating = lugPlating(connector);
  if (body === "aluminum" && (plating === undefined || plating === "none")) return BARE_ALUMINUM_LUG;
  return pad?.metal === "steel" || (body === "steel" && (plating === undefined || plating === "none"))
    ? STEEL
    : NO_CONDITIONS;
}

const BARE_ALUMINUM_LUG: readonly Duty[] = Object.freeze([
  Object.freeze({
    duty: "bare-aluminum-lug",
    sentence: "Unless the tongue is plated, brush it bright and put on the compound that its instructions name.",
    cite: COMMON_PRACTICE,
  }),
]);
const STEEL: readonly Duty[] = Object.freeze([
  Object.freeze({
    duty: "steel-contact",
    sentence: "Take paint and scale off the steel where lug and pad touch, and protect the finished joint from rust.",
    cite: COMMON_PRACTICE,
  }),
]);

/** "a bare copper lug", "a tin-plated aluminum lug", "a lug of which metal and plating are not known". */
function lugWords(connector: Connector): string {
  const plating = lugPlating(connector);
  const metal = lugBody(connector) === undefined ? "" : ` ${(connector.bodyMetal ?? "").trim().toLowerCase()}`;
  if (plating === "none") return `a bare${metal} lug`;
  if (plating !== undefined) return `a ${plating}-plated${metal} lug`;
  return metal === "" ? "a lug of which metal and plating are not known" : `a lug of${metal}, its plating not known`;
}

function padWords(pad: PadMetal | undefined): string {
  if (pad === undefined) return "a pad whose metal is not given";
  if (pad.plating === undefined) return `${pad.metal === "aluminum" ? "an" : "a"} ${pad.metal} pad`;
  return pad.plating === "none" ? `a bare ${pad.metal} pad` : `a ${pad.plating}-plated ${pad.metal} pad`;
}

/** "bare copper, tin or silver". */
function faceWords(surfaces: readonly Surface[]): string {
  const words = surfaces.map((one) =>
    one === "copper" || one === "aluminum" || one === "steel" ? `bare ${one}` : one,
  );
  const last = words.pop() ?? "";
  return words.length === 0 ? last : `${words.join(", ")} or ${last}`;
}

function noble(lugs: readonly Surface[], pads: readonly Surface[]): string {
  return lugs.includes("silver") || pads.includes("silver") ? "silver" : "copper";
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
