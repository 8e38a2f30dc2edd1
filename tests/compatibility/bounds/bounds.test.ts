import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  assessPlan,
  type PairRule,
  type PlanRule,
  pairRules,
  planRules,
  type Rule,
} from "../../../src/compatibility";
import type { Judgement } from "../../../src/compatibility/engine/answers/judgement";
import { pairJudge } from "../../../src/compatibility/engine/judge-pair";
import { planJudge } from "../../../src/compatibility/engine/judge-plan";
import { subjectOf } from "../../../src/compatibility/engine/sides/subject";
import { thresholdValues } from "../../../src/compatibility/threshold-values";
import type { Group, Party, Plan } from "../../../src/plan";
import { checkedPair, checkedPlan } from "../../../src/plan/inner";
import {
  applyForm,
  factAt,
  resolve,
  type SpeciesProfile,
  type SpeciesRecord,
  splitPath,
  type TraitPath,
  traitPaths,
  traitTable,
} from "../../../src/species";
import { anyOf, drawing, hashOf, someNamed } from "../../drawn";
import { runs, seedOf } from "../../runs";
import { files } from "../../species/records";
import { animals, tanks, waters } from "../arbitrary";
import { traitsOf } from "../deciding";
import { lieWithin, rank } from "../ranks";
import { choices } from "../worlds";
import { certain, profilesIn, withAnotherSource, worldsIn } from "./record-worlds";

const records = files.map(({ json }) => json as SpeciesRecord);

/** A species as it is kept, by the place of its record. */
interface Kept {
  readonly record: SpeciesRecord;
  readonly form: string | undefined;
}

const kinds: readonly Kept[] = records.flatMap((record) =>
  [undefined, ...Object.keys(record.forms ?? {})].map((form) => ({ record, form })),
);
const nameOf = ({ record: { id }, form = "" }: Kept) => `${id} ${form}`;
const anyKind = anyOf(kinds, nameOf);
const anyRecord = anyOf(records, ({ id }) => id);

/** The traits of these on which the sources of a species differ. */
const disputed = ({ record, form }: Kept, paths: readonly TraitPath[]): readonly TraitPath[] =>
  paths.filter((path) => worldsIn(record, path, form).length > 1);

/** The most worlds of one drawing that are tried. */
const most = 100;

/**
 * The profiles of some species in each world by what is said of some traits; none where there are too many. One that
 * stands there twice is the same in both places.
 */
function worldsOf(kept: readonly Kept[], paths: readonly TraitPath[]) {
  const species = [...new Set(kept)];
  const worlds = species.map((each) => profilesIn(each.record, disputed(each, paths), each.form));
  if (worlds.reduce((product, { length }) => product * length, 1) > most) return [];
  return choices(worlds).map((world) => kept.map((each) => world[species.indexOf(each)] as SpeciesProfile));
}

/**
 * A species on which sources differ in some traits; often one more source says of it what is true of another species.
 */
const contested = (paths: readonly TraitPath[]): fc.Arbitrary<Kept> => {
  const open = kinds.filter((kept) => disputed(kept, paths).length > 0);
  const own = open.length > 0 ? anyOf(open, nameOf) : anyKind;
  const more = fc.record({
    of: anyRecord,
    paths: fc.subarray([...paths], { minLength: 1, maxLength: Math.min(2, paths.length) }),
  });
  const told = fc
    .tuple(anyKind, more)
    .map(([{ record, form }, another]) => ({ record: withAnotherSource(record, another), form }));
  return fc.oneof({ weight: 1, arbitrary: own }, { weight: 2, arbitrary: told });
};

/** Two or more species, of which the first is contested; others may be the same one. */
const keptBy = (paths: readonly TraitPath[], others: number): fc.Arbitrary<readonly Kept[]> => {
  const some = contested(paths);
  const other = fc.oneof(anyKind, some, fc.constant(undefined));
  return fc
    .tuple(some, fc.array(other, { minLength: others, maxLength: others }))
    .map(([first, further]) => [first, ...further.map((kept) => kept ?? first)]);
};

const party = fc.record(
  {
    sex: fc.constantFrom("male" as const, "female" as const),
    stage: fc.constantFrom("juvenile" as const, "adult" as const),
    count: fc.constantFrom(1, 2, 6),
  },
  { requiredKeys: [] },
) satisfies fc.Arbitrary<Omit<Party, "species">>;

const thresholds = thresholdValues();

function pairJudgements(rule: PairRule, a: Party, b: Party): readonly Judgement[] {
  const [one, other] = checkedPair(a, b);
  const [from, to] = [subjectOf(one, 0), subjectOf(other, 1)];
  const judge = pairJudge(rule, thresholds);
  return rule.way === "mutual" ? [judge([from, to])] : [judge([from, to]), judge([to, from])];
}

function planJudgements(rule: PlanRule, plan: Plan): readonly Judgement[] {
  const checked = checkedPlan(plan);
  const given = { plan: checked, subjects: checked.parties.map(subjectOf) };
  return planJudge(rule, thresholds, given)(given.subjects);
}

/** All that judgements ask for in some world, each once. */
const asked = (judgements: readonly Judgement[]) =>
  [
    ...new Set(
      judgements.flatMap(({ worlds }) =>
        worlds.flatMap(({ asks }) => asks.map((each) => JSON.stringify(each))),
      ),
    ),
  ].sort();

/** The least and the greatest of each judgement. */
const spansOf = (judgements: readonly Judgement[]) =>
  judgements.map(({ least, greatest }) => [least, greatest]);

/** The least of the leasts and the greatest of the greatests of each judgement, over all worlds. */
const spansOver = (worlds: readonly (readonly Judgement[])[]) =>
  (worlds[0] ?? []).map((_, index) => [
    Math.min(...worlds.map((world) => world[index]?.least ?? 0)),
    Math.max(...worlds.map((world) => world[index]?.greatest ?? 0)),
  ]);

const run = { numRuns: runs(4) };

describe.each(pairRules.map((rule) => [rule.id, rule as PairRule] as const))(
  "what %s says of a pair",
  (_, rule) => {
    const paths = traitsOf(rule);
    test("is as good and as bad as in the best and the worst world of the records", () => {
      fc.assert(
        fc.property(keptBy(paths, 1), party, party, (kept, asA, asB) => {
          const judgedAs = ([a, b]: readonly SpeciesProfile[]) =>
            pairJudgements(
              rule,
              { species: a as SpeciesProfile, form: kept[0]?.form, ...asA },
              { species: b as SpeciesProfile, form: kept[1]?.form, ...asB },
            );
          const worlds = worldsOf(kept, paths);
          if (worlds.length === 0) return;
          const judged = judgedAs(kept.map(({ record }) => resolve(record)));
          const inWorlds = worlds.map(judgedAs);
          expect(spansOf(judged), kept.map(nameOf).join()).toEqual(spansOver(inWorlds));
          expect(asked(judged), kept.map(nameOf).join()).toEqual(asked(inWorlds.flat()));
        }),
        run,
      );
    });
  },
);

interface Stocked {
  readonly kept: readonly Kept[];
  readonly as: readonly Omit<Group, "species">[];
  readonly tank: Plan["tank"];
  readonly water: Plan["water"];
}

const stocked = (paths: readonly TraitPath[]): fc.Arbitrary<Stocked> =>
  fc.oneof(
    ...[1, 2].map((others) =>
      fc.record({
        kept: keptBy(paths, others),
        as: fc.array(animals, { minLength: others + 1, maxLength: others + 1 }),
        tank: tanks,
        water: waters,
      }),
    ),
  );

const planned = ({ kept, as, tank, water }: Stocked, profiles: readonly SpeciesProfile[]): Plan => ({
  tank,
  water,
  groups: profiles.map((species, index) => ({ ...as[index], species, form: kept[index]?.form })),
});

const resolved = ({ kept }: Stocked) => kept.map(({ record }) => resolve(record));

describe.each(
  planRules.filter((rule) => traitsOf(rule).length > 0).map((rule) => [rule.id, rule as PlanRule] as const),
)("what %s says of a plan", (_, rule) => {
  const paths = traitsOf(rule);
  test("is as good and as bad as in the best and the worst world of the records", () => {
    fc.assert(
      fc.property(stocked(paths), (plan) => {
        const worlds = worldsOf(plan.kept, paths);
        if (worlds.length === 0) return;
        const judged = planJudgements(rule, planned(plan, resolved(plan)));
        const inWorlds = worlds.map((world) => planJudgements(rule, planned(plan, world)));
        expect(spansOf(judged), plan.kept.map(nameOf).join()).toEqual(spansOver(inWorlds));
        const inAny = asked(inWorlds.flat());
        // Counted animals are judged at the ends of what may be wanted, and not between.
        if (rule.sums?.name === "crowd") expect(inAny).toEqual(expect.arrayContaining([...asked(judged)]));
        else if (!rule.sums) expect(asked(judged)).toEqual(inAny);
      }),
      run,
    );
  });
});

const byId = new Map<string, Rule>([...planRules, ...pairRules].map((rule) => [rule.id, rule]));
const rulesOf = (ids: readonly string[]) => ids.flatMap((id) => byId.get(id) ?? []);

/** Rules that ask for what excludes what they ask for elsewhere. */
const asking = [
  ["water-temperature"],
  ["water-ph"],
  ["water-hardness"],
  ["water-salinity"],
  ["water-temperature", "temperature"],
  ["cover", "open-water", "shyness", "size-and-pace"],
];

const told = (rules: readonly Rule[]) =>
  rules.length > 9 ? "all rules" : rules.map(({ id }) => id).join(", ");

test.each(asking.map(rulesOf).map((rules) => [told(rules), rules] as const))(
  "what %s asks for in a plan excludes itself at worst just where it does in some world",
  (_, rules) => {
    const paths = rules.flatMap(traitsOf);
    fc.assert(
      fc.property(stocked(paths), (plan) => {
        const boundsOf = (profiles: readonly SpeciesProfile[]) =>
          assessPlan(planned(plan, profiles), { rules }).bounds;
        const worlds = worldsOf(plan.kept, paths).map(boundsOf);
        if (worlds.length === 0) return;
        const bounds = boundsOf(resolved(plan));
        const names = plan.kept.map(nameOf).join();
        expect(rank(bounds.atWorst), names).toBe(Math.max(...worlds.map(({ atWorst }) => rank(atWorst))));
        expect(rank(bounds.atBest), names).toBeLessThanOrEqual(
          Math.min(...worlds.map(({ atBest }) => rank(atBest))),
        );
      }),
      run,
    );
  },
);

/** What a trait may be by a profile, the form applied if there is one: each value once, in an order of its own. */
const valuesIn = (record: SpeciesRecord, { form }: Kept, path: TraitPath) => {
  const profile = resolve(record);
  const fact = factAt(form === undefined ? profile : applyForm(profile, form), path);
  return fact ? [fact.value, ...(fact.also ?? [])].map((value) => JSON.stringify(ordered(value))) : [];
};

/** A value in an order that does not hang on that of the statements. */
function ordered(value: unknown): unknown {
  if (Array.isArray(value)) return value.map((item) => JSON.stringify(ordered(item))).sort();
  if (typeof value !== "object" || value === null) return value;
  return Object.entries(value)
    .map(([key, item]) => [key, ordered(item)])
    .sort(([a], [b]) => (String(a) < String(b) ? -1 : 1));
}

describe("what sources support of a trait", () => {
  const stated = (kept: Kept) =>
    traitPaths.filter((path) => worldsIn(kept.record, path, kept.form).length > 1);
  const isWorlds = (kept: Kept) => {
    for (const path of stated(kept)) {
      const worlds = worldsIn(kept.record, path, kept.form).map((world) => valuesIn(world, kept, path)[0]);
      expect(valuesIn(kept.record, kept, path).sort(), `${nameOf(kept)} ${path}`).toEqual(
        [...new Set(worlds)].sort(),
      );
    }
  };

  test("is what it is in the worlds of each record", () => {
    someNamed(kinds, nameOf, 60, seedOf(0)).forEach(isWorlds);
  });

  test("and where one more source says what is true of another species", () => {
    const disputable = traitPaths.filter((path) => traitTable[path].way !== "all");
    fc.assert(fc.property(contested(disputable), isWorlds), { numRuns: runs(20) });
  });
});

const known = records.map(certain);

/** A profile in which one trait is as in another, or unknown. */
function withTrait(
  profile: SpeciesProfile,
  path: TraitPath,
  like: SpeciesProfile | undefined,
): SpeciesProfile {
  const [section, name] = splitPath(path);
  const { [name]: _, ...others } = Object(profile[section]);
  const fact = like && factAt(like, path);
  return { ...profile, [section]: fact ? { ...others, [name]: fact } : others };
}

describe("a trait that nobody knows", () => {
  const all: readonly Rule[] = [...planRules, ...pairRules];
  const values = (path: TraitPath) => [
    ...new Map(
      known.flatMap((profile) => {
        const fact = factAt(profile, path);
        return fact ? [[JSON.stringify(fact.value), profile] as const] : [];
      }),
    ).values(),
  ];

  test.each([...asking.map(rulesOf), rulesOf(["ground"]), all].map((rules) => [told(rules), rules] as const))(
    "of one or two groups of a plan may be what it is of any other species, by %s",
    (_, rules) => {
      const paths = [...new Set(rules.flatMap(traitsOf))];
      const lacking = fc.record({ path: fc.constantFrom(...paths), lack: fc.constantFrom(1, 2) });
      fc.assert(
        fc.property(stocked(paths), lacking, (plan, { path, lack }) => {
          const looking = rules === all ? all.filter((rule) => traitsOf(rule).includes(path)) : rules;
          const verdictIf = (likes: readonly (SpeciesProfile | undefined)[]) => {
            const profiles = plan.kept.map(({ record, form }, index) => {
              const profile = form === undefined ? certain(record) : applyForm(certain(record), form);
              return index < lack ? withTrait(profile, path, likes[index]) : profile;
            });
            return assessPlan(planned(plan, profiles), { rules: looking });
          };
          const { bounds } = verdictIf([]);
          const likes = values(path);
          const valueTold = (like: SpeciesProfile) => JSON.stringify(factAt(like, path)?.value);
          const draw = drawing(likes, valueTold);
          for (const like of likes) {
            const other = draw(hashOf(valueTold(like)));
            const world = verdictIf([like, other]);
            const where = `${plan.kept.map(nameOf)}: ${path} as of ${like.id}, ${other.id}`;
            expect(lieWithin(world.bounds, bounds), where).toBe(true);
            const { outcome } = world;
            if (outcome === "undetermined") continue;
            expect(lieWithin({ atBest: outcome, atWorst: outcome }, bounds), where).toBe(true);
          }
        }),
        { numRuns: runs(rules === all ? 4 : Math.ceil(50 / values(paths[0] ?? "water.pH").length)) },
      );
    },
  );
});
