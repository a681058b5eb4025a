import { Type } from "@sinclair/typebox";
import { strict } from "./strict.js";

/** The path of everything that hangs on a stored job. */
export const jobId = strict({ id: Type.String({ minLength: 1, maxLength: 64, description: "the job's id" }) });
