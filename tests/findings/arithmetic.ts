/**
 * Re-works the arithmetic that a finding prints, without the library: numbers, + - x / ^, brackets, sqrt, cos, sin,
 * acos, log10. Signs are read left to right with the usual precedence.
 */
export function evaluate(expression: string): number {
  const tokens = expression.match(/\d+(?:\.\d+)?(?:e[+-]?\d+)?|sqrt|cos|sin|acos|log10|[()+\-x/^]/gi) ?? [];
  const spelled = expression.replace(/\s+/g, "");
  if (tokens.join("") !== spelled) throw new Error(`cannot read the arithmetic "${expression}"`);
  let at = 0;
  const peek = (): string => tokens[at] ?? "";
  const take = (): string => tokens[at++] ?? "";

  function sum(): number {
    let value = product();
    while (peek() === "+" || peek() === "-") value = take() === "+" ? value + product() : value - product();
    return value;
  }
  function product(): number {
    let value = power();
    while (peek() === "x" || peek() === "/") value = take() === "x" ? value * power() : value / power();
    return value;
  }
  function power(): number {
    const base = unary();
    if (peek() !== "^") return base;
    take();
    return base ** power();
  }
  function unary(): number {
    if (peek() === "-") {
      take();
      return -unary();
    }
    return atom();
  }
  function atom(): number {
    const token = take();
    if (token === "(") return closed(sum());
    const call = FUNCTIONS[token.toLowerCase()];
    if (call !== undefined) {
      if (take() !== "(") throw new Error(`${token} without brackets in "${expression}"`);
      return call(closed(sum()));
    }
    const value = Number(token);
    if (token === "" || Number.isNaN(value)) throw new Error(`"${token}" is no number in "${expression}"`);
    return value;
  }
  function closed(value: number): number {
    if (take() !== ")") throw new Error(`a bracket is not closed in "${expression}"`);
    return value;
  }
  const value = sum();
  if (at !== tokens.length) throw new Error(`"${peek()}" left over in "${expression}"`);
  return value;
}

const FUNCTIONS: Readonly<Record<string, (value: number) => number>> = {
  sqrt: Math.sqrt,
  cos: Math.cos,
  sin: Math.sin,
  acos: Math.acos,
  log10: Math.log10,
};
