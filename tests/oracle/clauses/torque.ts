import type { Drive } from "@landfast/rules";
import { ask, byHole, type Case, type Objection, type Seat } from "../case.js";
import { cell, cmilOf, type Row, tableRows } from "../read-table.js";
import { ofLength } from "../scaled-integer.js";

const BY_CONDUCTOR = tableRows("nfpa70", "2023", "torque-by-conductor");
const BY_SOCKET = new Set(tableRows("nfpa70", "2023", "torque-socket").map((row) => cell(row, "key")));
const inch = (value: number): number => ofLength({ value, unit: "in" });

/**
 * 110.14(D), Annex I: a torque that is not marked comes from the annex, where the annex knows the drive. Where neither gives
 * one, the joint cannot be tightened to a stated value.
 */
export function torque({ connector }: Case, seats: readonly Seat[]): Objection[] {
  return byHole(seats).flatMap((held) => {
    const opening = held[0]?.opening;
    const screw = connector.screws.find(({ id }) => id === opening?.screw);
    if (screw === undefined) return [];
    const { drive } = screw;
    if (drive.kind === "breakaway" || drive.kind === "hand" || drive.kind === "none") return [];
    if (typeof screw.torque === "object") return [];
    if (screw.torque === undefined) return [ask("110.14(D)", `torque of ${screw.id}`)];
    const largest = Math.max(...held.map(({ conductor }) => cmilOf(conductor.size) ?? Number.NaN));
    return annexCovers(drive, largest) ? [] : [ask("Annex I", `no torque for a ${drive.kind} drive`)];
  });
}

function annexCovers(drive: Drive, cmil: number): boolean {
  if (drive.kind === "socket") return BY_SOCKET.has(drive.acrossFlats);
  if (drive.kind === "clamp-bolt") return false;
  if (drive.kind === "slotted" && drive.screwSize === "under-10") {
    // Table I.2 is for conductors up to 8 AWG and goes by the slot: the narrow column ends at 1/4 in.
    if (cmil > 16_510) return false;
    const narrow = ofLength(drive.slotWidth) < inch(0.047);
    return !(narrow && ofLength(drive.slotLength) >= inch(0.28125));
  }
  const row = BY_CONDUCTOR.find(
    (each) => (cmilOfAnnex(each, "from") ?? 0) <= cmil && cmil <= (cmilOfAnnex(each, "to") ?? 0),
  );
  if (row === undefined) return false;
  if (drive.kind === "slotted" || drive.kind === "slotted-hex") {
    const small = ofLength(drive.slotWidth) <= inch(0.047) && ofLength(drive.slotLength) <= inch(0.25);
    const slotted = cell(row, small ? "slottedSmall" : "slottedLarge");
    return slotted !== "" || (drive.kind === "slotted-hex" && cell(row, "externalHex") !== "");
  }
  return cell(row, drive.kind === "split-bolt" ? "splitBolt" : "externalHex") !== "";
}

/** The annex starts at 30 AWG, below every size that a joint may have. */
const cmilOfAnnex = (row: Row, column: "from" | "to"): number | null =>
  cell(row, column) === "30 AWG" ? 0 : cmilOf(cell(row, column));
