import { expect, test } from "vitest";
import { livesInFreshWater } from "../../../data/checks/lives-in-fresh-water";
import type { StatedValue } from "../../../src/species";
import { foundBy } from "./found";

const found = (...waters: readonly StatedValue<"origin.waters">[]) =>
  foundBy(livesInFreshWater, {
    origin: { waters: waters.map((value) => ({ by: "common-practice", value })) },
  });
const danio = "data/species/danio-rerio.json";

test("an animal of the sea alone is out of scope, and one of both waters is in it", async () => {
  expect(await found("marine")).toStrictEqual([`${danio}: an animal of the sea alone`]);
  expect(await found("marine", "brackish")).toStrictEqual([]);
  expect(await found("fresh")).toStrictEqual([]);
});

test("an animal of unknown water may be one of the sea", async () => {
  expect(await foundBy(livesInFreshWater, {})).toStrictEqual([`${danio}: origin.waters is unknown`]);
  expect(await found()).toHaveLength(1);
});
