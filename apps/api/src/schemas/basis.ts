import { EDITIONS } from "@landfast/rules";
import { Type } from "@sinclair/typebox";
import { enumOf } from "./enum-of.js";
import { strict } from "./strict.js";
import { text } from "./text.js";

/** Which rules apply. Built from the editions that the rules library answers for. */
export const Basis = strict(
  {
    ruleSet: enumOf([...new Set(EDITIONS.map(({ ruleSet }) => ruleSet))]),
    edition: enumOf([...new Set(EDITIONS.map(({ edition }) => edition))]),
    installedOn: Type.Optional(
      Type.String({ format: "date", maxLength: 10, description: 'the day of installation: "2024-05-01"' }),
    ),
    jurisdiction: Type.Optional(
      strict(
        {
          name: text(80, "the jurisdiction"),
          amendment: text(160, "where its amendment stands"),
          aluminum: Type.Optional(
            strict({
              conductors: enumOf(["all", "stranded"] as const),
              brush: Type.Optional(enumOf(["required"] as const)),
              compound: Type.Optional(enumOf(["required", "required-unless-marked"] as const)),
            }),
          ),
        },
        { description: "what the authority on site asks for beyond the code" },
      ),
    ),
  },
  { $id: "Basis", description: 'the rule set and edition in force: {"ruleSet": "nfpa70", "edition": "2023"}' },
);
