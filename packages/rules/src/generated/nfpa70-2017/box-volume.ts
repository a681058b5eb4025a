// Made from data/published by the table build. Never edit by hand.
import type { TableData } from "../../core/table.js";
import { boxVolume as base } from "../nfpa70-2023/box-volume.js";

export const boxVolume: TableData = {
  ...base,
  source: {"standard":"NFPA 70","edition":"2017","locator":"Table 314.16(B)"},
};
