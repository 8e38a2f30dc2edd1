import { expect, test } from "vitest";
import { bearersOfNames } from "../../src/catalog/bearers-of-names";
import type { SpeciesProfile } from "../../src/species";

const named = (
  id: string,
  name: string,
  taxonomy: Partial<SpeciesProfile["taxonomy"]> = {},
  own: Partial<SpeciesProfile> = {},
): SpeciesProfile => ({
  id,
  taxonomy: { name, authority: "", family: "", order: "", kind: "fish", ...taxonomy },
  names: {},
  ...own,
});

test("of several that bear a name the accepted one comes first, then a synonym, a vernacular name, a form", () => {
  const bearers = bearersOfNames([
    named("a-form", "A form", {}, { forms: { blue: { names: { en: ["Beta gamma"] } } } }),
    named("a-vernacular", "A vernacular", {}, { names: { de: ["BETA-GAMMA"], en: ["beta gamma"] } }),
    named("a-synonym", "A synonym", { synonyms: ["Beta gamma"] }, { names: { en: ["beta gamma"] } }),
    named("beta-gamma", "Beta gamma"),
  ]);
  expect(bearers.get("beta gamma")?.map(({ profile, form }) => [profile.id, form])).toStrictEqual([
    ["beta-gamma", undefined],
    ["a-synonym", undefined],
    ["a-vernacular", undefined],
    ["a-form", "blue"],
  ]);
});
