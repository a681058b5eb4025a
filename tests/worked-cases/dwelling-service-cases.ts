/** Service conductors of a dwelling: NFPA 70 310.12 (2020, 2023) and the 83 % of 310.15(B)(7) (2017). */
import { celsius, plainRun } from "./plain-run.js";
import { nfpa70, tradeForum } from "./publications.js";
import type { PublishedCase, WorkedCase } from "./worked-case.js";

type Case = WorkedCase<"dwelling-service">;

/** Table 310.12: rating, copper, aluminum. */
const TABLE: readonly (readonly [number, string, string])[] = [
  [100, "4 AWG", "2 AWG"],
  [125, "2 AWG", "1/0 AWG"],
  [150, "1 AWG", "2/0 AWG"],
  [200, "2/0 AWG", "4/0 AWG"],
  [300, "250 kcmil", "350 kcmil"],
  [400, "400 kcmil", "600 kcmil"],
];

function cell(ratingA: number, metal: "copper" | "aluminum", size: string): PublishedCase<"dwelling-service"> {
  return {
    id: `dwelling-service/table-310.12/${String(ratingA)}/${metal}`,
    question: `Which ${metal} for a dwelling's service of ${String(ratingA)} A?`,
    editions: ["2020", "2023"],
    kind: "published",
    form: "table",
    source: nfpa70(`Table 310.12(A), ${String(ratingA)} A, ${metal}; Table 310.12 in 2020`),
    asked: {
      ratingA,
      system: "single-phase-120/240",
      carriesWholeLoad: true,
      run: plainRun({ metal, insulation: "THWN-2" }),
    },
    expected: [{ value: size }],
  };
}

const EXAMPLES: readonly Case[] = [
  {
    id: "dwelling-service/200-a-by-83-percent",
    question: "200 A under the edition that prints no sizes: what must the conductor carry, and is 2/0 AWG enough?",
    editions: ["2017"],
    kind: "published",
    form: "example",
    source: tradeForum("answers of an inspectors' page on the 83 % rule, to the 2014 edition: 166 A, 2/0 AWG (175 A)"),
    asked: {
      ratingA: 200,
      system: "single-phase-120/240",
      carriesWholeLoad: true,
      run: plainRun({ insulation: "THWN-2" }),
    },
    expected: [
      { value: "2/0 AWG" },
      { result: "ampacity needed", value: 166, unit: "A" },
      { result: "ampacity of the conductor", value: 175, unit: "A" },
    ],
  },
  {
    id: "dwelling-service/400-a-load-355-a",
    question: "400 A with a load of 355 A: by the rating or by the load?",
    kind: "published",
    form: "example",
    source: tradeForum("on 310.12 and 230.42 for 400 A: by the rating, 332 A, two sets of 4/0 AWG aluminum"),
    asked: {
      ratingA: 400,
      system: "single-phase-120/240",
      carriesWholeLoad: true,
      run: plainRun({ metal: "aluminum", insulation: "XHHW-2", sets: 2 }),
    },
    expected: [{ value: "4/0 AWG" }, { result: "ampacity needed", value: 332, unit: "A" }],
  },
  {
    id: "dwelling-service/corrected-copper",
    question: "200 A with a correction of 0.96: does 2/0 AWG copper still do by the 83 %?",
    kind: "published",
    form: "example",
    source: tradeForum("on 310.12 of the 2020 edition: 175 x 0.96 = 168 A is above 166 A, yes"),
    asked: {
      ratingA: 200,
      system: "single-phase-120/240",
      carriesWholeLoad: true,
      run: plainRun({ insulation: "THWN-2", ambient: celsius(35) }),
    },
    expected: [{ value: "2/0 AWG" }, { result: "ampacity needed", value: 166, unit: "A" }],
    note: "0.96 is the factor of the 90 C column; it begins from 195 A there and ends at the 175 A of the terminals. The size is the same.",
  },
  {
    id: "dwelling-service/corrected-aluminum",
    question: "And 4/0 AWG aluminum?",
    kind: "published",
    form: "example",
    source: tradeForum("on 310.12 of the 2020 edition"),
    printed: "149.4 A, below 166 A",
    asked: {
      ratingA: 200,
      system: "single-phase-120/240",
      carriesWholeLoad: true,
      run: plainRun({ metal: "aluminum", insulation: "THWN-2", ambient: celsius(35) }),
    },
    expected: [{ value: "4/0 AWG" }, { result: "ampacity of the conductor", value: 180, unit: "A" }],
    note: "180 x 0.96 is 172.8, not 149.4, and the factor belongs to the 205 A of the 90 C column: 196.8 A, of which the terminals allow 180 A.",
  },
  {
    id: "dwelling-service/three-phase",
    question: "Does the allowance hold for a three-phase service?",
    kind: "published",
    form: "table",
    source: nfpa70("310.12: single-phase systems only"),
    asked: { ratingA: 200, system: "three-phase", carriesWholeLoad: true, run: plainRun() },
    expected: [{ refused: "NOT_COVERED" }],
  },
  {
    id: "dwelling-service/hot-place",
    question: "200 A through 45 C: do the printed sizes still hold?",
    kind: "hand",
    working: "corrected, so by 83 %: 166 A; 2/0 AWG 195 x 0.87 = 169.65 A and 175 A at the terminals",
    asked: {
      ratingA: 200,
      system: "single-phase-120/240",
      carriesWholeLoad: true,
      run: plainRun({ insulation: "THWN-2", ambient: celsius(45) }),
    },
    expected: [{ value: "2/0 AWG" }],
  },
];

export const DWELLING_SERVICE_CASES: readonly Case[] = [
  ...EXAMPLES,
  ...TABLE.flatMap(([rating, copper, aluminum]) => [
    cell(rating, "copper", copper),
    cell(rating, "aluminum", aluminum),
  ]),
];
