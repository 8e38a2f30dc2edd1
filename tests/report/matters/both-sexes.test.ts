import { expect, test } from "vitest";
import type { Finding } from "../../../src/compatibility";
import { ofBothSexes } from "../../../src/report/matters/both-sexes";

const chase = (doer?: "male" | "female", from = 0): Finding => ({
  rule: "acts-own-kind",
  weight: "advisory",
  from,
  measures: { act: { value: "chases" }, ...(doer && { doer: { value: doer } }) },
  basis: "common-practice",
  traits: ["temperament.acts"],
});

test("what males and females do alike is said of both at once", () => {
  expect(ofBothSexes([chase("male"), chase("female")])).toEqual([chase()]);
});

test("what one sex does, or one sex of each of two kinds, stays with it", () => {
  const apart = [chase("male"), chase("female", 1), chase()];
  expect(ofBothSexes(apart)).toEqual(apart);
});

test("the order of the others stays", () => {
  const lid: Finding = { rule: "lid", weight: "advisory", from: 0, basis: "common-practice", traits: [] };
  expect(ofBothSexes([chase("female"), lid, chase("male")])).toEqual([chase(), lid]);
});

test("what an app's own rule says of a sex is left as the app says it", () => {
  const own = (sex: string): Finding => ({
    rule: "x-own",
    weight: "advisory",
    measures: { doer: { value: sex } },
    basis: "common-practice",
    traits: [],
  });
  expect(ofBothSexes([own("male"), own("female")])).toEqual([own("male"), own("female")]);
});
