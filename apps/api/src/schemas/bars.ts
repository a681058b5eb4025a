import { CONDUCTOR_METALS, STRANDINGS } from "@landfast/rules";
import { Type } from "@sinclair/typebox";
import { enumOf } from "./enum-of.js";
import { Size, wordsOrUnmarked } from "./quantity.js";
import { ref } from "./ref.js";
import { secondsPerSolve } from "./stock-plan.js";
import { strict } from "./strict.js";
import { label } from "./text.js";

const count = Type.Integer({ minimum: 0 });
const BarRole = enumOf(["neutral", "equipment-ground"] as const);

const OpeningPermit = strict({
  conductors: Type.Integer({ minimum: 1, maximum: 12, description: "conductors in one opening" }),
  from: Size,
  to: Size,
  metals: Type.Array(enumOf(CONDUCTOR_METALS), { minItems: 1, maxItems: CONDUCTOR_METALS.length, uniqueItems: true }),
  strandings: wordsOrUnmarked(STRANDINGS, "the strand forms listed"),
  sameSize: Type.Boolean(),
  sameMetal: Type.Boolean(),
});

const Bar = strict(
  {
    id: label(40, "the bar's id"),
    takes: Type.Array(BarRole, { minItems: 1, maxItems: 2, uniqueItems: true }),
    openings: Type.Array(
      strict({
        id: label(40, "the opening's id"),
        count: Type.Integer({ minimum: 1, maximum: 1000 }),
        occupied: Type.Optional(Type.Integer({ minimum: 0, maximum: 1000 })),
        permits: Type.Array(OpeningPermit, {
          minItems: 1,
          maxItems: 40,
          description: "lines of the marking beside the bar; what none of them says is not allowed",
        }),
      }),
      { minItems: 1, maxItems: 40 },
    ),
  },
  { $id: "Bar" },
);

const exampleBar = {
  id: "neutral bar",
  takes: ["neutral", "equipment-ground"],
  openings: [
    {
      id: "small",
      count: 5,
      permits: [
        {
          conductors: 1,
          from: "14 AWG",
          to: "4 AWG",
          metals: ["copper", "aluminum"],
          strandings: "unmarked",
          sameSize: true,
          sameMetal: true,
        },
        {
          conductors: 2,
          from: "14 AWG",
          to: "12 AWG",
          metals: ["copper"],
          strandings: ["solid"],
          sameSize: true,
          sameMetal: true,
        },
      ],
    },
  ],
};

export const BarsQuestion = strict(
  {
    bars: Type.Array(ref(Bar), { minItems: 1, maxItems: 40 }),
    addable: Type.Optional(
      Type.Array(ref(Bar), { maxItems: 20, description: "bars that the panel is listed for and that can be added" }),
    ),
    conductors: Type.Array(
      strict({
        id: label(64, "the conductors' id"),
        role: BarRole,
        size: Size,
        metal: enumOf(CONDUCTOR_METALS),
        stranding: enumOf(STRANDINGS),
        count: Type.Integer({ minimum: 1, maximum: 1000 }),
      }),
      { minItems: 1, maxItems: 1000 },
    ),
    secondsPerSolve,
  },
  {
    $id: "BarsQuestion",
    examples: [
      {
        bars: [exampleBar],
        conductors: [
          { id: "neutrals", role: "neutral", size: "12 AWG", metal: "copper", stranding: "solid", count: 3 },
          { id: "grounds", role: "equipment-ground", size: "12 AWG", metal: "copper", stranding: "solid", count: 4 },
        ],
      },
    ],
  },
);

const conductors = Type.Array(strict({ id: Type.String(), count }));
export const BarsAnswer = strict(
  {
    landings: Type.Array(
      strict({ bar: Type.String(), isAdded: Type.Boolean(), opening: Type.String(), openings: count, conductors }),
    ),
    barsToAdd: Type.Array(strict({ bar: Type.String(), count })),
    spare: Type.Array(strict({ bar: Type.String(), opening: Type.String(), openings: count })),
    spareOpenings: count,
    openingsUsed: count,
    notLanded: Type.Array(strict({ id: Type.String(), count, because: Type.String() })),
    objective: Type.String(),
    proven: Type.Boolean({ description: "false when a limit stopped the search" }),
  },
  { $id: "BarsAnswer", description: "neutrals and grounds landed on bars" },
);

export const BAR_SCHEMAS = [Bar, BarsQuestion, BarsAnswer];
