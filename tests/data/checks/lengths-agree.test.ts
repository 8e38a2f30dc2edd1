import { expect, test } from "vitest";
import { lengthsAgree } from "../../../data/checks/lengths-agree";
import type { TraitStatement } from "../../../src/species";
import { leastRecord } from "../../species/records";
import { foundBy } from "./found";

const measured = (
  kind: "fish" | "shrimp" | "snail" | "frog",
  measure: "TL" | "body" | "shell" | "unstated",
) =>
  foundBy(lengthsAgree, {
    taxonomy: { ...leastRecord.taxonomy, kind },
    size: { adultLength: [{ by: "common-practice", value: 4, as: "usual", measure }] },
  });

test.each([
  ["fish", "TL"],
  ["fish", "unstated"],
  ["shrimp", "body"],
  ["snail", "shell"],
  ["frog", "body"],
] as const)("a %s may be measured by its %s", async (kind, measure) => {
  expect(await measured(kind, measure)).toStrictEqual([]);
});

test.each([
  ["fish", "shell"],
  ["snail", "TL"],
  ["shrimp", "shell"],
] as const)("a %s has no %s to measure", async (kind, measure) => {
  expect(await measured(kind, measure)).toStrictEqual([
    `data/species/danio-rerio.json: the measure ${measure} of a ${kind}`,
  ]);
});

type Length = TraitStatement<"size.adultLength">;
const line = (value: number, as: "usual" | "greatest", rest: Partial<Length> = {}): Length => ({
  by: "common-practice",
  value,
  as,
  measure: "TL",
  ...rest,
});
const outgrown = (usual: Partial<Length>, greatest: Partial<Length>, value = 48.1) =>
  foundBy(lengthsAgree, {
    size: { adultLength: [line(16, "usual", usual), line(value, "greatest", greatest)] },
  });
const told = ["data/species/danio-rerio.json: at most 48.1 cm, and usually 16.0 cm"];

test("a greatest length of more than three times the usual one says why", async () => {
  expect(await outgrown({}, {})).toStrictEqual(told);
  expect(await outgrown({}, {}, 48)).toStrictEqual([]);
  expect(await outgrown({}, { note: "Of a pond in Java." })).toStrictEqual([]);
  expect(await outgrown({}, { setAside: "Of another species." })).toStrictEqual([]);
  expect(await outgrown({ setAside: "Of young ones." }, {})).toStrictEqual([]);
  expect(await outgrown({}, { unit: "in" }, 18)).toStrictEqual([]);
  expect(await outgrown({}, { unit: "in" }, 20)).toHaveLength(1);
});

test("a length is compared with that of the same sex, and with one of no sex", async () => {
  expect(await outgrown({ sex: "male" }, { sex: "male" })).toStrictEqual(told);
  expect(await outgrown({}, { sex: "female" })).toStrictEqual(told);
  expect(await outgrown({ sex: "male" }, {})).toStrictEqual(told);
  expect(await outgrown({ sex: "male" }, { sex: "female" })).toStrictEqual([]);
});

test("no sex is usually longer than the longest of it, or of no sex", async () => {
  const found = (...adultLength: Length[]) => foundBy(lengthsAgree, { size: { adultLength } });
  const [male, female] = [{ sex: "male" }, { sex: "female" }] as const;
  const males = [line(9, "usual", male), line(10, "greatest", male)];
  expect(await found(...males, line(8, "usual", female), line(7, "greatest", female))).toStrictEqual([
    "data/species/danio-rerio.json: usually 8.0 cm, and at most 7.0 cm, of females",
  ]);
  expect(await found(...males, line(7, "usual", female), line(7, "greatest", female))).toStrictEqual([]);
  expect(await found(...males, line(11, "usual", female))).toStrictEqual([
    "data/species/danio-rerio.json: usually 11.0 cm, and at most 10.0 cm",
  ]);
  expect(
    await found(...males, line(8, "usual", female), line(7, "greatest", female), line(12, "greatest")),
  ).toStrictEqual([]);
});
