/** Grounds and electrodes. */
import type { Joint } from "@landfast/rules";
import { results } from "./calculated.js";
import { clamp, conductor, opening, splice, spliced, termination, verdict } from "./described-joint.js";
import type { SiteQuestion } from "./site-question.js";

const SERVICE = { size: "3/0 AWG", metal: "copper", sets: 1 } as const;

function toElectrode(electrode: NonNullable<Joint["grounding"]>["electrode"], count: number): Joint {
  return termination([conductor("6 AWG", { count, stranding: "solid", insulation: "bare" })], {
    role: "electrode-conductor",
    equipment: { tag: "GE-1", kind: "electrode" },
    place: { location: "direct-burial" },
    grounding: { ...(electrode !== undefined && { electrode }), service: SERVICE, soleConnection: true },
  });
}

const IN_FOOTING: Joint = {
  ...toElectrode("concrete-encased-rebar", 1),
  conductors: [conductor("4 AWG", { stranding: "solid", insulation: "bare" })],
  place: { location: "concrete" },
};
const FOR_REBAR = clamp({
  description: "rebar clamp",
  family: "rebar-clamp",
  grounding: { listed: true, electrodes: ["concrete-encased-rebar"], conductorsPerClamp: "unmarked" },
});

const TOO_SHORT = spliced([conductor("4 AWG", { count: 2, stranding: "solid", insulation: "bare" })], {
  role: "electrode-conductor",
  grounding: { electrode: "water-pipe", service: SERVICE, soleConnection: true },
});
const SPLIT_BOLT = splice(
  [opening("8 AWG", "2 AWG", { id: "run", screw: "nut" }), opening("8 AWG", "2 AWG", { id: "tap", screw: "nut" })],
  {
    family: "split-bolt",
    construction: "split-bolt",
    metalMarking: "CU",
    insulated: false,
    openingsApart: false,
    screws: [{ id: "nut", drive: { kind: "split-bolt" }, torque: "unmarked" }],
    grounding: { listed: true, electrodes: [] },
  },
);
const PRESSED = splice(
  [
    {
      id: "barrel",
      count: 2,
      ranges: [{ from: "4 AWG", to: "4 AWG", strandings: ["solid", "class-B"] }],
      conductorsMax: 1,
    },
  ],
  {
    description: "compression sleeve, listed for grounding",
    family: "compression-sleeve",
    construction: "compression",
    metalMarking: "CU",
    insulated: false,
    screws: [],
    listings: [{ standard: "UL 467" }],
    grounding: { listed: true, electrodes: [] },
    tooling: { tool: "press A", die: "die 12", crimps: 2 },
    reusable: false,
  },
);

function raised(metal: "copper" | "aluminum"): unknown {
  return results("equipment-ground", {
    deviceA: 225,
    metal,
    phases: { metal: "aluminum", minimum: "300 kcmil", installed: "500 kcmil", sets: 1, separateRaceways: false },
  });
}

export const GROUNDING_QUESTIONS: readonly SiteQuestion[] = [
  {
    question: "How large a ground when I went from 300 to 500 kcmil aluminum on a 225 A device?",
    answer: "1 AWG copper (69.6 kcmil needed) or 2/0 AWG aluminum (110.6 needed).",
    kind: "hand",
    source:
      "Table 250.122, 225 A: 4 AWG copper, 2 AWG aluminum; 41.74 x 500 / 300 = 69.57, 66.36 x 500 / 300 = 110.6 kcmil",
    asked: () => [raised("copper"), raised("aluminum")],
    expected: [{ "smallest size": "1 AWG" }, { "smallest size": "2/0 AWG" }],
  },
  {
    question: "A ground in each of three parallel PVC raceways, 800 A: what size?",
    answer: "1/0 AWG copper in every raceway.",
    kind: "published",
    source: "NFPA 70-2023 250.122(F), Table 250.122",
    asked: () =>
      results("equipment-ground", {
        deviceA: 800,
        metal: "copper",
        phases: { metal: "copper", installed: "300 kcmil", sets: 3, separateRaceways: true },
      }),
    expected: { "smallest size": "1/0 AWG", "grounds of this size": 3 },
  },
  {
    question: "Is the rod clamp all right on rebar inside the footing?",
    answer: "Only a clamp listed for rebar; one marked for direct burial also serves in concrete.",
    kind: "published",
    source: "NFPA 70-2023 250.70",
    asked: () => [verdict(IN_FOOTING, clamp()), verdict(IN_FOOTING, FOR_REBAR)],
    expected: ["reject: electrode-connection", "accept"],
  },
  {
    question: "Two electrode conductors under one acorn clamp?",
    answer: "No, unless it is listed for two.",
    kind: "published",
    source: "NFPA 70-2023 250.70",
    asked: () => [
      verdict(toElectrode("copper-bonded-rod", 2), clamp()),
      verdict(
        toElectrode("copper-bonded-rod", 2),
        clamp({
          grounding: { listed: true, electrodes: ["copper-bonded-rod"], conductorsPerClamp: 2 },
          openings: [
            opening("8 AWG", "4 AWG", {
              conductorsMax: 2,
              screw: "bolt",
              shared: { sameSize: true, sameMetal: true },
            }),
          ],
        }),
      ),
    ],
    expected: ["reject: electrode-connection, conductors-per-opening", "accept"],
  },
  {
    question: "A clamp for copper-bonded rod on a stainless rod?",
    answer: "No: it must be listed for the rod's material.",
    kind: "published",
    source: "NFPA 70-2023 250.70",
    asked: () => [
      verdict(toElectrode("stainless-rod", 1), clamp()),
      verdict(toElectrode("copper-bonded-rod", 1), clamp()),
    ],
    expected: ["reject: electrode-connection", "accept"],
  },
  {
    question: "The electrode conductor is 2 ft short: a split bolt?",
    answer: "No: a compression connector listed for grounding that cannot be undone, or a weld.",
    kind: "published",
    source: "NFPA 70-2023 250.64(C)",
    asked: () => [verdict(TOO_SHORT, SPLIT_BOLT), verdict(TOO_SHORT, PRESSED)],
    expected: ["reject: electrode-splice", "accept"],
  },
];
