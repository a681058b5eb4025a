import { CONDUCTOR_ROLES, JOINT_FUNCTIONS, VERDICTS } from "@landfast/rules";
import { Type } from "@sinclair/typebox";
import { Basis } from "./basis.js";
import { Tooling } from "./connector.js";
import { enumOf } from "./enum-of.js";
import { ConnectorOrigin, JointFinding, MissingFact, orNull, Verdict } from "./finding.js";
import { Job } from "./job.js";
import { ref } from "./ref.js";
import { strict } from "./strict.js";

const words = Type.Array(Type.String());
const count = Type.Integer({ minimum: 0 });

const Candidate = strict(
  {
    partNumber: Type.String(),
    description: Type.String(),
    verdict: Verdict,
    conditions: count,
    price: orNull(strict({ amount: Type.String(), currency: Type.String() })),
    labourHours: orNull(Type.Number()),
  },
  { $id: "Candidate" },
);

const Selection = strict(
  {
    chosen: orNull(ref(Candidate)),
    runnersUp: Type.Array(ref(Candidate)),
    excluded: Type.Array(strict({ rule: Type.String(), connectors: count })),
    nearestMisses: Type.Array(
      strict({
        partNumber: Type.String(),
        description: Type.String(),
        rule: Type.String(),
        sentence: Type.String(),
        fix: Type.String(),
      }),
    ),
    because: Type.String(),
  },
  { $id: "Selection", description: "what the catalogue offers for a joint" },
);

export const ScheduleRow = strict(
  {
    mark: Type.String(),
    area: orNull(Type.String()),
    equipmentTag: orNull(Type.String()),
    description: orNull(Type.String()),
    function: enumOf(JOINT_FUNCTIONS),
    role: enumOf(CONDUCTOR_ROLES),
    quantity: count,
    basis: ref(Basis),
    conductors: words,
    connector: orNull(
      strict({
        partNumber: orNull(Type.String()),
        description: Type.String(),
        origin: ConnectorOrigin,
        chosen: Type.Boolean(),
        quantity: count,
      }),
    ),
    openingsUsed: words,
    verdict: Verdict,
    deciding: strict({ rule: Type.String(), sentence: Type.String(), clause: Type.String() }),
    torque: Type.Array(
      strict({
        at: Type.String(),
        method: Type.String(),
        lbfIn: orNull(Type.Number()),
        lbfFt: orNull(Type.Number()),
        newtonMetre: orNull(Type.Number()),
        printed: orNull(Type.String()),
        level: orNull(Type.String()),
        drive: Type.String(),
        source: Type.String(),
      }),
    ),
    stripLengths: Type.Array(strict({ opening: Type.String(), length: orNull(Type.String()) })),
    preparation: orNull(strict({ brush: Type.String(), compound: Type.String() })),
    tooling: orNull(ref(Tooling)),
    conditions: words,
    dutiesOnSite: words,
    missing: Type.Array(ref(MissingFact)),
    caveats: Type.Array(Type.String()),
    fix: Type.String(),
    selection: orNull(ref(Selection)),
  },
  { $id: "ScheduleRow" },
);

const Tally = strict({ marks: count, joints: count }, { $id: "Tally" });

const Counts = strict(
  {
    marks: count,
    joints: count,
    byVerdict: strict(Object.fromEntries(VERDICTS.map((verdict) => [verdict, ref(Tally)]))),
  },
  { $id: "Counts" },
);

export const ConnectorSchedule = strict(
  {
    job: Type.String(),
    basis: ref(Basis),
    rulesVersion: Type.String(),
    rows: Type.Array(ref(ScheduleRow)),
    totals: Type.Array(
      strict({ partNumber: Type.String(), description: Type.String(), quantity: count, marks: words }),
    ),
    rejections: Type.Array(
      strict({
        mark: Type.String(),
        rule: Type.String(),
        sentence: Type.String(),
        clause: Type.String(),
        fix: Type.String(),
        instead: Type.String(),
      }),
    ),
    openQuestions: Type.Array(
      strict({ mark: Type.String(), facts: Type.Array(ref(MissingFact)), clause: Type.String() }),
    ),
    counts: ref(Counts),
    caution: Type.String(),
  },
  { $id: "ConnectorSchedule", description: "the connector schedule of a job" },
);

const JobHead = strict(
  {
    id: Type.String({ description: "opaque and never reused" }),
    name: Type.String(),
    revision: Type.Integer({ minimum: 1 }),
    createdAt: Type.String({ format: "date-time" }),
    basis: ref(Basis),
    rulesVersion: Type.String(),
    catalogue: strict({
      id: Type.String(),
      name: Type.String(),
      revision: Type.String({ description: "of a catalogue of your own: its version" }),
      on: Type.Optional(Type.String({ description: "the day on which its parts had to be in force" })),
    }),
    counts: ref(Counts),
    resultHash: Type.String({
      description: "sha256 of the schedule exactly as GET /v1/jobs/{id}/schedule sends it",
    }),
  },
  { $id: "JobHead" },
);

export const ScheduledJob = strict({ job: ref(JobHead), schedule: ref(ConnectorSchedule) }, { $id: "ScheduledJob" });
export const StoredJob = strict({ job: ref(JobHead), posted: ref(Job) }, { $id: "StoredJob" });
export const JobPage = strict(
  { jobs: Type.Array(ref(JobHead)), next: orNull(Type.String({ description: "cursor of the next page" })) },
  { $id: "JobPage" },
);
export const StoredJoint = strict(
  { mark: Type.String(), row: ref(ScheduleRow), finding: orNull(ref(JointFinding)) },
  { $id: "StoredJoint", description: "a joint's line of the schedule with the full finding behind it" },
);

export const SCHEDULE_SCHEMAS = [
  Candidate,
  Selection,
  ScheduleRow,
  Tally,
  Counts,
  ConnectorSchedule,
  JobHead,
  ScheduledJob,
  StoredJob,
  JobPage,
  StoredJoint,
];
