import { larkfenJob } from "@landfast/data";
import type { Basis, Joint } from "@landfast/rules";

/** A joint of the demonstration site with the connector it names, as a body of POST /v1/checks/compatibility. */
export function checkQuestion(mark: string): { readonly basis: Basis; readonly joint: Joint } {
  const job = larkfenJob();
  const found = job.joints.find((joint) => joint.mark === mark);
  if (found === undefined) throw new RangeError(`the demonstration job has no joint ${mark}`);
  const { basis: own, ...joint } = found;
  return { basis: own ?? job.basis, joint };
}
