import type { TemperatureComparison, TemperatureRiseQuestion } from "@landfast/rules";
import { Type } from "@sinclair/typebox";
import { enumOf } from "../enum-of.js";
import { taggedUnion } from "../strict.js";
import { type QuestionForm, strictly } from "./question-form.js";

type Comparison<With extends TemperatureComparison["with"]> = Extract<TemperatureComparison, { with: With }>;

const temperatureRiseC = Type.Number({
  minimum: -1000,
  maximum: 1000,
  description:
    "how much warmer the part is, in degrees Celsius: a number from -1000 to 1000, below 0 where it is cooler",
});

export const temperatureRise: QuestionForm<"temperature-rise"> = {
  question: strictly<TemperatureRiseQuestion>({
    comparisons: Type.Array(
      taggedUnion("with", [
        strictly<Comparison<"like-part">>({
          with: enumOf(["like-part"] as const),
          temperatureRiseC,
          likeLoad: Type.Optional(
            Type.Boolean({ description: "whether the two parts carried a like load: true or false" }),
          ),
        }),
        strictly<Comparison<"air">>({ with: enumOf(["air"] as const), temperatureRiseC }),
      ]),
      { minItems: 1, maxItems: 20, description: "what the part was compared with: a list of 1 to 20" },
    ),
  }),
  example: { comparisons: [{ with: "like-part", temperatureRiseC: 12, likeLoad: true }] },
};
