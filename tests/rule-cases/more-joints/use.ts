import type { Draft } from "../../oracle/draft.js";
import type { MoreJoint } from "./more-joint.js";

const splicer = (
  draft: Draft,
  size: string,
  metal: "copper" | "aluminum",
  stranding: "solid" | "class-B" | "unknown",
) => {
  draft.connector.listings = [{ standard: "UL 486C" }];
  draft.joint.conductors = [{ count: 1, metal, size, stranding, insulation: "THHN" }];
};

export const USE_JOINTS: readonly MoreJoint[] = [
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
    rule: "connector-function",
    name: "the connector is stated for nothing",
    from: 0,
    change: ({ connector }) => {
      connector.functions = [];
    },
  },
];
