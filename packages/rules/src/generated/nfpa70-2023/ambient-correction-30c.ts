// Made from data/published by the table build. Never edit by hand.
import type { TableData } from "../../core/table.js";

export const ambientCorrection30c: TableData = {
  id: "ambient-correction-30c",
  title: "ambient correction of ampacities based on 30 C",
  source: {"standard":"NFPA 70","edition":"2023","locator":"Table 310.15(B)(1)(1)"},
  digest: "sha256:71c8567afed2d220d3703fcbd5197ab5aabfef11345c34a9835cd427ce31afa2",
  unit: "1",
  rowKey: {"kind":"interval","unit":"Cel"},
  columns: [
    {"id":"t60","title":"conductor rated 60 C","unit":"1"},
    {"id":"t75","title":"conductor rated 75 C","unit":"1"},
    {"id":"t90","title":"conductor rated 90 C","unit":"1"},
  ],
  rows: [
    {"key":["","10"],"cells":["1.29","1.20","1.15"]},
    {"key":["10","15"],"cells":["1.22","1.15","1.12"]},
    {"key":["15","20"],"cells":["1.15","1.11","1.08"]},
    {"key":["20","25"],"cells":["1.08","1.05","1.04"]},
    {"key":["25","30"],"cells":["1.00","1.00","1.00"]},
    {"key":["30","35"],"cells":["0.91","0.94","0.96"]},
    {"key":["35","40"],"cells":["0.82","0.88","0.91"]},
    {"key":["40","45"],"cells":["0.71","0.82","0.87"]},
    {"key":["45","50"],"cells":["0.58","0.75","0.82"]},
    {"key":["50","55"],"cells":["0.41","0.67","0.76"]},
    {"key":["55","60"],"cells":["","0.58","0.71"]},
    {"key":["60","65"],"cells":["","0.47","0.65"]},
    {"key":["65","70"],"cells":["","0.33","0.58"]},
    {"key":["70","75"],"cells":["","","0.50"]},
    {"key":["75","80"],"cells":["","","0.41"]},
    {"key":["80","85"],"cells":["","","0.29"]},
  ],
  status: "published",
};
