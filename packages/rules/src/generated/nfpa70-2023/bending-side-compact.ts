// Made from data/published by the table build. Never edit by hand.
import type { TableData } from "../../core/table.js";

export const bendingSideCompact: TableData = {
  id: "bending-side-compact",
  title: "wire-bending space at terminals where the wire does not leave through the opposite wall, compact-stranded AA-8000 aluminum",
  source: {"standard":"NFPA 70","edition":"2023","locator":"Table 312.6(A)"},
  digest: "sha256:99cf6f5d1586f1070a8a43ed999eae4d8e3f86ea89b5fab4fcebd0805c326376",
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
    {"key":["12 AWG","8 AWG"],"cells":["not specified","","","",""],"unconfirmed":[0,1,2,3,4]},
    {"key":["6 AWG","4 AWG"],"cells":["1.5","","","",""],"unconfirmed":[0,1,2,3,4]},
    {"key":["2 AWG","1 AWG"],"cells":["2","","","",""],"unconfirmed":[0,1,2,3,4]},
    {"key":["1/0 AWG","1/0 AWG"],"cells":["2.5","","","",""],"unconfirmed":[0,1,2,3,4]},
    {"key":["2/0 AWG","2/0 AWG"],"cells":["3","","","",""],"unconfirmed":[0,1,2,3,4]},
    {"key":["3/0 AWG","4/0 AWG"],"cells":["3.5","5","7","",""],"unconfirmed":[0,1,2,3,4]},
    {"key":["250 kcmil","300 kcmil"],"cells":["4","6","8","",""],"unconfirmed":[0,1,2,3,4]},
    {"key":["350 kcmil","350 kcmil"],"cells":["4.5","6","8","10",""],"unconfirmed":[0,1,2,3,4]},
    {"key":["400 kcmil","500 kcmil"],"cells":["5","8","10","12",""],"unconfirmed":[0,1,2,3,4]},
    {"key":["600 kcmil","750 kcmil"],"cells":["6","8","10","12","14"],"unconfirmed":[0,1,2,3,4]},
    {"key":["800 kcmil","1000 kcmil"],"cells":["8","10","12","14","16"],"unconfirmed":[0,1,2,3,4]},
  ],
  status: "unconfirmed",
};
