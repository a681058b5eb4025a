// Made from data/published by the table build. Never edit by hand.
import type { TableData } from "../../core/table.js";

export const terminalTorqueIec: TableData = {
  id: "terminal-torque-iec",
  title: "torque for testing the mechanical strength of screw terminals",
  source: {"standard":"IEC 60947-1","edition":"2020","locator":"Table 4"},
  digest: "sha256:9b1191dc807f7f68dcedbb2fb98f8c38669e397bae5b040a27f93eaf371963c5",
  unit: "N-m",
  rowKey: {"kind":"term"},
  columns: [
    {"id":"columnI","title":"headless screw that does not protrude, or one a wider screwdriver cannot turn","unit":"N-m"},
    {"id":"columnII","title":"screw or nut tightened with a screwdriver","unit":"N-m"},
    {"id":"columnIII","title":"screw or nut tightened by other means","unit":"N-m"},
  ],
  rows: [
    {"key":["M2.5"],"cells":["0.2","0.4","0.4"],"unconfirmed":[0,1,2]},
    {"key":["M3"],"cells":["0.25","0.5","0.5"],"unconfirmed":[0,1,2]},
    {"key":["over 3.0 mm to 3.2 mm"],"cells":["0.3","0.6","0.6"],"unconfirmed":[0,1,2]},
    {"key":["M3.5"],"cells":["0.4","0.8","0.8"],"unconfirmed":[0]},
    {"key":["M4"],"cells":["0.7","1.2","1.2"],"unconfirmed":[0]},
    {"key":["M4.5"],"cells":["0.8","1.8","1.8"],"unconfirmed":[0,1,2]},
    {"key":["M5"],"cells":["0.8","2.0","2.0"],"unconfirmed":[0]},
    {"key":["M6"],"cells":["1.2","2.5","3.0"],"unconfirmed":[0,2]},
    {"key":["M8"],"cells":["2.5","3.5","6.0"],"unconfirmed":[0,1]},
    {"key":["M10"],"cells":["","4.0","10.0"],"unconfirmed":[0,1]},
    {"key":["M12"],"cells":["","","14.0"],"unconfirmed":[0,1]},
    {"key":["M14"],"cells":["","","19.0"],"unconfirmed":[0,1,2]},
    {"key":["M16"],"cells":["","","25.0"],"unconfirmed":[0,1]},
    {"key":["M20"],"cells":["","","36.0"],"unconfirmed":[0,1,2]},
    {"key":["M24"],"cells":["","","50.0"],"unconfirmed":[0,1,2]},
  ],
  status: "published",
};
