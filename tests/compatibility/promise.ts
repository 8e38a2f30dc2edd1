// Checks the promise of a verdict from the outside: by what plans say, and by nothing of how a witness is found.
import fc from "fast-check";
import { allSpecies } from "vivary/catalog";
import {
  assessPair,
  assessPlan,
  type Outcome,
  pairPlan,
  type Verdict,
  witness,
} from "../../src/compatibility";
import { type Condition, facts, type Group, type Party, type Plan } from "../../src/plan";
import { factAt, type SpeciesProfile } from "../../src/species";
import { group, offering, tanks, waters } from "../plan/arbitrary";

/** What settles others and does not live on the ground alone, the smallest first. */
const company: readonly SpeciesProfile[] = allSpecies
  .filter((species) => factAt(species, "social.settles")?.value)
  .filter((species) => factAt(species, "space.zones")?.value.some((zone) => zone !== "bottom"));

/** Plans of two to six groups, of which the tank is large enough for most; half of them of animals that go together. */
export function randomPlans(count: number, seed: number): readonly Plan[] {
  const wish = fc.record(
    {
      tank: fc.tuple(tanks, fc.constantFrom(1, 1, 3, 8)).map(([tank, times]) => scaled(tank, times)),
      water: waters,
      groups: fc.array(group, { minLength: 12, maxLength: 24 }),
      offerings: fc.array(offering, { maxLength: 6 }),
    },
    { requiredKeys: ["tank", "groups"] },
  );
  const most = fc.integer({ min: 2, max: 6 });
  return fc
    .sample(fc.tuple(wish, most, fc.boolean()), { numRuns: count, seed })
    .map(([plan, number, chosen]) => ({
      ...plan,
      groups: chosen ? together(plan.groups, number) : plan.groups.slice(0, number),
    }));
}

/** A base of so many times its size. */
function scaled({ base, ...tank }: Plan["tank"], times: number): Plan["tank"] {
  const larger = Object.entries(base).map(([field, size]) => {
    if (Array.isArray(size)) return [field, size.map(([x, y]) => [x * times, y * times])];
    return [field, typeof size === "number" && field !== "angle" ? size * times : size];
  });
  return { ...tank, base: Object.fromEntries(larger) };
}

/** The first groups that nothing rules out beside those before them, one at least and at most so many. */
function together(groups: readonly Group[], most: number): readonly Group[] {
  const kept: Group[] = [];
  for (const next of groups) {
    if (kept.length === most) break;
    if (kept.every((other) => isPromise(outcomeOf(other, next)))) kept.push(next);
  }
  return kept;
}

const outcomeOf = (a: Group, b: Group): Outcome => assessPair(partyOf(a), partyOf(b)).outcome;
const partyOf = ({ species, form, temper }: Group) => ({ species, form, temper });
const isPromise = (outcome: Outcome) => outcome === "suitable" || outcome === "conditional";

/** Animals of a species or of one of its forms; of which sex, nobody says if absent. */
export type Kind = Pick<Party, "species" | "form" | "sex">;

/** A species as it is usually sold, and each of its forms. */
export const formsOf = (species: SpeciesProfile): readonly Kind[] =>
  [undefined, ...Object.keys(species.forms ?? {})].map((form) => ({ species, form }));

/** Some animals, males alone and females alone; only those whose sex is said already. */
export const ofEachSex = (kind: Kind): readonly Kind[] =>
  kind.sex ? [kind] : ([undefined, "male", "female"] as const).map((sex) => ({ ...kind, sex }));

const nameOf = ({ species, form, sex }: Kind): string =>
  [sex, form, species.id].filter((word) => word !== undefined).join(" ");

/** What is wrong with what a pair promises. */
export function pairBreaches(a: Kind, b: Kind): readonly string[] {
  const verdict = assessPair(a, b);
  const plan = pairPlan(a, b, { company });
  const named: Plan = {
    tank: { base: { shape: "rectangle", length: 1, width: 1 } },
    groups: [a, b].map(({ sex, ...kind }) => ({ ...kind, [sex ? `${sex}s` : "unsexed"]: 1 })),
  };
  const breaches = isPromise(verdict.outcome)
    ? plan
      ? [...outcomeBreaches(plan), ...fewer(named, plan)]
      : ["no plan"]
    : verdict.outcome === "unsuitable"
      ? [...(plan ? ["a plan of what is ruled out"] : []), ...sparedBySex(a, b)]
      : [];
  return [...breaches, ...impossible(verdict, named.groups)].map(
    (breach) => `${nameOf(a)} beside ${nameOf(b)}, ${verdict.outcome}: ${breach}`,
  );
}

/** What is wrong with what a plan promises. */
export function planBreaches(plan: Plan): readonly string[] {
  const verdict = assessPlan(plan);
  const found = witness(plan, { company });
  const breaches = isPromise(verdict.outcome)
    ? found
      ? [
          ...outcomeBreaches(found),
          ...fewer(plan, found),
          ...changedBeside(plan, found, [...verdict.conditions, ...askedByCompany(plan, found)]),
        ]
      : ["no witness"]
    : found
      ? ["a witness of what is ruled out"]
      : [];
  return [...breaches, ...impossible(verdict, plan.groups)].map((breach) => `${verdict.outcome}: ${breach}`);
}

/** Sexes that nobody named, of which the two have a plan. */
const sparedBySex = (a: Kind, b: Kind): readonly string[] =>
  ofEachSex(a).flatMap((first) =>
    ofEachSex(b).flatMap((second) =>
      isPromise(assessPair(first, second).outcome) && pairPlan(first, second, { company })
        ? [`a plan of ${nameOf(first)} and ${nameOf(second)}`]
        : [],
    ),
  );

const outcomeBreaches = (plan: Plan): readonly string[] => {
  const { outcome } = assessPlan(plan);
  return outcome === "suitable" ? [] : [`the witness is ${outcome}`];
};

const counts = ["males", "females", "unsexed", "juveniles"] as const;
const countOf = (one: Group) => counts.reduce((sum, of) => sum + (one[of] ?? 0), 0);

/** Groups of which a later plan has fewer animals, or fewer of a sex. */
function fewer(before: Plan, after: Plan): readonly string[] {
  return before.groups.flatMap((was, index) => {
    const is = after.groups[index];
    if (!is || is.species.id !== was.species.id) return [`group ${index} is not there`];
    const lost = (["males", "females"] as const).filter((sex) => (is[sex] ?? 0) < (was[sex] ?? 0));
    return countOf(is) < countOf(was) || lost.length > 0 ? [`group ${index} has fewer animals`] : [];
  });
}

/** A field of a plan, and what it says. */
type Field = readonly [path: string, value: unknown];

/** Every field of a plan by its path; a base and a list of offerings as a whole. */
function fieldsOf(plan: Plan): readonly Field[] {
  const { tank, water, groups, offerings } = plan;
  return [
    ...flat("tank", tank, ["base"]),
    ...flat("water", water ?? {}),
    ...groups.flatMap((one, index) => flat(`groups.${index}`, one, ["species"])),
    ...(offerings ? ([["offerings", JSON.stringify(offerings)]] as const) : []),
  ];
}

function flat(path: string, value: object, whole: readonly string[] = []): readonly Field[] {
  return Object.entries(value).flatMap(([name, held]): readonly Field[] => {
    const at = `${path}.${name}`;
    if (held === undefined) return [];
    if (typeof held !== "object" || held === null) return [[at, held]];
    return whole.includes(name)
      ? [[at, name === "species" ? held.id : JSON.stringify(held)]]
      : flat(at, held);
  });
}

/**
 * Facts that go with another: what is cover is not free to swim in, the seasons lie about the usual temperature, and in
 * dense cover those settle too that ask for company.
 */
const bound: Readonly<Record<string, readonly string[]>> = {
  "group.company": ["tank.cover", "tank.openWater"],
  "tank.cover": ["tank.openWater"],
  "water.temperature": ["water.hottest", "water.coolest"],
};

/** The paths of the fields that a condition is about. */
function named({ on, of }: Condition): readonly string[] {
  const own = facts[on].paths.map((path) =>
    path.map((step) => (step === "of" ? String(of) : step)).join("."),
  );
  return [...own.filter((path) => path !== "groups"), ...(bound[on] ?? [])];
}

/** What animals that were added ask of the tank: whoever asks for company asks for what that needs. */
function askedByCompany({ groups }: Plan, after: Plan): readonly Condition[] {
  const { length } = groups;
  if (after.groups.length === length) return [];
  const together = assessPlan({ ...after, groups: [...groups, ...after.groups.slice(length)] });
  return [...together.findings, ...together.met].flatMap((finding) => {
    if (finding.weight !== "restricting") return [];
    const { from = length, to = from, condition } = finding;
    return Math.max(from, to) >= length ? [condition] : [];
  });
}

/** What a later plan says otherwise, of what was given and no condition names. */
function changedBeside(before: Plan, after: Plan, conditions: readonly Condition[]): readonly string[] {
  const paths = conditions.flatMap(named);
  const isNamed = (path: string) => paths.some((one) => path === one || path.startsWith(`${one}.`));
  const now = new Map(fieldsOf(after));
  const changed = fieldsOf(before)
    .filter(([path, value]) => now.get(path) !== value && !isNamed(path))
    .map(([path, value]) => `${path} was ${value} and is ${now.get(path)}`);
  const asksForCompany = conditions.some(({ on }) => on === "group.company");
  const added = after.groups.length > before.groups.length && !asksForCompany;
  return [...changed, ...(added ? ["a group more, and nothing asks for company"] : [])];
}

/** Conditions that ask for what animals cannot be; of a species alone nothing more is stated. */
export function impossible(
  { conditions }: Verdict,
  kept: readonly (Group | SpeciesProfile)[],
): readonly string[] {
  return conditions.flatMap((condition) => {
    const { on, of = 0, wanted } = condition;
    const animals = kept[of];
    const one: Group | undefined = animals && ("species" in animals ? animals : { species: animals });
    const text = `asks ${JSON.stringify({ on, of, wanted })}`;
    if (on === "group.form" || on === "group.longFins" || on === "group.grown") return [text];
    if (on === "group.males" || on === "group.females" || on === "group.pairs") return [text];
    if (on === "group.sex") {
      const other = "oneOf" in wanted && wanted.oneOf.includes("male") ? one?.females : one?.males;
      return other ? [`${text} where ${other} are of the other`] : [];
    }
    if ("oneOf" in wanted) return [];
    if ((on === "group.count" || on === "group.femalesPerMale") && wanted.max !== undefined) return [text];
    const usual = one ? usualLength(one.species) : 0;
    return on === "group.length" && (wanted.max !== undefined || (wanted.min ?? 0) > usual)
      ? [`${text} of animals of ${usual} cm`]
      : [];
  });
}

/** The greatest usual length of a species in cm; where none is usual, the greatest. */
function usualLength(species: SpeciesProfile): number {
  const lengths = factAt(species, "size.adultLength")?.value ?? [];
  const usual = lengths.filter(({ as }) => as === "usual");
  return Math.max(...(usual.length > 0 ? usual : lengths).map(({ total }) => total.max));
}
