// regression: the list was read against the code-change notes of each edition when it was written
import { fileURLToPath } from "node:url";
import { EDITIONS } from "@landfast/rules";
import { expect, test } from "vitest";
import { differingCells, differingClauses, differingThresholds, provisionsOf } from "./differing-provisions.js";
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

test.each(EDITIONS.map((edition) => [edition.edition, edition] as const))(
  "what the edition of %s binds and says, clause by clause, is that of its list",
  async (name, edition) => {
    const file = fileURLToPath(new URL(`edition-${name}.txt`, import.meta.url));
    await expect(`${provisionsOf(edition).join("\n")}\n`).toMatchFileSnapshot(file);
  },
);

test("an edition cannot be changed by who uses it", () => {
  for (const edition of EDITIONS)
    for (const part of [edition, edition.tables, edition.clauses, edition.clauses.torque, EDITIONS])
      expect(Object.isFrozen(part)).toBe(true);
});
