import { type TObject, type TProperties, type TUnsafe, Type } from "@sinclair/typebox";

/** An object with these fields and no others. */
export function strict<T extends TProperties>(
  fields: T,
  more: { readonly $id?: string; readonly description?: string; readonly examples?: readonly unknown[] } = {},
): TObject<T> {
  return Type.Object(fields, { additionalProperties: false, ...more });
}

/**
 * One of several objects told apart by the word in their field `tag`. The validator goes straight to the branch that
 * the word names, so a fault is reported for that branch only.
 */
export function taggedUnion<T>(
  tag: string,
  branches: readonly TObject[],
  more: { readonly $id?: string; readonly description?: string } = {},
): TUnsafe<T> {
  return Type.Unsafe<T>({
    type: "object",
    discriminator: { propertyName: tag },
    required: [tag],
    oneOf: [...branches],
    ...more,
  });
}
