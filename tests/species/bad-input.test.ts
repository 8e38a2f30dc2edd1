import { describe, expect, test } from "vitest";
import { InvalidInputError } from "../../src/errors";
import {
  type AdultLength,
  applyForm,
  basisOf,
  disagreement,
  factAt,
  type LengthMeasure,
  resolve,
  type SpeciesProfile,
  type SpeciesRecord,
  splitPath,
  standardLength,
  statementsOf,
  type TraitPath,
  totalLength,
} from "../../src/species";
import {
  inTraitUnit,
  lengthsMeant,
  lengthsOfSex,
  standingValues,
  weakestBasis,
} from "../../src/species/inner";
import { recordOf } from "./records";

const record = recordOf({ size: { lifespan: [{ by: "study", value: 5, as: "usual" }] } });
const profile = resolve(record);
const given = <Wanted>(value: unknown) => value as Wanted;
const odd: readonly unknown[] = [undefined, null, 5, "danio", [], Symbol("danio"), () => record];
const circle: Record<string, unknown> = { by: "study", value: {} };
circle.value = circle;
const nested = JSON.parse("[".repeat(50_000) + "]".repeat(50_000));

describe.each(odd)("%o is refused", (value) => {
  const calls: Readonly<Record<string, () => unknown>> = {
    resolve: () => resolve(given(value)),
    "resolve, sources": () => resolve({ ...record, sources: given(value) }),
    "resolve, taxonomy": () => resolve({ ...record, taxonomy: given(value) }),
    "resolve, names": () => resolve({ ...record, names: given(value) }),
    "resolve, statement": () => resolve({ ...record, size: { lifespan: [given(value)] } }),
    applyForm: () => applyForm(given(value), "veil"),
    "applyForm, form": () => applyForm(profile, given(value)),
    disagreement: () => disagreement(given(value), "water.pH"),
    "disagreement, path": () => disagreement(record, given<TraitPath>(value)),
    factAt: () => factAt(given(value), "water.pH"),
    "factAt, path": () => factAt(profile, given<TraitPath>(value)),
    statementsOf: () => statementsOf(given(value), "water.pH"),
    basisOf: () => basisOf(given(value), {}),
    "basisOf, sources": () => basisOf({ by: "study" }, given(value)),
    weakestBasis: () => weakestBasis(given(value)),
    splitPath: () => splitPath(given(value)),
    inTraitUnit: () => inTraitUnit(given(value), "water.pH"),
    standingValues: () => standingValues("water.pH", given(value)),
    lengthsOfSex: () => lengthsOfSex(given(value), undefined),
    lengthsMeant: () => lengthsMeant(given(value), "usual"),
    totalLength: () => totalLength(given(value === 5 ? -5 : value), "SL"),
    "totalLength, measure": () => totalLength(5, given(value)),
    standardLength: () => standardLength(given(value === 5 ? 0 : value)),
  };

  test.each(Object.entries(calls))("by %s", (_, call) => {
    expect(call).toThrow(InvalidInputError);
  });
});

test.each([Number.NaN, Number.POSITIVE_INFINITY, -5, 0])("%d is no length", (length) => {
  expect(() => totalLength(length, "SL")).toThrow(InvalidInputError);
  expect(() => standardLength(length)).toThrow(InvalidInputError);
});

test.each(["x.y", "", "water", "water.temprature", "__proto__", "constructor.name"])(
  "%j is no trait",
  (name) => {
    expect(() => disagreement(record, given<TraitPath>(name))).toThrow(
      "trait: expected one of origin.regions",
    );
    expect(() => factAt(profile, given<TraitPath>(name))).toThrow(InvalidInputError);
    expect(() => statementsOf(record, given<TraitPath>(name))).toThrow(InvalidInputError);
    expect(() => standingValues(given(name), { value: 1, basis: "memory" })).toThrow(InvalidInputError);
  },
);

test("what is nested without end is refused by name", () => {
  for (const value of [circle, nested]) {
    const endless = given<SpeciesRecord>({ ...record, size: { lifespan: [{ by: "study", value }] } });
    expect(() => resolve(endless)).toThrow("expected at most 16 levels");
    expect(() => disagreement(endless, "size.lifespan")).toThrow("levels");
    expect(() => statementsOf(endless, "size.lifespan")).not.toThrow();
    const facts = given<SpeciesProfile>({ ...profile, forms: { veil: { names: {}, size: value } } });
    expect(applyForm(facts, "veil").form).toBe("veil");
  }
});

test("a number that is none is refused", () => {
  const endless = given<SpeciesRecord>({
    ...record,
    size: { lifespan: [{ by: "study", value: Number.NaN }] },
  });
  expect(() => resolve(endless)).toThrow("size.lifespan[0].value: expected a finite number");
});

test("an unknown measure, sex, meaning or basis is refused", () => {
  const lengths: readonly AdultLength[] = [
    { length: 4, measure: "TL", as: "usual", total: { min: 4, max: 4 } },
  ];
  expect(() => totalLength(4, given<LengthMeasure>("x"))).toThrow(InvalidInputError);
  expect(() => lengthsOfSex(lengths, given("both"))).toThrow(InvalidInputError);
  expect(() => lengthsMeant(lengths, given("mean"))).toThrow(InvalidInputError);
  expect(() => weakestBasis([])).toThrow("at least one basis");
  expect(() => weakestBasis([given("rumour")])).toThrow(InvalidInputError);
});

test.each([
  ["an unknown basis", { bases: ["rumour"] }, "only.bases: expected one of published"],
  ["bases that are no list", { bases: "published" }, "only.bases"],
  [
    "a wish for commercial use that is neither",
    { commercial: "yes" },
    "only.commercial: expected true or false",
  ],
  ["a wish that is no object", 5, "only: expected"],
])("%s is refused", (_, only, told) => {
  expect(() => resolve(record, { only: given(only) })).toThrow(InvalidInputError);
  expect(() => resolve(record, { only: given(only) })).toThrow(told);
});

test("a source of the record's own prototype is none", () => {
  expect(basisOf({ by: "constructor" }, {})).toBe("published");
});
