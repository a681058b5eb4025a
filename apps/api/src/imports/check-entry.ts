import { explainRefusal } from "../problems/explain-refusal.js";
import type { Fault } from "../problems/problem.js";
import { type CatalogueEntry, CatalogueEntrySchema } from "../schemas/catalogue-entry.js";
import { COMPONENTS } from "../schemas/components.js";
import { ref } from "../schemas/ref.js";
import { makeValidators } from "../schemas/validators.js";
import { entryFaults, inACircle } from "../services/catalogue-consistency.js";
import { isKnownMarking } from "../services/connector-filter.js";
import type { CheckEntry } from "./entry-place.js";

/** Makes the checks of a connector: the form that a posted one must have, and what cannot be true together. */
export function entryCheck(): CheckEntry {
  const refusalOf = makeValidators(COMPONENTS).forBody(ref(CatalogueEntrySchema));
  return {
    faults(entry: CatalogueEntry): readonly Fault[] {
      const refusal = refusalOf(entry, 0);
      if (refusal === null) return entryFaults(entry, "");
      // Whoever keeps a price list reads this: what a pattern is need not be known.
      return explainRefusal(refusal, "").map((fault) => ({
        ...fault,
        detail: fault.detail.replace(/must match pattern .*$/s, "holds a sign that is not accepted here"),
      }));
    },
    remarks({ metalMarking }) {
      if (metalMarking === undefined || isKnownMarking(metalMarking)) return [];
      return [
        {
          field: "metalMarking",
          written: metalMarking,
          remark: "what this marking stands for is not known to the rules: a joint with the part will be asked about",
        },
      ];
    },
    inACircle,
  };
}
