// Made from data/published by the table build. Never edit by hand.
import type { TableData } from "../../core/table.js";
import { insulationTypes as base } from "../nfpa70-2023/insulation-types.js";

export const insulationTypes: TableData = {
  ...base,
  source: {"standard":"NFPA 70","edition":"2017","locator":"Table 310.104(A)"},
};
