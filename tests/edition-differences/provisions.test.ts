// regression: the list was read against the code-change notes of each edition when it was written
import { fileURLToPath } from "node:url";
import { expect, test } from "vitest";
import { differingCells, differingClauses, differingThresholds } from "./differing-provisions.js";
import { EDITION_PAIRS } from "./edition-pairs.js";

const lines = (title: string, all: readonly string[]): string[] => [
  `${title}: ${all.length === 0 ? "none" : all.length}`,
  ...all.map((line) => `  ${line}`),
];

test("cells, thresholds and clauses that differ are those of the list", async () => {
  const text = EDITION_PAIRS.flatMap((pair) => [
    `== ${pair.name}`,
    ...lines("cells", differingCells(pair)),
    ...lines("thresholds", differingThresholds(pair)),
    ...lines("clauses that moved", differingClauses(pair)),
    "",
  ]).join("\n");
  await expect(text).toMatchFileSnapshot(fileURLToPath(new URL("provisions.txt", import.meta.url)));
});
