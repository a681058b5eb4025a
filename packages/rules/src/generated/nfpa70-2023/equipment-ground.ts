// Made from data/published by the table build. Never edit by hand.
import type { TableData } from "../../core/table.js";

export const equipmentGround: TableData = {
  id: "equipment-ground",
  title: "smallest equipment grounding conductor by the overcurrent device ahead of it",
  source: {"standard":"NFPA 70","edition":"2023","locator":"Table 250.122"},
  digest: "sha256:72fed0cd3a8315891b4538ee8359990831ffc7c2dadc06f0552095886b3b660a",
  unit: "term",
  rowKey: {"kind":"interval","unit":"A"},
  columns: [
    {"id":"copper","title":"copper","unit":"term"},
    {"id":"aluminum","title":"aluminum or copper-clad aluminum","unit":"term"},
  ],
  rows: [
    {"key":["","15"],"cells":["14 AWG","12 AWG"]},
    {"key":["15","20"],"cells":["12 AWG","10 AWG"]},
    {"key":["20","60"],"cells":["10 AWG","8 AWG"]},
    {"key":["60","100"],"cells":["8 AWG","6 AWG"]},
    {"key":["100","200"],"cells":["6 AWG","4 AWG"]},
    {"key":["200","300"],"cells":["4 AWG","2 AWG"]},
    {"key":["300","400"],"cells":["3 AWG","1 AWG"]},
    {"key":["400","500"],"cells":["2 AWG","1/0 AWG"]},
    {"key":["500","600"],"cells":["1 AWG","2/0 AWG"]},
    {"key":["600","800"],"cells":["1/0 AWG","3/0 AWG"]},
    {"key":["800","1000"],"cells":["2/0 AWG","4/0 AWG"]},
    {"key":["1000","1200"],"cells":["3/0 AWG","250 kcmil"]},
    {"key":["1200","1600"],"cells":["4/0 AWG","350 kcmil"]},
    {"key":["1600","2000"],"cells":["250 kcmil","400 kcmil"]},
    {"key":["2000","2500"],"cells":["350 kcmil","600 kcmil"]},
    {"key":["2500","3000"],"cells":["400 kcmil","600 kcmil"]},
    {"key":["3000","4000"],"cells":["500 kcmil","750 kcmil"]},
    {"key":["4000","5000"],"cells":["700 kcmil","1250 kcmil"]},
    {"key":["5000","6000"],"cells":["800 kcmil","1250 kcmil"]},
  ],
  status: "published",
};
