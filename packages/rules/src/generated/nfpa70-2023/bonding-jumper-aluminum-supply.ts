// Made from data/published by the table build. Never edit by hand.
import type { TableData } from "../../core/table.js";

export const bondingJumperAluminumSupply: TableData = {
  id: "bonding-jumper-aluminum-supply",
  title: "grounded conductor, main, system or supply-side bonding jumper, aluminum or copper-clad aluminum ungrounded conductors",
  source: {"standard":"NFPA 70","edition":"2023","locator":"Table 250.102(C)(1)"},
  digest: "sha256:d36decb436470a85055103e4e51ade84cc6db4d4a56c2acffc4bc24cb7f3fa76",
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
    {"key":["1750",""],"cells":["12.5%","12.5%"]},
  ],
  status: "published",
};
