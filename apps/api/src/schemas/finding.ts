import { CONDUCTOR_METALS, CONNECTOR_FAMILIES, STRANDINGS, VERDICTS } from "@landfast/rules";
import { type TProperties, type TSchema, Type } from "@sinclair/typebox";
import { Basis } from "./basis.js";
import { Citation } from "./citation.js";
import { Tooling } from "./connector.js";
import { enumOf } from "./enum-of.js";
import { Length, Torque } from "./quantity.js";
import { ref } from "./ref.js";
import { strict, taggedUnion } from "./strict.js";

/** A value that may be absent on purpose. */
export function orNull<T extends TSchema>(schema: T) {
  return Type.Union([schema, Type.Null()]);
}

const SOURCE_LEVELS = [
  "equipment-marking",
  "connector-marking",
  "project-rule",
  "local-amendment",
  "code-table",
  "trade-practice",
] as const;

const CellRef = strict(
  {
    table: Type.String({ description: 'standard, edition and table: "NFPA 70-2023/ampacity-raceway"' }),
    digest: Type.String(),
    row: Type.String(),
    column: Type.String(),
    printed: Type.String({ description: "the cell as printed" }),
    status: enumOf(["published", "unconfirmed", "invented"] as const),
  },
  { $id: "CellRef" },
);

/** A number with its unit beside it, a word, a truth or a list of words. */
export const StepValue = Type.Union([Type.Number(), Type.String(), Type.Boolean(), Type.Array(Type.String())]);

const step = (kind: string, fields: TProperties) =>
  strict({
    id: Type.Integer({ minimum: 1 }),
    kind: enumOf([kind]),
    label: Type.String(),
    value: StepValue,
    unit: Type.Optional(Type.String()),
    uses: Type.Array(Type.Integer({ minimum: 1 }), { description: "ids of the earlier steps it rests on" }),
    ...fields,
  });
const because = Type.String();
const cite = ref(Citation);

/** One step of a derivation. */
export const Step = taggedUnion(
  "kind",
  [
    step("given", { origin: Type.String() }),
    step("assumed", { because, cite }),
    step("read", { cell: ref(CellRef), cite }),
    step("stated", { cite }),
    step("computed", { formula: Type.String(), substituted: Type.String(), cite: Type.Optional(cite) }),
    step("compared", {
      left: Type.Integer({ minimum: 1 }),
      relation: enumOf(["<=", "<", ">=", ">", "=", "in"] as const),
      right: Type.Integer({ minimum: 1 }),
      cite,
    }),
    step("missing", { path: Type.String(), because }),
    step("concluded", { because, cite: Type.Optional(cite) }),
  ],
  { $id: "Step", description: "one step of a derivation; the last step of a finding is its outcome" },
);

export const MissingFact = strict({ path: Type.String(), because }, { $id: "MissingFact" });
const Duty = strict({ duty: Type.String(), sentence: Type.String(), cite }, { $id: "Duty" });

export const Assumption = strict(
  { label: Type.String(), value: Type.String(), because, cite },
  { $id: "Assumption", description: "a default that the code itself supplied" },
);

const CheckFinding = strict(
  {
    rule: Type.String(),
    outcome: enumOf(["pass", "fail", "missing"] as const),
    sentence: Type.String(),
    cite,
    required: Type.String(),
    offered: Type.String(),
    steps: Type.Array(ref(Step), { minItems: 1 }),
    conditions: Type.Array(ref(Duty)),
    missing: Type.Array(ref(MissingFact)),
    advice: Type.Array(Type.String()),
    fix: Type.String(),
  },
  { $id: "CheckFinding", description: "one rule's answer with its derivation" },
);

const NotApplicable = strict(
  { rule: Type.String(), outcome: enumOf(["not-applicable"] as const), because },
  { $id: "NotApplicable" },
);

const TorqueAnswer = strict(
  {
    at: Type.String(),
    opening: Type.String(),
    method: enumOf(["torque", "breakaway-head", "by-hand", "crimp", "weld", "spring", "see-instructions"] as const),
    torque: orNull(
      strict({ lbfIn: Type.Number(), lbfFt: Type.Number(), newtonMetre: Type.Number(), printed: ref(Torque) }),
    ),
    level: orNull(enumOf(SOURCE_LEVELS)),
    cite,
    drive: Type.String(),
    alternative: orNull(Type.String()),
    sentence: Type.String(),
    steps: Type.Array(ref(Step)),
  },
  { $id: "TorqueAnswer" },
);

const PreparationAnswer = strict(
  {
    brush: strict({ needed: Type.Boolean(), because, level: enumOf(SOURCE_LEVELS), cite }),
    compound: strict({
      need: enumOf(["required", "pre-filled", "per-instructions", "not-needed"] as const),
      because,
      level: enumOf(SOURCE_LEVELS),
      cite,
    }),
  },
  { $id: "PreparationAnswer" },
);

export const Verdict = enumOf(
  VERDICTS,
  "accept; accept-with-conditions: allowed once the conditions are met; reject; needs-information: a fact that decides is not known",
);
export const ConnectorOrigin = enumOf(["catalogue", "request", "equipment"] as const);

/** The rules library's answer, field for field. */
export const JointFinding = strict(
  {
    basis: ref(Basis),
    rulesVersion: Type.String(),
    verdict: Verdict,
    deciding: strict({ rule: Type.String(), sentence: Type.String(), cite }),
    connector: strict({
      partNumber: orNull(Type.String()),
      description: Type.String(),
      family: enumOf(CONNECTOR_FAMILIES),
      origin: ConnectorOrigin,
    }),
    openings: Type.Array(
      strict({
        opening: Type.String(),
        instance: Type.Integer({ minimum: 1 }),
        conductors: Type.Array(
          strict({
            count: Type.Integer({ minimum: 1 }),
            metal: enumOf(CONDUCTOR_METALS),
            size: Type.String(),
            stranding: enumOf(STRANDINGS),
          }),
        ),
      }),
    ),
    findings: Type.Array(ref(CheckFinding)),
    notApplicable: Type.Array(ref(NotApplicable)),
    torque: Type.Array(ref(TorqueAnswer)),
    stripLengths: Type.Array(strict({ opening: Type.String(), length: orNull(ref(Length)) })),
    preparation: orNull(ref(PreparationAnswer)),
    tooling: orNull(ref(Tooling)),
    conditions: Type.Array(ref(Duty)),
    dutiesOnSite: Type.Array(ref(Duty)),
    missing: Type.Array(ref(MissingFact)),
    assumptions: Type.Array(ref(Assumption)),
    caveats: Type.Array(Type.String()),
    advice: Type.Array(Type.String()),
    caution: Type.String(),
  },
  { $id: "JointFinding", description: "whether a joint with a connector is allowed, why, and how it is made" },
);

export const FINDING_SCHEMAS = [
  CellRef,
  Step,
  MissingFact,
  Duty,
  Assumption,
  CheckFinding,
  NotApplicable,
  TorqueAnswer,
  PreparationAnswer,
  JointFinding,
];
