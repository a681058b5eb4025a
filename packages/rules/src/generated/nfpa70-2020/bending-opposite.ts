// Made from data/published by the table build. Never edit by hand.
import type { TableData } from "../../core/table.js";
import { bendingOpposite as base } from "../nfpa70-2023/bending-opposite.js";

export const bendingOpposite: TableData = {
  ...base,
  source: {"standard":"NFPA 70","edition":"2020","locator":"Table 312.6(B)"},
};
