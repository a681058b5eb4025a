import { CONNECTOR_FAMILIES } from "@landfast/rules";
import { PRICE_UNITS } from "@landfast/stock";
import { Type } from "@sinclair/typebox";
import { enumOf } from "./enum-of.js";
import { orNull } from "./finding.js";
import { decimal, Size } from "./quantity.js";
import { ref } from "./ref.js";
import { strict } from "./strict.js";
import { label, text } from "./text.js";

/** How many lines one labor table may have. */
const LABOUR_LINES_MAX = 20_000;

const LabourLine = strict(
  {
    partNumber: Type.Optional(label(64, "the part number")),
    family: Type.Optional(enumOf(CONNECTOR_FAMILIES)),
    from: Type.Optional(Size),
    to: Type.Optional(Size),
    condition: Type.Optional(text(60, "the condition of the work, by your own name for it")),
    hours: decimal("electrician-hours"),
    unit: enumOf(PRICE_UNITS, "how many the hours are for"),
  },
  {
    $id: "LabourLine",
    description: "hours for one part number, or for a family within a band of sizes, both ends included",
  },
);

const head = {
  name: text(200, "the table's name"),
  source: Type.Optional(text(300, "where the hours come from")),
  note: Type.Optional(text(1000, "a note")),
};
const difficulties = Type.Record(
  Type.String({ pattern: "^[\\p{L}\\p{N}][\\p{L}\\p{N} _-]{0,59}$" }),
  decimal("the factor on the hours"),
  { description: 'your own factors by the name of a difficulty: {"difficult": "1.25"}', maxProperties: 50 },
);

/** A user's own labor units. None is built in. */
export const LabourTable = strict(
  {
    ...head,
    difficulties: Type.Optional(difficulties),
    lines: Type.Array(ref(LabourLine), {
      minItems: 1,
      maxItems: LABOUR_LINES_MAX,
      description: `the lines: a list of 1 to ${LABOUR_LINES_MAX}`,
    }),
  },
  {
    $id: "LabourTable",
    examples: [
      {
        name: "Larkfen Works, own times",
        source: "own records of the workshop, 2025",
        difficulties: { difficult: "1.25" },
        lines: [
          { partNumber: "LKW-201", hours: "0.35", unit: "each" },
          { family: "split-bolt", from: "14 AWG", to: "8 AWG", hours: "18.5", unit: "per-100" },
        ],
      },
    ],
  },
);

export const LabourTableHead = strict(
  {
    id: Type.String({ description: "opaque and never reused" }),
    ...head,
    difficulties,
    lines: Type.Integer({ minimum: 1 }),
    createdAt: Type.String({ format: "date-time" }),
  },
  { $id: "LabourTableHead" },
);

export const StoredLabourTable = strict(
  { labourTable: ref(LabourTableHead), lines: Type.Array(ref(LabourLine)) },
  { $id: "StoredLabourTable" },
);
export const LabourTablePage = strict(
  {
    labourTables: Type.Array(ref(LabourTableHead)),
    next: orNull(Type.String({ description: "cursor of the next page" })),
  },
  { $id: "LabourTablePage" },
);

export const LABOUR_TABLE_SCHEMAS = [LabourLine, LabourTable, LabourTableHead, StoredLabourTable, LabourTablePage];
