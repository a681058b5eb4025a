import { DWELLING_SYSTEMS, type DwellingServiceQuestion } from "@landfast/rules";
import { Type } from "@sinclair/typebox";
import { enumOf } from "../enum-of.js";
import { ref } from "../ref.js";
import { amount } from "./amount.js";
import { AMPERES_MAX } from "./circuit-load.js";
import { ConductorRun } from "./conductor-run.js";
import { type QuestionForm, strictly } from "./question-form.js";

export const dwellingService: QuestionForm<"dwelling-service"> = {
  question: strictly<DwellingServiceQuestion>({
    ratingA: amount("the rating of the service or the feeder", "amperes", AMPERES_MAX),
    system: enumOf(DWELLING_SYSTEMS),
    carriesWholeLoad: Type.Optional(
      Type.Boolean({ description: "the conductors carry the whole load of one dwelling unit: true or false" }),
    ),
    run: ref(ConductorRun),
  }),
  example: {
    ratingA: 200,
    system: "single-phase-120/240",
    carriesWholeLoad: true,
    run: {
      metal: "aluminum",
      insulation: "XHHW-2",
      place: "wet",
      sets: 1,
      manner: "raceway",
      ambient: { value: 30, unit: "Cel" },
      sunlitRoof: "none",
      grouping: { in: "raceway", conductors: [{ kind: "three-wire-single-phase", count: 1 }] },
      supplyEnd: { value: 75, unit: "Cel" },
      loadEnd: { value: 75, unit: "Cel" },
    },
  },
};
