import type { Fault } from "../problems/problem.js";
import type { CatalogueEntry } from "../schemas/catalogue-entry.js";
import type { Field } from "./column.js";
import type { RowReader } from "./row-report.js";

/** The checks that a connector passes however it comes in. */
export interface CheckEntry {
  /** What is wrong with a connector by itself; pointers begin at the connector. */
  readonly faults: (entry: CatalogueEntry) => readonly Fault[];
  readonly remarks: (
    entry: CatalogueEntry,
  ) => readonly { readonly field: Field; readonly written: string; readonly remark: string }[];
  readonly inACircle: (entries: readonly CatalogueEntry[]) => ReadonlySet<string>;
}

/** Where in a row a place of the connector stands; the more particular comes first. */
const PLACES: readonly (readonly [RegExp, Field])[] = [
  [/^\/openings\/0\/id/, "opening"],
  [/^\/openings\/0\/count/, "openingCount"],
  [/^\/openings\/0\/ranges\/\d+\/to/, "to"],
  [/^\/openings\/0\/ranges\/\d+\/strandings/, "strandings"],
  [/^\/openings\/0\/conductorsMax/, "conductorsMax"],
  [/^\/openings\/0\/stripLength/, "stripLength"],
  [/^\/openings\/1\/id/, "secondOpening"],
  [/^\/openings\/1\/count/, "secondOpeningCount"],
  [/^\/openings\/1\/ranges\/\d+\/to/, "secondTo"],
  [/^\/openings\/1\/ranges\/\d+\/strandings/, "secondStrandings"],
  [/^\/openings\/1\/conductorsMax/, "secondConductorsMax"],
  [/^\/openings\/1\/stripLength/, "secondStripLength"],
  [/^\/openings\/1/, "secondFrom"],
  [/^\/openings/, "from"],
  [/^\/screws\/\d+\/torque/, "torque"],
  [/^\/screws\/\d+\/id/, "screw"],
  [/^\/screws/, "drive"],
  [/^\/mounting\/pattern\/holes/, "holes"],
  [/^\/mounting\/pattern\/bolt/, "bolt"],
  [/^\/mounting\/pattern\/spacing/, "spacing"],
  [/^\/mounting\/frames/, "frames"],
  [/^\/mounting/, "fixing"],
  [/^\/grounding\/electrodes/, "electrodes"],
  [/^\/grounding\/conductorsPerClamp/, "conductorsPerClamp"],
  [/^\/grounding/, "groundingListed"],
  [/^\/pin\/metal/, "pinMetal"],
  [/^\/pin/, "pinSize"],
  [/^\/tooling\/die/, "die"],
  [/^\/tooling\/crimps/, "crimps"],
  [/^\/tooling/, "tool"],
];

/** Fields whose column bears the name of the connector's own field. */
const BY_NAME: readonly Field[] = [
  "partNumber",
  "status",
  "description",
  "family",
  "construction",
  "functions",
  "suppliers",
  "validFrom",
  "validTo",
  "supersededBy",
  "packQuantity",
  "metalMarking",
  "temperature",
  "voltageV",
  "insulated",
  "openingsApart",
  "coverPart",
  "listings",
  "places",
  "lineSide",
  "reusable",
  "bodyMetal",
  "plating",
  "withstands",
  "compound",
];

/** The column in which a place of the connector was said; null where there is none. */
export function fieldOfPointer(pointer: string, row: Pick<RowReader, "isEmpty">): Field | null {
  if (!row.isEmpty("openingsInFull")) {
    if (pointer.startsWith("/openings")) return "openingsInFull";
    if (pointer.startsWith("/screws")) return "screwsInFull";
  }
  const [, name = ""] = pointer.split("/");
  return BY_NAME.find((field) => field === name) ?? PLACES.find(([place]) => place.test(pointer))?.[1] ?? null;
}
