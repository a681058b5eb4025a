// Made from data/published by the table build. Never edit by hand.
import type { TableData } from "../../core/table.js";

export const dwellingService: TableData = {
  id: "dwelling-service",
  title: "conductors of a single-phase dwelling service or feeder that carries the whole load",
  source: {"standard":"NFPA 70","edition":"2023","locator":"Table 310.12(A)"},
  digest: "sha256:88fb0504e786d4a058b31f8308d752f1fd0791d24651f18b3b084a3a06190bd8",
  unit: "term",
  rowKey: {"kind":"term"},
  columns: [
    {"id":"copper","title":"smallest copper conductor","unit":"term"},
    {"id":"aluminum","title":"smallest aluminum or copper-clad aluminum conductor","unit":"term"},
  ],
  rows: [
    {"key":["100"],"cells":["4 AWG","2 AWG"]},
    {"key":["110"],"cells":["3 AWG","1 AWG"]},
    {"key":["125"],"cells":["2 AWG","1/0 AWG"]},
    {"key":["150"],"cells":["1 AWG","2/0 AWG"]},
    {"key":["175"],"cells":["1/0 AWG","3/0 AWG"]},
    {"key":["200"],"cells":["2/0 AWG","4/0 AWG"]},
    {"key":["225"],"cells":["3/0 AWG","250 kcmil"]},
    {"key":["250"],"cells":["4/0 AWG","300 kcmil"]},
    {"key":["300"],"cells":["250 kcmil","350 kcmil"]},
    {"key":["350"],"cells":["350 kcmil","500 kcmil"]},
    {"key":["400"],"cells":["400 kcmil","600 kcmil"]},
  ],
  status: "published",
};
