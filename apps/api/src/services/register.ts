import {
  type Citation,
  EDITIONS,
  PUBLISHED_TABLES,
  RULES,
  RULES_VERSION,
  type Table,
  type TableData,
} from "@landfast/rules";
import { Problem } from "../problems/problem.js";
import { listCalculations } from "./calculations.js";

/** A published table without its cells. */
export interface TableHead {
  readonly id: string;
  readonly href: string;
  readonly name: string;
  readonly title: string;
  readonly source: Citation;
  readonly status: TableData["status"];
  readonly unit: string;
  readonly digest: string;
}

const tables = new Map(PUBLISHED_TABLES.map((table) => [addressOf(table), table]));

/** Every published table, without cells. */
export function listTables(): { readonly tables: readonly (TableHead & { readonly rows: number })[] } {
  return { tables: PUBLISHED_TABLES.map((table) => ({ ...headOf(table), rows: table.rows.length })) };
}

/** One table with all its cells as printed. @throws Problem TABLE_NOT_FOUND. */
export function readTable(
  publication: string,
  name: string,
): TableHead & Pick<TableData, "rowKey" | "columns" | "rows"> {
  const table = tables.get(`${publication}/${name}`);
  if (table === undefined) throw new Problem("TABLE_NOT_FOUND", `There is no table "${publication}/${name}".`);
  return { ...headOf(table), rowKey: table.rowKey, columns: table.columns, rows: table.rows };
}

/** The rules of the joint and the calculations, with the clauses of each edition. */
export function listRules() {
  return {
    rulesVersion: RULES_VERSION,
    rules: RULES.map(({ id, title, clauses, needs, cannotSee }) => ({
      id,
      title,
      clauses: EDITIONS.map((edition) => ({
        ruleSet: edition.ruleSet,
        edition: edition.edition,
        cites: clauses.map((clause) => edition.clauses[clause]),
      })),
      needs,
      cannotSee,
    })),
    calculations: listCalculations().calculations,
  };
}

/** The editions that are answered for: where their clauses stand and which tables they read. */
export function listEditions() {
  return {
    rulesVersion: RULES_VERSION,
    editions: EDITIONS.map(({ ruleSet, edition, clauses, tables: read }) => ({
      ruleSet,
      edition,
      clauses,
      tables: (Object.values(read) as readonly Table[]).map(({ data }) => ({
        name: data.id,
        id: idOf(data),
        href: hrefOf(data),
      })),
    })),
  };
}

function headOf(table: TableData): TableHead {
  const { title, source, status, unit, digest } = table;
  return { id: idOf(table), href: hrefOf(table), name: table.id, title, source, status, unit, digest };
}

/** As findings cite it: "NFPA 70-2023/ampacity-raceway". */
function idOf({ source, id }: TableData): string {
  return `${source.standard}-${source.edition}/${id}`;
}

function hrefOf(table: TableData): string {
  return `/v1/tables/${addressOf(table)}`;
}

/** The same, fit for an address: "nfpa-70-2023/ampacity-raceway". */
function addressOf({ source, id }: TableData): string {
  const publication = `${source.standard}-${source.edition}`.toLowerCase().replace(/[^a-z0-9]+/g, "-");
  return `${publication.replace(/^-|-$/g, "")}/${id}`;
}
