import { CONNECTOR_FAMILIES } from "@landfast/rules";
import { NEED_KINDS, PART_KINDS, PRICE_UNITS } from "@landfast/stock";
import { type TProperties, Type } from "@sinclair/typebox";
import { enumOf } from "./enum-of.js";
import { orNull } from "./finding.js";
import { decimal } from "./quantity.js";
import { ref } from "./ref.js";
import { AnsweredFrom, NoPartNeeded, Objective, Proof, secondsPerSolve, WithoutPart } from "./stock-plan.js";
import { COUNT_MAX, currency, Money, scope, supply } from "./stock-supply.js";
import { strict, taggedUnion } from "./strict.js";
import { label, text } from "./text.js";

const words = Type.Array(Type.String());
const count = Type.Integer({ minimum: 0 });
const whole = (least: number) => Type.Integer({ minimum: least, maximum: COUNT_MAX });
const tagged = (from: string, fields: TProperties = {}) => strict({ from: enumOf([from]), ...fields });
const partNumber = label(64, "the part number");
const decimalText = Type.String({ pattern: "^-?[0-9]+(?:\\.[0-9]+)?$" });
const day = orNull(Type.String({ format: "date" }));

const ConnectorsFrom = taggedUnion("from", [tagged("schedule"), tagged("plan", { objective: ref(Objective) })], {
  $id: "ConnectorsFrom",
  description: "which connectors are listed; absent: those of the stored schedule",
});

const SpareRule = strict(
  {
    percent: decimal("per cent of the net quantity"),
    atLeast: whole(0),
    longLead: Type.Optional(strict({ overDays: whole(0), atLeast: whole(0) })),
  },
  { $id: "SpareRule" },
);

const SparesFrom = taggedUnion(
  "from",
  [
    tagged("judgement"),
    tagged("none"),
    tagged("request", {
      name: text(80, "the policy's name"),
      rules: strict(Object.fromEntries(PART_KINDS.map((one) => [one, ref(SpareRule)]))),
    }),
  ],
  {
    $id: "SparesFrom",
    description:
      "which spares are bought; absent: a policy of judgement to begin with, marked so in the answer. No published percentage is known.",
  },
);

export const Accessory = strict(
  {
    need: enumOf(NEED_KINDS, "what it is bought for"),
    families: Type.Optional(
      Type.Array(enumOf(CONNECTOR_FAMILIES), {
        minItems: 1,
        maxItems: CONNECTOR_FAMILIES.length,
        uniqueItems: true,
        description: "only for connectors of these families; absent: for all",
      }),
    ),
    perJoint: decimal("how much of the part one joint, hole or opening takes"),
    part: strict({
      partNumber,
      description: text(300, "what the part is"),
      packQuantity: whole(1),
      price: Type.Optional(
        strict({
          unit: enumOf(PRICE_UNITS),
          currency,
          breaks: Type.Array(strict({ from: whole(1), amount: decimal("the price for one price unit") }), {
            minItems: 1,
            maxItems: 20,
          }),
        }),
      ),
      onHand: Type.Optional(whole(0)),
      leadTimeDays: Type.Optional(whole(0)),
    }),
  },
  { $id: "Accessory", description: "a part that is bought for a kind of need" },
);

const terms = (kind: string, fields: TProperties = {}) => strict({ kind: enumOf([kind]), ...fields });
export const ToolTerms = strict(
  {
    tool: text(120, "the tool"),
    die: Type.Optional(text(120, "the die")),
    terms: taggedUnion("kind", [
      terms("owned"),
      terms("hired", { perDay: ref(Money), days: whole(1) }),
      terms("bought", { price: ref(Money) }),
    ]),
  },
  { $id: "ToolTerms", description: "how a tool or die comes to the job" },
);

export const PartsListQuestion = strict(
  {
    connectors: Type.Optional(ref(ConnectorsFrom)),
    spares: Type.Optional(ref(SparesFrom)),
    ownerSpares: Type.Optional(
      Type.Array(strict({ partNumber, parts: whole(1), because: text(200, "why the owner wants them") }), {
        maxItems: 1000,
      }),
    ),
    accessories: Type.Optional(Type.Array(ref(Accessory), { maxItems: 200 })),
    tools: Type.Optional(Type.Array(ref(ToolTerms), { maxItems: 1000 })),
    leadTimes: Type.Optional(Type.Array(strict({ partNumber, days: whole(0) }), { maxItems: 20_000 })),
    circuits: Type.Optional(
      Type.Array(
        strict({
          circuit: text(80, "the circuit"),
          from: Type.Array(label(64, "the mark"), { minItems: 1, maxItems: 100 }),
          to: Type.Array(label(64, "the mark"), { minItems: 1, maxItems: 100 }),
        }),
        {
          maxItems: 5000,
          description: "marks at the two ends of a circuit, so that a reducer at one end brings the other to mind",
        },
      ),
    ),
    rounding: Type.Optional(
      enumOf(["half-up", "half-even"] as const, "how a line's cost is rounded to the smallest unit; absent: half-up"),
    ),
    secondsPerSolve,
    ...scope,
    ...supply,
  },
  { $id: "PartsListQuestion", examples: [{ spares: { from: "judgement" } }] },
);

const PartLine = strict(
  {
    id: Type.String({ description: "the same for as long as the part is on the list" }),
    partNumber: Type.String(),
    description: Type.String(),
    kind: enumOf(PART_KINDS),
    net: decimalText,
    netParts: count,
    spares: strict({ byPolicy: count, byOwner: count, rule: Type.String() }),
    fromStock: count,
    toBuy: count,
    packs: count,
    packQuantity: count,
    packRounding: count,
    breakOverBuy: count,
    bought: count,
    each: orNull(ref(Money)),
    breakFrom: orNull(count),
    cost: orNull(ref(Money)),
    marks: words,
    neededBy: day,
  },
  { $id: "PartLine" },
);

const ToolLine = strict(
  {
    id: Type.String(),
    tool: Type.String(),
    die: orNull(Type.String()),
    terms: enumOf(["owned", "hired", "bought", "not-stated"] as const),
    days: orNull(count),
    cost: orNull(ref(Money)),
    marks: words,
  },
  { $id: "ToolLine" },
);

const Kit = strict(
  {
    heading: Type.String(),
    lines: Type.Array(strict({ id: Type.String(), partNumber: Type.String(), net: decimalText, marks: words })),
    tools: words,
    neededBy: day,
  },
  { $id: "Kit", description: "what one area or panel is to be handed, net" },
);

const money = orNull(ref(Money));
export const PartsList = strict(
  {
    from: ref(AnsweredFrom),
    rulesVersion: Type.String(),
    connectors: Type.String(),
    proof: orNull(ref(Proof)),
    list: strict({
      lines: Type.Array(ref(PartLine)),
      tools: Type.Array(ref(ToolLine)),
      hours: orNull(decimalText),
      hoursBySource: Type.Array(strict({ source: Type.String(), joints: count, hours: orNull(decimalText) })),
      cost: strict({ parts: money, tools: money, labour: money, total: money, known: money, rounding: Type.String() }),
      kitsByArea: Type.Array(ref(Kit)),
      kitsByPanel: Type.Array(ref(Kit)),
      gaps: Type.Array(
        strict({
          about: enumOf([
            "no-part-chosen",
            "no-plugs",
            "reducer-at-one-end",
            "no-price",
            "no-hours",
            "no-lead-time",
            "tool-terms",
          ] as const),
          sentence: Type.String(),
          marks: words,
        }),
      ),
      notListed: words,
      sparePolicy: strict({ id: Type.String(), basis: enumOf(["judgement", "stated"] as const) }),
    }),
    notListed: strict({
      noPartNeeded: Type.Array(ref(NoPartNeeded)),
      notAccepted: Type.Array(ref(NoPartNeeded)),
      withoutPart: Type.Array(ref(WithoutPart)),
    }),
    lookUp: Type.Array(strict({ partNumber: Type.String(), marks: words, sentence: Type.String() })),
    caution: Type.String(),
  },
  { $id: "PartsList", description: "what to buy, line by line" },
);

const place = label(64, "the tag");
const through = (one: string) => enumOf([one, "passes-through"]);
const conductors = (least: number) => Type.Integer({ minimum: least, maximum: 1000 });

export const FeedersQuestion = strict(
  {
    feeders: Type.Array(
      strict({
        mark: label(64, "the feeder's mark"),
        from: place,
        to: place,
        sets: conductors(1),
        phases: conductors(1),
        neutrals: conductors(0),
        grounds: enumOf(["in-every-raceway", "one-shared", "none"] as const),
        devices: Type.Optional(
          Type.Array(strict({ tag: place, neutral: through("lands"), ground: through("lands") }), { maxItems: 50 }),
        ),
        splices: Type.Optional(
          Type.Array(strict({ tag: place, neutral: through("spliced"), ground: through("spliced") }), { maxItems: 50 }),
        ),
        taps: Type.Optional(
          Type.Array(
            strict({
              tag: place,
              sets: conductors(1),
              phases: conductors(0),
              neutrals: conductors(0),
              grounds: conductors(0),
            }),
            { maxItems: 50 },
          ),
        ),
      }),
      { minItems: 1, maxItems: 5000 },
    ),
  },
  {
    $id: "FeedersQuestion",
    examples: [
      {
        feeders: [
          { mark: "F-1", from: "MSB", to: "MCC-1", sets: 3, phases: 3, neutrals: 0, grounds: "in-every-raceway" },
        ],
      },
    ],
  },
);

export const FeedersAnswer = strict(
  {
    feeders: Type.Array(
      strict({
        mark: Type.String(),
        joints: Type.Array(
          strict({
            mark: Type.String(),
            at: Type.String(),
            function: enumOf(["termination", "splice", "tap"] as const),
            role: enumOf(["phase", "neutral", "equipment-ground"] as const),
            joints: count,
            working: Type.String(),
          }),
        ),
        totals: strict({ phase: count, neutral: count, equipmentGround: count, splice: count, tap: count }),
        inferred: words,
        notCounted: Type.String(),
      }),
    ),
  },
  { $id: "FeedersAnswer", description: "the joints of feeders, and what was concluded" },
);

export const PARTS_LIST_SCHEMAS = [
  ConnectorsFrom,
  SpareRule,
  SparesFrom,
  Accessory,
  ToolTerms,
  PartsListQuestion,
  PartLine,
  ToolLine,
  Kit,
  PartsList,
  FeedersQuestion,
  FeedersAnswer,
];
