import type { OpenQuestion } from "../../compatibility";
import type { Joinable, Joined, Told } from "../../compatibility/inner";
import { frozen } from "../../frozen";
import type { Group } from "../../plan";
import {
  type Answer,
  type Before,
  gravest,
  gravityOf,
  gravityOfMissing,
  isNewlyDenied,
  isPromise,
  keeps,
  mostBesides,
} from "./answer";

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
  if (!grave || gravityOfTold(grave) < gravityOfMissing) {
    const missing = joined.missing();
    const [question, ...others] = missing ?? [];
    if (!missing || others.some((other) => !isSame(question, other))) return undefined;
    if (question) return { because: frozen(question), outcome, said: [], met: [], unmet: [] };
  }
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

const isSame = (one: OpenQuestion | undefined, other: OpenQuestion) =>
  JSON.stringify(one) === JSON.stringify(other);

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
