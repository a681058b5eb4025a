// Made from data/published by the table build. Never edit by hand.
import type { TableData } from "../../core/table.js";

export const conductorPropertiesSolid: TableData = {
  id: "conductor-properties-solid",
  title: "solid conductors: area, make-up and dc resistance",
  source: {"standard":"NFPA 70","edition":"2023","locator":"Chapter 9 Table 8"},
  digest: "sha256:020eb90250f20d7b4911a378777ccdeb2a759b8994f1f76134d91389e6b1ddcf",
  unit: "ohm/kft",
  rowKey: {"kind":"size"},
  columns: [
    {"id":"areaCmil","title":"conductor area","unit":"cmil"},
    {"id":"strands","title":"number of strands","unit":"strands"},
    {"id":"strandDiameterIn","title":"diameter of one strand","unit":"in"},
    {"id":"overallDiameterIn","title":"overall diameter","unit":"in"},
    {"id":"overallAreaIn2","title":"area of the overall circle","unit":"in2"},
    {"id":"dcCopperUncoatedOhmPerKft","title":"dc resistance at 75 C, uncoated copper","unit":"ohm/kft"},
    {"id":"dcCopperCoatedOhmPerKft","title":"dc resistance at 75 C, coated copper","unit":"ohm/kft"},
    {"id":"dcAluminumOhmPerKft","title":"dc resistance at 75 C, aluminum","unit":"ohm/kft"},
  ],
  rows: [
    {"key":["18 AWG"],"cells":["1620","1","","0.040","0.001","7.77","8.08","12.8"]},
    {"key":["16 AWG"],"cells":["2580","1","","0.051","0.002","4.89","5.08","8.05"]},
    {"key":["14 AWG"],"cells":["4110","1","","0.064","0.003","3.07","3.19","5.06"]},
    {"key":["12 AWG"],"cells":["6530","1","","0.081","0.005","1.93","2.01","3.18"]},
    {"key":["10 AWG"],"cells":["10380","1","","0.102","0.008","1.21","1.26","2.00"]},
    {"key":["8 AWG"],"cells":["16510","1","","0.128","0.013","0.764","0.786","1.26"]},
  ],
  status: "published",
};
