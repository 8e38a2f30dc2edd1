import type { Joinable, Joined, Told } from "../../compatibility/inner";
import type { Group } from "../../plan";
import { gravityOf } from "../gravity";
import { type Answer, type Before, gravest, isNewlyDenied, isPromise, keeps, mostBesides } from "./answer";

/**
 * Whether a group may join, by the adopted facts alone.
 *
 * @param before - The plan without it.
 * @returns Undefined where they do not tell: then the whole has to be judged.
 */
export function byAdoptedFacts(plan: Joinable, group: Group, before: Before): Answer | undefined {
  const joined = plan.with(group);
  if (!joined) return undefined;
  const { outcome } = joined;
  if (keeps(before.outcome, outcome)) return unlessDenied(joined, before);
  const about = joined.told.filter(({ standing }) => standing.from !== undefined && standing.state !== "met");
  const grave = gravest(about, gravityOfTold, mostBesides(before.outcome));
  if (grave) return { because: grave.finding(), outcome, said: [], met: [], unmet: [] };
  return isPromise(before.outcome) ? undefined : unlessDenied(joined, before);
}

/** Who asks something of tank and water of which the plan says otherwise is refused for it. */
function unlessDenied(joined: Joined, before: Before): Answer {
  const denied = joined.told.find(
    ({ standing: { condition, state } }) =>
      state === "unmet" && condition !== undefined && isNewlyDenied(condition, before),
  );
  const { outcome } = joined;
  return denied ? { because: denied.finding(), outcome, said: [], met: [], unmet: [] } : answerOf(joined);
}

const gravityOfTold = ({ standing: { answer } }: Told): number =>
  gravityOf(answer.weight, "couldBe" in answer ? answer.couldBe : undefined);

/** What is said of a group that may join. */
export function answerOf({ outcome, told }: Joined): Answer {
  const conditionsThatAre = (wanted: "met" | "unmet") =>
    told.flatMap(({ standing: { condition, state } }) => (state === wanted && condition ? [condition] : []));
  return {
    outcome,
    said: told.map(({ rule, standing: { answer, from, to } }) => ({ rule, weight: answer.weight, from, to })),
    met: conditionsThatAre("met"),
    unmet: conditionsThatAre("unmet"),
  };
}
