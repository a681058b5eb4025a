import type { ConnectorSchedule } from "@landfast/rules";
import { scheduleCsv } from "../documents/schedule-csv.js";
import { scheduleHtml } from "../documents/schedule-html.js";
import { Problem } from "../problems/problem.js";

/** The forms in which a schedule is to be had; the first is sent to whoever does not mind. */
export const SCHEDULE_FORMS = ["application/json", "text/csv", "text/html"] as const;
export type ScheduleForm = (typeof SCHEDULE_FORMS)[number];

/**
 * The form that an Accept header asks for: the highest weight wins, then the order above.
 * @throws Problem NOT_ACCEPTABLE when it allows none of them.
 */
export function formOf(accept: string | undefined): ScheduleForm {
  if (accept === undefined || accept.trim() === "") return SCHEDULE_FORMS[0];
  const wishes = accept.split(",").map(wishOf);
  const weighed = SCHEDULE_FORMS.map((form) => ({ form, weight: weightOf(form, wishes) }));
  const best = Math.max(...weighed.map(({ weight }) => weight));
  const chosen = weighed.find(({ weight }) => weight === best);
  if (chosen === undefined || !(best > 0))
    throw new Problem("NOT_ACCEPTABLE", `A schedule is to be had as ${SCHEDULE_FORMS.join(", ")}.`);
  return chosen.form;
}

/** The stored schedule in the form asked for. Made from what was stored, never worked out again. */
export function scheduleDocument(form: ScheduleForm, stored: string): string {
  if (form === "application/json") return stored;
  const schedule = JSON.parse(stored) as ConnectorSchedule;
  return form === "text/csv" ? scheduleCsv(schedule) : scheduleHtml(schedule);
}

interface Wish {
  readonly range: string;
  readonly weight: number;
}

function wishOf(text: string): Wish {
  const [range = "", ...parameters] = text.split(";").map((part) => part.trim().toLowerCase());
  const q = parameters.find((parameter) => parameter.startsWith("q="));
  const weight = q === undefined ? 1 : Number(q.slice(2));
  return { range, weight: weight >= 0 && weight <= 1 ? weight : 0 };
}

/** The most exact range that covers the form decides. */
function weightOf(form: ScheduleForm, wishes: readonly Wish[]): number {
  for (const range of [form, `${form.slice(0, form.indexOf("/"))}/*`, "*/*"]) {
    const wish = wishes.find((one) => one.range === range);
    if (wish !== undefined) return wish.weight;
  }
  return 0;
}
