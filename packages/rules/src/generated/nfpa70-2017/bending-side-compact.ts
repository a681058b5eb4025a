// Made from data/published by the table build. Never edit by hand.
import type { TableData } from "../../core/table.js";
import { bendingSideCompact as base } from "../nfpa70-2023/bending-side-compact.js";

export const bendingSideCompact: TableData = {
  ...base,
  source: {"standard":"NFPA 70","edition":"2017","locator":"Table 312.6(A)"},
};
