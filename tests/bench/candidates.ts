import { type CatalogueItem, candidatesForJob, checkJoint, type Joint } from "@landfast/rules";
import { cpuSeconds, median } from "./ratio.js";
import { SYNTHETIC_BASIS, syntheticCatalogue, syntheticJoints } from "./synthetic.js";

const CONNECTORS = 2000;
const ROUNDS = 3;
/** Joints that are checked with every connector of the catalogue, one by one; the whole job that way takes minutes. */
const SAMPLED = 12;

/** Candidates of whole jobs, against the full check of every pair, and how the time grows with the job. */
export function benchCandidates(): void {
  const catalogue = syntheticCatalogue(CONNECTORS, 1);
  console.log(`Candidates of every joint among ${String(CONNECTORS)} connectors, in processor time`);
  const plain = plainSeconds(syntheticJoints(300, 300, 2), catalogue);
  console.log(
    `  full check of one joint with all, one by one: ${(plain * 1000).toFixed(0)} ms (of ${String(SAMPLED)} joints)`,
  );
  for (const [joints, kinds] of [
    [10_000, 300],
    [10_000, 10_000],
  ] as const) {
    const job = syntheticJoints(joints, kinds, 2);
    const cold: number[] = [];
    const warm: number[] = [];
    for (let round = 0; round < ROUNDS; round += 1) {
      const fresh = [...catalogue];
      cold.push(secondsOf(job, fresh));
      warm.push(secondsOf(job, fresh));
    }
    const [first, again] = [median(cold), median(warm)];
    console.log(`  ${joints.toLocaleString("en")} joints of ${kinds.toLocaleString("en")} kinds`);
    console.log(
      `    ${(first * 1000).toFixed(0)} ms with a catalogue not seen before, ${(again * 1000).toFixed(0)} ms the second time`,
    );
    console.log(
      `    ratio to the full check of every pair (${(plain * joints).toFixed(0)} s, from the sample): ${((plain * joints) / first).toFixed(0)}; aim 10 or better`,
    );
  }
  const growth = [1000, 10_000, 100_000].map((joints) => {
    const job = syntheticJoints(joints, 300, 2);
    const seconds = median(Array.from({ length: ROUNDS }, () => secondsOf(job, [...catalogue])));
    return { joints, seconds, megabytes: process.memoryUsage().rss / 1e6 };
  });
  for (const { joints, seconds, megabytes } of growth)
    console.log(
      `  ${joints.toLocaleString("en")} joints of 300 kinds: ${(seconds * 1000).toFixed(0)} ms, ${megabytes.toFixed(0)} MB in memory; aim under 1000 MB`,
    );
  const [small, , large] = growth;
  if (small !== undefined && large !== undefined)
    console.log(
      `  time for a joint at 100,000 over that at 1,000: ${(large.seconds / 100 / small.seconds).toFixed(2)}; aim 1.00 or less`,
    );
}

function secondsOf(joints: readonly Joint[], catalogue: readonly CatalogueItem[]): number {
  const start = cpuSeconds();
  candidatesForJob({ joints, basis: SYNTHETIC_BASIS, catalogue });
  return cpuSeconds() - start;
}

/** Seconds for one joint with all connectors; both ways are first shown to accept the same. */
function plainSeconds(joints: readonly Joint[], catalogue: readonly CatalogueItem[]): number {
  const sample = joints.filter((_, at) => at % Math.ceil(joints.length / SAMPLED) === 0);
  const accepts = (joint: Joint): string[] =>
    catalogue
      .filter((connector) =>
        checkJoint({ joint, basis: joint.basis ?? SYNTHETIC_BASIS, connector, origin: "catalogue" }).verdict.startsWith(
          "accept",
        ),
      )
      .map(({ partNumber }) => partNumber)
      .sort();
  const fast = candidatesForJob({ joints: sample, basis: SYNTHETIC_BASIS, catalogue });
  for (const { joints: places, candidates } of fast)
    for (const place of places) {
      const joint = sample[place];
      if (joint === undefined) continue;
      const [own, other] = [accepts(joint), candidates.map(({ partNumber }) => partNumber).sort()];
      if (JSON.stringify(own) !== JSON.stringify(other)) throw new Error(`the two ways disagree on ${joint.mark}`);
    }
  const start = cpuSeconds();
  for (const joint of sample) accepts(joint);
  return (cpuSeconds() - start) / sample.length;
}
