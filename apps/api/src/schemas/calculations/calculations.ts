import { CALCULATIONS, type CalculationName, calculate } from "@landfast/rules";
import { type TSchema, Type } from "@sinclair/typebox";
import { Basis } from "../basis.js";
import { Citation } from "../citation.js";
import { enumOf } from "../enum-of.js";
import { Assumption, MissingFact, orNull, Step, StepValue } from "../finding.js";
import { ref } from "../ref.js";
import { strict } from "../strict.js";
import { ampacity } from "./ampacity.js";
import { bendingSpace } from "./bending-space.js";
import { boltTorque } from "./bolt-torque.js";
import { bondingJumper } from "./bonding-jumper.js";
import { boxFill } from "./box-fill.js";
import { CONDUCTOR_RUN_SCHEMAS } from "./conductor-run.js";
import { conductorSize } from "./conductor-size.js";
import { contactResistance } from "./contact-resistance.js";
import { convert } from "./convert.js";
import { dcResistance } from "./dc-resistance.js";
import { dwellingService } from "./dwelling-service.js";
import { electrodeConductor } from "./electrode-conductor.js";
import { equipmentGround } from "./equipment-ground.js";
import { FillConductor } from "./fill-conductor.js";
import { motorCircuit } from "./motor-circuit.js";
import { overcurrentDevice } from "./overcurrent-device.js";
import { pullBox } from "./pull-box.js";
import type { QuestionForm } from "./question-form.js";
import { racewayFill } from "./raceway-fill.js";
import { shortCircuit } from "./short-circuit.js";
import { strandClass } from "./strand-class.js";
import { SupplyConductors } from "./supply-conductors.js";
import { tap } from "./tap.js";
import { temperatureRise } from "./temperature-rise.js";
import { torque } from "./torque.js";
import { voltageDrop } from "./voltage-drop.js";
import { wirewayFill } from "./wireway-fill.js";

/** How each calculation is asked; a calculation of the library without a form does not compile. */
const QUESTION_FORMS: { readonly [Name in CalculationName]: QuestionForm<Name> } = {
  ampacity,
  "bending-space": bendingSpace,
  "bolt-torque": boltTorque,
  "bonding-jumper": bondingJumper,
  "box-fill": boxFill,
  "conductor-size": conductorSize,
  "contact-resistance": contactResistance,
  convert,
  "dc-resistance": dcResistance,
  "dwelling-service": dwellingService,
  "electrode-conductor": electrodeConductor,
  "equipment-ground": equipmentGround,
  "motor-circuit": motorCircuit,
  "overcurrent-device": overcurrentDevice,
  "pull-box": pullBox,
  "raceway-fill": racewayFill,
  "short-circuit": shortCircuit,
  "strand-class": strandClass,
  tap,
  "temperature-rise": temperatureRise,
  torque,
  "voltage-drop": voltageDrop,
  "wireway-fill": wirewayFill,
};

/** The two sides of one calculation on the wire. */
export interface CalculationSchemas {
  readonly name: CalculationName;
  /** "DcResistance": what its schemas are called by. */
  readonly title: string;
  readonly body: TSchema;
  readonly finding: TSchema;
}

const cite = ref(Citation);

const NamedResult = strict(
  {
    name: Type.String(),
    value: StepValue,
    unit: Type.Optional(Type.String()),
    step: Type.Integer({ minimum: 1, description: "the step that reached it" }),
  },
  { $id: "NamedResult" },
);

/** The rules library's answer, field for field. */
const findingFields = {
  basis: ref(Basis),
  rulesVersion: Type.String(),
  outcome: enumOf(
    ["answered", "missing", "refused"] as const,
    "missing: a fact that decides is not known; refused: nothing published answers the question",
  ),
  sentence: Type.String({ description: "the answer in one plain sentence, or what is missing or refused" }),
  cite,
  results: Type.Array(ref(NamedResult), { description: "the main result first; empty unless answered" }),
  steps: Type.Array(ref(Step), { minItems: 1 }),
  missing: Type.Array(ref(MissingFact)),
  refusal: orNull(
    strict({ code: enumOf(["OUTSIDE_TABLE", "NOT_COVERED", "NO_SOLUTION"] as const), detail: Type.String() }),
  ),
  advice: Type.Array(Type.String()),
  assumptions: Type.Array(ref(Assumption)),
  caveats: Type.Array(Type.String()),
  caution: Type.String(),
};

const exampleBasis = { ruleSet: "nfpa70", edition: "2023" } as const;

function schemasOf(name: CalculationName): CalculationSchemas {
  const { question, example } = QUESTION_FORMS[name];
  const title = name.replace(/(?:^|-)([a-z])/g, (_, letter: string) => letter.toUpperCase());
  return {
    name,
    title,
    body: strict(
      { basis: ref(Basis), question },
      { $id: `${title}Question`, examples: [{ basis: exampleBasis, question: example }] },
    ),
    finding: strict(
      { calculation: enumOf([name]), ...findingFields },
      { $id: `${title}Finding`, examples: [calculate(name, example, exampleBasis)] },
    ),
  };
}

/** Every calculation, in the library's order. */
export const CALCULATION_NAMES = Object.keys(CALCULATIONS) as readonly CalculationName[];
export const CALCULATIONS_ON_THE_WIRE: readonly CalculationSchemas[] = CALCULATION_NAMES.map((name) => schemasOf(name));

const clausesByEdition = Type.Array(
  strict({ ruleSet: Type.String(), edition: Type.String(), cites: Type.Array(cite) }),
);

export const CalculationHead = strict(
  {
    name: enumOf(CALCULATION_NAMES),
    title: Type.String(),
    href: Type.String({ description: "where it is asked, by POST" }),
    clauses: clausesByEdition,
    needs: Type.Array(Type.String(), { description: "paths of the facts it needs, in the body" }),
    cannotSee: Type.String(),
  },
  { $id: "CalculationHead" },
);

export const CalculationList = strict(
  { rulesVersion: Type.String(), calculations: Type.Array(ref(CalculationHead)) },
  { $id: "CalculationList" },
);

export const CALCULATION_SCHEMAS: readonly TSchema[] = [
  ...CONDUCTOR_RUN_SCHEMAS,
  FillConductor,
  SupplyConductors,
  NamedResult,
  ...CALCULATIONS_ON_THE_WIRE.flatMap(({ body, finding }) => [body, finding]),
  CalculationHead,
  CalculationList,
];
