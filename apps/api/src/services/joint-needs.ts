import type { CatalogueItem, ConnectorFamily, JointFinding } from "@landfast/rules";
import type { JointNeed, JointTool, ListedPart, NeedKind } from "@landfast/stock";
import { pointerTo } from "../problems/problem.js";
import { inconsistent } from "./stock-inputs.js";

/** A part that is bought for a kind of need: the tube of compound, the washer set. */
export interface Accessory {
  readonly need: NeedKind;
  /** Only for connectors of these families; absent: for all. */
  readonly families?: readonly ConnectorFamily[];
  /** Decimal text: how much of the part one joint takes. */
  readonly perJoint: string;
  readonly part: Omit<ListedPart, "kind">;
}

/** What one joint takes besides its connector. */
export interface JointNeeds {
  readonly needs: readonly JointNeed[];
  readonly tools: readonly JointTool[];
  /** Openings that stay empty and have to be closed. */
  readonly unusedOpenings: number;
  /** What only the connector's instructions can say. */
  readonly lookUp: readonly string[];
}

/**
 * What a joint takes besides its connector, read from the full finding and the connector: compound where it is
 * required, a cover where the joint has to be covered, a bolt and washer set for each hole of a tongue, plugs for openings
 * of an insulated body that stay empty, tool and die. What is needed and for which nobody chose a part stands there
 * without one.
 */
export function jointNeeds(item: CatalogueItem, finding: JointFinding, accessories: readonly Accessory[]): JointNeeds {
  const needs: JointNeed[] = [];
  const add = (kind: NeedKind, times: number, own: string | null = null): void => {
    const chosen = accessories.find(
      (one) => one.need === kind && (one.families === undefined || one.families.includes(item.family)),
    );
    if (own !== null) needs.push({ kind, partNumber: own, perJoint: String(times) });
    else if (chosen === undefined) needs.push({ kind, partNumber: null, perJoint: String(times) });
    else
      for (let time = 0; time < times; time += 1)
        needs.push({ kind, partNumber: chosen.part.partNumber, perJoint: chosen.perJoint });
  };
  const compound = finding.preparation?.compound.need;
  if (compound === "required") add("compound", 1);
  if (finding.conditions.some(({ duty }) => duty === "cover-joint")) add("cover", 1, item.coverPart ?? null);
  if (item.mounting.kind === "pad") add("washer-set", item.mounting.pattern.holes);
  const unusedOpenings = openingsLeft(item, finding);
  if (unusedOpenings > 0 && accessories.some(({ need }) => need === "plug")) add("plug", unusedOpenings);
  return {
    needs,
    tools: toolsOf(item),
    unusedOpenings,
    lookUp: compound === "per-instructions" ? ["whether it takes compound is for its instructions to say"] : [],
  };
}

function toolsOf({ tooling }: CatalogueItem): JointTool[] {
  if (tooling === undefined) return [];
  return [{ tool: tooling.tool, ...(tooling.die === undefined ? {} : { die: tooling.die }) }];
}

/** Openings of an insulated body in which no conductor lies: left open, they are bare metal. */
function openingsLeft({ insulated, openings }: CatalogueItem, { openings: used }: JointFinding): number {
  if (!insulated) return 0;
  const all = openings.reduce((sum, { count }) => sum + count, 0);
  return Math.max(0, all - new Set(used.map(({ opening, instance }) => `${opening}/${String(instance)}`)).size);
}

/**
 * Refuses accessories of which two could be meant for one joint, or one part described in two ways.
 * @throws Problem INCONSISTENT_REQUEST.
 */
export function refuseAmbiguous(accessories: readonly Accessory[], catalogue: ReadonlyMap<string, unknown>): void {
  const faults = accessories.flatMap(({ need, families, part }, at) => {
    const before = accessories.slice(0, at);
    const other = before.findIndex(
      (one) =>
        one.need === need &&
        (families === undefined ||
          one.families === undefined ||
          families.some((family) => one.families?.includes(family))),
    );
    const same = before.findIndex((one) => one.part.partNumber === part.partNumber);
    const pointer = pointerTo("/accessories", at);
    return [
      ...(other < 0
        ? []
        : [
            {
              pointer,
              detail: `it is meant for joints that entry ${String(other)} is meant for`,
              accepted: "one part for a need",
            },
          ]),
      ...(same >= 0 && JSON.stringify(before[same]?.part) !== JSON.stringify(part)
        ? [
            {
              pointer: pointerTo(pointer, "part"),
              detail: `${part.partNumber} is described in entry ${String(same)} in another way`,
              accepted: "each part described once, or every time alike",
            },
          ]
        : []),
      ...(catalogue.has(part.partNumber)
        ? [
            {
              pointer: pointerTo(pointer, "part", "partNumber"),
              detail: `the catalogue holds ${part.partNumber} as a connector`,
              accepted: "the part number of an accessory",
            },
          ]
        : []),
    ];
  });
  if (faults.length > 0) throw inconsistent(faults);
}
