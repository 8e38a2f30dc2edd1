import { couldBe, hasCondition, type Standing } from "../engine/answers/standing";
import { clashes } from "./clashes";
import type { Outcome } from "./verdict";

/** What answers on the adopted values come to; undefined where they ask for conditions that exclude each other. */
export function outcomeOf(standing: readonly Standing[]): Outcome | undefined {
  if (standing.some(({ answer }) => answer.weight === "blocking")) return "unsuitable";
  const asking = standing.filter(hasCondition);
  const asksForMore = asking.some(isUnmet);
  if (asksForMore && asking.length > 1 && clashes(asking).some((clash) => clash.flat().some(isUnmet)))
    return undefined;
  if (standing.some(({ answer }) => couldBe(answer))) return "undetermined";
  return asksForMore ? "conditional" : "suitable";
}

const isUnmet = ({ state }: Pick<Standing, "state">) => state !== "met";
