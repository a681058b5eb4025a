import type { ColumnUnit, Field } from "./column.js";

/** Which of a file's columns means what. */
export interface MappedColumn {
  /** As the first row of the file has it. */
  readonly header: string;
  readonly field: Field;
  /** The unit of numbers in the column that bear none themselves. */
  readonly unit?: ColumnUnit;
}

/** How a supplier's file is to be read. Nothing about a file is taken for granted that is not stated here. */
export interface ImportMapping {
  readonly name: string;
  readonly columns: readonly MappedColumn[];
  /** What holds for every row, as a cell of that column would say it: { "insulated": "no" }. */
  readonly constants?: Readonly<Partial<Record<Field, string>>>;
  /** Headers of columns that are left out on purpose. */
  readonly ignore?: readonly string[];
  readonly delimiter?: "," | ";" | "\t";
  /** True: "12,5" is twelve and a half. Absent: such a number is asked about. */
  readonly decimalComma?: boolean;
  /** The sheet of a workbook that has more than one. */
  readonly sheet?: string;
}
