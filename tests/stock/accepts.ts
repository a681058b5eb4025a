import { type CatalogueItem, checkJoint, type Job, type Joint } from "@landfast/rules";
import { expect } from "vitest";

/** A joint as it is made with another part than the one it was offered. */
export function withoutOffer(joint: Joint): Joint {
  const { connector: _connector, partState: _partState, tooling: _tooling, ...rest } = joint;
  return { ...rest, partState: "new" };
}

/** Joints of some marks that an answer makes with a part. */
export interface Made {
  readonly marks: readonly string[];
  readonly partNumber: string;
  readonly verdict: string;
}

/**
 * Every joint that an answer makes with a part passes the full check with that part, mark by mark and by itself: what a
 * plan proposes has to be allowed whatever way it was found.
 */
export function expectEveryAccept(job: Job, catalogue: readonly CatalogueItem[], made: readonly Made[]): void {
  expect(made.length).toBeGreaterThan(0);
  const joints = new Map(job.joints.map((joint) => [joint.mark, joint]));
  const items = new Map(catalogue.map((item) => [item.partNumber, item]));
  for (const { marks, partNumber, verdict } of made) {
    expect(marks.length).toBeGreaterThan(0);
    for (const mark of marks) {
      const [joint, connector] = [joints.get(mark), items.get(partNumber)];
      if (joint === undefined || connector === undefined) throw new Error(`no ${mark}, or no ${partNumber}`);
      const question = { joint: withoutOffer(joint), basis: joint.basis ?? job.basis, connector };
      const found = checkJoint({ ...question, origin: "catalogue" });
      expect(["accept", "accept-with-conditions"], `${mark} with ${partNumber}`).toContain(found.verdict);
      expect(found.verdict, `${mark} with ${partNumber}`).toBe(verdict);
    }
  }
}

/** Every joint of the job stands in an answer exactly once, made or named with the reason why not. */
export function expectEveryJoint(
  job: Job,
  made: readonly { readonly marks: readonly string[] }[],
  named: readonly {
    readonly mark?: string;
    readonly marks?: readonly (string | { readonly mark: string })[];
    readonly because: string;
  }[],
): void {
  for (const { because } of named) expect(because).not.toBe("");
  const marks = [
    ...made.flatMap((one) => one.marks),
    ...named.flatMap(({ mark, marks: some = [] }) => [
      ...(mark === undefined ? [] : [mark]),
      ...some.map((one) => (typeof one === "string" ? one : one.mark)),
    ]),
  ];
  expect(marks.sort()).toEqual(job.joints.map(({ mark }) => mark).sort());
}
