/** What the metal marking of a connector or a terminal says; every rule that asks about metals reads it here. */
import type { ConductorMetal } from "./conductor.js";
import type { Connector } from "./connector.js";
import type { Edition } from "./edition.js";
import type { Step } from "./finding.js";
import { cellAt, isRefused, type Table } from "./table.js";
import type { Worksheet } from "./worksheet.js";

/** The mark of wiring devices of 15 and 20 A that take aluminum. */
export const DEVICE_MARK = "CO/ALR";

const MISPLACED = "a mark that speaks for aluminum on wiring devices only";

const COPPER: readonly ConductorMetal[] = Object.freeze(["copper"]);
const ALUMINUM: readonly ConductorMetal[] = Object.freeze(["aluminum"]);
const EITHER: readonly ConductorMetal[] = Object.freeze(["copper", "aluminum", "copper-clad-aluminum"]);
const METALS: Readonly<Record<string, readonly ConductorMetal[]>> = {
  copper: COPPER,
  aluminum: ALUMINUM,
  "copper aluminum": EITHER,
};

export type MarkingReading =
  | {
      readonly kind: "metals";
      readonly metals: readonly ConductorMetal[];
      /** The step that holds the list of metals. */
      readonly step: Step;
      /** "marked AL9CU", "bears no metal marking". */
      readonly words: string;
    }
  /** Not known, or a text that stands for nothing known; `because` says which. */
  | { readonly kind: "not-known"; readonly because: string };

/**
 * Reads which conductor metals a marking stands for, and writes the steps down.
 *
 * UL 486A-486B marking, in our words: CU is copper only, AL aluminum only; a mark with both is for either and for
 * copper-clad aluminum. A part without a metal mark is for copper only. CO/ALR speaks for aluminum on wiring devices
 * alone.
 * @param device whether the part is the terminal of a wiring device.
 * @param path where the marking is given: "connector/metalMarking".
 */
export function readMarking(
  connector: Connector,
  path: string,
  device: boolean,
  edition: Edition,
  worksheet: Worksheet,
): MarkingReading {
  const marking = connector.metalMarking;
  if (marking === undefined) return { kind: "not-known", because: "The metal marking of the connector is not known." };
  const { markingCodes } = edition.tables;
  const given = worksheet.given("metal marking", marking, path);
  if (marking === "unmarked") {
    const step = worksheet.assume(
      "metals taken",
      COPPER,
      "a part without a metal marking is for copper only",
      edition.clauses.listedConnectors,
      undefined,
      [given],
    );
    return { kind: "metals", metals: COPPER, step, words: "bears no metal marking" };
  }
  const cell = cellAt(markingCodes, marking, "metals");
  const metals = isRefused(cell) ? undefined : METALS[cell.value];
  if (isRefused(cell) || metals === undefined)
    return {
      kind: "not-known",
      because: `What the marking "${marking}" stands for is not known; known markings are ${codesOf(markingCodes)}.`,
    };
  const read = worksheet.read("metals of the marking", cell, [given]);
  const misplaced = marking === DEVICE_MARK && !device;
  const taken = misplaced ? COPPER : metals;
  const step = worksheet.conclude("metals taken", taken, [read], misplaced ? MISPLACED : whyTaken(taken), cell.cite);
  return { kind: "metals", metals: taken, step, words: `is marked ${marking}${misplaced ? ` (${MISPLACED})` : ""}` };
}

function whyTaken(metals: readonly ConductorMetal[]): string {
  return metals === EITHER ? "a mark for both metals also covers copper-clad aluminum" : "the mark names one metal";
}

function codesOf(markingCodes: Table): string {
  return markingCodes.rows.map(({ label }) => label).join(", ");
}
