// Made from data/published by the table build. Never edit by hand.
import type { TableData } from "../../core/table.js";

export const boltTorqueNeta: TableData = {
  id: "bolt-torque-neta",
  title: "torque of bolted electrical connections where the maker gives none",
  source: {"standard":"NETA ATS","edition":"2021","locator":"Tables 100.12.1 to 100.12.4"},
  digest: "sha256:2b9a19a143c198fd687d26694d1806726e1fc71764ad97361468cb952330f100",
  unit: "lbf-ft",
  rowKey: {"kind":"term"},
  columns: [
    {"id":"steelGrade1And2","title":"heat-treated steel, zinc or cadmium plated, SAE grade 1 and 2","unit":"lbf-ft"},
    {"id":"steelGrade5","title":"heat-treated steel, zinc or cadmium plated, SAE grade 5","unit":"lbf-ft"},
    {"id":"steelGrade7","title":"heat-treated steel, zinc or cadmium plated, SAE grade 7","unit":"lbf-ft"},
    {"id":"steelGrade8","title":"heat-treated steel, zinc or cadmium plated, SAE grade 8","unit":"lbf-ft"},
    {"id":"siliconBronzeUnlubricated","title":"silicon bronze, not lubricated","unit":"lbf-ft"},
    {"id":"siliconBronzeLubricated","title":"silicon bronze, lubricated","unit":"lbf-ft"},
    {"id":"aluminumLubricated","title":"aluminum alloy, lubricated","unit":"lbf-ft"},
    {"id":"stainlessUncoated","title":"stainless steel, uncoated","unit":"lbf-ft"},
  ],
  rows: [
    {"key":["1/4"],"cells":["4","6","8","8","","","",""],"unconfirmed":[0,1,2,3,4,5,6,7]},
    {"key":["5/16"],"cells":["7","11","15","18","15","10","10","15"],"unconfirmed":[0,1,2,3,4,5,6,7]},
    {"key":["3/8"],"cells":["12","20","27","30","20","15","14","20"],"unconfirmed":[0,1,2,3,4,5,6,7]},
    {"key":["7/16"],"cells":["19","32","44","48","","","",""],"unconfirmed":[0,1,2,3,4,5,6,7]},
    {"key":["1/2"],"cells":["30","48","68","74","40","25","25","40"],"unconfirmed":[0,1,2,3,4,5,6,7]},
    {"key":["9/16"],"cells":["42","70","96","105","","","",""],"unconfirmed":[0,1,2,3,4,5,6,7]},
    {"key":["5/8"],"cells":["59","96","135","145","55","40","40","55"],"unconfirmed":[0,1,2,3,4,5,6,7]},
    {"key":["3/4"],"cells":["96","160","225","235","70","60","60",""],"unconfirmed":[0,1,2,3,4,5,6,7]},
    {"key":["7/8"],"cells":["150","240","350","380","","","",""],"unconfirmed":[0,1,2,3,4,5,6,7]},
    {"key":["1"],"cells":["225","370","530","570","","","",""],"unconfirmed":[0,1,2,3,4,5,6,7]},
  ],
  status: "unconfirmed",
};
