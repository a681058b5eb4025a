// Made from data/published by the table build. Never edit by hand.
import type { TableData } from "../../core/table.js";
import { standardRatings as base } from "../nfpa70-2020/standard-ratings.js";

export const standardRatings: TableData = {
  ...base,
  source: {"standard":"NFPA 70","edition":"2017","locator":"Table 240.6(A)"},
};
