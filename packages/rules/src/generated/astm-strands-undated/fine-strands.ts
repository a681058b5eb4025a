// Made from data/published by the table build. Never edit by hand.
import type { TableData } from "../../core/table.js";

export const fineStrands: TableData = {
  id: "fine-strands",
  title: "number of strands of the concentric class D and of the rope-lay classes G and H",
  source: {"standard":"ASTM B8, B172, B173, B174","edition":"undated","locator":"strand counts by size, B8 class D and B173 classes G and H"},
  digest: "sha256:aee32cfb0ce881c7b4f9d91fe36d7c31ccea7f8d00d8e5055de6805aacbb768c",
  unit: "strands",
  rowKey: {"kind":"size-range"},
  columns: [
    {"id":"classD","title":"copper, class D","unit":"strands"},
    {"id":"classG","title":"copper, class G","unit":"strands"},
    {"id":"classH","title":"copper, class H","unit":"strands"},
  ],
  rows: [
    {"key":["14 AWG","10 AWG"],"cells":["37","",""],"unconfirmed":[0,1,2]},
    {"key":["8 AWG","2 AWG"],"cells":["37","49","133"],"unconfirmed":[0,1,2]},
    {"key":["1 AWG","4/0 AWG"],"cells":["61","133","259"],"unconfirmed":[0,1,2]},
    {"key":["250 kcmil","500 kcmil"],"cells":["91","259","427"],"unconfirmed":[0,1,2]},
    {"key":["600 kcmil","1000 kcmil"],"cells":["127","427","703"],"unconfirmed":[0,1,2]},
  ],
  status: "unconfirmed",
};
