import type { ConductorGroup, ConductorRole } from "./conductor.js";
import type { Connector, Electrode, HolePattern, Unmarked } from "./connector.js";
import type { EquipmentKind } from "./equipment-kind.js";
import type { JointFunction } from "./joint-function.js";
import type { Location } from "./location.js";
import type { HeldProjectRule, ProjectRule } from "./project-rule.js";
import type { Area, Length, Temperature } from "./quantity.js";

/** Which rules apply: always said, never defaulted. */
export interface Basis {
  readonly ruleSet: "nfpa70";
  readonly edition: "2017" | "2020" | "2023";
  /** Date of installation, "2024-05-01"; decides where an edition's own text takes effect on a date. */
  readonly installedOn?: string;
  /** What the authority on site adds to the code. It asks for more; it never allows more. */
  readonly jurisdiction?: Jurisdiction;
}

/** A local amendment, as somebody read it: nothing of it is known here by itself. */
export interface Jurisdiction {
  readonly name: string;
  /** Where it stands: "ordinance 12, section 4". */
  readonly amendment: string;
  /** How aluminum is made ready, beyond the connector's instructions. */
  readonly aluminum?: AluminumAmendment;
}

export interface AluminumAmendment {
  /** Whether it is for all aluminum conductors or for stranded ones only. */
  readonly conductors: "all" | "stranded";
  readonly brush?: "required";
  /** "required-unless-marked": not where the connector is marked for use without compound. */
  readonly compound?: "required" | "required-unless-marked";
}

/** What protects the conductor. */
export type Protection =
  /** An overcurrent device ahead of the conductor. */
  | { readonly kind: "device"; readonly ratingA: number }
  /** A tap to a feeder: the feeder's device is ahead, the tap's own device at its end. */
  | {
      readonly kind: "feeder-tap";
      readonly feederDeviceA: number;
      readonly length: Length;
      /** The one device, or the equipment, in which the tap ends. */
      readonly endDeviceA: number;
      /** Whether the tap leaves the enclosure in which it is made. */
      readonly leavesEnclosure: boolean;
      /** In a raceway or otherwise protected from physical damage. */
      readonly physicallyProtected: boolean;
      readonly outdoors?: boolean;
      /** For conductors of a transformer's secondary: its voltages. `feederDeviceA` is then the device of its primary. */
      readonly through?: { readonly primaryV: number; readonly secondaryV: number };
    }
  /** Service conductors: no device of the premises ahead. */
  | { readonly kind: "service" }
  /** A motor branch circuit, whose short-circuit device follows Article 430 and not the ampacity. */
  | { readonly kind: "motor-circuit" }
  /** Stated by the designer: no overcurrent device protects this conductor by its ampacity (battery string). */
  | { readonly kind: "none-stated"; readonly because: string };

export interface Circuit {
  /** Between lines, as the system is named. */
  readonly voltageV?: number;
  /** Load for sizing: the continuous part is already at 125 %. Not together with the next two. */
  readonly loadA?: number;
  readonly continuousLoadA?: number;
  readonly nonContinuousLoadA?: number;
  readonly protection?: Protection;
  /** Conductors in parallel per phase. */
  readonly sets: number;
  /** For splices and taps: the lowest terminal rating at the conductor's ends. */
  readonly endTerminalTemperature?: Temperature | Unmarked;
  /** One statement for all legs: same length, metal, size, insulation, and terminated in the same manner. */
  readonly parallelLegsAlike?: boolean;
  /** What allows legs below 1/0 AWG, where there are such. */
  readonly smallLegs?: SmallLegs;
}

/** Uses for which conductors below 1/0 AWG may run in parallel. "high-frequency": 360 Hz and more. */
export const SMALL_LEGS = ["control-power", "high-frequency", "existing-neutral"] as const;
export type SmallLegs = (typeof SMALL_LEGS)[number];

/** What the conductor was raised from, so that the ground can follow. */
export interface Upsizing {
  /** The smallest phase size that would have been enough, and the one installed. */
  readonly minimum: { readonly size: string; readonly metal: "copper" | "aluminum" | "copper-clad-aluminum" };
  readonly installed: { readonly size: string; readonly metal: "copper" | "aluminum" | "copper-clad-aluminum" };
}

/**
 * What a bonding jumper bonds, which decides by what it is sized. "load-side": equipment behind an overcurrent device.
 * "by-design": a bond to which no clause gives a size, such as a grid in earth.
 */
export const BONDINGS = [
  "main",
  "system",
  "supply-side",
  "load-side",
  "electrode-system",
  "water-pipe",
  "other-pipe",
  "structural-metal",
  "by-design",
] as const;
export type Bonding = (typeof BONDINGS)[number];

/** Ungrounded conductors of a service or of a transformer's secondary: the largest of one set, and the sets. */
export interface ServiceConductors {
  readonly size: string;
  readonly metal: "copper" | "aluminum" | "copper-clad-aluminum";
  readonly sets: number;
}

/** What a grounding electrode conductor or bonding jumper serves. */
export interface Grounding {
  readonly electrode?: Electrode;
  /** Of the ring itself, where the electrode is a ground ring. */
  readonly ringSize?: string;
  readonly service?: ServiceConductors;
  /** For a tap to the common electrode conductor of several disconnects: the conductors of the one enclosure it serves. */
  readonly tapService?: ServiceConductors;
  /** Only with role "bonding". */
  readonly bonding?: Bonding;
  /**
   * Where the service is of another metal than the jumper and beyond the table's sizes: conductors of the jumper's metal
   * that carry as much as the installed ones.
   */
  readonly equivalentService?: ServiceConductors;
  /** Raceways that the sets of the service are divided among, where a supply-side jumper runs in each of them. */
  readonly racewaysBondedApart?: number;
  /** The electrode conductor serves only this electrode and does not go on to another. */
  readonly soleConnection?: boolean;
}

export { EQUIPMENT_KINDS, type EquipmentKind } from "./equipment-kind.js";

export interface BendingSpace {
  /** Whether the conductor leaves through the wall opposite its terminal or through another. */
  readonly entry: "opposite" | "side";
  readonly available: Length;
  readonly wiresPerTerminal: number;
  /** Removable or lay-in terminal for one wire: the table's reduction applies. */
  readonly removableTerminal?: boolean;
}

/** A cross-section of an enclosure at the fullest place. */
export interface SpaceSection {
  readonly kind: "enclosure" | "wireway";
  readonly section: Area;
  readonly conductors: Area;
  readonly splices: Area;
}

/** What a pad or bus may be made of, and plated with. */
export const PAD_METALS = ["copper", "aluminum", "steel"] as const;
export const PAD_PLATINGS = ["none", "tin", "silver", "nickel"] as const;

/** What a lug touches: the pad or bus, or the near face of a bimetal plate that lies on it. */
export interface PadMetal {
  readonly metal: (typeof PAD_METALS)[number];
  /** "none": looked at and bare. */
  readonly plating?: (typeof PAD_PLATINGS)[number];
}

export interface Equipment {
  readonly tag: string;
  readonly kind?: EquipmentKind;
  /** The maker's frame a lug kit must be listed for. */
  readonly frame?: string;
  readonly terminalTemperature?: Temperature | Unmarked;
  /** The equipment's own terminal: where no separate connector is used, or where a pin adapter lands. */
  readonly terminal?: Connector;
  /** Bolts of the pad or bus where a lug is fixed. */
  readonly stud?: HolePattern;
  readonly padMetal?: PadMetal;
  readonly bending?: BendingSpace;
  readonly space?: SpaceSection;
  /** Of a pull or junction box, in cubic inches. */
  readonly boxVolumeIn3?: number;
}

export { LOCATIONS, type Location } from "./location.js";

export interface Place {
  readonly location: Location;
  /** "hydrogen sulfide", "salt air": what attacks metal there. */
  readonly deterioratingAgent?: string;
  /** Whether the finished joint can be reached without taking off part of the building, digging, or breaking anything. */
  readonly accessible?: boolean;
}

/** The connector a joint is checked with: an item of the catalogue, one described in full, or the equipment's own terminal. */
export type ConnectorChoice =
  | { readonly partNumber: string }
  | { readonly described: Connector }
  | { readonly equipmentTerminal: true };

/** One joint, or several equal ones, to be made. */
export interface Joint {
  /** Unique in its job: "LKF-024". */
  readonly mark: string;
  readonly area?: string;
  readonly description?: string;
  readonly function: JointFunction;
  readonly role: ConductorRole;
  /** Joints with this mark. */
  readonly quantity: number;
  /** Overrides the job's basis, for a part of the building under another permit. */
  readonly basis?: Basis;
  readonly conductors: readonly ConductorGroup[];
  readonly circuit?: Circuit;
  readonly equipment?: Equipment;
  readonly place?: Place;
  readonly upsizing?: Upsizing;
  readonly grounding?: Grounding;
  /** Absent: the equipment's own terminal where it serves, else one chosen from the catalogue. */
  readonly connector?: ConnectorChoice;
  /** State of the part that is to be used. */
  readonly partState?: "new" | "reused";
  /** Tool and die that are to be used, where already settled. */
  readonly tooling?: { readonly tool?: string; readonly die?: string };
  /** The joint is made again after it was once in service. */
  readonly rework?: boolean;
  /** These conductors lie in this connector already and were tightened in it. */
  readonly tightenedBefore?: boolean;
  /** The project's own rules that are for this joint: put in from those of the job, never posted with the joint. */
  readonly projectRules?: readonly HeldProjectRule[];
}

/** A job: joints under one basis. */
export interface Job {
  readonly name: string;
  readonly basis: Basis;
  readonly joints: readonly Joint[];
  /** What the project asks beyond the code; it may refuse, never allow. */
  readonly projectRules?: readonly ProjectRule[];
}
