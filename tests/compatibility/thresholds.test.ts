import { describe, expect, test } from "vitest";
import {
  assessPair,
  assessPlan,
  type Rule,
  type ThresholdName,
  type ThresholdValues,
  thresholds,
  type Verdict,
} from "../../src/compatibility";
import { actsOthers } from "../../src/compatibility/rules/pair/acts-others";
import { actsOwnKind } from "../../src/compatibility/rules/pair/acts-own-kind";
import { finNipping } from "../../src/compatibility/rules/pair/fin-nipping";
import { generalHardness } from "../../src/compatibility/rules/pair/general-hardness";
import { mucusGrazing } from "../../src/compatibility/rules/pair/mucus-grazing";
import { ph } from "../../src/compatibility/rules/pair/ph";
import { predation } from "../../src/compatibility/rules/pair/predation";
import { shyness } from "../../src/compatibility/rules/pair/shyness";
import { sizeAndPace } from "../../src/compatibility/rules/pair/size-and-pace";
import { temperature } from "../../src/compatibility/rules/pair/temperature";
import { carbonDioxide } from "../../src/compatibility/rules/plan/carbon-dioxide";
import { cautionDevices } from "../../src/compatibility/rules/plan/caution-devices";
import { cautionFloor } from "../../src/compatibility/rules/plan/caution-floor";
import { footprint } from "../../src/compatibility/rules/plan/footprint";
import { height } from "../../src/compatibility/rules/plan/height";
import { longestRun } from "../../src/compatibility/rules/plan/longest-run";
import { oxygen } from "../../src/compatibility/rules/plan/oxygen";
import { settlingCompany } from "../../src/compatibility/rules/plan/settling-company";
import { waterTemperature } from "../../src/compatibility/rules/plan/water-temperature";
import { zones } from "../../src/compatibility/rules/plan/zones";
import { InvalidInputError } from "../../src/errors";
import type { Group, PlannedWater } from "../../src/plan";
import type { Kind, SpeciesProfile, TraitValue as Value } from "../../src/species";
import { expectRefused } from "../refused";
import { adults, animal, type Stated } from "./animals";
import { findingsOf, pairBy, planBy } from "./judging";

type Judge = (thresholds?: Partial<ThresholdValues>) => unknown;

const two = (
  path: "water.temperature" | "water.pH" | "water.generalHardness",
  ...ranges: [number, number][]
) => ranges.map(([min, max], index) => animal(`fish-${index}`, { [path]: { kept: { min, max } } }));

function apart(path: Parameters<typeof two>[0], ...ranges: [[number, number], [number, number]]): Judge {
  const [a, b] = two(path, ...ranges);
  const rule = { "water.temperature": temperature, "water.pH": ph, "water.generalHardness": generalHardness }[
    path
  ];
  return (changed) => a && b && pairBy(rule, { species: a }, { species: b }, changed).findings[0]?.weight;
}

const scatterer: Stated = { "reproduction.mode": "scatters-eggs", "predation.eats": [] };
const weightOf = ({ findings: [first] }: Verdict) => first?.weight ?? "nothing";
const hunted =
  (length: number, more: Stated = {}, eats: Value<"predation.eats"> = [{ prey: "fish" }]): Judge =>
  (changed) => {
    const spindle: Stated = { ...scatterer, "size.bodyShape": "fusiform" };
    const species = animal("prey", { ...spindle, "size.adultLength": adults(length), ...more });
    const eater = animal("hunter", { "predation.eats": eats, "size.adultLength": adults(10) });
    return weightOf(pairBy(predation, { species: eater }, { species }, changed));
  };

/** Young of a length that a hunter of 10 cm meets, of whose kind it takes the newly hatched alone. */
const newlyHatched =
  (kind: Kind, prey: Value<"predation.eats">[number]["prey"], length: number): Judge =>
  (changed) => {
    const species = animal("young", { ...scatterer, "size.adultLength": adults(5) }, { kind });
    const eater = animal("hunter", { "predation.eats": [{ prey }], "size.adultLength": adults(10) });
    const young = { species, stage: "juvenile", length } as const;
    return weightOf(pairBy(predation, { species: eater }, young, changed));
  };

const inCover =
  (rule: Rule, a: Stated, b: Stated, raises = false): Judge =>
  (changed) => {
    const groups: Group[] = [a, b].map((stated, index) => ({
      species: animal(`fish-${index}`, { "size.adultLength": adults(9), ...stated }),
      unsexed: 2,
      raises,
    }));
    return planBy(rule, groups, { tank: { cover: 0.3 } }, changed).outcome;
  };

/** A tank of 400 L, 3.9 kN. */
const roomy = { tank: { base: { shape: "rectangle", length: 100, width: 80 }, height: 50 } } as const;

const beside =
  (rule: Rule, stated: Stated, length: number, more: Stated = {}): Judge =>
  (changed) => {
    const known: Stated = { "space.zones": ["midwater"], "temperament.acts": [], "diet.pace": "ordinary" };
    const large = animal("large", { ...known, "size.adultLength": adults(10), ...stated });
    const small = animal("small", { ...known, "size.adultLength": adults(length), ...more });
    return pairBy(rule, { species: large }, { species: small }, changed).findings[0]?.weight ?? "nothing";
  };

/** Of one that gets away when it is chased. */
const agile: Stated = { "appearance.longFins": false };

/** A fish of 10 cm and 10 g. */
const breather = (
  need: Value<"water.oxygenNeed">,
  kind: Value<"water.airBreathing">["kind"] = "none",
): SpeciesProfile =>
  animal("breather", {
    "water.oxygenNeed": need,
    "water.airBreathing": { kind },
    "size.adultLength": adults(10),
    "size.lengthWeight": { a: 0.01, b: 3 },
  });
/** 240 L. */
const smallTank = { tank: { base: { shape: "rectangle", length: 100, width: 40 }, height: 60 } } as const;

/** Two groups that share a part of the water which is large enough for either. */
const sharing = (zone: Value<"space.zones">[number]) => ({
  judge: (changed: Partial<ThresholdValues> | undefined) => {
    const species = (id: string) =>
      animal(id, { "space.zones": [zone], "space.footprint": [{ least: 4000, for: 1 }] });
    const groups = [species("a"), species("b")].map((kind) => ({ species: kind, unsexed: 1 }));
    return planBy(zones, groups, smallTank, changed).outcome;
  },
  answer: "conditional",
  changed: 0,
  other: "suitable",
});

/** Six that live in a part of the water beside a pair that defends its brood with bites. */
const besideBrood = (zone: Value<"space.zones">[number], area: number) => ({
  judge: (changed: Partial<ThresholdValues> | undefined) => {
    const parent = animal("parent", {
      "size.adultLength": adults(10),
      "space.territory": { area, zone: "bottom", holder: "pair" },
      "temperament.acts": [{ does: "bites", target: "any", when: "guarding-brood" }],
    });
    const known: Stated = { "size.adultLength": adults(5), "temperament.acts": [], "space.zones": [zone] };
    const groups = [
      { species: parent, males: 1, females: 1 },
      { species: animal("other", known), unsexed: 6 },
    ];
    return planBy(actsOthers, groups, smallTank, changed).outcome;
  },
  answer: "suitable",
  other: "conditional",
});

/** How many hours the oxygen of 240 L at 24 °C lasts twenty of them. */
const breathing =
  (need: Value<"water.oxygenNeed">): Judge =>
  (changed) => {
    const long = { nightHours: 1000, ...changed };
    const verdict = planBy(oxygen, [{ species: breather(need), unsexed: 20 }], smallTank, long);
    const hours = findingsOf(verdict, "oxygen")[0]?.measures?.hours;
    return hours && "value" in hours && Number(Number(hours.value).toFixed(1));
  };

/** Kept at 20 to 24 °C, in water of 22 °C with a season. */
/** Fish that meet at one temperature alone, past what is best for the first by so much. */
const pastItsBest =
  (by: number): Judge =>
  (changed) => {
    const figures = { kept: { min: 18.5, max: 23 }, optimum: { min: 18.5, max: 23 - by } };
    const cool = animal("cool", { "water.temperature": figures });
    const warm = animal("warm", { "water.temperature": { kept: { min: 22.5, max: 26 } } });
    return pairBy(temperature, { species: cool }, { species: warm }, changed).findings[0]?.weight;
  };

/** A pond fish and one for which its late summer is cool. */
const atSummersEnd: Judge = (changed) => {
  const figures = { kept: { min: 4, max: 24 }, optimum: { min: 18, max: 22 } };
  const pond = animal("pond", { "water.temperature": figures });
  const warm = animal("warm", { "water.temperature": { kept: { min: 22.5, max: 28 } } });
  return pairBy(temperature, { species: pond }, { species: warm }, changed).findings[0]?.weight;
};

const inSeason =
  (season: PlannedWater): Judge =>
  (changed) => {
    const species = animal("fish", { "water.temperature": { kept: { min: 20, max: 24 } } });
    const water = { temperature: 22, ...season };
    return planBy(waterTemperature, [{ species, unsexed: 1 }], { water }, changed).outcome;
  };

/** For each threshold a case that stands on it, and the answers with it and with it changed. */
const cases: Readonly<
  Record<ThresholdName, { judge: Judge; answer: unknown; changed: number; other: unknown }>
> = {
  sharedTemperature: {
    judge: apart("water.temperature", [20, 24], [22, 26]),
    answer: "favourable",
    changed: 2.1,
    other: "restricting",
  },
  givesTemperature: {
    judge: apart("water.temperature", [18, 22], [22.5, 26]),
    answer: "restricting",
    changed: 0.4,
    other: "blocking",
  },
  givesHotDay: {
    judge: inSeason({ hottest: 26 }),
    answer: "suitable",
    changed: 1.9,
    other: "conditional",
  },
  givesCoolSeason: {
    judge: inSeason({ coolest: 19 }),
    answer: "suitable",
    changed: 0.9,
    other: "conditional",
  },
  leastTemperature: {
    judge: apart("water.temperature", [18, 22], [22.5, 26]),
    answer: "restricting",
    changed: 0.6,
    other: "blocking",
  },
  steadyTemperature: {
    judge: pastItsBest(1.5),
    answer: "blocking",
    changed: 0.5,
    other: "restricting",
  },
  endOfSeasons: {
    judge: atSummersEnd,
    answer: "blocking",
    changed: 0.05,
    other: "restricting",
  },
  sharedPH: {
    judge: apart("water.pH", [6, 7], [6.5, 8]),
    answer: "favourable",
    changed: 0.6,
    other: "restricting",
  },
  givesPH: {
    judge: apart("water.pH", [6, 7], [7.2, 9]),
    answer: "restricting",
    changed: 0.15,
    other: "blocking",
  },
  leastPH: {
    judge: apart("water.pH", [6, 7], [7.2, 9]),
    answer: "restricting",
    changed: 0.35,
    other: "blocking",
  },
  sharedHardness: {
    judge: apart("water.generalHardness", [2, 10], [8, 20]),
    answer: "favourable",
    changed: 3,
    other: "restricting",
  },
  givesHardness: {
    judge: apart("water.generalHardness", [2, 10], [12, 20]),
    answer: "restricting",
    changed: 1.4,
    other: "blocking",
  },
  leastHardness: {
    judge: apart("water.generalHardness", [2, 10], [12, 20]),
    answer: "restricting",
    changed: 2.1,
    other: "blocking",
  },
  likelyPrey: { judge: hunted(2), answer: "blocking", changed: 0.19, other: "advisory" },
  possiblePrey: { judge: hunted(4.6), answer: "advisory", changed: 0.45, other: "nothing" },
  bandAboveStated: {
    judge: hunted(5, {}, [{ prey: "fish", greatest: 4 }]),
    answer: "advisory",
    changed: 1.2,
    other: "nothing",
  },
  clawReach: {
    judge: (changed) => {
      const claws = animal(
        "claws",
        { "predation.eats": [{ prey: "fish" }], "size.adultLength": adults(10) },
        { kind: "crayfish" },
      );
      const sleeper = animal("sleeper", {
        ...scatterer,
        "size.bodyShape": "fusiform",
        "size.adultLength": adults(5),
        "space.zones": ["bottom"],
      });
      return weightOf(pairBy(predation, { species: claws }, { species: sleeper }, changed));
    },
    answer: "blocking",
    changed: 0.49,
    other: "nothing",
  },
  youngFish: {
    judge: newlyHatched("fish", "fry", 1.5),
    answer: "restricting",
    changed: 1.4,
    other: "nothing",
  },
  youngCrustacean: {
    judge: newlyHatched("shrimp", "shrimplet", 1),
    answer: "restricting",
    changed: 0.9,
    other: "nothing",
  },
  youngSnail: {
    judge: newlyHatched("snail", "young-snail", 0.5),
    answer: "restricting",
    changed: 0.4,
    other: "nothing",
  },
  muchSmaller: {
    judge: beside(
      finNipping,
      { "temperament.acts": [{ does: "nips-fins", target: "any" }], "appearance.longFins": false },
      4.9,
      { "appearance.longFins": false, "temperament.acts": [] },
    ),
    answer: "blocking",
    changed: 0.4,
    other: "advisory",
  },
  farTooSmall: {
    judge: (changed) => {
      const species = animal("swimmer", { "space.baseLength": [{ least: 222, for: 1 }] });
      return weightOf(planBy(longestRun, [{ species, unsexed: 1 }], smallTank, changed));
    },
    answer: "restricting",
    changed: 0.46,
    other: "blocking",
  },
  nearlyLong: {
    judge: (changed) => {
      const species = animal("swimmer", { "space.baseLength": [{ least: 110, for: 1 }] });
      return weightOf(planBy(longestRun, [{ species, unsexed: 1 }], smallTank, changed));
    },
    answer: "advisory",
    changed: 0.91,
    other: "restricting",
  },
  nearlyWide: {
    judge: (changed) => {
      const species = animal("dweller", {
        "space.footprint": [{ least: 4700, for: 1 }],
        "size.adultLength": adults(5),
      });
      return weightOf(planBy(footprint, [{ species, unsexed: 1 }], smallTank, changed));
    },
    answer: "advisory",
    changed: 0.86,
    other: "restricting",
  },
  coverInsteadOfCompany: {
    judge: (changed) => {
      const species = animal("shy", { "social.settledBy": true, "space.cover": 0.4 });
      return planBy(settlingCompany, [{ species, unsexed: 1 }], { tank: { cover: 0.6 } }, changed).outcome;
    },
    answer: "suitable",
    changed: 1.6,
    other: "conditional",
  },
  preyDepth: {
    judge: hunted(4, { "size.bodyDepthShare": 0.75 }),
    answer: "nothing",
    changed: 0.3,
    other: "advisory",
  },
  coverForYoung: {
    judge: inCover(
      predation,
      { "predation.eats": [{ prey: "fry" }], "reproduction.mode": "scatters-eggs" },
      { "predation.eats": [], "reproduction.mode": "livebearer" },
      true,
    ),
    answer: "suitable",
    changed: 0.31,
    other: "conditional",
  },
  coverAgainstChase: {
    judge: inCover(
      actsOthers,
      { "temperament.acts": [{ does: "chases", target: "any" }], "space.zones": ["bottom"] },
      {
        "temperament.acts": [],
        "space.zones": ["bottom"],
        "diet.pace": "fast",
      },
    ),
    answer: "suitable",
    changed: 0.31,
    other: "conditional",
  },
  coverFromBustle: {
    judge: inCover(
      shyness,
      { "temperament.shy": true, "diet.pace": "ordinary", "space.zones": ["midwater"] },
      { "temperament.shy": false, "diet.pace": "fast", "space.zones": ["midwater"], "social.settles": false },
    ),
    answer: "suitable",
    changed: 0.31,
    other: "conditional",
  },
  clearlySmaller: {
    judge: beside(actsOthers, { "temperament.acts": [{ does: "chases", target: "smaller" }] }, 7.9, agile),
    answer: "restricting",
    changed: 0.7,
    other: "nothing",
  },
  muchLonger: {
    judge: beside(sizeAndPace, { "diet.pace": "fast" }, 2.4),
    answer: "restricting",
    changed: 4.3,
    other: "nothing",
  },
  oxygenForLow: { judge: breathing("low"), answer: 15.8, changed: 4, other: 12.9 },
  oxygenForOrdinary: { judge: breathing("ordinary"), answer: 10, changed: 4, other: 12.9 },
  oxygenForHigh: { judge: breathing("high"), answer: 7, changed: 5, other: 10 },
  nightHours: {
    judge: (changed) =>
      planBy(oxygen, [{ species: breather("ordinary"), unsexed: 20 }], smallTank, changed).findings.length,
    answer: 1,
    changed: 9,
    other: 0,
  },
  carbonDioxide: {
    judge: (changed) => {
      const water = { temperature: 25, pH: 6.6, carbonateHardness: 4 };
      return planBy(carbonDioxide, [{ species: animal("fish"), unsexed: 1 }], { water }, changed).findings
        .length;
    },
    answer: 1,
    changed: 36,
    other: 0,
  },
  openSurface: {
    judge: (changed) =>
      planBy(
        oxygen,
        [{ species: breather("low", "obligate"), unsexed: 1 }],
        { tank: { openSurface: 0.2 } },
        changed,
      ).outcome,
    answer: "suitable",
    changed: 0.21,
    other: "conditional",
  },
  roomBesideBrood: { ...besideBrood("midwater", 2000), changed: 2.1 },
  groundBesideBrood: { ...besideBrood("bottom", 1300), changed: 3.1 },
  spreadsFrom: {
    judge: (changed) => {
      const rival = animal("rival", {
        "social.living": "shoal",
        "social.group": { least: 4 },
        "temperament.acts": [{ does: "chases", doer: "male", target: "own-sex" }],
      });
      return planBy(actsOwnKind, [{ species: rival, males: 4 }], smallTank, changed).outcome;
    },
    answer: "suitable",
    changed: 5,
    other: "conditional",
  },
  broadFlank: {
    judge: beside(
      mucusGrazing,
      { "diet.foods": ["algae"], "temperament.acts": [{ does: "rasps-mucus", target: "any" }] },
      10,
      {
        "size.bodyShape": "fusiform",
      },
    ),
    answer: "restricting",
    changed: 11,
    other: "nothing",
  },
  nearlyBroad: {
    judge: beside(
      mucusGrazing,
      {
        "diet.foods": ["algae"],
        "temperament.acts": [{ does: "rasps-mucus", target: "any", from: "adult" }],
      },
      8,
      { "size.bodyShape": "fusiform" },
    ),
    answer: "advisory",
    changed: 0.85,
    other: "nothing",
  },
  besideOthers: sharing("bottom"),
  besideSwimmers: sharing("midwater"),
  bendingRoom: {
    judge: (changed) => {
      const species = animal("eel", { "size.adultLength": adults(300), "size.bodyShape": "eel-like" });
      return planBy(height, [{ species, unsexed: 1 }], smallTank, changed).outcome;
    },
    answer: "conditional",
    changed: 0.2,
    other: "suitable",
  },
  waterDepth: {
    judge: (changed) => {
      const species = animal("long", { "size.adultLength": adults(100), "size.bodyShape": "fusiform" });
      return planBy(height, [{ species, unsexed: 1 }], smallTank, changed).outcome;
    },
    answer: "conditional",
    changed: 0.5,
    other: "suitable",
  },
  tallBody: {
    judge: (changed) => {
      const species = animal("tall", {
        "size.adultLength": adults(10),
        "size.bodyShape": "short-deep",
        "space.height": 80,
      });
      return planBy(height, [{ species, unsexed: 1 }], smallTank, changed).outcome;
    },
    answer: "conditional",
    changed: 11,
    other: "suitable",
  },
  floorLoad: {
    judge: (changed) =>
      planBy(cautionFloor, [{ species: animal("fish"), unsexed: 1 }], roomy, changed).findings.length,
    answer: 1,
    changed: 10,
    other: 0,
  },
  floorForce: {
    judge: (changed) =>
      planBy(cautionFloor, [{ species: animal("fish"), unsexed: 1 }], roomy, changed).findings.length,
    answer: 1,
    changed: 10,
    other: 0,
  },
  floorUnknownHeight: {
    judge: (changed) => {
      const tank = { base: { shape: "rectangle", length: 100, width: 60 } } as const;
      return assessPlan(
        { tank, groups: [{ species: animal("fish"), unsexed: 1 }] },
        { rules: [cautionFloor], thresholds: changed },
      ).findings.length;
    },
    answer: 1,
    changed: 7000,
    other: 0,
  },
  restsOnHeaters: {
    judge: (changed) =>
      planBy(
        cautionDevices,
        [
          {
            species: animal("sleeper", { "space.zones": ["bottom"], "size.adultLength": adults(25) }),
            unsexed: 1,
          },
        ],
        roomy,
        changed,
      ).findings.length,
    answer: 1,
    changed: 30,
    other: 0,
  },
};

describe.each(Object.keys(thresholds) as ThresholdName[])("%s", (name) => {
  test("says what it decides and where it is from", () => {
    const { about, source, value } = thresholds[name];
    expect(about.length).toBeGreaterThan(20);
    expect(source.length).toBeGreaterThan(10);
    expect(value).toBeGreaterThan(0);
  });

  test("changed, changes the answer", () => {
    const { judge, answer, changed, other } = cases[name];
    expect(judge()).toBe(answer);
    expect(judge({ [name]: changed })).toBe(other);
  });
});

describe("a verdict", () => {
  const species = animal("fish");
  const madeWith = (changed?: Partial<ThresholdValues>) =>
    assessPair({ species }, { species }, { thresholds: changed }).made.thresholds;

  test("records every number it was made with", () => {
    const table = Object.fromEntries(Object.entries(thresholds).map(([name, { value }]) => [name, value]));
    expect(madeWith()).toEqual(table);
    expect(madeWith({ floorLoad: 2, possiblePrey: 0.5 })).toEqual({
      ...table,
      floorLoad: 2,
      possiblePrey: 0.5,
    });
  });

  test("can be repeated from its record", () => {
    const [a, b] = two("water.temperature", [18, 22], [22.5, 26]).map((fish) => ({ species: fish }));
    const verdict = a && b && assessPair(a, b, { thresholds: { givesTemperature: 0.4 } });
    expect(verdict?.outcome).toBe("unsuitable");
    expect(a && b && verdict && assessPair(a, b, { thresholds: verdict.made.thresholds })).toEqual(verdict);
  });

  test("of changed numbers leaves the table as it is", () => {
    madeWith({ floorLoad: 2 });
    expect(thresholds.floorLoad.value).toBe(1.5);
    expect(madeWith().floorLoad).toBe(1.5);
  });
});

test("a name the table does not have, or a value that is no number, is refused", () => {
  const species = animal("fish");
  const given = (changed: object) => () => assessPair({ species }, { species }, { thresholds: changed });
  for (const name of ["sharedTemprature", "constructor", "toString", "hasOwnProperty"]) {
    expect(given({ [name]: 1 }), name).toThrow(InvalidInputError);
  }
  expect(given(JSON.parse('{ "__proto__": 1 }'))).toThrow(InvalidInputError);
  for (const value of [Number.NaN, Number.POSITIVE_INFINITY, "2", null]) {
    expect(given({ floorLoad: value }), String(value)).toThrow(
      /^options\.thresholds\.floorLoad: expected a finite number/,
    );
  }
});

describe("a number that means nothing is refused", () => {
  const species = animal("fish");
  const given = (changed: Partial<ThresholdValues>) => () =>
    assessPair({ species }, { species }, { thresholds: changed });

  test.each(Object.entries(thresholds))("%s below zero, or as a share above one", (name, { value, unit }) => {
    expectRefused(given({ [name]: -0.01 }), new RegExp(`^options\\.thresholds\\.${name}$`));
    const isShare = unit === "1" && value < 1;
    if (isShare) expectRefused(given({ [name]: 1.01 }), `options.thresholds.${name}`);
  });

  test.each<readonly [ThresholdName, ThresholdName]>([
    ["likelyPrey", "possiblePrey"],
    ["muchSmaller", "clearlySmaller"],
    ["farTooSmall", "nearlyLong"],
    ["farTooSmall", "nearlyWide"],
    ["oxygenForLow", "oxygenForOrdinary"],
    ["oxygenForOrdinary", "oxygenForHigh"],
  ])("%s above %s", (less, more) => {
    const { value } = thresholds[more];
    expect(
      given({ [less]: value, ...(less === "farTooSmall" && { nearlyWide: 1, nearlyLong: 1 }) }),
    ).not.toThrow();
    expectRefused(given({ [less]: value * 1.01 }), less);
    expectRefused(given({ [more]: thresholds[less].value * 0.99 }), less);
  });
});
