import { readdirSync } from "node:fs";
import { expect, test } from "vitest";
import { allSpecies } from "vivary/catalog";
import danioRerio from "vivary/catalog/danio-rerio";
import { assessPlan } from "../../src/compatibility";
import { lawgivers } from "../../src/plan";

const files = readdirSync(new URL("../../data/legal", import.meta.url));

test("lawgivers are those of whom there are laws, and nobody can change the list", () => {
  expect([...lawgivers].sort()).toEqual(files.map((file) => file.replace(/\.json$/, "")).sort());
  expect(Object.isFrozen(lawgivers)).toBe(true);
});

test("each can be named by a plan, and whoever is the lawgiver of a listing is among them", () => {
  const base = { shape: "rectangle", length: 100, width: 40 } as const;
  const plan = { tank: { base }, groups: [{ species: danioRerio, unsexed: 8 }], jurisdiction: lawgivers };
  expect(() => assessPlan(plan)).not.toThrow();
  const codes = allSpecies.flatMap(({ listings = [] }) => listings.map(({ code }) => code));
  expect(lawgivers).toEqual(expect.arrayContaining(codes));
});
