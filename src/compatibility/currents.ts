import { oneOf } from "../errors";
import { classes, type FlowClass } from "../species";

/** The currents, the calmest first. */
export const currents = /* @__PURE__ */ Object.keys(classes.flow) as readonly FlowClass[];

/** The currents that are no stronger than one. */
export function upTo(strongest: FlowClass): readonly FlowClass[] {
  return currents.slice(0, currents.indexOf(oneOf(strongest, currents, "strongest current")) + 1);
}

/** The currents that are no calmer than one. */
export function from(calmest: FlowClass): readonly FlowClass[] {
  return currents.slice(currents.indexOf(oneOf(calmest, currents, "calmest current")));
}

/** The currents from one to another, or an error where the second is the calmer. */
export function between(calmest: FlowClass, strongest: FlowClass): readonly FlowClass[] {
  oneOf(strongest, from(calmest), "strongest current");
  return upTo(strongest).filter((current) => from(calmest).includes(current));
}
