import type { ConductorMetal, Stranding } from "./conductor.js";
import type { JointFunction } from "./joint-function.js";
import type { Length, Temperature, Torque } from "./quantity.js";

/** What kind of part it is. The words are the trade's. */
export const CONNECTOR_FAMILIES = [
  "set-screw-lug-one-hole",
  "set-screw-lug-two-hole",
  "multi-barrel-lug",
  "lug-kit",
  "in-line-splice",
  "splicer-reducer",
  "multi-tap-block",
  "power-distribution-block",
  "piercing-tap",
  "gutter-tap",
  "parallel-tap",
  "split-bolt",
  "split-bolt-with-spacer",
  "compression-lug-one-hole",
  "compression-lug-two-hole",
  "compression-lug-pair",
  "compression-sleeve",
  "compression-tap",
  "pin-adapter",
  "twist-on",
  "lever-splice",
  "spring-clamp-splice",
  "sealed-splice",
  "sealed-multi-tap",
  "direct-burial-splice",
  "intermix-splice",
  "neutral-bar",
  "ground-bar",
  "ground-bar-lug",
  "rod-clamp",
  "pipe-clamp",
  "rebar-clamp",
  "exothermic-weld",
  "equipment-terminal",
  "wiring-device-terminal",
] as const;
export type ConnectorFamily = (typeof CONNECTOR_FAMILIES)[number];

/** How it holds the conductor. */
export const CONSTRUCTIONS = [
  "set-screw",
  "compression",
  "insulation-piercing",
  "split-bolt",
  "bolted-clamp",
  "twist-on",
  "spring",
  "binding-screw",
  "weld",
] as const;
export type Construction = (typeof CONSTRUCTIONS)[number];

/** Where a connector may be used according to its listing. "equipment" is a part for use inside an enclosure. */
export const PLACE_LISTINGS = ["equipment", "dry", "damp", "wet", "direct-burial", "concrete"] as const;
export type PlaceListing = (typeof PLACE_LISTINGS)[number];

/** What an electrode clamp is listed for. */
export const ELECTRODES = [
  "copper-bonded-rod",
  "galvanized-rod",
  "stainless-rod",
  "concrete-encased-rebar",
  "water-pipe",
  "building-steel",
  "ground-ring",
  "plate",
] as const;
export type Electrode = (typeof ELECTRODES)[number];

/** "unmarked": the part was looked at and bears no such mark. An absent field means: not known. */
export type Unmarked = "unmarked";

/** The screw, bolt or other means that holds the conductor, as a torque tool meets it. */
export type Drive =
  /** Recessed hexagon or square; `acrossFlats` in inches as printed: "5/16". */
  | { readonly kind: "socket"; readonly acrossFlats: string }
  /** External hexagon, not of a split bolt. */
  | { readonly kind: "external-hex" }
  /** Slotted; the width and length of the slot choose the table column. `screwSize` is the head's size. */
  | {
      readonly kind: "slotted";
      readonly screwSize: "10-and-larger" | "under-10";
      readonly slotWidth: Length;
      readonly slotLength: Length;
    }
  /** Slotted hexagon head: two ways to drive it, two default torques. */
  | { readonly kind: "slotted-hex"; readonly slotWidth: Length; readonly slotLength: Length }
  | { readonly kind: "split-bolt" }
  /** Head that shears or breaks away at the right torque. */
  | { readonly kind: "breakaway" }
  /** A clamp's bolt, which no default table covers. */
  | { readonly kind: "clamp-bolt" }
  /** Turned by hand to the package's instructions. */
  | { readonly kind: "hand" }
  /** Nothing is tightened: pressed, welded or sprung. */
  | { readonly kind: "none" };

export interface Screw {
  readonly id: string;
  readonly drive: Drive;
  /** As printed on the part or in its instructions; "unmarked" where they give none. */
  readonly torque?: Torque | Unmarked;
}

/** Sizes an opening is listed for, for the strand forms named. */
export interface SizeRange {
  readonly from: string;
  readonly to: string;
  /** Absent strand forms are not listed. "unmarked" means the base case of class B and C. */
  readonly strandings: readonly Stranding[] | Unmarked;
}

/** What more than one conductor in an opening must be. */
export interface SharedOpening {
  readonly sameSize: boolean;
  readonly sameMetal: boolean;
  /** Where the marking limits which sizes may share. */
  readonly from?: string;
  readonly to?: string;
  readonly metals?: readonly ConductorMetal[];
}

/** Conductors of one size in a listed combination. */
export interface CombinationPart {
  readonly size: string;
  readonly count: number;
}

export interface Opening {
  readonly id: string;
  /** How many such openings the part has. */
  readonly count: number;
  /** In a tap connector: the opening for the conductor that runs through, or for the one that leaves. */
  readonly duty?: "run" | "tap";
  readonly ranges: readonly SizeRange[];
  /** Conductors one opening may take; "unmarked" means one. */
  readonly conductorsMax?: number | Unmarked;
  readonly shared?: SharedOpening;
  /** Where only listed combinations are allowed (twist-on): each is a multiset of sizes. */
  readonly combinations?: readonly (readonly CombinationPart[])[];
  /** Id of the screw that tightens it; several openings may share one. */
  readonly screw?: string;
  /** How much insulation to take off, from the part's instructions. */
  readonly stripLength?: Length;
}

/** Holes of a tongue or the bolts of a pad. `bolt` is the diameter in inches ("1/2") or a metric thread ("M12"). */
export interface HolePattern {
  readonly holes: number;
  readonly bolt: string;
  /** Between hole centers; needed from two holes up. */
  readonly spacing?: Length;
}

/** How the part is fixed. "integral": it comes fixed in its equipment. "frame": a kit for the equipment frames named. */
export type Mounting =
  | { readonly kind: "free" }
  | { readonly kind: "integral" }
  | { readonly kind: "pad"; readonly pattern: HolePattern }
  | { readonly kind: "frame"; readonly frames: readonly string[] };

export interface Tooling {
  readonly tool: string;
  readonly die?: string;
  readonly crimps?: number;
}

export interface Listing {
  /** "UL 486A-486B", "UL 467", … */
  readonly standard: string;
}

/** What a grounding listing covers. */
export interface GroundingListing {
  /** Listed as grounding and bonding equipment. */
  readonly listed: boolean;
  /** Electrodes a clamp is listed for; empty for a connector that is no clamp. */
  readonly electrodes: readonly Electrode[];
  /** Conductors per clamp; "unmarked" means one. */
  readonly conductorsPerClamp?: number | Unmarked;
}

/** A pressure connector, a lug, a clamp or a terminal, as its marking and instructions describe it. */
export interface Connector {
  /** Absent for a terminal that belongs to its equipment. */
  readonly partNumber?: string;
  readonly description: string;
  readonly family: ConnectorFamily;
  readonly construction: Construction;
  readonly functions: readonly JointFunction[];
  /** As printed: "AL9CU", "CU", "AL-CU-INTERMIX-DRY"; "unmarked" means copper only. */
  readonly metalMarking?: string;
  /** Temperature printed apart from the metal marking. */
  readonly temperature?: Temperature | Unmarked;
  /** Voltage rating in volts. */
  readonly voltageV?: number | Unmarked;
  /** The body is insulated as supplied. */
  readonly insulated: boolean;
  /** Openings keep conductors of unlike metals apart (separate barrels or a spacer). */
  readonly openingsApart: boolean;
  /** Part number of the listed insulating cover, where there is one. */
  readonly coverPart?: string;
  readonly listings: readonly Listing[];
  readonly places?: readonly PlaceListing[] | Unmarked;
  /** Mark for the line side of service equipment. */
  readonly lineSide?: "marked" | Unmarked;
  readonly grounding?: GroundingListing;
  readonly screws: readonly Screw[];
  readonly openings: readonly Opening[];
  readonly mounting: Mounting;
  /** A pin that lands in the equipment's own terminal as a conductor of this size and metal would. */
  readonly pin?: { readonly size: string; readonly metal: ConductorMetal };
  /** May be taken off and used again. */
  readonly reusable: boolean;
  /** "copper", "bronze", "aluminum", "bimetal", "stainless steel", …; of the tongue where it has one. */
  readonly bodyMetal?: string;
  /** "tin", "silver", "nickel"; "none" where it is bare. */
  readonly plating?: string;
  /** Deteriorating agents that the listing or the maker's statement covers: "hydrogen sulfide". */
  readonly withstands?: readonly string[];
  /** What its instructions say about oxide-inhibiting compound. */
  readonly compound?: "required" | "pre-filled" | "not-needed";
  readonly tooling?: Tooling;
}

/** A connector as stocked and sold. Money is a decimal string; hours are electrician-hours for one part. */
export interface CatalogueItem extends Connector {
  readonly partNumber: string;
  readonly status: "invented" | "supplied";
  readonly packQuantity: number;
  readonly price?: { readonly amount: string; readonly currency: string };
  readonly labourHours?: number;
}
