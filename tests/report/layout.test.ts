import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Block, escaped, markdown, plainText } from "../../src/report/layout";
import { runs } from "../runs";
import { hostileTexts } from "./hostile";

const blocks: readonly Block[] = [
  { lead: ["The answer.", "A second line."] },
  { title: "Reasons", items: ["one", "three"] },
  { items: ["four"] },
  { title: "Nothing", items: [] },
];

test("plain text has its titles, its list and no empty part", () => {
  expect(plainText(blocks)).toBe("The answer.\nA second line.\n\nReasons\n- one\n- three\n\n- four");
});

test("Markdown has its headings, its list and no empty part", () => {
  expect(markdown(blocks)).toBe("The answer.  \nA second line.\n\n## Reasons\n\n- one\n- three\n\n- four\n");
});

describe("a line of text", () => {
  test("is broken between words at 80 columns", () => {
    const words = "word ".repeat(40).trim();
    const lines = plainText([{ title: "Many", items: [words] }])
      .split("\n")
      .slice(1);
    expect(lines.join(" ").replaceAll(/ +/g, " ").replace("- ", "")).toBe(words);
    expect(lines.map((line) => line.length)).toEqual([76, 76, 51]);
    expect(lines[1]).toMatch(/^ {2}word/);
  });

  test("of a title is broken too", () => {
    const [first, second, item] = plainText([{ title: "word ".repeat(20), items: ["one"] }]).split("\n");
    expect([first?.length, second?.length]).toEqual([79, 19]);
    expect(item).toBe("- one");
  });

  test("of one word longer than a line is broken within it", () => {
    for (const word of ["x".repeat(300), "🐟".repeat(300)]) {
      const lines = plainText([{ title: "Long", items: [word] }])
        .split("\n")
        .slice(1);
      for (const line of lines) expect([...line].length).toBeLessThanOrEqual(80);
      expect(lines.map((line) => line.slice(2)).join("")).toBe(word);
    }
  });

  test("of an address longer than a line is left whole", () => {
    const address = `https://example.org/${"x".repeat(100)}`;
    expect(plainText([{ title: "Where", items: [`At ${address} today`] }]).split("\n")).toEqual([
      "Where",
      "- At",
      `  ${address}`,
      "  today",
    ]);
  });
});

describe("text in Markdown", () => {
  test.each([
    ["a *b* _c_ `d`", "a \\*b\\* \\_c\\_ \\`d\\`"],
    ["[x](http://y)", "\\[x\\](http\\://y)"],
    ["<b>&amp;</b>", "\\<b\\>\\&amp;\\</b\\>"],
    ["www.example.org", "www\\.example.org"],
    ["WWW.example.org", "WWW\\.example.org"],
    ["a@b.org", "a\\@b.org"],
    ["1. one", "1\\. one"],
    ["12) one", "12\\) one"],
    ["- one", "\\- one"],
    ["+ one", "\\+ one"],
    ["a (b) + c!", "a (b) + c!"],
    ["=== one", "\\=== one"],
    ["# one", "\\# one"],
    ["a | b", "a \\| b"],
    ["a\nb", "a b"],
    ["6.5 to 7.5", "6.5 to 7.5"],
    ["half-beak", "half-beak"],
  ])("%j is written %j", (text, written) => {
    expect(escaped(text)).toBe(written);
  });

  test("is escaped at its beginning after characters that nobody sees", () => {
    expect(escaped("\u200b- one")).toBe("\\- one");
    expect(escaped("\u202e1. one")).toBe("1\\. one");
  });

  test.each(hostileTexts)("%s makes no mark, link, list or mention", (_, text) => {
    expect(escaped(text)).not.toMatch(live);
  });

  test("of any letters makes none either", () => {
    const unit = fc.constantFrom(
      ...String.raw`-+*_#=|<>[]()!&~@:/.\\`.split(""),
      "www",
      "http",
      "1",
      "a",
      " ",
      "\n",
      "\t",
      "\u202e",
      "\u200d",
    );
    fc.assert(
      fc.property(fc.string({ unit, maxLength: 30 }), (text) => {
        expect(escaped(text)).not.toMatch(live);
      }),
      { numRuns: runs(2000) },
    );
  });

  test("keeps what joins letters, letters of every script, and spaces at which no line breaks", () => {
    for (const text of [
      "22\u202f°C",
      "22\u00a0°C",
      "می\u200cخواهم",
      "👨\u200d👩\u200d👧",
      "ネオンテトラ",
      "Zebrabärbling",
    ]) {
      expect(escaped(text)).toBe(text);
      expect(plainText([{ lead: [text] }])).toBe(text);
    }
  });
});

/** What Markdown would make something of, or what steers a terminal. */
const live =
  /(?<!\\)(?:\\\\)*[*_{}[\]<>#|&~@`]|(?<!\\):\/\/|\bwww\.|^\d+[.)](\s|$)|^[-=+]|(?![\u200c\u200d])\p{C}/iu;
