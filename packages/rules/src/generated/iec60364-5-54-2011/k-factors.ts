// Made from data/published by the table build. Never edit by hand.
import type { TableData } from "../../core/table.js";

export const kFactors: TableData = {
  id: "k-factors",
  title: "k factors for the heating of conductors by short-circuit current",
  source: {"standard":"IEC 60364-5-54","edition":"2011","locator":"Annex A, Tables A.54.2 and A.54.4"},
  digest: "sha256:030cef62725c35d4a72c97ff886b9373bc480da9f88beccf1180dcb1c5a3d968",
  unit: "A s^0.5/mm2",
  rowKey: {"kind":"term"},
  columns: [
    {"id":"initialC","title":"temperature at the start","unit":"C"},
    {"id":"finalC","title":"highest temperature at the end","unit":"C"},
    {"id":"copper","title":"copper","unit":"A s^0.5/mm2"},
    {"id":"aluminum","title":"aluminum","unit":"A s^0.5/mm2"},
    {"id":"steel","title":"steel","unit":"A s^0.5/mm2"},
  ],
  rows: [
    {"key":["separate, PVC 70 C, up to 300 mm2"],"cells":["30","160","143","95","52"],"unconfirmed":[0,1]},
    {"key":["separate, PVC 70 C, over 300 mm2"],"cells":["30","140","133","88","49"],"unconfirmed":[0,1,4]},
    {"key":["separate, PVC 90 C, up to 300 mm2"],"cells":["30","160","143","95","52"],"unconfirmed":[0,1,2,3,4]},
    {"key":["separate, PVC 90 C, over 300 mm2"],"cells":["30","140","133","88","49"],"unconfirmed":[0,1,2,3,4]},
    {"key":["separate, XLPE or EPR 90 C"],"cells":["30","250","176","116","64"],"unconfirmed":[0,1]},
    {"key":["separate, rubber 60 C"],"cells":["30","200","159","105","58"],"unconfirmed":[0,1,2,3,4]},
    {"key":["separate, rubber 85 C"],"cells":["30","220","166","110","60"],"unconfirmed":[0,1,2,3,4]},
    {"key":["separate, silicone rubber"],"cells":["30","350","201","133","73"],"unconfirmed":[0,1,2,3,4]},
    {"key":["bundled, PVC 70 C, up to 300 mm2"],"cells":["70","160","115","76","42"],"unconfirmed":[0,1,3,4]},
    {"key":["bundled, PVC 70 C, over 300 mm2"],"cells":["70","140","103","68","37"],"unconfirmed":[0,1,3,4]},
    {"key":["bundled, PVC 90 C, up to 300 mm2"],"cells":["90","160","100","66","36"],"unconfirmed":[0,1,3,4]},
    {"key":["bundled, PVC 90 C, over 300 mm2"],"cells":["90","140","86","57","31"],"unconfirmed":[0,1,3,4]},
    {"key":["bundled, XLPE or EPR 90 C"],"cells":["90","250","143","94","52"],"unconfirmed":[0,1,3,4]},
    {"key":["bundled, rubber 60 C"],"cells":["60","200","141","93","51"],"unconfirmed":[0,1,3,4]},
    {"key":["bundled, rubber 85 C"],"cells":["85","220","134","89","48"],"unconfirmed":[0,1,2,3,4]},
    {"key":["bundled, silicone rubber"],"cells":["180","350","132","87","47"],"unconfirmed":[0,1,2,3,4]},
  ],
  status: "published",
};
