// Seeks remedies the slow way: every set of at most three steps from the closed list, each done and judged.

import { isAsGood } from "../../../src/advice/is-as-good";
import { carriedOut } from "../../../src/advice/remedies/carried-out";
import { harms } from "../../../src/advice/remedies/harm";
import { possibleSteps, type Step } from "../../../src/advice/remedies/possible-step";
import { type AssessOptions, type Planner, planner as plannerOf } from "../../../src/compatibility";
import type { Group, Plan } from "../../../src/plan";
import type { SpeciesProfile } from "../../../src/species";

/**
 * The sets of steps, each as its keys in order, that reach a suitable plan and hold no smaller one that does, unless a group
 * more that leaves spares a tank half as large again.
 */
export function byTryingAll(
  plan: Plan,
  company: readonly SpeciesProfile[] = [],
  options: AssessOptions = {},
): readonly string[] {
  const planner = plannerOf(plan, options);
  const isEnough = ({ outcome }: Planner) => isAsGood(outcome, "suitable");
  const steps = possibleSteps(plan, planner.verdict, company, options);
  const reached: (readonly Step[])[] = [];
  const floors = new Map<readonly Step[], number>();
  for (const set of [[], ...subsets(steps, 1), ...subsets(steps, 2), ...subsets(steps, 3)]) {
    const within = reached.filter((smaller) => smaller.every((step) => set.includes(step)));
    if (within.some((smaller) => !onlyRoomIsSpared(smaller, set))) continue;
    if (!canBeDone(set, plan)) continue;
    const done = carriedOut(set, { planner, isEnough, fills: true }, (change) => planner.with(change));
    if (!isEnough(done.planner) || harms(planner.verdict, done.planner.verdict, done.places)) continue;
    if (done.moves.length < set.length) continue;
    const floor = floorOf(done.planner.plan);
    if (within.some((smaller) => (floors.get(smaller) ?? 0) / floor <= 1.5)) continue;
    reached.push(set);
    floors.set(set, floor);
  }
  const isOutdone = (set: readonly Step[]) =>
    set.some((step) => {
      if (!leavesFighters(step, plan)) return false;
      const others = set.filter((one) => one !== step);
      const sending = steps.find(
        ({ of, group }) => of === step.of && group?.males === 1 && !("females" in group),
      );
      return reached.some((one) => one.every((each) => others.includes(each) || each === sending));
    });
  return reached
    .filter((set) => !isOutdone(set))
    .map(keysOf)
    .sort();
}

/** Whether a set that gets a tank has nothing more beside it but whole groups that leave. */
const onlyRoomIsSpared = (smaller: readonly Step[], set: readonly Step[]) =>
  smaller.some(({ key }) => key === "tank") &&
  set.every((step) => smaller.includes(step) || /^rehome \d+$/.test(step.key));

/** The floor of a rectangular tank, in its own unit. */
const floorOf = ({ tank: { base } }: Plan) => (base.shape === "rectangle" ? base.length * base.width : 0);

/** Whether a step takes all females from several males that chase or bite each other, or hold places. */
function leavesFighters({ of = -1, group: left }: Step, { groups }: Plan): boolean {
  const group: Partial<Group> = { ...groups[of], ...left };
  const { males = 0, females = 0, unsexed = 0, juveniles = 0, species } = group;
  const were = groups[of];
  const hadOthers = (were?.females ?? 0) + (were?.unsexed ?? 0) + (were?.juveniles ?? 0) > 0;
  if (!left || males < 2 || !hadOthers || females + unsexed + juveniles > 0) return false;
  const { value: place = "none" } = species?.space?.territory ?? {};
  const acts = species?.temperament?.acts?.value.filter(({ doer }) => doer !== "female") ?? [];
  return (
    (place !== "none" && place.holder !== "female") ||
    acts.some(({ target }) => /^own-(sex|kind)$/.test(target))
  );
}

export const keysOf = (steps: readonly Step[]) =>
  steps
    .map(({ key }) => key)
    .sort()
    .join(" + ");

function subsets(steps: readonly Step[], size: number): readonly (readonly Step[])[] {
  if (size === 0) return [[]];
  return steps.flatMap((step, index) =>
    subsets(steps.slice(index + 1), size - 1).map((rest) => [step, ...rest]),
  );
}

/** Whether somebody stays, no group does anything after it left, and at most one company comes. */
function canBeDone(set: readonly Step[], { groups }: Plan): boolean {
  const leaving = set.filter(({ kind, group }) => kind === "rehome" && !group).map(({ of }) => of);
  const others = set.filter(({ kind, of, group }) => of !== undefined && (kind !== "rehome" || group));
  const about = others.map(({ kind, of }) => `${kind} ${of}`);
  return (
    leaving.length < groups.length &&
    others.every(({ of }) => !leaving.includes(of)) &&
    new Set(about).size === about.length &&
    set.filter(({ kind }) => kind === "company").length < 2
  );
}
