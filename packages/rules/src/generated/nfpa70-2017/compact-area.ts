// Made from data/published by the table build. Never edit by hand.
import type { TableData } from "../../core/table.js";
import { compactArea as base } from "../nfpa70-2023/compact-area.js";

export const compactArea: TableData = {
  ...base,
  source: {"standard":"NFPA 70","edition":"2017","locator":"Chapter 9 Table 5A"},
};
