import type { MoreJoint } from "./more-joint.js";

export const GROUNDING_JOINTS: readonly MoreJoint[] = [
  {
    rule: "grounding-connection",
    name: "no listing is stated",
    from: 0,
    change: ({ connector }) => {
      connector.listings = [];
    },
  },
  {
    rule: "aluminum-in-earth",
    name: "the place is not given",
    from: 15,
    change: ({ joint }) => {
      delete joint.place;
    },
  },
  {
    rule: "aluminum-in-earth",
    name: "copper-clad aluminum in concrete",
    from: 76,
    change: ({ joint }) => {
      for (const conductor of joint.conductors) conductor.metal = "copper-clad-aluminum";
      joint.place = { ...joint.place, location: "concrete" };
    },
  },
  {
    rule: "aluminum-in-earth",
    name: "a bare aluminum tap in the earth",
    from: 76,
    change: ({ joint }) => {
      joint.function = "tap";
      for (const conductor of joint.conductors) conductor.insulation = "bare";
    },
  },
];
