import { type Static, type TSchema, type TUnsafe, Type } from "@sinclair/typebox";

/** Refers to a schema by its name, so that the OpenAPI document has it once; it must be listed in components.ts. */
export function ref<T extends TSchema>(schema: T): TUnsafe<Static<T>> {
  if (schema.$id === undefined) throw new Error("a schema that is referred to needs an $id");
  return Type.Unsafe<Static<T>>({ $ref: `${schema.$id}#` });
}
