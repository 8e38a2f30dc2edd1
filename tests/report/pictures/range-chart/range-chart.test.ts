import { describe, expect, test } from "vitest";
import bettaSplendens from "vivary/catalog/betta-splendens";
import danioRerio from "vivary/catalog/danio-rerio";
import { recordById, sources } from "vivary/evidence";
import bettaRecord from "vivary/evidence/betta-splendens";
import danioRecord from "vivary/evidence/danio-rerio";
import { InvalidInputError } from "../../../../src/errors";
import { rangeChart, rangeChartIn } from "../../../../src/report";
import { german } from "../../../../src/report/de";
import {
  type FigurePath,
  type Figures,
  factAt,
  type SpeciesProfile,
  type SpeciesRecord,
  statementsOf,
} from "../../../../src/species";
import { someSpecies } from "../../../drawn";
import { hostileTexts } from "../../hostile";
import { pseudo, unmarked } from "../../messages/pseudo";
import {
  allIn,
  beyondThePage,
  extent,
  figureReader,
  ofClass,
  readSvg,
  rowsOf,
  type Seen,
  ticksOf,
} from "../read-svg";

type Span = { readonly min?: number | undefined; readonly max?: number | undefined };

const paths: readonly FigurePath[] = [
  "water.temperature",
  "water.pH",
  "water.generalHardness",
  "water.carbonateHardness",
  "water.salinity",
];
const forty = someSpecies(40, 0).slice(0, 40);

/** An animal that is kept at these temperatures. */
const keptAt = (value: Figures<Span>, name = "invented fish"): SpeciesProfile => ({
  ...danioRerio,
  names: { en: [name] },
  water: { temperature: { value, basis: "published" } },
});
const unknown: SpeciesProfile = { ...danioRerio, names: { en: ["stranger"] }, water: {} };

/** A bar as figures of the axis; an end that is a point is open. */
function spanOf(bar: Seen | undefined, svg: Seen): Span {
  if (!bar) throw new Error("No bar.");
  const { min, max } = extent(bar);
  const read = figureReader(svg);
  const corners = (bar.attributes.points ?? "").split(" ").map((pair) => Number(pair.split(",")[0]));
  const at = (x: number) => corners.filter((corner) => corner === x).length;
  const zero = min === max;
  return {
    ...((zero || at(min) === 2) && { min: read(min) }),
    ...((zero || at(max) === 2) && { max: read(max) }),
  };
}

function expectSpan(found: Span, expected: Span, within: number) {
  expect(Object.keys(found)).toEqual(Object.keys(expected));
  for (const end of ["min", "max"] as const) {
    const figure = expected[end];
    if (figure !== undefined) expect(Math.abs((found[end] ?? Number.NaN) - figure)).toBeLessThan(within);
  }
}

/** Half a hundredth of a user unit, on an axis of about 400 units, twice over. */
const hair = (svg: Seen) => {
  const ticks = ticksOf(svg);
  return ((ticks.at(-1)?.figure ?? 0) - (ticks[0]?.figure ?? 0)) / 10_000;
};

describe("the bar of a species", () => {
  test.each(paths)("ends where its span ends, read off the axis: %s", (path) => {
    const svg = readSvg(rangeChart(forty, path));
    const rows = rowsOf(svg);
    expect(rows).toHaveLength(40);
    for (const [index, species] of forty.entries()) {
      const figures = factAt(species, path)?.value;
      const [bar] = rows[index] ? ofClass(rows[index], "kept") : [];
      if (!figures) expect(bar).toBeUndefined();
      else expectSpan(spanOf(bar, svg), figures.kept, hair(svg));
    }
  });

  test("is read in °F by those who ask: 9/5 of the °C and 32", () => {
    const svg = readSvg(
      rangeChart([keptAt({ kept: { min: 20, max: 25 } })], "water.temperature", { units: "us" }),
    );
    expectSpan(spanOf(ofClass(svg, "kept")[0], svg), { min: 68, max: 77 }, hair(svg));
    expect(allIn(svg).map(({ text }) => text)).toContain("68 to 77 °F");
  });

  test("runs into a point where nobody states an end, in words too", () => {
    const svg = readSvg(
      rangeChart([keptAt({ kept: { min: 20 } }), keptAt({ kept: { max: 26 } })], "water.temperature"),
    );
    const [least, most] = rowsOf(svg);
    expectSpan(spanOf(least && ofClass(least, "kept")[0], svg), { min: 20 }, hair(svg));
    expectSpan(spanOf(most && ofClass(most, "kept")[0], svg), { max: 26 }, hair(svg));
    expect(allIn(svg).map(({ text }) => text)).toEqual(
      expect.arrayContaining(["at least 20 °C", "at most 26 °C", "no end stated"]),
    );
  });

  test("holds the best, between brackets at the limits", () => {
    const figures = {
      kept: { min: 20, max: 26 },
      optimum: { min: 22, max: 24 },
      limit: { min: 10, max: 38 },
    };
    const svg = readSvg(rangeChart([keptAt(figures)], "water.temperature"));
    const [row] = rowsOf(svg);
    if (!row) throw new Error("No row.");
    expectSpan(spanOf(ofClass(row, "optimum")[0], svg), figures.optimum, hair(svg));
    const read = figureReader(svg);
    const [lower, upper, ...more] = ofClass(row, "limit");
    expect(more).toEqual([]);
    expect(lower && read(extent(lower).min)).toBeCloseTo(10, 1);
    expect(upper && read(extent(upper).max)).toBeCloseTo(38, 1);
  });

  test("says in words what lies beyond the limits, those of sources too, in the units of the reader", () => {
    const charts = [
      rangeChart([bettaSplendens], "water.temperature", { records: [bettaRecord] }),
      rangeChart([bettaSplendens], "water.temperature", { records: [bettaRecord], units: "us" }),
      rangeChartIn(german, [bettaSplendens], "water.temperature", { records: [bettaRecord] }),
    ];
    const told = [
      "suffers or dies below 10 °C",
      "suffers or dies below 50 °F",
      "leidet oder stirbt unter 10\u202f°C",
    ];
    expect(charts.map((chart, index) => chart.split(`${told[index]};`).length > 2)).toEqual([
      true,
      true,
      true,
    ]);
    const both = keptAt({ kept: { min: 20 }, limit: { min: 10, max: 38 } });
    expect(rangeChart([both], "water.temperature")).toContain("suffers or dies outside 10 to 38 °C;");
  });

  test("of hardness is in ppm where the reader has inches, the axis too", () => {
    const chart = rangeChart([bettaSplendens], "water.generalHardness", { units: "us" });
    expect(chart).toContain("(ppm)");
    expect(chart).toContain("36 to 340 ppm");
    expect(chart).not.toContain("dH");
  });

  test("is empty and dashed where only the best is known, and named so", () => {
    const best = { min: 22, max: 24 };
    const svg = readSvg(
      rangeChart([keptAt({ kept: best, standIn: true, optimum: best })], "water.temperature"),
    );
    const [bar] = ofClass(svg, "kept");
    expect(bar?.attributes["stroke-dasharray"]).toBeDefined();
    expect(bar?.attributes["fill-opacity"]).toBe("0");
    expect(ofClass(svg, "optimum")).toEqual([]);
    expect(allIn(svg).map(({ text }) => text)).toContain("optimum 22 to 24 °C");
  });
});

describe("what all have in common", () => {
  test("is a band from the greatest of the lower ends to the least of the upper", () => {
    const three = [
      keptAt({ kept: { min: 18, max: 25 } }),
      keptAt({ kept: { min: 21, max: 28 } }),
      keptAt({ kept: { min: 20, max: 24 } }),
    ];
    const svg = readSvg(rangeChart(three, "water.temperature"));
    const [band] = ofClass(svg, "shared");
    expectSpan(spanOf(band, svg), { min: 21, max: 24 }, hair(svg));
    expect(allIn(svg).map(({ text }) => text)).toContain("Common to all: 21 to 24 °C.");
  });

  test("is said of those with figures alone where some have none", () => {
    const some = [danioRerio, unknown, danioRerio];
    const texts = allIn(readSvg(rangeChart(some, "water.temperature"))).map(({ text }) => text);
    expect(texts).toContain("Common to the 2 of 3 with figures: 18 to 26 °C.");
    expect(texts).toContain("not known");
  });

  test("is nothing where two lie apart, which are named", () => {
    const two = [
      keptAt({ kept: { min: 24, max: 30 } }, "warm fish"),
      keptAt({ kept: { max: 20 } }, "cold fish"),
    ];
    const svg = readSvg(rangeChart(two, "water.temperature"));
    expect(ofClass(svg, "shared")).toEqual([]);
    expect(allIn(svg).map(({ text }) => text)).toContain(
      "Nothing is common to all: cold fish and warm fish lie apart.",
    );
  });

  test("is not spoken of one alone, nor of two of which one is unknown", () => {
    for (const few of [[danioRerio], [danioRerio, unknown], [unknown]]) {
      const svg = readSvg(rangeChart(few, "water.temperature"));
      expect(ofClass(svg, "shared")).toEqual([]);
      expect(allIn(svg).some(({ text }) => text.startsWith("Common"))).toBe(false);
    }
  });
});

/** What is told of the lines of sources, in the order of the rows. */
const sourceTitles = (svg: Seen) =>
  rowsOf(svg).flatMap((row) => ofClass(row, "source").map(({ content }) => content[0]?.text));

describe("with records", () => {
  const recorded = forty.flatMap((species) => recordById(species.id) ?? []);

  test("what each source says of grown animals stands below, end for end", () => {
    const svg = readSvg(rangeChart(forty, "water.temperature", { records: recorded }));
    const read = figureReader(svg);
    for (const [index, record] of recorded.entries()) {
      const said = statementsOf(record, "water.temperature").filter(
        ({ value, stage = "adult" }) => value && stage === "adult",
      );
      const row = rowsOf(svg)[index];
      const lines = row ? ofClass(row, "source") : [];
      expect(lines).toHaveLength(said.length);
      for (const [at, { value, unit, as = "kept" }] of said.entries()) {
        const line = lines[at];
        if (!line || !value || unit) continue;
        expect(line.attributes.class).toBe(`source ${as}`);
        const { min, max } = extent(line);
        if (value.min !== undefined) expect(Math.abs(read(min) - value.min)).toBeLessThan(hair(svg));
        if (value.max !== undefined) expect(Math.abs(read(max) - value.max)).toBeLessThan(hair(svg));
      }
    }
  });

  test("each says who says it, what it means, the figure and what it rests on", () => {
    const svg = readSvg(
      rangeChart([danioRerio, bettaSplendens], "water.temperature", { records: [bettaRecord, danioRecord] }),
    );
    const titles = sourceTitles(svg);
    expect(titles).toContain("kept: common practice; 18 to 26 °C");
    expect(titles).toContain("kept: fishbase-2020; 24 to 30 °C; published");
  });

  test("each goes by author and year where the bibliography is at hand, in any language", () => {
    const given = { records: [danioRecord], sources };
    const titles = sourceTitles(readSvg(rangeChart([danioRerio], "water.temperature", given)));
    expect(titles).toContain("kept: FishBase; 18 to 24 °C; published");
    expect(titles).toContainEqual(expect.stringMatching(/^tested: Reed and Jennings 2011; 25 to 29 °C/));
    const inGerman = readSvg(rangeChartIn(german, [danioRerio], "water.temperature", given));
    expect(sourceTitles(inGerman)).toContainEqual(expect.stringContaining(": Reed und Jennings 2011; "));
  });

  test("a source that the bibliography does not tell of goes by its key", () => {
    const given = { records: [danioRecord], sources: { fishbase: sources.fishbase } };
    const titles = sourceTitles(readSvg(rangeChart([danioRerio], "water.temperature", given)));
    expect(titles).toContainEqual(expect.stringMatching(/^tested: rspca; /));
  });

  test("what does not count says so, and a source's unit is converted", () => {
    const record: SpeciesRecord = {
      ...danioRecord,
      water: {
        temperature: [
          { by: "yanar", value: { min: 68, max: 77 }, unit: "degF", as: "kept" },
          { by: "yanar", value: { min: 5 }, as: "kept", setAside: "Of ponds." },
          { by: "yanar", value: { min: 28 }, as: "kept", stage: "fry" },
        ],
      },
    };
    const svg = readSvg(rangeChart([danioRerio], "water.temperature", { records: [record] }));
    const titles = sourceTitles(svg);
    expect(titles).toEqual([
      expect.stringMatching(/^kept: yanar; 20 to 25 °C/),
      expect.stringMatching(/^kept, set aside: yanar; at least 5 °C/),
    ]);
  });

  test("what a form states stands in place of what its species states of the same", () => {
    const record: SpeciesRecord = {
      ...danioRecord,
      water: { temperature: [{ by: "yanar", value: { min: 18, max: 24 }, as: "kept" }] },
      forms: {
        veil: {
          names: { en: ["veil"] },
          water: { temperature: [{ by: "yanar", value: { min: 22 }, as: "kept" }] },
        },
      },
    };
    const svg = readSvg(
      rangeChart([{ ...danioRerio, form: "veil" }], "water.temperature", { records: [record] }),
    );
    expect(sourceTitles(svg)).toEqual([expect.stringContaining("at least 22 °C")]);
  });
});

describe("a reader who does not see it", () => {
  test("is told what it is and every figure, in words", () => {
    const svg = readSvg(rangeChart([danioRerio, unknown], "water.temperature"));
    expect(svg.attributes.role).toBe("img");
    const [title, desc] = svg.content;
    expect([title?.name, title?.text]).toEqual(["title", "Temperature (°C)"]);
    expect(desc?.name).toBe("desc");
    expect(desc?.text).toMatch(/Zebra danio \(Danio rerio\): 18 to 26 °C; .*; (published|common practice)\./);
    expect(desc?.text).toContain("Stranger (Danio rerio): not known.");
  });

  test("finds no colour that means something", () => {
    const drawn = rangeChart(forty, "water.generalHardness");
    const colours = [...drawn.matchAll(/(?:fill|stroke)="([^"]+)"/g)].map(([, colour]) => colour);
    expect(new Set(colours)).toEqual(new Set(["none", "currentColor"]));
  });
});

test("a name too long for its column is shortened, and stands in full in the title of its row", () => {
  const name = "exceedingly long-winded ornamental zebra danio of the lower Brahmaputra";
  const [row] = rowsOf(readSvg(rangeChart([{ ...danioRerio, names: { en: [name] } }], "water.temperature")));
  expect(row?.content[0]?.text).toContain(name.slice(1));
  expect(row?.content[1]?.text).toMatch(/^Exceedingly long.*…$/);
});

test("pH keeps its small letter at the head", () => {
  expect(readSvg(rangeChart([danioRerio], "water.pH")).content[0]?.text).toBe("pH");
});

test("German has German words and commas", () => {
  const svg = readSvg(rangeChart([danioRerio, bettaSplendens], "water.pH", { messages: german }));
  const texts = allIn(svg).map(({ text }) => text);
  expect(texts).toContain("Zebrabärbling");
  expect(texts.some((text) => text.startsWith("Gemeinsam haben alle: "))).toBe(true);
  expect(texts).toContain("7,5");
});

test("no word of it lives outside the language", () => {
  const some = [
    keptAt({ kept: { min: 20 } }, "1"),
    keptAt({ kept: { max: 26 } }, "2"),
    { ...unknown, names: { en: ["3"] } },
  ];
  const numbered = some.map((species) => ({ ...species, taxonomy: { ...species.taxonomy, name: "0" } }));
  for (const { name, text } of allIn(readSvg(rangeChartIn(pseudo, numbered, "water.temperature")))) {
    if (name === "title" || name === "text" || name === "desc") expect(unmarked(text)).not.toMatch(/\p{L}/u);
  }
});

test.each(hostileTexts)("%s in every text of a species breaks no picture", (_, text) => {
  const taxonomy = { ...danioRerio.taxonomy, name: text };
  const hostile: SpeciesProfile = { ...danioRerio, names: { en: [text] }, taxonomy };
  const record: SpeciesRecord = {
    ...danioRecord,
    sources: { [text]: { cite: text, at: text } },
    water: { temperature: [{ by: text, value: { min: 20, max: 24 }, as: "kept", note: text }] },
  };
  const drawn = rangeChart([hostile, danioRerio], "water.temperature", { records: [record] });
  expect(drawn).not.toMatch(/(?![\u200c\u200d])\p{C}|[\u2028\u2029]/u);
  const svg = readSvg(drawn);
  const names = new Set(allIn(svg).map(({ name }) => name));
  for (const name of names) {
    expect(["svg", "g", "title", "desc", "text", "line", "polygon", "polyline"]).toContain(name);
  }
  expect(beyondThePage(svg)).toEqual([]);
});

test.each([
  [[], "water.temperature"],
  ["danio-rerio", "water.temperature"],
  [[{}], "water.temperature"],
  [[danioRerio], "water.flow"],
  [[danioRerio], "size.adultLength"],
  [[danioRerio], "toString"],
  [[danioRerio], "water.temperature", { units: "cubits" }],
  [[danioRerio], "water.temperature", { records: {} }],
  [[danioRerio], "water.temperature", null],
  [[keptAt({ kept: { min: 26, max: 20 } })], "water.temperature"],
])("what cannot be drawn is refused: %#", (...given) => {
  expect(() => Reflect.apply(rangeChart, undefined, given)).toThrow(InvalidInputError);
});

test("nothing that is given is changed, and the same gives the same", () => {
  const before = structuredClone(danioRecord);
  const draw = () => rangeChart(forty, "water.temperature", { records: [danioRecord] });
  expect(draw()).toBe(draw());
  expect(danioRecord).toEqual(before);
});
