// Made from data/published by the table build. Never edit by hand.
import type { TableData } from "../../core/table.js";

export const bondingJumperCopperSupply: TableData = {
  id: "bonding-jumper-copper-supply",
  title: "grounded conductor, main, system or supply-side bonding jumper, copper ungrounded conductors",
  source: {"standard":"NFPA 70","edition":"2023","locator":"Table 250.102(C)(1)"},
  digest: "sha256:6eeff7d05eef2e7889c3b89a28b76e7e3658f4afaf775a454085dc727ba80542",
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
    {"key":["1100",""],"cells":["12.5%","12.5%"]},
  ],
  status: "published",
};
