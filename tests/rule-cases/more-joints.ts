/** Joints for ways through a rule that the endless row does not take: one of its joints each, with a fact changed. */
import type { Draft } from "../oracle/draft.js";
import { generate } from "../oracle/generate.js";

export interface MoreJoint {
  readonly rule: string;
  readonly name: string;
  readonly from: number;
  readonly change: (draft: Draft) => void;
}

const splicer = (
  draft: Draft,
  size: string,
  metal: "copper" | "aluminum",
  stranding: "solid" | "class-B" | "unknown",
) => {
  draft.connector.listings = [{ standard: "UL 486C" }];
  draft.joint.conductors = [{ count: 1, metal, size, stranding, insulation: "THHN" }];
};

export const MORE_JOINTS: readonly MoreJoint[] = [
  {
    rule: "listing",
    name: "no listing is stated",
    from: 0,
    change: ({ connector }) => {
      connector.listings = [];
    },
  },
  // published: UL 486C is for copper up to 10 AWG and aluminum from 12 to 10 AWG, aluminum solid in the smallest only
  ...(
    [
      ["10 AWG", "copper", "solid"],
      ["8 AWG", "copper", "solid"],
      ["12 AWG", "aluminum", "solid"],
      ["14 AWG", "aluminum", "solid"],
      ["10 AWG", "aluminum", "solid"],
      ["8 AWG", "aluminum", "solid"],
      ["10 AWG", "aluminum", "unknown"],
      ["6 AWG", "aluminum", "unknown"],
      ["6 AWG", "aluminum", "class-B"],
      ["1/0 AWG", "copper", "class-B"],
      ["500 kcmil", "copper", "class-B"],
      ["600 kcmil", "copper", "class-B"],
    ] as const
  ).map(
    ([size, metal, stranding]): MoreJoint => ({
      rule: "listing",
      name: `a splicing connector on ${size} ${stranding} ${metal}`,
      from: 0,
      change: (draft) => {
        splicer(draft, size, metal, stranding);
      },
    }),
  ),
  {
    rule: "listing",
    name: "a splicing connector on 16 mm2",
    from: 0,
    change: (draft) => {
      splicer(draft, "16 mm2", "copper", "solid");
    },
  },
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
  {
    rule: "enclosure-fill",
    name: "the section is zero",
    from: 41,
    change: ({ joint }) => {
      if (joint.equipment?.space !== undefined) joint.equipment.space.section = { value: 0, unit: "in2" };
    },
  },
  {
    rule: "insulating-cover",
    name: "a cover is named",
    from: 9,
    change: ({ connector }) => {
      connector.coverPart = "C-4";
    },
  },
  ...(["wet", "direct-burial", "dry"] as const).flatMap((location) =>
    [3, 2].map(
      (openings): MoreJoint => ({
        rule: "insulating-cover",
        name: `insulated, ${openings} further openings, ${location}`,
        from: 9,
        change: ({ joint, connector }) => {
          connector.insulated = true;
          const [opening] = connector.openings;
          if (opening !== undefined) connector.openings.push({ ...opening, id: "further", count: openings - 1 });
          joint.place = { ...joint.place, location };
        },
      }),
    ),
  ),
  {
    rule: "rework",
    name: "a pressed joint",
    from: 60,
    change: ({ connector }) => {
      connector.construction = "compression";
      connector.screws = [];
      for (const opening of connector.openings) delete opening.screw;
    },
  },
  {
    rule: "connector-function",
    name: "the connector is stated for nothing",
    from: 0,
    change: ({ connector }) => {
      connector.functions = [];
    },
  },
];

/** The joint as it is asked. */
export function moreJoint({ from, change }: MoreJoint): Draft {
  const { joint, connector, basis } = structuredClone(generate(from));
  change({ joint, connector, basis });
  return { joint, connector, basis };
}
