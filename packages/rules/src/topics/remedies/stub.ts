import type { ConductorGroup, ConductorMetal } from "../../core/conductor.js";
import { isBuildingWire } from "../../core/conductor-ampacity.js";
import { compareSizes, sizeOf } from "../../core/conductor-size.js";
import { metalWords } from "../../core/conductor-words.js";
import type { Unmarked } from "../../core/connector.js";
import type { Edition } from "../../core/edition.js";
import type { Equipment, Joint } from "../../core/joint.js";
import { METRIC_SIZES } from "../../core/metric-series.js";
import { celsius, type Temperature } from "../../core/quantity.js";
import type { Remedy } from "./remedy.js";
import { bestOf, inOwnTerminal, remedyOf, withPart } from "./remedy-joint.js";
import type { RemedyQuestion } from "./remedy-question.js";

/**
 * A short stub that lands where the conductor does not, spliced to it.
 *
 * Both joints keep every rule: the stub at the equipment with the whole load and the same device, and the splice of
 * conductor and stub, whose weaker end is the terminal (110.14(C)). Of each metal (that of the conductor, and copper)
 * the largest stub is taken that passes both; it is class B and of the conductor's insulation, and is no larger than it.
 * A terminal of the equipment's own is the one the stub lands in; a splicer-reducer goes before other splices.
 * Worked: 250 kcmil aluminum on a lug that stops at 4/0 AWG, 180 A at 75 C under a 200 A device: a stub of 4/0 AWG aluminum
 * carries 180 A and has the next standard device, so a splicer-reducer for 250 kcmil and 4/0 AWG serves.
 * A lead of listed equipment gets no stub: its size says nothing of what a piece of wire in its place would carry.
 * Silent: room for the splice is a matter of its dimensions, which the catalogue need not have, so it is left to be
 * looked at; so is the price of the stub itself.
 */
export function stubs(question: RemedyQuestion): Remedy[] {
  const { joint, edition } = question;
  const [conductor, other] = joint.conductors;
  if (conductor === undefined || other !== undefined || !isBuildingWire(conductor)) return [];
  const metals: ConductorMetal[] = conductor.metal === "copper" ? ["copper"] : [conductor.metal, "copper"];
  return metals.flatMap((metal) => {
    for (const size of sizesDownFrom(conductor.size, edition)) {
      const stub: ConductorGroup = { ...ofSize(conductor, size), metal, stranding: "class-B" };
      if (stub.size === conductor.size && metal === conductor.metal && stub.stranding === conductor.stranding) continue;
      const remedy = remedyWith(question, conductor, stub);
      if (remedy !== undefined) return remedy;
    }
    return [];
  });
}

function remedyWith(question: RemedyQuestion, conductor: ConductorGroup, stub: ConductorGroup): Remedy | undefined {
  const { joint } = question;
  const stubJoint = { ...joint, conductors: [stub] };
  const atEquipment =
    joint.equipment?.terminal === undefined ? withPart(question, stubJoint) : inOwnTerminal(question, stubJoint);
  if (atEquipment === undefined) return undefined;
  const splice = spliceOf(joint, conductor, stub);
  const { count } = conductor;
  const atConductor =
    bestOf(question, splice, "at-conductor", ({ family }) => family === "splicer-reducer", count) ??
    bestOf(question, splice, "at-conductor", () => true, count);
  if (atConductor === undefined) return undefined;
  const words = `${stub.size} ${metalWords(stub.metal)}`;
  return remedyOf(
    {
      kind: "stub",
      sentence: `Land a stub of ${words} (class B, ${stub.insulation}) and splice it to the ${conductor.size} ${metalWords(conductor.metal)} with ${atConductor.joint.connector.description}.`,
      provided: [
        `The price leaves out the stub of ${words}.`,
        "Look whether there is room for the splice and its bends in the enclosure (312.8; 376.56 in a wireway).",
        "Correction for the surroundings and for bundling applies to the stub as to the run.",
      ],
    },
    [atEquipment, atConductor],
  );
}

/** The splice beside the equipment: its conductors end in the terminal, which bounds the temperature (110.14(C)). */
function spliceOf(joint: Joint, conductor: ConductorGroup, stub: ConductorGroup): Joint {
  const { circuit, equipment } = joint;
  const atEnd = weakerEnd(circuit?.endTerminalTemperature, equipment?.terminalTemperature);
  const { equipment: _equipment, ...rest } = joint;
  return {
    ...rest,
    function: "splice",
    conductors: [
      { ...conductor, count: 1 },
      { ...stub, count: 1 },
    ],
    ...(circuit === undefined || atEnd === undefined ? {} : { circuit: { ...circuit, endTerminalTemperature: atEnd } }),
    ...(equipment === undefined ? {} : { equipment: enclosureOf(equipment) }),
  };
}

/** A terminal without a mark counts as 60 C or as 75 C, by the circuit (110.14(C)(1)). */
const UNMARKED_AT_MOST_C = 75;

/** The lower of two ratings of terminals, of which either may not be known. */
function weakerEnd(
  one: Temperature | Unmarked | undefined,
  other: Temperature | Unmarked | undefined,
): Temperature | Unmarked | undefined {
  if (one === undefined || other === undefined) return one ?? other;
  if (one === "unmarked" || other === "unmarked") {
    const marked = one === "unmarked" ? other : one;
    return marked !== "unmarked" && celsius(marked) < UNMARKED_AT_MOST_C ? marked : "unmarked";
  }
  return celsius(one) <= celsius(other) ? one : other;
}

/** Of the equipment only where it is and what kind: a splice has no stud, frame or terminal of its own. */
function enclosureOf({ tag, kind }: Equipment): Equipment {
  return kind === undefined ? { tag } : { tag, kind };
}

/** Trade sizes from the conductor's own down, in its own system. */
export function sizesDownFrom(text: string, edition: Edition): string[] {
  const size = sizeOf(text);
  const series =
    size.series === "metric" ? METRIC_SIZES : edition.tables.ampacityRaceway.rows.map(({ key }) => key[0] ?? "");
  return series.filter((one) => compareSizes(sizeOf(one), size) <= 0).toReversed();
}

/** The conductor in another size, its strands not counted: they were at the size there was. */
export function ofSize(conductor: ConductorGroup, size: string): ConductorGroup {
  const { strands: _counted, ...uncounted } = conductor;
  return { ...uncounted, size };
}
