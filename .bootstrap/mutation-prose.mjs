// Tells the mutation run what is prose: a text with two plain words in a row is a sentence or a label, and emptying it
// breaks no rule. Every other text is a word of the trade, a unit, a path or an id, and is broken like code.
const PROSE = /[a-z]{2,},? [a-z]{2,}/;

export const strykerPlugins = [
  {
    kind: "Ignore",
    name: "prose",
    value: {
      shouldIgnore(path) {
        if (path.isStringLiteral() && PROSE.test(path.node.value)) return "prose";
        if (!path.isTemplateLiteral() || !PROSE.test(path.node.quasis.map(({ value }) => value.raw).join("x"))) return;
        // A sentence that chooses its words is code: what it chooses by is broken, and its text with it.
        return path.node.expressions.every(isPlain) ? "prose" : undefined;
      },
    },
  },
];

function isPlain(expression) {
  switch (expression.type) {
    case "Identifier":
      return true;
    case "MemberExpression":
      return isPlain(expression.object);
    case "CallExpression":
      return (
        (expression.callee.type === "Identifier" || isPlain(expression.callee)) && expression.arguments.every(isPlain)
      );
    default:
      return false;
  }
}
