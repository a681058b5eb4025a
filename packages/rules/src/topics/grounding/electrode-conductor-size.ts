import type { ConductorGroup, ConductorMetal } from "../../core/conductor.js";
import { conductorPath } from "../../core/conductor-path.js";
import { type ConductorSize, sizeOf } from "../../core/conductor-size.js";
import type { Edition } from "../../core/edition.js";
import {
  type ElectrodeCap,
  electrodeCap,
  electrodeConductorCell,
  ROD_ALUMINUM,
  ROD_COPPER,
} from "../../core/electrode-conductor.js";
import type { CheckFinding, Step } from "../../core/finding.js";
import { awgOrKcmil, groundingColumn, metalMark, writeArea } from "../../core/grounding-area.js";
import type { Grounding, Joint } from "../../core/joint.js";
import { asking, notApplicable, type Rule, settled } from "../../core/rule.js";
import { isRefused, type Table } from "../../core/table.js";
import { Worksheet } from "../../core/worksheet.js";

const ID = "electrode-conductor-size";

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
      const one = write(joint, worksheet, conductor, group, decided, edition);
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
  | { readonly by: "cap"; readonly size: ConductorSize; readonly cap: ElectrodeCap }
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

/** The ring's own size; undefined where it is not given, or is none that a ring can have. */
function ringCap({ grounding }: Joint): ElectrodeCap | undefined {
  const ring = awgOrKcmil(grounding?.ringSize ?? "");
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
  const { electrode, soleConnection } = joint.grounding ?? {};
  const served = servedBy(joint, conductor);
  const service = served?.service;
  const ring = electrode === "ground-ring" && conductor.metal === "copper";
  const cap = electrode === undefined ? undefined : ring ? ringCap(joint) : electrodeCap(electrode, conductor.metal);
  const capReached = cap !== undefined && size.areaKcmil >= sizeOf(cap.size).areaKcmil;
  if (capReached && soleConnection === true) return { by: "cap", size, cap };
  const [smallest, largest] = extremes(conductor.metal, edition);
  if (size.areaKcmil >= largest) return { by: "largest", size };
  if (size.areaKcmil < smallest) return { by: "smallest", size };
  const known = service === undefined ? undefined : requiredAreaKcmil(service, conductor.metal, edition);
  if (service !== undefined && known === undefined)
    return {
      path: served?.head ?? "joint/grounding/service",
      because:
        "The service conductor must be given in AWG or kcmil, and its sets counted, for the table to be entered.",
    };
  if (served !== undefined && known !== undefined && size.areaKcmil >= known) return { by: "service", size, served };
  // From here on the table asks for more, or may do so: a cap could still make the conductor large enough.
  if (capReached && soleConnection === undefined)
    return {
      path: "joint/grounding/soleConnection",
      because:
        "The conductor is large enough only if it serves this electrode alone; whether it goes on to another is not given.",
    };
  if (ring && cap === undefined && soleConnection !== false && size.areaKcmil >= SMALLEST_RING.areaKcmil)
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
  joint: Joint,
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
  const required = writeRequired(joint.grounding, worksheet, conductor.metal, metal, basis, edition);
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
  grounding: Grounding | undefined,
  worksheet: Worksheet,
  metal: ConductorMetal,
  metalStep: Step,
  basis: Basis,
  edition: Edition,
): Required {
  const mark = metalMark(metal);
  if (basis.by === "cap") {
    const electrode = worksheet.given("electrode", grounding?.electrode ?? "", "joint/grounding/electrode");
    const sole = worksheet.given("serves this electrode alone", true, "joint/grounding/soleConnection");
    const uses = [electrode, sole, metalStep];
    if (basis.cap.clause === "electrodeConductorToRing")
      uses.push(worksheet.given("size of the ring", basis.cap.size, "joint/grounding/ringSize"));
    const cap = worksheet.state(
      "largest size asked for to this electrode alone",
      basis.cap.size,
      edition.clauses[basis.cap.clause],
      undefined,
      uses,
    );
    return {
      area: writeArea(worksheet, sizeOf(basis.cap.size), [cap], edition),
      text: `${basis.cap.size} ${mark}`,
      because: "it serves this electrode alone",
    };
  }
  if (basis.by === "service") return writeByService(basis.served, worksheet, metal, metalStep, edition);
  // Whatever the service is, the table asks for no more than its last row and no less than its first.
  const table = edition.tables.electrodeConductorCopperService;
  const row = basis.by === "largest" ? table.rows[table.rows.length - 1] : table.rows[0];
  const cell = row?.cells[groundingColumn(metal)];
  if (cell === undefined || isRefused(cell)) throw new Error("the table of electrode conductors has no such row");
  const read = worksheet.read(
    basis.by === "largest" ? "largest size the table asks for" : "smallest size the table asks for",
    cell,
    [metalStep],
  );
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
  const cell = electrodeConductorCell(service.metal, total.value, metal, edition);
  const read = worksheet.tryRead("least size by the service", cell, [total, serviceMetal, metalStep]);
  if ("refusal" in read) throw new Error(read.detail);
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
  return basis.by === "cap" ? clauses[basis.cap.clause] : clauses.electrodeConductorSize;
}

function leastCapKcmil(metal: ConductorMetal): number {
  return sizeOf((metal === "copper" ? ROD_COPPER : ROD_ALUMINUM).size).areaKcmil;
}

/** The areas of the smallest and the largest size that the table asks for; both tables have the same ends. */
function extremes(metal: ConductorMetal, edition: Edition): readonly [number, number] {
  const { rows } = edition.tables.electrodeConductorCopperService;
  const column = groundingColumn(metal);
  return [areaOf(rows[0]?.cells[column]), areaOf(rows[rows.length - 1]?.cells[column])];
}

function areaOf(cell: Table["rows"][number]["cells"][string] | undefined): number {
  return cell === undefined || isRefused(cell) ? Number.NaN : sizeOf(String(cell.value)).areaKcmil;
}

function requiredAreaKcmil(
  service: NonNullable<Grounding["service"]>,
  metal: ConductorMetal,
  edition: Edition,
): number | undefined {
  const size = awgOrKcmil(service.size);
  if (size === undefined || !(service.sets >= 1)) return undefined;
  const cell = electrodeConductorCell(service.metal, size.areaKcmil * service.sets, metal, edition);
  return isRefused(cell) ? undefined : sizeOf(String(cell.value)).areaKcmil;
}

function offeredText({ size, metal }: ConductorGroup): string {
  return `${size} ${metalMark(metal)}`;
}
