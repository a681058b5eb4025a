// Made from data/published by the table build. Never edit by hand.
import type { TableData } from "../../core/table.js";
import { bendingSide as base } from "../nfpa70-2023/bending-side.js";

export const bendingSide: TableData = {
  ...base,
  source: {"standard":"NFPA 70","edition":"2020","locator":"Table 312.6(A)"},
};
