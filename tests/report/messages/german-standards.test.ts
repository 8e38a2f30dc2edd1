import { expect, test } from "vitest";
import { readFolder, root } from "../../../data/reading/files";
import { articleIn, instrumentIn, placeIn, standardIn } from "../../../src/report/messages/german-standards";
import type { Jurisdiction } from "../../../src/standards/inner";
import { singlesOf } from "../../../src/standards/singles-of";

const standards = (await readFolder(root, "standards")).map(({ json }) => json as Jurisdiction);
const instruments = standards.flatMap((standard) => standard.instruments);
const requirements = instruments.flatMap((instrument) => instrument.requirements);

/** Titles that are wholly as the law has them, and articles that German and English write alike. */
const alike = [
  "Regolamento comunale sulla tutela degli animali, Roma",
  "Regolamento n. 320 per la tutela ed il benessere degli animali in città, Torino",
  "Föreskrifter och allmänna råd om djur avsedda för sällskap och hobby, DFS 2005:8 (L 80)",
  "Tierschutzverordnung (SR 455.1), Art. 89",
];

test("German has a name for the place of every requirement", () => {
  expect(standards.filter(({ name }) => placeIn(name) === name)).toEqual([]);
});

test("German has the title of every instrument", () => {
  const titles = instruments.map(({ title }) => title);
  expect(titles.filter((title) => !alike.includes(title) && instrumentIn(title) === title)).toEqual([]);
});

test("German says where every requirement stands", () => {
  const articles = requirements.flatMap(singlesOf).map(({ article }) => article);
  const left = articles.filter(
    (article) => !/^Art\. [\d ()]+$/.test(article) && articleIn(article) === article,
  );
  expect(left).toEqual([]);
  expect(articles.map(articleIn).filter((article) => /annex|table|note|line|chapter/i.test(article))).toEqual(
    [],
  );
});

const texts = [
  ...instruments.map(({ caution }) => caution),
  ...requirements.flatMap(({ asks, note }) => [asks, note ?? []].flat()),
];

test("German tells what every requirement asks, its note and its caution", () => {
  expect(texts.filter((text) => standardIn(text).startsWith("auf Englisch: "))).toEqual([]);
});

/** The figures of a text in order of size, whichever mark parts their decimals. */
const figuresOf = (text: string) =>
  (text.match(/(?<![\p{L}\d])\d+(?:[.,]\d+)*/gu) ?? []).map((figure) => figure.replace(",", ".")).sort();

test("with the same figures", () => {
  for (const text of texts) expect(figuresOf(standardIn(text)), text).toEqual(figuresOf(text));
});

test("a text that nobody translated is said to be English", () => {
  expect(standardIn("Whales are not kept.")).toBe("auf Englisch: Whales are not kept.");
  expect(articleIn("Art. 7")).toBe("Art. 7");
});
