// Made from data/published by the table build. Never edit by hand.
import type { TableData } from "../../core/table.js";

export const conduitFill: TableData = {
  id: "conduit-fill",
  title: "share of the conduit area that conductors may fill",
  source: {"standard":"NFPA 70","edition":"2023","locator":"Chapter 9 Table 1"},
  digest: "sha256:03a490ae06aea2d96c19ab04e7e168f9f1597e63ef10486c01c1cbf4ef96c745",
  unit: "%",
  rowKey: {"kind":"interval","unit":"conductors"},
  columns: [
    {"id":"percent","title":"largest share filled","unit":"%"},
  ],
  rows: [
    {"key":["","1"],"cells":["53"],"unconfirmed":[0]},
    {"key":["1","2"],"cells":["31"],"unconfirmed":[0]},
    {"key":["2",""],"cells":["40"],"unconfirmed":[0]},
  ],
  status: "unconfirmed",
};
