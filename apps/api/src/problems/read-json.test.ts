import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Problem } from "./problem.js";
import { readJson } from "./read-json.js";

function refusal(text: string): Problem {
  try {
    readJson(Buffer.from(text));
  } catch (error) {
    return error as Problem;
  }
  throw new Error(`${text} was read`);
}

describe("reading JSON", () => {
  it.each([
    '{"a":1,"b":{"a":2}}',
    '[{"a":1},{"a":1}]',
    '{"a":"\\"x\\":1","b":"\\\\"}',
    '{"a\\"b" : 1 , "a" :\n2}',
    '{"a":"b","b":"a"}',
    '"text"',
    "1",
    '{"":{"":1}}',
    '{"a":"😀 \\ud83d\\ude00"}',
  ])("takes %s as it is", (text) => {
    expect(readJson(Buffer.from(text))).toEqual({ value: JSON.parse(text) as unknown, text });
  });

  it("takes whatever JSON was written from a value", () => {
    fc.assert(
      fc.property(fc.jsonValue({ maxDepth: 8 }), fc.constantFrom(undefined, 1, "\t"), (value, space) => {
        const text = JSON.stringify(value, null, space);
        expect(readJson(Buffer.from(text))).toEqual({ value: JSON.parse(text) as unknown, text });
      }),
    );
  });

  it("refuses a name given twice wherever it stands, with a pointer to it", () => {
    fc.assert(
      fc.property(fc.array(fc.constantFrom("list", "object"), { maxLength: 6 }), (nest) => {
        const wrap = (inner: string, kind: string): string =>
          kind === "list" ? `[0, ${inner}]` : `{"k":1,"n":${inner}}`;
        const text = nest.reduceRight(wrap, '{"x":"a","y":{"x":0},"x":2}');
        const pointer = [...nest.map((kind) => (kind === "list" ? "1" : "n")), "x"].map((step) => `/${step}`).join("");
        expect(refusal(text)).toMatchObject({ code: "MALFORMED_JSON", faults: [{ pointer }] });
      }),
    );
  });

  it.each([
    ['{"a/b":1,"a/b":2}', "/a~1b"],
    ['{"a~b":1,"a~b":2}', "/a~0b"],
    ['{"a":{"b":1},"c":[{"d":1},{"d":1,"e":{},"d":2}]}', "/c/1/d"],
    ['{"a":"\\ud800"}', "/a"],
    ['{"a":["x","\\uDFFF"]}', "/a/1"],
  ])("refuses %s at %s", (text, pointer) => {
    expect(refusal(text)).toMatchObject({ code: "MALFORMED_JSON", faults: [{ pointer }] });
  });

  it.each([
    [32, true],
    [33, false],
  ])("nesting of %d levels is taken: %s", (levels, taken) => {
    const text = `${"[".repeat(levels)}${"]".repeat(levels)}`;
    if (taken) expect(readJson(Buffer.from(text))).toEqual({ value: JSON.parse(text) as unknown, text });
    else expect(refusal(text)).toMatchObject({ code: "MALFORMED_JSON" });
  });
});
