import { expect, test } from "vitest";
import { InvalidInputError } from "../../src/errors";
import type { FlowClass } from "../../src/species";
import { currents, currentsBetween, currentsFrom, currentsUpTo } from "../../src/species/inner";

test("currents run from the calmest to the strongest", () => {
  expect(currents).toStrictEqual(["still", "gentle", "moderate", "strong"]);
  expect(currentsUpTo("gentle")).toStrictEqual(["still", "gentle"]);
  expect(currentsFrom("moderate")).toStrictEqual(["moderate", "strong"]);
  expect(currentsBetween("gentle", "moderate")).toStrictEqual(["gentle", "moderate"]);
  expect(currentsBetween("strong", "strong")).toStrictEqual(["strong"]);
});

test("from the stronger to the calmer there are none, and a word that is no current is refused", () => {
  const raging = "raging" as FlowClass;
  for (const wrong of [
    () => currentsBetween("strong", "gentle"),
    () => currentsBetween(raging, "strong"),
    () => currentsBetween("still", raging),
    () => currentsUpTo(raging),
    () => currentsFrom(raging),
  ]) {
    expect(wrong).toThrow(InvalidInputError);
  }
});
