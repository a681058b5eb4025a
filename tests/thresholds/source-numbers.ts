/**
 * The numbers of the library's source: constants of modules, and numbers that stand in the bodies of functions. Found with
 * the compiler's own parser, so that none is overlooked for the way in which it is written.
 */
import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import ts from "typescript";

const ROOT = fileURLToPath(new URL("../../packages/rules/src/", import.meta.url));

/**
 * "topics/metals/metal-marking.ts DEVICE_LIMIT_A" for a constant, with the property for a number inside an object;
 * "topics/fill/wireway-fill.ts limitsOf: 40" for a number in a function; for 0 and 1, which mostly count or begin
 * something, only where they are compared, with the comparison: "core/joint-load.ts x: load > 0".
 */
export function sourceNumbers(): ReadonlySet<string> {
  const found = new Set<string>();
  for (const file of readdirSync(ROOT, { recursive: true, encoding: "utf8" }).sort()) {
    const path = file.replaceAll("\\", "/");
    if (!/^(core|topics)\/.*\.ts$/.test(path) || path.endsWith(".test.ts")) continue;
    const source = ts.createSourceFile(path, readFileSync(`${ROOT}${file}`, "utf8"), ts.ScriptTarget.Latest, true);
    const visit = (node: ts.Node, names: readonly string[], inside: boolean): void => {
      const named = nameOf(node);
      const under = named === undefined ? names : [...names, named];
      const within = inside || ts.isFunctionLike(node);
      const figure = figureOf(node);
      if (figure !== undefined) {
        const place = numberAt(node, figure, under, within);
        if (place !== undefined) found.add(`${path} ${place}`);
      }
      ts.forEachChild(node, (child) => {
        visit(child, under, within);
      });
    };
    visit(source, [], false);
  }
  return found;
}

/** "BOX_OVER_IN3", "limitsOf: 40", "check: sets === 1"; undefined for a number that decides nothing. */
function numberAt(node: ts.Node, figure: string, names: readonly string[], inside: boolean): string | undefined {
  if (!inside) return names.join(".");
  const [name = ""] = names;
  if (figure !== "0" && figure !== "1") return `${name}: ${figure}`;
  const compared = comparisonOf(node);
  return compared === undefined ? undefined : `${name}: ${compared.getText().replaceAll(/\s+/g, " ")}`;
}

function nameOf(node: ts.Node): string | undefined {
  if (
    (ts.isFunctionDeclaration(node) ||
      ts.isMethodDeclaration(node) ||
      ts.isPropertyDeclaration(node) ||
      ts.isVariableDeclaration(node) ||
      ts.isPropertyAssignment(node)) &&
    node.name !== undefined
  )
    return node.name.getText().replaceAll('"', "");
  return undefined;
}

/** A number, a size, a quantity or a day written out: 0.875, 10n, "4 AWG", "0.3048", "2023-01-01". */
const FIGURE = /^(\d[\d_]*(\.\d+)?|\.\d+|\d+\/\d+)( (AWG|kcmil|mm2))?$|^\d{4}-\d{2}-\d{2}$/;

function figureOf(node: ts.Node): string | undefined {
  if (!ts.isLiteralExpression(node) || ts.isLiteralTypeNode(node.parent)) return undefined;
  if (ts.isNumericLiteral(node)) return node.getText();
  if (ts.isBigIntLiteral(node)) return node.getText().replace(/n$/, "");
  if (!ts.isStringLiteralLike(node) || !FIGURE.test(node.text)) return undefined;
  const { parent } = node;
  if (ts.isPropertyAssignment(parent) && parent.name === node) return undefined;
  return node.text;
}

const COMPARING: readonly ts.SyntaxKind[] = [
  ts.SyntaxKind.LessThanToken,
  ts.SyntaxKind.LessThanEqualsToken,
  ts.SyntaxKind.GreaterThanToken,
  ts.SyntaxKind.GreaterThanEqualsToken,
  ts.SyntaxKind.EqualsEqualsEqualsToken,
  ts.SyntaxKind.ExclamationEqualsEqualsToken,
];

/** The comparison in which the number is one side. */
function comparisonOf(node: ts.Node): ts.Node | undefined {
  const { parent } = node;
  return ts.isBinaryExpression(parent) && COMPARING.includes(parent.operatorToken.kind) ? parent : undefined;
}
