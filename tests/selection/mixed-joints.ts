import { demoCatalogue, larkfenJob } from "@landfast/data";
import type { Basis, CatalogueItem, Joint } from "@landfast/rules";
import fc from "fast-check";

const job = larkfenJob();
const { items } = demoCatalogue();
/** Of every family some: joints are judged with the whole catalogue by other tests. */
const EACH = 4;
const perFamily = new Map<string, CatalogueItem[]>();
for (const item of items) perFamily.set(item.family, [...(perFamily.get(item.family) ?? []), item]);
const some = [...perFamily.values()].flatMap((all) => all.filter((_, at) => at % Math.ceil(all.length / EACH) === 0));

const anyJoint = fc.constantFrom(...job.joints);
const anyItem = fc.constantFrom(...some);

/** Mostly nothing. */
function seldom<T>(arbitrary: fc.Arbitrary<T>): fc.Arbitrary<T | undefined> {
  return fc.oneof({ weight: 4, arbitrary: fc.constant(undefined) }, { weight: 1, arbitrary });
}

/** The fields that have a value, less one. */
function given(fields: Readonly<Record<string, unknown>>, without: string | undefined): Record<string, unknown> {
  return Object.fromEntries(Object.entries(fields).filter(([name, value]) => value !== undefined && name !== without));
}

/** A joint put together from several of the site's, with facts left out here and there: much that no site would have. */
export const mixedJoint: fc.Arbitrary<Joint> = fc
  .record({
    of: anyJoint,
    conductors: seldom(anyJoint),
    circuit: seldom(anyJoint),
    equipment: seldom(anyJoint),
    place: seldom(anyJoint),
    role: seldom(anyJoint),
    without: seldom(fc.constantFrom("circuit", "equipment", "place", "grounding", "upsizing")),
    voltageV: seldom(fc.constantFrom(120, 300, 480, 600, 601)),
    loadA: seldom(fc.integer({ min: 1, max: 900 })),
  })
  .map(({ of, conductors, circuit, equipment, place, role, without, voltageV, loadA }) => {
    const { connector: _connector, partState: _partState, tooling: _tooling, ...facts } = of;
    const mixed: Record<string, unknown> = {
      ...facts,
      ...(conductors === undefined ? {} : { conductors: conductors.conductors, function: conductors.function }),
      ...(circuit?.circuit === undefined ? {} : { circuit: circuit.circuit }),
      ...(equipment?.equipment === undefined ? {} : { equipment: equipment.equipment }),
      ...(place?.place === undefined ? {} : { place: place.place }),
      ...(role === undefined ? {} : { role: role.role, grounding: role.grounding }),
    };
    if (mixed["circuit"] !== undefined && voltageV !== undefined)
      mixed["circuit"] = { ...(mixed["circuit"] as object), voltageV };
    if (mixed["circuit"] !== undefined && loadA !== undefined)
      mixed["circuit"] = { ...(mixed["circuit"] as object), loadA };
    return given(mixed, without) as unknown as Joint;
  });

const TAKEN_OUT = [
  "metalMarking",
  "temperature",
  "voltageV",
  "places",
  "lineSide",
  "grounding",
  "tooling",
  "compound",
  "price",
  "labourHours",
  "coverPart",
  "pin",
] as const;

/** Connectors of the invented catalogue with marks of others or none, under numbers of their own. */
export const mixedCatalogue: fc.Arbitrary<CatalogueItem[]> = fc
  .array(
    fc.record({
      of: anyItem,
      openings: seldom(anyItem),
      marks: seldom(anyItem),
      without: seldom(fc.constantFrom(...TAKEN_OUT)),
      unmarked: seldom(fc.constantFrom("metalMarking", "voltageV", "places")),
    }),
    { minLength: 0, maxLength: 60, size: "max" },
  )
  .map((parts) =>
    parts.map(({ of, openings, marks, without, unmarked }, at) => {
      const item: Record<string, unknown> = {
        ...of,
        partNumber: `MIX-${String((at * 7) % 41).padStart(2, "0")}-${String(at)}`,
        ...(openings === undefined ? {} : { openings: openings.openings, screws: openings.screws }),
        ...(marks === undefined
          ? {}
          : {
              metalMarking: marks.metalMarking,
              temperature: marks.temperature,
              places: marks.places,
              listings: marks.listings,
            }),
        ...(unmarked === undefined ? {} : { [unmarked]: "unmarked" }),
      };
      return given(item, without) as unknown as CatalogueItem;
    }),
  );

export const anyBasis: fc.Arbitrary<Basis> = fc.constantFrom(
  { ruleSet: "nfpa70", edition: "2017" },
  { ruleSet: "nfpa70", edition: "2020" },
  { ruleSet: "nfpa70", edition: "2023" },
  { ruleSet: "nfpa70", edition: "2020", installedOn: "2023-06-01" },
  { ruleSet: "nfpa70", edition: "2020", installedOn: "2021-06-01" },
);
