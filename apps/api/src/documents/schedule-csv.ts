import type { ConnectorSchedule, ScheduleRow } from "@landfast/rules";
import { stringify } from "csv-stringify/sync";
import { neutralCell } from "./neutral-cell.js";
import { basisText, connectorText, toolText } from "./schedule-words.js";

type Cell = string | number;
type ColumnValue = (row: ScheduleRow, torque: ScheduleRow["torque"][number] | undefined) => Cell | null;

/** One line for each thing that is tightened, so that a torque is a number in a cell of its own. */
const COLUMNS: Readonly<Record<string, ColumnValue>> = {
  mark: ({ mark }) => mark,
  area: ({ area }) => area,
  equipment: ({ equipmentTag }) => equipmentTag,
  description: ({ description }) => description,
  function: (row) => row.function,
  role: ({ role }) => role,
  joints: ({ quantity }) => quantity,
  edition: ({ basis }) => basisText(basis),
  conductors: ({ conductors }) => conductors.join(" + "),
  connector: (row) => connectorText(row),
  connectorDescription: ({ connector }) => connector?.description ?? null,
  connectorQuantity: ({ connector }) => connector?.quantity ?? null,
  chosen: ({ connector }) => (connector === null ? null : connector.chosen ? "chosen" : "given"),
  verdict: ({ verdict }) => verdict,
  decidingRule: ({ deciding }) => deciding.rule,
  because: ({ deciding }) => deciding.sentence,
  clause: ({ deciding }) => deciding.clause,
  tighten: (_row, torque) => torque?.at ?? null,
  method: (_row, torque) => torque?.method ?? null,
  torqueLbfIn: (_row, torque) => torque?.lbfIn ?? null,
  torqueLbfFt: (_row, torque) => torque?.lbfFt ?? null,
  torqueNm: (_row, torque) => torque?.newtonMetre ?? null,
  torqueAsPrinted: (_row, torque) => torque?.printed ?? null,
  torqueLevel: (_row, torque) => torque?.level ?? null,
  torqueSource: (_row, torque) => torque?.source ?? null,
  drive: (_row, torque) => torque?.drive ?? null,
  stripLengths: ({ stripLengths }) =>
    stripLengths.map(({ opening, length }) => `${opening}: ${length ?? "see instructions"}`).join("; "),
  brush: ({ preparation }) => preparation?.brush ?? null,
  compound: ({ preparation }) => preparation?.compound ?? null,
  tool: ({ tooling }) => (tooling === null ? null : toolText(tooling)),
  conditions: ({ conditions }) => conditions.join(" "),
  dutiesOnSite: ({ dutiesOnSite }) => dutiesOnSite.join(" "),
  missing: ({ missing }) => missing.map(({ path }) => path).join("; "),
  caveats: ({ caveats }) => caveats.join(" "),
  fix: ({ fix }) => fix,
};

/**
 * A stored schedule as CSV: RFC 4180, UTF-8, CRLF, a header row, decimal points. A text that a spreadsheet would take
 * for a formula begins with an apostrophe.
 */
export function scheduleCsv({ rows }: ConnectorSchedule): string {
  const values = Object.values(COLUMNS);
  const lines = rows.flatMap((row) =>
    (row.torque.length === 0 ? [undefined] : row.torque).map((torque) =>
      values.map((value) => {
        const cell = value(row, torque);
        return typeof cell === "string" ? neutralCell(cell) : cell;
      }),
    ),
  );
  return stringify([Object.keys(COLUMNS), ...lines], { record_delimiter: "windows", quoted_match: /[\r\n]/ });
}
