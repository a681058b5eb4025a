import type { Edition } from "../../core/edition.js";
import * as published from "../../generated/nfpa70-2017/index.js";
import { clausesOf } from "../nfpa70-clauses.js";
import { nfpa70Tables } from "../nfpa70-tables.js";

/** NFPA 70, edition 2017. */
export const nfpa70Edition2017: Edition = Object.freeze({
  ruleSet: "nfpa70",
  edition: "2017",
  tables: nfpa70Tables(published),
  clauses: clausesOf("2017", {
    parallel: "310.10(H)",
    bendingOpposite: "312.6(B)(2)",
    bendingSide: "312.6(B)(1)",
    insulationTypes: "Table 310.104(A)",
    smallConductors: "240.4(D)",
    bareConductors: "310.15(B)(4)",
    conductorTemperature: "310.15(A)(3)",
    roof: "310.15(B)(3)(c)",
    shortRaceway: "310.15(B)(3)(a)(2)",
    neutralsCounted: "310.15(B)(5)",
    groundsNotCounted: "310.15(B)(6)",
    dwellingService: "310.15(B)(7)",
    deviceAluminum: "404.14(C) and 406.3(C)",
  }),
  lineSideMark: {
    asked: "no",
    laterRule:
      "the 2020 edition asks for a line-side mark on connectors on service conductors installed from 2023-01-01 on",
  },
  blockLineSideMark: "in-boxes",
  torqueDuty: {
    sentence: "Tighten with a calibrated torque tool to the value given, unless the instructions name another method.",
    breakawayAccepted: false,
  },
  copperCladUnlikeCopper: true,
  unmarkedDeviceTakesCopperClad: false,
  boxFill: {
    groundsInOneAllowance: "all",
    furtherGroundAllowance: 0,
    isolatedGroundsApart: true,
    terminalBlockAllowance: 0,
  },
  dwellingService: { table: null },
  pipeBondingCap: null,
} satisfies Edition);
