// Made from data/published by the table build. Never edit by hand.
import type { TableData } from "../../core/table.js";
import { ampacityFreeAir as base } from "../nfpa70-2023/ampacity-free-air.js";

export const ampacityFreeAir: TableData = {
  ...base,
  source: {"standard":"NFPA 70","edition":"2020","locator":"Table 310.17"},
};
