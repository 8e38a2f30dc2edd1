import { expect, test } from "vitest";
import { neighboursAgree } from "../../../data/checks/neighbours-agree";
import { foundBy } from "./found";

const room = (number: number, least: number) => ({
  by: "common-practice" as const,
  value: { for: number, least },
});
const found = (lengths: readonly [number, number][], floors: readonly [number, number][]) =>
  foundBy(neighboursAgree, {
    space: {
      baseLength: lengths.map(([number, least]) => room(number, least)),
      footprint: floors.map(([number, least]) => room(number, least)),
    },
  });

test("the tank for more animals is never smaller", async () => {
  const smaller = ["data/species/danio-rerio.json: a smaller tank for more animals"];
  expect(
    await found(
      [
        [6, 80],
        [12, 100],
      ],
      [
        [6, 3000],
        [12, 4000],
      ],
    ),
  ).toStrictEqual([]);
  expect(
    await found(
      [
        [12, 80],
        [6, 80],
      ],
      [
        [6, 3000],
        [12, 3000],
      ],
    ),
  ).toStrictEqual([]);
  expect(
    await found(
      [
        [12, 70],
        [6, 80],
      ],
      [[6, 3000]],
    ),
  ).toStrictEqual(smaller);
  expect(
    await found(
      [[6, 80]],
      [
        [12, 2900],
        [6, 3000],
      ],
    ),
  ).toStrictEqual(smaller);
});
