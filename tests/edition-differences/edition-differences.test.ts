// regression: the list was read against the code-change notes of each edition when it was written
import { fileURLToPath } from "node:url";
import { beforeAll, describe, expect, test } from "vitest";
import { type Change, calculationChanges, JOINTS_ASKED, jointChanges, siteChanges } from "./differing-answers.js";
import { EDITION_PAIRS } from "./edition-pairs.js";
import { REASONS } from "./reasons.js";

function file(name: string): string {
  return fileURLToPath(new URL(name, import.meta.url));
}

describe("answers", () => {
  const asked = {
    site: [] as readonly Change[],
    joints: [] as readonly Change[],
    calculations: [] as readonly Change[],
  };
  beforeAll(() => {
    asked.site = siteChanges();
    asked.joints = jointChanges();
    asked.calculations = calculationChanges();
  }, 300_000);

  test("that differ are those of the list", async () => {
    const part = (title: string, changes: readonly Change[], shown: number): string[] => [
      `== ${title}`,
      ...EDITION_PAIRS.flatMap(({ name }) => [
        name,
        ...changes
          .filter(({ pair }) => pair === name)
          .map(
            ({ kind, at }) =>
              `  ${kind}, ${at.length}: ${at.slice(0, shown).join(", ")}${at.length > shown ? ", …" : ""}`,
          )
          .sort(),
        "",
      ]),
    ];
    const text = [
      ...part("Larkfen Works", asked.site, 99),
      ...part(`joints 0 to ${JOINTS_ASKED - 1}`, asked.joints, 12),
      ...part("calculations", asked.calculations, 3),
    ].join("\n");
    await expect(text).toMatchFileSnapshot(file("differences.txt"));
  });

  test("differ for a reason each, and no reason is left over", () => {
    const all = [...asked.site, ...asked.joints, ...asked.calculations].map(({ pair, kind }) => `${pair} ${kind}`);
    const reasonOf = (change: string) => REASONS.filter(({ change: like }) => like.test(change));
    expect(all.filter((change) => reasonOf(change).length === 0)).toEqual([]);
    expect(REASONS.filter(({ change }) => !all.some((one) => change.test(one)))).toEqual([]);
  });
});
