import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import ts from "typescript";
import { describe, expect, it } from "vitest";

const root = fileURLToPath(new URL("../..", import.meta.url));

/** Paths of TypeScript files below a folder of the project, with forward slashes, tests left out. */
function sources(folder: string): string[] {
  return readdirSync(`${root}/${folder}`, { withFileTypes: true }).flatMap((entry) => {
    const path = `${folder}/${entry.name}`;
    if (entry.isDirectory()) return ["node_modules", "dist"].includes(entry.name) ? [] : sources(path);
    return path.endsWith(".ts") && !path.endsWith(".test.ts") ? [path] : [];
  });
}

/** Words and numbers in code that name an edition, as "line: text"; comments may name editions, code may not. */
function editionsNamed(text: string): string[] {
  const source = ts.createSourceFile("rule.ts", text, ts.ScriptTarget.ES2023, true);
  const found: string[] = [];
  const visit = (node: ts.Node): void => {
    const isToken =
      ts.isLiteralExpression(node) ||
      ts.isTemplateLiteralToken(node) ||
      ts.isIdentifier(node) ||
      ts.isPrivateIdentifier(node);
    if (isToken && /(?<!\d)(2017|2020|2023)(?!\d)/.test(node.text)) {
      found.push(`${String(source.getLineAndCharacterOfPosition(node.getStart()).line + 1)}: ${node.getText()}`);
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

describe("rule bodies", () => {
  it.each([
    ['if (edition === "2020") return;', 1],
    ["const limit = edition < 2023 ? 1 : 2;", 1],
    ["const id = `nfpa70-2017`;", 1],
    ["const rule2023 = 1;", 1],
    ["/** NFPA 70-2020 and 2023 say the same. */\nconst a = 120; // 2017 too", 0],
    ["const area = 12023;", 0],
  ])("the search for editions reads %j", (text, count) => {
    expect(editionsNamed(text)).toHaveLength(count);
  });

  it("never ask which edition it is: what differs is data in the bindings", () => {
    const topics = sources("packages/rules/src/topics");
    expect(topics.length).toBeGreaterThan(0);
    const named = topics.flatMap((path) =>
      editionsNamed(readFileSync(`${root}/${path}`, "utf8")).map((found) => `${path}:${found}`),
    );
    expect(named).toEqual([]);
  });
});

describe("folders", () => {
  it("are named after things of the trade or plain roles", () => {
    const vague = /\/(utils?|common|helpers?|types|misc|shared|lib)(\/|\.ts$)/;
    const files = ["packages", "apps", "data", "tests"].flatMap(sources);
    expect(files.length).toBeGreaterThan(0);
    expect(files.filter((path) => vague.test(path))).toEqual([]);
  });
});
