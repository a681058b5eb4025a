/** How many conductors an opening takes, of which metal and size. */
import { convertTo35, main } from "./calculated.js";
import {
  circuit,
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

const TWO_10_ALUMINUM = termination(
  [conductor("10 AWG", { count: 2, metal: "aluminum", stranding: "solid", insulation: "THHN/THWN-2" })],
  { circuit: circuit(18, 25) },
);
const PLAIN_SCREW = equipmentLug("14 AWG", "8 AWG", {
  metalMarking: "unmarked",
  openings: [opening("14 AWG", "8 AWG", { conductorsMax: "unmarked" })],
});
const MARKED_SCREW = equipmentLug("14 AWG", "8 AWG", {
  openings: [opening("14 AWG", "8 AWG", { conductorsMax: 2, shared: { sameSize: true, sameMetal: true } })],
});

/** A hole of the panel's bar, marked for two of 14 to 12 AWG. */
const BAR = equipmentLug("14 AWG", "4 AWG", {
  family: "neutral-bar",
  listings: [{ standard: "UL 67" }],
  openings: [
    opening("14 AWG", "4 AWG", {
      conductorsMax: 2,
      shared: { sameSize: true, sameMetal: true, from: "14 AWG", to: "12 AWG" },
    }),
  ],
});
const TWO_12 = [conductor("12 AWG", { count: 2, stranding: "solid" })];

const COMPACT = { metal: "aluminum", stranding: "compact" } as const;
const FEEDER = termination([conductor("4/0 AWG", COMPACT)], { circuit: circuit(150, 175) });
const BIG = termination([conductor("350 kcmil", COMPACT)], { circuit: circuit(200, 225) });

const FINE = termination([conductor("2/0 AWG", { stranding: "class-K" })], { circuit: circuit(150, 175) });
const CLASS_C = termination([conductor("2/0 AWG", { stranding: "class-C" })], { circuit: circuit(150, 175) });
const BASE_CASE = equipmentLug("6 AWG", "250 kcmil", {
  openings: [opening("6 AWG", "250 kcmil", { ranges: [{ from: "6 AWG", to: "250 kcmil", strandings: "unmarked" }] })],
});
const FOR_CLASS_K = equipmentLug("6 AWG", "250 kcmil", {
  openings: [opening("6 AWG", "250 kcmil", { ranges: [{ from: "6 AWG", to: "250 kcmil", strandings: ["class-K"] }] })],
});

const RAISED = termination([conductor("500 kcmil", { metal: "aluminum" })], { circuit: circuit(180, 225) });

const UPSIZED_20_A = termination([conductor("2 AWG")], { circuit: circuit(16, 20) });
const STUB = termination([conductor("10 AWG")], { circuit: circuit(16, 20) });
const BREAKER_TO_10 = equipmentLug("14 AWG", "10 AWG");
const SPLICE_TO_STUB = spliced([conductor("2 AWG"), conductor("10 AWG")], {
  circuit: circuit(16, 20, { endTerminalTemperature: { value: 75, unit: "Cel" } }),
});
const MULTI_TAP = splice([opening("12 AWG", "1/0 AWG", { count: 2 })]);

const SPLIT_BOLT = splice(
  [opening("8 AWG", "2 AWG", { id: "run", screw: "nut" }), opening("8 AWG", "2 AWG", { id: "tap", screw: "nut" })],
  {
    description: "split bolt",
    family: "split-bolt",
    construction: "split-bolt",
    metalMarking: "CU",
    insulated: false,
    openingsApart: false,
    screws: [{ id: "nut", drive: { kind: "split-bolt" }, torque: "unmarked" }],
  },
);

const BINDING_SCREW = equipmentLug("14 AWG", "8 AWG", {
  construction: "binding-screw",
  metalMarking: "CU",
});

const METRIC = termination(
  [
    conductor("35 mm2", {
      stranding: "iec-class-5",
      insulation: "other",
      insulationRating: { value: 90, unit: "Cel" },
    }),
  ],
  {
    circuit: circuit(100, 125),
  },
);

export const OPENINGS_QUESTIONS: readonly SiteQuestion[] = [
  {
    question: "May I land two 10 AWG aluminum under this breaker screw, which bears no mark?",
    answer: "No: one conductor and copper only, unless the breaker is marked for two and for aluminum.",
    kind: "published",
    source: "NFPA 70-2023 110.14(A); UL product guide for terminals",
    asked: () => [verdict(TWO_10_ALUMINUM, PLAIN_SCREW), verdict(TWO_10_ALUMINUM, MARKED_SCREW)],
    expected: ["reject: metal-marking, conductors-per-opening", "accept"],
  },
  {
    question: "Does a compact 4/0 aluminum go into a lug marked 6 to 3/0?",
    answer: "No. It is thin enough to slide in, but lugs are listed by size.",
    kind: "published",
    source: "UL 486E: ranges are sizes, and a compact form belongs to its own size",
    asked: () => [verdict(FEEDER, equipmentLug("6 AWG", "3/0 AWG")), verdict(FEEDER, equipmentLug("6 AWG", "4/0 AWG"))],
    expected: ["reject: wire-range", "accept"],
  },
  {
    question: "Does a compact 350 aluminum go into a breaker lug of 300 at most?",
    answer: "No: a pin, a reducer or a larger lug kit.",
    kind: "published",
    source: "UL 486E: ranges are sizes",
    asked: () => [verdict(BIG, equipmentLug("4 AWG", "300 kcmil")), verdict(BIG, equipmentLug("4 AWG", "350 kcmil"))],
    expected: ["reject: wire-range", "accept"],
  },
  {
    question: "Two neutrals in one hole of the panel's bar, whose label allows two 14 to 12?",
    answer: "No: the label is for grounds, each neutral has its own terminal.",
    kind: "published",
    source: "NFPA 70-2023 408.41",
    asked: () => verdict(termination(TWO_12, { role: "neutral" }), BAR),
    expected: "reject: neutral-terminal",
  },
  {
    question: "Two 12 AWG grounds in that hole?",
    answer: "Yes, the label allows two of that size.",
    kind: "published",
    source: "NFPA 70-2023 110.14(A) and the marking of the panel",
    asked: () => verdict(termination(TWO_12, { role: "equipment-ground" }), BAR),
    expected: "accept",
  },
  {
    question: "A fine-stranded battery cable in this mechanical lug?",
    answer: "No, unless the lug is identified for that class.",
    kind: "published",
    source: "NFPA 70-2023 110.14",
    asked: () => [verdict(FINE, equipmentLug("6 AWG", "250 kcmil")), verdict(FINE, FOR_CLASS_K)],
    expected: ["reject: strand-class", "accept"],
  },
  {
    question: "Is class C all right?",
    answer: "Yes: class B and C are the base case of every lug.",
    kind: "published",
    source: "NFPA 70-2023 110.14: what is finer than class B and C needs identification",
    asked: () => verdict(CLASS_C, BASE_CASE),
    expected: "accept",
  },
  {
    question: "May I twist and tin the fine strands so that the lug takes them?",
    answer: "No: it stays a fine-stranded conductor in a lug that is not identified for it.",
    kind: "published",
    source: "NFPA 70-2023 110.3(B) and 110.14",
    asked: () => {
      const { deciding, verdict: given } = finding(FINE, BASE_CASE);
      return { given, rule: deciding.rule, clause: deciding.cite.locator };
    },
    expected: { given: "reject", rule: "strand-class" },
  },
  {
    question: "The strands of 500 kcmil will not go into a lug to 350: may I cut six off?",
    answer: "No: it stays 500 kcmil, and an acceptance is for every strand.",
    kind: "published",
    source: "NFPA 70-2023 110.3(B), 110.14(A)",
    asked: () => ({
      trimmed: verdict(RAISED, equipmentLug("4 AWG", "350 kcmil")),
      told: finding(RAISED, equipmentLug("4 AWG", "500 kcmil")).dutiesOnSite.find(({ duty }) => duty === "insert-fully")
        ?.sentence,
    }),
    expected: {
      trimmed: "reject: wire-range",
      told: "Put every strand in, to the full depth of the opening; cut none off.",
    },
  },
  {
    question: "2 AWG was pulled for the drop, the 20 A breaker takes 10 AWG at most: what now?",
    answer:
      "Splice it to a 10 AWG stub in an insulated multi-tap; the stub is protected at 20 A. The ground follows: 2 AWG.",
    kind: "hand",
    source:
      "2 AWG 66.36 kcmil > 10 AWG 10.38; a block of 12 to 1/0 AWG takes both; 10 AWG may have 30 A, 20 <= 30; ground 6.53 x 66.36 / 6.53 = 66.36 kcmil, 2 AWG",
    asked: () => [
      verdict(UPSIZED_20_A, BREAKER_TO_10),
      verdict(SPLICE_TO_STUB, MULTI_TAP),
      verdict(STUB, BREAKER_TO_10),
      main("equipment-ground", {
        deviceA: 20,
        metal: "copper",
        phases: { metal: "copper", minimum: "12 AWG", installed: "2 AWG", sets: 1, separateRaceways: false },
      }),
    ],
    expected: ["reject: wire-range", "accept", "accept", "2 AWG"],
  },
  {
    question: "Three wires in this split bolt?",
    answer: "No: two, unless it is marked for more.",
    kind: "published",
    source: "NFPA 70-2023 110.14(A), one conductor a place unless identified",
    asked: () => [
      verdict(spliced([conductor("6 AWG", { count: 3 })]), SPLIT_BOLT),
      verdict(spliced([conductor("6 AWG", { count: 2 })]), SPLIT_BOLT),
    ],
    expected: ["reject: conductors-per-opening", "accept"],
  },
  {
    question: "An 8 AWG stranded around a binding screw?",
    answer: "No: 10 AWG and smaller only.",
    kind: "published",
    source: "NFPA 70-2023 110.14(A)",
    asked: () => [
      verdict(termination([conductor("8 AWG")]), BINDING_SCREW),
      verdict(termination([conductor("10 AWG")]), BINDING_SCREW),
    ],
    expected: ["reject: wire-range", "accept"],
  },
  {
    question: "A flexible lead of 35 mm2 in a lug for 6 to 2/0 AWG?",
    answer: "Not without a listing for 35 mm2 and its class; its area lies between 2 and 1 AWG, and that says nothing.",
    kind: "hand",
    source: "35 / 0.50671 = 69.07 kcmil, between 66.36 and 83.69; sizes of one series are not listed by the other",
    asked: () => ({
      listed: verdict(METRIC, equipmentLug("6 AWG", "2/0 AWG")),
      nearest: convertTo35(),
    }),
    expected: {
      listed:
        "needs-information: wire-range, strand-class, terminal-temperature, device-protection (joint/equipment/terminal/openings/0/ranges, joint/conductors/0/size)",
      nearest: { nearest: "2 AWG", above: "1 AWG" },
    },
  },
  {
    question: "A lug with a 1/2 in hole on a 3/8 in stud?",
    answer: "No, the wrong lug.",
    kind: "published",
    source: "NFPA 70-2023 110.3(B)",
    asked: () => {
      const onStud = termination([conductor("1 AWG")], {
        circuit: circuit(90, 100),
        equipment: {
          tag: "DP-1",
          kind: "panelboard",
          terminalTemperature: { value: 75, unit: "Cel" },
          stud: { holes: 1, bolt: "3/8" },
        },
      });
      const halfInch = pressedLug("1 AWG", { mounting: { kind: "pad", pattern: { holes: 1, bolt: "1/2" } } });
      return [verdict(onStud, halfInch), verdict(onStud, pressedLug("1 AWG"))];
    },
    expected: ["reject: stud-and-holes", "accept"],
  },
];
