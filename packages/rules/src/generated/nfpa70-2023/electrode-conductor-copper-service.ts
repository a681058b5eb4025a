// Made from data/published by the table build. Never edit by hand.
import type { TableData } from "../../core/table.js";

export const electrodeConductorCopperService: TableData = {
  id: "electrode-conductor-copper-service",
  title: "grounding electrode conductor of an ac system, copper service conductors",
  source: {"standard":"NFPA 70","edition":"2023","locator":"Table 250.66"},
  digest: "sha256:2f8c6ea94e082d72b01089370c2ccdb8af48a9fc8c517190c461d36f60609a43",
  unit: "term",
  rowKey: {"kind":"interval","unit":"kcmil"},
  columns: [
    {"id":"copper","title":"copper","unit":"term"},
    {"id":"aluminum","title":"aluminum or copper-clad aluminum","unit":"term"},
  ],
  rows: [
    {"key":["","66.36"],"cells":["8 AWG","6 AWG"]},
    {"key":["66.36","105.6"],"cells":["6 AWG","4 AWG"]},
    {"key":["105.6","167.8"],"cells":["4 AWG","2 AWG"]},
    {"key":["167.8","350"],"cells":["2 AWG","1/0 AWG"]},
    {"key":["350","600"],"cells":["1/0 AWG","3/0 AWG"]},
    {"key":["600","1100"],"cells":["2/0 AWG","4/0 AWG"]},
    {"key":["1100",""],"cells":["3/0 AWG","250 kcmil"]},
  ],
  status: "published",
};
