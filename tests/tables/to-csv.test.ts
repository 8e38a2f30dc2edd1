import { parse } from "csv-parse/sync";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { InvalidInputError } from "../../src/errors";
import { toCsv } from "../../src/tables";

/** As a parser reads it that holds to RFC 4180. */
const read = (csv: string): readonly (readonly string[])[] => parse(csv, { record_delimiter: "\r\n" });

describe("CSV", () => {
  test("has a header, ends every line in CR and LF, and leaves out what is null", () => {
    const rows = [
      { name: "neon tetra", max: 26, shoals: true },
      { name: "betta", max: null, shoals: false },
    ];
    expect(toCsv(rows)).toBe("name,max,shoals\r\nneon tetra,26,true\r\nbetta,,false\r\n");
  });

  test("quotes what RFC 4180 asks to quote, and nothing else", () => {
    const rows = [{ text: 'a "b"' }, { text: "a,b" }, { text: "a\nb" }, { text: "a\rb" }, { text: "a b;'c" }];
    expect(toCsv(rows)).toBe('text\r\n"a ""b"""\r\n"a,b"\r\n"a\nb"\r\n"a\rb"\r\na b;\'c\r\n');
  });

  test("brings back every text and every number to the last digit", () => {
    const cells = fc.record({
      text: fc.string({ unit: "grapheme", minLength: 1 }),
      number: fc.double({ noDefaultInfinity: true, noNaN: true }),
    });
    fc.assert(
      fc.property(fc.array(cells, { minLength: 1 }), (rows) => {
        const [header, ...lines] = read(toCsv(rows));
        expect(header).toStrictEqual(["text", "number"]);
        expect(lines.map(([text]) => text)).toStrictEqual(rows.map(({ text }) => text));
        expect(lines.map(([, number]) => Number(number))).toEqual(rows.map(({ number }) => number + 0));
      }),
    );
  });

  test("leaves no line empty, which readers pass over, where a table has one column", () => {
    const csv = toCsv([{ max: 26 }, { max: null }, { max: 28 }]);
    expect(csv).toBe('max\r\n26\r\n""\r\n28\r\n');
    expect(parse(csv, { columns: true, skip_empty_lines: true })).toHaveLength(3);
  });

  test("has the columns that are asked for, also where there is no row", () => {
    expect(toCsv([], ["id", "value"])).toBe("id,value\r\n");
    expect(toCsv([{ value: 1 }], ["id", "value"])).toBe("id,value\r\n,1\r\n");
    expect(toCsv([])).toBe("");
  });
});

test.each([
  ["no rows", undefined],
  ["a row that is none", ["neon"]],
  ["a cell that is no number", [{ max: Number.NaN }]],
  ["an infinite number", [{ max: Infinity }]],
  ["a list in a cell", [{ names: ["neon"] }]],
  ["a row with a column that the first has not", [{ a: 1 }, { a: 1, b: 2 }]],
])("refuses %s", (_, rows) => {
  expect(() => Reflect.apply(toCsv, undefined, [rows])).toThrow(InvalidInputError);
});
