import { expectTypeOf, test } from "vitest";
import bettaSplendens from "vivary/catalog/betta-splendens";
import bettaRecord from "vivary/evidence/betta-splendens";
import type {
  AdultLength,
  Basis,
  Fact,
  Figures,
  SizeForGroup,
  SpeciesProfile,
  SpeciesRecord,
  StatedValue,
  Statements,
  TraitPath,
  TraitStatement,
  TraitValue,
} from "../../src/species";
import { disagreement } from "../../src/species";

type Trait<S extends keyof Statements, N extends keyof NonNullable<SpeciesProfile[S]>> = NonNullable<
  NonNullable<SpeciesProfile[S]>[N]
>;

test("what the catalog exports is a profile, what the evidence exports a record", () => {
  expectTypeOf(bettaSplendens).toEqualTypeOf<SpeciesProfile>();
  expectTypeOf(bettaRecord).toEqualTypeOf<SpeciesRecord>();
});

test("the traits of water are these and no others", () => {
  type Chemistry = "pH" | "generalHardness" | "carbonateHardness" | "salinity" | "oxygenNeed";
  type Water = Chemistry | "temperature" | "coolSeason" | "flow" | "airBreathing";
  expectTypeOf<keyof NonNullable<SpeciesProfile["water"]>>().toEqualTypeOf<Water>();
  expectTypeOf<keyof NonNullable<SpeciesRecord["water"]>>().toEqualTypeOf<Water>();
  expectTypeOf<Extract<TraitPath, `water.${string}`>>().toEqualTypeOf<`water.${Water}`>();
});

test("a trait that is not declared does not compile", () => {
  expectTypeOf<"colour">().not.toExtend<keyof SpeciesProfile>();
  expectTypeOf<"water.temprature">().not.toExtend<TraitPath>();
  // @ts-expect-error: temprature is no trait
  const misspelt: Statements = { water: { temprature: [] } };
  // @ts-expect-error: middle is no zone
  const unheard: Statements = { space: { zones: [{ by: "common-practice", value: "middle" }] } };
  expectTypeOf([misspelt, unheard]).toEqualTypeOf<Statements[]>();
});

test("a statement says what its trait holds", () => {
  expectTypeOf<StatedValue<"space.zones">>().toEqualTypeOf<"surface" | "midwater" | "bottom">();
  expectTypeOf<StatedValue<"size.lifespan">>().toEqualTypeOf<number>();
  expectTypeOf<StatedValue<"space.baseLength">>().toEqualTypeOf<SizeForGroup>();
  expectTypeOf<"none">().toExtend<StatedValue<"temperament.acts">>();
  expectTypeOf<NonNullable<NonNullable<SpeciesRecord["effects"]>["digs"]>>().toEqualTypeOf<
    readonly TraitStatement<"effects.digs">[]
  >();
});

test("a fact holds the value, its basis and whole other values", () => {
  expectTypeOf<Trait<"water", "temperature">>().toEqualTypeOf<
    Fact<Figures<StatedValue<"water.temperature">>>
  >();
  expectTypeOf<Trait<"water", "temperature">["value"]["kept"]["min"]>().toEqualTypeOf<number | undefined>();
  expectTypeOf<Trait<"size", "adultLength">["value"]>().toEqualTypeOf<readonly AdultLength[]>();
  expectTypeOf<Trait<"space", "baseLength">["value"]>().toEqualTypeOf<readonly SizeForGroup[]>();
  expectTypeOf<Trait<"size", "lifespan">["value"]["greatest"]>().toEqualTypeOf<number | undefined>();
  expectTypeOf<Trait<"social", "living">["said"]>().toEqualTypeOf<readonly string[] | undefined>();
  expectTypeOf<Trait<"social", "living">["value"]>().toEqualTypeOf<
    "alone" | "pair" | "harem" | "group" | "shoal" | "either"
  >();
  expectTypeOf<Trait<"space", "zones">["also"]>().toEqualTypeOf<
    readonly (readonly ("surface" | "midwater" | "bottom")[])[] | undefined
  >();
  expectTypeOf<Basis>().toEqualTypeOf<
    "published" | "curated" | "observed" | "memory" | "common-practice" | "derived"
  >();
});

test('once resolved, "none" is an empty list', () => {
  expectTypeOf<"none">().not.toExtend<TraitValue<"temperament.acts">[number]>();
  expectTypeOf<TraitValue<"care.hazards">>().toEqualTypeOf<
    readonly ("venom" | "spines" | "bite" | "shock")[]
  >();
});

test("any trait may be unknown", () => {
  expectTypeOf<undefined>().toExtend<SpeciesProfile["water"]>();
  expectTypeOf(bettaSplendens.water?.temperature?.value.optimum?.max).toEqualTypeOf<number | undefined>();
});

test("a disagreement is typed by its trait", () => {
  const [row] = disagreement(bettaRecord, "diet.pace");
  expectTypeOf(row?.standing[0]?.value).toEqualTypeOf<"slow" | "ordinary" | "fast" | undefined>();
  expectTypeOf(disagreement<"water.pH">)
    .parameter(1)
    .toEqualTypeOf<"water.pH">();
});
