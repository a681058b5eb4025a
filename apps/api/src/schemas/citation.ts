import { Type } from "@sinclair/typebox";
import { strict } from "./strict.js";

/** A place in a published document. */
export const Citation = strict(
  { standard: Type.String(), edition: Type.String(), locator: Type.String() },
  { $id: "Citation" },
);
