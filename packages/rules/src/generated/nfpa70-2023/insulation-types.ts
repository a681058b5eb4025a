// Made from data/published by the table build. Never edit by hand.
import type { TableData } from "../../core/table.js";

export const insulationTypes: TableData = {
  id: "insulation-types",
  title: "maximum operating temperature of building-wire insulation by type and place",
  source: {"standard":"NFPA 70","edition":"2023","locator":"Table 310.4(1)"},
  digest: "sha256:60c3ad2777fb6a82bfdc39490f0c9be67ddec5ecace9f1f14da772d26debe6fd",
  unit: "Cel",
  rowKey: {"kind":"term"},
  columns: [
    {"id":"dry","title":"dry place","unit":"Cel"},
    {"id":"damp","title":"damp place","unit":"Cel"},
    {"id":"wet","title":"wet place","unit":"Cel"},
  ],
  rows: [
    {"key":["THHN"],"cells":["90","90",""],"unconfirmed":[0,1,2]},
    {"key":["THWN"],"cells":["75","75","75"],"unconfirmed":[0,1,2]},
    {"key":["THWN-2"],"cells":["90","90","90"],"unconfirmed":[0,1,2]},
    {"key":["THHN/THWN-2"],"cells":["90","90","90"],"unconfirmed":[0,1,2]},
    {"key":["XHHW"],"cells":["90","90","75"],"unconfirmed":[0,1,2]},
    {"key":["XHHW-2"],"cells":["90","90","90"],"unconfirmed":[0,1,2]},
    {"key":["RHH"],"cells":["90","90",""],"unconfirmed":[0,1,2]},
    {"key":["RHW"],"cells":["75","75","75"],"unconfirmed":[0,1,2]},
    {"key":["RHW-2"],"cells":["90","90","90"],"unconfirmed":[0,1,2]},
    {"key":["RHH/RHW-2"],"cells":["90","90","90"],"unconfirmed":[0,1,2]},
    {"key":["THW"],"cells":["75","75","75"],"unconfirmed":[0,1,2]},
    {"key":["THW-2"],"cells":["90","90","90"],"unconfirmed":[0,1,2]},
    {"key":["TW"],"cells":["60","60","60"],"unconfirmed":[0,1,2]},
    {"key":["UF"],"cells":["60","60","60"],"unconfirmed":[0,1,2]},
    {"key":["USE"],"cells":["75","75","75"],"unconfirmed":[0,1,2]},
    {"key":["USE-2"],"cells":["90","90","90"],"unconfirmed":[0,1,2]},
    {"key":["NM"],"cells":["60","",""],"unconfirmed":[0,1,2]},
  ],
  status: "unconfirmed",
};
