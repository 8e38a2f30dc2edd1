import { describe, expect, test } from "vitest";
import { allSpecies, speciesById } from "vivary/catalog";
import {
  defineRule,
  type PairRule,
  type PlanRule,
  pairRules,
  planRules,
  type Rule,
  thresholds,
} from "../../../src/compatibility";
import { isPairRule } from "../../../src/compatibility/engine/rule/rule";
import { isAskedOf } from "../../../src/compatibility/engine/sides/is-asked-of";
import { subjectOf } from "../../../src/compatibility/engine/sides/subject";
import { OutsideDomainError } from "../../../src/errors";
import type { Group, Party, Plan, PlannedTank } from "../../../src/plan";
import { readPlan, tankFacts, tankReadings } from "../../../src/plan/facts/read-fact";
import { type CheckedParty, type CheckedPlan, checkedPair, checkedPlan } from "../../../src/plan/inner";
import { factAt, type SpeciesProfile, type traitPaths } from "../../../src/species";
import { hashOf, pick, speciesFor } from "../../drawn";
import { adults, animal } from "../animals";

/** Thrown where a rule reads what it did not declare. */
class Undeclared extends Error {}
/** Thrown where it needs a trait that nobody knows: there the engine leaves it open. */
class Unknown extends Error {}

/** What every rule read, by its id: `trait from water.pH`, `plan tank.lid`, `threshold sharedPH`, `stock`. */
type Noted = Map<string, Set<string>>;

/** An object that gives what is declared, notes what is read, and throws for all else, even where one only asks. */
function guarded(
  declared: Readonly<Record<string, () => unknown>>,
  { about, note = () => {} }: { readonly about: string; readonly note?: (name: string) => void },
): object {
  const target = Object.fromEntries(Object.keys(declared).map((name) => [name, undefined]));
  const refuse = (name: string | symbol) => {
    if (typeof name === "string" && !Object.hasOwn(declared, name)) throw new Undeclared(`${about} ${name}`);
  };
  return new Proxy(target, {
    get(_, name) {
      refuse(name);
      if (typeof name === "symbol") return undefined;
      note(name);
      return declared[name]?.();
    },
    has(_, name) {
      refuse(name);
      return true;
    },
    getOwnPropertyDescriptor(_, name) {
      refuse(name);
      return { configurable: true, enumerable: true, value: declared[String(name)]?.() };
    },
  });
}

const always = (values: object) =>
  Object.fromEntries(Object.entries(values).map(([name, value]) => [name, () => value]));

const ofAnimals = [
  ...["id", "kind", "family", "order", "form", "sex", "some", "stage", "length", "temper", "raises"],
  ...["count", "males", "females", "kin", "listings"],
];
const ofKin = ["count", "males", "females", "some", "mayHave"];

const named = (names: readonly string[], held: object) =>
  Object.fromEntries(names.map((name) => [name, () => Reflect.get(held, name)]));

/** A side as the rule declares it, of real animals. */
function sideOf(rule: Rule, role: "from" | "to", { animals, species }: CheckedParty, noted: Set<string>) {
  const kin = guarded(named(ofKin, animals.kin), { about: "kin" });
  const party = guarded({ ...named(ofAnimals, animals), kin: () => kin }, { about: "party" });
  const value = (path: (typeof traitPaths)[number]) => factAt(species, path)?.value;
  const needed = (rule.needs?.[role] ?? []).map((path) => [
    path,
    () => {
      const found = value(path);
      if (found === undefined) throw new Unknown(path);
      return found;
    },
  ]);
  const optional = [...(rule.uses?.[role] ?? []), ...(rule.tells?.[role] ?? [])].map((path) => [
    path,
    () => value(path),
  ]);
  const declared = { party: () => party, ...Object.fromEntries([...needed, ...optional]) };
  return guarded(declared, { about: role, note: (name) => noted.add(`${role} ${name}`) });
}

const setOf = (noted: Noted, { id }: Rule): Set<string> => {
  const set = noted.get(id) ?? new Set();
  noted.set(id, set);
  return set;
};

function thresholdsOf({ decidesBy = [] }: Rule, set: Set<string>) {
  const values = decidesBy.map((name) => [name, thresholds[name].value]);
  return guarded(always(Object.fromEntries(values)), {
    about: "threshold",
    note: (name) => set.add(`threshold ${name}`),
  });
}

/** Judges, and gives back what the rule answered; nothing where it lacks a trait or an equation does not hold. */
function answered(rule: Rule, seen: object): readonly object[] {
  try {
    const answers: unknown = Reflect.apply(rule.judge, rule, [seen]);
    return Array.isArray(answers) ? answers : [];
  } catch (error) {
    if (error instanceof Unknown || error instanceof OutsideDomainError) return [];
    throw error;
  }
}

function judgedPair(rule: PairRule, from: CheckedParty, to: CheckedParty, noted: Noted): readonly object[] {
  if (!isAskedOf(rule, [from, to])) return [];
  const set = setOf(noted, rule);
  const seen = {
    from: sideOf(rule, "from", from, set),
    to: sideOf(rule, "to", to, set),
    thresholds: thresholdsOf(rule, set),
  };
  return answered(rule, guarded(always(seen), { about: "seen" }));
}

function judgedPlan(rule: PlanRule, plan: CheckedPlan, noted: Noted): readonly object[] {
  const set = setOf(noted, rule);
  const sides = plan.parties.map((party) => sideOf(rule, "from", party, set));
  const { reads = [] } = rule;
  const facts = Object.fromEntries(reads.map((name) => [name, () => readPlan(plan, name)]));
  const subjects = plan.parties.map(subjectOf);
  const ends = rule.sums?.ends(subjects) ?? [undefined];
  return ends.flatMap((sum) => {
    const common = {
      plan: () => guarded(facts, { about: "plan", note: (name) => set.add(`plan ${name}`) }),
      thresholds: () => thresholdsOf(rule, set),
      ...(rule.sums && { [rule.sums.name]: () => sum }),
    };
    const see = (more: object) => answered(rule, guarded({ ...common, ...always(more) }, { about: "seen" }));
    if (rule.way === "once") return see({});
    if (rule.way === "all-groups") return see({ groups: sides });
    return sides.flatMap((from) => see({ from }));
  });
}

/** What a rule answers otherwise than it declares. */
function undeclared({ id, mayYield, measures = {} }: Rule, answers: readonly object[]) {
  const strange = answers.filter((answer) => {
    const names = Object.keys(Reflect.get(answer, "measures") ?? {});
    return !mayYield.includes(Reflect.get(answer, "weight")) || names.some((name) => !(name in measures));
  });
  return strange.map((answer) => ({ id, answer }));
}

const kept: readonly [Omit<Party, "species">, ...Omit<Party, "species">[]] = [
  {},
  { sex: "male", count: 2 },
  { sex: "female", count: 1, length: 3 },
  { stage: "juvenile", length: 2, count: 5 },
  { stage: "fry" },
];

/** What no species of the catalog is: it bites whom it takes for its own, where it is crowded; a shy one that eats fish. */
const [biter, double] = ["biter", "double"].map((id) =>
  animal(id, {
    "temperament.acts": [{ does: "bites", target: "look-alike", when: "crowded" }],
    "appearance.looks": [{ tag: "upright-bars" }],
    "size.adultLength": adults(5),
    "social.settledBy": true,
    "space.openWater": 0.5,
    "predation.eats": [{ prey: "fish" }],
  }),
) as [SpeciesProfile, SpeciesProfile];

/** Whether two species are among one in nine that are tried beside each other. */
const isTried = (a: SpeciesProfile, b: SpeciesProfile) => hashOf(`${a.id} ${b.id}`) % 9 === 0;

/** Each species beside itself and one in nine others, each of both kept in another way; and what none of them does. */
function* pairs(): Generator<readonly [Party, Party]> {
  yield [{ species: biter }, { species: double }];
  for (const a of allSpecies) {
    for (const b of allSpecies) {
      if (a !== b && !isTried(a, b)) continue;
      yield [
        { species: a, ...pick(kept, `${a.id} beside ${b.id}`) },
        { species: b, ...pick(kept, `${b.id} where ${a.id} is`) },
      ];
    }
  }
}

/** Each species beside parents of one in nine others, of which young are wanted. */
function* parents(): Generator<readonly [CheckedParty, CheckedParty]> {
  for (const a of allSpecies) {
    for (const b of allSpecies.filter((one) => isTried(a, one))) {
      const other = { species: b, males: 1, females: 1, raises: true };
      const [from, to] = checkedPlan({ tank, groups: [{ species: a, unsexed: 1 }, other] }).parties;
      if (from && to) yield [from, to];
    }
  }
}

const tank = { base: { shape: "rectangle", length: 60, width: 20 }, height: 30 } as const;
const furnished: Omit<PlannedTank, "base"> = {
  ...{ lid: false, cover: 0.1, openWater: 0.2, openSurface: 0.5, sightBreaks: 0, plants: "planted" },
  flow: { calmest: "still", strongest: "still" },
  filter: { mediaArea: 1, age: 90 },
};
const water = { temperature: 25, pH: 7, generalHardness: 8, salinity: 0, hottest: 30, coolest: 18 };

/** Three that live on the ground, and each species with two that its name draws, in a bare tank of which little is known and in a furnished one. */
function* plans(): Generator<Plan> {
  const big = { base: { shape: "rectangle", length: 200, width: 80 }, height: 60 } as const;
  const onTheGround = ["ancistrus-cirrhosus", "anomalochromis-thomasi", "botia-striata"].flatMap(
    (id) => speciesById(id) ?? [],
  );
  yield { tank, groups: onTheGround.map((species) => ({ species, unsexed: 4 })) };
  for (const species of allSpecies) {
    const company = [1, 2].map((draw) => speciesFor(`${species.id} ${draw}`));
    const groups: readonly Group[] = [
      { species, unsexed: 4 },
      { species, males: 2, females: 1 },
      ...company.map((other) => ({ species: other, juveniles: 3, length: 2 })),
    ];
    yield { tank, groups };
    yield { tank: { ...furnished, ...tank }, water, groups, offerings: [{ food: "dry", place: "surface" }] };
    yield { tank: { ...furnished, ...big }, water, groups };
    const paired = [species, ...company].map((other) => ({ species: other, males: 2, females: 1 }));
    yield { tank: { base: big.base }, groups: paired };
    yield { tank: big, groups: [{ species, females: 2, raises: true }] };
    yield { tank: { base: big.base, cover: 1 }, groups: [{ species: biter, unsexed: 2 }] };
  }
}

describe("rules see what they declare", () => {
  const noted: Noted = new Map();

  test("each rule of pairs, with every species", () => {
    const all = [...[...pairs()].map(([one, other]) => checkedPair(one, other)), ...parents()];
    expect(all.length).toBeGreaterThan(allSpecies.length);
    const strange = all.flatMap(([a, b]) =>
      pairRules.flatMap((rule) => undeclared(rule, judgedPair(rule, a, b, noted))),
    );
    expect(strange).toEqual([]);
  });

  test("each rule of plans, with every species", () => {
    const all = [...plans()].map(checkedPlan);
    expect(all.length).toBeGreaterThan(allSpecies.length);
    const strange = all.flatMap((plan) =>
      planRules.flatMap((rule) => undeclared(rule, judgedPlan(rule, plan, noted))),
    );
    expect(strange).toEqual([]);
  });

  test("and they look at all that they declare", () => {
    const declaredBy = (rule: Rule) => {
      const traits = (["from", "to"] as const).flatMap((role) =>
        [rule.needs, rule.uses, rule.tells].flatMap((sides) =>
          (sides?.[role] ?? []).map((path) => `${role} ${path}`),
        ),
      );
      const { reads = [], decidesBy = [] } = rule;
      return [
        ...traits,
        ...reads.map((name) => `plan ${name}`),
        ...decidesBy.map((name) => `threshold ${name}`),
      ];
    };
    const unread = [...pairRules, ...planRules].flatMap((rule) =>
      declaredBy(rule)
        .filter((name) => !noted.get(rule.id)?.has(name))
        .map((name) => `${rule.id}: ${name}`),
    );
    expect(unread).toEqual([]);
  });

  test("and every threshold is one that some rule decides by", () => {
    const deciding: readonly Rule[] = [...pairRules, ...planRules];
    const names = new Set(deciding.flatMap(({ decidesBy = [] }) => decidesBy));
    expect([...names].sort()).toEqual(Object.keys(thresholds).sort());
  });

  test("and every fact that rules may read is one that some rule reads, or a condition is about", () => {
    const reading: readonly Rule[] = [...pairRules, ...planRules];
    const read = new Set<string>(reading.flatMap(({ reads = [] }) => reads));
    expect(Object.keys(tankReadings).filter((name) => !read.has(name))).toEqual([]);
    expect([...read].filter((name) => !(name in tankFacts || name in tankReadings))).toEqual([]);
  });
});

describe("a rule that looks at more than it declares is found out", () => {
  const species = speciesById("danio-rerio");
  const common = { mayYield: ["advisory"], needs: { from: ["water.pH"] } } as const;
  const looking = (
    way: "mutual" | "each-group" | "all-groups" | "once",
    look: (seen: never) => unknown,
  ): Rule => ({
    ...defineRule({ ...common, id: "x-looks", way, needs: {}, judge: () => [] }),
    ...(way !== "once" && { needs: common.needs }),
    judge: (seen: never) => {
      look(seen);
      return [];
    },
  });
  const found = (rule: Rule) => () => {
    if (!species) throw new Error("a species");
    const noted: Noted = new Map();
    if (isPairRule(rule)) judgedPair(rule, ...checkedPair({ species }, { species }), noted);
    else judgedPlan(rule as PlanRule, checkedPlan({ tank, groups: [{ species, unsexed: 2 }] }), noted);
  };
  const get =
    (...path: readonly string[]) =>
    (seen: never) =>
      path.reduce<unknown>((held, name) => Reflect.get(Object(held), name), seen);

  test("at what it does declare it may look", () => {
    expect(found(looking("mutual", get("from", "water.pH")))).not.toThrow();
    expect(found(looking("each-group", get("from", "party", "kin", "mayHave")))).not.toThrow();
    expect(found(looking("all-groups", get("groups", "0", "water.pH")))).not.toThrow();
  });

  test.each([
    ["a trait that it does not declare", "mutual", get("from", "water.temperature")],
    ["a trait that it declares of the other side", "mutual", get("to", "water.pH")],
    ["the species behind a party", "mutual", get("from", "party", "species")],
    ["a number that kin do not have", "each-group", get("from", "party", "kin", "unsexed")],
    ["the plan, for a pair", "mutual", get("plan")],
    ["the plan's tank", "each-group", get("plan", "tank")],
    ["a fact of the plan", "each-group", get("plan", "tank.cover")],
    ["a trait of one of all groups", "all-groups", get("groups", "0", "space.zones")],
    ["a threshold", "once", get("thresholds", "floorLoad")],
    ["the stock", "once", get("stock")],
    ["the groups, once for the plan", "once", get("groups")],
    ["whether there is a trait", "mutual", (seen: { from: object }) => "water.flow" in seen.from],
    ["its own view of a trait", "mutual", (seen: { from: object }) => Object.hasOwn(seen.from, "water.flow")],
  ] as const)("%s", (_, way, look) => {
    expect(found(looking(way, look))).toThrow(Undeclared);
  });
});
