import {
  CONDUCTOR_METALS,
  CONDUCTOR_ROLES,
  CONNECTOR_FAMILIES,
  CONSTRUCTIONS,
  EQUIPMENT_KINDS,
  JOINT_FUNCTIONS,
  LOCATIONS,
  type ProjectRuleKind,
} from "@landfast/rules";
import { type TProperties, type TSchema, Type } from "@sinclair/typebox";
import { enumOf } from "./enum-of.js";
import { Size, Temperature } from "./quantity.js";
import { ref } from "./ref.js";
import { strict, taggedUnion } from "./strict.js";
import { label, text } from "./text.js";

/** How many rules of its own a project may have. */
const RULES_MAX = 100;

const demand = (kind: ProjectRuleKind, fields: TProperties) => strict({ kind: enumOf([kind]), ...fields });
const some = (item: TSchema, what: string, maxItems: number) =>
  Type.Array(item, { minItems: 1, maxItems, uniqueItems: true, description: `${what}: a list of 1 to ${maxItems}` });
const listed = (words: readonly string[], what: string) =>
  some(enumOf(words), `${what}, of ${words.join(", ")}`, words.length);
const families = listed(CONNECTOR_FAMILIES, "families");
const constructions = listed(CONSTRUCTIONS, "constructions");

const ProjectDemand = taggedUnion(
  "kind",
  [
    demand("forbid-family", { families }),
    demand("forbid-construction", { constructions }),
    demand("forbid-part", { partNumbers: some(label(64, "a part number"), "part numbers", 1000) }),
    demand("forbid-metal", { metals: listed(CONDUCTOR_METALS, "metals of conductors") }),
    demand("require-family", { families }),
    demand("require-construction", { constructions }),
    demand("require-holes", {
      holes: Type.Integer({ minimum: 1, maximum: 20, description: "holes of the tongue: a whole number from 1 to 20" }),
    }),
    Type.Object(
      {
        kind: enumOf(["require-body"] as const),
        bodyMetals: Type.Optional(some(text(60, "the body's metal"), "metals", 20)),
        platings: Type.Optional(some(text(60, "the plating"), "platings", 20)),
      },
      {
        additionalProperties: false,
        minProperties: 2,
        description: "bodyMetals, platings or both",
      },
    ),
    demand("cap-terminal-temperature", { temperature: ref(Temperature) }),
    demand("cap-conductors-per-opening", {
      conductors: Type.Integer({
        minimum: 1,
        maximum: 100,
        description: "conductors in one opening: a whole number from 1 to 100",
      }),
    }),
    demand("cap-size", { families, size: Size }),
  ],
  { $id: "ProjectDemand", description: "what a rule of the project forbids, requires or limits" },
);

const ProjectScope = strict(
  {
    functions: Type.Optional(listed(JOINT_FUNCTIONS, "functions")),
    roles: Type.Optional(listed(CONDUCTOR_ROLES, "roles")),
    areas: Type.Optional(some(text(80, "the area"), "areas as the joints name them", 1000)),
    equipmentKinds: Type.Optional(listed(EQUIPMENT_KINDS, "kinds of equipment")),
    locations: Type.Optional(listed(LOCATIONS, "places")),
    fromSize: Type.Optional(Size),
  },
  {
    $id: "ProjectScope",
    description: "which joints a rule is for: those that meet every line given; without a line all of them",
  },
);

/** A rule that the project makes for itself, beyond the code. */
export const ProjectRule = strict(
  {
    id: label(40, "the rule's id"),
    source: text(200, "where the project says so"),
    scope: Type.Optional(ref(ProjectScope)),
    demand: ref(ProjectDemand),
  },
  {
    $id: "ProjectRule",
    description: "a rule of the project: it may refuse what the code allows, and never the reverse",
    examples: [
      {
        id: "R-1",
        source: "electrical specification, 3.2",
        scope: { functions: ["splice", "termination"], roles: ["phase"], fromSize: "1/0 AWG" },
        demand: { kind: "require-construction", constructions: ["compression"] },
      },
    ],
  },
);

export const projectRules = Type.Optional(
  Type.Array(ref(ProjectRule), {
    maxItems: RULES_MAX,
    description: `what the project asks beyond the code: a list of at most ${RULES_MAX} rules`,
  }),
);

export const PROJECT_RULE_SCHEMAS = [ProjectDemand, ProjectScope, ProjectRule];
