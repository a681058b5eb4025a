/** What a count of strands says of the form of a conductor, and of an opening for it. */
import { STRANDINGS, type Stranding } from "../../core/conductor.js";
import { conductorPath } from "../../core/conductor-path.js";
import { sizeOf } from "../../core/conductor-size.js";
import { listWords, strandingWords } from "../../core/conductor-words.js";
import type { Opening } from "../../core/connector.js";
import type { Edition } from "../../core/edition.js";
import type { Step } from "../../core/finding.js";
import { type Fit, type LandedGroup, namesStranding, positionIn, strandingFit } from "../../core/opening-fit.js";
import type { Worksheet } from "../../core/worksheet.js";
import { countedClasses } from "./counted-classes.js";

/** Class J and class L have counts; no listing names them. */
export type CountedForm = Stranding | "class-J" | "class-L";

/** Compressed and compact conductors have the count of class B. */
const LIKE_CLASS_B: readonly CountedForm[] = ["class-B", "compressed", "compact"];
const METRIC_SOLID: readonly CountedForm[] = ["iec-class-1", "solid"];
/** Their counts are least counts or follow from the wire, so several strands may be any of them. */
const METRIC_STRANDED: readonly CountedForm[] = ["iec-class-2", "iec-class-5", "iec-class-6"];

/** The forms that the count leaves, with the step that says so; none where no class is known with it. */
export function countedForms(
  worksheet: Worksheet,
  { conductor, group }: LandedGroup,
  counted: number,
  edition: Edition,
): { readonly forms: readonly CountedForm[]; readonly step: Step } {
  const size = worksheet.given("size of the conductor", conductor.size, conductorPath(group, "size"));
  const strands = worksheet.given("number of strands", counted, conductorPath(group, "strands"), "strands");
  const metric = sizeOf(conductor.size).series !== "awg-kcmil";
  if (counted === 1 || metric) {
    const forms = metric ? (counted === 1 ? METRIC_SOLID : METRIC_STRANDED) : SOLID;
    return { forms, step: concluded(worksheet, forms, [size, strands], edition) };
  }
  const metal = worksheet.given("metal of the conductor", conductor.metal, conductorPath(group, "metal"));
  const classes = countedClasses(worksheet, { size, metal, strands }, edition);
  const forms: CountedForm[] = [];
  const uses = [size, metal, strands];
  for (const found of "refusal" in classes ? [] : classes) {
    uses.push(found.step);
    const form = found.class as CountedForm;
    if (form === "class-B") forms.push(...LIKE_CLASS_B);
    else forms.push(form);
  }
  return { forms, step: concluded(worksheet, forms, uses, edition) };
}

const SOLID: readonly CountedForm[] = ["solid"];

function concluded(worksheet: Worksheet, forms: readonly CountedForm[], uses: readonly Step[], edition: Edition): Step {
  return worksheet.conclude(
    "strand forms of that count",
    forms,
    uses,
    forms.length === 0 ? "no class that is held has it at this size" : "these have it at this size",
    edition.clauses.finelyStranded,
  );
}

/** Whether the opening is listed for the form at this size. A size outside every range is another rule's question. */
export function formFit(form: CountedForm, size: string, opening: Opening): Fit {
  if (!isListable(form)) return fitOfUnnamed(opening);
  const fit = strandingFit(form, opening);
  if (fit !== "fits") return fit;
  const parsed = sizeOf(size);
  const within = opening.ranges.filter((range) => positionIn(range, parsed) === "within");
  return within.length === 0 || within.some((range) => namesStranding(range, form)) ? "fits" : "refused";
}

/** A class that no listing can name has finer strands than class C: every list of ASTM forms leaves it out. */
function fitOfUnnamed({ ranges }: Opening): Fit {
  const refuses = ranges.some(
    ({ strandings }) => strandings === "unmarked" || strandings.some((form) => !form.startsWith("iec-")),
  );
  return refuses ? "refused" : "unknown";
}

/** "class B, compressed or compact". */
export function formsWords(forms: readonly CountedForm[]): string {
  return listWords(forms.map((form) => (isListable(form) ? strandingWords(form) : form.replace("-", " ")))).replace(
    / and (?=[^,]*$)/,
    " or ",
  );
}

function isListable(form: CountedForm): form is Stranding {
  return (STRANDINGS as readonly string[]).includes(form);
}
