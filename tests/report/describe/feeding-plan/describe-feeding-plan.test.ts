import { describe, expect, test } from "vitest";
import ancistrusCirrhosus from "vivary/catalog/ancistrus-cirrhosus";
import bettaSplendens from "vivary/catalog/betta-splendens";
import carassiusAuratus from "vivary/catalog/carassius-auratus";
import chromobotiaMacracanthus from "vivary/catalog/chromobotia-macracanthus";
import danioRerio from "vivary/catalog/danio-rerio";
import hoplisomaPanda from "vivary/catalog/hoplisoma-panda";
import neocaridinaDavidi from "vivary/catalog/neocaridina-davidi";
import poeciliaReticulata from "vivary/catalog/poecilia-reticulata";
import trichogasterLalius from "vivary/catalog/trichogaster-lalius";
import { type FeedingPlan, feedingPlan } from "../../../../src/advice";
import type { Group, Plan, PlannedTank } from "../../../../src/plan";
import { describeFeedingPlan, describeFeedingPlanIn, english, englishAdvice } from "../../../../src/report";
import { german, germanAdvice } from "../../../../src/report/de";

const base = { shape: "rectangle", length: 120, width: 50 } as const;

function planOf(groups: readonly Group[], temperature?: number, tank: Partial<PlannedTank> = {}): Plan {
  return { tank: { base, ...tank }, ...(temperature !== undefined && { water: { temperature } }), groups };
}

const flat = (text: string) => text.replaceAll(/\s+/g, " ");
const told = (plan: Plan) => flat(describeFeedingPlan(feedingPlan(plan)));

const danios: Group = { species: danioRerio, unsexed: 10 };
const catfish: Group = { species: hoplisomaPanda, unsexed: 6 };
const gouramis: Group = { species: trichogasterLalius, males: 1, females: 2 };
const community = feedingPlan(planOf([danios, catfish, gouramis], 25));

describe("a feeding plan in words", () => {
  test("says what to give in the order of the day, for whom, and whom to hold back", () => {
    expect(describeFeedingPlan(community)).toBe(`Give each of these once a day, in this order.
On one day a week give nothing (common practice).

What to give
- Dry food at the surface, by day: for zebra danios.
- Dry food on the ground, by day: for panda corydoras.
- Dry food at the surface, by day, where quicker animals do not get at it: for
  dwarf gouramis. Zebra danios would take it: feed them first elsewhere, or hold
  them back.

How much a day, as dry food: from just enough to plenty
- 10 zebra danios (Danio rerio): 0.044 to 0.13 g.
- 6 panda corydoras (Hoplisoma panda): 0.026 to 0.29 g.
- 3 dwarf gouramis (Trichogaster lalius; 1 male and 2 females): 0.038 to 0.66 g.

What it does to the water
- The food brings 3.9 to 40 mg of ammonia nitrogen a day; the plan names no
  filter.

Individuals vary: watch that each animal eats. What is left of dry or frozen
food after a few minutes was too much: take it out.`);
  });

  test("says the same in German, with decimal commas", () => {
    const german = describeFeedingPlan(community, { messages: germanAdvice });
    expect(german).toBe(describeFeedingPlanIn(germanAdvice, community));
    expect(flat(german)).toContain(
      "Trockenfutter an der Oberfläche, am Tag, abseits der Schnelleren: für Zwergfadenfische. Zebrabärblinge würden es wegfressen: vorher anderswo füttern oder zurückhalten.",
    );
    expect(german).toContain("10 Zebrabärblinge (Danio rerio): 0,044 bis 0,13\u202fg.");
  });

  test("names a single fish with its article, in the case that German asks for", () => {
    const feeding = feedingPlan(planOf([{ species: bettaSplendens, males: 1 }]));
    expect(describeFeedingPlan(feeding)).toContain("for the Siamese fighting fish.");
    expect(describeFeedingPlanIn(germanAdvice, feeding)).toContain("für den Siamesischen Kampffisch.");
  });

  test("names no weight for shrimps, of which no rate is known, and nothing of the water", () => {
    const text = told(planOf([{ species: neocaridinaDavidi, unsexed: 20 }]));
    expect(text).toContain("20 cherry shrimps (Neocaridina davidi): no figure is known.");
    expect(text).not.toContain("What it does to the water");
  });

  test("leaves no day out where young are wanted, and says that young need more", () => {
    const text = told(
      planOf([
        { species: poeciliaReticulata, males: 2, females: 4, raises: true },
        { species: ancistrusCirrhosus, juveniles: 3 },
      ]),
    );
    expect(text).toContain("Leave no day out: there are young, or young are wanted.");
    expect(text).toContain(
      "3 bristlenose catfish (Ancistrus cirrhosus; young): no figure is known; young need several times as much for their weight as grown animals.",
    );
    expect(text).toContain("The food, as far as its amount is known, brings");
  });

  test("says of fish that are shorter than grown ones what it says of young", () => {
    const text = told(planOf([{ species: chromobotiaMacracanthus, unsexed: 5, length: 5 }], 25));
    expect(text).toContain("Leave no day out: there are young, or young are wanted.");
    expect(text).toContain(
      "5 clown loaches (Chromobotia macracanthus; 5 cm long): no figure is known; young need several times as much for their weight as grown animals.",
    );
  });

  test("in cold water has only a most, and says why", () => {
    const text = told(planOf([{ species: carassiusAuratus, unsexed: 3 }], 8));
    expect(text).toMatch(/3 goldfish \(Carassius auratus\): at most [\d.]+ g\./);
    expect(text).toContain("Below 10 °C fish hardly eat, if at all.");
    expect(told(planOf([{ species: carassiusAuratus, unsexed: 3 }], 18))).not.toContain("Below 10 °C");
  });

  test("says how much more frozen food is, and that an amount is for all foods together", () => {
    const [first, ...others] = community.offerings;
    if (!first) throw new Error("nothing is given");
    const offerings = [first, { ...first, food: "frozen" as const }, ...others];
    const text = flat(
      describeFeedingPlan({
        ...community,
        offerings,
        groups: community.groups.map((one) => ({ ...one, offerings: [0, 1] })),
      }),
    );
    expect(text).toContain("Frozen and live food weighs four to five times as much.");
    expect(text).toContain("Where animals are given several foods, it is all of these together.");
    expect(flat(describeFeedingPlan(community))).not.toMatch(/Frozen|several foods/);
  });

  test("of those that no food reaches says so in place of how often to feed", () => {
    const nothing: FeedingPlan = {
      ...community,
      offerings: [],
      unreached: [0],
      groups: [{ offerings: [] }, { offerings: [] }, { offerings: [] }],
    };
    const text = flat(describeFeedingPlan(nothing));
    expect(text).toMatch(/^What to give - No food is known that is sure to reach zebra danios: /);
    expect(text).not.toContain("once a day");
  });
});

test("Markdown has the same parts under headings", () => {
  const marked = describeFeedingPlan(community, { format: "markdown" });
  expect(marked.match(/^## .*$/gm)).toEqual([
    "## What to give",
    "## How much a day, as dry food: from just enough to plenty",
    "## What it does to the water",
  ]);
  expect(marked).toContain("- 10 zebra danios (Danio rerio): 0.044 to 0.13 g.\n");
});

describe("what a filter can do", () => {
  const nitrogen = (
    given: readonly [number, number],
    filter: readonly [number, number],
    feeding = community,
  ) =>
    flat(
      describeFeedingPlan({
        ...feeding,
        nitrogen: {
          given: { min: given[0], max: given[1] },
          filter: { min: filter[0], max: filter[1] },
        },
      }),
    );

  test("is enough only where it surely takes up all that may come", () => {
    expect(nitrogen([10, 40], [40, 90])).toContain("the filter takes up 40 to 90 mg, which is enough.");
    expect(nitrogen([10, 40], [39, 90])).toContain("which may be too little.");
    expect(nitrogen([10, 40], [1, 9])).toContain("which is too little.");
    expect(nitrogen([10, 40], [0, 0])).toContain("takes up none as it stands in the plan.");
  });

  test("is never said to be enough where it is not known how much some eat", () => {
    const [first, ...others] = community.groups;
    const partly = { ...community, groups: [{ offerings: first?.offerings ?? [] }, ...others] };
    expect(nitrogen([10, 40], [40, 90], partly)).toContain("the filter takes up 40 to 90 mg.");
    expect(nitrogen([10, 40], [39, 90], partly)).toContain("which may be too little.");
  });
});

describe("what is no feeding plan is refused by its path", () => {
  const [offering] = community.offerings;
  test.each<readonly [string, unknown, RegExp]>([
    ["nothing", undefined, /^feeding: /],
    ["a plan in its place", community.plan, /^feeding\.plan/],
    [
      "a food that nobody knows",
      { ...community, offerings: [{ ...offering, food: "air" }] },
      /^feeding\.offerings\[0\]\.food/,
    ],
    ["an offering that is none", { ...community, offerings: [undefined] }, /^feeding\.offerings\[0\]/],
    ["a group that is not there", { ...community, unreached: [9] }, /^feeding\.unreached/],
    ["one group too few", { ...community, groups: community.groups.slice(1) }, /^feeding\.groups/],
    [
      "a ration that is none",
      { ...community, groups: community.groups.map(() => ({ offerings: [], ration: { min: 3, max: 1 } })) },
      /^feeding\.groups\[0\]\.ration/,
    ],
  ])("%s", (_, feeding, path) => {
    expect(() => describeFeedingPlan(feeding as FeedingPlan)).toThrow(path);
  });

  test("and so are words without those for advice, an unknown format and an option too many", () => {
    expect(() => describeFeedingPlan(community, { messages: german as never })).toThrow(
      /^options\.messages\.advice/,
    );
    expect(() => describeFeedingPlanIn(english as never, community)).toThrow(/^messages\.advice/);
    expect(() => describeFeedingPlan(community, { format: "html" as never })).toThrow(/^options\.format/);
    expect(() => describeFeedingPlan(community, { units: "old" as never })).toThrow(/^options\.units/);
    expect(() => describeFeedingPlanIn(englishAdvice, community, { remedies: 1 } as never)).toThrow(
      /^options\.remedies/,
    );
  });
});
