// Made from data/published by the table build. Never edit by hand.
import type { TableData } from "../../core/table.js";

export const smallConductor: TableData = {
  id: "small-conductor",
  title: "largest overcurrent device for small conductors",
  source: {"standard":"NFPA 70","edition":"2023","locator":"240.4(D)"},
  digest: "sha256:168b8c6460f3d003fd38a7f6a60361c7548b198ed81d011896fea255060c15ab",
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
    {"key":["14 AWG"],"cells":["15","","10"]},
    {"key":["12 AWG"],"cells":["20","15","15"]},
    {"key":["10 AWG"],"cells":["30","25","25"]},
  ],
  status: "published",
};
