import type { ConductorRole } from "@landfast/rules";
import { UnusableProblem } from "../problem/check-problem.js";

/** Equipment in a feeder's run in which its conductors are interrupted: a switch, a transfer switch. */
export interface FeederDevice {
  readonly tag: string;
  /** Phases always land on both sides; these say what the others do. */
  readonly neutral: "lands" | "passes-through";
  readonly ground: "lands" | "passes-through";
}

/** A tap along the run: joints are made on so many conductors of each set. */
export interface FeederTap {
  readonly tag: string;
  readonly sets: number;
  readonly phases: number;
  readonly neutrals: number;
  readonly grounds: number;
}

/** A point in the run at which conductors are joined to conductors of their own kind: a pull box, a handhole. */
export interface FeederSplice {
  readonly tag: string;
  /** Phases are always spliced; these say what the others do. */
  readonly neutral: "spliced" | "passes-through";
  readonly ground: "spliced" | "passes-through";
}

/** A feeder as a riser diagram states it. */
export interface Feeder {
  readonly mark: string;
  readonly from: string;
  readonly to: string;
  /** Conductors in parallel for each phase. */
  readonly sets: number;
  readonly phases: number;
  /** Neutrals in each set: 0 for three-wire. */
  readonly neutrals: number;
  /**
   * in-every-raceway: each set runs in a raceway of its own with a full-size ground (NFPA 70 250.122(F)); one-shared: all
   * sets share one raceway and one ground; none: no ground conductor is pulled.
   */
  readonly grounds: "in-every-raceway" | "one-shared" | "none";
  readonly devices?: readonly FeederDevice[];
  readonly splices?: readonly FeederSplice[];
  readonly taps?: readonly FeederTap[];
}

/** Joints of one role at one place of a feeder. */
export interface FeederJoints {
  /** "F-1/from/phase", "F-1/device/DS-4/neutral", "F-1/splice/PB-1/phase", "F-1/tap/T-2/phase". */
  readonly mark: string;
  readonly at: string;
  readonly function: "termination" | "splice" | "tap";
  readonly role: Extract<ConductorRole, "phase" | "neutral" | "equipment-ground">;
  readonly joints: number;
  /** How the number comes about: "3 sets x 3 phases". */
  readonly working: string;
}

export interface FeederExpansion {
  readonly joints: readonly FeederJoints[];
  readonly totals: {
    readonly phase: number;
    readonly neutral: number;
    readonly equipmentGround: number;
    readonly splice: number;
    readonly tap: number;
  };
  /** What was concluded and not stated. */
  readonly inferred: readonly string[];
  readonly notCounted: string;
}

/**
 * Joints of a feeder: at each end every conductor of every set; grounds one for each raceway; at each device in between
 * both sides; at each splice point one joint a conductor; then taps.
 * Worked: 800 A in three raceways, 3 sets, three phases, no neutral: 3 x 3 x 2 = 18 phase ends, 3 x 2 = 6 ground ends. With
 * all sets in one raceway: 2 ground ends. Spliced once in a pull box, grounds too: 9 phase splices and 3 ground splices
 * more.
 * @throws UnusableProblem for counts that are not whole, no phase, or a tag that stands twice.
 */
export function feederJoints(feeder: Feeder): FeederExpansion {
  refuseFaults(feeder);
  const { mark, from, to, devices = [], splices = [], taps = [] } = feeder;
  const ends = [
    { path: "from", at: from },
    { path: "to", at: to },
  ];
  const joints = [
    ...ends.flatMap(({ path, at }) =>
      landings(feeder, { path: `${mark}/${path}`, at, function: "termination", sides: 1, neutral: true, ground: true }),
    ),
    ...devices.flatMap(({ tag, neutral, ground }) =>
      landings(feeder, {
        path: `${mark}/device/${tag}`,
        at: tag,
        function: "termination",
        sides: 2,
        neutral: neutral === "lands",
        ground: ground === "lands",
      }),
    ),
    ...splices.flatMap(({ tag, neutral, ground }) =>
      landings(feeder, {
        path: `${mark}/splice/${tag}`,
        at: tag,
        function: "splice",
        sides: 1,
        neutral: neutral === "spliced",
        ground: ground === "spliced",
      }),
    ),
    ...taps.flatMap((tap) => tapJoints(mark, tap)),
  ];
  const count = (isCounted: (one: FeederJoints) => boolean): number =>
    joints.reduce((sum, one) => sum + (isCounted(one) ? one.joints : 0), 0);
  const ended = (role: FeederJoints["role"]): number =>
    count((one) => one.role === role && one.function === "termination");
  return {
    joints,
    totals: {
      phase: ended("phase"),
      neutral: ended("neutral"),
      equipmentGround: ended("equipment-ground"),
      splice: count((one) => one.function === "splice"),
      tap: count((one) => one.function === "tap"),
    },
    inferred: inferencesOf(feeder),
    notCounted:
      "bonding jumpers and electrode conductors: they are counted from the grounding drawing, not from feeders",
  };
}

/** A place at which conductors of every set are landed or spliced. */
interface LandingPlace {
  readonly path: string;
  readonly at: string;
  readonly function: "termination" | "splice";
  readonly sides: 1 | 2;
  readonly neutral: boolean;
  readonly ground: boolean;
}

function landings(
  { sets, phases, neutrals, grounds }: Feeder,
  { path, at, function: made, sides, neutral, ground }: LandingPlace,
): FeederJoints[] {
  const side = sides === 2 ? " x 2 sides" : "";
  const grounded = grounds === "none" ? 0 : grounds === "one-shared" ? 1 : sets;
  const rows: FeederJoints[] = [
    {
      mark: `${path}/phase`,
      at,
      function: made,
      role: "phase",
      joints: sets * phases * sides,
      working: `${String(sets)} sets x ${String(phases)} phases${side}`,
    },
    {
      mark: `${path}/neutral`,
      at,
      function: made,
      role: "neutral",
      joints: neutral ? sets * neutrals * sides : 0,
      working: `${String(sets)} sets x ${String(neutrals)} neutrals${side}`,
    },
    {
      mark: `${path}/equipment-ground`,
      at,
      function: made,
      role: "equipment-ground",
      joints: ground ? grounded * sides : 0,
      working:
        grounds === "one-shared"
          ? `1 for the raceway all sets share${side}`
          : `1 for each of ${String(sets)} raceways${side}`,
    },
  ];
  return rows.filter(({ joints }) => joints > 0);
}

function tapJoints(mark: string, { tag, sets, phases, neutrals, grounds }: FeederTap): FeederJoints[] {
  const roles = [
    ["phase", phases],
    ["neutral", neutrals],
    ["equipment-ground", grounds],
  ] as const;
  return roles
    .filter(([, conductors]) => conductors > 0)
    .map(([role, conductors]) => ({
      mark: `${mark}/tap/${tag}/${role}`,
      at: tag,
      function: "tap",
      role,
      joints: sets * conductors,
      working: `${String(sets)} sets x ${String(conductors)}`,
    }));
}

function inferencesOf({ sets, grounds, neutrals, devices = [], splices = [] }: Feeder): string[] {
  const inferred = ["every conductor lands at both ends of the feeder"];
  if (grounds === "in-every-raceway" && sets > 1)
    inferred.push("each set has a raceway of its own, so each has a ground and each ground lands at both ends");
  if (grounds === "one-shared") inferred.push("all sets share one raceway, so one ground lands at each end");
  if (grounds === "none") inferred.push("no ground conductor is pulled, so none lands");
  if (neutrals === 0) inferred.push("no neutral is pulled, so none lands");
  if (devices.length > 0) inferred.push("at each device the phases land on the line and on the load side");
  if (splices.length > 0) inferred.push("at each splice point every phase conductor of every set is spliced");
  return inferred;
}

function refuseFaults({ mark, sets, phases, neutrals, devices = [], splices = [], taps = [] }: Feeder): void {
  const faults: string[] = [];
  if (!isCount(sets, 1) || !isCount(phases, 1) || !isCount(neutrals, 0))
    faults.push(`${mark}: sets and phases are whole numbers from 1 up, neutrals from 0 up`);
  for (const tap of taps)
    if (!isCount(tap.sets, 1) || ![tap.phases, tap.neutrals, tap.grounds].every((one) => isCount(one, 0)))
      faults.push(`${mark}: tap ${tap.tag} is counted in whole numbers`);
  const tags = [...devices, ...splices, ...taps].map(({ tag }) => tag);
  if (new Set(tags).size < tags.length) faults.push(`${mark}: two devices, splices or taps have the same tag`);
  if (faults.length > 0) throw new UnusableProblem(faults);
}

function isCount(value: number, least: number): boolean {
  return Number.isSafeInteger(value) && value >= least && value <= 1000;
}
