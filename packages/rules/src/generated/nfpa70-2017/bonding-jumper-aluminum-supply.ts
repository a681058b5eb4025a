// Made from data/published by the table build. Never edit by hand.
import type { TableData } from "../../core/table.js";
import { bondingJumperAluminumSupply as base } from "../nfpa70-2023/bonding-jumper-aluminum-supply.js";

export const bondingJumperAluminumSupply: TableData = {
  ...base,
  source: {"standard":"NFPA 70","edition":"2017","locator":"Table 250.102(C)(1)"},
};
