import { type FillConductor as FillConductorFacts, INSULATIONS, STRANDINGS } from "@landfast/rules";
import { Type } from "@sinclair/typebox";
import { enumOf } from "../enum-of.js";
import { Length, Size } from "../quantity.js";
import { ref } from "../ref.js";
import { taggedUnion } from "../strict.js";
import { areaAboveNone, count } from "./amount.js";
import { strictly } from "./question-form.js";

const howMany = count("equal conductors or cables", 10_000);

/** Equal conductors, or equal cables, that fill space. */
export const FillConductor = taggedUnion(
  "kind",
  [
    strictly<Extract<FillConductorFacts, { kind: "conductor" }>>({
      kind: enumOf(["conductor"] as const),
      count: howMany,
      size: Size,
      insulation: enumOf(INSULATIONS),
      stranding: enumOf(STRANDINGS),
      outerCovering: Type.Optional(
        Type.Boolean({ description: "an outer covering of RHH or RHW conductors: true or false" }),
      ),
      measuredArea: Type.Optional(areaAboveNone("area over the insulation")),
    }),
    strictly<Extract<FillConductorFacts, { kind: "cable" }>>({
      kind: enumOf(["cable"] as const),
      count: howMany,
      diameter: ref(Length),
    }),
  ],
  { $id: "FillConductor", description: "equal conductors, or equal cables of which each counts as one" },
);

export const fillConductors = Type.Array(ref(FillConductor), {
  minItems: 1,
  maxItems: 50,
  description: "the conductors and cables: a list of 1 to 50 kinds",
});
