import { Type } from "@sinclair/typebox";
import { Basis } from "./basis.js";
import { Joint } from "./joint.js";
import { CatalogueChoice } from "./own-catalogue.js";
import { projectRules } from "./project-rule.js";
import { ref } from "./ref.js";
import { strict } from "./strict.js";
import { text } from "./text.js";

/** How many joints (marks) one job may have. */
export const JOINTS_MAX = 10_000;

/** A breaker's branch conductor landed on the breaker's own terminal: accepted as it stands. */
export const exampleJoint = {
  mark: "B-01",
  area: "Workshop",
  function: "termination",
  role: "phase",
  quantity: 3,
  conductors: [{ count: 1, metal: "copper", size: "3/0 AWG", stranding: "class-B", insulation: "THHN/THWN-2" }],
  circuit: { voltageV: 480, loadA: 150, sets: 1, protection: { kind: "device", ratingA: 200 } },
  equipment: { tag: "P-1", kind: "panelboard", terminalTemperature: { value: 75, unit: "Cel" } },
  place: { location: "dry" },
  connector: {
    described: {
      description: "set-screw lug of the panelboard, one barrel",
      family: "set-screw-lug-one-hole",
      construction: "set-screw",
      functions: ["termination"],
      metalMarking: "AL9CU",
      voltageV: 600,
      insulated: false,
      openingsApart: true,
      listings: [{ standard: "UL 486A-486B" }],
      places: ["equipment"],
      screws: [{ id: "main", drive: { kind: "socket", acrossFlats: "5/16" }, torque: "unmarked" }],
      openings: [
        {
          id: "barrel",
          count: 1,
          ranges: [{ from: "6 AWG", to: "250 kcmil", strandings: ["class-B", "class-C", "compact", "compressed"] }],
          conductorsMax: 1,
          screw: "main",
        },
      ],
      mounting: { kind: "integral" },
      reusable: true,
    },
  },
} as const;

const exampleBasis = { ruleSet: "nfpa70", edition: "2023" } as const;

/** A job: joints under one basis. */
export const Job = strict(
  {
    name: text(200, "the job's name"),
    basis: ref(Basis),
    catalogue: Type.Optional(ref(CatalogueChoice)),
    joints: Type.Array(ref(Joint), {
      minItems: 1,
      maxItems: JOINTS_MAX,
      description: `the joints: a list of 1 to ${JOINTS_MAX}`,
    }),
    projectRules,
  },
  {
    $id: "Job",
    examples: [{ name: "Workshop feeders", basis: exampleBasis, joints: [exampleJoint] }],
  },
);

/** One joint with the connector it names, or with the terminal of its equipment. */
export const CompatibilityQuestion = strict(
  { basis: ref(Basis), joint: ref(Joint), projectRules },
  { $id: "CompatibilityQuestion", examples: [{ basis: exampleBasis, joint: exampleJoint }] },
);

export const JOB_SCHEMAS = [Job, CompatibilityQuestion];
