import { type Static, type TSchema, type TUnsafe, Type } from "@sinclair/typebox";

/** Refers to a schema by its name, so that the OpenAPI document has it once; it must be listed in components.ts. */
export function ref<T extends TSchema>(schema: T): TUnsafe<Static<T>> {
  if (schema.$id === undefined) throw new Error("a schema that is referred to needs an $id");
  const $ref = `${schema.$id}#`;
  // What is accepted is said beside the reference too: a field that is missing is described without looking it up.
  return Type.Unsafe<Static<T>>(
    schema.description === undefined ? { $ref } : { $ref, description: schema.description },
  );
}
