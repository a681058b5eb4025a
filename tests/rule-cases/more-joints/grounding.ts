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
  {
    rule: "bonding-jumper-size",
    name: "the jumper is smaller than any supply asks for",
    from: 12,
    change: ({ joint }) => {
      for (const conductor of joint.conductors) conductor.size = "10 AWG";
    },
  },
  {
    rule: "electrode-conductor-size",
    name: "it serves a ring of its own size alone",
    from: 47,
    change: ({ joint }) => {
      joint.grounding = { ...joint.grounding, soleConnection: true };
    },
  },
  {
    rule: "electrode-conductor-size",
    name: "it is tapped for one enclosure",
    from: 87,
    change: ({ joint }) => {
      joint.function = "tap";
      for (const conductor of joint.conductors) Object.assign(conductor, { duty: "tap", size: "4 AWG" });
      joint.grounding = {
        ...joint.grounding,
        tapService: { size: "3/0 AWG", metal: "copper", sets: 1 },
      };
    },
  },
  {
    rule: "electrode-connection",
    name: "a clamp is listed for no electrode, and which one it holds is not given",
    from: 6,
    change: ({ joint, connector }) => {
      delete joint.grounding;
      connector.grounding = { listed: false, electrodes: ["water-pipe"] };
    },
  },
  {
    rule: "electrode-connection",
    name: "a clamp in a box, and which electrode it holds is not given",
    from: 6,
    change: ({ joint }) => {
      delete joint.grounding;
      joint.equipment = { tag: "B-1", kind: "box" };
    },
  },
  {
    rule: "electrode-connection",
    name: "two conductors under a clamp of no known number",
    from: 6,
    change: ({ joint, connector }) => {
      for (const conductor of joint.conductors) conductor.count = 2;
      connector.grounding = { listed: true, electrodes: ["water-pipe"] };
    },
  },
  {
    rule: "equipment-ground-size",
    name: "the phases are smaller than would be enough",
    from: 48,
    change: ({ joint }) => {
      if (joint.upsizing !== undefined) joint.upsizing.minimum = { ...joint.upsizing.minimum, size: "4/0 AWG" };
    },
  },
];
