// Made from data/published by the table build. Never edit by hand.
import type { TableData } from "../../core/table.js";
import { equipmentGround as base } from "../nfpa70-2023/equipment-ground.js";

export const equipmentGround: TableData = {
  ...base,
  source: {"standard":"NFPA 70","edition":"2017","locator":"Table 250.122"},
};
