import { describe, expect, test } from "vitest";
import { problemsWith } from "../../problems";

const sources = { study: { cite: "a-study", at: "p. 4" } };
const trade = "common-practice";
const adopt = "Fits what keepers see.";

test("of two adopted statements on one thing the second is a problem", () => {
  const height = [
    { by: "study", value: 40, adopt },
    { by: trade, value: 50, adopt },
  ];
  expect(problemsWith({ sources, space: { height } })).toStrictEqual([
    ["space.height[1].adopt", "one adopted statement; space.height[0] is adopted too"],
  ]);
});

test("one may be adopted for each meaning and for each sex", () => {
  const usual = { as: "usual", measure: "TL", adopt };
  const adultLength = [
    { by: trade, value: 4, sex: "male", ...usual },
    { by: trade, value: 5, sex: "female", ...usual },
    { by: trade, value: 6, ...usual, as: "greatest" },
  ];
  expect(problemsWith({ size: { adultLength } })).toStrictEqual([]);
});

test("grown animals are meant with and without saying so", () => {
  const temperature = [
    { by: "study", value: { min: 18, max: 24 }, as: "kept", adopt },
    { by: trade, value: { min: 18, max: 26 }, as: "kept", stage: "adult", adopt },
    { by: trade, value: { min: 24, max: 28 }, as: "kept", stage: "fry", adopt },
  ];
  expect(problemsWith({ sources, water: { temperature } })).toMatchObject([
    ["water.temperature[1].adopt", {}],
  ]);
});

test("no statement is both adopted and set aside", () => {
  const height = [{ by: trade, value: 40, adopt, setAside: "An outlier." }];
  expect(problemsWith({ space: { height } })).toStrictEqual([
    ["space.height[0].setAside", "adopt or setAside, not both"],
  ]);
});

test("nothing is said twice by one source, but two sources may agree", () => {
  const zones = [
    { by: "study", value: "bottom" },
    { by: trade, value: "bottom" },
    { by: trade, value: "bottom", note: "Again." },
  ];
  expect(problemsWith({ sources, space: { zones } })).toStrictEqual([
    ["space.zones[2]", "something space.zones[1] does not say already"],
  ]);
});

test("one source may have come to one figure in two tests", () => {
  const limit = { by: "study", value: { max: 38 }, as: "limit", endpoint: "balance" };
  const temperature = [
    { ...limit, acclimatedAt: 20 },
    { ...limit, acclimatedAt: 25 },
    { ...limit, acclimatedAt: 25, endpoint: "death" },
    { ...limit, acclimatedAt: 25 },
  ];
  expect(problemsWith({ sources, water: { temperature } })).toStrictEqual([
    ["water.temperature[3]", "something water.temperature[1] does not say already"],
  ]);
});

test("a note on several things may repeat", () => {
  const cover = [
    { by: trade, note: "Leaves serve." },
    { by: trade, note: "Roots serve." },
  ];
  expect(problemsWith({ space: { cover } })).toStrictEqual([]);
});

test('"none" stands alone, unless it is set aside', () => {
  const chases = { by: trade, value: { does: "chases", target: "any" } };
  const none = { by: "study", value: "none" };
  expect(problemsWith({ sources, temperament: { acts: [none, chases] } })).toStrictEqual([
    ["temperament.acts", '"none" alone, or the others alone'],
  ]);
  const refuted = { ...none, setAside: "Seen in the morning only." };
  expect(problemsWith({ sources, temperament: { acts: [refuted, chases] } })).toStrictEqual([]);
  expect(
    problemsWith({ sources, temperament: { acts: [none, { by: trade, note: "Calm." }] } }),
  ).toStrictEqual([]);
});

describe("of sources that are as well supported as each other and say otherwise", () => {
  const sources = {
    study: { cite: "a-study", at: "p. 4" },
    survey: { cite: "a-survey", at: "table 2" },
    handbook: { cite: "a-handbook", memory: true },
    keeper: { cite: "a-keeper", observed: true },
    relative: { cite: "a-study", at: "p. 9", of: "Danio kyathit" },
    cousin: { cite: "a-survey", at: "table 3", of: "Danio" },
  };
  /** The problems of such statements, with those of the sources that they name. */
  const problems = (
    trait: string,
    ...statements: { readonly by: string; readonly [field: string]: unknown }[]
  ) => {
    const named = Object.entries(sources).filter(([key]) => statements.some(({ by }) => by === key));
    const [section = "", name = ""] = trait.split(".");
    return problemsWith({ sources: Object.fromEntries(named), [section]: { [name]: statements } });
  };
  const said = (at: number, other: number, trait: string) => [
    [`${trait}[${at}]`, `one of them with adopt; ${trait}[${other}] is as well supported and says otherwise`],
  ];

  test("one is to be adopted, or the other set aside", () => {
    const study = { by: "study", value: 40 };
    const survey = { by: "survey", value: 50 };
    expect(problems("space.height", study, survey)).toStrictEqual(said(1, 0, "space.height"));
    expect(problems("space.height", study, { ...survey, adopt })).toStrictEqual([]);
    expect(problems("space.height", study, { ...survey, setAside: "A misprint." })).toStrictEqual([]);
  });

  test("nothing is asked where they agree, be it in another unit", () => {
    const study = { by: "study", value: 40 };
    expect(problems("space.height", study, { by: "survey", value: 40 })).toStrictEqual([]);
    expect(problems("space.height", study, { by: "survey", value: 0.4, unit: "m" })).toStrictEqual([]);
  });

  test("nothing is asked where they agree, in whatever order the fields of a value stand", () => {
    const study = { by: "study", value: { min: "gentle", max: "moderate" } };
    const survey = { by: "survey", value: { max: "moderate", min: "gentle" } };
    expect(problems("water.flow", study, survey)).toStrictEqual([]);
    expect(problems("water.flow", study, { ...survey, by: "study" })).toStrictEqual([
      ["water.flow[1]", "something water.flow[0] does not say already"],
    ]);
  });

  test.each([
    ["published", "study", "survey"],
    ["derived", "relative", "cousin"],
  ])("it matters among %s ones", (_, by, other) => {
    expect(problems("space.height", { by, value: 40 }, { by: other, value: 50 })).toHaveLength(1);
  });

  test("only the best supported have to be told apart", () => {
    const recalled = { by: "handbook", value: 50 };
    const watched = { by: "keeper", value: 45 };
    const figures = [{ by: trade, value: 60 }, recalled, watched, { by: "relative", value: 70 }];
    expect(problems("space.height", ...figures)).toStrictEqual([]);
    expect(problems("space.height", ...figures, { by: trade, value: 65 })).toStrictEqual([]);
    expect(problems("space.height", ...figures, { by: "study", value: 40 })).toStrictEqual([]);
    expect(
      problems("space.height", ...figures, { by: "study", value: 40 }, { by: "survey", value: 41 }),
    ).toStrictEqual(said(5, 4, "space.height"));
  });

  test("an estimate gives way to what was measured, and ties with another estimate", () => {
    const estimate = { by: "study", value: 40, estimate: true };
    expect(problems("space.height", estimate, { by: "survey", value: 50 })).toStrictEqual([]);
    expect(problems("space.height", estimate, { by: "survey", value: 50, estimate: true })).toHaveLength(1);
  });

  test("spans differ only in an end that both have", () => {
    const upTo = { by: "study", value: { max: 36 }, as: "tolerated" };
    expect(
      problems("water.temperature", upTo, { by: "survey", value: { min: 10 }, as: "tolerated" }),
    ).toStrictEqual([]);
    expect(
      problems("water.temperature", upTo, { by: "survey", value: { min: 10, max: 36 }, as: "tolerated" }),
    ).toStrictEqual([]);
    expect(
      problems("water.temperature", upTo, { by: "survey", value: { min: 10, max: 35 }, as: "tolerated" }),
    ).toStrictEqual(said(1, 0, "water.temperature"));
  });

  test("spans differ that lie apart, be an end of each unknown", () => {
    const upTo = { by: "study", value: { max: 26 }, as: "kept" };
    const from = { by: "survey", value: { min: 28 }, as: "kept" };
    expect(problems("water.temperature", upTo, from)).toStrictEqual(said(1, 0, "water.temperature"));
    expect(problems("water.temperature", from, upTo)).toStrictEqual(said(1, 0, "water.temperature"));
  });

  test("each is compared with all before it, also where the first states another end", () => {
    const study = { by: "study", value: { min: 10 }, as: "tolerated" };
    const survey = { by: "survey", value: { max: 36 }, as: "tolerated" };
    const again = { by: "survey", value: { max: 38 }, as: "tolerated" };
    expect(problems("water.temperature", study, survey, again)).toStrictEqual(
      said(2, 1, "water.temperature"),
    );
  });

  test.each(["wild", "tested"])("%s figures decide nothing, and may differ", (as) => {
    const study = { by: "study", value: { min: 10 }, as };
    expect(problems("water.temperature", study, { by: "survey", value: { min: 12 }, as })).toStrictEqual([]);
  });

  test("of each meaning, number of animals and stage one is to be told apart", () => {
    const study = { by: "study", value: 4, as: "usual", measure: "TL" };
    const survey = { ...study, by: "survey", value: 5 };
    expect(problems("size.adultLength", study, { ...survey, as: "greatest" })).toStrictEqual([]);
    expect(problems("size.adultLength", study, { ...survey, measure: "SL" })).toStrictEqual([]);
    expect(problems("size.adultLength", study, survey)).toStrictEqual(said(1, 0, "size.adultLength"));
    const room = (by: string, least: number, count: number) => ({ by, value: { least, for: count } });
    expect(problems("space.baseLength", room("study", 60, 1), room("survey", 90, 6))).toStrictEqual([]);
    expect(problems("space.baseLength", room("study", 60, 6), room("survey", 90, 6))).toHaveLength(1);
  });

  test("what adds up is never torn", () => {
    const zones = [
      { by: "study", value: "bottom" },
      { by: "survey", value: "midwater" },
    ];
    expect(problems("space.zones", ...zones)).toStrictEqual([]);
  });
});
