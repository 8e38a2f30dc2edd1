import fc from "fast-check";
import { describe, expect, test } from "vitest";
import * as advice from "../src/advice";
import * as catalog from "../src/catalog";
import * as compatibility from "../src/compatibility";
import { InvalidInputError, OutsideDomainError } from "../src/errors";
import * as evidence from "../src/evidence";
import * as load from "../src/load";
import type { Plan } from "../src/plan";
import * as plans from "../src/plan";
import * as ranges from "../src/ranges";
import * as report from "../src/report";
import * as schema from "../src/schema";
import * as search from "../src/search";
import * as species from "../src/species";
import * as standards from "../src/standards";
import * as dataTables from "../src/tables";
import * as tank from "../src/tank";
import * as units from "../src/units";
import * as water from "../src/water";
import { adults, animal } from "./compatibility/animals";
import { expectRefused } from "./refused";
import { runs } from "./runs";

type AnyFunction = (...args: readonly unknown[]) => unknown;

/** Whether it is one of the errors that functions throw. */
const isError = (name: string) => name.endsWith("Error");

const { mixWater, weeklyChange, feedingPlan, entryOrder } = advice;
const { totalLength, standardLength } = species;
const { fieldsOf } = plans;
const { sentence, describe: told, describeFeedingPlan, describeEntryOrder, describeSuspects } = report;
const { describeSetPoint, describeRequirements } = report;

const exported: readonly (readonly [string, unknown])[] = Object.entries({
  ...ranges,
  ...units,
  ...tank,
  ...water,
  ...load,
  ...{ mixWater, weeklyChange, feedingPlan, entryOrder, totalLength, standardLength, fieldsOf, sentence },
  describe: told,
  ...{ describeFeedingPlan, describeEntryOrder, describeSuspects, describeSetPoint, describeRequirements },
}).filter(([name]) => !isError(name));
const isFunction = (entry: readonly [string, unknown]): entry is [string, AnyFunction] =>
  typeof entry[1] === "function";
const functions = exported.filter(isFunction);
const tables = exported.filter((entry) => !isFunction(entry));

const range = { min: 20, max: 26 };
const columns = { ids: ["danio-rerio"], min: Float64Array.of(20), max: Float64Array.of(26) };
const rectangle = { shape: "rectangle", length: 60, width: 30 };
const polygon = {
  shape: "polygon",
  points: [
    [0, 0],
    [60, 0],
    [60, 30],
  ],
};
const glass = { height: 36, unit: "cm", measured: "outer", glass: 0.5, waterBelowRim: 2 };

const sources = [
  { generalHardness: 16, carbonateHardness: 8, nitrate: 20 },
  { generalHardness: 0, carbonateHardness: 0, nitrate: 1 },
];
const week = { nitrogen: 20, volume: 100, limit: 30 };
const stocked: Plan = {
  tank: {
    base: { shape: "rectangle", length: 60, width: 30 },
    lid: true,
    filter: { mediaArea: 1, age: 100 },
  },
  water: { temperature: 24, pH: 7 },
  groups: [
    { species: animal("a", { "size.adultLength": adults(5) }), unsexed: 3, entersOn: 0 },
    { species: animal("b", { "size.adultLength": adults(3) }), males: 2, length: 2 },
  ],
  offerings: [{ food: "dry", place: "surface" }],
};
const judgedBy = ["height", "lid", "group-size", "carbon-dioxide", "water-temperature", "temperature"];
const spoken = compatibility.assessPlan(
  {
    ...stocked,
    groups: [catalog.speciesById("danio-rerio"), catalog.speciesById("betta-splendens")].map((species) => ({
      species: species ?? expect.fail(),
      unsexed: 3,
    })),
  },
  {
    rules: [...compatibility.planRules, ...compatibility.pairRules].filter(({ id }) => judgedBy.includes(id)),
  },
);

/** Functions of which each refusal names the very place that is wrong; those of ranges and tanks name the whole. */
const namesThePlace: ReadonlySet<string> = new Set([
  "mixWater",
  "weeklyChange",
  "feedingPlan",
  "entryOrder",
  "totalLength",
  "standardLength",
  "fieldsOf",
  "sentence",
  "describe",
  "describeFeedingPlan",
  "describeEntryOrder",
  "describeSuspects",
  "describeSetPoint",
  "describeRequirements",
]);

const named = (...ids: readonly string[]) => ids.map((id) => catalog.speciesById(id) ?? expect.fail());
const sharingWater = named("danio-rerio", "betta-splendens");
const sharingNone = named("carassius-auratus", "symphysodon-aequifasciatus", "paracheirodon-axelrodi");

/** Arguments that each function answers to, for every way of calling it. */
const goodArguments: Readonly<Record<string, readonly (readonly unknown[])[]>> = {
  overlap: [[range, range, { min: 22 }]],
  gap: [[{ max: 20 }, { min: 22 }]],
  contains: [
    [range, range],
    [range, 22],
  ],
  width: [[range]],
  jaccard: [[range, range]],
  simpson: [[range, range]],
  sorensen: [[range, range]],
  containment: [[range, range]],
  schoener: [[range, range]],
  pianka: [[range, range]],
  limitingPair: [
    [[range, { min: 22 }, range]],
    [[{ range }, { range }], (item: { range: unknown }) => item?.range],
  ],
  rangeColumns: [[[{ id: "danio-rerio", water: { pH: { value: { kept: range } } } }], "water.pH"]],
  sharing: [[columns, range]],
  pairsThatShare: [[columns]],
  ordinalOverlap: [[["still", "gentle", "strong"], { min: "still" }, { min: "gentle", max: "strong" }]],
  convert: [
    [7, "degC", "degF"],
    [7, "ft", "cm"],
  ],
  convertDifference: [[7, "degC", "degF"]],
  measureOf: [["cm"]],
  unitsOf: [["length"]],
  lengthInCm: [[24, "in", "height"]],
  tankFloor: [[{ base: rectangle, ...glass }], [{ base: polygon, ...glass }]],
  tankGeometry: [
    [{ base: rectangle, ...glass }],
    [{ base: polygon, ...glass }],
    [{ base: { shape: "circle", diameter: 40 }, ...glass }],
    [{ base: { shape: "sector", radius: 40, angle: 90 }, ...glass }],
    [{ base: { shape: "bowed", length: 60, width: 30, bow: 10 }, ...glass }],
  ],
  oxygenSaturation: [[{ temperature: 25, salinity: 5, pressure: 100 }]],
  carbonDioxide: [[{ temperature: 25, pH: 7, carbonateHardness: 4 }]],
  unionizedAmmoniaFraction: [[{ temperature: 25, pH: 7 }]],
  waterDensity: [[{ temperature: 25, salinity: 5 }]],
  mixture: [[[{ amount: 1, water: { generalHardness: 8, carbonateHardness: 6, nitrate: 20 } }]]],
  bodyMass: [
    [{ length: 5, shape: "fusiform" }],
    [{ length: 5, shape: "elongated", lengthWeight: { a: 0.01, b: 3 } }],
  ],
  oxygenDemand: [[{ mass: 1, temperature: 25 }]],
  nitrogenLoad: [[{ food: 1, proteinShare: 0.4 }]],
  ration: [[{ mass: 1, temperature: 25 }]],
  filterCapacity: [[{ mediaArea: 2, age: 60 }]],
  foamArea: [[{ volume: 2 }]],
  foamVolume: [[{ mediaArea: 2 }]],
  mixWater: [
    [{ sources, wanted: { generalHardness: { min: 4, max: 8 }, carbonateHardness: { max: 5 } }, tank: week }],
  ],
  weeklyChange: [[{ ...week, nitrate: 10 }]],
  feedingPlan: [[stocked, {}]],
  entryOrder: [[stocked, {}]],
  totalLength: [[5, "SL", 0.8]],
  standardLength: [[5, 0.8]],
  fieldsOf: [["tank.lid"], ["group.count", 1]],
  sentence: [...spoken.findings, ...spoken.conditions, ...spoken.open].map((part) => [
    spoken,
    part,
    { units: "us" },
  ]),
  describe: [
    [spoken, { format: "markdown", units: "us" }],
    [spoken, { units: "metric" }],
  ],
  describeSuspects: [[advice.suspects(stocked, advice.seenSigns), stocked, { units: "us" }]],
  describeSetPoint: [
    [
      advice.setPoint(sharingWater, { swing: { temperature: 1 }, totalAmmonia: 1 }),
      sharingWater,
      { units: "us" },
    ],
    [advice.setPoint(sharingNone), sharingNone, { format: "markdown" }],
  ],
  describeRequirements: [[standards.officialRequirements(stocked), stocked, { units: "us" }]],
  describeFeedingPlan: [[feedingPlan(stocked), { format: "markdown", units: "us" }]],
  describeEntryOrder: [
    [entryOrder(stocked), stocked, { units: "us" }],
    [{ reason: "unsuitable", groups: [0], rules: ["predation"] }, stocked],
  ],
};

const sparse: unknown[] = [];
sparse[2] = range;

/** What a caller without types may pass by mistake. */
const hostile = fc.oneof(
  fc.constantFrom<unknown>(
    undefined,
    null,
    Number.NaN,
    Infinity,
    -Infinity,
    1e308,
    -1e308,
    5e-324,
    -0,
    0,
    -1,
    0.5,
    1e9,
    360,
    7n,
    "",
    "7",
    "cm",
    "yd",
    "__proto__",
    "constructor",
    "toString",
    "rectangle",
    true,
    false,
    Symbol("7"),
    [],
    {},
    sparse,
    [undefined],
    [null],
    [[]],
    Object.create(null),
    new Date(0),
    new Map(),
    () => 7,
    { min: 7 },
    { min: 8, max: 7 },
    { min: Number.NaN },
    { min: -1e308, max: 1e308 },
    { shape: "constructor" },
  ),
  fc.double(),
  fc.string(),
  fc.anything(),
);

/** What stands in a verdict as a rule made it. */
const asMade: ReadonlySet<string> = new Set(["measures", "values"]);
const opaque: ReadonlySet<string> = new Set([...asMade, "species"]);

/**
 * The places in an argument where something else can stand, each as a path; the first is the argument itself. What is wrong
 * inside a profile is for profile-problems.test.ts to try; the figures of a finding and of an open question are as their
 * rule made them.
 */
function places(value: unknown, path: readonly string[] = []): readonly (readonly string[])[] {
  const isHeld = typeof value === "object" && value !== null && !opaque.has(path.at(-1) ?? "");
  const inner = isHeld ? Object.entries(value) : [];
  return [path, ...inner.flatMap(([key, held]) => places(held, [...path, key]))];
}

/** A copy of an argument with something else in one place. */
function withInstead(value: unknown, [key, ...rest]: readonly string[], instead: unknown): unknown {
  if (key === undefined) return instead;
  const changed = (held: unknown) => withInstead(held, rest, instead);
  if (Array.isArray(value)) return value.map((held, index) => (String(index) === key ? changed(held) : held));
  const object: Readonly<Record<string, unknown>> = Object(value);
  return { ...object, [key]: changed(object[key]) };
}

/** Numbers that are none and what is no word, anywhere in a result; columns hold an open end as infinite. */
function nonFinite(value: unknown): readonly unknown[] {
  if (typeof value === "string") return /\bNaN\b|Infinity|undefined|\[object/.test(value) ? [value] : [];
  if (value instanceof Float64Array) return [...value.filter(Number.isNaN)];
  if (typeof value === "number") return Number.isFinite(value) ? [] : [value];
  return typeof value === "object" && value !== null ? Object.values(value).flatMap(nonFinite) : [];
}

/**
 * Calls, and complains of any end but a finite answer or an error of the library's own that names what was wrong.
 *
 * @param mistaken - The keys on the way to the one place that is wrong, and those beside it; none where all may be wrong.
 */
function expectAnswerOrRefusal(
  call: AnyFunction,
  args: readonly unknown[],
  mistaken: readonly string[] = [],
): void {
  try {
    expect(nonFinite(call(...args))).toEqual([]);
  } catch (error) {
    const isRefusal = error instanceof InvalidInputError;
    if (!(isRefusal || error instanceof OutsideDomainError)) throw error;
    for (const line of isRefusal ? error.problems.map(plans.describeProblem) : [error.message])
      expect(line.length).toBeLessThan(1_000);
    if (mistaken.length === 0) return;
    const named = isRefusal ? error.problems.map(({ path }) => path.join(".")) : [error.subject];
    const keys = named.flatMap((path) => path.split(/[.[\]]+/));
    if (!keys.some((key) => mistaken.includes(key)))
      expect.fail(`${named.join(", ")} is refused, and not ${mistaken.join(".")}: ${error.message}`);
  }
}

/** The keys on the way to a place in an argument, and those beside it. */
function keysAbout(arg: unknown, path: readonly string[]): readonly string[] {
  const parent = path.slice(0, -1).reduce<unknown>((held, key) => Reflect.get(Object(held), key), arg);
  return path.length === 0 ? [] : [...path, ...Object.keys(Object(parent))];
}

test("every function has arguments to be tried with", () => {
  expect(Object.keys(goodArguments).sort()).toEqual(functions.map(([name]) => name).sort());
});

describe.each(functions)("%s", (name, call) => {
  const good = goodArguments[name] ?? [];

  test("answers what it should", () => {
    for (const args of good) expect(nonFinite(call(...args))).toEqual([]);
  });

  test("refuses nothing at all", () => {
    expect(() => call()).toThrow(InvalidInputError);
  });

  test("answers with finite numbers, or refuses, whatever it is given", () => {
    fc.assert(
      fc.property(fc.array(hostile, { maxLength: 4 }), (args) => expectAnswerOrRefusal(call, args)),
      { numRuns: runs(300) },
    );
  });

  test("answers with finite numbers, or refuses, whatever stands in one place of good arguments", () => {
    const changed = fc.constantFrom(...good).chain((args) => {
      const inAll = args.flatMap((arg, index) =>
        places(arg)
          .filter((path) => !asMade.has(path.at(-1) ?? ""))
          .map((path) => ({ args, index, path })),
      );
      return fc.tuple(fc.constantFrom(...inAll), hostile);
    });
    fc.assert(
      fc.property(changed, ([{ args, index, path }, instead]) => {
        const mistaken = args.map((arg, at) => (at === index ? withInstead(arg, path, instead) : arg));
        expectAnswerOrRefusal(call, mistaken, namesThePlace.has(name) ? keysAbout(args[index], path) : []);
      }),
      { numRuns: runs(1_000) },
    );
  });
});

describe.each(tables)("%s", (_, table) => {
  /** Everything in a table that can be changed. */
  const open = (value: unknown): readonly unknown[] =>
    typeof value === "object" && value !== null
      ? [...(Object.isFrozen(value) ? [] : [value]), ...Object.values(value).flatMap(open)]
      : [];

  test("cannot be changed", () => {
    expect(open(table)).toEqual([]);
  });
});

test("no one can widen a range of validity", () => {
  const { temperature }: { temperature: { max: number } } = water.oxygenDomain;
  expect(() => {
    temperature.max = 1_000;
  }).toThrow(TypeError);
  expect(() => water.oxygenSaturation({ temperature: 500 })).toThrow(OutsideDomainError);
});

/** A field that nothing reads, as a slip of the keyboard makes one. */
const slip: object = { misspelt: 7 };
const danio = catalog.speciesById("danio-rerio") ?? expect.fail();
const record = evidence.recordById("danio-rerio") ?? expect.fail();
const plan: Plan = { tank: { base: { shape: "rectangle", length: 80, width: 35 } }, groups: [] };
const planned: Plan = { ...plan, groups: [{ species: danio, unsexed: 10 }] };
const pair = [{ species: danio }, { species: danio }] as const;
const verdict = compatibility.assessPair(...pair);
const feeding = feedingPlan(planned);
const order = entryOrder(planned);
const suspected = advice.suspects(planned, ["hiding"]);
const asked = standards.officialRequirements(planned);
const tap = { generalHardness: 16 };
const wanted = { generalHardness: { max: 20 } };
const given = { nitrogen: 20, volume: 100 };
const lid = { on: "tank.lid", wanted: { oneOf: [true] } } as const;
const profiles = [danio];
const axis = "water.temperature";

/** Every function that reads fields by their names or takes options, called with one field too many in each place. */
const misspelt: Readonly<Record<string, readonly (() => unknown)[]>> = {
  oxygenSaturation: [() => water.oxygenSaturation({ temperature: 25, ...slip })],
  carbonDioxide: [() => water.carbonDioxide({ temperature: 25, pH: 7, carbonateHardness: 4, ...slip })],
  unionizedAmmoniaFraction: [() => water.unionizedAmmoniaFraction({ temperature: 25, pH: 7, ...slip })],
  waterDensity: [() => water.waterDensity({ temperature: 25, ...slip })],
  mixture: [
    () => water.mixture([{ amount: 1, water: tap, ...slip }]),
    () => water.mixture([{ amount: 1, water: { ...tap, ...slip } }]),
  ],
  bodyMass: [
    () => load.bodyMass({ length: 5, ...slip }),
    () => load.bodyMass({ length: 5, lengthWeight: { a: 0.01, b: 3, ...slip } }),
  ],
  ration: [() => load.ration({ mass: 1, ...slip })],
  oxygenDemand: [() => load.oxygenDemand({ mass: 1, temperature: 20, ...slip })],
  nitrogenLoad: [() => load.nitrogenLoad({ food: 1, ...slip })],
  filterCapacity: [() => load.filterCapacity({ mediaArea: 1, age: 60, ...slip })],
  foamArea: [() => load.foamArea({ volume: 1, ...slip })],
  foamVolume: [() => load.foamVolume({ mediaArea: 1, ...slip })],
  resolve: [() => species.resolve(record, slip), () => species.resolve(record, { only: slip })],
  isMet: [() => plans.isMet(lid, { ...plan, ...slip })],
  planData: [() => plans.planData({ ...plan, ...slip })],
  parsePlan: [() => plans.parsePlan({ ...plan, ...slip }, catalog.speciesById)],
  assessPair: [
    () => compatibility.assessPair(...pair, slip),
    () => compatibility.assessPair({ ...pair[0], ...slip }, pair[1]),
    () => compatibility.assessPair(...pair, { thresholds: slip }),
  ],
  assessPairBy: [() => compatibility.assessPairBy(compatibility.pairRules, ...pair, slip)],
  assessPlan: [
    () => compatibility.assessPlan(planned, slip),
    () => compatibility.assessPlan({ ...planned, ...slip }),
    () => compatibility.assessPlan({ ...plan, groups: [{ species: danio, unsexed: 10, ...slip }] }),
    () => compatibility.assessPlan({ ...planned, tank: { ...plan.tank, ...slip } }),
    () => compatibility.assessPlan({ ...planned, water: slip }),
  ],
  assessPlanBy: [() => compatibility.assessPlanBy(compatibility.planRules, planned, slip)],
  outcomes: [() => compatibility.outcomes(profiles, slip)],
  pairPlan: [() => compatibility.pairPlan(...pair, slip)],
  planThatMeets: [() => compatibility.planThatMeets(lid, planned, slip)],
  planner: [
    () => compatibility.planner(planned, slip),
    () => compatibility.planner(planned).with(slip),
    () => compatibility.planner(planned).with({ tank: slip }),
    () => compatibility.planner(planned).with({ groups: { 0: slip } }),
  ],
  witness: [() => compatibility.witness(planned, slip)],
  entryOrder: [() => advice.entryOrder(planned, slip)],
  feedingPlan: [() => advice.feedingPlan(planned, slip)],
  leastTank: [() => advice.leastTank(planned.groups, slip)],
  mixWater: [
    () => advice.mixWater({ sources: [tap], wanted, ...slip }),
    () => advice.mixWater({ sources: [{ ...tap, ...slip }], wanted }),
    () => advice.mixWater({ sources: [tap], wanted: { ...wanted, ...slip } }),
    () => advice.mixWater({ sources: [tap], wanted, tank: { ...given, ...slip } }),
  ],
  weeklyChange: [() => advice.weeklyChange({ ...given, ...slip })],
  remedies: [() => advice.remedies(planned, slip)],
  setPoint: [() => advice.setPoint(profiles, slip), () => advice.setPoint(profiles, { swing: slip })],
  suspects: [() => advice.suspects(planned, ["hiding"], slip)],
  turningPoints: [() => advice.turningPoints(planned, { on: axis, ...slip })],
  whoCouldJoin: [() => advice.whoCouldJoin(planned, profiles, slip)],
  officialRequirements: [() => standards.officialRequirements({ ...planned, ...slip })],
  describe: [() => report.describe(verdict, slip)],
  describeIn: [() => report.describeIn(report.english, verdict, slip)],
  sentence: [() => report.sentence(verdict, lid, slip)],
  sentenceIn: [() => report.sentenceIn(report.english, verdict, lid, slip)],
  reportParts: [() => report.reportParts(verdict, slip)],
  reportPartsIn: [() => report.reportPartsIn(report.english, verdict, slip)],
  describeFeedingPlan: [() => report.describeFeedingPlan(feeding, slip)],
  describeFeedingPlanIn: [() => report.describeFeedingPlanIn(report.englishAdvice, feeding, slip)],
  describeEntryOrder: [() => report.describeEntryOrder(order, planned, slip)],
  describeEntryOrderIn: [() => report.describeEntryOrderIn(report.englishAdvice, order, planned, slip)],
  describeSuspects: [() => report.describeSuspects(suspected, planned, slip)],
  describeSetPoint: [() => report.describeSetPoint(advice.setPoint(profiles), profiles, slip)],
  describeSetPointIn: [
    () => report.describeSetPointIn(report.englishAdvice, advice.setPoint(profiles), profiles, slip),
  ],
  describeRequirements: [() => report.describeRequirements(asked, planned, slip)],
  describeRequirementsIn: [
    () => report.describeRequirementsIn(report.englishRequirements, asked, planned, slip),
  ],
  describeSuspectsIn: [() => report.describeSuspectsIn(report.englishAdvice, suspected, planned, slip)],
  profileMarkdown: [() => report.profileMarkdown(danio, slip)],
  profileMarkdownIn: [() => report.profileMarkdownIn(report.english, danio, slip)],
  rangeChart: [() => report.rangeChart(profiles, axis, slip)],
  rangeChartIn: [() => report.rangeChartIn(report.english, profiles, axis, slip)],
  sizeChart: [() => report.sizeChart(profiles, slip)],
  sizeChartIn: [() => report.sizeChartIn(report.english, profiles, slip)],
  speciesPage: [() => report.speciesPage(danio, slip)],
  speciesPageIn: [() => report.speciesPageIn(report.englishPages, danio, slip)],
  overlapRows: [() => dataTables.overlapRows(profiles, { axes: [axis], measures: ["jaccard"], ...slip })],
  suggestSpecies: [() => search.suggestSpecies("dan", slip)],
  parseSpecies: [() => schema.parseSpecies({ ...record, ...slip })],
};

/** Functions that take no field by its name but those of values, records, profiles and verdicts, which may carry more. */
const withoutOptions: readonly string[] = [
  // Ranges and columns: such as those of conditions, which have a unit, and of water, which have an optimum beside them.
  ...Object.keys(ranges),
  // The tank of a plan, with all that is in it; a plan refuses what is misspelt in its tank.
  "tankFloor",
  "tankGeometry",
  // A rule of the caller's own, which may hold what it reads itself.
  "defineRule",
  // Names, numbers, words.
  ...Object.keys(units),
  "lengthInCm",
  "splitPath",
  "standardLength",
  "totalLength",
  "fieldsOf",
  "loadSpecies",
  "dataPackage",
  // Records, profiles and verdicts, as the library itself made them.
  "applyForm",
  "basisOf",
  "disagreement",
  "factAt",
  "statementsOf",
  "factRows",
  "nameRows",
  "sourceRows",
  "statementRows",
  "taxonRows",
  "toCsv",
  "traitRows",
  "verdictRows",
  "describeProblem",
  // These say what is wrong, or leave it out, and throw nothing.
  "problemsIn",
  "safeParsePlan",
  "safeParseSpecies",
  "speciesIn",
];

test("every import has the errors that its functions throw", () => {
  const floors = {
    ranges,
    units,
    tank,
    water,
    load,
    species,
    plans,
    compatibility,
    advice,
    standards,
    report,
  };
  const others = { dataTables, search, schema, catalog, evidence };
  for (const [name, floor] of Object.entries({ ...floors, ...others }))
    expect(floor.InvalidInputError, name).toBe(InvalidInputError);
  for (const floor of [water, load, advice]) expect(floor.OutsideDomainError).toBe(OutsideDomainError);
});

test("every function is known to refuse what is misspelt, or to take no options", () => {
  const all = [ranges, units, tank, water, load, species, plans, compatibility, advice, standards, report];
  const names = [...all, dataTables, search, schema].flatMap((floor) =>
    Object.entries(floor)
      .filter(([name, held]) => typeof held === "function" && !isError(name))
      .map(([name]) => name),
  );
  expect([...new Set(names)].sort()).toEqual(
    [...new Set([...Object.keys(misspelt), ...withoutOptions.filter((name) => !isError(name))])].sort(),
  );
});

describe("a misspelt field is refused where it would say nothing", () => {
  test.each(Object.entries(misspelt))("%s", (_, calls) => {
    for (const call of calls) expectRefused(call, "misspelt");
  });
});

describe("what holds its entries otherwise than in fields is refused where fields are read", () => {
  test.each([
    ["a Map", new Map([["rules", []]])],
    ["a Set", new Set(["rules"])],
    ["a date", new Date(0)],
    ["a promise", Promise.resolve({ rules: [] })],
    ["a list", []],
  ])("%s", (_, held: object) => {
    expectRefused(() => compatibility.assessPlan(planned, held), /^options$/);
    expectRefused(() => compatibility.assessPlan(planned, { thresholds: held }), /^options\.thresholds$/);
    expectRefused(() => report.describe(verdict, held), /^options$/);
    expectRefused(() => compatibility.assessPlan({ ...planned, water: held }), /^water$/);
    expectRefused(() => water.oxygenSaturation(held as never), /^$/);
  });
});
