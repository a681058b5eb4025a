// Made from data/published by the table build. Never edit by hand.
import type { TableData } from "../../core/table.js";

export const torqueSocket: TableData = {
  id: "torque-socket",
  title: "tightening torque of screws with a recessed hexagonal or square drive, by width across flats",
  source: {"standard":"NFPA 70","edition":"2023","locator":"Informative Annex I Table I.3"},
  digest: "sha256:35915e1ccbfd4527760f619797dcc86d4936754c8cb2f52b97473e8db529fe6f",
  unit: "lbf-in",
  rowKey: {"kind":"term"},
  columns: [
    {"id":"torque","title":"tightening torque","unit":"lbf-in"},
  ],
  rows: [
    {"key":["1/8"],"cells":["45"],"unconfirmed":[0]},
    {"key":["5/32"],"cells":["100"],"unconfirmed":[0]},
    {"key":["3/16"],"cells":["120"]},
    {"key":["7/32"],"cells":["150"],"unconfirmed":[0]},
    {"key":["1/4"],"cells":["200"],"unconfirmed":[0]},
    {"key":["5/16"],"cells":["275"],"unconfirmed":[0]},
    {"key":["3/8"],"cells":["375"],"unconfirmed":[0]},
    {"key":["1/2"],"cells":["500"],"unconfirmed":[0]},
    {"key":["9/16"],"cells":["600"],"unconfirmed":[0]},
  ],
  status: "published",
};
