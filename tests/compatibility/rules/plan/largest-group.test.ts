import { expect, test } from "vitest";
import bettaSplendens from "vivary/catalog/betta-splendens";
import mikrogeophagusRamirezi from "vivary/catalog/mikrogeophagus-ramirezi";
import paracheirodonInnesi from "vivary/catalog/paracheirodon-innesi";
import { largestGroup } from "../../../../src/compatibility/rules/plan/largest-group";
import { animal, type Stated } from "../../animals";
import { planBy } from "../../judging";

const kept = (stated: Stated, unsexed: number) =>
  planBy(largestGroup, [{ species: animal("fish", stated), unsexed }]);

const paired: Stated = {
  "social.living": "pair",
  "social.group": { least: 1, avoid: { min: 3, max: 5 } },
  "social.largestGroup": 2,
};

test("more than belong together are worth knowing, and change no outcome", () => {
  expect(kept(paired, 6)).toMatchObject({
    outcome: "suitable",
    bounds: { atBest: "suitable", atWorst: "suitable" },
    findings: [{ weight: "advisory", measures: { most: { value: 2 }, planned: { value: 6 } } }],
    conditions: [],
    open: [],
  });
});

test("as many as belong together, and fewer, are no matter", () => {
  for (const few of [1, 2]) expect(kept(paired, few).findings).toEqual([]);
});

test("a number that is to be passed is not called too many besides", () => {
  for (const avoided of [3, 4, 5]) expect(kept(paired, avoided).findings).toEqual([]);
});

test("loners are told of by the rule on numbers", () => {
  const loner: Stated = { "social.living": "alone", "social.largestGroup": 1 };
  expect(kept(loner, 3).findings).toEqual([]);
  expect(planBy(largestGroup, [{ species: bettaSplendens, females: 5 }]).findings).toEqual([]);
});

test("where nobody states a largest group, nothing is told and nothing stays open", () => {
  const { findings, open } = kept({ "social.living": "shoal", "social.group": { least: 6 } }, 60);
  expect([findings, open]).toEqual([[], []]);
  expect(planBy(largestGroup, [{ species: paracheirodonInnesi, unsexed: 100 }]).open).toEqual([]);
});

test("two pairs of rams are four rams, though the plan lists them apart", () => {
  const pair = { species: mikrogeophagusRamirezi, males: 1, females: 1 };
  expect(planBy(largestGroup, [pair]).findings).toEqual([]);
  expect(planBy(largestGroup, [pair, pair]).findings).toMatchObject([
    { measures: { planned: { value: 4 } } },
    { measures: { planned: { value: 4 } } },
  ]);
});
