import type { ConductorGroup, Temperature } from "@landfast/rules";
import { type Case, locationOf } from "../case.js";
import { cell, cmilOf, type Row, tableRows } from "../read-table.js";
import { ninthsOfCelsius } from "../scaled-integer.js";
import { markOf } from "./metals.js";

const ONE_AWG = 83_690;

const INSULATION: ReadonlyMap<string, Row> = new Map(
  tableRows("nfpa70", "2023", "insulation-types").map((row) => [cell(row, "key"), row]),
);

/** The three columns of the ampacity table. */
export type Column = 60 | 75 | 90;
export const COLUMNS: readonly Column[] = [60, 75, 90];

/** The highest column that a rating reaches, in ninths of a degree; null below 60 C. */
const columnOf = (ninths: number): Column | null => COLUMNS.findLast((column) => column * 9 <= ninths) ?? null;

/**
 * The temperature of the insulation in this place. "no-table": not sized by the building-wire table. "unsuited": the type
 * is not for the place. "unknown": nothing gives it (310.15(D) leaves a bare conductor to its neighbors).
 */
export function insulationColumn(
  asked: Case,
  group: ConductorGroup,
): Column | null | "no-table" | "unsuited" | "unknown" {
  const { insulation } = group;
  if (insulation === "equipment-lead" || insulation === "fixture-wire") return "no-table";
  if (insulation === "bare") return "unknown";
  if (insulation === "other")
    return group.insulationRating === undefined ? "unknown" : columnOf(ninthsOfCelsius(group.insulationRating));
  const row = INSULATION.get(insulation);
  if (row === undefined) throw new Error(`no row for ${insulation}`);
  const location = locationOf(asked);
  const rating = cell(row, location === "direct-burial" || location === "concrete" ? "wet" : location);
  return rating === "" ? "unsuited" : columnOf(Number(rating) * 9);
}

/**
 * 110.14(C)(1) where nothing is marked: 60 C for circuits up to 100 A and for terminals marked for 14 through 1 AWG, 75 C
 * above. Where the terminal's own range is not known, the conductor stands for it.
 */
function unmarkedDefault({ joint, connector, ownTerminal }: Case, group: ConductorGroup): Column {
  const { circuit } = joint;
  const protection = circuit?.protection;
  const ratingA =
    protection?.kind === "device"
      ? protection.ratingA
      : protection?.kind === "feeder-tap"
        ? protection.endDeviceA
        : null;
  if (ratingA !== null && ratingA <= 100) return 60;
  const marked = ownTerminal
    ? connector.openings.flatMap(({ ranges }) => ranges.map(({ to }) => cmilOf(to) ?? 0))
    : [cmilOf(group.size) ?? 0];
  return Math.max(...marked) <= ONE_AWG ? 60 : 75;
}

/** The column of a rating that is marked, or of the default where it is looked for and not found. */
function terminalColumn(
  asked: Case,
  group: ConductorGroup,
  rating: Temperature | "unmarked" | undefined,
): Column | null {
  if (rating === undefined) throw new Error("the terminal's temperature must be settled first");
  return rating === "unmarked" ? unmarkedDefault(asked, group) : columnOf(ninthsOfCelsius(rating));
}

/**
 * 110.14(C): the lowest temperature of any connected terminal, connector and conductor chooses the column. Null where one
 * of them lies below every column. `insulation` stands for the conductor.
 */
export function lowestColumn(asked: Case, group: ConductorGroup, insulation: Column): Column | null {
  const { joint, connector, ownTerminal } = asked;
  const found: (Column | null)[] = [insulation];
  found.push(
    terminalColumn(
      asked,
      group,
      joint.function === "termination" ? joint.equipment?.terminalTemperature : joint.circuit?.endTerminalTemperature,
    ),
  );
  const rated = markOf(connector)?.ratingC ?? null;
  if (rated !== null) found.push(columnOf(rated * 9));
  if (typeof connector.temperature === "object") found.push(columnOf(ninthsOfCelsius(connector.temperature)));
  else if (rated === null && !ownTerminal) {
    // 110.14(C)(2): a part of its own is used up to its rating, which is 75 C unless it is marked (UL 486A-486B).
    if (connector.temperature === undefined) throw new Error("the connector's temperature must be settled first");
    found.push(75);
  }
  return found.includes(null) ? null : (Math.min(...found.map(Number)) as Column);
}
