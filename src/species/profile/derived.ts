import { frozen } from "../../frozen";
import { currentsBetween } from "../currents";
import type { StatedValue } from "../traits/values";
import { factWith } from "./facts";
import type { Fact, Facts } from "./profile";

/** The greatest salinity of fresh water, g/kg: the boundary of the Venice System of 1958, as Por 1972 has it. */
export const mostFresh = 0.5;

const freshWater = /* @__PURE__ */ frozen({ min: 0, max: mostFresh });

/** A species of fresh water only, without a figure of salinity, is kept in fresh water. */
export function withFreshSalinity(facts: Facts): Facts {
  const waters = facts.origin?.waters;
  if (!waters || facts.water?.salinity || waters.value.some((water) => water !== "fresh")) return facts;
  return {
    ...facts,
    water: {
      ...facts.water,
      salinity: { value: { kept: freshWater }, basis: "derived", ...(waters.said && { said: waters.said }) },
    },
  };
}

/**
 * A form bred with long fins, for which nobody states a current, is spared the strongest one of its species: it swims
 * slower, zebrafish by a fifth (Plaut 2000, from memory). Where a source denies the long fins, the species' currents
 * stand beside it.
 */
export function withSparedFlow(form: Facts, species: Facts): Facts {
  const longFins = form.appearance?.longFins;
  const flow = species.water?.flow;
  if (!longFins?.value || !flow || form.water?.flow) return form;
  const currents = [flow.value, ...(flow.also ?? [])];
  const denied = longFins.also ? currents : [];
  const said = flow.said && longFins.said && [...new Set([...flow.said, ...longFins.said])];
  const spared = factWith({ basis: "derived", said }, [...currents.map(slower), ...denied]);
  return { ...form, water: { ...form.water, flow: spared as Fact<StatedValue<"water.flow">> } };
}

/** One step below the strongest current, but never below the calmest. */
function slower({ min, max }: StatedValue<"water.flow">): StatedValue<"water.flow"> {
  return { min, max: currentsBetween(min, max).at(-2) ?? max };
}
