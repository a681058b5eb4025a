import type { ConnectorSchedule } from "@landfast/rules";
import { scheduleCsv } from "../documents/schedule-csv.js";
import { scheduleHtml } from "../documents/schedule-html.js";
import { answerForm } from "./answer-form.js";

/** The forms in which a schedule is to be had; the first is sent to whoever does not mind. */
export const SCHEDULE_FORMS = ["application/json", "text/csv", "text/html"] as const;
export type ScheduleForm = (typeof SCHEDULE_FORMS)[number];

/**
 * The form that an Accept header asks for.
 * @throws Problem NOT_ACCEPTABLE when it allows none of them.
 */
export function formOf(accept: string | undefined): ScheduleForm {
  return answerForm(accept, SCHEDULE_FORMS, "A schedule");
}

/** The stored schedule in the form asked for. Made from what was stored, never worked out again. */
export function scheduleDocument(form: ScheduleForm, stored: string): string {
  if (form === "application/json") return stored;
  const schedule = JSON.parse(stored) as ConnectorSchedule;
  return form === "text/csv" ? scheduleCsv(schedule) : scheduleHtml(schedule);
}
