import type { Plan } from "../../plan";
import { speciesOf } from "../../plan/inner";
import type { EntryReason } from "./answer";
import { type Comers, groupsOf } from "./comers";
import { daysToGrow, type Growing } from "./growing";
import { grownInOn, ripeOn } from "./ripening";

/** What the days hang on. */
export interface Timing {
  readonly plan: Plan;
  /** Days. */
  readonly quarantine: number;
  /** For how many steps at once there is a tank to keep them apart in. */
  readonly quarantineTanks: number;
  readonly growing: readonly Growing[];
  /** The groups that wait for plants to grow in. */
  readonly waitingForPlants: ReadonlySet<number>;
}

/** Comers that move in on one day, and what that day hangs on. */
export interface Dated {
  readonly day: number;
  readonly groups: readonly number[];
  readonly because: readonly EntryReason[];
}

/**
 * Days after which a filter has followed what newcomers added. Common practice, no source; new media ripen in 7 to 56
 * days.
 */
const daysToFollow = 14;

/** The first days on which some comers can move in, step by step. */
export function scheduled(steps: readonly (readonly Comers[])[], timing: Timing): readonly Dated[] {
  const enteredOn = new Map<number, number>();
  const dated: Dated[] = [];
  for (const comers of steps) {
    const groups = groupsOf(comers);
    const because = reasonsOf(comers, dated, enteredOn, timing);
    const day = Math.max(0, ...because.map((one) => ("day" in one ? (one.day ?? 0) : 0)));
    for (const group of groups) enteredOn.set(group, day);
    dated.push({ day, groups, because });
  }
  return dated;
}

/** What a day hangs on. */
function reasonsOf(
  comers: readonly Comers[],
  dated: readonly Dated[],
  enteredOn: ReadonlyMap<number, number>,
  { plan, quarantine, quarantineTanks, growing, waitingForPlants }: Timing,
): readonly EntryReason[] {
  const last = dated.at(-1)?.day;
  const isFree = dated.at(-quarantineTanks)?.day ?? 0;
  const groups = groupsOf(comers);
  const stated = comers.flatMap(({ statedDay = 0 }) => (statedDay > 0 ? statedDay : []));
  const ripe = ripeOn(plan);
  const grownIn = groups.some((group) => waitingForPlants.has(group)) ? grownInOn(plan) : undefined;
  const waits: readonly (EntryReason | false | undefined)[] = [
    ripe > 0 && last === undefined && { reason: "filter-ripens", day: ripe },
    quarantine > 0 && { reason: "quarantine", day: isFree + quarantine },
    last !== undefined && { reason: "filter-follows", day: last + daysToFollow },
    grownIn !== undefined && { reason: "plants-grow-in", day: grownIn },
    stated.length > 0 && { reason: "stated-day", day: Math.max(...stated) },
    ...growing.filter(({ before }) => groups.includes(before)).map((one) => growth(one, plan, enteredOn)),
  ];
  return waits.filter((one) => one !== false && one !== undefined);
}

/** What a group that was there first has to grow to, counted from the day on which it moved in. */
function growth(
  { group, length }: Growing,
  { groups }: Plan,
  enteredOn: ReadonlyMap<number, number>,
): EntryReason | undefined {
  const grower = groups[group];
  if (!grower) return undefined;
  const days = daysToGrow(speciesOf(grower), grower.length ?? 0, length);
  const told = { reason: "others-grow", group, length } as const;
  return days === undefined ? told : { ...told, day: (enteredOn.get(group) ?? 0) + days };
}
