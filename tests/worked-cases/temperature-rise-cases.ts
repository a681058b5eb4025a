/** What a joint calls for that runs warm: NETA Table 100.18, read in public copies of two of its editions. */
import { netaAts2003, netaMtsPage } from "./publications.js";
import type { WorkedCase } from "./worked-case.js";

type Case = WorkedCase<"temperature-rise">;

const overLike = (temperatureRiseC: number) => ({ with: "like-part", temperatureRiseC, likeLoad: true }) as const;
const overAir = (temperatureRiseC: number) => ({ with: "air", temperatureRiseC }) as const;

/** Rise and the grade of its row, for both comparisons. */
const LIKE: readonly (readonly [number, string])[] = [
  [1, "possible deficiency"],
  [3, "possible deficiency"],
  [4, "probable deficiency"],
  [12, "probable deficiency"],
  [15, "probable deficiency"],
  [16, "major discrepancy"],
];
const AIR: readonly (readonly [number, string])[] = [
  [1, "possible deficiency"],
  [10, "possible deficiency"],
  [11, "probable deficiency"],
  [20, "probable deficiency"],
  [21, "deficiency to be monitored"],
  [40, "deficiency to be monitored"],
  [41, "major discrepancy"],
];

export const TEMPERATURE_RISE_CASES: readonly Case[] = [
  ...LIKE.map(
    ([rise, grade]): Case => ({
      id: `temperature-rise/like-${String(rise)}`,
      question: `${String(rise)} C above like parts at a like load?`,
      kind: "published",
      form: "table",
      source: netaAts2003("Table 100.18, similar components"),
      asked: { comparisons: [overLike(rise)] },
      expected: [{ value: grade }],
    }),
  ),
  ...AIR.map(
    ([rise, grade]): Case => ({
      id: `temperature-rise/air-${String(rise)}`,
      question: `${String(rise)} C above the air?`,
      kind: "published",
      form: "table",
      source: netaMtsPage("Table 100.18, component and ambient air"),
      asked: { comparisons: [overAir(rise)] },
      expected: [{ value: grade }],
    }),
  ),
  {
    id: "temperature-rise/between-two-grades",
    question: "3.5 C above like parts, between 3 and 4?",
    kind: "hand",
    working: "3 < 3.5 < 4: the table prints whole degrees, so the harsher of the two grades counts",
    asked: { comparisons: [overLike(3.5)] },
    expected: [{ value: "probable deficiency" }],
  },
  {
    id: "temperature-rise/both",
    question: "2 C above like parts and 45 C above the air: which counts?",
    kind: "hand",
    working: "2 lies in 1 to 3, a possible deficiency; 45 > 40, a major one; the harsher counts",
    asked: { comparisons: [overLike(2), overAir(45)] },
    expected: [{ value: "major discrepancy" }, { result: "what it calls for", value: "repair at once" }],
  },
  {
    id: "temperature-rise/cooler",
    question: "2 C cooler than its like?",
    kind: "hand",
    working: "-2 is no rise",
    asked: { comparisons: [overLike(-2)] },
    expected: [{ value: "no grade" }],
  },
  {
    id: "temperature-rise/load-not-known",
    question: "12 C above its like, the loads not read?",
    kind: "hand",
    working: "the table compares similar components under similar load, so it is asked",
    asked: { comparisons: [{ with: "like-part", temperatureRiseC: 12 }] },
    expected: [{ missing: "question/comparisons/0/likeLoad" }],
  },
  {
    id: "temperature-rise/unlike-loads",
    question: "12 C above its like, which carries half the load?",
    kind: "hand",
    working: "the table compares similar components under similar load only",
    asked: { comparisons: [{ with: "like-part", temperatureRiseC: 12, likeLoad: false }] },
    expected: [{ refused: "NOT_COVERED" }],
  },
];
