/** Places, metals that touch, voltage, parallel legs and the line side. */
import type { Basis, Joint } from "@landfast/rules";
import {
  BASIS_2017,
  BASIS_2023,
  conductor,
  equipmentLug,
  finding,
  opening,
  pressedLug,
  splice,
  spliced,
  termination,
  verdict,
} from "./described-joint.js";
import type { SiteQuestion } from "./site-question.js";

const TWIST_ON = splice(
  [
    {
      id: "shell",
      count: 1,
      ranges: [{ from: "18 AWG", to: "10 AWG", strandings: ["solid", "class-B"] }],
      conductorsMax: 2,
      shared: { sameSize: false, sameMetal: true, metals: ["copper"] },
      combinations: [[{ size: "12 AWG", count: 2 }]],
      screw: "shell",
    },
  ],
  {
    description: "twist-on splice",
    family: "twist-on",
    construction: "twist-on",
    metalMarking: "CU",
    listings: [{ standard: "UL 486C" }],
    openingsApart: false,
    screws: [{ id: "shell", drive: { kind: "hand" } }],
    reusable: false,
  },
);
const WET_TWIST_ON = { ...TWIST_ON, places: ["dry", "damp", "wet"] } as const;
const BURIAL_TWIST_ON = { ...TWIST_ON, places: ["dry", "damp", "wet", "direct-burial"] } as const;

const TWO_12 = [conductor("12 AWG", { count: 2 })];
const IN_HANDHOLE = spliced(TWO_12, { equipment: { tag: "HH-1", kind: "handhole" }, place: { location: "wet" } });
const IN_TRENCH = spliced(TWO_12, {
  equipment: { tag: "TR-1", kind: "trench" },
  place: { location: "direct-burial" },
});

const COPPER_AND_ALUMINUM = [
  conductor("10 AWG", { stranding: "solid" }),
  conductor("10 AWG", { stranding: "solid", metal: "aluminum" }),
];
const ONE_CHAMBER = splice([
  opening("12 AWG", "10 AWG", {
    conductorsMax: 2,
    shared: { sameSize: false, sameMetal: false, metals: ["copper", "aluminum"] },
  }),
]);
const PLAIN_CHAMBER = { ...ONE_CHAMBER, openingsApart: false };
const INTERMIX = { ...PLAIN_CHAMBER, metalMarking: "AL-CU-INTERMIX-DRY" };

function legs(size: string, alike: boolean): string {
  const joint = termination([conductor(size, { count: 2 })], {
    circuit: {
      voltageV: 480,
      loadA: 150,
      sets: 2,
      protection: { kind: "device", ratingA: 200 },
      parallelLegsAlike: alike,
    },
  });
  return verdict(
    joint,
    equipmentLug("6 AWG", "250 kcmil", { openings: [opening("6 AWG", "250 kcmil", { count: 2 })] }),
  );
}

const ON_SERVICE = spliced(
  [conductor("250 kcmil", { duty: "run", uncut: true }), conductor("2 AWG", { duty: "tap" })],
  {
    function: "tap",
    circuit: {
      voltageV: 480,
      loadA: 80,
      sets: 1,
      protection: { kind: "service" },
      endTerminalTemperature: { value: 75, unit: "Cel" },
    },
  },
);

function piercing(lineSide: "marked" | "unmarked", basis: Basis): string {
  return verdict(
    ON_SERVICE,
    splice(
      [
        opening("2/0 AWG", "500 kcmil", { id: "run", duty: "run", screw: "bolt" }),
        opening("8 AWG", "1/0 AWG", { id: "tap", duty: "tap", screw: "bolt" }),
      ],
      {
        description: "piercing tap",
        family: "piercing-tap",
        construction: "insulation-piercing",
        functions: ["tap"],
        lineSide,
        screws: [{ id: "bolt", drive: { kind: "breakaway" }, torque: "unmarked" }],
        reusable: false,
      },
    ),
    basis,
  );
}

function lever(voltageV: number): string {
  return verdict(
    spliced(TWO_12),
    splice(
      [
        {
          id: "port",
          count: 3,
          ranges: [{ from: "22 AWG", to: "12 AWG", strandings: ["solid", "class-B"] }],
          conductorsMax: 1,
        },
      ],
      {
        description: "lever splice",
        family: "lever-splice",
        construction: "spring",
        metalMarking: "CU",
        listings: [{ standard: "UL 486C" }],
        screws: [],
        voltageV,
      },
    ),
  );
}

function lugOn(padMetal: NonNullable<Joint["equipment"]>["padMetal"], plating: string): string {
  const joint = termination([conductor("1 AWG")], {
    equipment: {
      tag: "BUS-1",
      kind: "switchboard",
      terminalTemperature: { value: 75, unit: "Cel" },
      stud: { holes: 1, bolt: "3/8" },
      ...(padMetal === undefined ? {} : { padMetal }),
    },
  });
  return verdict(joint, pressedLug("1 AWG", { bodyMetal: "copper", plating }));
}

export const PLACE_QUESTIONS: readonly SiteQuestion[] = [
  {
    question: "Ordinary twist-ons in this handhole?",
    answer: "No, only a splice listed for wet places.",
    kind: "published",
    source: "NFPA 70-2023 314.30(C)",
    asked: () => [verdict(IN_HANDHOLE, TWIST_ON), verdict(IN_HANDHOLE, WET_TWIST_ON)],
    expected: ["reject: place-listing", "accept"],
  },
  {
    question: "A splice listed for wet places straight in the trench?",
    answer: "No, only one listed for direct burial.",
    kind: "published",
    source: "NFPA 70-2023 110.14(B), 300.5(E)",
    asked: () => [verdict(IN_TRENCH, WET_TWIST_ON), verdict(IN_TRENCH, BURIAL_TWIST_ON)],
    expected: ["reject: place-listing", "accept"],
  },
  {
    question: "May the joint be hidden in the wall?",
    answer: "No: a splice lies in a box that stays accessible. One listed for it may be buried straight in the earth.",
    kind: "published",
    source: "NFPA 70-2023 300.15, 314.29, 300.5(E)",
    asked: () => [
      verdict(spliced(TWO_12, { place: { location: "dry", accessible: false } }), TWIST_ON),
      verdict(spliced(TWO_12, { place: { location: "dry", accessible: true } }), TWIST_ON),
      verdict({ ...IN_TRENCH, place: { location: "direct-burial", accessible: false } }, BURIAL_TWIST_ON),
      finding(spliced(TWO_12), TWIST_ON).dutiesOnSite.some(({ duty }) => duty === "keep-accessible"),
    ],
    expected: ["reject: accessible-joint", "accept", "accept", true],
  },
  {
    question: "Copper and aluminum in one hole, dry box?",
    answer: "Only with the mark for intermixing.",
    kind: "published",
    source: "NFPA 70-2023 110.14",
    asked: () => [
      verdict(spliced(COPPER_AND_ALUMINUM), PLAIN_CHAMBER),
      verdict(spliced(COPPER_AND_ALUMINUM), INTERMIX),
    ],
    expected: ["reject: unlike-metals", "accept"],
  },
  {
    question: "The same in a crawl space?",
    answer: "No: the mark is for dry places.",
    kind: "published",
    source: "UL 486A-486B, mark for intermixing in dry locations",
    asked: () => verdict(spliced(COPPER_AND_ALUMINUM, { place: { location: "damp" } }), INTERMIX),
    expected: "reject: unlike-metals",
  },
  {
    question: "A 300 V lever splice on 480 V?",
    answer: "No.",
    kind: "published",
    source: "NFPA 70-2023 110.4",
    asked: () => [lever(300), lever(600)],
    expected: ["reject: voltage-rating", "accept"],
  },
  {
    question: "May I run two 2 AWG in parallel?",
    answer: "No, 1/0 AWG and larger.",
    kind: "published",
    source: "NFPA 70-2023 310.10(G)",
    asked: () => [legs("2 AWG", true), legs("1/0 AWG", true)],
    expected: ["reject: parallel-legs", "accept"],
  },
  {
    question: "One leg crimped, the other in a set-screw?",
    answer: "No: both are ended in the same manner.",
    kind: "published",
    source: "NFPA 70-2023 310.10(G)(2)",
    asked: () => legs("1/0 AWG", false),
    expected: "reject: parallel-legs",
  },
  {
    question: "A tap ahead of the main with this piercing connector?",
    answer: "Only if marked for the line side, from 2023 on; under 2017 its listing and 110.14 are enough.",
    kind: "published",
    source: "NFPA 70 230.46 of the 2017, 2020 and 2023 editions",
    asked: () => [
      piercing("unmarked", BASIS_2023),
      piercing("marked", BASIS_2023),
      piercing("unmarked", { ruleSet: "nfpa70", edition: "2020", installedOn: "2022-12-31" }),
      piercing("unmarked", { ruleSet: "nfpa70", edition: "2020", installedOn: "2023-01-01" }),
      piercing("unmarked", BASIS_2017),
    ],
    expected: ["reject: line-side-mark", "accept", "accept", "reject: line-side-mark", "accept"],
  },
  {
    question: "A copper lug on an aluminum bus?",
    answer: "A plated lug, compound and the hardware for that pair of metals; not bare copper on aluminum.",
    kind: "published",
    source: "NFPA 70-2023 110.14, 110.3(B); NEMA CC 1 on plating, from memory",
    asked: () => [
      lugOn({ metal: "aluminum", plating: "none" }, "none"),
      lugOn({ metal: "aluminum", plating: "none" }, "tin"),
      lugOn({ metal: "copper", plating: "none" }, "none"),
      lugOn(undefined, "none"),
      lugOn(undefined, "tin"),
    ],
    expected: [
      "reject: lug-on-pad",
      "accept",
      "accept",
      "needs-information: lug-on-pad (joint/equipment/padMetal)",
      "accept",
    ],
  },
];
