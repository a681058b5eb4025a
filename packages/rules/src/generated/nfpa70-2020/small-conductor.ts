// Made from data/published by the table build. Never edit by hand.
import type { TableData } from "../../core/table.js";

export const smallConductor: TableData = {
  id: "small-conductor",
  title: "largest overcurrent device for small conductors",
  source: {"standard":"NFPA 70","edition":"2020","locator":"240.4(D)"},
  digest: "sha256:42918c82e31fb90151849eda85abc17feb370895af580f9e6f2b5d96823d0960",
  unit: "A",
  rowKey: {"kind":"size"},
  columns: [
    {"id":"copper","title":"copper","unit":"A"},
    {"id":"aluminum","title":"aluminum","unit":"A"},
    {"id":"copperClad","title":"copper-clad aluminum","unit":"A"},
  ],
  rows: [
    {"key":["18 AWG"],"cells":["7","",""]},
    {"key":["16 AWG"],"cells":["10","",""]},
    {"key":["14 AWG"],"cells":["15","",""]},
    {"key":["12 AWG"],"cells":["20","15","15"]},
    {"key":["10 AWG"],"cells":["30","25","25"]},
  ],
  status: "published",
};
