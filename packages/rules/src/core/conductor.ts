import type { Temperature } from "./quantity.js";

export type ConductorMetal = "copper" | "aluminum" | "copper-clad-aluminum";
export const CONDUCTOR_METALS: readonly ConductorMetal[] = ["copper", "aluminum", "copper-clad-aluminum"];

/**
 * How the conductor is stranded. Class letters are ASTM's, class numbers IEC 60228's. Compact and compressed are
 * forms of class B that measure smaller; a listed range names them apart.
 */
export type Stranding =
  | "solid"
  | "class-B"
  | "class-C"
  | "class-D"
  | "compressed"
  | "compact"
  | "class-G"
  | "class-H"
  | "class-I"
  | "class-K"
  | "class-M"
  | "iec-class-1"
  | "iec-class-2"
  | "iec-class-5"
  | "iec-class-6"
  | "unknown";
export const STRANDINGS: readonly Stranding[] = [
  "solid",
  "class-B",
  "class-C",
  "class-D",
  "compressed",
  "compact",
  "class-G",
  "class-H",
  "class-I",
  "class-K",
  "class-M",
  "iec-class-1",
  "iec-class-2",
  "iec-class-5",
  "iec-class-6",
  "unknown",
];

/**
 * Insulation as the code names it, or what stands in its place. "equipment-lead" is a lead supplied as part of listed
 * equipment, "fixture-wire" one of Article 402: neither is sized from the building-wire ampacity table. "other" needs
 * its own temperature rating beside it.
 */
export type Insulation =
  | "THHN"
  | "THWN"
  | "THWN-2"
  | "THHN/THWN-2"
  | "XHHW"
  | "XHHW-2"
  | "RHH"
  | "RHW"
  | "RHW-2"
  | "RHH/RHW-2"
  | "THW"
  | "THW-2"
  | "TW"
  | "UF"
  | "USE"
  | "USE-2"
  | "NM"
  | "bare"
  | "equipment-lead"
  | "fixture-wire"
  | "other";
export const INSULATIONS: readonly Insulation[] = [
  "THHN",
  "THWN",
  "THWN-2",
  "THHN/THWN-2",
  "XHHW",
  "XHHW-2",
  "RHH",
  "RHW",
  "RHW-2",
  "RHH/RHW-2",
  "THW",
  "THW-2",
  "TW",
  "UF",
  "USE",
  "USE-2",
  "NM",
  "bare",
  "equipment-lead",
  "fixture-wire",
  "other",
];

export type ConductorRole = "phase" | "neutral" | "equipment-ground" | "electrode-conductor" | "bonding";
export const CONDUCTOR_ROLES: readonly ConductorRole[] = [
  "phase",
  "neutral",
  "equipment-ground",
  "electrode-conductor",
  "bonding",
];

/** Equal conductors that meet in one joint. */
export interface ConductorGroup {
  /** How many of them meet in one joint; a conductor that runs through a tap uncut counts once. */
  readonly count: number;
  readonly metal: ConductorMetal;
  /** "4/0 AWG", "250 kcmil", "35 mm2". */
  readonly size: string;
  readonly stranding: Stranding;
  /** How many strands were counted: tells the class where it is "unknown", and is compared with it where it is given. */
  readonly strands?: number;
  readonly insulation: Insulation;
  /**
   * For "other", "equipment-lead" and "fixture-wire": its own rating. For "bare": the lowest rating of the insulated
   * conductors beside it. Refused where the code gives the rating by type.
   */
  readonly insulationRating?: Temperature;
  /** In a tap: which conductor runs through and which one leaves. */
  readonly duty?: "run" | "tap";
  /** Only with duty "run": it passes through the connector in one piece. Cut, its ends lie in openings as others do. */
  readonly uncut?: boolean;
}
