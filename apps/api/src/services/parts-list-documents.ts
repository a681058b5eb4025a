import { partsListCsv } from "../documents/parts-list-csv.js";
import { answerForm } from "./answer-form.js";
import type { JobPartsList } from "./parts-lists.js";

/** The forms in which a parts list is to be had; the first is sent to whoever does not mind. */
export const PARTS_LIST_FORMS = ["application/json", "text/csv"] as const;
type PartsListForm = (typeof PARTS_LIST_FORMS)[number];

/**
 * The form that an Accept header asks for.
 * @throws Problem NOT_ACCEPTABLE when it allows none of them.
 */
export function partsListForm(accept: string | undefined): PartsListForm {
  return answerForm(accept, PARTS_LIST_FORMS, "A parts list");
}

/** The list in the form asked for. */
export function partsListDocument(form: PartsListForm, answer: JobPartsList): string {
  return form === "text/csv" ? partsListCsv(answer.list) : JSON.stringify(answer);
}
