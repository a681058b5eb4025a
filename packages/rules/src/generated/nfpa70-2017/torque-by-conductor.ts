// Made from data/published by the table build. Never edit by hand.
import type { TableData } from "../../core/table.js";
import { torqueByConductor as base } from "../nfpa70-2023/torque-by-conductor.js";

export const torqueByConductor: TableData = {
  ...base,
  source: {"standard":"NFPA 70","edition":"2017","locator":"Informative Annex I Table I.1"},
};
