// Made from data/published by the table build. Never edit by hand.
import type { TableData } from "../../core/table.js";
import { adjustmentFactor as base } from "../nfpa70-2023/adjustment-factor.js";

export const adjustmentFactor: TableData = {
  ...base,
  source: {"standard":"NFPA 70","edition":"2017","locator":"Table 310.15(B)(3)(a)"},
};
