import { expect, test } from "vitest";
import { problemsWith } from "../../problems";

const sources = { study: { cite: "a-study" } };
const trade = "common-practice";
const adopt = "Fits what keepers see.";

test("of two adopted statements on one thing the second is a problem", () => {
  const lifespan = [
    { by: "study", value: 4, adopt },
    { by: trade, value: 5, adopt },
  ];
  expect(problemsWith({ sources, size: { lifespan } })).toStrictEqual([
    ["size.lifespan[1].adopt", "one adopted statement; size.lifespan[0] is adopted too"],
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
  const lifespan = [{ by: trade, value: 4, adopt, setAside: "An outlier." }];
  expect(problemsWith({ size: { lifespan } })).toStrictEqual([
    ["size.lifespan[0]", "adopt or setAside, not both"],
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
