import type { Plan } from "../plan";
import { jurisdictions } from "./generated";
import type { OfficialRequirement } from "./official-requirement";
import { requirementsOf } from "./requirements-of";
import { surveyedPlan } from "./surveyed-plan";

/**
 * What law and official guidance that we hold ask of a tank and its fish for lasting keeping, beside what a plan has:
 * one row a requirement, by jurisdiction: all that we hold, wherever the plan's `jurisdiction` says that the tank stands,
 * which decides on laws that name species alone. A row compares figures and is no judgement of a plan: texts change, are read
 * by authorities, and ask for more than figures. Each carries a caution that points to the text in force.
 *
 * Volumes in L, lengths in cm, floors in m², hardness in °dH; `has.of` says what was compared, `asked.by` which length
 * of the fish. At present a fish is as long as its group states, else as adults usually are; young of no stated length
 * may be of any length up to that. Where adult length counts, the young count as grown. Standard length is 0.80 to 0.85 of
 * total length; where the species' own share is known, from that share to the same, or to 0.85 if that is more. Only fish are
 * measured: where a text sums up the length of all animals and others live with them, what is asked has no upper end. Where
 * one end of a span meets what is asked and the other does not, the answer is `depends`.
 *
 * @throws InvalidInputError for what `assessPlan` refuses.
 *
 * @example
 * ```ts
 * import danioRerio from "vivary/catalog/danio-rerio";
 * import { officialRequirements } from "vivary/standards";
 *
 * const rows = officialRequirements({
 *   tank: { base: { shape: "rectangle", length: 60, width: 30 }, height: 35, measured: "outer" },
 *   water: { temperature: 24, pH: 7, generalHardness: 8 },
 *   groups: [{ species: danioRerio, unsexed: 10, length: 3 }],
 * });
 * const row = rows.find(({ id }) => id === "austria/least-volume");
 * row?.asks; // => "An aquarium for lasting keeping holds at least 54 L, for small species too."
 * row?.has; // => { of: "gross volume", min: 63, max: 63, unit: "L", sizes: "outer" }
 * row?.answer; // => "met"
 * row?.force; // => "binding"
 * rows.find(({ id }) => id === "italy-rome/litres")?.asked; // => { min: 60, max: 60, unit: "L", by: "present total length" }
 * ```
 */
export function officialRequirements(plan: Plan): readonly OfficialRequirement[] {
  const surveyed = surveyedPlan(plan);
  return jurisdictions.flatMap((jurisdiction) => requirementsOf(jurisdiction, surveyed));
}
