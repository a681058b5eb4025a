import { COMMON_PRACTICE } from "../../core/citation.js";
import { conductorPath } from "../../core/conductor-path.js";
import type { Edition } from "../../core/edition.js";
import type { Duty, Step } from "../../core/finding.js";
import { type JointSubject, notApplicable, type Rule, settled } from "../../core/rule.js";
import { Worksheet } from "../../core/worksheet.js";
import { type LocalAmendment, localAmendment, preparation, surfaceOf } from "./preparation.js";
import type { PreparationAnswer } from "./preparation-answer.js";

const ID = "aluminum-preparation";

/**
 * What must be done to an aluminum conductor before it is landed?
 *
 * NFPA 70 110.3(B) and 110.14 (2017, 2020, 2023), our words: the connector's instructions are followed, and a compound,
 * where used, is one that suits. The code itself asks for neither brush nor compound; brushing off the oxide is common
 * practice. The rule never refuses: it hangs the acceptance on the work.
 * Worked: 600 kcmil aluminum in a lug whose instructions ask for compound: brush, then compound. The same in a piercing
 * tap: no brush, because the insulation stays on.
 * A local amendment that the job states may ask for both, whatever the instructions say.
 * Silent: where the instructions are not known the answer is "as the instructions say", never a guess.
 */
export const aluminumPreparation: Rule = {
  id: ID,
  title: "Preparation of aluminum conductors",
  clauses: ["instructions", "compounds"],
  needs: [
    "joint/conductors/0/metal",
    "joint/conductors/0/stranding",
    "joint/basis/jurisdiction",
    "connector/compound",
    "connector/construction",
  ],
  cannotSee:
    "whether the strands were brushed and the compound applied, and a load that comes and goes, which loosens screws on aluminum",
  check(subject, edition) {
    const surface = surfaceOf(subject.joint);
    if (surface === "copper") return notApplicable(ID, "all conductors are copper");
    const worksheet = new Worksheet();
    const cite = edition.clauses.instructions;
    const answer = preparation(subject, edition);
    const uses = factSteps(subject, worksheet);
    const brush = worksheet.conclude(
      "wire brush",
      answer.brush.needed ? "needed" : "not needed",
      uses,
      answer.brush.because,
      answer.brush.cite,
    );
    const compound = worksheet.conclude(
      "oxide-inhibiting compound",
      answer.compound.need,
      uses,
      answer.compound.because,
      answer.compound.cite,
    );
    worksheet.conclude("the preparation is known", "pass", [brush, compound], "it is done on site", cite);
    const metal = surface === "aluminum" ? "Aluminum" : "Copper-clad aluminum";
    return settled(ID, worksheet, {
      sentence: `${metal} is landed: ${answer.brush.needed ? "brush it bright" : "no brushing"}; ${COMPOUND_TEXT[answer.compound.need]}.`,
      cite,
      required: "preparation by the connector's instructions",
      offered: `${answer.brush.needed ? "brush" : "no brush"}; ${COMPOUND_TEXT[answer.compound.need]}`,
      conditions: conditionsFor(answer, edition),
    });
  },
};

const COMPOUND_TEXT: Readonly<Record<PreparationAnswer["compound"]["need"], string>> = {
  required: "compound required",
  "pre-filled": "compound filled in by the maker",
  "per-instructions": "compound as the connector's instructions say",
  "not-needed": "no compound needed",
};

function factSteps({ joint, connector, origin }: JointSubject, worksheet: Worksheet): Step[] {
  const steps: Step[] = [];
  joint.conductors.forEach(({ metal }, group) => {
    if (metal !== "copper") steps.push(worksheet.given("metal of the conductor", metal, conductorPath(group, "metal")));
  });
  steps.push(worksheet.given("how the connector holds it", connector.construction, `${origin}/construction`));
  steps.push(
    worksheet.given("what the instructions say of compound", connector.compound ?? "not known", `${origin}/compound`),
  );
  const local = localAmendment(joint);
  if (local !== undefined)
    steps.push(
      worksheet.given(
        "what a local amendment asks of aluminum",
        amendmentWords(local),
        "joint/basis/jurisdiction/aluminum",
      ),
    );
  return steps;
}

function amendmentWords({ asks }: LocalAmendment): readonly string[] {
  const words: string[] = [`conductors: ${asks.conductors}`];
  if (asks.brush !== undefined) words.push(`brush: ${asks.brush}`);
  if (asks.compound !== undefined) words.push(`compound: ${asks.compound}`);
  return words;
}

const BRUSH: Duty = Object.freeze({
  duty: "brush-aluminum",
  sentence: "Brush the stripped aluminum bright with a wire brush just before it is landed.",
  cite: COMMON_PRACTICE,
});

function conditionsFor({ brush, compound }: PreparationAnswer, edition: Edition): readonly Duty[] {
  const conditions: Duty[] = [];
  if (brush.needed)
    conditions.push(
      brush.level === "local-amendment" ? { duty: BRUSH.duty, sentence: BRUSH.sentence, cite: brush.cite } : BRUSH,
    );
  if (compound.need === "required" && compound.level === "local-amendment")
    conditions.push({
      duty: "apply-compound",
      sentence:
        "Apply oxide-inhibiting compound that suits the connector right after brushing: a local amendment asks for it.",
      cite: compound.cite,
    });
  else if (compound.need === "required")
    conditions.push({
      duty: "apply-compound",
      sentence: "Apply the oxide-inhibiting compound named in the connector's instructions right after brushing.",
      cite: edition.clauses.instructions,
    });
  if (compound.need === "per-instructions")
    conditions.push({
      duty: "compound-per-instructions",
      sentence: "Read the connector's instructions for oxide-inhibiting compound and apply it where they ask for it.",
      cite: edition.clauses.instructions,
    });
  return conditions;
}
