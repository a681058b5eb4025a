import { BOX_WALLS, type PullBoxEntry, type PullBoxPull, type PullBoxQuestion } from "@landfast/rules";
import { Type } from "@sinclair/typebox";
import { enumOf } from "../enum-of.js";
import { Length, Size } from "../quantity.js";
import { ref } from "../ref.js";
import { label } from "../text.js";
import { count, tradeSize } from "./amount.js";
import { type QuestionForm, strictly } from "./question-form.js";

const entryId = label(20, "the id of an entry");

export const pullBox: QuestionForm<"pull-box"> = {
  question: strictly<PullBoxQuestion>({
    largestConductor: Size,
    entries: Type.Array(
      strictly<PullBoxEntry>({
        id: entryId,
        wall: enumOf(BOX_WALLS, "back: the wall opposite the removable cover"),
        row: count("the row of the wall", 50),
        tradeSize: tradeSize("the raceway's trade size"),
      }),
      { minItems: 2, maxItems: 100, description: "the raceways that enter: a list of 2 to 100" },
    ),
    pulls: Type.Array(
      strictly<PullBoxPull>({
        from: entryId,
        to: entryId,
        spliced: Type.Boolean({ description: "the conductors are spliced in the box: true or false" }),
        apart: Type.Optional(ref(Length)),
      }),
      { minItems: 1, maxItems: 100, description: "which entries the same conductors pass: a list of 1 to 100" },
    ),
    box: Type.Optional(
      strictly<NonNullable<PullBoxQuestion["box"]>>({
        width: ref(Length),
        height: ref(Length),
        depth: Type.Optional(ref(Length)),
      }),
    ),
  }),
  example: {
    largestConductor: "350 kcmil",
    entries: [
      { id: "A", wall: "left", row: 1, tradeSize: "3" },
      { id: "B", wall: "left", row: 1, tradeSize: "3" },
      { id: "C", wall: "bottom", row: 1, tradeSize: "3" },
      { id: "D", wall: "bottom", row: 1, tradeSize: "3" },
    ],
    pulls: [
      { from: "A", to: "C", spliced: false, apart: { value: 19, unit: "in" } },
      { from: "B", to: "D", spliced: false, apart: { value: 19, unit: "in" } },
    ],
    box: { width: { value: 24, unit: "in" }, height: { value: 24, unit: "in" } },
  },
};
