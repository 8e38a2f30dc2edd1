import fc from "fast-check";
import { describe, expect, test } from "vitest";
import chromobotiaMacracanthus from "vivary/catalog/chromobotia-macracanthus";
import pterygoplichthysGibbiceps from "vivary/catalog/pterygoplichthys-gibbiceps";
import { entryOrder } from "../../../src/advice";
import { assessPlan, defineRule } from "../../../src/compatibility";
import { filterNitrogen } from "../../../src/compatibility/rules/plan/filter-nitrogen";
import { settlingCompany } from "../../../src/compatibility/rules/plan/settling-company";
import { filterCapacity } from "../../../src/load";
import type { Group, Plan, PlannedTank } from "../../../src/plan";
import { factAt, type SpeciesProfile } from "../../../src/species";
import { adults } from "../../compatibility/animals";
import { planOf } from "../../compatibility/judging";
import { anySpecies } from "../../drawn";
import { expectRefused } from "../../refused";
import { runs } from "../../runs";
import { defender, groupsIn, hunter, newcomer, orderOf, rules, shy, stepsIn } from "./newcomers";

describe("who comes first", () => {
  test("is whoever stands first, where nothing tells them apart", () => {
    expect(groupsIn(orderOf([newcomer("a"), newcomer("b"), newcomer("c")]))).toEqual([[0], [1], [2]]);
  });

  test("is company, before the shy that hide without it", () => {
    const steps = stepsIn(orderOf([newcomer("shy", shy), newcomer("calm")]));
    expect(groupsIn({ steps })).toEqual([[1], [0]]);
    expect(steps[1]?.because).toContainEqual({
      reason: "others-first",
      groups: [1],
      rules: ["settling-company"],
    });
  });

  describe("where the length of one is unknown, and with it what the filter of the whole has to take up,", () => {
    const { species, ...six } = newcomer("unmeasured");
    const { adultLength: _, ...size } = species.size ?? {};
    const unmeasured: Group = { species: { ...species, size }, ...six };
    const because = (...groups: readonly Group[]) =>
      stepsIn(
        orderOf(
          groups,
          { tank: { filter: { mediaArea: 0.01, age: 365 } } },
          { rules: [filterNitrogen, settlingCompany] },
        ),
      ).flatMap((step) => step.because.filter(({ reason }) => reason === "others-first"));

    test("is nobody for the filter's sake", () => {
      expect(because(unmeasured, newcomer("a"), newcomer("b"))).toEqual([]);
    });

    test("is company before the shy all the same", () => {
      const first = { reason: "others-first", groups: [0], rules: ["settling-company"] };
      expect(because(unmeasured, newcomer("shy", shy))).toEqual([first]);
    });
  });

  test("is never who defends a place that others would have to win", () => {
    const steps = stepsIn(orderOf([newcomer("holder", defender), newcomer("a"), newcomer("b")]));
    expect(groupsIn({ steps })).toEqual([[1], [2], [0]]);
    expect(steps[2]?.because).toContainEqual({ reason: "defends-place" });
    expect(steps[0]?.because).not.toContainEqual({ reason: "defends-place" });
  });

  test("is what a hunter may try to eat, before it", () => {
    // Up to 2 cm it eats, up to 1.25 times that it may try; that both live at the surface lets it.
    const small = newcomer("small", { "size.adultLength": adults(2.2), "space.zones": ["surface"] });
    const steps = stepsIn(orderOf([newcomer("hunter", hunter), small]));
    expect(groupsIn({ steps })).toEqual([[1], [0]]);
    expect(steps[1]).toMatchObject({ outcome: "undetermined" });
    expect(steps[1]?.because).toContainEqual({ reason: "may-eat", groups: [1] });
  });

  test("is a whole group, all of one species on one day", () => {
    const a = newcomer("a");
    expect(groupsIn(orderOf([a, newcomer("b"), { ...a, unsexed: 2 }]))).toEqual([[0, 2], [1]]);
  });
});

describe("animals that are still too short", () => {
  const fry = { juveniles: 6, length: 1 };

  test("come before the hunter, which waits until they are past it", () => {
    const steps = stepsIn(
      orderOf([newcomer("hunter", hunter), newcomer("prey", { "size.grownAt": 10 }, fry)]),
    );
    expect(groupsIn({ steps })).toEqual([[1], [0]]);
    const grows = steps[1]?.because.find(({ reason }) => reason === "others-grow");
    // The next tenth above 1.25 × 2 cm, up to which it may try; of 5 cm, nine tenths at ten months.
    expect(grows).toMatchObject({ group: 1, length: 2.6 });
    const days = (10 * (365.25 / 12) * Math.log((5 - 1) / (5 - 2.6))) / Math.log(10);
    expect(grows).toMatchObject({ day: (steps[0]?.day ?? 0) + Math.ceil(days) });
  });

  test("are waited for by their length alone, where nobody knows how they grow", () => {
    const slow = newcomer("prey", {}, fry);
    const steps = stepsIn(orderOf([newcomer("hunter", hunter), slow]));
    const grows = steps[1]?.because.find(({ reason }) => reason === "others-grow");
    expect(grows).toMatchObject({ length: 2.6 });
    expect(grows).not.toHaveProperty("day");
  });

  test("do not come to a hunter that lives there", () => {
    const there = newcomer("hunter", hunter, { unsexed: 6, entersOn: -30 });
    expect(orderOf([there, newcomer("prey", {}, fry)])).toEqual({
      reason: "others-there",
      groups: [1],
      rules: ["predation"],
    });
  });

  test("have no order where each would eat the other", () => {
    expect(orderOf([newcomer("a", hunter, fry), newcomer("b", hunter, fry)])).toEqual({
      reason: "both-grow-first",
      groups: [0, 1],
      rules: ["predation"],
    });
  });
});

describe("no order", () => {
  test("is there for animals that are wrong for each other", () => {
    const small = newcomer("small", { "size.adultLength": adults(1.5) });
    expect(orderOf([newcomer("hunter", hunter), small])).toEqual({
      reason: "unsuitable",
      groups: [0, 1],
      rules: ["predation"],
    });
  });

  test("is there for prey that hides until the company comes that would eat it", () => {
    const short = newcomer("shy", shy, { juveniles: 6, length: 1 });
    const settlesAndHunts = newcomer("both", { ...hunter, "predation.eats": [{ prey: "fry", greatest: 2 }] });
    expect(orderOf([short, settlesAndHunts])).toEqual({
      reason: "worse-before",
      groups: [0, 1],
      rules: ["settling-company"],
    });
  });

  test("is claimed to be impossible only where all were tried, up to six species", () => {
    const short = newcomer("shy", shy, { juveniles: 6, length: 1 });
    const settlesAndHunts = newcomer("both", { ...hunter, "predation.eats": [{ prey: "fry", greatest: 2 }] });
    const others = ["a", "b", "c", "d", "e"].map((id) => newcomer(id, { "social.settles": false }));
    expect(orderOf([short, settlesAndHunts, ...others])).toMatchObject({ reason: "not-found" });
    expect(orderOf([short, settlesAndHunts, ...others.slice(1)])).toMatchObject({ reason: "worse-before" });
  });
});

describe("the day", () => {
  test("is that on which the new filter is ripe and the quarantine over", () => {
    const steps = stepsIn(
      orderOf([newcomer("a"), newcomer("b")], { tank: { filter: { mediaArea: 20, age: 0 } } }),
    );
    expect(steps.map(({ day }) => day)).toEqual([56, 86]);
    expect(steps[0]?.because).toEqual([
      { reason: "filter-ripens", day: 56 },
      { reason: "quarantine", day: 30 },
    ]);
    expect(steps[1]?.because).toEqual([
      { reason: "quarantine", day: 86 },
      { reason: "filter-follows", day: 70 },
    ]);
  });

  test("waits for a filter of which nobody says anything", () => {
    expect(stepsIn(orderOf([newcomer("a")], { tank: { filter: undefined } }))[0]?.day).toBe(56);
  });

  test("waits for the filter to follow where nobody is kept apart", () => {
    const steps = stepsIn(orderOf([newcomer("a"), newcomer("b")], {}, { quarantine: 0 }));
    expect(steps.map(({ day }) => day)).toEqual([0, 14]);
    expect(steps.flatMap(({ because }) => because.map(({ reason }) => reason))).toEqual(["filter-follows"]);
  });

  test("is sooner where a second tank is free for those that come next", () => {
    const all = ["a", "b", "c", "d"].map((id) => newcomer(id));
    const days = (quarantineTanks: number) =>
      stepsIn(orderOf(all, {}, { quarantineTanks })).map(({ day }) => day);
    expect(days(1)).toEqual([30, 60, 90, 120]);
    expect(days(2)).toEqual([30, 44, 60, 74]);
    expect(days(4)).toEqual([30, 44, 58, 72]);
  });

  test("waits for plants to grow in, for those that need them and those that harm them", () => {
    const needs = newcomer("needs", { "space.grownInPlants": true });
    const digs = newcomer("digs", { "effects.digs": true });
    const steps = stepsIn(orderOf([needs, digs, newcomer("a")], { tank: { plants: "planted" } }));
    expect(groupsIn({ steps })).toEqual([[2], [0], [1]]);
    expect(steps.map(({ day }) => day)).toEqual([30, 60, 90]);
    expect(steps[1]?.because).toContainEqual({ reason: "plants-grow-in", day: 56 });
    expect(steps[2]?.because).toContainEqual({ reason: "plants-grow-in", day: 56 });
  });

  test("waits for plants of which nobody says anything as if they were set on the first day", () => {
    const needs = newcomer("needs", { "space.grownInPlants": true });
    const digs = newcomer("digs", { "effects.digs": true });
    const there = newcomer("there", {}, { unsexed: 6, entersOn: -90 });
    const dayOf = (group: Group, plants?: PlannedTank["plants"], ...others: readonly Group[]) =>
      stepsIn(orderOf([group, ...others], { tank: { plants } })).at(-1)?.day;
    expect([dayOf(needs), dayOf(digs), dayOf(digs, undefined, there)]).toEqual([56, 56, 56]);
    expect(dayOf(newcomer("a"))).toBe(30);
    expect([dayOf(digs, "none"), dayOf(digs, "grown-in"), dayOf(needs, "grown-in")]).toEqual([30, 30, 30]);
  });

  test("does not tell of such plants that they are there", () => {
    const needs = newcomer("needs", { "space.grownInPlants": true });
    expect(stepsIn(orderOf([needs]))[0]?.outcome).toBe("conditional");
    expect(stepsIn(orderOf([needs], { tank: { plants: "planted" } }))[0]?.outcome).toBe("suitable");
  });

  test("is no sooner than the plan states", () => {
    const late = newcomer("late", {}, { unsexed: 6, entersOn: 200 });
    const steps = stepsIn(orderOf([late, newcomer("a")]));
    expect(steps.map(({ day, groups }) => [day, groups])).toEqual([
      [30, [1]],
      [200, [0]],
    ]);
  });

  test("is the first for those that are there already", () => {
    const there = newcomer("there", {}, { unsexed: 6, entersOn: -90 });
    const steps = stepsIn(orderOf([newcomer("a"), there], { tank: { filter: undefined } }));
    expect(steps).toMatchObject([
      { day: 0, groups: [1], because: [{ reason: "there-already" }] },
      { day: 30, groups: [0] },
    ]);
  });
});

test("animals of which none may come alone come on one day", () => {
  const inTwos = defineRule({
    id: "x-in-twos",
    way: "all-groups",
    mayYield: ["restricting"],
    judge: ({ groups }) =>
      groups.length % 2 === 0
        ? []
        : [{ about: 0, weight: "restricting", condition: { on: "tank.lid", wanted: { oneOf: [true] } } }],
  });
  const steps = stepsIn(
    orderOf([newcomer("a"), newcomer("b"), newcomer("c"), newcomer("d")], {}, { rules: [inTwos] }),
  );
  expect(groupsIn({ steps })).toEqual([
    [0, 1],
    [2, 3],
  ]);
  for (const { because } of steps) expect(because).toContainEqual({ reason: "together" });
});

test("what the animals give off stands beside what the filter takes up on that day", () => {
  const measured = { "size.lengthWeight": { a: 0.01, b: 3 } } as const;
  const filter = { mediaArea: 20, age: 0 };
  const [first, second] = stepsIn(
    orderOf([newcomer("a", measured), newcomer("b", measured)], { tank: { filter } }),
  );
  expect(first?.nitrogen?.filter).toEqual(filterCapacity({ mediaArea: 20, age: 56 }));
  expect(second?.nitrogen?.given.max).toBeCloseTo(2 * (first?.nitrogen?.given.max ?? 0), 9);
});

describe("what the animals give off once grown", () => {
  const base = { shape: "rectangle", length: 300, width: 100 } as const;
  const tank = { base, height: 50, filter: { mediaArea: 0.5, age: 90 } };
  const givenIn = (...groups: readonly Group[]) =>
    stepsIn(entryOrder({ tank, water: { temperature: 27 }, groups })).at(-1)?.nitrogen?.given ??
    expect.fail("nothing given");
  const loaches = (few: Omit<Group, "species">): Group => ({ species: chromobotiaMacracanthus, ...few });

  test("is not lessened by how short they are when they come", () => {
    const grown = givenIn(loaches({ unsexed: 5 }));
    expect(givenIn(loaches({ unsexed: 5, length: 5 }))).toEqual(grown);
    expect(givenIn(loaches({ juveniles: 5, length: 5 }))).toEqual(grown);
    expect(givenIn(loaches({ juveniles: 5 }))).toEqual(grown);
    expect(givenIn(loaches({ unsexed: 5, length: 40 })).max).toBeGreaterThan(grown.max);
  });

  test("holds what a verdict on the whole says that its filter has to take up", () => {
    const group = factAt(chromobotiaMacracanthus, "social.group")?.value.least ?? expect.fail("no group");
    // Of rays no ration is told, for their disc tells no mass.
    const weighed = anySpecies.filter((one) => !isRay(one));
    const fish = fc.record({ species: weighed, length: fc.constantFrom(undefined, 0.3, 0.7) });
    let compared = 0;
    const holds = (groups: readonly Group[]) => {
      const plan: Plan = { tank, water: { temperature: 27 }, groups };
      const [said] = assessPlan(plan, { rules: [filterNitrogen] }).findings;
      if (!said) return;
      const { value } = Object(said.measures).nitrogen;
      compared += 1;
      const { given } = stepsIn(entryOrder(plan, { rules: [filterNitrogen] })).at(-1)?.nitrogen ?? {};
      expect(given?.min).toBeLessThan(value * (1 + 1e-9));
      expect(given?.max).toBeGreaterThan(value * (1 - 1e-9));
    };
    holds([
      { species: pterygoplichthysGibbiceps, unsexed: 1, length: 6 },
      loaches({ unsexed: group, length: 5 }),
    ]);
    fc.assert(
      fc.property(fc.array(fish, { minLength: 1, maxLength: 3 }), (company) => {
        holds(company.map(ofWanted));
      }),
      { numRuns: runs(40) },
    );
    expect(compared).toBeGreaterThan(20);
  });
});

const isRay = (species: SpeciesProfile) =>
  factAt(species, "size.adultLength")?.value.some(({ measure }) => measure === "disc") ?? false;

/** As many as belong together, at a share of their usual length. */
function ofWanted({
  species,
  length: share,
}: {
  readonly species: SpeciesProfile;
  readonly length: number | undefined;
}): Group {
  const usual = factAt(species, "size.adultLength")?.value[0]?.total.min ?? 5;
  const length = share === undefined ? {} : { length: Math.max(0.1, share * usual) };
  return { species, unsexed: factAt(species, "social.group")?.value.least ?? 1, ...length };
}

test("what is no plan, no quarantine and no rule is refused", () => {
  const plan = planOf([newcomer("a")]);
  const { groups: _, ...tank } = plan;
  // @ts-expect-error: no groups
  expectRefused(() => entryOrder(tank), "groups");
  expectRefused(() => entryOrder(plan, { rules, quarantine: -1 }), "quarantine");
  expectRefused(() => entryOrder(plan, { rules, quarantine: Number.NaN }), "quarantine");
  expectRefused(() => entryOrder(plan, { rules, quarantineTanks: 0 }), "quarantineTanks");
  expectRefused(() => entryOrder(plan, { rules: [] }), "rules");
});
