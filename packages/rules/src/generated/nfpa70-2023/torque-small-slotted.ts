// Made from data/published by the table build. Never edit by hand.
import type { TableData } from "../../core/table.js";

export const torqueSmallSlotted: TableData = {
  id: "torque-small-slotted",
  title: "tightening torque of slotted screws smaller than No. 10, conductors 8 AWG and smaller",
  source: {"standard":"NFPA 70","edition":"2023","locator":"Informative Annex I Table I.2"},
  digest: "sha256:4814e891f5b1cf03e6dc4b0805e22d36e9b9f751b73f621e20b87264951c0953",
  unit: "lbf-in",
  rowKey: {"kind":"term"},
  columns: [
    {"id":"narrow","title":"slot narrower than 0.047 in","unit":"lbf-in"},
    {"id":"wide","title":"slot 0.047 in wide and wider","unit":"lbf-in"},
  ],
  rows: [
    {"key":["under 5/32"],"cells":["7","9"]},
    {"key":["5/32"],"cells":["7","12"]},
    {"key":["3/16"],"cells":["7","12"]},
    {"key":["7/32"],"cells":["7","12"]},
    {"key":["1/4"],"cells":["9","12"]},
    {"key":["9/32"],"cells":["","15"],"unconfirmed":[0,1]},
    {"key":["over 9/32"],"cells":["","20"],"unconfirmed":[0,1]},
  ],
  status: "published",
};
