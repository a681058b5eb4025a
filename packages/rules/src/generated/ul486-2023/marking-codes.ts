// Made from data/published by the table build. Never edit by hand.
import type { TableData } from "../../core/table.js";

export const markingCodes: TableData = {
  id: "marking-codes",
  title: "conductor metals and temperature that a marking on a connector stands for",
  source: {"standard":"UL 486A-486B","edition":"2023","locator":"material and temperature marking of connectors"},
  digest: "sha256:310d41ade15855761fc67c8cc2309c3a6263d9a3683715e32b920728f4a82d65",
  unit: "term",
  rowKey: {"kind":"term"},
  columns: [
    {"id":"metals","title":"metals the connector takes","unit":"term"},
    {"id":"ratingC","title":"temperature rating of the connector","unit":"Cel"},
    {"id":"intermix","title":"whether copper and aluminum may touch in one opening","unit":"term"},
    {"id":"note","title":"remark","unit":"term"},
  ],
  rows: [
    {"key":["AL7CU"],"cells":["copper aluminum","75","no","either metal; one metal per opening"],"unconfirmed":[0,1,2,3]},
    {"key":["AL9CU"],"cells":["copper aluminum","90","no","either metal; one metal per opening"],"unconfirmed":[0,1,2,3]},
    {"key":["CU7AL"],"cells":["copper aluminum","75","no","either metal; one metal per opening"],"unconfirmed":[0,1,2,3]},
    {"key":["CU9AL"],"cells":["copper aluminum","90","no","either metal; one metal per opening"],"unconfirmed":[0,1,2,3]},
    {"key":["CU"],"cells":["copper","","no","copper only"]},
    {"key":["CU7"],"cells":["copper","75","no","copper only"],"unconfirmed":[0,1,2,3]},
    {"key":["CU9"],"cells":["copper","90","no","copper only"],"unconfirmed":[0,1,2,3]},
    {"key":["AL"],"cells":["aluminum","","no","aluminum only"],"unconfirmed":[0,1,2,3]},
    {"key":["AL7"],"cells":["aluminum","75","no","aluminum only"],"unconfirmed":[0,1,2,3]},
    {"key":["AL9"],"cells":["aluminum","90","no","aluminum only"],"unconfirmed":[0,1,2,3]},
    {"key":["AL-CU"],"cells":["copper aluminum","","no","either metal; one metal per opening"]},
    {"key":["CU-AL"],"cells":["copper aluminum","","no","either metal; one metal per opening"]},
    {"key":["CO/ALR"],"cells":["copper aluminum","","no","wiring devices of 15 and 20 A"]},
    {"key":["AL-CU-INTERMIX-DRY"],"cells":["copper aluminum","","dry","the metals may touch in a dry place"]},
  ],
  status: "published",
};
