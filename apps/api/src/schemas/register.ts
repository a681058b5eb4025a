import { CONNECTOR_FAMILIES } from "@landfast/rules";
import { Type } from "@sinclair/typebox";
import { CalculationHead } from "./calculations/calculations.js";
import { Citation } from "./citation.js";
import { CatalogueItem } from "./connector.js";
import { enumOf } from "./enum-of.js";
import { orNull } from "./finding.js";
import { ref } from "./ref.js";
import { strict } from "./strict.js";

const tableStatus = enumOf(["published", "unconfirmed", "invented"] as const);
const tableHead = {
  id: Type.String({ description: "standard, edition and name, as findings cite it" }),
  href: Type.String({ description: "address of the whole table" }),
  name: Type.String(),
  title: Type.String(),
  source: ref(Citation),
  status: tableStatus,
  unit: Type.String(),
  digest: Type.String({ description: "sha256 of the table as entered" }),
};

const TableHead = strict({ ...tableHead, rows: Type.Integer({ minimum: 0 }) }, { $id: "TableHead" });
export const TableList = strict({ tables: Type.Array(ref(TableHead)) }, { $id: "TableList" });

export const PublishedTable = strict(
  {
    ...tableHead,
    rowKey: strict({
      kind: enumOf(["size", "size-range", "interval", "term"] as const),
      unit: Type.Optional(Type.String()),
    }),
    columns: Type.Array(strict({ id: Type.String(), title: Type.String(), unit: Type.String() })),
    rows: Type.Array(
      strict({
        key: Type.Array(Type.String()),
        cells: Type.Array(Type.String(), {
          description: "as printed, in the order of the columns; empty where nothing is printed",
        }),
        unconfirmed: Type.Optional(Type.Array(Type.Integer({ minimum: 0 }))),
      }),
    ),
  },
  { $id: "PublishedTable" },
);

export const RuleList = strict(
  {
    rulesVersion: Type.String(),
    rules: Type.Array(
      strict({
        id: Type.String(),
        title: Type.String(),
        clauses: Type.Array(
          strict({ ruleSet: Type.String(), edition: Type.String(), cites: Type.Array(ref(Citation)) }),
        ),
        needs: Type.Array(Type.String()),
        cannotSee: Type.String(),
      }),
    ),
    calculations: Type.Array(ref(CalculationHead)),
  },
  { $id: "RuleList" },
);

export const EditionList = strict(
  {
    rulesVersion: Type.String(),
    editions: Type.Array(
      strict({
        ruleSet: Type.String(),
        edition: Type.String(),
        clauses: Type.Record(Type.String(), ref(Citation)),
        tables: Type.Array(strict({ name: Type.String(), id: Type.String(), href: Type.String() })),
      }),
    ),
  },
  { $id: "EditionList" },
);

export const CatalogueSummary = strict(
  {
    id: Type.String(),
    name: Type.String(),
    revision: Type.String(),
    loadedAt: Type.String({ format: "date-time" }),
    connectors: Type.Integer({ minimum: 0 }),
    families: Type.Array(strict({ family: enumOf(CONNECTOR_FAMILIES), connectors: Type.Integer({ minimum: 1 }) })),
  },
  { $id: "CatalogueSummary" },
);

export const ConnectorPage = strict(
  { connectors: Type.Array(ref(CatalogueItem)), next: orNull(Type.String({ description: "cursor of the next page" })) },
  { $id: "ConnectorPage" },
);

export const REGISTER_SCHEMAS = [
  TableHead,
  TableList,
  PublishedTable,
  RuleList,
  EditionList,
  CatalogueSummary,
  ConnectorPage,
];
