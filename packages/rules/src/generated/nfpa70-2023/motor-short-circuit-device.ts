// Made from data/published by the table build. Never edit by hand.
import type { TableData } from "../../core/table.js";

export const motorShortCircuitDevice: TableData = {
  id: "motor-short-circuit-device",
  title: "largest rating or setting of the short-circuit device of a motor branch circuit, in percent of the full-load current",
  source: {"standard":"NFPA 70","edition":"2023","locator":"Table 430.52(C)(1)"},
  digest: "sha256:9cfbe47cabc20ceb9cc7b3f5cfffa6d1b578d85c651e1b9240a88e36245d427f",
  unit: "%",
  rowKey: {"kind":"term"},
  columns: [
    {"id":"nontimeDelayFuse","title":"nontime-delay fuse","unit":"%"},
    {"id":"timeDelayFuse","title":"dual-element (time-delay) fuse","unit":"%"},
    {"id":"instantaneousTrip","title":"instantaneous-trip breaker","unit":"%"},
    {"id":"inverseTime","title":"inverse-time breaker","unit":"%"},
  ],
  rows: [
    {"key":["single-phase"],"cells":["300","175","800","250"]},
    {"key":["polyphase"],"cells":["300","175","800","250"]},
    {"key":["squirrel-cage"],"cells":["300","175","800","250"]},
    {"key":["squirrel-cage-design-b-efficient"],"cells":["300","175","1100","250"]},
    {"key":["synchronous"],"cells":["300","175","800","250"]},
    {"key":["wound-rotor"],"cells":["150","150","800","150"]},
    {"key":["direct-current"],"cells":["150","150","250","150"]},
  ],
  status: "published",
};
