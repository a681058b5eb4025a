import type { CalculationName, CalculationQuestions } from "@landfast/rules";
import type { TObject, TOptional, TSchema } from "@sinclair/typebox";
import { strict } from "../strict.js";

/** What one calculation is asked, and an example that is answered. */
export interface QuestionForm<Name extends CalculationName> {
  readonly question: TSchema;
  readonly example: CalculationQuestions[Name];
}

/** A schema for each field of a type and for no other; a field that may be absent must be optional in the schema too. */
export type FieldsOf<T> = {
  readonly [Name in keyof T]-?: object extends Pick<T, Name> ? TOptional<TSchema> : TSchema;
};

/** A closed object with the fields of a type of the library: the compiler refuses a field too many or too few. */
export function strictly<T>(
  fields: FieldsOf<T>,
  more: { readonly $id?: string; readonly description?: string } = {},
): TObject {
  return strict(fields as Readonly<Record<string, TSchema>>, more);
}

/** The words of a type that the library keeps no list of: the compiler refuses a word too many or too few. */
export function everyWord<T extends string>(words: Readonly<Record<T, true>>): readonly T[] {
  return Object.keys(words) as T[];
}
