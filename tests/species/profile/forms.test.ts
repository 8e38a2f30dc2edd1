import { describe, expect, test } from "vitest";
import { allSpecies } from "../../../src/catalog";
import { InvalidInputError } from "../../../src/errors";
import { applyForm, resolve, traitPaths } from "../../../src/species";
import { freeze } from "../freeze";
import { at } from "../json";
import { recordOf } from "../records";

const trade = "common-practice";
const veil = {
  names: { en: ["veil danio"] },
  appearance: { longFins: [{ by: trade, value: true }] },
  temperament: { acts: [{ by: trade, value: "none" as const }] },
};
const danio = freeze(
  resolve(
    recordOf({
      appearance: {
        longFins: [{ by: trade, value: false }],
        looks: [{ by: trade, value: { tag: "long-stripe" } }],
      },
      temperament: { acts: [{ by: trade, value: { does: "chases", target: "own-kind" } }] },
      effects: { digs: [{ by: trade, value: false }] },
      forms: { veil, leopard: { names: { en: ["leopard danio"] } } },
    }),
  ),
);

test("a form has the traits it states, and the species' own beside them", () => {
  expect(applyForm(danio, "veil")).toStrictEqual({
    ...danio,
    form: "veil",
    names: { en: ["veil danio"] },
    appearance: { ...danio.appearance, longFins: { value: true, basis: trade, said: [trade] } },
    temperament: { acts: { value: [], basis: trade, said: [trade] } },
  });
});

test("a form that states no trait differs in name only", () => {
  expect(applyForm(danio, "leopard")).toStrictEqual({
    ...danio,
    form: "leopard",
    names: { en: ["leopard danio"] },
  });
});

test("an unknown form is refused with those there are", () => {
  for (const form of ["golden", "", "Veil", "names", "__proto__", "constructor"]) {
    expect(() => applyForm(danio, form)).toThrow(InvalidInputError);
    expect(() => applyForm(danio, form)).toThrow("form of danio-rerio (veil, leopard)");
  }
  const { forms, ...plain } = danio;
  expect(() => applyForm(plain, "veil")).toThrow("form of danio-rerio (no form)");
});

test("names are the form's by language, else the species'", () => {
  const named = { ...danio, names: { en: ["zebra danio"], de: ["Zebrabärbling"] } };
  expect(applyForm(named, "veil").names).toStrictEqual({ en: ["veil danio"], de: ["Zebrabärbling"] });
});

test("a form applied twice changes nothing, another one over it is refused", () => {
  const applied = applyForm(danio, "veil");
  expect(applyForm(applied, "veil")).toBe(applied);
  expect(() => applyForm(applied, "leopard")).toThrow(InvalidInputError);
  expect(() => applyForm(applied, "leopard")).toThrow("its form veil which is applied");
});

describe("of the catalog", () => {
  const formed = allSpecies.flatMap((profile) =>
    Object.entries(profile.forms ?? {}).map(([form, own]) => ({
      name: `${profile.id}, ${form}`,
      profile,
      form,
      own,
    })),
  );

  test.each(formed)("$name: every trait is the form's, else the species'", ({ profile, form, own }) => {
    const applied = applyForm(profile, form);
    for (const trait of traitPaths) {
      const place = trait.split(".");
      expect(at(applied, place), trait).toStrictEqual(at(own, place) ?? at(profile, place));
    }
  });
});

test("a form keeps the ids it once bore, which are no traits", () => {
  const once = ["long-fin", "lyre-tail"];
  const { forms = {} } = resolve(recordOf({ forms: { veil: { ...veil, once } } }));
  expect(forms.veil?.once).toEqual(once);
  const species = resolve(recordOf({ forms: { veil: { ...veil, once } } }));
  const { forms: _, ...applied } = applyForm(species, "veil");
  expect(applied).not.toHaveProperty("once");
});

test("laws of a form stand beside those of the species, and are refused where they are no list", () => {
  const law = {
    code: "eu",
    jurisdiction: "x",
    instrument: "x",
    date: "2001",
    effect: "x",
    basis: "memory",
  } as const;
  const named = (listings: unknown) =>
    ({ ...danio, listings: [law], forms: { lit: { names: {}, listings } } }) as unknown as typeof danio;
  expect(applyForm(named([{ ...law, code: "us" }]), "lit").listings?.map(({ code }) => code)).toEqual([
    "eu",
    "us",
  ]);
  expect(applyForm(named(undefined), "lit").listings).toEqual([law]);
  for (const wrong of [5, "ab", {}]) expect(() => applyForm(named(wrong), "lit")).toThrow(InvalidInputError);
});
