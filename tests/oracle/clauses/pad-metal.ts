import type { Connector, Joint, PadMetal } from "@landfast/rules";
import { ask, type Case, type Objection, reject } from "../case.js";

/**
 * 110.14 at a pad, from what the trade knows of contacts: the oxide of bare aluminum and the voltage between it and a noble
 * metal eat a joint with bare copper, bronze or brass, and one with silver faster still. Tin or nickel on either face keeps
 * the two apart, which is why lugs of aluminum are tinned for both metals. Steel is no nobler than aluminum. What is not
 * known is taken each way in turn: where every way is bad the lug is refused, where some are it is asked about.
 */
export function padMetal({ joint, connector }: Case): Objection[] {
  const { mounting, bodyMetal } = connector;
  const isLugOnPad = mounting.kind === "pad" && joint.function === "termination";
  // A tongue of two metals is turned with the right face down, which is a duty on site and no question.
  if (!isLugOnPad || bodyMetal === "bimetal") return [];
  let good = 0;
  let bad = 0;
  for (const tongue of waysOf(metalsOfTongue(bodyMetal), connector.plating))
    for (const pad of waysOf(metalsOfPad(joint), joint.equipment?.padMetal?.plating))
      if (isEaten(tongue, pad) || isEaten(pad, tongue)) bad += 1;
      else good += 1;
  if (bad === 0) return [];
  return [
    good === 0 ? reject("110.14 pad", "bare aluminum against a noble face") : ask("110.14 pad", "which faces meet"),
  ];
}

type Metal = "aluminum" | "copper" | "steel";
type Plating = NonNullable<PadMetal["plating"]>;

interface Face {
  readonly metal: Metal;
  readonly plating: Plating;
}

/** Whether the first face is bare aluminum that the second would eat. */
function isEaten(face: Face, other: Face): boolean {
  const bareAluminum = face.metal === "aluminum" && face.plating === "none";
  const noble = other.plating === "silver" || (other.plating === "none" && other.metal === "copper");
  return bareAluminum && noble;
}

const EVERY_METAL: readonly Metal[] = ["aluminum", "copper", "steel"];
const EVERY_PLATING: readonly Plating[] = ["none", "tin", "silver", "nickel"];

function waysOf(metals: readonly Metal[], plating: string | undefined): readonly Face[] {
  const known = EVERY_PLATING.filter((one) => one === plating);
  const platings = known.length === 0 ? EVERY_PLATING : known;
  return metals.flatMap((metal) => platings.map((one): Face => ({ metal, plating: one })));
}

/** Alloys of copper count as copper; a word that the trade does not use says nothing. */
function metalsOfTongue(word: Connector["bodyMetal"]): readonly Metal[] {
  switch (word) {
    case "aluminum":
      return ["aluminum"];
    case "copper":
    case "copper alloy":
    case "bronze":
    case "brass":
      return ["copper"];
    case "steel":
    case "stainless steel":
    case "zinc-coated steel":
      return ["steel"];
    default:
      return EVERY_METAL;
  }
}

function metalsOfPad({ equipment }: Joint): readonly Metal[] {
  return equipment?.padMetal === undefined ? EVERY_METAL : [equipment.padMetal.metal];
}
