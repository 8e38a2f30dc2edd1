// What no keeper would call suitable, checked on every pair of the catalog by nothing but figures and words of the profiles.
import { describe, expect, test } from "vitest";
import { allSpecies } from "vivary/catalog";
import { assessPair, type Outcome, type Verdict } from "../../src/compatibility";
import type { PartialRange } from "../../src/ranges";
import type { SpeciesProfile, StatedValue } from "../../src/species";
import { renumbered } from "./mapped";

type Pair = readonly [SpeciesProfile, SpeciesProfile];
type Eats = readonly Exclude<StatedValue<"predation.eats">, "none">[];
type Acts = readonly Exclude<StatedValue<"temperament.acts">, "none">[];

/** Every two species, one of them first; none beside itself. */
const pairs: readonly Pair[] = allSpecies.flatMap((a, index) =>
  allSpecies.slice(index + 1).map((b) => [a, b] as const),
);
const verdicts = new Map<Pair, Verdict>(
  pairs.map((pair) => [pair, assessPair({ species: pair[0] }, { species: pair[1] })]),
);
const outcomeOf = (pair: Pair): Outcome | undefined => verdicts.get(pair)?.outcome;

/** The pairs of which something holds one way or the other, and of these those that are called what they must not be. */
function held(holds: (one: SpeciesProfile, other: SpeciesProfile) => boolean, never: readonly Outcome[]) {
  const about = pairs.filter(([a, b]) => holds(a, b) || holds(b, a));
  const wrong = about.filter((pair) => never.some((outcome) => outcome === outcomeOf(pair)));
  return { number: about.length, wrong: wrong.map(([a, b]) => `${a.id} beside ${b.id}`) };
}

const eats = ({ predation }: SpeciesProfile): Eats => predation?.eats?.value ?? [];
const zones = ({ space }: SpeciesProfile) => space?.zones?.value ?? [];
const acts = ({ temperament }: SpeciesProfile): Acts => temperament?.acts?.value ?? [];

/** Total lengths in cm that are usual, each the longest that it may be; the greatest where none is usual. */
function lengths({ size }: SpeciesProfile): readonly number[] {
  const all = size?.adultLength?.value ?? [];
  const usual = all.filter(({ as }) => as === "usual");
  // Of a tail fin a fifth of the whole at most: standardShare 0.80 to 0.85.
  return (usual.length > 0 ? usual : all).map(({ length, measure }) =>
    measure === "TL" || measure === undefined ? length : length / 0.8,
  );
}
const smallest = (species: SpeciesProfile) => Math.min(...lengths(species));

/** A hunter that feeds at the surface alone leaves alone what never leaves the ground. */
const isOutOfReach = ({ diet }: SpeciesProfile, prey: SpeciesProfile) =>
  (diet?.reach?.value ?? [""]).every((zone) => zone === "surface") &&
  (zones(prey).length > 0 ? zones(prey) : [""]).every((zone) => zone === "bottom");

/** Crayfish and crabs get what their claws reach, not what their mouths take. */
const hasClaws = ({ taxonomy: { kind } }: SpeciesProfile) => kind === "crayfish" || kind === "crab";

/** How much two spans share; less than nothing where they lie apart. */
const shared = (a: PartialRange, b: PartialRange) =>
  Math.min(a.max ?? Infinity, b.max ?? Infinity) - Math.max(a.min ?? -Infinity, b.min ?? -Infinity);

const isLongFinned = ({ appearance }: SpeciesProfile) => appearance?.longFins?.value === true;
const isSlow = ({ diet }: SpeciesProfile) => diet?.pace?.value === "slow";

/** Whether a fish nips fins at any time, of any or of such, where another lives. */
const nips = (nipper: SpeciesProfile, other: SpeciesProfile, targets: readonly string[]) =>
  other.taxonomy.kind === "fish" &&
  zones(nipper).some((zone) => zones(other).includes(zone)) &&
  acts(nipper).some(
    ({ does, target, when }) =>
      does === "nips-fins" && targets.includes(target) && (when === undefined || when === "always"),
  );

describe("of all pairs of the catalog", () => {
  test("there are as many as there should be", () => {
    expect(pairs.length).toBe((allSpecies.length * (allSpecies.length - 1)) / 2);
    expect(pairs.length).toBeGreaterThan(10_000);
  });

  test("none is called suitable of which one is no longer than what a source saw the other eat", () => {
    const { number, wrong } = held(
      (hunter, prey) => {
        const greatest = eats(hunter).flatMap((eaten) =>
          eaten.prey === prey.taxonomy.kind ? (eaten.greatest ?? []) : [],
        );
        return !isOutOfReach(hunter, prey) && Math.max(0, ...greatest) >= smallest(prey);
      },
      ["suitable"],
    );
    expect(wrong).toEqual([]);
    expect(number).toBeGreaterThan(300);
  });

  test("none is called suitable of which one eats the other's kind, of no stated length, and could swallow it", () => {
    const { number, wrong } = held(
      (hunter, prey) => {
        const named = eats(hunter).filter((eaten) => eaten.prey === prey.taxonomy.kind);
        const isOpen = named.length > 0 && named.every(({ greatest }) => greatest === undefined);
        const isShort = prey.taxonomy.kind !== "fish" || smallest(prey) * 5 <= Math.min(...lengths(hunter));
        return isOpen && isShort && !isOutOfReach(hunter, prey) && !hasClaws(hunter);
      },
      ["suitable"],
    );
    expect(wrong).toEqual([]);
    expect(number).toBeGreaterThan(30);
  });

  test("none is called suitable or conditional whose kept temperatures lie apart by more than figures are rounded", () => {
    // Each end of a kept temperature gives way by half a degree, one that is a handbook's class by a whole one.
    const { number, wrong } = held(
      (warm, cold) => {
        const [low, high] = [warm.water?.temperature?.value, cold.water?.temperature?.value];
        const least = (low?.kept.min ?? Number.NaN) - (low?.precision?.min ? 1 : 0.5);
        return least > (high?.kept.max ?? Number.NaN) + (high?.precision?.max ? 1 : 0.5);
      },
      ["suitable", "conditional"],
    );
    expect(wrong).toEqual([]);
    expect(number).toBeGreaterThan(30);
  });

  const narrow = { temperature: 2, pH: 0.5, generalHardness: 2 } as const;

  test.each(["temperature", "pH", "generalHardness"] as const)(
    "none is called suitable whose kept %s leaves no room to spare",
    (figure) => {
      const { number, wrong } = held(
        (one, other) => {
          const [a, b] = [one, other].map(({ water }) => water?.[figure]?.value.kept);
          return a !== undefined && b !== undefined && shared(a, b) < narrow[figure] - 1e-9;
        },
        ["suitable"],
      );
      expect(wrong).toEqual([]);
      expect(number).toBeGreaterThan(100);
    },
  );

  test("none is possible of animals of fresh water alone and of others that are never kept in it", () => {
    const [fresh, brackish] = [
      allSpecies.filter(({ water }) => (water?.salinity?.value.kept.max ?? Number.NaN) <= 0.5),
      allSpecies.filter(({ water }) => (water?.salinity?.value.kept.min ?? 0) > 0.5),
    ];
    expect(fresh.length).toBeGreaterThan(100);
    expect(brackish.length).toBeGreaterThan(1);
    const { number, wrong } = held(
      (one, other) => fresh.includes(one) && brackish.includes(other),
      ["suitable", "conditional", "undetermined"],
    );
    expect(wrong).toEqual([]);
    expect(number).toBe(fresh.length * brackish.length);
  });

  test("none is possible of slow fish with long fins and whoever nips anyone's where they live", () => {
    const { number, wrong } = held(
      (nipper, slow) => isLongFinned(slow) && isSlow(slow) && nips(nipper, slow, ["any"]),
      ["suitable", "conditional", "undetermined"],
    );
    expect(wrong).toEqual([]);
    expect(number).toBeGreaterThan(30);
  });

  test("none is possible of long fins and whoever nips them where they live, be they of the species or of a form", () => {
    let tried = 0;
    for (const slow of allSpecies)
      for (const form of [undefined, ...Object.keys(slow.forms ?? {})]) {
        const fins = form === undefined ? undefined : slow.forms?.[form]?.appearance?.longFins?.value;
        if (!(fins ?? isLongFinned(slow))) continue;
        for (const nipper of allSpecies) {
          if (nipper === slow || !nips(nipper, slow, ["any", "long-finned"])) continue;
          tried += 1;
          const { outcome } = assessPair({ species: slow, form }, { species: nipper });
          expect([slow.id, form, nipper.id, outcome]).toEqual([slow.id, form, nipper.id, "unsuitable"]);
        }
      }
    expect(tried).toBeGreaterThan(100);
  });

  test("none is told the same thing twice", () => {
    const repeated = [...verdicts].filter(([, { findings }]) => {
      const told = findings.map((finding) => JSON.stringify(finding));
      return new Set(told).size < told.length;
    });
    expect(repeated.map(([[a, b]]) => `${a.id} beside ${b.id}`)).toEqual([]);
  });

  test("each gets the same verdict, whoever is named first", () => {
    const differing: string[] = [];
    for (const [[a, b], verdict] of verdicts) {
      const turned = assessPair({ species: b }, { species: a });
      const isSame =
        JSON.stringify(renumbered(verdict, [0, 1])) === JSON.stringify(renumbered(turned, [1, 0]));
      if (!isSame) differing.push(`${a.id} beside ${b.id}`);
    }
    expect(differing).toEqual([]);
  });
});
