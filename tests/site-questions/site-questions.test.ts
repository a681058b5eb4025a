/**
 * What electricians ask standing at the joint, each question a test of its own. Where the answer is no, the same joint with
 * the one thing put right is asked beside it and must be allowed, so that nothing else can be what refuses it.
 */
import { describe, expect, test } from "vitest";
import { GROUNDING_QUESTIONS } from "./grounding-questions.js";
import { INSPECTION_QUESTIONS } from "./inspection-questions.js";
import { OPENINGS_QUESTIONS } from "./openings-questions.js";
import { PLACE_QUESTIONS } from "./place-questions.js";
import { SPACE_QUESTIONS } from "./space-questions.js";
import { TEMPERATURE_QUESTIONS } from "./temperature-questions.js";
import { TORQUE_QUESTIONS } from "./torque-questions.js";

const SUBJECTS = {
  openings: OPENINGS_QUESTIONS,
  temperature: TEMPERATURE_QUESTIONS,
  torque: TORQUE_QUESTIONS,
  space: SPACE_QUESTIONS,
  grounding: GROUNDING_QUESTIONS,
  place: PLACE_QUESTIONS,
  inspection: INSPECTION_QUESTIONS,
} as const;

describe.each(Object.entries(SUBJECTS))("%s", (_subject, questions) => {
  test.each(questions)("$question [$kind] $answer", ({ asked, expected }) => {
    expect({ answer: asked() }).toMatchObject({ answer: expected });
  });
});

test("no question stands twice, and none is lost", () => {
  const answered = Object.values(SUBJECTS).flatMap((questions) => questions.map(({ question }) => question));
  expect(new Set(answered).size).toBe(answered.length);
  expect(answered).toHaveLength(58);
});
