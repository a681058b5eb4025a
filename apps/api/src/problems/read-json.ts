import { isUtf8 } from "node:buffer";
import { type Fault, Problem, pointerTo } from "./problem.js";

/** No document this service takes nests deeper; a deeper one is refused before anything walks it. */
const DEEPEST = 32;

/**
 * Reads a body as JSON, strictly: UTF-8 only, no name twice in one object (the later one would silently win), no half
 * of a surrogate pair, no nesting beyond what any document here has.
 * @throws Problem MALFORMED_JSON with a pointer where there is one.
 */
export function readJson(body: Buffer): { readonly value: unknown; readonly text: string } {
  if (body.length === 0)
    throw malformed("The body is empty.", { pointer: "", detail: "nothing was sent", accepted: "one JSON object" });
  if (!isUtf8(body))
    throw malformed("The body is not UTF-8.", {
      pointer: "",
      detail: "the bytes are not UTF-8 text",
      accepted: "JSON encoded in UTF-8",
    });
  const text = body.toString("utf8");
  const value = parse(text);
  const names = countNames(value, 0);
  if (names === null)
    throw malformed("The body nests too deep.", {
      pointer: "",
      detail: `arrays and objects nest deeper than ${DEEPEST}`,
      accepted: `at most ${DEEPEST} levels`,
    });
  if (names !== countNamesInText(text)) throw twice(text);
  // Only an escape can make half a pair: the text itself is good UTF-8.
  if (/\\u[dD][89a-fA-F]/.test(text)) refuseHalfPairs(value, "");
  return { value, text };
}

function parse(text: string): unknown {
  try {
    return JSON.parse(text) as unknown;
  } catch (error) {
    const detail = error instanceof SyntaxError ? error.message : "the text is not JSON";
    throw malformed("The body is not JSON.", { pointer: "", detail, accepted: "one JSON object" });
  }
}

function malformed(detail: string, fault: Fault): Problem {
  return new Problem("MALFORMED_JSON", detail, [fault]);
}

/** How many names the objects of a value have together; null when it nests too deep. */
function countNames(value: unknown, depth: number): number | null {
  if (typeof value !== "object" || value === null) return 0;
  if (depth >= DEEPEST) return null;
  let names = 0;
  if (Array.isArray(value)) {
    for (const item of value as readonly unknown[]) {
      if (typeof item !== "object") continue;
      const below = countNames(item, depth + 1);
      if (below === null) return null;
      names += below;
    }
    return names;
  }
  for (const name in value) {
    names += 1;
    const item = (value as Record<string, unknown>)[name];
    if (typeof item !== "object") continue;
    const below = countNames(item, depth + 1);
    if (below === null) return null;
    names += below;
  }
  return names;
}

function countNamesInText(text: string): number {
  let names = 0;
  for (let at = text.indexOf('"'); at !== -1; at = text.indexOf('"', at)) {
    at = endOfString(text, at);
    while (isSpace(text.charCodeAt(at))) at += 1;
    if (text.charCodeAt(at) === 58) names += 1;
  }
  return names;
}

/** The place just after the string that begins at `start`; the text is known to be good JSON. */
function endOfString(text: string, start: number): number {
  let end = text.indexOf('"', start + 1);
  while (isEscaped(text, end)) end = text.indexOf('"', end + 1);
  return end + 1;
}

function isEscaped(text: string, at: number): boolean {
  let slashes = 0;
  while (text.charCodeAt(at - 1 - slashes) === 92) slashes += 1;
  return slashes % 2 === 1;
}

function isSpace(code: number): boolean {
  return code === 32 || code === 10 || code === 13 || code === 9;
}

/** Finds the first name that stands twice in one object. Slow, and needed only to say where it is. */
function twice(text: string): Problem {
  const seen: {
    readonly pointer: string;
    readonly names: Set<string>;
    index: number;
    isArray: boolean;
    last: string;
  }[] = [];
  let at = 0;
  while (at < text.length) {
    const sign = text[at] ?? "";
    const top = seen.at(-1);
    if (sign === '"') {
      const end = endOfString(text, at);
      const token = text.slice(at, end);
      at = end;
      while (isSpace(text.charCodeAt(at))) at += 1;
      if (text[at] !== ":" || top === undefined) continue;
      const name = JSON.parse(token) as string;
      const pointer = pointerTo(top.pointer, name);
      if (top.names.has(name))
        return malformed("A name stands twice in one object.", {
          pointer,
          detail: `"${name.slice(0, 60)}" is given twice; which one is meant cannot be known`,
          accepted: "each name once",
        });
      top.names.add(name);
      top.last = pointer;
      continue;
    }
    if (sign === "{" || sign === "[") {
      const pointer = top === undefined ? "" : top.isArray ? pointerTo(top.pointer, top.index) : top.last;
      seen.push({ pointer, names: new Set(), index: 0, isArray: sign === "[", last: "" });
    } else if (sign === "}" || sign === "]") seen.pop();
    else if (sign === "," && top?.isArray === true) top.index += 1;
    at += 1;
  }
  return malformed("A name stands twice in one object.", {
    pointer: "",
    detail: "an object gives a name twice",
    accepted: "each name once",
  });
}

function refuseHalfPairs(value: unknown, pointer: string): void {
  if (typeof value === "string") {
    if (!value.isWellFormed()) throw halfPair(pointer);
    return;
  }
  if (typeof value !== "object" || value === null) return;
  for (const [name, item] of Object.entries(value)) {
    if (!name.isWellFormed()) throw halfPair(pointer);
    refuseHalfPairs(item, pointerTo(pointer, name));
  }
}

function halfPair(pointer: string): Problem {
  return malformed("A text is not good Unicode.", {
    pointer,
    detail: "the text holds one half of a surrogate pair",
    accepted: "whole characters: both halves of a pair, or neither",
  });
}
