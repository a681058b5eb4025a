// Made from data/published by the table build. Never edit by hand.
import type { TableData } from "../../core/table.js";
import { conductorPropertiesSolid as base } from "../nfpa70-2023/conductor-properties-solid.js";

export const conductorPropertiesSolid: TableData = {
  ...base,
  source: {"standard":"NFPA 70","edition":"2020","locator":"Chapter 9 Table 8"},
};
