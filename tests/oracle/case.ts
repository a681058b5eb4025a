/** One question with every fact settled, and what a clause may say about it. */
import type { Basis, ConductorGroup, Connector, Joint, Opening } from "@landfast/rules";

/** "reject": the clause forbids the joint. "ask": the clause cannot be settled with what is known. */
export interface Objection {
  readonly kind: "reject" | "ask";
  readonly clause: string;
  readonly says: string;
}

export interface Case {
  readonly joint: Joint;
  readonly connector: Connector;
  readonly basis: Basis;
  /** The connector is the equipment's own terminal, not a part that is brought to it. */
  readonly ownTerminal: boolean;
}

/** One conductor of a group in one opening. */
export interface Seat {
  readonly conductor: ConductorGroup;
  readonly opening: Opening;
  /** Which of the equal openings. */
  readonly hole: number;
}

export const reject = (clause: string, says: string): Objection => ({ kind: "reject", clause, says });
export const ask = (clause: string, says: string): Objection => ({ kind: "ask", clause, says });

/** Conductors that carry load current. */
export const carriesLoad = ({ joint }: Case): boolean => joint.role === "phase" || joint.role === "neutral";

/** The number of conductors in the joint. */
export const conductorCount = (joint: Joint): number => joint.conductors.reduce((sum, { count }) => sum + count, 0);

/** The seats of each opening that is used, one list per hole. */
export function byHole(seats: readonly Seat[]): readonly (readonly Seat[])[] {
  const holes = new Map<string, Seat[]>();
  for (const seat of seats) {
    const key = `${seat.opening.id}#${seat.hole}`;
    const held = holes.get(key);
    if (held === undefined) holes.set(key, [seat]);
    else held.push(seat);
  }
  return [...holes.values()];
}

/** Wet in the sense of 300.5(B): the inside of a handhole is wet whatever is written beside it. */
export function locationOf({ joint }: Case): "dry" | "damp" | "wet" | "direct-burial" | "concrete" {
  const said = joint.place?.location;
  if (said === undefined) throw new Error("the place must be settled first");
  if (joint.equipment?.kind === "handhole" && (said === "dry" || said === "damp")) return "wet";
  return said;
}
