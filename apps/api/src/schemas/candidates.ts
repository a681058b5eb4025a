import { REMEDY_KINDS } from "@landfast/rules";
import { Type } from "@sinclair/typebox";
import { Basis } from "./basis.js";
import { enumOf } from "./enum-of.js";
import { ConnectorOrigin, MissingFact, orNull, Verdict } from "./finding.js";
import { exampleJoint } from "./job.js";
import { Equipment, Joint } from "./joint.js";
import { CatalogueChoice } from "./own-catalogue.js";
import { projectRules } from "./project-rule.js";
import { ref } from "./ref.js";
import { strict } from "./strict.js";
import { label } from "./text.js";

const PARTS_MAX = 10_000;
const count = Type.Integer({ minimum: 0 });
const words = Type.Array(Type.String());
const part = label(64, "the part number");
const parts = (what: string) =>
  Type.Optional(Type.Array(part, { maxItems: PARTS_MAX, description: `${what}: a list of at most ${PARTS_MAX}` }));
const Price = strict({ amount: Type.String(), currency: Type.String() });

export const RankingContext = strict(
  {
    inJob: parts("part numbers that the job has already"),
    approved: parts("part numbers that were approved before"),
    leadTimes: Type.Optional(
      Type.Array(
        strict({
          partNumber: part,
          days: Type.Integer({ minimum: 0, maximum: 3650, description: "days: a whole number from 0 to 3650" }),
        }),
        { maxItems: PARTS_MAX },
      ),
    ),
  },
  {
    $id: "RankingContext",
    description: "what is known of the job around the joint; it orders candidates and accepts none",
  },
);

const asked = {
  basis: ref(Basis),
  catalogue: Type.Optional(ref(CatalogueChoice)),
  joint: ref(Joint),
  context: Type.Optional(ref(RankingContext)),
  projectRules,
};
const { connector: _connector, ...openJoint } = exampleJoint;
const examples = [{ basis: { ruleSet: "nfpa70", edition: "2023" }, joint: openJoint }];

/** One joint, to be asked what a catalogue offers for it. */
export const CandidatesQuestion = strict(asked, { $id: "CandidatesQuestion", examples });

/** One joint that does not land. */
export const RemediesQuestion = strict(
  {
    ...asked,
    equipmentInstead: Type.Optional(
      Type.Array(ref(Equipment), {
        maxItems: 10,
        description: "other equipment that could be ordered: a list of at most 10",
      }),
    ),
  },
  { $id: "RemediesQuestion", examples },
);

const RankedCandidate = strict(
  {
    partNumber: Type.String(),
    description: Type.String(),
    verdict: Verdict,
    conditions: count,
    price: orNull(Price),
    labourHours: orNull(Type.Number()),
    inJob: Type.Boolean(),
    leadTimeDays: orNull(Type.Integer()),
    approvedBefore: Type.Boolean(),
  },
  { $id: "RankedCandidate" },
);

const RemedyJoint = strict(
  {
    where: enumOf(["at-equipment", "at-conductor"] as const),
    joint: ref(Joint),
    connector: strict({
      partNumber: orNull(Type.String()),
      description: Type.String(),
      origin: ConnectorOrigin,
    }),
    verdict: Verdict,
    conditions: words,
    count: Type.Integer({ minimum: 1, description: "how many of it one joint of the mark takes" }),
  },
  {
    $id: "RemedyJoint",
    description: "one joint of a remedy; posted to /v1/checks/compatibility it is accepted by itself",
  },
);

const Remedy = strict(
  {
    kind: enumOf(REMEDY_KINDS),
    sentence: Type.String(),
    joints: Type.Array(ref(RemedyJoint)),
    parts: Type.Array(
      strict({
        partNumber: Type.String(),
        description: Type.String(),
        quantity: count,
        price: orNull(Price),
      }),
    ),
    cost: Type.Union([Price, Type.Null()], { description: "of all parts for one joint of the mark; null: not known" }),
    labourHours: orNull(Type.Number()),
    provided: Type.Array(Type.String(), { description: "what it takes as given, and what its cost leaves out" }),
  },
  { $id: "Remedy" },
);

const OpenRemedy = strict(
  {
    kind: enumOf(REMEDY_KINDS),
    sentence: Type.String(),
    partNumber: Type.String(),
    missing: Type.Array(ref(MissingFact)),
  },
  { $id: "OpenRemedy", description: "what may serve once the missing facts are known" },
);

const found = {
  because: Type.String(),
  remedies: Type.Array(ref(Remedy)),
  open: Type.Array(ref(OpenRemedy)),
};

export const JointCandidates = strict(
  {
    basis: ref(Basis),
    rulesVersion: Type.String(),
    candidates: Type.Array(ref(RankedCandidate), { description: "every connector that all rules accept, best first" }),
    order: Type.Array(Type.String(), {
      description: "the lines of that order; each decides where the ones above are equal",
    }),
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
    missing: Type.Array(ref(MissingFact)),
    ownTerminal: orNull(
      strict({ verdict: Verdict, rule: Type.String(), sentence: Type.String(), clause: Type.String() }),
    ),
    caution: Type.String(),
    remedies: Type.Union([strict(found), Type.Null()], {
      description: "ways to land the conductor where nothing fits",
    }),
  },
  { $id: "JointCandidates" },
);

export const Remedies = strict(
  { basis: ref(Basis), rulesVersion: Type.String(), ...found, caution: Type.String() },
  { $id: "Remedies" },
);

export const CANDIDATE_SCHEMAS = [
  RankingContext,
  CandidatesQuestion,
  RemediesQuestion,
  RankedCandidate,
  RemedyJoint,
  Remedy,
  OpenRemedy,
  JointCandidates,
  Remedies,
];
