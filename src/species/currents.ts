import { oneOf } from "../checks";
import { flow } from "./traits/class-lists";
import type { FlowClass } from "./traits/class-names";

/** The currents, the calmest first. */
export const currents: readonly FlowClass[] = flow;

/**
 * The currents that are no stronger than one, the calmest first.
 *
 * @throws InvalidInputError for an unknown current.
 */
export function currentsUpTo(strongest: FlowClass): readonly FlowClass[] {
  const last = currents.indexOf(oneOf(strongest, currents, "strongest current"));
  return currents.filter((_, index) => index <= last);
}

/**
 * The currents that are no calmer than one, the calmest first.
 *
 * @throws InvalidInputError for an unknown current.
 */
export function currentsFrom(calmest: FlowClass): readonly FlowClass[] {
  const first = currents.indexOf(oneOf(calmest, currents, "calmest current"));
  return currents.filter((_, index) => index >= first);
}

/**
 * The currents from one to another, the calmest first.
 *
 * @throws InvalidInputError for an unknown current, or where the second is the calmer.
 */
export function currentsBetween(calmest: FlowClass, strongest: FlowClass): readonly FlowClass[] {
  const from = currentsFrom(calmest);
  return from.slice(0, from.indexOf(oneOf(strongest, from, "strongest current")) + 1);
}
