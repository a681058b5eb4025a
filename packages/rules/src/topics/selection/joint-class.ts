import type { Basis, Equipment, Joint } from "../../core/joint.js";

/** What an answer never depends on. The basis in force is told apart by itself. */
type NotFacts = "mark" | "area" | "description" | "quantity" | "basis" | "equipment";

/** Every other field of a joint; the compiler refuses a list that lacks one. */
const FACTS = Object.keys({
  function: true,
  role: true,
  conductors: true,
  circuit: true,
  place: true,
  upsizing: true,
  grounding: true,
  connector: true,
  partState: true,
  tooling: true,
  rework: true,
  tightenedBefore: true,
  projectRules: true,
} satisfies Record<Exclude<keyof Joint, NotFacts>, true>) as readonly Exclude<keyof Joint, NotFacts>[];

/** Of the equipment only its tag is no fact. */
const EQUIPMENT_FACTS = Object.keys({
  kind: true,
  frame: true,
  terminalTemperature: true,
  terminal: true,
  stud: true,
  padMetal: true,
  bending: true,
  space: true,
  boxVolumeIn3: true,
} satisfies Record<Exclude<keyof Equipment, "tag">, true>) as readonly Exclude<keyof Equipment, "tag">[];

/**
 * Everything of a joint that can change an answer, and nothing else, as one text: joints of equal text are one class
 * and are judged once.
 * @param basis the basis in force for the joint.
 */
export function jointClass(joint: Joint, basis: Basis): string {
  const { equipment } = joint;
  return JSON.stringify([
    basis,
    FACTS.map((fact) => joint[fact]),
    equipment === undefined ? null : EQUIPMENT_FACTS.map((fact) => equipment[fact]),
  ]);
}

/** The joint as a catalogue is asked about it: another connector is a new part with its own tooling. */
export function withoutOffer(joint: Joint): Joint {
  const { connector: _connector, partState: _partState, tooling: _tooling, ...rest } = joint;
  return { ...rest, partState: "new" };
}
