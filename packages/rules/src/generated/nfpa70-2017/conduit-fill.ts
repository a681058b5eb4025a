// Made from data/published by the table build. Never edit by hand.
import type { TableData } from "../../core/table.js";
import { conduitFill as base } from "../nfpa70-2023/conduit-fill.js";

export const conduitFill: TableData = {
  ...base,
  source: {"standard":"NFPA 70","edition":"2017","locator":"Chapter 9 Table 1"},
};
