import type { Rule } from "../../src/compatibility";
import { wantedBy } from "../../src/compatibility/animals/wanted";
import type { TraitPath } from "../../src/species";

/** Traits that a rule does not declare, though the condition of its findings rests on them. */
const inConditions: Readonly<Record<string, readonly TraitPath[]>> = {
  "mucus-grazing": ["diet.foods", "diet.reach", "diet.light"],
  "fin-nipping": ["appearance.longFins"],
  "settling-company": ["social.settles", "social.group", "space.zones", "predation.eats"],
};

/** The traits by which fish are weighed, and those that say how many of them there will be. */
const weighedBy: readonly TraitPath[] = [
  "size.adultLength",
  "size.lengthWeight",
  "size.bodyShape",
  ...wantedBy,
];

/** The traits that decide what a rule finds. */
export function traitsOf(rule: Rule): readonly TraitPath[] {
  const further = inConditions[rule.id] ?? [];
  if (rule.way === "once") return rule.sums?.name === "stock" ? weighedBy : further;
  const weighed = rule.way === "each-group" && rule.sums?.name === "stock" ? weighedBy : [];
  const counted = rule.sums?.name === "crowd" ? wantedBy : [];
  const declared = [rule.needs, rule.uses].flatMap((sides) => Object.values(sides ?? {}).flat());
  return [...new Set([...declared, ...further, ...weighed, ...counted])];
}
