// What remedies promise, held to from outside: by what plans say before and after, and by trying what a keeper could do.
import { describe, expect, test } from "vitest";
import { speciesById } from "vivary/catalog";
import { type Move, type Remedy, remedies } from "../../../src/advice";
import { assessPlan, type Finding, type PlanChange } from "../../../src/compatibility";
import type { Group, Plan } from "../../../src/plan";
import { someSpecies } from "../../drawn";
import { runs, seedOf } from "../../runs";
import { census, countOf, fewestMoved } from "./by-hand";
import { spoiledPlans } from "./spoiled";

const plans = spoiledPlans(runs(40), seedOf(60));
const mended = plans.map((plan) => ({ plan, found: remedies(plan).remedies }));
const all = mended.flatMap(({ plan, found }) => found.map((remedy) => ({ plan, remedy })));
const idsOf = ({ groups }: Plan) => groups.map(({ species }) => species.id);

type Fields = Readonly<Record<string, unknown>>;

/** Fields as they are later, but those that the changes name as they were before. */
const undone = <Part extends object>(
  before: Part | undefined,
  after: Part | undefined,
  changed: Part | undefined,
) => {
  const was: Fields = { ...before };
  const is: Fields = { ...after };
  const names = new Set(Object.keys({ ...changed }));
  const kept = Object.entries(is).filter(([name]) => !names.has(name));
  const back = Object.entries(was).filter(([name]) => names.has(name));
  return Object.fromEntries([...kept, ...back]) as Part;
};

/** The groups of a plan with some changes, each named by its place in it. */
function groupsWith(plan: Plan, changes: readonly PlanChange[]): readonly Group[] {
  const stay = plan.groups.flatMap((group, place): readonly Group[] => {
    const about = changes.map(({ groups }) => groups?.[place]);
    if (about.includes(null)) return [];
    return [Object.assign({}, group, ...about)];
  });
  return [...stay, ...changes.flatMap(({ add = [] }) => add)];
}

/** The plan of a remedy with one of its moves not made. */
function without(plan: Plan, { plan: after, moves }: Remedy, left: Move): Plan {
  const rest = moves.filter((move) => move !== left).map(({ change }) => change);
  return {
    ...after,
    tank: undone(plan.tank, after.tank, left.change.tank as Plan["tank"]),
    water: undone(plan.water, after.water, left.change.water as Plan["water"]),
    offerings: left.change.offerings === undefined ? after.offerings : plan.offerings,
    groups: groupsWith(plan, rest),
  };
}

const gravity = (finding: Finding) => {
  if (finding.weight === "blocking") return 3;
  if (finding.weight === "restricting") return 1;
  return "couldBe" in finding ? 2 : 0;
};

/** How many of a species are bought to join a group of it. */
const boughtOf = (id: string, { groups }: Plan, { moves }: Remedy): number =>
  moves
    .filter(({ kind }) => kind === "numbers")
    .flatMap(({ change }) => Object.entries(change.groups ?? {}))
    .map(([place, changed]) => [groups[Number(place)], changed] as const)
    .reduce((sum, [group, changed]) => {
      const more = group && changed ? countOf({ ...group, ...changed } as Group) - countOf(group) : 0;
      return group?.species.id === id ? sum + Math.max(0, more) : sum;
    }, 0);

/** How grave the gravest is of what is told of a species in a plan. */
const gravest = (plan: Plan, id: string) => {
  const { findings, parties } = assessPlan(plan);
  const about = findings.filter(({ from, to }) =>
    [from, to].some((place) => parties[place ?? -1]?.id === id),
  );
  return Math.max(0, ...about.map(gravity));
};

test("there are remedies to look at, with moves and with animals moved", () => {
  expect(plans.length).toBeGreaterThanOrEqual(runs(30));
  expect(all.length).toBeGreaterThanOrEqual(runs(30));
  expect(all.filter(({ remedy }) => remedy.moves.length > 1).length).toBeGreaterThanOrEqual(runs(5));
  expect(
    all.filter(({ remedy }) => remedy.moves.some(({ moved }) => moved > 0)).length,
  ).toBeGreaterThanOrEqual(runs(10));
});

describe("each remedy", () => {
  test("has a plan of the outcome and the bounds that are told", () => {
    for (const { plan, remedy } of all) {
      const { outcome, bounds } = assessPlan(remedy.plan);
      expect([idsOf(plan), outcome, bounds]).toEqual([idsOf(plan), "suitable", remedy.bounds]);
      expect(remedy.outcome).toBe("suitable");
    }
  });

  test("changes what its moves say and nothing else that the plan said", () => {
    for (const { plan, remedy } of all) {
      const changes = remedy.moves.map(({ change }) => change);
      expect([idsOf(plan), remedy.plan.groups]).toEqual([idsOf(plan), groupsWith(plan, changes)]);
      for (const part of ["tank", "water"] as const) {
        const changed: Fields = Object.assign({}, ...changes.map((change) => change[part]));
        const [was, is]: readonly Fields[] = [{ ...plan[part] }, { ...remedy.plan[part] }];
        for (const [name, value] of Object.entries({ ...was, ...changed }))
          expect([idsOf(plan), name, is?.[name]]).toEqual([
            idsOf(plan),
            name,
            Object.hasOwn(changed, name) ? changed[name] : value,
          ]);
      }
    }
  });

  test("does not reach the outcome with any one move not made", () => {
    for (const { plan, remedy } of all)
      for (const left of remedy.moves) {
        const { outcome } = assessPlan(without(plan, remedy, left));
        expect([idsOf(plan), left.kind, outcome]).not.toEqual([idsOf(plan), left.kind, "suitable"]);
      }
  });

  test("lets nobody loose: whoever is no longer there was moved, and is counted", () => {
    for (const { plan, remedy } of all) {
      const [before, after] = [census(plan), census(remedy.plan)];
      const gone = [...before].reduce(
        (sum, [id, count]) => sum + Math.max(0, count + boughtOf(id, plan, remedy) - (after.get(id) ?? 0)),
        0,
      );
      const moves = remedy.moves.filter(({ moved }) => moved > 0);
      expect(moves.every(({ kind }) => kind === "rehome" || kind === "form")).toBe(true);
      const rehomed = moves
        .filter(({ kind }) => kind === "rehome")
        .reduce((sum, { moved }) => sum + moved, 0);
      expect([idsOf(plan), gone]).toEqual([idsOf(plan), rehomed]);
      expect(remedy.plan.groups.length).toBeGreaterThan(0);
    }
  });
});

test("no more animals are moved than a keeper finds who tries one thing after another", () => {
  let [tried, asGood] = [0, 0];
  for (const { plan, found } of mended) {
    const fewest = fewestMoved(plan);
    if (fewest === undefined) continue;
    tried += 1;
    const [least = Number.POSITIVE_INFINITY] = found.map(({ moves }) =>
      moves.reduce((sum, { moved }) => sum + moved, 0),
    );
    expect([idsOf(plan), least <= fewest]).toEqual([idsOf(plan), true]);
    if (least === fewest && fewest > 0) asGood += 1;
  }
  expect(tried).toBeGreaterThanOrEqual(runs(15));
  expect(asGood).toBeGreaterThanOrEqual(runs(3));
});

test("no animals of which young are wanted are left with one sex, of those that had both", () => {
  let looked = 0;
  const tank = { base: { shape: "rectangle", length: 60, width: 30 }, height: 35 } as const;
  const bearing = ["xiphophorus-maculatus", "xiphophorus-variatus", "cambarellus-patzcuarensis"];
  for (const species of [
    ...someSpecies(40, 1),
    ...bearing.flatMap((id) => speciesById(id) ?? []), // Females that were with a male bear for months, but not for good.
  ])
    for (const sexes of [
      { males: 1, females: 1 },
      { males: 3, females: 2 },
    ])
      for (const { plan } of remedies({ tank, groups: [{ species, ...sexes, raises: true }] }).remedies) {
        looked += 1;
        const [group] = plan.groups;
        expect([species.id, Boolean(group?.males && group.females)]).toEqual([species.id, true]);
      }
  expect(looked).toBeGreaterThanOrEqual(runs(30));
});

test("where conditions may stay, no animals that stay are worse off", () => {
  let looked = 0;
  for (const plan of plans.slice(0, runs(20)))
    for (const remedy of remedies(plan, { want: "conditional" }).remedies) {
      expect(["suitable", "conditional"]).toContain(assessPlan(remedy.plan).outcome);
      for (const id of new Set(idsOf(remedy.plan))) {
        looked += 1;
        expect([id, gravest(remedy.plan, id) <= gravest(plan, id)]).toEqual([id, true]);
      }
    }
  expect(looked).toBeGreaterThanOrEqual(runs(20));
});
