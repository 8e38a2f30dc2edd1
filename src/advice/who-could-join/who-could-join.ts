import { objectOf } from "../../checks";
import {
  type AssessOptions,
  assessPlan,
  type Finding,
  type OpenQuestion,
  type Outcome,
  type Planner,
  planner as plannerOf,
} from "../../compatibility";
import { type Joinable, joinable } from "../../compatibility/inner";
import { refusal } from "../../errors";
import { once } from "../../made-once";
import { type Group, isMet, type Plan } from "../../plan";
import { checkedPlan, checkedPlanToFill, mostGroups, profilesOf } from "../../plan/inner";
import type { SpeciesProfile } from "../../species";
import { conditionsOf } from "../conditions-of";
import type { Answer, Before } from "./answer";
import { byAdoptedFacts } from "./by-adopted-facts";
import { byItself } from "./by-itself";
import { byVerdicts } from "./by-verdicts";
import { marginOf } from "./margin";
import { groupOf, isNumberKnown, type Relations, relationsOf } from "./newcomer";

/** Who is sought. */
export interface JoinOptions extends AssessOptions {
  /** Only species that settle this group, by its place in the plan. */
  readonly settles?: number | undefined;
  /** Only species whose food no group takes. Default no. */
  readonly robbedByNobody?: boolean | undefined;
  /** Only species that chase, bite or nip at no group, not even at times. Default no. */
  readonly chasesNobody?: boolean | undefined;
}

/** A species that could join. */
export interface Joining extends Relations {
  readonly species: SpeciesProfile;
  /** The group as it was judged: as many as belong together. */
  readonly group: Group;
  /** What the plan with it comes to: where `conditional`, something is still to be done or to be settled. */
  readonly outcome: Outcome;
  /**
   * How far tank and water are from where they would no longer do for it, from 0, the very edge, to 1: the least over all
   * figures that it asks for. Of a span, the way to the nearer end as a share of half its width; else the share to spare. 0
   * where it asks for something that tank or water do not have; what the plan does not say is left out.
   */
  readonly margin: number;
}

/** A species that could not, and why. */
export interface Refused {
  readonly species: SpeciesProfile;
  /** The group as it was judged: as many as belong together; one where nobody knows how many. */
  readonly group: Group;
  /**
   * The gravest reason; a trait that nobody knows only where the outcome hangs on it. The newcomer is the party after those of
   * the plan: `sentence` of `vivary/report` tells it with a verdict on the plan with `group`, and of a reason that restricts
   * its `condition` as well, which says what it would take.
   */
  readonly because: Finding | OpenQuestion;
}

/** Who could join a plan. */
export interface WhoCouldJoin {
  /** The widest margin first. */
  readonly joins: readonly Joining[];
  /** In the order given. */
  readonly refused: readonly Refused[];
}

/**
 * Which species could join a plan: each comes in as many as belong together, and the plan is judged again. Those join with
 * whom the outcome is no worse than before, or, where the plan does not work as it is, whom nothing rules out there; and who
 * ask nothing of tank and water of which the plan says otherwise, unless those there ask as much already. Of the others one
 * reason is told, the gravest; that nobody knows how many belong together is one, unless one may live by itself. Judged on
 * the adopted facts.
 *
 * In a tank without animals, `groups: []`, each is judged by itself: those join with whom the plan works, and who ask
 * nothing of tank and water of which it says otherwise. What it does not say may still be wrong for them, and so may food
 * and company: then their `outcome` is `conditional`, and a verdict on the plan with their `group` tells what to settle.
 *
 * @throws InvalidInputError for what `assessPlan` refuses but a lack of groups, and where `settles` is no group of the plan.
 *
 * @example
 * ```ts
 * import bettaSplendens from "vivary/catalog/betta-splendens";
 * import danioRerio from "vivary/catalog/danio-rerio";
 * import puntigrusTetrazona from "vivary/catalog/puntigrus-tetrazona";
 * import { whoCouldJoin } from "vivary/advice";
 * import { assessPlan } from "vivary/compatibility";
 * import { sentence } from "vivary/report";
 *
 * const plan = {
 *   tank: { base: { shape: "rectangle", length: 120, width: 50 } },
 *   groups: [{ species: bettaSplendens, males: 1 }],
 * } as const;
 * const [no] = whoCouldJoin(plan, [puntigrusTetrazona]).refused;
 * const joined = { ...plan, groups: [...plan.groups, ...(no ? [no.group] : [])] };
 * no && sentence(assessPlan(joined), no.because); // => "Tiger barbs bite pieces out of the fins of the Siamese fighting fish: choose company that does not nip."
 *
 * const empty = { tank: { base: { shape: "rectangle", length: 60, width: 30 } }, groups: [] } as const;
 * const { joins, refused } = whoCouldJoin(empty, [bettaSplendens, danioRerio]);
 * joins.map(({ species, outcome }) => [species.id, outcome]); // => [["betta-splendens", "conditional"]]
 * refused.map(({ species, because }) => [species.id, because.rule]); // => [["danio-rerio", "longest-run"]]
 * ```
 */
export function whoCouldJoin(
  plan: Plan,
  candidates: readonly SpeciesProfile[],
  options: JoinOptions = {},
): WhoCouldJoin {
  const {
    settles,
    robbedByNobody = false,
    chasesNobody = false,
    ...assessing
  } = objectOf(options, "options");
  const quick = joinable(plan, assessing);
  if (settles !== undefined && !plan.groups[settles])
    throw refusal("options.settles", `the index of one of ${plan.groups.length} groups`, settles, "range");
  const judge = judgeOf(plan, quick, assessing);
  const checked = checkedPlanToFill(plan);
  const joins: Joining[] = [];
  const refused: Refused[] = [];
  const groups = profilesOf(candidates, ["candidates"]).map(groupOf);
  checkNewcomers(plan, groups);
  for (const group of groups) {
    const { species } = group;
    const { because = becauseOfNumber(plan, group, assessing), outcome, said, met, unmet } = judge(group);
    if (because) {
      refused.push({ species, group, because });
      continue;
    }
    const relations = relationsOf(plan.tank, [...plan.groups, group], said);
    const isSought =
      (settles === undefined || relations.settles.includes(settles)) &&
      !(robbedByNobody && relations.robbedBy.length > 0) &&
      !(chasesNobody && relations.chases.length > 0);
    if (!isSought) continue;
    joins.push({ species, group, outcome, margin: marginOf(checked, { met, unmet }), ...relations });
  }
  return { joins: joins.sort((one, other) => other.margin - one.margin), refused };
}

/** How groups are judged that might come into a plan. */
function judgeOf(plan: Plan, quick: Joinable, options: AssessOptions): (group: Group) => Answer {
  if (plan.groups.length === 0) return (group) => byItself(plan, quick, group, options);
  const whole = once(() => plannerOf(plan, options));
  const before = beforeOf(quick) ?? beforeOfVerdict(whole());
  return (group) => byAdoptedFacts(quick, group, before) ?? byVerdicts(whole(), group, before);
}

/** What nobody knows of a newcomer where that is how many of it belong together; nothing where no rule asks. */
function becauseOfNumber(plan: Plan, group: Group, options: AssessOptions): OpenQuestion | undefined {
  if (isNumberKnown(group.species)) return undefined;
  const { open } = assessPlan({ ...plan, groups: [...plan.groups, group] }, options);
  return open.find(
    (one) => one.reason === "missing" && one.trait === "social.group" && one.of === plan.groups.length,
  );
}

/** What is known of a plan by the adopted facts, where they tell. */
function beforeOf({ outcome, counting }: Joinable): Before | undefined {
  if (outcome === undefined || counting === undefined) return undefined;
  const unmet = counting.filter(({ state }) => state === "unmet");
  return { outcome, denied: unmet.flatMap(({ condition }) => condition ?? []) };
}

function beforeOfVerdict({ outcome, plan, verdict }: Planner): Before {
  const denied = conditionsOf(verdict.findings).filter((condition) => isMet(condition, plan) === false);
  return { outcome, denied };
}

/** Refuses candidates that could be in no plan, as `assessPlan` does. */
function checkNewcomers(plan: Plan, newcomers: readonly Group[]): void {
  const atOnce = Math.max(mostGroups - plan.groups.length, 1);
  for (let start = 0; start < newcomers.length; start += atOnce)
    checkedPlan({ ...plan, groups: [...plan.groups, ...newcomers.slice(start, start + atOnce)] });
}
