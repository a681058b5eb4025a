import type { ConductorGroup, Grounding, Joint } from "@landfast/rules";
import { ask, type Case, type Objection, reject } from "../case.js";
import { cell, cmilOf, tableRows } from "../read-table.js";

interface Step {
  readonly upTo: number;
  readonly copper: number;
  readonly aluminum: number;
}

/** Rows of an interval table: the upper end (amperes or circular mils) and the areas of its two columns. */
function steps(table: string, scale: number): readonly Step[] {
  return tableRows("nfpa70", "2023", table).map((row) => ({
    upTo: cell(row, "upTo") === "" ? Number.POSITIVE_INFINITY : Math.round(Number(cell(row, "upTo")) * scale),
    copper: cmilOf(cell(row, "copper")) ?? Number.NaN,
    aluminum: cmilOf(cell(row, "aluminum")) ?? Number.NaN,
  }));
}

const EQUIPMENT_GROUND = steps("equipment-ground", 1);
const COPPER_SERVICE = steps("electrode-conductor-copper-service", 1000);
const ALUMINUM_SERVICE = steps("electrode-conductor-aluminum-service", 1000);

/** Rows of 250.102(C)(1); NaN where the share of 12.5 % takes over. */
const COPPER_SUPPLY = jumperSteps("bonding-jumper-copper-supply");
const ALUMINUM_SUPPLY = jumperSteps("bonding-jumper-aluminum-supply");

function jumperSteps(table: string): readonly Step[] {
  const area = (printed: string): number => (printed.endsWith("%") ? Number.NaN : (cmilOf(printed) ?? Number.NaN));
  return tableRows("nfpa70", "2023", table).map((row) => ({
    upTo: cell(row, "upTo") === "" ? Number.POSITIVE_INFINITY : Math.round(Number(cell(row, "upTo")) * 1000),
    copper: area(cell(row, "copper")),
    aluminum: area(cell(row, "aluminum")),
  }));
}

const columnFor = (group: Pick<ConductorGroup, "metal">): "copper" | "aluminum" =>
  group.metal === "copper" ? "copper" : "aluminum";

/**
 * 250.122: (A) by the device ahead, never larger than the circuit conductors; (B) raised by the ratio of areas when the
 * phases are; (F) full size in each raceway of parallel sets. (G): a tap's ground follows the feeder's device.
 */
export function equipmentGround({ joint }: Case): Objection[] {
  // 250.102(D), 250.104(B): behind a device, and to pipes other than water pipes, a jumper is sized the same way.
  const bonding = joint.role === "bonding" ? joint.grounding?.bonding : undefined;
  if (joint.role !== "equipment-ground" && bonding !== "load-side" && bonding !== "other-pipe") return [];
  const clause = "250.122";
  const protection = joint.circuit?.protection;
  if (protection?.kind !== "device" && protection?.kind !== "feeder-tap")
    return [ask(clause, "the device ahead of the circuit")];
  if (protection.kind === "feeder-tap" && protection.through !== undefined)
    return [ask(clause, "the device ahead of the circuit, which is beyond a transformer")];
  const device = protection.kind === "device" ? protection.ratingA : protection.feederDeviceA;
  const step = EQUIPMENT_GROUND.find(({ upTo }) => device <= upTo);
  if (step === undefined) return [ask(clause, "a device beyond the table")];
  const { upsizing } = joint;
  return joint.conductors.flatMap((group) => {
    const own = cmilOf(group.size);
    if (own === null) return [ask(clause, `${group.size} is no gauge size`)];
    const base = step[columnFor(group)];
    if (upsizing === undefined) {
      if (own >= base) return [];
      return protection.kind === "device"
        ? [reject(clause, `${group.size} for ${device} A`)]
        : [ask(clause, "size of the tap conductors")];
    }
    const [smallest, installed] = [cmilOf(upsizing.minimum.size), cmilOf(upsizing.installed.size)];
    if (smallest === null || installed === null) return [ask(clause, "metric phases")];
    // (A): never required to be larger than the circuit conductors, all of a phase together. An aluminum ground of the
    // area of copper conductors is the smaller one of the two by what it carries.
    const comparable = group.metal === "copper" || upsizing.installed.metal !== "copper";
    if (comparable && own >= installed * (joint.circuit?.sets ?? 1)) return [];
    if (upsizing.minimum.metal !== upsizing.installed.metal)
      return own < base
        ? [reject(clause, `${group.size} for ${device} A`)]
        : [ask(clause, "phases of two metals have no ratio of areas")];
    // base x installed / smallest, compared without dividing; a size that was lowered changes nothing.
    const raised = installed > smallest ? own * smallest >= base * installed : own >= base;
    return raised ? [] : [reject(`${clause}(B)`, `${group.size} is not raised with the phases`)];
  });
}

const ROD_PIPE_PLATE: readonly string[] = ["copper-bonded-rod", "galvanized-rod", "stainless-rod", "plate"];

/**
 * 250.66: by the area of the service conductors, summed over parallel sets. A conductor that serves a rod or plate alone
 * need not exceed 6 AWG copper or 4 AWG aluminum (A), one that serves a concrete-encased electrode alone 4 AWG copper (B).
 */
export function electrodeConductor({ joint }: Case): Objection[] {
  // 250.53(C): jumpers between the electrodes of one system are sized by 250.66 too.
  const between = joint.role === "bonding" && joint.grounding?.bonding === "electrode-system";
  if (joint.role !== "electrode-conductor" && !between) return [];
  const clause = "250.66";
  const { electrode, soleConnection, tapService, ringSize } = joint.grounding ?? {};
  const whole = joint.grounding?.service;
  return joint.conductors.flatMap((group) => {
    // 250.64(D)(1): a tap goes by the conductors of its own enclosure.
    const leaves = joint.function === "tap" && group.duty === "tap";
    const objections = electrodeConductorOf(group, leaves && tapService ? tapService : whole, {
      electrode,
      soleConnection,
      ringSize,
    });
    if (!leaves || tapService !== undefined || objections.every(({ kind }) => kind === "ask")) return objections;
    // Too small for the whole service, but perhaps not for its own enclosure; the first row is asked for by any.
    const own = cmilOf(group.size) ?? 0;
    return own < (COPPER_SERVICE[0]?.[columnFor(group)] ?? 0)
      ? objections
      : [ask(clause, "conductors of the enclosure")];
  });
}

function electrodeConductorOf(
  group: ConductorGroup,
  service: NonNullable<Joint["grounding"]>["service"],
  {
    electrode,
    soleConnection,
    ringSize,
  }: { readonly [Fact in "electrode" | "soleConnection" | "ringSize"]: Grounding[Fact] },
): Objection[] {
  const clause = "250.66";
  const table = service === undefined ? null : service.metal === "copper" ? COPPER_SERVICE : ALUMINUM_SERVICE;
  const serviceArea = service === undefined ? null : cmilOf(service.size);
  const own = cmilOf(group.size);
  if (own === null) return [ask(clause, `${group.size} is no gauge size`)];
  const column = columnFor(group);
  // 250.66(C): the conductor to a ring need not be larger than the ring, which is of 2 AWG copper or larger.
  const toRing = electrode === "ground-ring" && soleConnection === true && column === "copper";
  const given = ringSize === undefined ? null : cmilOf(ringSize);
  const ring = given === null || given < 66_360 ? null : given;
  if (toRing && ring !== null && own >= ring) return [];
  if (soleConnection === true && electrode !== undefined) {
    if (ROD_PIPE_PLATE.includes(electrode) && own >= (column === "copper" ? 26_240 : 41_740)) return [];
    if (electrode === "concrete-encased-rebar" && column === "copper" && own >= 41_740) return [];
  }
  if (table === null || serviceArea === null || service === undefined) {
    // Whatever the service is, its row asks for no more than the last one and for no less than the first.
    const rows = [...COPPER_SERVICE, ...ALUMINUM_SERVICE].map((row) => row[column]);
    if (own >= Math.max(...rows)) return [];
    if (own < Math.min(...rows)) return [reject(clause, `${group.size} is below every row`)];
    return [ask(clause, "the service conductors")];
  }
  const step = table.find(({ upTo }) => serviceArea * service.sets <= upTo);
  if (step === undefined) throw new Error("the table has no last row");
  if (own >= step[column]) return [];
  if (toRing && ring === null && own >= 66_360) return [ask(clause, "size of the ring")];
  return [reject(clause, `${group.size} for the service`)];
}

/**
 * 250.102(C), 250.28(D), 250.30(A)(1): main, system and supply-side jumpers by the area of the supply, all sets together, or
 * of the sets in one raceway where each has a jumper; beyond the table an eighth of the area of conductors of the jumper's
 * own metal. 250.104(A)(1), (C): the same for water pipes and structural metal, from 2020 on no larger than 3/0 AWG copper
 * or 250 kcmil aluminum.
 */
export function bondingJumper({ joint, basis }: Case): Objection[] {
  if (joint.role !== "bonding") return [];
  const { bonding, service, equivalentService, racewaysBondedApart } = joint.grounding ?? {};
  if (bonding === undefined) return [ask("250.102", "what is bonded")];
  const pipe = bonding === "water-pipe" || bonding === "structural-metal";
  if (!pipe && bonding !== "main" && bonding !== "system" && bonding !== "supply-side") return [];
  const clause = pipe ? "250.104" : "250.102";
  const raceways = bonding === "supply-side" ? (racewaysBondedApart ?? 1) : 1;
  return joint.conductors.flatMap((group) => {
    const own = cmilOf(group.size);
    if (own === null) return [ask(clause, `${group.size} is no gauge size`)];
    const column = columnFor(group);
    const limit = pipe && basis.edition !== "2017" ? (column === "copper" ? 167_800 : 250_000) : Infinity;
    if (own >= limit) return [];
    // No supply asks for less than the first row.
    if (own < (COPPER_SUPPLY[0]?.[column] ?? 0)) return [reject(clause, `${group.size} is below every row`)];
    if (service === undefined) return [ask(clause, "the supply conductors")];
    const supply = cmilOf(service.size);
    if (supply === null) return [ask(clause, `${service.size} is no gauge size`)];
    if (service.sets % raceways !== 0) return [ask(clause, "sets in one raceway")];
    const rows = service.metal === "copper" ? COPPER_SUPPLY : ALUMINUM_SUPPLY;
    const needed = rows.find(({ upTo }) => supply * service.sets <= upTo * raceways)?.[column] ?? Number.NaN;
    if (!Number.isNaN(needed)) return own >= needed ? [] : [reject(clause, `${group.size} for the supply`)];
    const base = service.metal === group.metal ? service : equivalentService;
    const each = base?.metal === group.metal ? cmilOf(base.size) : null;
    if (base === undefined || each === null || base.sets % raceways !== 0)
      return [ask(clause, "conductors of the jumper's metal that carry as much as the supply")];
    return own * 8 * raceways >= each * base.sets ? [] : [reject(clause, `${group.size} is less than 12.5 %`)];
  });
}
