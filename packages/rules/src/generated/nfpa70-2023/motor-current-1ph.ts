// Made from data/published by the table build. Never edit by hand.
import type { TableData } from "../../core/table.js";

export const motorCurrent1ph: TableData = {
  id: "motor-current-1ph",
  title: "full-load current of single-phase ac motors",
  source: {"standard":"NFPA 70","edition":"2023","locator":"Table 430.248"},
  digest: "sha256:41289093d99933243ec68c3b55c24f21f7c4adf67e025e950d17eb43c9fd8328",
  unit: "A",
  rowKey: {"kind":"term"},
  columns: [
    {"id":"v115","title":"115 V","unit":"A"},
    {"id":"v200","title":"200 V","unit":"A"},
    {"id":"v208","title":"208 V","unit":"A"},
    {"id":"v230","title":"230 V","unit":"A"},
  ],
  rows: [
    {"key":["1/6"],"cells":["4.4","2.5","2.4","2.2"],"unconfirmed":[0,1,2,3]},
    {"key":["1/4"],"cells":["5.8","3.3","3.2","2.9"],"unconfirmed":[0,1,2,3]},
    {"key":["1/3"],"cells":["7.2","4.1","4.0","3.6"],"unconfirmed":[0,1,2,3]},
    {"key":["1/2"],"cells":["9.8","5.6","5.4","4.9"],"unconfirmed":[0,1,2,3]},
    {"key":["3/4"],"cells":["13.8","7.9","7.6","6.9"],"unconfirmed":[0,1,2,3]},
    {"key":["1"],"cells":["16","9.2","8.8","8.0"],"unconfirmed":[0,1,2,3]},
    {"key":["1-1/2"],"cells":["20","11.5","11.0","10"],"unconfirmed":[0,1,2,3]},
    {"key":["2"],"cells":["24","13.8","13.2","12"],"unconfirmed":[0,1,2,3]},
    {"key":["3"],"cells":["34","19.6","18.7","17"],"unconfirmed":[0,1,2,3]},
    {"key":["5"],"cells":["56","32.2","30.8","28"],"unconfirmed":[0,1,2,3]},
    {"key":["7-1/2"],"cells":["80","46.0","44.0","40"],"unconfirmed":[0,1,2,3]},
    {"key":["10"],"cells":["100","57.5","55.0","50"],"unconfirmed":[0,1,2,3]},
  ],
  status: "unconfirmed",
};
