// Made from data/published by the table build. Never edit by hand.
import type { TableData } from "../../core/table.js";
import { conduitArea as base } from "../nfpa70-2023/conduit-area.js";

export const conduitArea: TableData = {
  ...base,
  source: {"standard":"NFPA 70","edition":"2020","locator":"Chapter 9 Table 4"},
};
