// Made from data/published by the table build. Never edit by hand.
import type { TableData } from "../../core/table.js";
import { ampacityRaceway as base } from "../nfpa70-2023/ampacity-raceway.js";

export const ampacityRaceway: TableData = {
  ...base,
  source: {"standard":"NFPA 70","edition":"2020","locator":"Table 310.16"},
};
