// Made from data/published by the table build. Never edit by hand.
import type { TableData } from "../../core/table.js";

export const likeJointResistance: TableData = {
  id: "like-joint-resistance",
  title: "how far the resistance of a joint may be above the lowest of its like before it is looked into",
  source: {"standard":"NETA ATS","edition":"2021","locator":"Section 7, test values of bolted connections"},
  digest: "sha256:9021dbdab68d2095657c710adb0965e21edde6774510386ebcfcb9c347b4ce03",
  unit: "%",
  rowKey: {"kind":"term"},
  columns: [
    {"id":"deviationPercent","title":"deviation from similar joints, as a share of the lowest value","unit":"%"},
  ],
  rows: [
    {"key":["bolted connections"],"cells":["50"],"unconfirmed":[0]},
  ],
  status: "unconfirmed",
};
