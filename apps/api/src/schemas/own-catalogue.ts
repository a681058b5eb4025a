import { CONDUCTOR_METALS, CONNECTOR_FAMILIES } from "@landfast/rules";
import { Type } from "@sinclair/typebox";
import { CatalogueEntrySchema, supplierName } from "./catalogue-entry.js";
import { enumOf } from "./enum-of.js";
import { orNull } from "./finding.js";
import { paging } from "./paging.js";
import { day, Size } from "./quantity.js";
import { ref } from "./ref.js";
import { strict } from "./strict.js";
import { text } from "./text.js";

/** How many connectors one posted version may have. */
const ITEMS_MAX = 10_000;

const next = orNull(Type.String({ description: "cursor of the next page" }));
const createdAt = Type.String({ format: "date-time" });
const id = Type.String({ description: "opaque and never reused" });

const catalogue = {
  name: text(200, "the catalogue's name"),
  note: Type.Optional(text(1000, "a note")),
};
const suppliers = Type.Array(supplierName, {
  maxItems: 50,
  uniqueItems: true,
  description: "the names of those who supply its parts",
});

/** A catalogue of the user's own, before it has any version. */
export const OwnCatalogue = strict(
  { ...catalogue, suppliers: Type.Optional(suppliers) },
  { $id: "OwnCatalogue", examples: [{ name: "Larkfen Works, workshop stock", suppliers: ["Oakridge Supply"] }] },
);
export const OwnCatalogueHead = strict({ id, ...catalogue, suppliers, createdAt }, { $id: "OwnCatalogueHead" });
export const OwnCataloguePage = strict(
  { catalogues: Type.Array(ref(OwnCatalogueHead)), next },
  { $id: "OwnCataloguePage" },
);

const terms = {
  validFrom: Type.Optional(day("the first day on which the version holds")),
  validTo: Type.Optional(day("the last day on which the version holds")),
  note: Type.Optional(text(1000, "a note")),
};

/** Everything a version holds. */
export const PostedVersion = strict(
  {
    ...terms,
    items: Type.Array(ref(CatalogueEntrySchema), {
      minItems: 1,
      maxItems: ITEMS_MAX,
      description: `the connectors: a list of 1 to ${ITEMS_MAX}`,
    }),
  },
  {
    $id: "PostedVersion",
    examples: [
      {
        validFrom: "2026-03-01",
        items: [
          {
            partNumber: "LKW-201",
            status: "supplied",
            description: "set-screw lug, one hole, 6 AWG to 250 kcmil",
            family: "set-screw-lug-one-hole",
            construction: "set-screw",
            functions: ["termination"],
            metalMarking: "AL9CU",
            voltageV: 600,
            insulated: false,
            openingsApart: true,
            listings: [{ standard: "UL 486A-486B" }],
            places: ["equipment"],
            screws: [
              {
                id: "main",
                drive: { kind: "socket", acrossFlats: "5/16" },
                torque: { value: 275, unit: "lbf-in" },
              },
            ],
            openings: [
              {
                id: "barrel",
                count: 1,
                ranges: [
                  {
                    from: "6 AWG",
                    to: "250 kcmil",
                    strandings: ["class-B", "class-C", "compressed", "compact"],
                  },
                ],
                conductorsMax: 1,
                screw: "main",
              },
            ],
            mounting: { kind: "pad", pattern: { holes: 1, bolt: "3/8" } },
            reusable: true,
            packQuantity: 6,
            suppliers: [{ name: "Oakridge Supply", partNumber: "OS-7731" }],
          },
        ],
      },
    ],
  },
);

export const CatalogueVersion = strict(
  {
    version: Type.Integer({ minimum: 1 }),
    ...terms,
    publishedAt: Type.String({ format: "date-time" }),
    connectors: Type.Integer({ minimum: 0 }),
    families: Type.Array(strict({ family: enumOf(CONNECTOR_FAMILIES), connectors: Type.Integer({ minimum: 1 }) })),
  },
  { $id: "CatalogueVersion", description: "a version of a catalogue; it never changes" },
);
export const CatalogueWithVersions = strict(
  { catalogue: ref(OwnCatalogueHead), versions: Type.Array(ref(CatalogueVersion)) },
  { $id: "CatalogueWithVersions" },
);
export const EntryPage = strict({ connectors: Type.Array(ref(CatalogueEntrySchema)), next }, { $id: "EntryPage" });

/** Which version a job is worked out with. */
export const CatalogueChoice = strict(
  {
    id: Type.String({ minLength: 1, maxLength: 64, description: "the catalogue's id" }),
    version: Type.Integer({
      minimum: 1,
      maximum: 1_000_000_000,
      description: "a version of it: a whole number from 1",
    }),
    on: Type.Optional(day("the day on which parts have to be in force; absent: the day of posting")),
  },
  { $id: "CatalogueChoice", description: 'a version of a catalogue of your own: {"id": "…", "version": 3}' },
);

const words = (maxLength: number, description: string) => Type.String({ minLength: 1, maxLength, description });

/** Where a page begins, and which connectors are on it. */
export const connectorQuery = strict({
  ...paging,
  family: Type.Optional(enumOf(CONNECTOR_FAMILIES)),
  metal: Type.Optional(enumOf(CONDUCTOR_METALS, "a conductor metal that the metal marking stands for")),
  size: Type.Optional(Size),
  supplier: Type.Optional(words(120, "the supplier's name")),
  search: Type.Optional(words(64, "part of a part number or of a description")),
  on: Type.Optional(day("a day on which the part is in force")),
});

export const OWN_CATALOGUE_SCHEMAS = [
  CatalogueEntrySchema,
  OwnCatalogue,
  OwnCatalogueHead,
  OwnCataloguePage,
  PostedVersion,
  CatalogueVersion,
  CatalogueWithVersions,
  EntryPage,
  CatalogueChoice,
];
