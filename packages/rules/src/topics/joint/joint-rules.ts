import type { Rule } from "../../core/rule.js";
import { distributionBlock } from "../blocks/distribution-block.js";
import { aluminumInEarth } from "../grounding/aluminum-in-earth.js";
import { bondingJumperSize } from "../grounding/bonding-jumper-size.js";
import { electrodeConductorSize } from "../grounding/electrode-conductor-size.js";
import { electrodeConnection } from "../grounding/electrode-connection.js";
import { electrodeSplice } from "../grounding/electrode-splice.js";
import { equipmentGroundSize } from "../grounding/equipment-ground-size.js";
import { groundingConnection } from "../grounding/grounding-connection.js";
import { deviceLoad } from "../load/device-load.js";
import { metalMarking } from "../metals/metal-marking.js";
import { unlikeMetals } from "../metals/unlike-metals.js";
import { lugOnPad } from "../mounting/lug-on-pad.js";
import { pinLanding } from "../mounting/pin-landing.js";
import { studAndHoles } from "../mounting/stud-and-holes.js";
import { conductorsPerOpening } from "../openings/conductors-per-opening.js";
import { listedCombination } from "../openings/listed-combination.js";
import { neutralTerminal } from "../openings/neutral-terminal.js";
import { runThrough } from "../openings/run-through.js";
import { deviceProtection } from "../overcurrent/device-protection.js";
import { parallelLegs } from "../parallel/parallel-legs.js";
import { accessibleJoint } from "../place/accessible-joint.js";
import { deterioratingAgent } from "../place/deteriorating-agent.js";
import { placeListing } from "../place/place-listing.js";
import { aluminumPreparation } from "../preparation/aluminum-preparation.js";
import { projectRules } from "../project-rules/project-rules.js";
import { wireRange } from "../range/wire-range.js";
import { rework } from "../rework/rework-joint.js";
import { lineSideMark } from "../service/line-side-mark.js";
import { bendingSpace } from "../space/bending-space.js";
import { enclosureFill } from "../space/enclosure-fill.js";
import { strandClass } from "../stranding/strand-class.js";
import { feederTap } from "../taps/feeder-tap.js";
import { terminalTemperature } from "../termination/terminal-temperature.js";
import { partReuse } from "../tooling/part-reuse.js";
import { toolAndDie } from "../tooling/tool-and-die.js";
import { torqueSource } from "../torque/torque-source.js";
import { connectorFunction } from "../use/connector-function.js";
import { insulatingCover } from "../use/insulating-cover.js";
import { listing } from "../use/listing.js";
import { voltageRating } from "../voltage/voltage-rating.js";

/** Every rule of the joint, in the order in which a refusal is named. */
export const JOINT_RULES: readonly Rule[] = Object.freeze([
  connectorFunction,
  listing,
  metalMarking,
  unlikeMetals,
  wireRange,
  strandClass,
  electrodeConnection,
  neutralTerminal,
  listedCombination,
  conductorsPerOpening,
  runThrough,
  studAndHoles,
  lugOnPad,
  pinLanding,
  partReuse,
  toolAndDie,
  voltageRating,
  placeListing,
  deterioratingAgent,
  accessibleJoint,
  lineSideMark,
  parallelLegs,
  feederTap,
  terminalTemperature,
  deviceProtection,
  deviceLoad,
  equipmentGroundSize,
  electrodeConductorSize,
  bondingJumperSize,
  electrodeSplice,
  aluminumInEarth,
  groundingConnection,
  bendingSpace,
  enclosureFill,
  distributionBlock,
  torqueSource,
  aluminumPreparation,
  insulatingCover,
  rework,
  projectRules,
]);

/** Which pass is named as deciding, first found first: the one that usually governs. */
export const GOVERNING: readonly string[] = Object.freeze([
  "feeder-tap",
  "terminal-temperature",
  "equipment-ground-size",
  "electrode-conductor-size",
  "bonding-jumper-size",
  "electrode-connection",
  "wire-range",
]);
