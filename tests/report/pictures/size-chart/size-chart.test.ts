import { describe, expect, test } from "vitest";
import { allSpecies } from "vivary/catalog";
import danioRerio from "vivary/catalog/danio-rerio";
import neocaridinaDavidi from "vivary/catalog/neocaridina-davidi";
import { InvalidInputError } from "../../../../src/errors";
import { sizeChart, sizeChartIn } from "../../../../src/report";
import { german } from "../../../../src/report/de";
import type { AdultLength, SpeciesProfile } from "../../../../src/species";
import { someSpecies } from "../../../drawn";
import { hostileTexts } from "../../hostile";
import { pseudo, unmarked } from "../../messages/pseudo";
import {
  allIn,
  beyondThePage,
  extent,
  figureReader,
  ofClass,
  pointsOf,
  readSvg,
  rowsOf,
  type Seen,
} from "../read-svg";

const forty = someSpecies(40, 0);

const total = (length: number, as: AdultLength["as"], more: Partial<AdultLength> = {}): AdultLength => ({
  length,
  measure: "TL",
  as,
  total: { min: length, max: length },
  ...more,
});

/** A fish of these lengths, as deep as a share of its standard length. */
const fishOf = (
  lengths: readonly AdultLength[],
  depth?: number,
  kind: SpeciesProfile["taxonomy"]["kind"] = "fish",
): SpeciesProfile => ({
  ...danioRerio,
  taxonomy: { ...danioRerio.taxonomy, kind },
  size: {
    ...(lengths.length > 0 && { adultLength: { value: lengths, basis: "published" } }),
    standardShare: { value: 0.8, basis: "published" },
    ...(depth !== undefined && { bodyDepthShare: { value: depth, basis: "published" } }),
  },
});

const textsOf = (seen: Seen) => allIn(seen).map(({ text }) => text);

/** The element that shows the length, an outline or a bar. */
const bodiesOf = (svg: Seen) =>
  rowsOf(svg).flatMap((row) => [...ofClass(row, "outline"), ...ofClass(row, "length")]);

test.each(["metric", "us"] as const)("no name nor figure of the catalog is cut: %s", (units) => {
  const charts = [sizeChart(allSpecies, { units }), sizeChart(allSpecies, { units, messages: german })];
  const texts = charts.flatMap((svg) => rowsOf(readSvg(svg)).flatMap(textsOf));
  expect(texts.length).toBeGreaterThan(allSpecies.length * 4);
  expect(texts.filter((text) => text.includes("…"))).toEqual([]);
});

describe("every animal", () => {
  test.each(["metric", "us"] as const)("begins at nought and is as long as its usual adult: %s", (units) => {
    const svg = readSvg(
      sizeChart([fishOf([total(4, "usual")], 0.25), fishOf([total(40, "usual")])], { units }),
    );
    const read = figureReader(svg);
    // An inch is 2.54 cm.
    const unit = units === "us" ? 2.54 : 1;
    const lengths = bodiesOf(svg).map(extent);
    expect(lengths.map(({ min }) => read(min))).toEqual([0, 0]);
    for (const [index, cm] of [4, 40].entries()) {
      expect(read(lengths[index]?.max ?? 0) * unit).toBeCloseTo(cm, 1);
    }
  });

  test("of known depth is as deep as its share of the standard length, at the scale of its length", () => {
    // 20 cm in all, 16 cm without the tail fin, of which half: 8 cm.
    const svg = readSvg(sizeChart([fishOf([total(20, "usual")], 0.5)]));
    const [path] = allIn(rowsOf(svg)[0] ?? svg).filter(({ name }) => name === "path");
    const heights = path ? pointsOf(path).map(([, y]) => y) : [];
    const { min, max } = extent(path ?? svg);
    const centimetre = (max - min) / 20;
    expect((Math.max(...heights) - Math.min(...heights)) / centimetre).toBeCloseTo(8, 1);
  });

  test("that is no fish, or whose depth nobody knows, is a bar, and the key says so", () => {
    const svg = readSvg(sizeChart([neocaridinaDavidi, fishOf([total(5, "usual")])]));
    expect(ofClass(svg, "outline")).toEqual([]);
    expect(textsOf(svg)).toContain("usual adult length; depth not known");
  });

  test("has a line on to its greatest length, and both in words", () => {
    const svg = readSvg(sizeChart([fishOf([total(20, "usual"), total(30, "greatest")])]));
    const [line] = ofClass(rowsOf(svg)[0] ?? svg, "greatest");
    expect(line && figureReader(svg)(extent(line).max)).toBeCloseTo(30, 1);
    expect(textsOf(svg)).toEqual(expect.arrayContaining(["usual 20 cm", "greatest 30 cm"]));
  });

  test("of which only the greatest length is known is dashed and empty, and the key says so", () => {
    const svg = readSvg(sizeChart([fishOf([total(30, "greatest")])]));
    expect(bodiesOf(svg)[0]?.attributes["stroke-dasharray"]).toBeDefined();
    expect(textsOf(svg)).toContain("greatest length; the usual one is not known");
  });

  test("measured without its tail is drawn as long as it may be, with a mark where it may end", () => {
    const standard = total(16, "usual", { measure: "SL", total: { min: 18.8, max: 20 } });
    const svg = readSvg(sizeChart([fishOf([standard])]));
    const read = figureReader(svg);
    expect(read(extent(bodiesOf(svg)[0] ?? svg).max)).toBeCloseTo(20, 1);
    const [mark] = ofClass(rowsOf(svg)[0] ?? svg, "reckoned");
    expect(mark && read(extent(mark).min)).toBeCloseTo(18.8, 1);
    const measured = readSvg(sizeChart([fishOf([standard, total(19, "usual")])]));
    expect(textsOf(measured)).toContain("usual 19 cm");
  });

  test("that nobody has measured says so", () => {
    const svg = readSvg(sizeChart([fishOf([]), fishOf([])]));
    expect(rowsOf(svg).map((row) => textsOf(row).includes("not known"))).toEqual([true, true]);
    expect(bodiesOf(svg)).toEqual([]);
  });
});

describe("the sexes", () => {
  const of = (length: number, sex: "male" | "female", as: AdultLength["as"] = "usual") =>
    total(length, as, { sex });

  test("have a row each where their lengths differ, with what is said of either", () => {
    const svg = readSvg(sizeChart([fishOf([of(3, "male"), of(5, "female"), of(7, "female", "greatest")])]));
    const rows = rowsOf(svg);
    expect(rows.map((row) => textsOf(row).filter((text) => /^(male|female)$/.test(text)))).toEqual([
      ["male"],
      ["female"],
    ]);
    const read = figureReader(svg);
    expect(bodiesOf(svg).map((body) => Math.round(read(extent(body).max)))).toEqual([3, 5]);
    expect(rows.map((row) => ofClass(row, "greatest").length)).toEqual([0, 1]);
  });

  test("a greatest length that may be of the other is dashed and named so", () => {
    const svg = readSvg(sizeChart([fishOf([of(3, "male"), of(5, "female"), total(6, "greatest")])]));
    for (const row of rowsOf(svg)) {
      expect(textsOf(row)).toContain("greatest 6 cm (either sex)");
      expect(ofClass(row, "greatest")[0]?.content[0]?.attributes["stroke-dasharray"]).toBeDefined();
    }
  });

  test("of a ray are all of its disc, and never of its tail beside that", () => {
    const disc = (length: number, as: AdultLength["as"], more: Partial<AdultLength> = {}) =>
      total(length, as, { measure: "disc", ...more });
    const ray = fishOf([
      ...[total(100, "greatest"), total(60, "usual"), disc(50, "greatest")],
      ...[disc(45, "usual", { sex: "female" }), disc(40, "usual", { sex: "male" })],
    ]);
    const svg = readSvg(sizeChart([ray]));
    const read = figureReader(svg);
    expect(bodiesOf(svg).map((body) => Math.round(read(extent(body).max)))).toEqual([40, 45]);
    for (const row of rowsOf(svg)) expect(textsOf(row)).toContain("greatest disc 50 cm (either sex)");
  });

  test("are one row where nobody tells them apart", () => {
    expect(rowsOf(readSvg(sizeChart([danioRerio])))).toHaveLength(1);
  });
});

test("forty species all stand on the page, each told in the description", () => {
  const svg = readSvg(sizeChart(forty));
  expect(beyondThePage(svg)).toEqual([]);
  const desc = svg.content.find(({ name }) => name === "desc")?.text ?? "";
  for (const { taxonomy } of forty) expect(desc).toContain(taxonomy.name);
});

test("it is an image with a title, in no colour of its own", () => {
  const drawn = sizeChart(forty);
  const svg = readSvg(drawn);
  expect(svg.attributes.role).toBe("img");
  expect(svg.content[0]).toMatchObject({ name: "title", text: "Adult length (cm)" });
  const colours = [...drawn.matchAll(/(?:fill|stroke)="([^"]+)"/g)].map(([, colour]) => colour);
  expect(new Set(colours)).toEqual(new Set(["none", "currentColor"]));
});

test("German has German words", () => {
  const texts = textsOf(readSvg(sizeChart([danioRerio, neocaridinaDavidi], { messages: german })));
  expect(texts).toEqual(expect.arrayContaining(["Endgröße (cm)", "Zebrabärbling", "Weibchen"]));
});

test("no word of it lives outside the language", () => {
  const some = [fishOf([total(4, "usual", { sex: "male" }), total(6, "greatest")], 0.3), fishOf([])];
  const numbered = some.map((species) => ({
    ...species,
    names: {},
    taxonomy: { ...species.taxonomy, name: "0" },
  }));
  for (const { name, text } of allIn(readSvg(sizeChartIn(pseudo, numbered)))) {
    if (name === "title" || name === "text" || name === "desc") expect(unmarked(text)).not.toMatch(/\p{L}/u);
  }
});

test.each(hostileTexts)("%s in the names of a species breaks no picture", (_, text) => {
  const taxonomy = { ...danioRerio.taxonomy, name: text };
  const drawn = sizeChart([{ ...danioRerio, names: { en: [text] }, taxonomy }, danioRerio]);
  expect(drawn).not.toMatch(/(?![\u200c\u200d])\p{C}|[\u2028\u2029]/u);
  const svg = readSvg(drawn);
  for (const { name } of allIn(svg)) {
    expect(["svg", "g", "title", "desc", "text", "line", "polygon", "path", "circle"]).toContain(name);
  }
  expect(beyondThePage(svg)).toEqual([]);
});

test.each([[[]], ["danio-rerio"], [[{}]], [[danioRerio], { units: "cubits" }], [[danioRerio], null]])(
  "what cannot be drawn is refused: %#",
  (...given) => {
    expect(() => Reflect.apply(sizeChart, undefined, given)).toThrow(InvalidInputError);
  },
);
