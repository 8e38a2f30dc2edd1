import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import danioRerio from "vivary/catalog/danio-rerio";
import trichogasterLalius from "vivary/catalog/trichogaster-lalius";
import record from "vivary/evidence/danio-rerio";
import {
  entryOrder,
  feedingPlan,
  leastTank,
  remedies,
  setPoint,
  suspects,
  turningPoints,
  whoCouldJoin,
} from "../src/advice";
import {
  assessPair,
  assessPairBy,
  assessPlan,
  assessPlanBy,
  outcomes,
  pairPlan,
  pairRules,
  planner,
  planThatMeets,
  witness,
} from "../src/compatibility";
import type { Plan } from "../src/plan";
import {
  describe as described,
  describeEntryOrder,
  describeEntryOrderIn,
  describeFeedingPlan,
  describeFeedingPlanIn,
  describeIn,
  describeRequirements,
  describeRequirementsIn,
  describeSetPoint,
  describeSetPointIn,
  describeSuspects,
  describeSuspectsIn,
  english,
  englishAdvice,
  englishPages,
  englishRequirements,
  profileMarkdown,
  profileMarkdownIn,
  rangeChart,
  rangeChartIn,
  reportParts,
  reportPartsIn,
  sentence,
  sentenceIn,
  sizeChart,
  sizeChartIn,
  speciesPage,
  speciesPageIn,
} from "../src/report";
import { suggestSpecies } from "../src/search";
import { resolve } from "../src/species";
import { officialRequirements } from "../src/standards";
import { overlapRows } from "../src/tables";
import { expectRefused } from "./refused";

/** A shy fish that asks for company. */
const plan: Plan = {
  tank: { base: { shape: "rectangle", length: 100, width: 40 }, height: 40, cover: 0.3, openWater: 0.4 },
  groups: [{ species: trichogasterLalius, males: 1, females: 1 }],
};
const [shy, bold] = [{ species: trichogasterLalius }, { species: danioRerio }];
const profiles = [danioRerio, trichogasterLalius];
const aim = setPoint(profiles);
const verdict = assessPair(shy, bold);
const order = entryOrder(plan);
const feeding = feedingPlan(plan);
const suspected = suspects(plan, ["hiding"]);
const requirements = officialRequirements(plan);
const lid = { on: "tank.lid", wanted: { oneOf: [true] } } as const;
const followed = { on: "water.pH" } as const;
const compared = { axes: ["water.pH"], measures: ["schoener"] } as const;

type Call = (options: never) => unknown;

/** A call as JavaScript makes it: with anything. */
const asGiven = (call: Call, options: unknown): unknown => Reflect.apply(call, undefined, [options]);

/** Every function that takes options, with good arguments before them. */
const calls: Readonly<Record<string, Call>> = {
  assessPair: (options) => assessPair(shy, bold, options),
  assessPairBy: (options) => assessPairBy(pairRules, shy, bold, options),
  assessPlan: (options) => assessPlan(plan, options),
  assessPlanBy: (options) => assessPlanBy(pairRules, plan, options),
  describe: (options) => described(verdict, options),
  describeEntryOrder: (options) => describeEntryOrder(order, plan, options),
  describeEntryOrderIn: (options) => describeEntryOrderIn(englishAdvice, order, plan, options),
  describeFeedingPlan: (options) => describeFeedingPlan(feeding, options),
  describeFeedingPlanIn: (options) => describeFeedingPlanIn(englishAdvice, feeding, options),
  describeIn: (options) => describeIn(english, verdict, options),
  describeRequirements: (options) => describeRequirements(requirements, plan, options),
  describeRequirementsIn: (options) =>
    describeRequirementsIn(englishRequirements, requirements, plan, options),
  describeSetPoint: (options) => describeSetPoint(aim, profiles, options),
  describeSetPointIn: (options) => describeSetPointIn(englishAdvice, aim, profiles, options),
  describeSuspects: (options) => describeSuspects(suspected, plan, options),
  describeSuspectsIn: (options) => describeSuspectsIn(englishAdvice, suspected, plan, options),
  entryOrder: (options) => entryOrder(plan, options),
  feedingPlan: (options) => feedingPlan(plan, options),
  leastTank: (options) => leastTank(plan.groups, options),
  outcomes: (options) => outcomes(profiles, options),
  overlapRows: (options) => overlapRows(profiles, options),
  pairPlan: (options) => pairPlan(shy, bold, options),
  planThatMeets: (options) => planThatMeets(lid, plan, options),
  planner: (options) => planner(plan, options),
  profileMarkdown: (options) => profileMarkdown(danioRerio, options),
  profileMarkdownIn: (options) => profileMarkdownIn(english, danioRerio, options),
  rangeChart: (options) => rangeChart(profiles, "water.pH", options),
  rangeChartIn: (options) => rangeChartIn(english, profiles, "water.pH", options),
  remedies: (options) => remedies(plan, options),
  reportParts: (options) => reportParts(verdict, options),
  reportPartsIn: (options) => reportPartsIn(english, verdict, options),
  resolve: (options) => resolve(record, options),
  sentence: (options) => sentence(verdict, lid, options),
  sentenceIn: (options) => sentenceIn(english, verdict, lid, options),
  setPoint: (options) => setPoint(profiles, options),
  sizeChart: (options) => sizeChart(profiles, options),
  sizeChartIn: (options) => sizeChartIn(english, profiles, options),
  speciesPage: (options) => speciesPage(danioRerio, options),
  speciesPageIn: (options) => speciesPageIn(englishPages, danioRerio, options),
  suggestSpecies: (options) => suggestSpecies("neon", options),
  suspects: (options) => suspects(plan, ["hiding"], options),
  turningPoints: (options) => turningPoints(plan, options),
  whoCouldJoin: (options) => whoCouldJoin(plan, [danioRerio], options),
  witness: (options) => witness(plan, options),
};

/** What of the options a function cannot do without. */
const needed: Readonly<Record<string, object>> = { overlapRows: compared, turningPoints: followed };

test("every function of the public surface that takes options is tried", () => {
  const surface = new URL("surface/", import.meta.url);
  const texts = readdirSync(surface)
    .filter((file) => file.endsWith(".txt"))
    .map((file) => readFileSync(new URL(file, surface), "utf8"));
  const taking = texts.flatMap((text) =>
    [...text.matchAll(/^function (\w+): .*\boptions\??: /gm)].map(([, name]) => name),
  );
  expect(Object.keys(calls).sort()).toEqual([...new Set(taking)].sort());
});

describe.each(Object.entries(calls))("%s", (name, call) => {
  test("refuses an option that nothing reads", () => {
    expectRefused(
      () => asGiven(call, { ...needed[name], threshholds: { likelyPrey: 1 } }),
      /^options\.threshholds$/,
    );
    expect(() => asGiven(call, { ...needed[name], threshholds: undefined })).not.toThrow();
  });

  test("answers with options that are empty but for what it needs", () => {
    expect(() => asGiven(call, needed[name] ?? {})).not.toThrow();
  });

  test.each([null, "x", 3, true, [], () => ({})])("refuses options that are none: %s", (options) => {
    expectRefused(() => asGiven(call, options), /^options$/);
  });
});

test("what a profile may rest on is refused where nothing reads it", () => {
  expectRefused(
    () => asGiven((only) => resolve(record, { only }), { comercial: true }),
    "options.only.comercial",
  );
});

const sideways = { min: 21, max: 20 };
test.each<readonly [string, string, unknown, string]>([
  ["assessPair", "rules", [], "range"],
  ["assessPair", "rules", [null], "type"],
  ["assessPlan", "rules", "all", "type"],
  ["outcomes", "rules", [], "range"],
  ["planner", "rules", [], "range"],
  ["suspects", "rules", [], "range"],
  ["assessPlan", "thresholds", { likelyPrej: 1 }, "unknown-key"],
  ["assessPairBy", "thresholds", { likelyPrey: "1" }, "type"],
  ["setPoint", "thresholds", 7, "type"],
  ["remedies", "want", "fine", "word"],
  ["remedies", "most", 0, "range"],
  ["leastTank", "most", 0, "range"],
  ["leastTank", "shapes", [], "range"],
  ["suggestSpecies", "most", 0, "range"],
  ["whoCouldJoin", "settles", 7, "range"],
  ["turningPoints", "on", "water.colour", "word"],
  ["turningPoints", "of", 0, "range"],
  ["turningPoints", "span", sideways, "range"],
  ["overlapRows", "axes", [], "range"],
  ["overlapRows", "measures", ["likeness"], "word"],
  ["rangeChart", "records", 7, "type"],
  ["rangeChart", "sources", [], "type"],
  ["rangeChart", "units", "ells", "word"],
  ["sizeChart", "units", "ells", "word"],
  ["profileMarkdown", "units", "ells", "word"],
  ["describe", "units", "ells", "word"],
  ["speciesPage", "units", "ells", "word"],
  ["speciesPage", "format", "pdf", "word"],
  ["describe", "format", "pdf", "word"],
  ["describeFeedingPlan", "format", "pdf", "word"],
  ["describeEntryOrder", "units", "ells", "word"],
  ["speciesPage", "sources", 7, "type"],
  ["resolve", "only", 7, "type"],
])("%s says of its option %s that it stands among the options", (name, option, wrong, code) => {
  const call = calls[name];
  if (!call) throw new Error(name);
  const run = () => asGiven(call, { ...needed[name], [option]: wrong });
  expectRefused(run, new RegExp(`^options\\.${option}\\b`));
  expect(run).toThrow(expect.objectContaining({ problems: [expect.objectContaining({ code })] }));
});

test("one of several records is told by its place", () => {
  expectRefused(() => asGiven(calls.rangeChart as Call, { records: [record, 1] }), /^options\.records\[1\]$/);
});

test("an empty list is refused as one everywhere", () => {
  for (const run of [
    () => setPoint([]),
    () => sizeChart([]),
    () => rangeChart([], "water.pH"),
    () => assessPlan({ ...plan, groups: [] }),
  ]) {
    expect(run).toThrow(expect.objectContaining({ problems: [expect.objectContaining({ code: "range" })] }));
  }
});

/** The functions that are given profiles as a list, by the path of the list. */
const lists: readonly (readonly [string, string, (profiles: never) => unknown])[] = [
  ["candidates", "whoCouldJoin", (candidates) => whoCouldJoin(plan, candidates)],
  ["options.candidates", "speciesPage", (candidates) => speciesPage(danioRerio, { candidates })],
  ["profiles", "outcomes", (given) => outcomes(given)],
  ["profiles", "rangeChart", (given) => rangeChart(given, "water.pH")],
  ["profiles", "setPoint", (given) => setPoint(given)],
  ["profiles", "sizeChart", (given) => sizeChart(given)],
  ["options.company", "leastTank", (company) => leastTank(plan.groups, { company })],
  ["options.company", "pairPlan", (company) => pairPlan(shy, bold, { company })],
  ["options.company", "remedies", (company) => remedies(plan, { company })],
  ["options.company", "witness", (company) => witness(plan, { company })],
];

describe.each(lists)("%s of %s", (path, _, call) => {
  const offered = (given: unknown) => () => asGiven(call, given);

  test("are refused where they are no list", () => {
    for (const given of [danioRerio, "danio-rerio", {}]) expectRefused(offered(given), path);
  });

  test("are refused where one is no profile, by its place", () => {
    const sparse: unknown[] = [];
    sparse[1] = danioRerio;
    for (const wrong of ["danio-rerio", null, {}]) expectRefused(offered([danioRerio, wrong]), `${path}[1]`);
    expectRefused(offered(sparse), `${path}[0]`);
  });
});
