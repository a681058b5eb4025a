// Made from data/published by the table build. Never edit by hand.
import type { TableData } from "../../core/table.js";
import { motorCurrent1ph as base } from "../nfpa70-2023/motor-current-1ph.js";

export const motorCurrent1ph: TableData = {
  ...base,
  source: {"standard":"NFPA 70","edition":"2020","locator":"Table 430.248"},
};
