import type { Rule } from "../../core/rule.js";
import { metalMarking } from "../metals/metal-marking.js";
import { unlikeMetals } from "../metals/unlike-metals.js";
import { pinLanding } from "../mounting/pin-landing.js";
import { studAndHoles } from "../mounting/stud-and-holes.js";
import { conductorsPerOpening } from "../openings/conductors-per-opening.js";
import { listedCombination } from "../openings/listed-combination.js";
import { neutralTerminal } from "../openings/neutral-terminal.js";
import { deviceProtection } from "../overcurrent/device-protection.js";
import { deterioratingAgent } from "../place/deteriorating-agent.js";
import { placeListing } from "../place/place-listing.js";
import { aluminumPreparation } from "../preparation/aluminum-preparation.js";
import { wireRange } from "../range/wire-range.js";
import { rework } from "../rework/rework-joint.js";
import { lineSideMark } from "../service/line-side-mark.js";
import { strandClass } from "../stranding/strand-class.js";
import { feederTap } from "../taps/feeder-tap.js";
import { terminalTemperature } from "../termination/terminal-temperature.js";
import { torqueSource } from "../torque/torque-source.js";
import { voltageRating } from "../voltage/voltage-rating.js";

/** Every rule of the joint, in the order in which a refusal is named. */
export const JOINT_RULES: readonly Rule[] = Object.freeze([
  metalMarking,
  unlikeMetals,
  wireRange,
  strandClass,
  conductorsPerOpening,
  neutralTerminal,
  listedCombination,
  studAndHoles,
  pinLanding,
  voltageRating,
  placeListing,
  deterioratingAgent,
  lineSideMark,
  feederTap,
  terminalTemperature,
  deviceProtection,
  torqueSource,
  aluminumPreparation,
  rework,
]);

/** Which pass is named as deciding, first found first: the one that usually governs. */
export const GOVERNING: readonly string[] = Object.freeze([
  "feeder-tap",
  "terminal-temperature",
  "equipment-ground-size",
  "electrode-conductor-size",
  "electrode-connection",
  "wire-range",
]);
