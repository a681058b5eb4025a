import { ask, type Case, type Objection, reject } from "../case.js";
import { boltDiameter, ofLength } from "../scaled-integer.js";
import { markOf } from "./metals.js";
import { insideRange } from "./wire-range.js";

/**
 * 110.3(B): holes of a tongue match the bolts of the pad in number, diameter and distance; a kit goes on the frames it is
 * listed for; a pin lands in a terminal that takes a conductor of its size and metal.
 */
export function mounting({ joint, connector }: Case): Objection[] {
  if (joint.function !== "termination") return [];
  const { equipment } = joint;
  const mount = connector.mounting;
  if (mount.kind === "pad") {
    const clause = "110.3(B) stud";
    const stud = equipment?.stud;
    if (stud === undefined) return [ask(clause, "bolts of the pad")];
    if (mount.pattern.holes !== stud.holes)
      return [reject(clause, `${mount.pattern.holes} holes on ${stud.holes} bolts`)];
    if (boltDiameter(mount.pattern.bolt) !== boltDiameter(stud.bolt))
      return [reject(clause, `${mount.pattern.bolt} hole on ${stud.bolt} bolt`)];
    if (stud.holes < 2) return [];
    if (mount.pattern.spacing === undefined || stud.spacing === undefined)
      return [ask(clause, "distance of the holes")];
    return ofLength(mount.pattern.spacing) === ofLength(stud.spacing) ? [] : [reject(clause, "distance of the holes")];
  }
  if (mount.kind === "frame") {
    const clause = "110.3(B) frame";
    if (equipment?.frame === undefined) return [ask(clause, "frame of the equipment")];
    return mount.frames.includes(equipment.frame) ? [] : [reject(clause, `not listed for ${equipment.frame}`)];
  }
  if (connector.pin === undefined) return [];
  const clause = "110.3(B) pin";
  const { pin } = connector;
  const terminal = equipment?.terminal;
  if (terminal === undefined) return [ask(clause, "the terminal the pin lands in")];
  if (terminal.metalMarking === undefined) return [ask(clause, "mark of the terminal the pin lands in")];
  const mark = markOf(terminal);
  if (mark === null) return [ask(clause, "mark of the terminal the pin lands in")];
  if (!mark.metals.has(pin.metal)) return [reject(clause, `${pin.metal} pin in this terminal`)];
  const fits = terminal.openings.flatMap(({ ranges }) => ranges.map((range) => insideRange(range, pin.size)));
  if (fits.includes(true)) return [];
  return fits.includes(null)
    ? [ask(clause, "pin and terminal are of two systems")]
    : [reject(clause, `${pin.size} pin in this terminal`)];
}
