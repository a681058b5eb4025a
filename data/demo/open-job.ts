import type { Job, Joint } from "@landfast/rules";

/**
 * The same job before anything was offered: a joint loses the connector named for it and what was settled only for that
 * connector (its state, its tool and die). A terminal that belongs to the equipment is a fact of the equipment and stays.
 */
export function openJob(job: Job): Job {
  return { ...job, joints: job.joints.map(withoutOffer) };
}

function withoutOffer(joint: Joint): Joint {
  if (joint.connector === undefined) return joint;
  const { connector: _connector, partState: _partState, tooling: _tooling, ...open } = joint;
  return open;
}
