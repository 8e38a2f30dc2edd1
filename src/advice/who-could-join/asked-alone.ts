import { type AssessOptions, assessPlan, type Finding, pairRules, planRules } from "../../compatibility";
import type { Group, Plan } from "../../plan";

/** So many newcomers are judged in one go. */
const atOnce = 20;

/**
 * What the tank means for each newcomer whoever lives there: by the rules that look at one group and nothing else, which say
 * of many groups in one plan what they say of each in its own. Nothing of species of which the plan has some already.
 *
 * @returns For the place of a newcomer its findings, in which it is the party after those of the plan.
 */
export function askedAlone(
  plan: Plan,
  newcomers: readonly Group[],
  { rules = [...planRules, ...pairRules], thresholds }: AssessOptions,
): (place: number) => readonly Finding[] {
  const ofEach = rules.filter(({ way, weighs }) => way === "each-group" && weighs !== true);
  const there = new Set(plan.groups.map(({ species }) => species.id));
  const first = new Map<string, number>();
  for (const [place, { species }] of newcomers.entries())
    if (!there.has(species.id) && !first.has(species.id)) first.set(species.id, place);
  const places = ofEach.length > 0 ? [...first.values()] : [];
  const found = new Map<number, Finding[]>();
  for (let start = 0; start < places.length; start += atOnce) {
    const batch = places.slice(start, start + atOnce);
    const groups = batch.map((place) => newcomers[place] as Group);
    for (const finding of assessPlan({ ...plan, groups }, { rules: ofEach, thresholds }).findings) {
      const place = batch[finding.from ?? -1];
      if (place === undefined || finding.rule === "conditions-exclude") continue;
      found.set(place, [...(found.get(place) ?? []), movedTo({ ...finding, from: 0 }, [plan.groups.length])]);
    }
  }
  return (place) => found.get(place) ?? [];
}

/** A finding whose parties stand elsewhere: each at the place told for it, one alone at the last. */
export function movedTo(finding: Finding, places: readonly number[]): Finding {
  const at = (party: number) => places[Math.min(party, places.length - 1)] ?? party;
  const { from, to } = finding;
  return {
    ...finding,
    ...(from !== undefined && { from: at(from) }),
    ...(to !== undefined && { to: at(to) }),
    ...("condition" in finding && finding.condition.of !== undefined
      ? { condition: { ...finding.condition, of: at(finding.condition.of) } }
      : {}),
    ...("instead" in finding && finding.instead?.of !== undefined
      ? { instead: { ...finding.instead, of: at(finding.instead.of) } }
      : {}),
  } as Finding;
}
