// Made from data/published by the table build. Never edit by hand.
import type { TableData } from "../../core/table.js";

export const boxVolume: TableData = {
  id: "box-volume",
  title: "free space in a box for each conductor",
  source: {"standard":"NFPA 70","edition":"2023","locator":"Table 314.16(B)(1)"},
  digest: "sha256:fd6f9bbc77add7762226610ed380d60643f04c9441314779f0ab2d1d578f7bd5",
  unit: "in3",
  rowKey: {"kind":"size"},
  columns: [
    {"id":"volumeIn3","title":"volume for each conductor","unit":"in3"},
  ],
  rows: [
    {"key":["18 AWG"],"cells":["1.50"]},
    {"key":["16 AWG"],"cells":["1.75"]},
    {"key":["14 AWG"],"cells":["2.00"]},
    {"key":["12 AWG"],"cells":["2.25"]},
    {"key":["10 AWG"],"cells":["2.50"]},
    {"key":["8 AWG"],"cells":["3.00"]},
    {"key":["6 AWG"],"cells":["5.00"]},
  ],
  status: "published",
};
