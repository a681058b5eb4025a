// Made from data/published by the table build. Never edit by hand.
import type { TableData } from "../../core/table.js";

export const torqueByConductor: TableData = {
  id: "torque-by-conductor",
  title: "tightening torque of a terminal screw by the size of the conductor it holds",
  source: {"standard":"NFPA 70","edition":"2023","locator":"Informative Annex I Table I.1"},
  digest: "sha256:fa672654b8a53a5f6513773d5d58631cd5608c7ab90ba30b31b8ceab5433dde4",
  unit: "lbf-in",
  rowKey: {"kind":"size-range"},
  columns: [
    {"id":"slottedSmall","title":"slotted head, No. 10 and larger: slot at most 0.047 in wide and at most 1/4 in long","unit":"lbf-in"},
    {"id":"slottedLarge","title":"slotted head, No. 10 and larger: slot over 0.047 in wide or over 1/4 in long","unit":"lbf-in"},
    {"id":"splitBolt","title":"hexagonal head turned from outside, split-bolt connector","unit":"lbf-in"},
    {"id":"externalHex","title":"hexagonal head turned from outside, any other connector","unit":"lbf-in"},
  ],
  rows: [
    {"key":["30 AWG","10 AWG"],"cells":["20","35","80","75"],"unconfirmed":[3]},
    {"key":["8 AWG","8 AWG"],"cells":["25","40","80","75"],"unconfirmed":[3]},
    {"key":["6 AWG","4 AWG"],"cells":["35","45","165","110"],"unconfirmed":[3]},
    {"key":["3 AWG","3 AWG"],"cells":["35","50","275","150"],"unconfirmed":[3]},
    {"key":["2 AWG","2 AWG"],"cells":["40","50","275","150"]},
    {"key":["1 AWG","1 AWG"],"cells":["","50","275","150"],"unconfirmed":[3]},
    {"key":["1/0 AWG","2/0 AWG"],"cells":["","50","385","180"],"unconfirmed":[3]},
    {"key":["3/0 AWG","4/0 AWG"],"cells":["","50","500","250"],"unconfirmed":[3]},
    {"key":["250 kcmil","350 kcmil"],"cells":["","50","650","325"],"unconfirmed":[3]},
    {"key":["400 kcmil","400 kcmil"],"cells":["","50","825","325"],"unconfirmed":[3]},
    {"key":["500 kcmil","500 kcmil"],"cells":["","50","825","375"],"unconfirmed":[3]},
    {"key":["600 kcmil","750 kcmil"],"cells":["","50","1000","375"],"unconfirmed":[3]},
    {"key":["800 kcmil","1000 kcmil"],"cells":["","50","1100","500"],"unconfirmed":[3]},
    {"key":["1250 kcmil","2000 kcmil"],"cells":["","","1100","600"],"unconfirmed":[3]},
  ],
  status: "published",
};
