import { Type } from "@sinclair/typebox";
import { ALL_COLUMN_UNITS, FIELDS } from "../imports/column.js";
import { CatalogueEntrySchema } from "./catalogue-entry.js";
import { enumOf } from "./enum-of.js";
import { orNull } from "./finding.js";
import { CatalogueVersion } from "./own-catalogue.js";
import { day } from "./quantity.js";
import { ref } from "./ref.js";
import { strict } from "./strict.js";
import { text } from "./text.js";

const header = Type.String({ minLength: 1, maxLength: 200, description: "a header as the file has it" });
const field = enumOf(FIELDS, "which of our columns; GET /v1/import-columns lists them");
const unit = enumOf(ALL_COLUMN_UNITS, "the unit of numbers in the column that bear none themselves");
const cellText = Type.String({ minLength: 1, maxLength: 2000, description: "as a cell of that column would say it" });

/** How a supplier's file is to be read. */
export const ImportMapping = strict(
  {
    name: text(200, "the mapping's name"),
    columns: Type.Array(strict({ header, field, unit: Type.Optional(unit) }), {
      minItems: 1,
      maxItems: FIELDS.length,
      description: "the columns that are used",
    }),
    constants: Type.Optional(
      Type.Partial(Type.Object(Object.fromEntries(FIELDS.map((name) => [name, cellText]))), {
        additionalProperties: false,
        description: "what holds for every row, as a cell of that column would say it",
      }),
    ),
    ignore: Type.Optional(Type.Array(header, { maxItems: 200, description: "headers left out on purpose" })),
    delimiter: Type.Optional(enumOf([",", ";", "\t"], "what stands between the cells of a CSV file")),
    decimalComma: Type.Optional(Type.Boolean({ description: "true: a comma marks decimals" })),
    sheet: Type.Optional(text(100, "the sheet of a workbook that has more than one")),
  },
  {
    $id: "ImportMapping",
    examples: [
      {
        name: "Oakridge Supply, weekly list",
        columns: [
          { header: "Item", field: "partNumber" },
          { header: "Text", field: "description" },
          { header: "Min wire", field: "from", unit: "AWG or kcmil" },
          { header: "Max wire", field: "to", unit: "AWG or kcmil" },
          { header: "Torque", field: "torque", unit: "lbf-in" },
        ],
        constants: { family: "set-screw-lug-one-hole", construction: "set-screw", insulated: "no" },
        ignore: ["Price"],
        delimiter: ";",
      },
    ],
  },
);

export const SavedMapping = strict(
  {
    id: Type.String({ description: "opaque and never reused" }),
    createdAt: Type.String({ format: "date-time" }),
    mapping: ref(ImportMapping),
  },
  { $id: "SavedMapping" },
);
export const MappingPage = strict(
  {
    mappings: Type.Array(ref(SavedMapping)),
    next: orNull(Type.String({ description: "cursor of the next page" })),
  },
  { $id: "MappingPage" },
);

export const ImportHeaders = strict(
  { headers: Type.Array(Type.String({ maxLength: 200 }), { minItems: 1, maxItems: 200 }) },
  { $id: "ImportHeaders", examples: [{ headers: ["Item #", "Max wire (AWG)", "Torque (in-lb)", "Price"] }] },
);
export const MappingSuggestion = strict(
  {
    columns: Type.Array(strict({ header: Type.String(), field, unit: Type.Optional(unit), because: Type.String() })),
    unknown: Type.Array(Type.String(), { description: "headers for which there is no suggestion" }),
  },
  { $id: "MappingSuggestion", description: "what headers may mean; nothing is applied until it stands in a mapping" },
);

export const ImportColumns = strict(
  {
    columns: Type.Array(
      strict({
        field,
        column: Type.String({ description: "our own name of the column" }),
        needed: Type.Boolean({ description: "no connector can do without it" }),
        units: Type.Array(Type.String(), { description: "units that a mapping may state for it" }),
      }),
    ),
  },
  { $id: "ImportColumns" },
);

const lines = Type.Array(Type.Integer({ minimum: 1 }), { description: "the first lines on which it stands" });
const count = Type.Integer({ minimum: 0 });

export const ImportReport = strict(
  {
    digest: Type.String({ description: "sha256 of this report: confirms exactly this reading" }),
    fileDigest: Type.String(),
    file: strict({
      form: enumOf(["csv", "xlsx"] as const),
      encoding: orNull(enumOf(["utf-8", "utf-16le"] as const)),
      byteOrderMark: Type.Boolean(),
      delimiter: orNull(enumOf([",", ";", "\t"] as const)),
      sheet: orNull(Type.String()),
      bytes: count,
    }),
    mapping: orNull(Type.String()),
    columns: strict({
      used: Type.Array(strict({ column: Type.String(), field, unit: orNull(unit) })),
      constants: Type.Array(strict({ field, text: Type.String() })),
      unused: Type.Array(Type.String(), { description: "columns of the file that nothing is taken from" }),
      missing: Type.Array(Type.String(), { description: "columns that no row can do without and that are not there" }),
      notKnown: Type.Array(Type.String(), { description: "other columns of ours that the file has not" }),
    }),
    suggestion: ref(MappingSuggestion),
    rows: strict({ read: count, good: count, bad: count, blank: count }),
    recognised: Type.Array(
      strict({
        field,
        column: Type.String(),
        written: Type.String(),
        readAs: Type.String(),
        because: Type.String(),
        rows: count,
        lines,
      }),
      { description: "what texts were taken for; applied only once the digest is confirmed" },
    ),
    remarks: Type.Array(
      strict({ column: Type.String(), written: Type.String(), remark: Type.String(), rows: count, lines }),
    ),
    problems: Type.Array(
      strict({
        line: Type.Integer({ minimum: 1, description: "the line on which the row begins, from 1" }),
        column: orNull(Type.String({ description: "the column; null: the row as a whole" })),
        field: orNull(field),
        partNumber: orNull(Type.String()),
        written: Type.String({ description: "the cell as written, cut short" }),
        reason: Type.String(),
        accepted: Type.String({ description: "what would be accepted there" }),
      }),
      { description: "every row that is refused, cell by cell" },
    ),
    sample: Type.Array(ref(CatalogueEntrySchema), { description: "the first connectors as they would be stored" }),
  },
  { $id: "ImportReport", description: "how a file was read, row by row" },
);

const head = strict(
  {
    id: Type.String({ description: "opaque and never reused" }),
    createdAt: Type.String({ format: "date-time" }),
    fileDigest: Type.String({ description: "sha256 of the file" }),
    version: Type.Integer({ minimum: 1, description: "the version that came of it" }),
  },
  { $id: "ImportHead" },
);
export const ImportList = strict({ imports: Type.Array(ref(head)) }, { $id: "ImportList" });
export const FinishedImport = strict(
  { import: ref(head), version: ref(CatalogueVersion), report: ref(ImportReport) },
  { $id: "FinishedImport" },
);
export const StoredImport = strict(
  { import: ref(head), mapping: orNull(ref(ImportMapping)), report: ref(ImportReport) },
  { $id: "StoredImport" },
);

/** How a file is to be taken. */
export const importQuery = strict({
  mapping: Type.Optional(Type.String({ minLength: 1, maxLength: 64, description: "the id of a saved mapping" })),
  dryRun: Type.Boolean({ default: false, description: "true: report only, store nothing" }),
  partial: Type.Boolean({ default: false, description: "true: store the good rows although others are bad" }),
  confirm: Type.Optional(
    Type.String({ pattern: "^sha256:[0-9a-f]{64}$", description: "the digest of the report of a dry run" }),
  ),
  validFrom: Type.Optional(day("the first day on which the version holds")),
  validTo: Type.Optional(day("the last day on which the version holds")),
  note: Type.Optional(text(1000, "a note on the version")),
});

export const CATALOGUE_IMPORT_SCHEMAS = [
  ImportMapping,
  SavedMapping,
  MappingPage,
  ImportHeaders,
  MappingSuggestion,
  ImportColumns,
  ImportReport,
  head,
  ImportList,
  FinishedImport,
  StoredImport,
];
