import { expect, test } from "vitest";
import { appetiteFor, preyKinds } from "../../../src/compatibility/animals/prey";

test("the nearest kin that a record names decides, the animal's own class first", () => {
  const shrimps = [{ prey: "shrimp", greatest: 3 }] as const;
  expect(appetiteFor(shrimps, preyKinds.crayfish.grown)).toEqual({ of: "shrimp", greatest: 3 });
  const both = [...shrimps, { prey: "crayfish", greatest: 2 }] as const;
  expect(appetiteFor(both, preyKinds.crayfish.grown)).toEqual({ of: "crayfish", greatest: 2 });
  expect(appetiteFor(both, preyKinds.fish.grown)).toBeUndefined();
});

test("of several lengths the greatest counts, beside lines that name none", () => {
  const lines = [
    { prey: "fish", greatest: 3 },
    { prey: "fish", greatest: 5 },
  ] as const;
  expect(appetiteFor(lines, ["fish"])).toEqual({ of: "fish", greatest: 5 });
  expect(appetiteFor([...lines, { prey: "fish" }], ["fish"])).toEqual({ of: "fish", greatest: 5 });
});

test("who eats the grown eats the young, of every kind", () => {
  for (const { grown, young } of Object.values(preyKinds)) {
    for (const prey of grown) expect(young).toContain(prey);
  }
});
