import { Problem } from "../problems/problem.js";

/**
 * The form that an Accept header asks for: the highest weight wins, then the order of the forms; the first is sent to
 * whoever does not mind.
 * @param what what is to be had in these forms: "A schedule".
 * @throws Problem NOT_ACCEPTABLE when it allows none of them.
 */
export function answerForm<Form extends string>(
  accept: string | undefined,
  forms: readonly [Form, ...Form[]],
  what: string,
): Form {
  if (accept === undefined || accept.trim() === "") return forms[0];
  const wishes = accept.split(",").map(wishOf);
  const weighed = forms.map((form) => ({ form, weight: weightOf(form, wishes) }));
  const best = Math.max(...weighed.map(({ weight }) => weight));
  const chosen = weighed.find(({ weight }) => weight === best);
  if (chosen === undefined || !(best > 0))
    throw new Problem("NOT_ACCEPTABLE", `${what} is to be had as ${forms.join(", ")}.`);
  return chosen.form;
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
function weightOf(form: string, wishes: readonly Wish[]): number {
  for (const range of [form, `${form.slice(0, form.indexOf("/"))}/*`, "*/*"]) {
    const wish = wishes.find((one) => one.range === range);
    if (wish !== undefined) return wish.weight;
  }
  return 0;
}
