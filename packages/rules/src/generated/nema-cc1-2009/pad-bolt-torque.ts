// Made from data/published by the table build. Never edit by hand.
import type { TableData } from "../../core/table.js";

export const padBoltTorque: TableData = {
  id: "pad-bolt-torque",
  title: "installation torque of pad bolts",
  source: {"standard":"NEMA CC 1","edition":"2009","locator":"installation torque table"},
  digest: "sha256:0ed90880aa9810543448729d52c51a13f43ab14e360052e029713fdf62580c36",
  unit: "lbf-in",
  rowKey: {"kind":"term"},
  columns: [
    {"id":"steelOrBronze","title":"silicon bronze, stainless or galvanized steel, clean and dry","unit":"lbf-in"},
    {"id":"aluminumLubricated","title":"aluminum bolt, lubricated thread","unit":"lbf-in"},
  ],
  rows: [
    {"key":["1/4"],"cells":["80",""],"unconfirmed":[0,1]},
    {"key":["5/16"],"cells":["180",""],"unconfirmed":[0,1]},
    {"key":["3/8"],"cells":["240","168"],"unconfirmed":[0,1]},
    {"key":["7/16"],"cells":["360",""],"unconfirmed":[0,1]},
    {"key":["1/2"],"cells":["480","300"],"unconfirmed":[0,1]},
    {"key":["5/8"],"cells":["660","480"],"unconfirmed":[0,1]},
    {"key":["3/4"],"cells":["","650"],"unconfirmed":[0,1]},
  ],
  status: "unconfirmed",
};
