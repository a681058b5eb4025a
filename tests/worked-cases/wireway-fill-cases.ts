/** Fill of wireways and of the wiring space of enclosures: NFPA 70 376.22, 376.56, 378.22, 312.8. */
import type { FillConductor, Length } from "@landfast/rules";
import { nfpa70, studyText, tradeForum } from "./publications.js";
import type { WorkedCase } from "./worked-case.js";

function thhn(size: string, count: number): FillConductor {
  return { kind: "conductor", count, size, insulation: "THHN", stranding: "class-B" };
}
const inches = (value: number): Length => ({ value, unit: "in" });
const FOUR_BY_FOUR = { width: inches(4), height: inches(4) } as const;
const SIX_BY_SIX = { width: inches(6), height: inches(6) } as const;
const EIGHT_BY_EIGHT = { width: inches(8), height: inches(8) } as const;
const BIG_ONES: readonly FillConductor[] = [thhn("600 kcmil", 4), thhn("400 kcmil", 4), thhn("300 kcmil", 3)];

export const WIREWAY_FILL_CASES: readonly WorkedCase<"wireway-fill">[] = [
  {
    id: "wireway-fill/three-sizes-in-6-x-6",
    question: "Four 600, four 400 and three 300 kcmil THHN: is a 6 x 6 in wireway enough?",
    kind: "published",
    form: "example",
    source: studyText("code academy on sizing wireways: 7.198 of 7.2 in2, 6 x 6 in is enough"),
    asked: { ask: "fill", kind: "metal-wireway", ...SIX_BY_SIX, conductors: BIG_ONES },
    expected: [{ value: true }, { result: "area of the conductors", value: 7.198, unit: "in2" }],
  },
  {
    id: "wireway-fill/section-for-three-sizes",
    question: "Which inside section do they need at least?",
    kind: "published",
    form: "example",
    source: studyText("code academy on sizing wireways: 7.198 x 5 = 35.99 in2"),
    asked: { ask: "smallest-section", kind: "metal-wireway", conductors: BIG_ONES },
    expected: [{ value: 35.99, unit: "in2" }],
  },
  {
    id: "wireway-fill/one-more-300-kcmil",
    question: "And with a fourth 300 kcmil?",
    kind: "hand",
    working: "7.198 + 0.4608 = 7.6588 in2, above 7.2",
    asked: { ask: "fill", kind: "metal-wireway", ...SIX_BY_SIX, conductors: [...BIG_ONES, thhn("300 kcmil", 1)] },
    expected: [{ value: false }],
  },
  {
    id: "wireway-fill/252-of-6-awg",
    question: "252 THHN of 6 AWG in an 8 x 8 in gutter?",
    kind: "published",
    form: "example",
    source: tradeForum("on 366.22: 12.8 / 0.0507 in2, 252 of them"),
    asked: { ask: "fill", kind: "metal-wireway", ...EIGHT_BY_EIGHT, conductors: [thhn("6 AWG", 252)] },
    expected: [{ value: true }],
  },
  {
    id: "wireway-fill/253-of-6-awg",
    question: "253 of them?",
    kind: "published",
    form: "example",
    source: tradeForum("on 366.22: 252 are the most"),
    asked: { ask: "fill", kind: "metal-wireway", ...EIGHT_BY_EIGHT, conductors: [thhn("6 AWG", 253)] },
    expected: [{ value: false }],
  },
  {
    id: "wireway-fill/962-of-12-awg",
    question: "962 THHN of 12 AWG in an 8 x 8 in gutter?",
    kind: "published",
    form: "example",
    source: tradeForum("on 366.22: 12.8 / 0.0133 in2, 962 of them"),
    asked: { ask: "fill", kind: "metal-wireway", ...EIGHT_BY_EIGHT, conductors: [thhn("12 AWG", 962)] },
    expected: [{ value: true }],
  },
  {
    id: "wireway-fill/963-of-12-awg",
    question: "963 of them?",
    kind: "published",
    form: "example",
    source: tradeForum("on 366.22: 962 are the most"),
    asked: { ask: "fill", kind: "metal-wireway", ...EIGHT_BY_EIGHT, conductors: [thhn("12 AWG", 963)] },
    expected: [{ value: false }],
  },
  {
    id: "wireway-fill/400-kcmil-in-6-x-6",
    question: "The maximum number of 400 kcmil THHN in a 6 x 6 in wireway, seen at 12?",
    kind: "published",
    form: "example",
    source: studyText("homework answer on a wireway"),
    printed: "one, from a fill of 40 % and an area of 1256.65 in2",
    asked: { ask: "fill", kind: "metal-wireway", ...SIX_BY_SIX, conductors: [thhn("400 kcmil", 12)] },
    expected: [{ value: true }],
    note: "The share is 20 % (376.22(A)) and a 400 kcmil THHN has 0.5863 in2: 7.2 / 0.5863 = 12.28, twelve of them.",
  },
  {
    id: "wireway-fill/13-of-400-kcmil",
    question: "Thirteen of them?",
    kind: "hand",
    working: "13 x 0.5863 = 7.6219 in2, above 7.2",
    asked: { ask: "fill", kind: "metal-wireway", ...SIX_BY_SIX, conductors: [thhn("400 kcmil", 13)] },
    expected: [{ value: false }],
  },
  {
    id: "wireway-fill/splices-75-percent",
    question: "One 500 kcmil and splices of 11.2 in2 in a 4 x 4 in wireway: within 75 %?",
    kind: "published",
    form: "table",
    source: nfpa70("376.56(A): conductors, splices and taps at 75 %, here 12 of 16 in2"),
    asked: {
      ask: "fill",
      kind: "metal-wireway",
      ...FOUR_BY_FOUR,
      conductors: [thhn("500 kcmil", 1)],
      splices: { value: 11.2, unit: "in2" },
    },
    expected: [{ value: true }],
  },
  {
    id: "wireway-fill/splices-over-75-percent",
    question: "And of 11.3 in2?",
    kind: "published",
    form: "table",
    source: nfpa70("376.56(A): 0.7073 + 11.3 = 12.0073 in2 is over 75 % of 16"),
    asked: {
      ask: "fill",
      kind: "metal-wireway",
      ...FOUR_BY_FOUR,
      conductors: [thhn("500 kcmil", 1)],
      splices: { value: 11.3, unit: "in2" },
    },
    expected: [{ value: false }],
  },
  {
    id: "wireway-fill/nineteen-4-0-past-a-gutter",
    question: "Nineteen 4/0 AWG THHN past a 4 x 4 in wiring space of an enclosure?",
    kind: "hand",
    working: "312.8: 19 x 0.3237 = 6.1503 in2, 38.4 % of 16, within 40 %",
    asked: { ask: "fill", kind: "enclosure", ...FOUR_BY_FOUR, conductors: [thhn("4/0 AWG", 19)] },
    expected: [{ value: true }],
  },
  {
    id: "wireway-fill/twenty-4-0-past-a-gutter",
    question: "Twenty?",
    kind: "hand",
    working: "20 x 0.3237 = 6.474 in2, 40.46 % of 16",
    asked: { ask: "fill", kind: "enclosure", ...FOUR_BY_FOUR, conductors: [thhn("4/0 AWG", 20)] },
    expected: [{ value: false }],
  },
];
