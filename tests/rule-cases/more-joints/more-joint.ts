/** A joint for a way through a rule that the endless row does not take: one of its joints, with a fact changed. */
import type { Draft } from "../../oracle/draft.js";
import { generate } from "../../oracle/generate.js";

export interface MoreJoint {
  readonly rule: string;
  readonly name: string;
  /** null: the change makes all of it. */
  readonly from: number | null;
  readonly change: (draft: Draft) => void;
}

/** The joint as it is asked. */
export function moreJoint({ from, change }: MoreJoint): Draft {
  const { joint, connector, basis } = structuredClone(generate(from ?? 0));
  const draft: Draft = { joint, connector, basis };
  change(draft);
  return draft;
}
