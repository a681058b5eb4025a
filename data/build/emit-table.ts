import type { TableText } from "./read-table.js";
import type { SameTableDescription, TableDescription } from "./table-description.js";

const NOTICE = "// Made from data/published by the table build. Never edit by hand.\n";

/** "ambient-correction-30c" as "ambientCorrection30c". */
export function camelCase(id: string): string {
  return id.replace(/-([a-z0-9])/g, (_, next: string) => next.toUpperCase());
}

/** Column indexes of a row whose cells are less certain than a comparison with a public reproduction would make them. */
function unconfirmedColumns(description: TableDescription, label: string): number[] {
  const names = Object.keys(description.columns);
  if (description.status === "unconfirmed") return names.map((_, index) => index);
  const marks = (description.cells ?? []).filter((mark) => mark.rows === undefined || mark.rows.includes(label));
  return names.flatMap((name, index) =>
    marks.some((mark) => mark.columns === undefined || mark.columns.includes(name)) ? [index] : [],
  );
}

/** TypeScript source of a table with its own CSV. */
export function emitTable(description: TableDescription, table: TableText): string {
  const { standard, edition, locator } = description.source;
  const columns = Object.entries(description.columns).map(([id, column]) =>
    JSON.stringify({ id, title: column.title, unit: column.unit ?? description.unit }),
  );
  const rows = table.rows.map((row) => {
    const unconfirmed = unconfirmedColumns(description, row.label);
    return JSON.stringify({
      key: row.key,
      cells: row.cells,
      ...(unconfirmed.length > 0 ? { unconfirmed } : {}),
    });
  });
  return `${NOTICE}import type { TableData } from "../../core/table.js";

export const ${camelCase(description.id)}: TableData = {
  id: ${JSON.stringify(description.id)},
  title: ${JSON.stringify(description.title)},
  source: ${JSON.stringify({ standard, edition, locator })},
  digest: ${JSON.stringify(table.digest)},
  unit: ${JSON.stringify(description.unit)},
  rowKey: ${JSON.stringify(description.rowKey)},
  columns: [
${columns.map((column) => `    ${column},\n`).join("")}  ],
  rows: [
${rows.map((row) => `    ${row},\n`).join("")}  ],
  status: ${JSON.stringify(description.status)},
};
`;
}

/** TypeScript source of a table that shares the cells of another edition. */
export function emitSameTable(description: SameTableDescription, baseFolder: string): string {
  const name = camelCase(description.id);
  const { standard, edition, locator } = description.source;
  return `${NOTICE}import type { TableData } from "../../core/table.js";
import { ${name} as base } from "../${baseFolder}/${description.id}.js";

export const ${name}: TableData = {
  ...base,
  source: ${JSON.stringify({ standard, edition, locator })},
};
`;
}

/** TypeScript source of the index of one edition. */
export function emitEditionIndex(ids: readonly string[]): string {
  return NOTICE + ids.map((id) => `export { ${camelCase(id)} } from "./${id}.js";\n`).join("");
}

/** TypeScript source of the list of all tables, by folder and then by id. */
export function emitIndex(folders: ReadonlyMap<string, readonly string[]>): string {
  const name = (folder: string): string => folder.replaceAll("-", "_");
  const imports = [...folders.keys()].map((folder) => `import * as ${name(folder)} from "./${folder}/index.js";\n`);
  const entries = [...folders].flatMap(([folder, ids]) => ids.map((id) => `  ${name(folder)}.${camelCase(id)},\n`));
  return `${NOTICE}import type { TableData } from "../core/table.js";
${imports.join("")}
/** Every table of every edition held. */
export const tables: readonly TableData[] = [
${entries.join("")}];
`;
}
