/** Torques and driving features in trade words. */
import type { Drive } from "./connector.js";
import type { DrivenBy } from "./default-torque.js";
import type { Torque, TorqueInUnits } from "./quantity.js";

/** "275 lbf-in (22.9 lbf-ft, 31.1 N-m)": the printed unit first, then the two others. */
export function torqueText(torque: TorqueInUnits): string {
  const { printed } = torque;
  const lbfIn = `${String(torque.lbfIn)} lbf-in`;
  const lbfFt = `${String(torque.lbfFt)} lbf-ft`;
  const newtonMetre = `${String(torque.newtonMetre)} N-m`;
  if (printed.unit === "lbf-in") return `${lbfIn} (${lbfFt}, ${newtonMetre})`;
  return printed.unit === "lbf-ft" ? `${lbfFt} (${lbfIn}, ${newtonMetre})` : `${newtonMetre} (${lbfIn}, ${lbfFt})`;
}

/** "275 lbf-in": as printed. */
export function printedText(printed: Torque): string {
  return `${String(printed.value)} ${printed.unit}`;
}

/** The driving feature that a tool must fit; `way` where a slotted hexagon is driven in one of its two. */
export function driveText(drive: Drive, way: DrivenBy | null): string {
  switch (drive.kind) {
    case "socket":
      return `${drive.acrossFlats} in recessed hex or square`;
    case "external-hex":
      return "external hex";
    case "slotted":
      return "slotted";
    case "slotted-hex":
      return way === null ? "slotted hex" : way === "slot" ? "slotted" : "external hex";
    case "split-bolt":
      return "external hex of the split bolt";
    case "breakaway":
      return "breakaway head";
    case "clamp-bolt":
      return "clamp bolt";
    case "hand":
      return "by hand";
    case "none":
      return "none";
  }
}
