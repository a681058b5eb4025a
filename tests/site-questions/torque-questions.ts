/** How far a screw is tightened, with what, and what is shown of it. */
import type { Drive, TorqueQuestion } from "@landfast/rules";
import { main, results } from "./calculated.js";
import {
  BASIS_2017,
  BASIS_2020,
  BASIS_2023,
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

function torqueOf(drive: Drive, largestConductor: string): Readonly<Record<string, unknown>> {
  const found = results("torque", { drive, marked: "unmarked", largestConductor });
  const inUnit = (name: string): number => Math.round(Number(found[name]) * 10) / 10;
  return { lbfIn: found["torque"], lbfFt: inUnit("torque in lbf-ft"), newtonMeters: inUnit("torque in N-m") };
}

function slot(widthIn: number, lengthIn: number, screwSize: "10-and-larger" | "under-10"): Drive {
  return {
    kind: "slotted",
    screwSize,
    slotWidth: { value: widthIn, unit: "in" },
    slotLength: { value: lengthIn, unit: "in" },
  };
}

const TO_100: TorqueQuestion = {
  drive: { kind: "socket", acrossFlats: "3/16" },
  marked: "unmarked",
  tool: {
    from: { value: 20, unit: "lbf-in" },
    to: { value: 100, unit: "lbf-in" },
    bits: [{ kind: "recessed", acrossFlats: "3/16" }],
    calibration: { validUntil: "2027-01-31" },
  },
  usedOn: "2026-06-01",
};

const LUG = equipmentLug("6 AWG", "250 kcmil");
const JOINT = termination([conductor("3/0 AWG")], { circuit: circuit(150, 200) });
const ON_STUD = termination([conductor("1 AWG")], {
  circuit: circuit(90, 100),
  equipment: {
    tag: "DP-1",
    kind: "panelboard",
    terminalTemperature: { value: 75, unit: "Cel" },
    stud: { holes: 1, bolt: "3/8" },
  },
});
const ALUMINUM = termination([conductor("4/0 AWG", { metal: "aluminum" })], { circuit: circuit(150, 175) });

const SHEAR_HEAD = splice([opening("6 AWG", "250 kcmil", { count: 2 })], {
  screws: [{ id: "screw", drive: { kind: "breakaway" }, torque: "unmarked" }],
});
const TWO_1_0 = spliced([conductor("1/0 AWG", { count: 2 })], {
  circuit: circuit(100, 125, { endTerminalTemperature: { value: 75, unit: "Cel" } }),
});

export const TORQUE_QUESTIONS: readonly SiteQuestion[] = [
  {
    question: "Torque for 250 kcmil in a 5/16 in socket screw without a mark?",
    answer: "275 lbf-in (22.9 lbf-ft, 31.1 N-m): a socket goes by its width.",
    kind: "published",
    source: "NFPA 70-2023 Informative Annex I, Table I.3",
    asked: () => torqueOf({ kind: "socket", acrossFlats: "5/16" }, "250 kcmil"),
    expected: { lbfIn: 275, lbfFt: 22.9, newtonMeters: 31.1 },
  },
  {
    question: "The same wire under an external hexagon, no split bolt?",
    answer: "325 lbf-in (36.7 N-m).",
    kind: "published",
    source: "NFPA 70-2023 Informative Annex I, Table I.1, other connectors, 250-350 kcmil",
    asked: () => torqueOf({ kind: "external-hex" }, "250 kcmil"),
    expected: { lbfIn: 325, newtonMeters: 36.7 },
  },
  {
    question: "A split bolt on 2 AWG?",
    answer: "275 lbf-in (31.1 N-m).",
    kind: "published",
    source: "NFPA 70 Informative Annex I, Table I.1, split bolts (read in a public scan)",
    asked: () => torqueOf({ kind: "split-bolt" }, "2 AWG"),
    expected: { lbfIn: 275, newtonMeters: 31.1 },
  },
  {
    question: "A slotted screw on 8 AWG, wide slot and narrow slot?",
    answer: "40 lbf-in; 25 up to 0.047 in wide and 1/4 in long.",
    kind: "published",
    source: "NFPA 70 Informative Annex I, Table I.1 (read in a public scan)",
    asked: () => [
      torqueOf(slot(0.06, 0.3, "10-and-larger"), "8 AWG")["lbfIn"],
      torqueOf(slot(0.047, 0.25, "10-and-larger"), "8 AWG")["lbfIn"],
    ],
    expected: [40, 25],
  },
  {
    question: "A small screw under No. 10 with a wide slot 1/4 in long?",
    answer: "12 lbf-in.",
    kind: "published",
    source: "NFPA 70 Informative Annex I, Table I.2 (read in a public copy)",
    asked: () => torqueOf(slot(0.05, 0.25, "under-10"), "12 AWG")["lbfIn"],
    expected: 12,
  },
  {
    question: "The sheet says 31-1/4 lbf-ft and my wrench reads lbf-in?",
    answer: "375 lbf-in; 31 lbf-ft are 372.",
    kind: "hand",
    source: "31.25 x 12 = 375; 31 x 12 = 372",
    asked: () =>
      [31.25, 31].map((value) => main("convert", { kind: "torque", torque: { value, unit: "lbf-ft" }, to: "lbf-in" })),
    expected: [375, 372],
  },
  {
    question: "My screwdriver goes to 100 lbf-in and the screw needs 120?",
    answer: "The wrong tool.",
    kind: "hand",
    source: "Informative Annex I, Table I.3, 3/16 in: 120; 120 > 100",
    asked: () => results("torque", TO_100),
    expected: { torque: 120, "the tool serves": false },
  },
  {
    question: "This set-screw lug was tightened last month: shall I tighten it again?",
    answer: "No. If it ran hot, cut back and make it anew, and tighten once.",
    kind: "hand",
    source: "110.3(B); common practice: a screw that has pressed a conductor is not turned again as a remedy",
    asked: () => {
      const again = finding({ ...JOINT, rework: true }, LUG);
      return { verdict: again.verdict, duties: again.conditions.map(({ duty }) => duty) };
    },
    expected: {
      verdict: "accept-with-conditions",
      duties: ["cut-back", "inspect-terminal", "supersede-record", "thermal-survey", "one-torque-pass"],
    },
  },
  {
    question: "May I use this compression lug again?",
    answer: "No, once only.",
    kind: "published",
    source: "NFPA 70-2023 110.3(B)",
    asked: () => [
      verdict({ ...ON_STUD, partState: "reused" }, pressedLug("1 AWG")),
      verdict({ ...ON_STUD, partState: "new" }, pressedLug("1 AWG")),
    ],
    expected: ["reject: part-reuse", "accept"],
  },
  {
    question: "Another maker's die of the same color?",
    answer: "Only if the lug's listing names that tool and that die.",
    kind: "published",
    source: "NFPA 70-2023 110.3(B)",
    asked: () => [
      verdict({ ...ON_STUD, tooling: { tool: "press A", die: "die 13" } }, pressedLug("1 AWG")),
      verdict({ ...ON_STUD, tooling: { tool: "press A", die: "die 12" } }, pressedLug("1 AWG")),
    ],
    expected: ["reject: tool-and-die", "accept"],
  },
  {
    question: "Do I need compound on this aluminum lug?",
    answer: "As its instructions say; brush the strands in any case. In Canada it is required for stranded aluminum.",
    kind: "published",
    source: "NFPA 70-2023 110.14 and 110.3(B), which ask for none of themselves",
    asked: () =>
      ([undefined, "required", "pre-filled", "not-needed"] as const).map((compound) => {
        const lug = compound === undefined ? LUG : { ...LUG, compound };
        const { preparation } = finding(ALUMINUM, lug);
        return [preparation?.compound.need, preparation?.brush.needed];
      }),
    expected: [
      ["per-instructions", true],
      ["required", true],
      ["pre-filled", true],
      ["not-needed", true],
    ],
  },
  {
    question: "Shear-head splices: do I still need a torque wrench?",
    answer: "From 2020 on the head counts as an approved means; in 2017 only as the maker's stated method.",
    kind: "published",
    source: "NFPA 70 110.14(D), 2017 and 2020",
    asked: () =>
      [BASIS_2017, BASIS_2020, BASIS_2023].map((basis) => {
        const { torque, conditions } = finding(TWO_1_0, SHEAR_HEAD, basis);
        const duty = conditions.find((one) => one.duty === "breakaway-head");
        return [torque[0]?.method, duty?.sentence];
      }),
    expected: [
      [
        "breakaway-head",
        "Confirm that the maker's instructions name the breakaway head as the method; then shear it fully and photograph it.",
      ],
      ["breakaway-head", "Turn the breakaway head until it shears fully, and photograph it."],
      ["breakaway-head", "Turn the breakaway head until it shears fully, and photograph it."],
    ],
  },
  {
    question: "The inspector wants proof of the torque: what do I show?",
    answer: "The record of each joint: who, when, which tool, which value; and that the tool was in calibration.",
    kind: "published",
    source: "NFPA 70 110.14(D); what is recorded is common practice",
    asked: () =>
      [BASIS_2017, BASIS_2023].map((basis) => {
        const { dutiesOnSite } = finding(JOINT, LUG, basis);
        const told = (duty: string) => dutiesOnSite.find((one) => one.duty === duty);
        return {
          record: told("mark-and-record")?.sentence,
          tool: told("tighten-once")?.sentence.includes("within its calibration date"),
          clause: told("tighten-once")?.cite.locator,
        };
      }),
    expected: [
      {
        record: "Mark the finished joint and write its record: who, when, which tool, which value.",
        tool: true,
        clause: "110.14(D)",
      },
      {
        record: "Mark the finished joint and write its record: who, when, which tool, which value.",
        tool: true,
        clause: "110.14(D)",
      },
    ],
  },
];
