import type { ConductorGroup, ConductorMetal } from "../../core/conductor.js";
import { conductorPath } from "../../core/conductor-path.js";
import { type ConductorSize, sizeOf } from "../../core/conductor-size.js";
import type { Electrode } from "../../core/connector.js";
import type { Edition } from "../../core/edition.js";
import {
  type ElectrodeCap,
  electrodeCap,
  electrodeConductorCell,
  ROD_ALUMINUM,
  ROD_COPPER,
} from "../../core/electrode-conductor.js";
import type { CheckFinding, Step } from "../../core/finding.js";
import { awgOrKcmil, metalMark, writeArea } from "../../core/grounding-area.js";
import type { Grounding, Joint } from "../../core/joint.js";
import { asking, notApplicable, type Rule, settled } from "../../core/rule.js";
import { type Cell, isRefused } from "../../core/table.js";
import { Worksheet } from "../../core/worksheet.js";

const ID = "electrode-conductor-size";

const NOTHING_GIVEN: Grounding = Object.freeze({});

/** What the conductor must at least be. */
interface Required {
  readonly area: Step;
  readonly text: string;
  readonly because: string;
}

interface AskedFact {
  readonly path: string;
  readonly because: string;
}

/**
 * Is the grounding electrode conductor large enough for the service?
 *
 * NFPA 70 250.66 (2017, 2020, 2023), in our words: the least size goes by the area of the ungrounded service conductor
 * in kcmil, all sets of a phase together. (A) a conductor that serves only rods, pipes or plates need not be larger
 * than 6 AWG copper or 4 AWG aluminum; (B) one that serves only a concrete-encased electrode not larger than 4 AWG
 * copper. Copper-clad aluminum stands with aluminum.
 * Worked: five sets of 600 kcmil aluminum, 3000 kcmil, ask for 3/0 AWG copper; to a rod alone 6 AWG is enough.
 * The service is asked for only where it decides: 3/0 AWG copper and 250 kcmil aluminum serve any service.
 * 250.64(D)(1): a tap to the common electrode conductor of several disconnects goes by the conductors of its own enclosure.
 * 250.53(C): a bonding jumper between electrodes is sized the same way.
 * (C) one that serves only a ground ring not larger than the ring, which is copper; so copper only is limited by it.
 * Silent: aluminum to concrete has no limit of its own.
 */
export const electrodeConductorSize: Rule = {
  id: ID,
  title: "Size of the grounding electrode conductor",
  clauses: [
    "electrodeConductorSize",
    "electrodeConductorToRod",
    "electrodeConductorToConcrete",
    "electrodeConductorToRing",
    "electrodeBonding",
    "electrodeConductorTaps",
    "conductorAreas",
  ],
  needs: [
    "joint/grounding/service",
    "joint/grounding/tapService",
    "joint/grounding/electrode",
    "joint/grounding/ringSize",
    "joint/grounding/soleConnection",
    "joint/grounding/bonding",
    "joint/conductors/0/size",
    "joint/conductors/0/metal",
  ],
  cannotSee: "whether the conductor goes on to another electrode",
  check({ joint }, edition) {
    if (joint.role !== "electrode-conductor" && !bondsElectrodes(joint))
      return notApplicable(ID, "the conductor is not a grounding electrode conductor");
    const worksheet = new Worksheet();
    let asked: { readonly fact: AskedFact; readonly conductor: ConductorGroup } | undefined;
    const written: Written[] = [];
    for (const [group, conductor] of joint.conductors.entries()) {
      const decided = decide(joint, conductor, group, edition);
      if ("path" in decided) {
        asked ??= { fact: decided, conductor };
        continue;
      }
      const one = write(worksheet, conductor, group, decided, edition);
      if (!one.holds) return answer(joint, worksheet, one, edition);
      written.push(one);
    }
    const [last] = written.slice(-1);
    if (asked !== undefined || last === undefined)
      return asking(
        ID,
        worksheet,
        asked?.fact.path ?? "joint/conductors/0/size",
        asked?.fact.because ?? "No conductor is given.",
        {
          cite: edition.clauses.electrodeConductorSize,
          required: "the size for the service and the electrode",
          offered: asked === undefined ? "not known" : offeredText(asked.conductor),
        },
      );
    if (written.length > 1)
      worksheet.conclude(
        "every conductor is large enough",
        "pass",
        written.map(({ compared }) => compared),
        "each of them reaches the size asked for",
        edition.clauses.electrodeConductorSize,
      );
    return answer(joint, worksheet, last, edition);
  },
};

function bondsElectrodes({ role, grounding }: Joint): boolean {
  return role === "bonding" && grounding?.bonding === "electrode-system";
}

interface Written {
  readonly holds: boolean;
  readonly compared: Step;
  readonly required: Required;
  readonly conductor: ConductorGroup;
  readonly basis: Basis;
}

/** By what the size is judged, once it is clear that nothing missing can turn the answer. */
type Basis =
  | { readonly by: "cap"; readonly size: ConductorSize; readonly own: OwnCap }
  | { readonly by: "service"; readonly size: ConductorSize; readonly served: Served }
  | { readonly by: "largest"; readonly size: ConductorSize }
  | { readonly by: "smallest"; readonly size: ConductorSize };

/** The service conductors that the electrode conductor goes by, and where they stand. */
interface Served {
  readonly service: NonNullable<Grounding["service"]>;
  readonly head: "joint/grounding/service" | "joint/grounding/tapService";
}

/** A tap to a common electrode conductor goes by the conductors of its own enclosure, any other by the whole service. */
function servedBy({ function: jointFunction, grounding }: Joint, { duty }: ConductorGroup): Served | undefined {
  if (jointFunction === "tap" && duty === "tap" && grounding?.tapService !== undefined)
    return { service: grounding.tapService, head: "joint/grounding/tapService" };
  return grounding?.service === undefined ? undefined : { service: grounding.service, head: "joint/grounding/service" };
}

const TAP_SERVICE_ASKED: AskedFact = Object.freeze({
  path: "joint/grounding/tapService",
  because:
    "The tap is too small for the whole service; it goes by the conductors of the one enclosure that it serves, which are not given.",
});

/** 250.52(A)(4): a ground ring is of 2 AWG copper or larger. */
const SMALLEST_RING = sizeOf("2 AWG");

/** What the conductor need not be larger than if it serves this electrode alone. */
interface OwnCap {
  readonly electrode: Electrode;
  readonly cap: ElectrodeCap;
}

function ownCap({ electrode, ringSize }: Grounding, metal: ConductorMetal): OwnCap | undefined {
  if (electrode === undefined) return undefined;
  const cap = goesByRing(electrode, metal) ? ringCap(ringSize) : electrodeCap(electrode, metal);
  return cap === undefined ? undefined : { electrode, cap };
}

/** A ring is of copper, so it limits conductors of copper only. */
function goesByRing(electrode: Electrode | undefined, metal: ConductorMetal): boolean {
  return electrode === "ground-ring" && metal === "copper";
}

/** The ring's own size; undefined where it is not given, or is none that a ring can have. */
function ringCap(ringSize: string | undefined): ElectrodeCap | undefined {
  const ring = ringSize === undefined ? undefined : awgOrKcmil(ringSize);
  return ring === undefined || ring.areaKcmil < SMALLEST_RING.areaKcmil
    ? undefined
    : { size: ring.text, clause: "electrodeConductorToRing" };
}

function decide(joint: Joint, conductor: ConductorGroup, group: number, edition: Edition): Basis | AskedFact {
  const size = awgOrKcmil(conductor.size);
  if (size === undefined)
    return {
      path: conductorPath(group, "size"),
      because:
        "The sizes of electrode conductors are printed in AWG and kcmil; a size of another system cannot be set against them.",
    };
  const grounding = joint.grounding ?? NOTHING_GIVEN;
  const { electrode, soleConnection } = grounding;
  const served = servedBy(joint, conductor);
  const own = ownCap(grounding, conductor.metal);
  const ownReached = own !== undefined && size.areaKcmil >= sizeOf(own.cap.size).areaKcmil;
  if (ownReached && soleConnection === true) return { by: "cap", size, own };
  if (size.areaKcmil >= askedKcmil("copper", LARGEST_SERVICE_KCMIL, conductor.metal, edition))
    return { by: "largest", size };
  if (size.areaKcmil < askedKcmil("copper", SMALLEST_SERVICE_KCMIL, conductor.metal, edition))
    return { by: "smallest", size };
  if (served !== undefined) {
    const known = requiredAreaKcmil(served.service, conductor.metal, edition);
    if (known === undefined)
      return {
        path: served.head,
        because:
          "The service conductor must be given in AWG or kcmil, and its sets counted, for the table to be entered.",
      };
    if (size.areaKcmil >= known) return { by: "service", size, served };
  }
  // From here on the table asks for more, or may do so: a cap could still make the conductor large enough.
  if (ownReached && soleConnection === undefined)
    return {
      path: "joint/grounding/soleConnection",
      because:
        "The conductor is large enough only if it serves this electrode alone; whether it goes on to another is not given.",
    };
  const ringAsked = own === undefined && goesByRing(electrode, conductor.metal) && soleConnection !== false;
  if (ringAsked && size.areaKcmil >= SMALLEST_RING.areaKcmil)
    return {
      path: "joint/grounding/ringSize",
      because: "To a ground ring alone the conductor need not be larger than the ring, whose size is not given.",
    };
  if (electrode === undefined && soleConnection !== false && size.areaKcmil >= leastCapKcmil(conductor.metal))
    return {
      path: "joint/grounding/electrode",
      because:
        "The conductor may be large enough for some electrodes and not for others; which electrode it serves is not given.",
    };
  if (served === undefined)
    return {
      path: "joint/grounding/service",
      because: "The service conductors are not given, and the size of the electrode conductor goes by them.",
    };
  const whole = served.head === "joint/grounding/service";
  if (whole && joint.function === "tap" && conductor.duty !== "run") return TAP_SERVICE_ASKED;
  return { by: "service", size, served };
}

function write(
  worksheet: Worksheet,
  conductor: ConductorGroup,
  group: number,
  basis: Basis,
  edition: Edition,
): Written {
  const head = `joint/conductors/${String(group)}`;
  const size = worksheet.given("size of the electrode conductor", basis.size.text, `${head}/size`);
  const metal = worksheet.given("metal of the electrode conductor", conductor.metal, `${head}/metal`);
  const area = writeArea(worksheet, basis.size, [size], edition);
  const required = writeRequired(worksheet, conductor.metal, metal, basis, edition);
  const holds = worksheet.compare(
    "the electrode conductor is large enough",
    area,
    ">=",
    required.area,
    clauseOf(basis, edition),
  );
  return { holds, compared: worksheet.last, required, conductor, basis };
}

function writeRequired(
  worksheet: Worksheet,
  metal: ConductorMetal,
  metalStep: Step,
  basis: Basis,
  edition: Edition,
): Required {
  const mark = metalMark(metal);
  if (basis.by === "cap") {
    const { size, clause } = basis.own.cap;
    const electrode = worksheet.given("electrode", basis.own.electrode, "joint/grounding/electrode");
    const sole = worksheet.given("serves this electrode alone", true, "joint/grounding/soleConnection");
    const uses = [electrode, sole, metalStep];
    if (clause === "electrodeConductorToRing")
      uses.push(worksheet.given("size of the ring", size, "joint/grounding/ringSize"));
    const cap = worksheet.state(
      "largest size asked for to this electrode alone",
      size,
      edition.clauses[clause],
      undefined,
      uses,
    );
    return {
      area: writeArea(worksheet, sizeOf(size), [cap], edition),
      text: `${size} ${mark}`,
      because: "it serves this electrode alone",
    };
  }
  if (basis.by === "service") return writeByService(basis.served, worksheet, metal, metalStep, edition);
  // Whatever the service is, the table asks for no more than its last row and no less than its first.
  const read =
    basis.by === "largest"
      ? worksheet.read("largest size the table asks for", cellOf("copper", LARGEST_SERVICE_KCMIL, metal, edition), [
          metalStep,
        ])
      : worksheet.read("smallest size the table asks for", cellOf("copper", SMALLEST_SERVICE_KCMIL, metal, edition), [
          metalStep,
        ]);
  return {
    area: writeArea(worksheet, sizeOf(String(read.value)), [read], edition),
    text: `${String(read.value)} ${mark}`,
    because: basis.by === "largest" ? "no service asks for more" : "no service asks for less",
  };
}

function writeByService(
  { service, head }: Served,
  worksheet: Worksheet,
  metal: ConductorMetal,
  metalStep: Step,
  edition: Edition,
): Required {
  const cite = edition.clauses.electrodeConductorSize;
  const size = worksheet.given("service conductor", service.size, `${head}/size`);
  const serviceMetal = worksheet.given("metal of the service conductor", service.metal, `${head}/metal`);
  const one = writeArea(worksheet, sizeOf(service.size), [size], edition);
  const sets = worksheet.given("sets of service conductors", service.sets, `${head}/sets`);
  const total = worksheet.multiply("service area of all sets", [one, sets], "kcmil", cite);
  const cell = cellOf(service.metal, total.value, metal, edition);
  const read = worksheet.read("least size by the service", cell, [total, serviceMetal, metalStep]);
  return {
    area: writeArea(worksheet, sizeOf(String(read.value)), [read], edition),
    text: `${String(read.value)} ${metalMark(metal)}`,
    because: `the service has ${service.sets === 1 ? "" : `${String(service.sets)} x `}${service.size} ${metalMark(service.metal)}`,
  };
}

function answer(
  joint: Joint,
  worksheet: Worksheet,
  { holds, required, conductor, basis }: Written,
  edition: Edition,
): CheckFinding {
  const offered = offeredText(conductor);
  const noun = joint.role === "bonding" ? "bonding jumper" : "electrode conductor";
  return settled(ID, worksheet, {
    sentence: holds
      ? `The ${noun} is ${offered}; ${required.text} is enough: ${required.because}.`
      : `The ${noun} is ${offered}, smaller than the ${required.text} asked for: ${required.because}.`,
    cite: clauseOf(basis, edition),
    required: required.text,
    offered,
    fix: `${noun === "bonding jumper" ? "a" : "an"} ${noun} of ${required.text} or larger`,
  });
}

function clauseOf(basis: Basis, { clauses }: Edition) {
  return basis.by === "cap" ? clauses[basis.own.cap.clause] : clauses.electrodeConductorSize;
}

function leastCapKcmil(metal: ConductorMetal): number {
  return sizeOf((metal === "copper" ? ROD_COPPER : ROD_ALUMINUM).size).areaKcmil;
}

/** Within the table's first row, which goes down to every smaller service, and beyond every size, in its last. */
const SMALLEST_SERVICE_KCMIL = sizeOf("14 AWG").areaKcmil;
const LARGEST_SERVICE_KCMIL = Number.POSITIVE_INFINITY;

/** The cell for a service's area. Its first and last rows take every area, so none is refused. */
function cellOf(serviceMetal: ConductorMetal, areaKcmil: number, metal: ConductorMetal, edition: Edition): Cell {
  const cell = electrodeConductorCell(serviceMetal, areaKcmil, metal, edition);
  if (isRefused(cell)) throw new Error(cell.detail);
  return cell;
}

/** What the table asks for, in kcmil. Both tables, by the metal of the service, have the same ends. */
function askedKcmil(serviceMetal: ConductorMetal, areaKcmil: number, metal: ConductorMetal, edition: Edition): number {
  return sizeOf(String(cellOf(serviceMetal, areaKcmil, metal, edition).value)).areaKcmil;
}

function requiredAreaKcmil(
  service: NonNullable<Grounding["service"]>,
  metal: ConductorMetal,
  edition: Edition,
): number | undefined {
  const size = awgOrKcmil(service.size);
  if (size === undefined || !(service.sets >= 1)) return undefined;
  return askedKcmil(service.metal, size.areaKcmil * service.sets, metal, edition);
}

function offeredText({ size, metal }: ConductorGroup): string {
  return `${size} ${metalMark(metal)}`;
}
