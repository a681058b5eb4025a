import { type TProperties, type TSchema, Type } from "@sinclair/typebox";
import { enumOf } from "./enum-of.js";
import { MissingFact, orNull } from "./finding.js";
import { ref } from "./ref.js";
import { COUNT_MAX, Money, SignedMoney, scope, supply } from "./stock-supply.js";
import { strict, taggedUnion } from "./strict.js";

const words = Type.Array(Type.String());
const count = Type.Integer({ minimum: 0 });
const kind = (name: string, fields: TProperties = {}) => strict({ kind: enumOf([name]), ...fields });
const day = orNull(Type.String({ format: "date" }));
const decimalText = Type.String({ pattern: "^-?[0-9]+(?:\\.[0-9]+)?$" });
const MakingVerdict = enumOf(["accept", "accept-with-conditions"] as const);

export const Objective = taggedUnion(
  "kind",
  [
    kind("fewest-part-numbers"),
    kind("least-cost"),
    kind("least-cost-with-carrying-cost", { carryingCost: ref(Money) }),
    kind("fewest-then-cheapest"),
  ],
  {
    $id: "Objective",
    description:
      "what a plan is to be best at: as few part numbers as can be; as little money; the same with a fixed sum for each part number; of all plans with the fewest part numbers the cheapest",
  },
);

export const secondsPerSolve = Type.Optional(
  Type.Integer({
    minimum: 1,
    maximum: 60,
    description:
      "wall-clock seconds for one solve, 1 to 60; absent: 10. Where it cuts a solve short the plan is marked as not proven.",
  }),
);

export const StockPlanQuestion = strict(
  {
    objective: ref(Objective),
    mostPartNumbers: Type.Optional(
      Type.Integer({
        minimum: 0,
        maximum: COUNT_MAX,
        description: "no more part numbers than this; only with an objective of cost",
      }),
    ),
    withoutEach: Type.Optional(
      Type.Boolean({ description: "false: leave out what dropping each part would come to; absent: worked out" }),
    ),
    secondsPerSolve,
    ...scope,
    ...supply,
  },
  { $id: "StockPlanQuestion", examples: [{ objective: { kind: "fewest-then-cheapest" } }] },
);

export const TradeOffQuestion = strict(
  {
    mostPoints: Type.Optional(
      Type.Integer({
        minimum: 2,
        maximum: 200,
        description: "ask about no more numbers of part numbers than this; absent: every number",
      }),
    ),
    secondsPerSolve,
    ...scope,
    ...supply,
  },
  { $id: "TradeOffQuestion", examples: [{ mostPoints: 8 }] },
);

export const AnsweredFrom = strict(
  {
    job: strict({ id: Type.String(), name: Type.String(), revision: count }),
    catalogue: strict({ id: Type.String(), name: Type.String(), revision: Type.String() }),
    prices: Type.String({ description: "where the prices come from" }),
    hours: Type.String({ description: "where the hours come from" }),
    labourRate: orNull(ref(Money)),
  },
  { $id: "AnsweredFrom", description: "what the answer was made from" },
);

export const NoPartNeeded = strict(
  { mark: Type.String(), joints: count, because: Type.String() },
  { $id: "NoPartNeeded" },
);

export const WithoutPart = strict(
  {
    marks: Type.Array(strict({ mark: Type.String(), joints: count })),
    joints: count,
    verdict: enumOf(["reject", "needs-information"] as const),
    because: Type.String(),
    missing: Type.Array(ref(MissingFact)),
  },
  { $id: "WithoutPart", description: "joints for which the catalogue has nothing, and why" },
);

export const Proof = strict(
  {
    proven: Type.Boolean({ description: "true: no plan is better by the objective" }),
    of: enumOf(["part-numbers", "cost"] as const),
    value: decimalText,
    bound: orNull(decimalText),
    gap: orNull(decimalText),
    because: Type.String(),
  },
  { $id: "Proof", description: "whether the plan is known to be the best, else a bound and the gap to it" },
);

const PlanCost = strict(
  { parts: ref(Money), labour: orNull(ref(Money)), carrying: orNull(ref(Money)), total: ref(Money) },
  { $id: "PlanCost" },
);

const PlanPart = strict(
  {
    partNumber: Type.String(),
    description: Type.String(),
    family: Type.String(),
    joints: count,
    partsUsed: count,
    fromStock: count,
    packs: count,
    packQuantity: count,
    bought: count,
    overBuy: count,
    each: orNull(ref(Money)),
    breakFrom: orNull(count),
    cost: orNull(ref(Money)),
    must: Type.Boolean(),
    marks: words,
    areas: Type.Array(strict({ area: orNull(Type.String()), joints: count, neededBy: day })),
    neededBy: day,
    onlyMaker: Type.Array(Type.String(), { description: "marks that no other connector of the catalogue can make" }),
    onlyInPlan: Type.Array(Type.String(), { description: "marks that no other part of this plan can make" }),
    without: orNull(
      strict({
        marksLost: words,
        jointsLost: count,
        partNumbers: count,
        costChange: orNull(ref(SignedMoney)),
        proof: ref(Proof),
      }),
    ),
  },
  { $id: "PlanPart" },
);

const NotPlanned = strict(
  {
    noPartNeeded: Type.Array(ref(NoPartNeeded)),
    withoutPart: Type.Array(ref(WithoutPart)),
    barred: Type.Array(strict({ marks: words, joints: count, because: Type.String() })),
  },
  { $id: "NotPlanned", description: "joints that no part of the plan makes: named, never dropped" },
);

const NamedParts = strict(
  {
    partNumbers: count,
    joints: count,
    parts: Type.Array(
      strict({
        partNumber: Type.String(),
        joints: count,
        packs: count,
        bought: count,
        cost: orNull(ref(Money)),
        marks: words,
      }),
    ),
    cost: orNull(ref(Money)),
  },
  { $id: "NamedParts" },
);

const AsNamed = strict(
  {
    all: ref(NamedParts),
    accepted: ref(NamedParts),
    notAccepted: Type.Array(
      strict({
        mark: Type.String(),
        joints: count,
        partNumber: Type.String(),
        verdict: enumOf(["reject", "needs-information"] as const),
        because: Type.String(),
      }),
    ),
  },
  { $id: "AsNamed", description: "what the connectors of the catalogue that the joints name come to" },
);

export const StockPlan = strict(
  {
    from: ref(AnsweredFrom),
    rulesVersion: Type.String(),
    objective: ref(Objective),
    partNumbers: count,
    joints: count,
    hours: orNull(decimalText),
    cost: orNull(ref(PlanCost)),
    proof: ref(Proof),
    parts: Type.Array(ref(PlanPart)),
    assignments: Type.Array(
      strict({
        marks: words,
        partNumber: Type.String(),
        joints: count,
        parts: count,
        hours: orNull(decimalText),
        verdict: MakingVerdict,
        conditions: words,
      }),
    ),
    notPlanned: ref(NotPlanned),
    notCosted: Type.Array(strict({ marks: words, partNumber: Type.String(), because: Type.String() })),
    asNamed: orNull(ref(AsNamed)),
    reduction: strict({
      classes: count,
      items: count,
      makers: count,
      makersLeft: count,
      itemsLeft: count,
      forced: words,
    }),
    caution: Type.String(),
  },
  { $id: "StockPlan", description: "which part numbers to stock, for which joints, and how many to buy" },
);

export const TradeOff = strict(
  {
    from: ref(AnsweredFrom),
    joints: Type.Integer({ minimum: 0, description: "joints that every plan on the curve makes" }),
    curve: strict({
      points: Type.Array(
        strict({ partNumbers: count, cost: ref(Money), aboveCheapest: ref(Money), parts: words, proof: ref(Proof) }),
      ),
      currency: orNull(Type.String()),
      complete: Type.Boolean({ description: "true when every number between the ends was asked about" }),
    }),
    notPlanned: ref(NotPlanned),
    asNamed: orNull(ref(AsNamed)),
  },
  { $id: "TradeOff", description: "what fewer part numbers cost" },
);

export const STOCK_PLAN_SCHEMAS: readonly TSchema[] = [
  Objective,
  StockPlanQuestion,
  TradeOffQuestion,
  AnsweredFrom,
  NoPartNeeded,
  WithoutPart,
  Proof,
  PlanCost,
  PlanPart,
  NotPlanned,
  NamedParts,
  AsNamed,
  StockPlan,
  TradeOff,
];
