import { expect, test } from "vitest";
import { speciesIn } from "../../../src/plan";
import { saved } from "./cases";

test("the species to load before a plan is parsed, each once", () => {
  expect(speciesIn(saved)).toEqual(["puntigrus-tetrazona", "danio-rerio"]);
  expect(speciesIn({ groups: [...saved.groups, ...saved.groups] })).toEqual([
    "puntigrus-tetrazona",
    "danio-rerio",
  ]);
});

const boom = () => {
  throw new Error("boom");
};

test.each([
  undefined,
  null,
  "danio-rerio",
  [],
  {},
  { groups: "danio-rerio" },
  { groups: [null, 7, {}, { species: 7 }, []] },
  Object.defineProperty({}, "groups", { get: boom }),
  { groups: [Object.defineProperty({}, "species", { get: boom })] },
])("what cannot be read names none: %#", (plan) => {
  expect(speciesIn(plan)).toEqual([]);
});
