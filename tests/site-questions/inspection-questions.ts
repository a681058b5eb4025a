/** What measuring a finished joint says of it. */
import { main, results } from "./calculated.js";
import type { SiteQuestion } from "./site-question.js";

const PHASES = (a: number, b: number, c: number) => ({
  readings: [
    { joint: "phase A", microOhm: a },
    { joint: "phase B", microOhm: b },
    { joint: "phase C", microOhm: c },
  ],
});

export const INSPECTION_QUESTIONS: readonly SiteQuestion[] = [
  {
    question: "Three phases read 18, 19 and 30 micro-ohm: do they pass?",
    answer: "Look into 30: the limit is 1.5 x 18 = 27; 27 itself would pass.",
    kind: "hand",
    source: "NETA ATS, more than 50 % of the lowest of similar bolted connections: 18 x 1.5 = 27",
    asked: () => [results("contact-resistance", PHASES(18, 19, 30)), main("contact-resistance", PHASES(18, 19, 27))],
    expected: [
      {
        "joints to look into": ["phase C"],
        limit: 27,
        "reading of phase A": "pass",
        "reading of phase B": "pass",
        "reading of phase C": "look into it",
      },
      [],
    ],
  },
  {
    question: "The lug of phase B is 12 C above A and C at a like load?",
    answer: "A probable deficiency, 4 to 15 C above like parts: repair as time permits.",
    kind: "published",
    source: "NETA Table 100.18 (read in public copies of the 2003 edition and of the maintenance specification)",
    asked: () => [
      results("temperature-rise", {
        comparisons: [12, 12].map(
          (temperatureRiseC) => ({ with: "like-part", temperatureRiseC, likeLoad: true }) as const,
        ),
      }),
      results("temperature-rise", { comparisons: [{ with: "like-part", temperatureRiseC: 12 }] }),
    ],
    expected: [
      { grade: "probable deficiency", "what it calls for": "repair as time permits" },
      {
        missing:
          "Whether the parts carried a like load is not given, and only then can their temperatures be compared.",
      },
    ],
  },
];
