/** What the README shows is what the library answers. */
import { readFileSync } from "node:fs";
import { demoCatalogue } from "@landfast/data";
import { type Basis, type Joint, scheduleJob } from "@landfast/rules";
import { expect, test } from "vitest";

const root = new URL("../../", import.meta.url);
const readme = readFileSync(new URL("README.md", root), "utf8");

test("the answer in the README is the one that is given", () => {
  const shown = /```json\n([\s\S]*?)\n```/.exec(readme)?.[1] ?? "";
  const { basis, joint } = JSON.parse(readFileSync(new URL("docs/examples/splice-of-a-feeder.json", root), "utf8")) as {
    basis: Basis;
    joint: Joint;
  };
  const { schedule } = scheduleJob({ name: "README", basis, joints: [joint] }, demoCatalogue().items);
  expect(JSON.parse(shown)).toEqual(schedule.rows[0]);
});

test("every command the README names exists", () => {
  const { scripts } = JSON.parse(readFileSync(new URL("package.json", root), "utf8")) as {
    scripts: Record<string, string>;
  };
  const named = [...readme.matchAll(/npm (?:run )?([a-z]+)/g)].map((match) => match[1] ?? "");
  expect(named.length).toBeGreaterThan(4);
  for (const name of named) expect(Object.keys(scripts)).toContain(name);
});
