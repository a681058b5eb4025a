// Made from data/published by the table build. Never edit by hand.
import type { TableData } from "../../core/table.js";

export const physicalConstants: TableData = {
  id: "physical-constants",
  title: "constants for conductor calculations",
  source: {"standard":"physics","edition":"codata-and-handbooks","locator":"resistivity: IEC 60028 and IEC 60889; short circuit: ICEA P-32-382; circular mil: by definition"},
  digest: "sha256:69fd2228007e37ae6bee793c83e34a3e2d04e880a093f42b1bec941ceb619362",
  unit: "as listed",
  rowKey: {"kind":"term"},
  columns: [
    {"id":"value","title":"value","unit":"as listed"},
    {"id":"unit","title":"unit","unit":"term"},
  ],
  rows: [
    {"key":["copper resistivity at 20 C"],"cells":["0.017241","ohm mm2/m"]},
    {"key":["aluminum resistivity at 20 C"],"cells":["0.028264","ohm mm2/m"]},
    {"key":["copper temperature coefficient at 20 C"],"cells":["0.00393","1/K"],"unconfirmed":[0]},
    {"key":["aluminum temperature coefficient at 20 C"],"cells":["0.00403","1/K"],"unconfirmed":[0]},
    {"key":["copper temperature coefficient at 75 C"],"cells":["0.00323","1/K"],"unconfirmed":[0]},
    {"key":["aluminum temperature coefficient at 75 C"],"cells":["0.00330","1/K"],"unconfirmed":[0]},
    {"key":["copper inferred zero-resistance temperature"],"cells":["234.5","C below zero"]},
    {"key":["aluminum inferred zero-resistance temperature"],"cells":["228","C below zero"]},
    {"key":["copper short-circuit factor"],"cells":["0.0297","A2 s/cmil2"]},
    {"key":["aluminum short-circuit factor"],"cells":["0.0125","A2 s/cmil2"]},
    {"key":["copper short-circuit temperature constant"],"cells":["234","C"]},
    {"key":["aluminum short-circuit temperature constant"],"cells":["228","C"]},
    {"key":["circular mil"],"cells":["0.0005067075","mm2"]},
  ],
  status: "published",
};
