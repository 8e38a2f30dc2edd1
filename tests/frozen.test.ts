import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { allSpecies, findSpecies, speciesById } from "vivary/catalog";
import danioRerio from "vivary/catalog/danio-rerio";
import pandaCory from "vivary/catalog/hoplisoma-panda";
import danioRecord from "vivary/evidence/danio-rerio";
import neonRecord from "vivary/evidence/paracheirodon-innesi";
import german from "vivary/search/de";
import english from "vivary/search/en";
import {
  entryOrder,
  feedingPlan,
  leastTank,
  remedies,
  setPoint,
  suspects,
  turningPoints,
  weeklyChange,
  whoCouldJoin,
} from "../src/advice";
import { assessPair, assessPlan, pairPlan, planner, planThatMeets, witness } from "../src/compatibility";
import { citationsOf, sources } from "../src/evidence";
import { bodyMass, filterCapacity, oxygenDemand, ration } from "../src/load";
import { fieldsOf, type Plan, parsePlan, planData } from "../src/plan";
import { overlap } from "../src/ranges";
import { reportParts } from "../src/report";
import { suggestSpecies } from "../src/search";
import { applyForm, disagreement, resolve, standardLength, statementsOf, totalLength } from "../src/species";
import { officialRequirements } from "../src/standards";
import {
  dataPackage,
  factRows,
  nameRows,
  overlapRows,
  sourceRows,
  statementRows,
  taxonRows,
  traitRows,
  verdictRows,
} from "../src/tables";
import { tankFloor, tankGeometry } from "../src/tank";
import { unitsOf } from "../src/units";
import { mixture } from "../src/water";

const { exports } = JSON.parse(readFileSync(new URL("../package.json", import.meta.url), "utf8"));
const floors = Object.keys(exports).filter((path) => !/\*|package\.json/.test(path));

const moduleOf = (path: string): Promise<object> =>
  import(/* @vite-ignore */ new URL(`../src/${path}/index.ts`, import.meta.url).href);

/** All that somebody can change of what is held, each with where it stands. */
function changeable(value: unknown, at = "", found = new Map<object, string>(), seen = new Set<unknown>()) {
  if (typeof value !== "object" || value === null || seen.has(value)) return found;
  seen.add(value);
  if (!Object.isFrozen(value) || value instanceof Map || value instanceof Set) found.set(value, at);
  for (const [key, part] of Object.entries(value)) changeable(part, `${at}.${key}`, found, seen);
  return found;
}

describe("nobody can change", () => {
  test.each(floors)("what %s exports", async (path) => {
    expect([...changeable({ ...(await moduleOf(path)) }).values()]).toEqual([""]);
  });

  test("profiles, records and names for the search", () => {
    const held = Object.freeze([allSpecies, danioRerio, danioRecord, english, german]);
    expect([...changeable(held).values()]).toEqual([]);
  });
});

/** A plan of its own each time; of what is frozen in it only the profiles are shared. */
const plan = (): Plan => ({
  tank: {
    base: { shape: "rectangle", length: 100, width: 40 },
    height: 40,
    filter: { mediaArea: 1, age: 60 },
  },
  water: { temperature: 24 },
  groups: [
    { species: danioRerio, unsexed: 4 },
    { species: pandaCory, unsexed: 8 },
  ],
});
const [ray = danioRerio] = findSpecies("Potamotrygon motoro");
const conditions = assessPlan(plan()).conditions;

const answers: Readonly<Record<string, () => unknown>> = {
  assessPair: () => assessPair({ species: danioRerio }, { species: pandaCory }),
  planner: () => planner(plan()),
  pairPlan: () => pairPlan({ species: danioRerio }, { species: pandaCory }),
  witness: () => witness(plan()),
  planThatMeets: () => conditions.map((condition) => planThatMeets(condition, plan())),
  remedies: () => remedies(plan(), { company: [pandaCory] }),
  turningPoints: () => turningPoints(plan(), { on: "tank.footprint" }),
  setPoint: () => setPoint([danioRerio, pandaCory]),
  leastTank: () => leastTank(plan().groups),
  entryOrder: () => entryOrder(plan()),
  feedingPlan: () => feedingPlan(plan()),
  whoCouldJoin: () => whoCouldJoin(plan(), [pandaCory, ray]),
  suspects: () => suspects(plan(), ["torn-fins", "gasping", "hiding"]),
  weeklyChange: () => weeklyChange({ volume: 100, nitrogen: 20, nitrate: 10 }),
  officialRequirements: () => officialRequirements(plan()),
  planData: () => planData(plan()),
  parsePlan: () => parsePlan(planData(plan()), speciesById),
  fieldsOf: () => [fieldsOf("group.count"), fieldsOf("group.count", 0), fieldsOf("water.pH")],
  suggestSpecies: () => suggestSpecies("zebra"),
  findSpecies: () => [findSpecies("zebra danio"), findSpecies("long-fin tiger barb")],
  applyForm: () => applyForm(danioRerio, "leopard"),
  resolve: () => [danioRecord, neonRecord].map((record) => resolve(record)),
  disagreement: () => disagreement(danioRecord, "water.pH"),
  statementsOf: () => statementsOf(danioRecord, "water.pH"),
  citationsOf: () => citationsOf(danioRecord),
  sources: () => sources,
  lengths: () => [totalLength(5, "SL"), totalLength(5, "TL"), standardLength(5)],
  bodyMass: () => bodyMass({ length: 5 }),
  oxygenDemand: () => oxygenDemand({ mass: 5, temperature: 24 }),
  filterCapacity: () => filterCapacity({ mediaArea: 1, age: 60 }),
  ration: () => ration({ mass: 5 }),
  overlap: () => overlap({ min: 1 }, { max: 2 }),
  tankGeometry: () => [tankFloor(plan().tank), tankGeometry({ ...plan().tank, height: 40 })],
  unitsOf: () => unitsOf("length"),
  mixture: () => mixture([{ amount: 1, water: { nitrate: 5 } }]),
  reportParts: () => reportParts(assessPlan(plan())),
  dataPackage: () => dataPackage(),
  rows: () => [
    factRows([danioRerio]),
    nameRows([danioRerio]),
    overlapRows([danioRerio, pandaCory], { axes: ["water.pH"], measures: ["jaccard"] }),
    sourceRows({}),
    statementRows([danioRecord]),
    taxonRows([danioRerio]),
    traitRows(),
    verdictRows([assessPlan(plan())]),
  ],
};

describe("nobody changes another's answer by changing their own", () => {
  test.each(Object.entries(answers))("%s", (_, ask) => {
    const own = changeable(ask());
    const shared = [...changeable(ask())].filter(([part]) => own.has(part)).map(([, at]) => at);
    expect(shared).toEqual([]);
  });

  test("nor two species that are resolved", () => {
    const [one, other] = [danioRecord, neonRecord].map((record) => changeable(resolve(record)));
    expect([...(one ?? [])].filter(([part]) => other?.has(part)).map(([, at]) => at)).toEqual([]);
  });
});
