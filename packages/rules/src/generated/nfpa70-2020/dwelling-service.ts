// Made from data/published by the table build. Never edit by hand.
import type { TableData } from "../../core/table.js";
import { dwellingService as base } from "../nfpa70-2023/dwelling-service.js";

export const dwellingService: TableData = {
  ...base,
  source: {"standard":"NFPA 70","edition":"2020","locator":"Table 310.12"},
};
