import type { Edition } from "../../core/edition.js";
import { openTable } from "../../core/table.js";
import * as published from "../../generated/nfpa70-2023/index.js";
import { clausesOf } from "../nfpa70-clauses.js";
import { nfpa70Tables } from "../nfpa70-tables.js";

/** NFPA 70, edition 2023. */
export const nfpa70Edition2023: Edition = Object.freeze({
  ruleSet: "nfpa70",
  edition: "2023",
  tables: nfpa70Tables(published),
  clauses: clausesOf("2023", {
    parallel: "310.10(G)",
    bendingOpposite: "312.6(B)(2)",
    bendingSide: "312.6(B)(1)",
    insulationTypes: "Table 310.4(1)",
    smallConductors: "240.4(D)",
    bareConductors: "310.15(D)",
    conductorTemperature: "310.14(A)(3)",
    roof: "310.15(B)(2)",
    shortRaceway: "310.15(C)(1)(b)",
    neutralsCounted: "310.15(E)",
    groundsNotCounted: "310.15(F)",
    dwellingService: "310.12",
    deviceAluminum: "404.14(D) and 406.3(D)",
  }),
  lineSideMark: { asked: "yes" },
  blockLineSideMark: "everywhere",
  torqueDuty: {
    sentence: "Reach the stated torque by an approved means: a torque tool, or a breakaway head that shows it.",
    breakawayAccepted: true,
  },
  copperCladUnlikeCopper: false,
  unmarkedDeviceTakesCopperClad: true,
  boxFill: {
    groundsInOneAllowance: 4,
    furtherGroundAllowance: 0.25,
    isolatedGroundsApart: false,
    terminalBlockAllowance: 1,
  },
  dwellingService: { table: openTable(published.dwellingService) },
  pipeBondingCap: { copper: "3/0 AWG", aluminum: "250 kcmil" },
} satisfies Edition);
