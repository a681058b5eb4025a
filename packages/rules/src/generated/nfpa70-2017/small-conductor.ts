// Made from data/published by the table build. Never edit by hand.
import type { TableData } from "../../core/table.js";
import { smallConductor as base } from "../nfpa70-2020/small-conductor.js";

export const smallConductor: TableData = {
  ...base,
  source: {"standard":"NFPA 70","edition":"2017","locator":"240.4(D)"},
};
