import { describe, expect, test } from "vitest";
import { bases, basisOf, type RecordSources } from "../../../src/species";
import { weakestBasis } from "../../../src/species/inner";
import { rootOf } from "../../../src/species/record/basis";

const sources: RecordSources = {
  study: { cite: "a-study", at: "p. 4" },
  handbook: { cite: "a-handbook", memory: true },
  keeper: { cite: "a-keeper", observed: true },
  relative: { cite: "a-study", at: "p. 9", of: "Danio kyathit" },
  synonym: { cite: "a-study", at: "p. 2", under: "Brachydanio rerio" },
  mirror: { cite: "a-mirror", at: "row 7", root: "a-study" },
};

test("what was read is better than what was blended, observed, recalled, heard and computed, in that order", () => {
  expect(bases).toStrictEqual(["published", "curated", "observed", "memory", "common-practice", "derived"]);
});

test.each([
  ["a source that was read", "study", "published"],
  ["a source that knows it by another name", "synonym", "published"],
  ["a copy of a source", "mirror", "published"],
  ["a keeper who signs what was seen", "keeper", "observed"],
  ["a source that was recalled", "handbook", "memory"],
  ["the figure of a relative that stands in", "relative", "derived"],
  ["the trade", "common-practice", "common-practice"],
  ["the curator", "curator", "curated"],
])("%s: %s is %s", (_, by, basis) => {
  expect(basisOf({ by, value: 4 }, sources)).toBe(basis);
});

test("an estimate is derived, whoever printed it", () => {
  for (const by of [...Object.keys(sources), "common-practice", "curator"])
    expect(basisOf({ by, value: 4, estimate: true }, sources)).toBe("derived");
});

describe("the weakest of several", () => {
  test("is the last in the order of bases, however often it stands", () => {
    for (const [rank, basis] of bases.entries()) {
      expect(weakestBasis(bases.slice(0, rank + 1).reverse())).toBe(basis);
      expect(weakestBasis([basis, basis])).toBe(basis);
    }
  });
});

test("a copy goes back to its source, anything else to itself", () => {
  const roots = ["study", "mirror", "relative", "common-practice"].map((by) => rootOf({ by }, sources));
  expect(roots).toStrictEqual(["a-study", "a-study", "a-study", "common-practice"]);
});
