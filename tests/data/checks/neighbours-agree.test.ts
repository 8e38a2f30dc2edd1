import { expect, test } from "vitest";
import { neighboursAgree } from "../../../data/checks/neighbours-agree";
import { foundBy } from "./found";

/** The least that so many animals need: cm of length, or cm² of floor. */
const needs = (number: number, least: number) => ({
  by: "common-practice" as const,
  value: { for: number, least },
});
type Rooms = ReturnType<typeof needs>[];

const cases: [string, { baseLength: Rooms; footprint: Rooms }, string[]][] = [
  [
    "more room for more animals",
    { baseLength: [needs(6, 80), needs(12, 100)], footprint: [needs(6, 3000), needs(12, 4000)] },
    [],
  ],
  [
    "as much room for more animals, the larger number said first",
    { baseLength: [needs(12, 80), needs(6, 80)], footprint: [needs(6, 3000), needs(12, 3000)] },
    [],
  ],
  [
    "a shorter tank for more animals",
    { baseLength: [needs(12, 70), needs(6, 80)], footprint: [needs(6, 3000)] },
    ["data/species/danio-rerio.json: a smaller tank for more animals"],
  ],
  [
    "a smaller floor for more animals",
    { baseLength: [needs(6, 80)], footprint: [needs(12, 2900), needs(6, 3000)] },
    ["data/species/danio-rerio.json: a smaller tank for more animals"],
  ],
];

test.each(cases)("%s", async (_, space, found) => {
  expect(await foundBy(neighboursAgree, { space })).toStrictEqual(found);
});
