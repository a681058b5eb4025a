// Made from data/published by the table build. Never edit by hand.
import type { TableData } from "../../core/table.js";

export const bendingSide: TableData = {
  id: "bending-side",
  title: "wire-bending space at terminals where the wire does not leave through the opposite wall, and gutter width",
  source: {"standard":"NFPA 70","edition":"2023","locator":"Table 312.6(A)"},
  digest: "sha256:7e9abf8a465656a8ad12c89c392f11be3961a1eba9618ea69f8d3690cdff2540",
  unit: "in",
  rowKey: {"kind":"size-range"},
  columns: [
    {"id":"wires1","title":"1 wire per terminal","unit":"in"},
    {"id":"wires2","title":"2 wires per terminal","unit":"in"},
    {"id":"wires3","title":"3 wires per terminal","unit":"in"},
    {"id":"wires4","title":"4 wires per terminal","unit":"in"},
    {"id":"wires5","title":"5 wires per terminal","unit":"in"},
  ],
  rows: [
    {"key":["14 AWG","10 AWG"],"cells":["not specified","","","",""]},
    {"key":["8 AWG","6 AWG"],"cells":["1.5","","","",""]},
    {"key":["4 AWG","3 AWG"],"cells":["2","","","",""]},
    {"key":["2 AWG","2 AWG"],"cells":["2.5","","","",""]},
    {"key":["1 AWG","1 AWG"],"cells":["3","","","",""]},
    {"key":["1/0 AWG","2/0 AWG"],"cells":["3.5","5","7","",""],"unconfirmed":[2]},
    {"key":["3/0 AWG","4/0 AWG"],"cells":["4","6","8","",""]},
    {"key":["250 kcmil","250 kcmil"],"cells":["4.5","6","8","10",""]},
    {"key":["300 kcmil","350 kcmil"],"cells":["5","8","10","12",""]},
    {"key":["400 kcmil","500 kcmil"],"cells":["6","8","10","12","14"]},
    {"key":["600 kcmil","700 kcmil"],"cells":["8","10","12","14","16"]},
    {"key":["750 kcmil","900 kcmil"],"cells":["8","12","14","16","18"]},
    {"key":["1000 kcmil","1250 kcmil"],"cells":["10","","","",""]},
    {"key":["1500 kcmil","2000 kcmil"],"cells":["12","","","",""]},
  ],
  status: "published",
};
