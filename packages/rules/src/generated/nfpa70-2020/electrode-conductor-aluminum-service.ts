// Made from data/published by the table build. Never edit by hand.
import type { TableData } from "../../core/table.js";
import { electrodeConductorAluminumService as base } from "../nfpa70-2023/electrode-conductor-aluminum-service.js";

export const electrodeConductorAluminumService: TableData = {
  ...base,
  source: {"standard":"NFPA 70","edition":"2020","locator":"Table 250.66"},
};
