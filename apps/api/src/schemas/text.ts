import { type TString, Type } from "@sinclair/typebox";

/** Text for people: some characters, none of them a control character. */
export function text(maxLength: number, what: string): TString {
  return Type.String({
    minLength: 1,
    maxLength,
    pattern: "^[^\\u0000-\\u001f\\u007f-\\u009f\\u2028\\u2029]*$",
    description: `${what}: text of 1 to ${maxLength} characters without control characters`,
  });
}

/** An identifier that also stands in addresses and documents: begins and ends with a letter, a digit or a bracket. */
export function label(maxLength: number, what: string): TString {
  return Type.String({
    minLength: 1,
    maxLength,
    pattern: "^[\\p{L}\\p{N}](?:[\\p{L}\\p{M}\\p{N} ._/#+()-]*[\\p{L}\\p{M}\\p{N})])?$",
    description: `${what}: 1 to ${maxLength} letters, digits, spaces or . _ / # + - ( ), beginning with a letter or digit`,
  });
}
