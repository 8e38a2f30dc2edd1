import type { NitrogenOfFood } from "../../advice";
import type { Range } from "../../ranges";
import type { FilterState, ToldNitrogen } from "../messages/advice-messages";
import type { Adviser } from "./advice-written";

/** What food does to the water; whether all that comes of it is known, and not a least, decides what may be said. */
export function nitrogenTold(
  { given, filter }: NitrogenOfFood,
  isWhole: boolean,
  { weight }: Adviser,
): ToldNitrogen {
  return {
    given: weight(given, "mg"),
    isWhole,
    filter: filter ? weight(filter, "mg") : "",
    state: filter ? stateOf(given, filter, isWhole) : "unnamed",
  };
}

function stateOf(given: Range, filter: Range, isWhole: boolean): FilterState {
  if (filter.max === 0) return "unripe";
  if (filter.max < given.min) return "short";
  if (filter.min < given.max) return "doubtful";
  return isWhole ? "enough" : "untold";
}
