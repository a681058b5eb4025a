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
  {
    rule: "accessible-joint",
    name: "a weld on structural steel is out of reach",
    from: 141,
    change: ({ joint, connector }) => {
      joint.place = { location: "dry", accessible: false };
      joint.grounding = { ...joint.grounding, electrode: "building-steel", bonding: "electrode-system" };
      connector.construction = "weld";
    },
  },
  {
    rule: "accessible-joint",
    name: "it is not given what the jumper bonds",
    from: 141,
    change: ({ joint }) => {
      joint.role = "bonding";
      joint.grounding = { electrode: "copper-bonded-rod" };
    },
  },
  {
    rule: "accessible-joint",
    name: "it is not known whether the splice in the earth is listed for it",
    from: 473,
    change: ({ connector }) => {
      delete connector.places;
    },
  },
  {
    rule: "accessible-joint",
    name: "the splice in the earth lies in a box",
    from: 473,
    change: ({ joint }) => {
      joint.equipment = { tag: "JB-1", kind: "box" };
    },
  },
];
