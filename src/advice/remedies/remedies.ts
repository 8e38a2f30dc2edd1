import { objectOf, oneOf, wholeNumber } from "../../checks";
import {
  type AssessOptions,
  type Finding,
  type OpenQuestion,
  type Outcome,
  planner as plannerOf,
  type Verdict,
} from "../../compatibility";
import { askedAtWorst } from "../../compatibility/inner";
import type { Plan } from "../../plan";
import { profilesOf } from "../../plan/inner";
import type { SpeciesProfile } from "../../species";
import { type Bar, rulesById } from "./bars";
import type { Move } from "./move";
import { possibleSteps } from "./possible-step";
import { search } from "./search";
import { typical } from "./typical";

/** How remedies are sought. */
export interface RemedyOptions extends AssessOptions {
  /** The outcome that the changed plan has at least. Default `suitable`. */
  readonly want?: "suitable" | "conditional" | undefined;
  /** So many remedies at most, from 1 to 50. Default 5. */
  readonly most?: number | undefined;
  /**
   * Whether the outcome has to be reached at worst too, over all that is disputed or missing; what hangs on individuals
   * alone is left out. Then what would be asked for if what is disputed were otherwise is seen to as well, as far as it can
   * be met together; and of filter, room and animals up to four times as much is tried, since of what nobody knows nobody
   * can say how much is enough. What is missing of a species, and what its sources put so far apart that nothing meets
   * both, stays in the way. Default no.
   */
  readonly atWorst?: boolean | undefined;
  /** Calm species of which a group may be added where a shy one asks for company; those to try first. Default none. */
  readonly company?: readonly SpeciesProfile[] | undefined;
}

/** What to do, and what comes of it. */
export interface Remedy {
  /** At most three; with any of them left out the outcome is not reached. None where nothing that the plan says is amiss. */
  readonly moves: readonly Move[];
  /** What the plan does not say, and now says as it is asked for: to be measured or provided whatever else is done. */
  readonly provided: Move["meets"];
  /** The plan after it. */
  readonly plan: Plan;
  /** As `assessPlan` has it of that plan, on the adopted facts. */
  readonly outcome: Outcome;
  /** As `assessPlan` has them of that plan. */
  readonly bounds: Verdict["bounds"];
}

/** What helps a plan. */
export interface Remedies {
  /**
   * Fewest animals moved first, then the least costly, then the fewest moves. That males which are rivals stay by themselves,
   * and the females leave, comes last, and only where it would not help that males leave.
   */
  readonly remedies: readonly Remedy[];
  /**
   * Where no three moves help, what stands in the way: the gravest of what the most promising ones leave. Its groups are
   * named by their places in the plan as given.
   */
  readonly obstacle?: Finding | OpenQuestion;
}

/**
 * What to change so that a plan works: sets of at most three moves, each done to the plan and judged again. The moves come
 * from what the findings ask for; besides, a tank far too small may give way to the least that has the room, and any group
 * may go to another keeper. All that one thing to do sees to is one move: the figures of the water, what is fed, the cover
 * with what breaks the line of sight, all shoals that are short. What the plan does not say is no move: it is provided as
 * it is asked for. Where a larger tank helps, a much smaller one beside a group that leaves is another way. No group that
 * stays is worse off than before, and no animal is ever let loose. None within three moves is an answer: then what stands
 * in the way is named.
 *
 * @throws InvalidInputError for what `assessPlan` refuses, another `want`, a `most` that is no whole number from 1 to 50, or
 * company that is no list of profiles.
 *
 * @example
 * ```ts
 * import danioRerio from "vivary/catalog/danio-rerio";
 * import { remedies } from "vivary/advice";
 *
 * const plan = {
 *   tank: { base: { shape: "rectangle", length: 100, width: 40 } },
 *   groups: [{ species: danioRerio, unsexed: 4 }],
 * } as const;
 * const [first] = remedies(plan).remedies;
 * first?.moves.map(({ kind }) => kind); // => ["numbers"]
 * first?.outcome; // => "suitable"
 * ```
 */
export function remedies(plan: Plan, options: RemedyOptions = {}): Remedies {
  const {
    want = "suitable",
    most = 5,
    atWorst = false,
    company: offered = [],
    ...assessing
  } = objectOf(options, "options");
  oneOf(want, ["suitable", "conditional"], "options.want");
  wholeNumber(most, "options.most", 50);
  const company = profilesOf(offered, ["options", "company"]);
  const alike = typical();
  const planner = plannerOf(atWorst ? alike.plan(plan) : plan, assessing);
  const calm = atWorst ? company.map(alike.of) : company;
  const steps = possibleSteps(planner.plan, planner.verdict, calm, assessing);
  const asked = atWorst ? (now: Plan) => askedAtWorst(now, assessing) : undefined;
  const { found, bars, left } = search(
    planner,
    { want, askedAtWorst: asked, rules: rulesById(assessing), thresholds: assessing.thresholds, steps },
    most,
  );
  const told = found.map(({ moves, provided, planner: after }): Remedy => {
    const { plan: changed, outcome, bounds } = atWorst ? plannerOf(alike.back(after.plan), assessing) : after;
    const done = moves.map((move) => ({ ...move, change: alike.changeBack(move.change) }));
    return { moves: done, provided, plan: changed, outcome, bounds };
  });
  const signs = new Set(left.map(({ sign }) => sign));
  const obstacle = gravestOf(bars.filter(({ sign }) => signs.has(sign))) ?? gravestOf(bars);
  return { remedies: told, ...(told.length === 0 && obstacle && { obstacle: obstacle.told }) };
}

const gravestOf = (bars: readonly Bar[]) =>
  bars.reduce<Bar | undefined>(
    (gravest, bar) => (gravest && gravest.gravity >= bar.gravity ? gravest : bar),
    undefined,
  );
