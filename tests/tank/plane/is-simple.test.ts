import { expect, test } from "vitest";
import { isSimple } from "../../../src/tank/plane/is-simple";

const points = (...corners: [number, number][]) => corners.map(([x, y]) => ({ x, y }));

test.each([
  { name: "a triangle", corners: points([0, 0], [4, 0], [0, 3]) },
  {
    name: "a square with a corner on a straight side",
    corners: points([0, 0], [2, 0], [4, 0], [4, 4], [0, 4]),
  },
  { name: "an arrow head", corners: points([0, 0], [4, 2], [0, 4], [1, 2]) },
])("$name is simple", ({ corners }) => {
  expect(isSimple(corners)).toBe(true);
  expect(isSimple([...corners].reverse())).toBe(true);
});

test.each([
  { name: "a bow tie", corners: points([0, 0], [4, 4], [4, 0], [0, 4]) },
  { name: "a corner that touches another side", corners: points([0, 0], [4, 0], [4, 4], [2, 0], [0, 4]) },
  { name: "a corner visited twice", corners: points([0, 0], [2, 2], [4, 0], [4, 4], [2, 2], [0, 4]) },
  { name: "a side that runs back on itself", corners: points([0, 0], [4, 0], [2, 0], [2, 3]) },
  {
    name: "a first side that runs back on the last",
    corners: points([2, 0], [4, 0], [2, 3], [0, 0], [3, 0]),
  },
  {
    name: "two sides in one line that overlap",
    corners: points([0, 0], [5, 0], [5, 1], [4, 0], [1, 0], [0, 1]),
  },
  { name: "a repeated corner", corners: points([0, 0], [4, 0], [4, 0], [0, 3]) },
  { name: "a first corner repeated at the end", corners: points([0, 0], [4, 0], [0, 3], [0, 0]) },
  { name: "corners in one line", corners: points([0, 0], [1, 1], [2, 2]) },
])("$name is not", ({ corners }) => {
  expect(isSimple(corners)).toBe(false);
  expect(isSimple([...corners].reverse())).toBe(false);
});
