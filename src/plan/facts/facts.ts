import { oneOf } from "../../checks";
import { refusal } from "../../errors";
import { frozen } from "../../frozen";
import { type FactUnit, factUnits } from "./fact-units";
import type { FactName } from "./read-fact";

/** A fact of a plan that a condition may be about. */
export interface PlanFact {
  /** What the fact is, in English. */
  readonly label: string;
  /** The unit of its numbers, one of `vivary/units` but for `1`, which is a share of 1; absent for counts, pH and words. */
  readonly unit?: FactUnit;
  /** The fields of a plan that answer it, as paths; `of` stands for the index of the group it is about. */
  readonly paths: readonly (readonly string[])[];
}

/** What each fact is, in English. */
export const factLabels: Readonly<Record<FactName, string>> = {
  "tank.longestRun": "the longest run of the tank",
  "tank.footprint": "the floor of the tank",
  "tank.height": "the height of the tank",
  "tank.lid": "whether the tank is covered",
  "tank.cover": "the share of cover",
  "tank.openWater": "the share free to swim in",
  "tank.openSurface": "the share of open surface",
  "tank.sightBreaks": "what breaks the line of sight",
  "tank.substrate": "what covers the ground",
  "tank.hides": "how many hiding places serve it",
  "tank.plants": "how the tank is planted",
  "tank.flow.calmest": "the calmest current",
  "tank.flow.strongest": "the strongest current",
  "tank.filter.ripeArea": "the filter and how long it has run",
  "water.temperature": "the temperature",
  "water.hottest": "the temperature on the hottest day",
  "water.coolest": "the temperature in the coolest season",
  "water.pH": "the pH",
  "water.generalHardness": "the general hardness, before sea salt is added",
  "water.salinity": "the salinity",
  "group.count": "how many animals there are",
  "group.males": "how many are male",
  "group.females": "how many are female",
  "group.pairs": "how many are male and female",
  "group.femalesPerMale": "how many are male and female",
  "group.length": "how long the animals are",
  "group.sex": "of which sex the animals are",
  "group.form": "of which form the animals are",
  "group.grown": "whether the animals are grown",
  "group.longFins": "whether the form has long fins",
  "group.company": "whether its company is calm",
  "group.offerings": "what is fed, where and when",
};

const sexes = [
  ["groups", "of", "males"],
  ["groups", "of", "females"],
] as const;

const numbers = [
  ["groups", "of", "males"],
  ["groups", "of", "females"],
  ["groups", "of", "unsexed"],
  ["groups", "of", "juveniles"],
] as const;

const paths: Readonly<Record<FactName, PlanFact["paths"]>> = {
  "tank.longestRun": [["tank", "base"]],
  "tank.footprint": [["tank", "base"]],
  "tank.height": [["tank", "height"]],
  "tank.lid": [["tank", "lid"]],
  "tank.cover": [["tank", "cover"]],
  "tank.openWater": [
    ["tank", "openWater"],
    ["tank", "cover"],
  ],
  "tank.openSurface": [["tank", "openSurface"]],
  "tank.sightBreaks": [["tank", "sightBreaks"]],
  "tank.substrate": [["tank", "substrate"]],
  "tank.hides": [["tank", "hides"]],
  "tank.plants": [["tank", "plants"]],
  "tank.flow.calmest": [["tank", "flow", "calmest"]],
  "tank.flow.strongest": [["tank", "flow", "strongest"]],
  "tank.filter.ripeArea": [
    ["tank", "filter", "mediaArea"],
    ["tank", "filter", "age"],
  ],
  "water.temperature": [["water", "temperature"]],
  "water.hottest": [["water", "hottest"]],
  "water.coolest": [["water", "coolest"]],
  "water.pH": [["water", "pH"]],
  "water.generalHardness": [["water", "generalHardness"]],
  "water.salinity": [["water", "salinity"]],
  "group.count": numbers,
  "group.males": sexes,
  "group.females": sexes,
  "group.pairs": sexes,
  "group.femalesPerMale": sexes,
  "group.length": [["groups", "of", "length"]],
  "group.sex": numbers,
  "group.form": [["groups", "of", "form"]],
  "group.grown": [["groups", "of", "juveniles"]],
  "group.longFins": [["groups", "of", "form"]],
  "group.company": [["groups"]],
  "group.offerings": [["offerings"]],
};

/**
 * Every fact of a plan that a condition may be about: what it is, its unit, and the fields that answer it. Floor, longest
 * run and height of the tank are those of its measures as given, inside or outside the glass.
 */
export const facts: Readonly<Record<FactName, PlanFact>> = /* @__PURE__ */ frozen(
  /* @__PURE__ */ Object.fromEntries(
    /* @__PURE__ */ Object.entries(factLabels).map(([name, label]) => {
      const fact = name as FactName;
      const unit = factUnits[fact];
      return [fact, { label, ...(unit && { unit }), paths: paths[fact] }];
    }),
  ) as Record<FactName, PlanFact>,
);

/**
 * The fields of one plan that answer a fact, as paths like those of a `Problem`: what to light in a form, for a condition
 * or for an open question, by its `on` and `of`.
 *
 * @param fact - What is asked.
 * @param of - The place in the plan of the group that it is about. Without it, fields of a group are the list of groups.
 * @throws InvalidInputError for what is no fact, and for a place that is no whole number from 0 on.
 *
 * @example
 * ```ts
 * import { fieldsOf } from "vivary/plan";
 *
 * fieldsOf("water.pH"); // => [["water", "pH"]]
 * fieldsOf("group.length", 1); // => [["groups", 1, "length"]]
 * ```
 */
export function fieldsOf(fact: FactName, of?: number): readonly (readonly (string | number)[])[] {
  oneOf(fact, Object.keys(facts), "fact");
  const { paths } = facts[fact];
  if (of !== undefined && !(Number.isInteger(of) && of >= 0))
    throw refusal("of", "the place of a group, a whole number from 0 on", of, "range");
  if (of !== undefined) return paths.map((path) => path.map((step) => (step === "of" ? of : step)));
  return paths.some((path) => path.includes("of")) ? [["groups"]] : paths;
}
