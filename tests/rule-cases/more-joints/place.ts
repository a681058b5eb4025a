import type { MoreJoint } from "./more-joint.js";

export const PLACE_JOINTS: readonly MoreJoint[] = [
  {
    rule: "deteriorating-agent",
    name: "the connector is stated to withstand it",
    from: 251,
    change: ({ connector }) => {
      connector.withstands = ["salt", "hydrogen sulfide"];
    },
  },
  {
    rule: "deteriorating-agent",
    name: "the connector is stated to withstand another",
    from: 251,
    change: ({ connector }) => {
      connector.withstands = ["salt"];
    },
  },
  {
    rule: "deteriorating-agent",
    name: "the connector is stated to withstand nothing",
    from: 251,
    change: ({ connector }) => {
      connector.withstands = [];
    },
  },
];
