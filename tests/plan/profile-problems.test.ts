import { describe, expect, test } from "vitest";
import { allSpecies } from "vivary/catalog";
import danioRerio from "vivary/catalog/danio-rerio";
import { assessPair, assessPlan } from "../../src/compatibility";
import { InvalidInputError } from "../../src/errors";
import { profileProblems } from "../../src/plan/profile-problems";
import { describe as report } from "../../src/report";
import { applyForm, type SpeciesProfile } from "../../src/species";

const problemsOf = (profile: unknown) =>
  profileProblems(profile, ["species"]).map(({ path }) => path.join("."));

test("every species and form of the catalog is a profile", () => {
  for (const species of allSpecies) {
    expect(profileProblems(species, [])).toEqual([]);
    for (const form of Object.keys(species.forms ?? {})) {
      expect(profileProblems(applyForm(species, form), [])).toEqual([]);
    }
  }
});

const fact = (value: unknown) => ({ value, basis: "published" });
const broken: readonly (readonly [string, unknown, string])[] = [
  ["nothing", undefined, "species"],
  ["an id alone", "danio-rerio", "species"],
  ["a list", [danioRerio], "species"],
  ["no id", { ...danioRerio, id: undefined }, "species.id"],
  [
    "a taxonomy without a name",
    { ...danioRerio, taxonomy: { ...danioRerio.taxonomy, name: 7 } },
    "species.taxonomy.name",
  ],
  ["a newt", { ...danioRerio, taxonomy: { ...danioRerio.taxonomy, kind: "newt" } }, "species.taxonomy.kind"],
  [
    "a kind called toString",
    { ...danioRerio, taxonomy: { ...danioRerio.taxonomy, kind: "toString" } },
    "species.taxonomy.kind",
  ],
  ["no names", { ...danioRerio, names: undefined }, "species.names"],
  ["a name that is no list", { ...danioRerio, names: { en: "zebra danio" } }, "species.names"],
  ["a name by number", { ...danioRerio, names: { en: [7] } }, "species.names"],
  ["water in words", { ...danioRerio, water: { temperature: "hot" } }, "species.water.temperature"],
  ["a section that is a text", { ...danioRerio, social: "shoal" }, "species.social.living"],
  ["a fact without a value", { ...danioRerio, water: { pH: {} } }, "species.water.pH"],
  [
    "figures without a kept span",
    { ...danioRerio, water: { pH: fact({ optimum: { min: 6 } }) } },
    "species.water.pH.value",
  ],
  [
    "a temperature that is no number",
    { ...danioRerio, water: { temperature: fact({ kept: { min: Number.NaN } }) } },
    "species.water.temperature.value",
  ],
  [
    "a rival value that is no number",
    { ...danioRerio, water: { pH: { ...fact({ kept: { min: 6 } }), also: [{ kept: { min: Infinity } }] } } },
    "species.water.pH.value",
  ],
  [
    "hearsay",
    { ...danioRerio, effects: { digs: { value: false, basis: "hearsay" } } },
    "species.effects.digs.basis",
  ],
  ["no lengths", { ...danioRerio, size: { adultLength: fact([]) } }, "species.size.adultLength.value"],
  [
    "a length without its total",
    { ...danioRerio, size: { adultLength: fact([{ length: 4 }]) } },
    "species.size.adultLength.value",
  ],
  [
    "a length that no fish has",
    { ...danioRerio, size: { adultLength: fact([{ total: { min: 0.05, max: 1200 }, as: "usual" }]) } },
    "species.size.adultLength.value",
  ],
  [
    "lengths without ends",
    { ...danioRerio, size: { adultLength: fact([{ total: {}, as: "usual" }]) } },
    "species.size.adultLength.value",
  ],
  [
    "weights in mg",
    { ...danioRerio, size: { ...danioRerio.size, lengthWeight: fact({ a: 12, b: 3 }) } },
    "species.size.lengthWeight.value",
  ],
  [
    "weights that grow too fast",
    { ...danioRerio, size: { ...danioRerio.size, lengthWeight: fact({ a: 0.01, b: 4.2 }) } },
    "species.size.lengthWeight.value",
  ],
  [
    "rival weights that grow too slowly",
    {
      ...danioRerio,
      size: {
        ...danioRerio.size,
        lengthWeight: { ...fact({ a: 0.01, b: 3 }), also: [{ a: 0.01, b: 1 }] },
      },
    },
    "species.size.lengthWeight.value",
  ],
  [
    "one zone that is no list",
    { ...danioRerio, space: { zones: fact("surface") } },
    "species.space.zones.value",
  ],
  ["a meal of nothing", { ...danioRerio, predation: { eats: fact([null]) } }, "species.predation.eats.value"],
  [
    "endless nesting",
    { ...danioRerio, temperament: { acts: fact([[[[[[[[[[7]]]]]]]]]]) } },
    "species.temperament.acts.value",
  ],
  ["a form that is nothing", { ...danioRerio, forms: { veil: null } }, "species.forms.veil"],
  ["a form without names", { ...danioRerio, forms: { veil: {} } }, "species.forms.veil.names"],
  [
    "a form with water in words",
    { ...danioRerio, forms: { veil: { names: {}, water: { pH: "low" } } } },
    "species.forms.veil.water.pH",
  ],
  ["a law in words", { ...danioRerio, listings: "banned" }, "species.listings"],
  ["a law that is nothing", { ...danioRerio, listings: [null] }, "species.listings"],
];

describe("what is no profile", () => {
  test.each(broken)("is told from one: %s", (_, profile, path) => {
    expect(problemsOf(profile)).toContain(path);
  });

  test.each(broken)("is refused by every judgement: %s", (_, profile) => {
    const species = profile as SpeciesProfile;
    expect(() => assessPair({ species }, { species: danioRerio })).toThrow(InvalidInputError);
    expect(() =>
      assessPlan({
        tank: { base: { shape: "rectangle", length: 100, width: 40 } },
        groups: [{ species, unsexed: 6 }],
      }),
    ).toThrow(InvalidInputError);
  });

  test("says everything at once", () => {
    expect(problemsOf({})).toEqual([
      "species.id",
      "species.taxonomy.name",
      "species.taxonomy.family",
      "species.taxonomy.order",
      "species.taxonomy.kind",
      "species.names",
    ]);
  });
});

describe("a profile that can still be changed", () => {
  const { water } = danioRerio;
  const changeable = { ...danioRerio, water: { ...water } };

  test("is looked at again", () => {
    expect(problemsOf(changeable)).toEqual([]);
    Object.assign(changeable.water, { temperature: "hot" });
    expect(problemsOf(changeable)).toEqual(["species.water.temperature"]);
  });
});

test("a profile that knows next to nothing is one, and can be told of", () => {
  const { id, taxonomy } = danioRerio;
  const species = { id, taxonomy, names: {} };
  expect(report(assessPair({ species }, { species }))).toContain("Danio rerio");
});
