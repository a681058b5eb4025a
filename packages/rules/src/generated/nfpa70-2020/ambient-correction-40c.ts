// Made from data/published by the table build. Never edit by hand.
import type { TableData } from "../../core/table.js";
import { ambientCorrection40c as base } from "../nfpa70-2023/ambient-correction-40c.js";

export const ambientCorrection40c: TableData = {
  ...base,
  source: {"standard":"NFPA 70","edition":"2020","locator":"Table 310.15(B)(2)"},
};
