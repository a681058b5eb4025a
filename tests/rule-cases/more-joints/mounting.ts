import type { MoreJoint } from "./more-joint.js";

export const MOUNTING_JOINTS: readonly MoreJoint[] = [
  ...(["10 AWG", "8 AWG", "6 AWG", "4 AWG", "2 AWG", "1 AWG", "16 mm2"] as const).map(
    (size): MoreJoint => ({
      rule: "pin-landing",
      name: `the pin counts as ${size}`,
      from: 30,
      change: ({ connector }) => {
        connector.pin = { size, metal: "copper" };
      },
    }),
  ),
  {
    rule: "pin-landing",
    name: "an aluminum pin in a terminal for copper",
    from: 30,
    change: ({ joint, connector }) => {
      connector.pin = { size: "4 AWG", metal: "aluminum" };
      if (joint.equipment?.terminal !== undefined) joint.equipment.terminal.metalMarking = "CU7";
    },
  },
  {
    rule: "pin-landing",
    name: "the terminal's mark is not known",
    from: 30,
    change: ({ joint }) => {
      delete joint.equipment?.terminal?.metalMarking;
    },
  },
  {
    rule: "pin-landing",
    name: "the terminal names no size",
    from: 30,
    change: ({ joint }) => {
      for (const opening of joint.equipment?.terminal?.openings ?? []) opening.ranges = [];
    },
  },
  {
    rule: "pin-landing",
    name: "the pin is not described",
    from: 30,
    change: ({ connector }) => {
      delete connector.pin;
      connector.family = "pin-adapter";
    },
  },
  ...([1.5, 2] as const).map(
    (spacing): MoreJoint => ({
      rule: "stud-and-holes",
      name: `the holes are ${String(spacing)} in apart and the bolts 1.75`,
      from: 23,
      change: ({ connector }) => {
        if (connector.mounting.kind === "pad") connector.mounting.pattern.spacing = { value: spacing, unit: "in" };
      },
    }),
  ),
];
