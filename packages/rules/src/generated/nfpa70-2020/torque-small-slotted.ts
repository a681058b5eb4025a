// Made from data/published by the table build. Never edit by hand.
import type { TableData } from "../../core/table.js";
import { torqueSmallSlotted as base } from "../nfpa70-2023/torque-small-slotted.js";

export const torqueSmallSlotted: TableData = {
  ...base,
  source: {"standard":"NFPA 70","edition":"2020","locator":"Informative Annex I Table I.2"},
};
