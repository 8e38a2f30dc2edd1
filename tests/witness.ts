// Holds every pair of the catalog and thousands of plans to what their verdicts promise.
import { allSpecies } from "vivary/catalog";
import { assessPair, assessPlan } from "../src/compatibility";
import type { SpeciesProfile } from "../src/species";
import {
  formsOf,
  type Kind,
  ofEachSex,
  pairBreaches,
  planBreaches,
  randomPlans,
} from "./compatibility/promise";

const plans = 3000;
const started = Date.now();
const pairs = allSpecies.flatMap((a, index) => allSpecies.slice(index).map((b) => [a, b] as const));
const breaches: string[] = [];
const outcomes = new Map<string, number>();
const count = (outcome: string) => outcomes.set(outcome, (outcomes.get(outcome) ?? 0) + 1);
for (const [done, [a, b]] of pairs.entries()) {
  breaches.push(...pairBreaches({ species: a }, { species: b }));
  count(`pairs ${assessPair({ species: a }, { species: b }).outcome}`);
  if (done % 1000 === 0) console.log(`${done} of ${pairs.length} pairs, ${breaches.length} broken promises`);
}
let further = 0;
for (const [done, species] of allSpecies.entries()) {
  for (const other of allSpecies) {
    for (const kind of kindsBeside(species, other)) {
      breaches.push(...pairBreaches(kind, { species: other }));
      further += 1;
    }
  }
  if (done % 20 === 0) console.log(`${further} pairs by sex and form, ${breaches.length} broken promises`);
}
const [, , given] = process.argv;
const seed = given === undefined ? Date.now() % 1_000_000 : Number(given);
for (const [done, plan] of randomPlans(plans, seed).entries()) {
  const broken = planBreaches(plan);
  count(`plans ${assessPlan(plan).outcome}`);
  if (done % 500 === 0) console.log(`${done} of ${plans} plans, ${breaches.length} broken promises`);
  const text = broken.length > 0 ? [...broken, JSON.stringify(plan, idOfSpecies)] : [];
  breaches.push(...text);
}
for (const breach of breaches) console.log(breach);
for (const [outcome, number] of [...outcomes].sort()) console.log(`${number} ${outcome}`);
console.log(
  `${pairs.length} pairs, ${further} by sex and form, and ${plans} plans of seed ${seed} in ${Math.round((Date.now() - started) / 1000)} s: ${breaches.length === 0 ? "all kept" : "not all kept"}`,
);
process.exitCode = breaches.length > 0 ? 1 : 0;

/** The forms of a species, and its sexes where one fares otherwise than the other; all of them would take most of an hour. */
function kindsBeside(species: SpeciesProfile, other: SpeciesProfile): readonly Kind[] {
  return formsOf(species).flatMap((kind) => {
    const each = ofEachSex(kind);
    const outcomes = new Set(each.map((one) => assessPair(one, { species: other }).outcome));
    return each.filter(({ form, sex }) => (sex ? outcomes.size > 1 : form !== undefined));
  });
}

/** A species by its id, so that a plan can be read. */
function idOfSpecies(key: string, value: unknown): unknown {
  return key === "species" ? Object(value).id : value;
}
