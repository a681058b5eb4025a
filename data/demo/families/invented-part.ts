// The words in which the family tables describe a part. Everything made from them is invented.
import type {
  CatalogueItem,
  Drive,
  HolePattern,
  Mounting,
  PlaceListing,
  Screw,
  SizeRange,
  Stranding,
} from "@landfast/rules";
import { conductorAreaMm2 } from "../../build/conductor-area.js";

/** Strand forms most range-taking parts are listed for. */
export const COMMON_STRANDS: readonly Stranding[] = ["solid", "class-B", "class-C", "compressed", "compact"];
/** Strand forms of a pressed copper barrel: a solid conductor does not crimp like strands. */
export const PRESSED_STRANDS: readonly Stranding[] = ["class-B", "class-C", "compressed", "compact"];
/** Strand forms of a barrel flared for flexible cable. */
export const FLEXIBLE_STRANDS: readonly Stranding[] = [
  "class-B",
  "class-C",
  "class-G",
  "class-H",
  "class-I",
  "class-K",
];

export const INSIDE: readonly PlaceListing[] = ["equipment"];
export const DRY: readonly PlaceListing[] = ["dry"];
export const TO_DAMP: readonly PlaceListing[] = ["dry", "damp"];
export const TO_WET: readonly PlaceListing[] = ["dry", "damp", "wet"];
export const TO_BURIAL: readonly PlaceListing[] = ["dry", "damp", "wet", "direct-burial"];
export const TO_CONCRETE: readonly PlaceListing[] = ["dry", "damp", "wet", "direct-burial", "concrete"];

/** A drive as the tables write it: a fraction is the size of a recessed hexagon. */
export type DriveWord = `${number}/${number}` | "hex" | "slot" | "slotted hex" | "shear" | "split" | "clamp";

const SLOT = { slotWidth: { value: 0.05, unit: "in" }, slotLength: { value: 0.3, unit: "in" } } as const;

function driveOf(word: DriveWord): Drive {
  switch (word) {
    case "hex":
      return { kind: "external-hex" };
    case "slot":
      return { kind: "slotted", screwSize: "10-and-larger", ...SLOT };
    case "slotted hex":
      return { kind: "slotted-hex", ...SLOT };
    case "shear":
      return { kind: "breakaway" };
    case "split":
      return { kind: "split-bolt" };
    case "clamp":
      return { kind: "clamp-bolt" };
    default:
      return { kind: "socket", acrossFlats: word };
  }
}

/** The head of a screw in words: "5/16 in socket". */
export function headText(word: DriveWord): string {
  switch (word) {
    case "hex":
      return "hexagon head";
    case "slot":
      return "slotted";
    case "slotted hex":
      return "slotted hexagon head";
    case "shear":
      return "shear head";
    case "split":
      return "split bolt";
    case "clamp":
      return "clamp bolt";
    default:
      return `${word} in socket`;
  }
}

/** @param lbfIn torque in lbf-in as marked; null for a part that bears none */
export function screw(id: string, drive: DriveWord, lbfIn: number | null): Screw {
  return {
    id,
    drive: driveOf(drive),
    torque: lbfIn === null ? "unmarked" : { value: lbfIn, unit: "lbf-in" },
  };
}

export function range(from: string, to: string, strandings: readonly Stranding[] = COMMON_STRANDS): SizeRange {
  return { from, to, strandings };
}

/** Strip length in inches; null for a part whose instructions, as invented, give none. */
export function strip(inches: number | null): { readonly stripLength?: { value: number; unit: "in" } } {
  return inches === null ? {} : { stripLength: { value: inches, unit: "in" } };
}

/** A tongue: "3/8" is one hole for a 3/8 in bolt, "2 x 1/2 @ 1.75" two of 1/2 in, 1.75 in between centers. */
export function pad(text: string): Mounting {
  return { kind: "pad", pattern: patternOf(text) };
}

function patternOf(text: string): HolePattern {
  const [, holes, bolt, spacing] = /^(?:(\d) x )?(\d+\/\d+|M\d+)(?: @ ([\d.]+))?$/.exec(text) ?? [];
  if (bolt === undefined) throw new RangeError(`"${text}" is not a hole pattern`);
  if (holes === undefined || spacing === undefined) return { holes: 1, bolt };
  return { holes: Number(holes), bolt, spacing: { value: Number(spacing), unit: "in" } };
}

/** What a metal marking is cast from, in this catalogue. */
export function body(marking: string): { readonly bodyMetal: string; readonly plating: string } {
  return { bodyMetal: marking.includes("AL") ? "aluminum" : "copper", plating: "tin" };
}

/** Temperature printed beside a metal marking that has no digit for it; in degrees Celsius. */
export function printedTemperature(cel: number | null): Pick<CatalogueItem, "temperature"> {
  return { temperature: cel === null ? "unmarked" : { value: cel, unit: "Cel" } };
}

/** "6 AWG to 250 kcmil", or the one size. */
export function sizes(from: string, to: string): string {
  return from === to ? to : `${from} to ${to}`;
}

/**
 * A price in US dollars and the electrician-hours for one part, made up so that both grow with the largest size.
 *
 * @param base price in cents of a part for a thin wire
 * @param perMm2 cents for each mm2 of the largest size
 * @param hours electrician-hours of a part for a thin wire
 */
export function cost(
  size: string,
  base: number,
  perMm2: number,
  hours: number,
): Pick<CatalogueItem, "price" | "labourHours"> {
  const area = conductorAreaMm2(size);
  if (area === undefined) throw new RangeError(`"${size}" is not a conductor size`);
  const cents = Math.round(base + perMm2 * area);
  return {
    price: { amount: `${Math.floor(cents / 100)}.${String(cents % 100).padStart(2, "0")}`, currency: "USD" },
    labourHours: Math.round((hours + area / 500) * 100) / 100,
  };
}

/** Part numbers of one series, in turn: "LF-LUG-0101", "LF-LUG-0102", … */
export function numbering(word: string, first: number): () => string {
  let next = first;
  return () => `LF-${word}-${String(next++).padStart(4, "0")}`;
}

type Named = Omit<CatalogueItem, "status" | "partNumber">;

/** Gives a part its number and says that it is invented. Rows are only ever added at the end of a table. */
export function inventedPart(number: () => string, part: Named): CatalogueItem {
  return { partNumber: number(), status: "invented", ...part };
}
