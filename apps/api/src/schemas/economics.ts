import { Type } from "@sinclair/typebox";
import { enumOf } from "./enum-of.js";
import { orNull } from "./finding.js";
import { Accessory, ToolTerms } from "./parts-list.js";
import { ref } from "./ref.js";
import { AnsweredFrom, NoPartNeeded, Objective, secondsPerSolve, WithoutPart } from "./stock-plan.js";
import { Money, SignedMoney, scope, supply } from "./stock-supply.js";
import { strict, taggedUnion } from "./strict.js";
import { text } from "./text.js";

const WAYS = ["mechanical", "compression"] as const;

const count = Type.Integer({ minimum: 0 });
const money = orNull(ref(Money));
const decimalText = Type.String({ pattern: "^-?[0-9]+(?:\\.[0-9]+)?$" });

export const EconomicsQuestion = strict(
  {
    objective: ref(Objective),
    accessories: Type.Optional(Type.Array(ref(Accessory), { maxItems: 200 })),
    tools: Type.Optional(
      Type.Array(ref(ToolTerms), {
        maxItems: 1000,
        description: 'terms of tools and dies; the mechanical way asks for "torque tool"',
      }),
    ),
    setUp: Type.Optional(
      Type.Array(strict({ way: enumOf(WAYS), what: text(120, "what is set up"), cost: ref(Money) }), { maxItems: 100 }),
    ),
    secondsPerSolve,
    ...scope,
    ...supply,
  },
  {
    $id: "EconomicsQuestion",
    examples: [{ objective: { kind: "least-cost" }, labourRate: { amount: "80.00", currency: "USD" } }],
  },
);

const WayCost = strict(
  {
    name: enumOf(WAYS),
    joints: count,
    partNumbers: count,
    prices: Type.Array(strict({ partNumber: Type.String(), parts: count, each: money, breakFrom: orNull(count) })),
    lines: Type.Array(
      strict({
        id: Type.String({ description: "the first mark of equal joints" }),
        joints: count,
        partNumber: Type.String(),
        partsEach: money,
        extrasEach: money,
        hoursEach: orNull(decimalText),
        labourEach: money,
        costEach: money,
      }),
    ),
    hours: orNull(decimalText),
    parts: money,
    extras: money,
    labour: money,
    once: Type.Array(
      strict({
        what: Type.String(),
        kind: enumOf(["tool", "die", "set-up"] as const),
        cost: money,
        owned: Type.Boolean(),
      }),
    ),
    tools: money,
    setUp: money,
    everyJoint: money,
    onceSum: money,
    total: money,
    unknown: Type.Array(Type.String(), { description: "what is not known; everything that rests on it is null" }),
  },
  { $id: "WayCost" },
);

const even = (kind: string, fields: Record<string, ReturnType<typeof Type.String> | ReturnType<typeof strict>> = {}) =>
  strict({ kind: enumOf([kind]), ...fields, because: Type.String() });

const BreakEven = taggedUnion(
  "kind",
  [
    even("always", { cheaper: Type.String() }),
    even("same"),
    even("crosses", {
      joints: strict({ numerator: Type.String(), denominator: Type.String(), decimal: Type.String() }),
      cheaperBelow: Type.String(),
      cheaperAbove: Type.String(),
      cheaperFrom: Type.String({ description: "the first whole number of joints at which the other way costs less" }),
    }),
    even("not-known"),
  ],
  { $id: "BreakEven", description: "from how many joints on the other way is cheaper" },
);

export const EconomicsAnswer = strict(
  {
    from: ref(AnsweredFrom),
    comparison: orNull(
      strict({
        joints: count,
        first: ref(WayCost),
        second: ref(WayCost),
        labourRate: money,
        currency: orNull(Type.String()),
        difference: orNull(ref(SignedMoney)),
        cheaper: orNull(enumOf(WAYS)),
        breakEven: ref(BreakEven),
        assumptions: Type.Array(Type.String()),
      }),
    ),
    notCompared: Type.Array(ref(NoPartNeeded)),
    withoutPart: Type.Array(ref(WithoutPart)),
    caution: Type.String(),
  },
  { $id: "EconomicsAnswer", description: "mechanical against compression for the joints that both can make" },
);

export const ECONOMICS_SCHEMAS = [EconomicsQuestion, WayCost, BreakEven, EconomicsAnswer];
