// Made from data/published by the table build. Never edit by hand.
import type { TableData } from "../../core/table.js";
import { bondingJumperCopperSupply as base } from "../nfpa70-2023/bonding-jumper-copper-supply.js";

export const bondingJumperCopperSupply: TableData = {
  ...base,
  source: {"standard":"NFPA 70","edition":"2017","locator":"Table 250.102(C)(1)"},
};
