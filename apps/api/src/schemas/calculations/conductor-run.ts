import {
  CONDUCTOR_METALS,
  COUNTED_CIRCUITS,
  type ConductorRun as ConductorRunFacts,
  type CountedCircuit as CountedCircuitFacts,
  INSULATIONS,
  RUN_MANNERS,
} from "@landfast/rules";
import { type TProperties, Type } from "@sinclair/typebox";
import { enumOf } from "../enum-of.js";
import { Length, Temperature, TemperatureOrUnmarked } from "../quantity.js";
import { ref } from "../ref.js";
import { strict, taggedUnion } from "../strict.js";
import { amount, count, lengthOrNone } from "./amount.js";
import { everyWord, strictly } from "./question-form.js";

const TOGETHER_MAX = 1000;

const CountedCircuit = strictly<CountedCircuitFacts>(
  {
    kind: enumOf(COUNTED_CIRCUITS),
    count: count("equal circuits", TOGETHER_MAX),
    mostlyNonlinear: Type.Optional(
      Type.Boolean({
        description: "of a four-wire wye circuit: the major part of its load is nonlinear; true or false",
      }),
    ),
  },
  { $id: "CountedCircuit" },
);

/** A number, or circuits to be counted: one place with two forms, so that a fault is reported for the form sent. */
const conductorsTogether = Type.Unsafe({
  type: ["integer", "array"],
  minimum: 1,
  maximum: TOGETHER_MAX,
  minItems: 1,
  maxItems: 50,
  items: ref(CountedCircuit),
  description: `conductors that carry current: a whole number from 1 to ${TOGETHER_MAX}, or a list of 1 to 50 circuits to be counted`,
});

const grouping = (where: string, fields: TProperties) => strict({ in: enumOf([where]), ...fields });
const together = { conductors: conductorsTogether };

const Grouping = taggedUnion(
  "in",
  [
    grouping("apart", {}),
    grouping("raceway", together),
    grouping("cable", together),
    grouping("bundle", together),
    grouping("nipple", { length: ref(Length), ...together }),
    grouping("metal-wireway", {
      fillPercent: Type.Optional(amount("how much of the section is filled", "percent", 100)),
      ...together,
    }),
  ],
  { $id: "Grouping", description: "what the conductors share, and how many of them carry current" },
);

/** How a conductor is run and what it ends on: what its ampacity goes by. */
export const ConductorRun = strictly<ConductorRunFacts>(
  {
    metal: enumOf(CONDUCTOR_METALS),
    insulation: enumOf(INSULATIONS),
    insulationRating: Type.Optional(ref(Temperature)),
    place: Type.Optional(
      enumOf(everyWord<NonNullable<ConductorRunFacts["place"]>>({ dry: true, damp: true, wet: true })),
    ),
    sets: count("conductors in parallel", 100),
    manner: enumOf(RUN_MANNERS, "raceway: in a raceway, a cable or the earth; free-air: a single insulated conductor"),
    ambient: Type.Optional(ref(Temperature)),
    sunlitRoof: Type.Union(
      [enumOf(["none"] as const), strict({ aboveRoof: lengthOrNone("height of the raceway above the roof") })],
      { description: 'the height above a roof in the sun: {"aboveRoof": {"value": 0, "unit": "in"}}, or "none"' },
    ),
    grouping: Type.Optional(ref(Grouping)),
    supplyEnd: Type.Optional(TemperatureOrUnmarked),
    loadEnd: Type.Optional(TemperatureOrUnmarked),
  },
  { $id: "ConductorRun", description: "how a conductor is run and what it ends on" },
);

/** A feeder's conductors in a conduit indoors. */
export const exampleRun = {
  metal: "copper",
  insulation: "THHN/THWN-2",
  place: "dry",
  sets: 1,
  manner: "raceway",
  ambient: { value: 35, unit: "Cel" },
  sunlitRoof: "none",
  grouping: { in: "raceway", conductors: [{ kind: "three-phase-four-wire-wye", count: 1, mostlyNonlinear: true }] },
  supplyEnd: { value: 75, unit: "Cel" },
  loadEnd: "unmarked",
} as const satisfies ConductorRunFacts;

export const CONDUCTOR_RUN_SCHEMAS = [CountedCircuit, Grouping, ConductorRun];
