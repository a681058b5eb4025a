// Made from data/published by the table build. Never edit by hand.
import type { TableData } from "../../core/table.js";

export const stranding: TableData = {
  id: "stranding",
  title: "number of strands by conductor size and stranding class",
  source: {"standard":"NFPA 70","edition":"2023","locator":"Chapter 9 Table 10"},
  digest: "sha256:e7a1d07e0909040abaf01364d6c059afd9bc645d489d844926d22b9c13045b6b",
  unit: "strands",
  rowKey: {"kind":"size-range"},
  columns: [
    {"id":"copperB","title":"copper, class B","unit":"strands"},
    {"id":"copperC","title":"copper, class C","unit":"strands"},
    {"id":"aluminumB","title":"aluminum, class B","unit":"strands"},
  ],
  rows: [
    {"key":["30 AWG","24 AWG"],"cells":["","",""],"unconfirmed":[0,1,2]},
    {"key":["22 AWG","22 AWG"],"cells":["7","",""],"unconfirmed":[0,1,2]},
    {"key":["20 AWG","20 AWG"],"cells":["10","",""],"unconfirmed":[0,1,2]},
    {"key":["18 AWG","18 AWG"],"cells":["16","",""],"unconfirmed":[0,1,2]},
    {"key":["16 AWG","16 AWG"],"cells":["26","",""],"unconfirmed":[0,1,2]},
    {"key":["14 AWG","2 AWG"],"cells":["7","19","7"],"unconfirmed":[1,2]},
    {"key":["1 AWG","4/0 AWG"],"cells":["19","37","19"],"unconfirmed":[1,2]},
    {"key":["250 kcmil","500 kcmil"],"cells":["37","61","37"],"unconfirmed":[1,2]},
    {"key":["600 kcmil","1000 kcmil"],"cells":["61","91","61"],"unconfirmed":[1,2]},
    {"key":["1250 kcmil","1500 kcmil"],"cells":["91","127","91"],"unconfirmed":[1,2]},
    {"key":["1750 kcmil","2000 kcmil"],"cells":["127","271","127"],"unconfirmed":[1,2]},
  ],
  status: "published",
};
