import {
  BONDINGS,
  CONDUCTOR_METALS,
  CONDUCTOR_ROLES,
  ELECTRODES,
  EQUIPMENT_KINDS,
  JOINT_FUNCTIONS,
  LOCATIONS,
  PAD_METALS,
  PAD_PLATINGS,
  SMALL_LEGS,
} from "@landfast/rules";
import { type TProperties, Type } from "@sinclair/typebox";
import { Basis } from "./basis.js";
import { ConductorGroup } from "./conductor.js";
import { Connector, HolePattern } from "./connector.js";
import { enumOf } from "./enum-of.js";
import { Area, Length, Size, TemperatureOrUnmarked } from "./quantity.js";
import { ref } from "./ref.js";
import { strict, taggedUnion } from "./strict.js";
import { label, text } from "./text.js";

const amperes = (what: string) =>
  Type.Number({
    exclusiveMinimum: 0,
    maximum: 100_000,
    description: `${what} in amperes: a number above 0, at most 100000`,
  });
const volts = (what: string) =>
  Type.Number({
    exclusiveMinimum: 0,
    maximum: 100_000,
    description: `${what} between lines in volts: a number above 0, at most 100000`,
  });
const load = (what: string) =>
  Type.Number({ minimum: 0, maximum: 100_000, description: `${what} in amperes: a number from 0 to 100000` });
const sets = Type.Integer({
  minimum: 1,
  maximum: 100,
  description: "conductors in parallel: a whole number from 1 to 100",
});
const SizeAndMetal = strict({ size: Size, metal: enumOf(CONDUCTOR_METALS) });
const ServiceConductors = strict({ size: Size, metal: enumOf(CONDUCTOR_METALS), sets });

const protection = (kind: string, fields: TProperties = {}) => strict({ kind: enumOf([kind]), ...fields });

const Protection = taggedUnion(
  "kind",
  [
    protection("device", { ratingA: amperes("the device's rating") }),
    protection("feeder-tap", {
      feederDeviceA: amperes("the rating of the feeder's device"),
      length: ref(Length),
      endDeviceA: amperes("the rating in which the tap ends"),
      leavesEnclosure: Type.Boolean(),
      physicallyProtected: Type.Boolean(),
      outdoors: Type.Optional(Type.Boolean()),
      through: Type.Optional(
        strict(
          { primaryV: volts("the voltage of the primary"), secondaryV: volts("the voltage of the secondary") },
          { description: "for conductors of a transformer's secondary; feederDeviceA is the device of its primary" },
        ),
      ),
    }),
    protection("service"),
    protection("motor-circuit"),
    protection("none-stated", { because: text(300, "the designer's reason") }),
  ],
  { $id: "Protection", description: "what protects the conductor" },
);

const Circuit = strict(
  {
    voltageV: Type.Optional(
      Type.Number({
        exclusiveMinimum: 0,
        maximum: 100_000,
        description: "the voltage between lines in volts: a number above 0, at most 100000",
      }),
    ),
    loadA: Type.Optional(load("the load for sizing, the continuous part already at 125 %,")),
    continuousLoadA: Type.Optional(load("the continuous load")),
    nonContinuousLoadA: Type.Optional(load("the load that is not continuous")),
    protection: Type.Optional(ref(Protection)),
    sets,
    endTerminalTemperature: Type.Optional(TemperatureOrUnmarked),
    parallelLegsAlike: Type.Optional(Type.Boolean()),
    smallLegs: Type.Optional(enumOf(SMALL_LEGS)),
  },
  { $id: "Circuit" },
);

export const Equipment = strict(
  {
    tag: text(80, "the equipment's tag"),
    kind: Type.Optional(enumOf(EQUIPMENT_KINDS)),
    frame: Type.Optional(label(60, "the maker's frame")),
    terminalTemperature: Type.Optional(TemperatureOrUnmarked),
    terminal: Type.Optional(ref(Connector)),
    stud: Type.Optional(ref(HolePattern)),
    padMetal: Type.Optional(strict({ metal: enumOf(PAD_METALS), plating: Type.Optional(enumOf(PAD_PLATINGS)) })),
    bending: Type.Optional(
      strict({
        entry: enumOf(["opposite", "side"] as const),
        available: ref(Length),
        wiresPerTerminal: Type.Integer({ minimum: 1, maximum: 20 }),
        removableTerminal: Type.Optional(Type.Boolean()),
      }),
    ),
    space: Type.Optional(
      strict({
        kind: enumOf(["enclosure", "wireway"] as const),
        section: ref(Area),
        conductors: ref(Area),
        splices: ref(Area),
      }),
    ),
    boxVolumeIn3: Type.Optional(
      Type.Number({
        exclusiveMinimum: 0,
        maximum: 1_000_000,
        description: "the volume of the box in cubic inches: a number above 0, at most 1000000",
      }),
    ),
  },
  { $id: "Equipment" },
);

const Place = strict(
  {
    location: enumOf(LOCATIONS),
    deterioratingAgent: Type.Optional(text(60, "what attacks metal there")),
    accessible: Type.Optional(
      Type.Boolean({
        description:
          "whether the finished joint can be reached without taking off part of the building or digging: true or false",
      }),
    ),
  },
  { $id: "Place" },
);

/** Exactly one of its fields: a part of the catalogue, a connector described in full, or the equipment's terminal. */
const ConnectorChoice = Type.Object(
  {
    partNumber: Type.Optional(label(64, "the part number")),
    described: Type.Optional(ref(Connector)),
    equipmentTerminal: Type.Optional(
      Type.Unsafe<true>({ type: "boolean", enum: [true], description: "true: the terminal of the equipment itself" }),
    ),
  },
  { $id: "ConnectorChoice", additionalProperties: false, minProperties: 1, maxProperties: 1 },
);

/** One joint, or several equal ones. */
export const Joint = strict(
  {
    mark: label(64, "the mark"),
    area: Type.Optional(text(80, "the area")),
    description: Type.Optional(text(300, "what the joint is")),
    function: enumOf(JOINT_FUNCTIONS),
    role: enumOf(CONDUCTOR_ROLES),
    quantity: Type.Integer({
      minimum: 1,
      maximum: 100_000,
      description: "joints with this mark: a whole number from 1 to 100000",
    }),
    basis: Type.Optional(ref(Basis)),
    conductors: Type.Array(ref(ConductorGroup), {
      minItems: 1,
      maxItems: 20,
      description: "the conductors that meet: a list of 1 to 20 groups",
    }),
    circuit: Type.Optional(ref(Circuit)),
    equipment: Type.Optional(ref(Equipment)),
    place: Type.Optional(ref(Place)),
    upsizing: Type.Optional(strict({ minimum: SizeAndMetal, installed: SizeAndMetal })),
    grounding: Type.Optional(
      strict({
        electrode: Type.Optional(enumOf(ELECTRODES)),
        ringSize: Type.Optional(Size),
        service: Type.Optional(ServiceConductors),
        tapService: Type.Optional(ServiceConductors),
        bonding: Type.Optional(enumOf(BONDINGS)),
        equivalentService: Type.Optional(ServiceConductors),
        racewaysBondedApart: Type.Optional(
          Type.Integer({
            minimum: 1,
            maximum: 100,
            description: "raceways with a jumper each: a whole number from 1 to 100",
          }),
        ),
        soleConnection: Type.Optional(Type.Boolean()),
      }),
    ),
    connector: Type.Optional(ref(ConnectorChoice)),
    partState: Type.Optional(enumOf(["new", "reused"] as const)),
    tooling: Type.Optional(
      strict({ tool: Type.Optional(text(120, "the tool")), die: Type.Optional(text(120, "the die")) }),
    ),
    rework: Type.Optional(Type.Boolean()),
    tightenedBefore: Type.Optional(
      Type.Boolean({ description: "these conductors lie in this connector already and were tightened in it" }),
    ),
  },
  { $id: "Joint" },
);

export const JOINT_SCHEMAS = [Protection, Circuit, Equipment, Place, ConnectorChoice, Joint];
