import { stringify } from "csv-stringify/sync";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { splitRecords } from "./split-records.js";

const cellsOf = (text: string, delimiter = ",") => splitRecords(text, delimiter).map(({ cells }) => cells);

describe("splitting a CSV text", () => {
  it("gives back every table that a library writes", () => {
    const cell = fc.string({ unit: fc.constantFrom("a", '"', ",", ";", "\n", "\r", " ", "=", "é"), maxLength: 6 });
    const table = fc
      .integer({ min: 1, max: 5 })
      .chain((columns) =>
        fc.array(fc.array(cell, { minLength: columns, maxLength: columns }), { minLength: 1, maxLength: 6 }),
      );
    fc.assert(
      fc.property(table, fc.constantFrom(",", ";", "\t"), fc.constantFrom("\r\n", "\n"), (rows, delimiter, ending) => {
        const text = stringify(rows, { delimiter, record_delimiter: ending, quoted: true });
        expect(cellsOf(text, delimiter)).toEqual(rows);
      }),
    );
  });

  it("counts the lines on which rows begin, breaks inside quotes and all", () => {
    const rows = splitRecords('a,b\r\n"1\n2",x\r\n\r\n3,4\n"5\r\n6\r\n7",y\n8,9', ",");
    expect(rows.map(({ line, cells }) => [line, cells.map(String).join("|")])).toEqual([
      [1, "a|b"],
      [2, "1\n2|x"],
      [4, ""],
      [5, "3|4"],
      [6, "5\r\n6\r\n7|y"],
      [9, "8|9"],
    ]);
  });

  it.each([
    ['x,1/2" lug\n7,8', "inside a cell", [["7", "8"]]],
    ['"a"b,2\n7,8', "closed in the middle", [["7", "8"]]],
    ['"a\nb"c,2\n7,8', "lines between are lost", [["7", "8"]]],
  ])("makes the row of a stray quotation mark broken and no other: %j", (text, because, others) => {
    const [first, ...rest] = splitRecords(text, ",");
    expect(first?.broken).toContain(because);
    expect(rest.map(({ cells }) => cells)).toEqual(others);
    expect(rest.every(({ broken }) => broken === undefined)).toBe(true);
  });

  it("refuses a text whose quotation mark is never closed, naming the line", () => {
    expect(() => splitRecords('a,b\n1,2\n3,"x\n5,6', ",")).toThrow("opens on line 3");
  });
});
