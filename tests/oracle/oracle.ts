/**
 * The hard rules of a power joint, written a second time from the clauses and the published tables, as plainly as they can
 * be: every value an unknown fact may have is tried, and every way to lay the conductors into the openings.
 */
import type { Basis, ConductorGroup, Connector, Joint, Opening } from "@landfast/rules";
import type { Case, Objection, Seat } from "./case.js";
import { access } from "./clauses/access.js";
import { ampacity } from "./clauses/ampacity.js";
import { conductorsPerOpening, panelNeutral } from "./clauses/conductors-per-opening.js";
import { deviceLoad } from "./clauses/device-load.js";
import { distributionBlock } from "./clauses/distribution-block.js";
import { electrodeAluminum, electrodeConnection, electrodeSplice } from "./clauses/electrode.js";
import { bondingJumper, electrodeConductor, equipmentGround } from "./clauses/grounding-size.js";
import { joining } from "./clauses/joining.js";
import { reuse, secondTurn, toolAndDie, voltage } from "./clauses/marked-limits.js";
import { metalMark, touchingMetals } from "./clauses/metals.js";
import { mounting } from "./clauses/mounting.js";
import { padMetal } from "./clauses/pad-metal.js";
import { parallel } from "./clauses/parallel.js";
import { deterioratingAgent, place } from "./clauses/place.js";
import { runThrough } from "./clauses/run-through.js";
import { serviceMark } from "./clauses/service-mark.js";
import { bendingSpace, fill } from "./clauses/space.js";
import { strandCount } from "./clauses/strand-count.js";
import { torque } from "./clauses/torque.js";
import { bindingScrew, wireRange } from "./clauses/wire-range.js";
import { settle } from "./settle.js";

export interface Judgment {
  readonly verdict: "accept" | "reject" | "needs-information";
  /** What forbids it, or what is open; empty where it is accepted. */
  readonly reasons: readonly { readonly clause: string; readonly says: string }[];
}

const WHOLE_JOINT: readonly ((asked: Case) => Objection[])[] = [
  joining,
  strandCount,
  metalMark,
  bindingScrew,
  ampacity,
  deviceLoad,
  parallel,
  equipmentGround,
  electrodeConductor,
  bondingJumper,
  electrodeConnection,
  electrodeSplice,
  electrodeAluminum,
  bendingSpace,
  fill,
  distributionBlock,
  serviceMark,
  mounting,
  padMetal,
  voltage,
  place,
  deterioratingAgent,
  access,
  reuse,
  secondTurn,
  toolAndDie,
];

const BY_SEAT: readonly ((asked: Case, seats: readonly Seat[]) => Objection[])[] = [
  wireRange,
  touchingMetals,
  conductorsPerOpening,
  panelNeutral,
  runThrough,
  torque,
];

/** Whether the joint is allowed with this connector: a rejection beats an open question, and that beats an acceptance. */
export function judge(joint: Joint, connector: Connector, basis: Basis): Judgment {
  const ownTerminal =
    connector === joint.equipment?.terminal ||
    (joint.connector !== undefined && "equipmentTerminal" in joint.connector) ||
    connector.mounting.kind === "integral";
  const cases = settle({ joint, connector, basis: joint.basis ?? basis, ownTerminal });
  if (cases === null)
    return { verdict: "needs-information", reasons: [{ clause: "facts", says: "too many facts are not known" }] };
  const found = cases.map(objectionsTo);
  const verdicts = new Set(found.map(verdictOf));
  const [only] = verdicts;
  // One value of an unknown fact accepts and another rejects: the fact is needed.
  const verdict = verdicts.size === 1 && only !== undefined ? only : "needs-information";
  const reasons = new Map(found.flat().map(({ clause, says }) => [`${clause} ${says}`, { clause, says }] as const));
  return { verdict, reasons: [...reasons.values()] };
}

function verdictOf(objections: readonly Objection[]): Judgment["verdict"] {
  if (objections.some(({ kind }) => kind === "reject")) return "reject";
  return objections.length > 0 ? "needs-information" : "accept";
}

function objectionsTo(asked: Case): readonly Objection[] {
  return [...WHOLE_JOINT.flatMap((clause) => clause(asked)), ...bestSeating(asked)];
}

/** The objections to the best of all ways to lay the conductors into the openings. */
function bestSeating(asked: Case): readonly Objection[] {
  let best: readonly Objection[] | null = null;
  for (const seats of seatings(asked)) {
    const objections = BY_SEAT.flatMap((clause) => clause(asked, seats));
    if (best === null || weight(objections) < weight(best)) best = objections;
    if (best.length === 0) break;
  }
  return best ?? [{ kind: "reject", clause: "110.3(B) range", says: "no opening for one of the conductors" }];
}

const weight = (objections: readonly Objection[]): number =>
  objections.reduce((sum, { kind }) => sum + (kind === "reject" ? 1000 : 1), 0);

interface Hole {
  readonly opening: Opening;
  readonly hole: number;
}

/** Every way, once: equal conductors are laid in the order of the holes. */
function* seatings({ joint, connector }: Case): Generator<readonly Seat[]> {
  const holes = connector.openings.flatMap((opening) =>
    Array.from({ length: opening.count }, (_, hole): Hole => ({ opening, hole })),
  );
  const conductors = joint.conductors.flatMap((group) => Array.from({ length: group.count }, () => group));
  yield* lay(conductors, holes, [], 0, 0);
}

function* lay(
  conductors: readonly ConductorGroup[],
  holes: readonly Hole[],
  laid: readonly Seat[],
  index: number,
  from: number,
): Generator<readonly Seat[]> {
  const conductor = conductors[index];
  if (conductor === undefined) {
    yield laid;
    return;
  }
  const start = conductor === conductors[index - 1] ? from : 0;
  for (const [at, { opening, hole }] of holes.entries()) {
    if (at < start) continue;
    const { duty } = opening;
    if (duty !== undefined && conductor.duty !== undefined && duty !== conductor.duty) continue;
    yield* lay(conductors, holes, [...laid, { conductor, opening, hole }], index + 1, at);
  }
}
