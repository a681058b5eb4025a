// Made from data/published by the table build. Never edit by hand.
import type { TableData } from "../../core/table.js";
import { torqueSocket as base } from "../nfpa70-2023/torque-socket.js";

export const torqueSocket: TableData = {
  ...base,
  source: {"standard":"NFPA 70","edition":"2020","locator":"Informative Annex I Table I.3"},
};
