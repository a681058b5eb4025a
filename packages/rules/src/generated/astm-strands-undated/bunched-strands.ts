// Made from data/published by the table build. Never edit by hand.
import type { TableData } from "../../core/table.js";

export const bunchedStrands: TableData = {
  id: "bunched-strands",
  title: "area of one wire of a bunched conductor by its class",
  source: {"standard":"ASTM B8, B172, B173, B174","edition":"undated","locator":"wire size by class, B172 and B174"},
  digest: "sha256:74fc8c2e4f614fa974ce80e402ce56426fa73956300630a3659ba118bc923c33",
  unit: "cmil",
  rowKey: {"kind":"term"},
  columns: [
    {"id":"wireAreaCmil","title":"area of one wire","unit":"cmil"},
  ],
  rows: [
    {"key":["class-I"],"cells":["404"],"unconfirmed":[0]},
    {"key":["class-J"],"cells":["159.8"],"unconfirmed":[0]},
    {"key":["class-K"],"cells":["100.5"],"unconfirmed":[0]},
    {"key":["class-L"],"cells":["63.2"],"unconfirmed":[0]},
    {"key":["class-M"],"cells":["39.7"],"unconfirmed":[0]},
  ],
  status: "unconfirmed",
};
