import {
  type AssessOptions,
  type Finding,
  type OpenQuestion,
  type Outcome,
  type Planner,
  planner as plannerOf,
} from "../../compatibility";
import { listOf, refusal } from "../../errors";
import type { Group, Plan } from "../../plan";
import { checkedPlan } from "../../plan/inner";
import type { SpeciesProfile } from "../../species";
import { askedAlone } from "./asked-alone";
import { marginOf } from "./margin";
import { gravityOf, groupOf, type Relations, relationsOf, toldOf } from "./newcomer";
import { ruledOutBeside } from "./ruled-out-beside";

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
  /**
   * How far tank and water are from where they would no longer do for it, from 0, the very edge, to 1: the least over all
   * figures that it asks for. Of a span, the way to the nearer end as a share of half its width; else the share to spare.
   */
  readonly margin: number;
}

/** A species that could not, and why. */
export interface Refused {
  readonly species: SpeciesProfile;
  /** The gravest reason. The newcomer is the party after those of the plan. */
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
 * whom the outcome is no worse than before; where the plan does not work as it is, those of whom nothing rules out that they
 * live there. Of the others one reason is told, the gravest that was met. Judged on the adopted facts.
 *
 * @throws InvalidInputError for what `assessPlan` refuses, and where `settles` is no group of the plan.
 *
 * @example
 * ```ts
 * import bettaSplendens from "vivary/catalog/betta-splendens";
 * import danioRerio from "vivary/catalog/danio-rerio";
 * import puntigrusTetrazona from "vivary/catalog/puntigrus-tetrazona";
 * import { whoCouldJoin } from "vivary/advice";
 *
 * const plan = {
 *   tank: { base: { shape: "rectangle", length: 120, width: 50 } },
 *   groups: [{ species: bettaSplendens, males: 1 }],
 * } as const;
 * const { refused } = whoCouldJoin(plan, [puntigrusTetrazona]);
 * refused[0]?.because.rule; // => "fin-nipping"
 * ```
 */
export function whoCouldJoin(
  plan: Plan,
  candidates: readonly SpeciesProfile[],
  options: JoinOptions = {},
): WhoCouldJoin {
  const { settles, robbedByNobody = false, chasesNobody = false, ...assessing } = options;
  const planner = plannerOf(plan, assessing);
  if (settles !== undefined && !planner.plan.groups[settles])
    throw refusal("settles", `the index of one of ${planner.plan.groups.length} groups`, settles, "range");
  const groups = listOf(candidates, "candidates").map(groupOf);
  const wanted = isPromise(planner.outcome) ? planner.outcome : "conditional";
  const alone = askedAlone(planner.plan, groups, assessing);
  const beside = ruledOutBeside(planner.plan, candidates, assessing);
  const checked = checkedPlan(planner.plan);
  const joins: Joining[] = [];
  const refused: Refused[] = [];
  for (const [place, group] of groups.entries()) {
    const { species } = group;
    const atOnce = gravest(alone(place), wanted) ?? beside(place);
    if (atOnce) {
      refused.push({ species, because: atOnce });
      continue;
    }
    const joined = planner.with({ add: [group] });
    const because = reasonAgainst(planner, joined, wanted);
    if (because) {
      refused.push({ species, because });
      continue;
    }
    const relations = relationsOf(joined.plan, joined.verdict);
    const isSought =
      (settles === undefined || relations.settles.includes(settles)) &&
      !(robbedByNobody && relations.robbedBy.length > 0) &&
      !(chasesNobody && relations.chases.length > 0);
    const margin = marginOf(checked, joined.verdict, planner.plan.groups.length);
    if (isSought) joins.push({ species, group, margin, ...relations });
  }
  return { joins: joins.sort((one, other) => other.margin - one.margin), refused };
}

type Kept = "suitable" | "conditional";

const isPromise = (outcome: Outcome): outcome is Kept => outcome === "suitable" || outcome === "conditional";

/** The gravest of what is told, if it is graver than the outcome wanted leaves room for. */
function gravest<Told extends Finding | OpenQuestion>(all: readonly Told[], wanted: Kept): Told | undefined {
  const most = wanted === "suitable" ? 0 : 1;
  return all
    .filter((told) => gravityOf(told) > most)
    .reduce<Told | undefined>(
      (one, told) => (one && gravityOf(one) >= gravityOf(told) ? one : told),
      undefined,
    );
}

/**
 * Why a newcomer is refused: the gravest that is told of it, else of what is told of the others since it came; nothing where
 * the outcome is as wanted, or was not before and nothing rules the newcomer out.
 */
function reasonAgainst(before: Planner, joined: Planner, wanted: Kept): Finding | OpenQuestion | undefined {
  const wasPromise = isPromise(before.outcome);
  if (wasPromise && (joined.outcome === wanted || joined.outcome === "suitable")) return undefined;
  const newcomer = before.plan.groups.length;
  const { verdict } = joined;
  const ofNewcomer = gravest(toldOf(verdict, newcomer), wanted);
  if (ofNewcomer || !wasPromise) return ofNewcomer;
  const known = new Set(before.verdict.findings.map(signOf));
  return (
    gravest(
      verdict.findings.filter((finding) => !known.has(signOf(finding))),
      wanted,
    ) ?? gravest([...verdict.findings, ...verdict.open], wanted)
  );
}

const signOf = ({ rule, weight, from, to }: Finding) => JSON.stringify([rule, weight, from, to]);
