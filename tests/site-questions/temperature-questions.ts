/** What a conductor may carry at the temperature its ends stand, and taps. */
import type { ConductorRun, TapAllowance, TapQuestion } from "@landfast/rules";
import { main } from "./calculated.js";
import { circuit, conductor, equipmentLug, opening, splice, spliced, termination, verdict } from "./described-joint.js";
import type { SiteQuestion } from "./site-question.js";

const UNMARKED_SWITCH = { tag: "SW-1", kind: "disconnect", terminalTemperature: "unmarked" } as const;
const MARKED_SWITCH = { tag: "SW-1", kind: "disconnect", terminalTemperature: { value: 75, unit: "Cel" } } as const;
const LUG = equipmentLug("14 AWG", "250 kcmil");

const RATED_90 = equipmentLug("14 AWG", "250 kcmil", { temperature: { value: 90, unit: "Cel" } });

function aluminumSplice(metalMarking: string, loadA: number, ends: number): string {
  return verdict(
    spliced([conductor("250 kcmil", { metal: "aluminum", count: 2 })], {
      circuit: circuit(loadA, 225, { endTerminalTemperature: { value: ends, unit: "Cel" } }),
    }),
    splice([opening("6 AWG", "350 kcmil", { count: 2 })], { metalMarking }),
  );
}

const COPPER_AT_75: ConductorRun = {
  metal: "copper",
  insulation: "THHN",
  place: "dry",
  sets: 1,
  manner: "raceway",
  ambient: { value: 30, unit: "Cel" },
  sunlitRoof: "none",
  grouping: { in: "raceway", conductors: 3 },
  supplyEnd: { value: 75, unit: "Cel" },
  loadEnd: { value: 75, unit: "Cel" },
};

function tapOf400A(allowance: TapAllowance, feet: number, endDeviceA: number): TapQuestion {
  return {
    ask: "smallest-size",
    allowance,
    deviceAheadA: 400,
    endDeviceA,
    continuousLoadA: 0,
    nonContinuousLoadA: 20,
    length: { value: feet, unit: "ft" },
    physicallyProtected: true,
    leavesEnclosure: true,
    run: COPPER_AT_75,
  };
}

export const TEMPERATURE_QUESTIONS: readonly SiteQuestion[] = [
  {
    question: "3 AWG THHN copper for the full 100 A of a switch without a temperature mark?",
    answer: "No, 85 A at 60 C: 1 AWG (110 A), or a switch marked 75 C (100 A).",
    kind: "published",
    source: "NFPA 70-2023 110.14(C)(1)(a), Table 310.16",
    asked: () => [
      verdict(termination([conductor("3 AWG")], { circuit: circuit(100, 100), equipment: UNMARKED_SWITCH }), LUG),
      verdict(termination([conductor("1 AWG")], { circuit: circuit(100, 100), equipment: UNMARKED_SWITCH }), LUG),
      verdict(termination([conductor("3 AWG")], { circuit: circuit(100, 100), equipment: MARKED_SWITCH }), LUG),
    ],
    expected: ["reject: terminal-temperature, device-protection", "accept", "accept"],
  },
  {
    question: "My lug says 90 C, may I use the 90 C column on a 75 C panel?",
    answer: "No: the weakest part rules, 200 A of 3/0 AWG and not 225 A.",
    kind: "published",
    source: "NFPA 70-2023 110.14(C), Table 310.16",
    asked: () => [
      verdict(termination([conductor("3/0 AWG")], { circuit: circuit(201, 225) }), RATED_90),
      verdict(termination([conductor("3/0 AWG")], { circuit: circuit(200, 200) }), RATED_90),
    ],
    expected: ["reject: terminal-temperature, device-protection", "accept"],
  },
  {
    question: "What does the 7 in AL7CU mean?",
    answer: "75 C; AL9CU is 90 C; both take aluminum and copper.",
    kind: "published",
    source: "UL 486A-486B marking; NFPA 70-2023 Table 310.16, 250 kcmil aluminum: 205 A at 75 C, 230 A at 90 C",
    asked: () => [aluminumSplice("AL7CU", 206, 90), aluminumSplice("AL7CU", 205, 90), aluminumSplice("AL9CU", 225, 90)],
    expected: ["reject: terminal-temperature, device-protection", "accept", "accept"],
  },
  {
    question: "4/0 aluminum on a 200 A breaker?",
    answer: "Yes up to a load of 180 A: 180 A at 75 C, and 200 A is the next standard rating.",
    kind: "published",
    source: "NFPA 70-2023 Table 310.16, 240.4(B), 240.6(A)",
    asked: () =>
      [180, 181].map((loadA) =>
        verdict(
          termination([conductor("4/0 AWG", { metal: "aluminum" })], { circuit: circuit(loadA, 200) }),
          equipmentLug("4 AWG", "250 kcmil"),
        ),
      ),
    expected: ["accept", "reject: terminal-temperature, device-protection"],
  },
  {
    question: "A 250 aluminum splice marked AL7CU, 218 A on a 225 A device?",
    answer: "No: 205 A at 75 C; 230 A stands in the 90 C column.",
    kind: "published",
    source: "NFPA 70-2023 110.14(C)(2), Table 310.16",
    asked: () => [aluminumSplice("AL7CU", 218, 75), aluminumSplice("AL9CU", 218, 90)],
    expected: ["reject: terminal-temperature, device-protection", "accept"],
  },
  {
    question: "A tap 25 ft long off a 400 A feeder: the smallest copper?",
    answer: "1/0 AWG, 150 A, because 133.3 A are needed; and not below the device at its end.",
    kind: "published",
    source: "NFPA 70-2023 240.21(B)(2), Table 310.16",
    asked: () => main("tap", tapOf400A("feeder-tap-to-25-ft", 25, 100)),
    expected: "1/0 AWG",
  },
  {
    question: "A tap 10 ft long off the same feeder?",
    answer: "40 A at least, and the rating of the device at its end.",
    kind: "published",
    source: "NFPA 70-2023 240.21(B)(1), Table 310.16 at 75 C: 8 AWG 50 A, 3 AWG 100 A",
    asked: () => [
      main("tap", tapOf400A("feeder-tap-to-10-ft", 10, 30)),
      main("tap", tapOf400A("feeder-tap-to-10-ft", 10, 100)),
    ],
    expected: ["8 AWG", "3 AWG"],
  },
];
