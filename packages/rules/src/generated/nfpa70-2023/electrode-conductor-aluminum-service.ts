// Made from data/published by the table build. Never edit by hand.
import type { TableData } from "../../core/table.js";

export const electrodeConductorAluminumService: TableData = {
  id: "electrode-conductor-aluminum-service",
  title: "grounding electrode conductor of an ac system, aluminum or copper-clad aluminum service conductors",
  source: {"standard":"NFPA 70","edition":"2023","locator":"Table 250.66"},
  digest: "sha256:36163ace74919ffc746a4009f7874584207f039854f29166679e13910473ef7e",
  unit: "term",
  rowKey: {"kind":"interval","unit":"kcmil"},
  columns: [
    {"id":"copper","title":"copper","unit":"term"},
    {"id":"aluminum","title":"aluminum or copper-clad aluminum","unit":"term"},
  ],
  rows: [
    {"key":["","105.6"],"cells":["8 AWG","6 AWG"]},
    {"key":["105.6","167.8"],"cells":["6 AWG","4 AWG"]},
    {"key":["167.8","250"],"cells":["4 AWG","2 AWG"]},
    {"key":["250","500"],"cells":["2 AWG","1/0 AWG"]},
    {"key":["500","900"],"cells":["1/0 AWG","3/0 AWG"]},
    {"key":["900","1750"],"cells":["2/0 AWG","4/0 AWG"]},
    {"key":["1750",""],"cells":["3/0 AWG","250 kcmil"]},
  ],
  status: "published",
};
