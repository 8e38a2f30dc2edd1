import { expect, test } from "vitest";
import { leastVolume } from "../../../src/standards/kinds/least-volume";
import { box, fishOfLength, surveyOf } from "../surveys";

const some = [{ species: fishOfLength("a", 3), unsexed: 1 }];
const rule = (of: "gross volume" | "water volume") => ({ kind: "least-volume", litres: 54, of }) as const;

test("60 x 30 x 30 cm make 54 L (2. Tierhaltungsverordnung, Annex 5, 1.1 (8) and (9))", () => {
  expect(leastVolume(rule("gross volume"), surveyOf(some, box(60, 30, 30)))).toMatchObject({
    asked: { min: 54, max: 54, unit: "L" },
    has: { of: "gross volume", min: 54, max: 54 },
    answer: "met",
  });
});

test("the volume asked for is the one compared", () => {
  const plan = surveyOf(some, { ...box(60, 30, 30), waterBelowRim: 1 });
  expect(leastVolume(rule("gross volume"), plan).answer).toBe("met");
  expect(leastVolume(rule("water volume"), plan).answer).toBe("not-met");
});
