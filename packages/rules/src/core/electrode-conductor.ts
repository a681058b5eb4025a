/**
 * The least size of a grounding electrode conductor.
 *
 * NFPA 70 250.66 (2017, 2020, 2023), in our words: by the area of the ungrounded service conductor, all sets of a phase
 * together; (A) to rods, pipes or plates alone no larger than 6 AWG copper or 4 AWG aluminum; (B) to a concrete-encased
 * electrode alone no larger than 4 AWG copper.
 * Silent: aluminum to concrete has no limit of its own.
 */
import type { ConductorMetal } from "./conductor.js";
import type { Electrode } from "./connector.js";
import type { Edition } from "./edition.js";
import { groundingColumn } from "./grounding-area.js";
import { type Cell, cellInInterval, type TableRefusal } from "./table.js";

/** A conductor that serves one electrode alone need not be larger than this. */
export interface ElectrodeCap {
  readonly size: string;
  readonly clause: "electrodeConductorToRod" | "electrodeConductorToConcrete" | "electrodeConductorToRing";
}

export const ROD_COPPER: ElectrodeCap = { size: "6 AWG", clause: "electrodeConductorToRod" };
export const ROD_ALUMINUM: ElectrodeCap = { size: "4 AWG", clause: "electrodeConductorToRod" };
const CONCRETE_COPPER: ElectrodeCap = { size: "4 AWG", clause: "electrodeConductorToConcrete" };

export function electrodeCap(electrode: Electrode, metal: ConductorMetal): ElectrodeCap | undefined {
  switch (electrode) {
    case "copper-bonded-rod":
    case "galvanized-rod":
    case "stainless-rod":
    case "plate":
      return metal === "copper" ? ROD_COPPER : ROD_ALUMINUM;
    case "concrete-encased-rebar":
      return metal === "copper" ? CONCRETE_COPPER : undefined;
    case "water-pipe":
    case "building-steel":
    case "ground-ring":
      return undefined;
  }
}

/** The cell of Table 250.66 for the service's area in kcmil and the conductor's metal, or the table's refusal. */
export function electrodeConductorCell(
  serviceMetal: ConductorMetal,
  areaKcmil: number,
  metal: ConductorMetal,
  { tables }: Edition,
): Cell | TableRefusal {
  const table =
    serviceMetal === "copper" ? tables.electrodeConductorCopperService : tables.electrodeConductorAluminumService;
  return cellInInterval(table, areaKcmil, groundingColumn(metal));
}
