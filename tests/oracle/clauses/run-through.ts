import { ask, type Case, type Objection, reject, type Seat } from "../case.js";

/** Parts that are closed around a conductor at any point of it. */
const CLOSED_AROUND: readonly string[] = [
  "piercing-tap",
  "gutter-tap",
  "parallel-tap",
  "split-bolt",
  "split-bolt-with-spacer",
  "compression-tap",
];
const CONSTRUCTIONS: readonly string[] = ["insulation-piercing", "split-bolt", "bolted-clamp"];

/** 110.3(B): where a run is not cut, the hole it lies in must be one that a conductor passes through. */
export function runThrough({ joint, connector }: Case, seats: readonly Seat[]): Objection[] {
  if (joint.function !== "tap") return [];
  if (CLOSED_AROUND.includes(connector.family) || CONSTRUCTIONS.includes(connector.construction)) return [];
  return seats.flatMap(({ conductor, opening }) => {
    if (conductor.duty !== "run" || conductor.uncut === false || opening.duty === "run") return [];
    return conductor.uncut === true
      ? [reject("110.3(B) run", "the run goes on, and the hole takes only an end")]
      : [ask("110.3(B) run", "whether the run goes on uncut")];
  });
}
