import { expect, test } from "vitest";
import carassiusAuratus from "vivary/catalog/carassius-auratus";
import trichogasterLalius from "vivary/catalog/trichogaster-lalius";
import { planting } from "../../../../src/compatibility/rules/pair/planting";
import { describe as inWords } from "../../../../src/report";
import { animal, type Stated } from "../../animals";
import { pairBy } from "../../judging";

const untroubled: Stated = {
  "space.grownInPlants": false,
  "effects.eatsPlants": false,
  "effects.uproots": false,
};
const dweller = (id: string, stated: Stated = {}) => ({ species: animal(id, { ...untroubled, ...stated }) });
const found = (a: Stated, b: Stated = {}) => pairBy(planting, dweller("a", a), dweller("b", b)).findings;
const planted: Stated = { "space.grownInPlants": true };

test("holds tough plants beside those that eat, none beside those that uproot; who does it comes first", () => {
  for (const [harm, word, weight] of [
    [{ "effects.eatsPlants": true }, "eats", "advisory"],
    [{ "effects.uproots": true }, "uproots", "blocking"],
  ] as const) {
    expect(found(planted, harm)).toMatchObject([
      { weight, from: 1, to: 0, measures: { harm: { value: word } } },
    ]);
    expect(found(harm, planted)).toMatchObject([
      { weight, from: 0, to: 1, measures: { harm: { value: word } } },
    ]);
  }
});

test("that nobody needs may be eaten", () => {
  expect(found({ "effects.eatsPlants": true }, { "effects.uproots": true })).toEqual([]);
});

test("whose needs or whose harm nobody knows may be lost", () => {
  for (const trait of ["space.grownInPlants", "effects.uproots", "effects.eatsPlants"] as const) {
    const stated: Stated = { ...untroubled, ...planted, "effects.uproots": trait === "space.grownInPlants" };
    const { [trait]: _, ...known } = stated;
    const other = dweller("b", trait === "space.grownInPlants" ? { "effects.uproots": true } : planted);
    const { bounds, open } = pairBy(planting, { species: animal("a", known) }, other);
    expect([trait, bounds.atBest]).toEqual([trait, "suitable"]);
    expect(open).toMatchObject([{ of: 0, trait, reason: "missing" }]);
  }
});

test("in a keeper's tank: a goldfish pulls out what a dwarf gourami lives in, and the report says who", () => {
  const verdict = pairBy(planting, { species: trichogasterLalius }, { species: carassiusAuratus });
  expect(verdict.outcome).toBe("unsuitable");
  expect(inWords(verdict)).toContain("Goldfish pull plants out, and dwarf gouramis cannot do without them");
  expect(pairBy(planting, { species: carassiusAuratus }, { species: carassiusAuratus }).findings).toEqual([]);
});
