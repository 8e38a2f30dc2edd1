// Holds every pair of the catalog and thousands of plans to what their verdicts promise.
import { allSpecies } from "vivary/catalog";
import { pairBreaches, planBreaches, randomPlans } from "./compatibility/promise";

const plans = 2000;
const pairs = allSpecies.flatMap((a, index) => allSpecies.slice(index).map((b) => [a, b] as const));
const breaches: string[] = [];
for (const [done, [a, b]] of pairs.entries()) {
  breaches.push(...pairBreaches(a, b));
  if (done % 1000 === 0) console.log(`${done} of ${pairs.length} pairs, ${breaches.length} broken promises`);
}
for (const plan of randomPlans(plans, Date.now() % 1_000_000)) {
  const broken = planBreaches(plan);
  const text = broken.length > 0 ? [...broken, JSON.stringify(plan, idOfSpecies)] : [];
  breaches.push(...text);
}
for (const breach of breaches) console.log(breach);
console.log(
  `${pairs.length} pairs and ${plans} plans: ${breaches.length === 0 ? "all kept" : "not all kept"}`,
);
process.exitCode = breaches.length > 0 ? 1 : 0;

/** A species by its id, so that a plan can be read. */
function idOfSpecies(key: string, value: unknown): unknown {
  return key === "species" ? Object(value).id : value;
}
