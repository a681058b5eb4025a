// Made from data/published by the table build. Never edit by hand.
import type { TableData } from "../../core/table.js";

export const adjustmentFactor: TableData = {
  id: "adjustment-factor",
  title: "adjustment for more than three current-carrying conductors",
  source: {"standard":"NFPA 70","edition":"2023","locator":"Table 310.15(C)(1)"},
  digest: "sha256:e8e1382d388a78288455b0a140a3325b8204a0d72ed99ce3f5186015c23d5202",
  unit: "%",
  rowKey: {"kind":"interval","unit":"conductors"},
  columns: [
    {"id":"percent","title":"share of the ampacity after ambient correction","unit":"%"},
  ],
  rows: [
    {"key":["3","6"],"cells":["80"]},
    {"key":["6","9"],"cells":["70"]},
    {"key":["9","20"],"cells":["50"]},
    {"key":["20","30"],"cells":["45"]},
    {"key":["30","40"],"cells":["40"]},
    {"key":["40",""],"cells":["35"]},
  ],
  status: "published",
};
