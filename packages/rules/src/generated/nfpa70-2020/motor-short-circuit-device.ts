// Made from data/published by the table build. Never edit by hand.
import type { TableData } from "../../core/table.js";
import { motorShortCircuitDevice as base } from "../nfpa70-2023/motor-short-circuit-device.js";

export const motorShortCircuitDevice: TableData = {
  ...base,
  source: {"standard":"NFPA 70","edition":"2020","locator":"Table 430.52"},
};
