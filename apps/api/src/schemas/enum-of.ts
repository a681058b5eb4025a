import { type TUnsafe, Type } from "@sinclair/typebox";

/**
 * One word of a closed list. A plain string enum: twice as fast to check as a union of literals, and shorter in the
 * OpenAPI document.
 */
export function enumOf<const T extends string>(words: readonly T[], description?: string): TUnsafe<T> {
  return Type.Unsafe<T>({
    type: "string",
    enum: [...words],
    ...(description === undefined ? {} : { description }),
  });
}
