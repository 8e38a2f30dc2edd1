// Tells who could live in a tank without animals the slow way: every candidate by the whole verdict on it alone.
import { marginOf } from "../../../src/advice/who-could-join/margin";
import {
  type AssessOptions,
  assessPlan,
  type Finding,
  type OpenQuestion,
  type Outcome,
} from "../../../src/compatibility";
import { isMet, type Plan } from "../../../src/plan";
import { checkedPlan } from "../../../src/plan/inner";
import { factAt, type SpeciesProfile } from "../../../src/species";
import { numberUnknown } from "./number-unknown";

/** What is told of a candidate. */
export type Alone =
  | { readonly species: string; readonly outcome: Outcome; readonly margin: number }
  | { readonly species: string; readonly because: Finding | OpenQuestion | undefined };

/** Who lives there, the widest margin first, then who does not, in the order given. */
export function eachAlone(
  empty: Plan,
  candidates: readonly SpeciesProfile[],
  options: AssessOptions = {},
): readonly Alone[] {
  const all = candidates.map((species) => alone(empty, species, options));
  const living = all.flatMap((one) => ("margin" in one ? [one] : []));
  return [
    ...living.sort((one, other) => other.margin - one.margin),
    ...all.filter((one) => "because" in one),
  ];
}

function alone(empty: Plan, profile: SpeciesProfile, options: AssessOptions): Alone {
  const unsexed = factAt(profile, "social.group")?.value.least ?? 1;
  const plan = { ...empty, groups: [{ species: profile, unsexed }] };
  const verdict = assessPlan(plan, options);
  const { outcome, findings, met, open } = verdict;
  const { id: species } = profile;
  const denied = findings.filter(
    (finding) =>
      finding.weight === "restricting" &&
      /^(tank|water)[.]/.test(finding.condition.on) &&
      isMet(finding.condition, plan) === false,
  );
  if (outcome === "suitable" || (outcome === "conditional" && denied.length === 0)) {
    const because = numberUnknown(profile, verdict);
    if (because) return { species, because };
    const conditions = met.flatMap((finding) =>
      finding.weight === "restricting" ? [finding.condition] : [],
    );
    return { species, outcome, margin: marginOf(checkedPlan(plan), { met: conditions, unmet: [] }) };
  }
  if (outcome === "unsuitable")
    return { species, because: findings.find(({ weight }) => weight === "blocking") };
  if (outcome === "conditional") return { species, because: denied[0] };
  const untold = findings.find((finding) => finding.weight === "advisory" && finding.couldBe);
  return {
    species,
    because: untold ?? open.find((question) => question.reason === "missing" && question.decides),
  };
}
