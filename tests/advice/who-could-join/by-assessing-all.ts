// Tells who could join the slow way: every candidate by the whole verdict on the plan with it.
import {
  type AssessOptions,
  assessPlan,
  type Finding,
  type OpenQuestion,
  type Outcome,
} from "../../../src/compatibility";
import { type Condition, isMet, type Plan } from "../../../src/plan";
import { factAt, type SpeciesProfile } from "../../../src/species";
import { numberUnknown } from "./number-unknown";

type Told = Finding | OpenQuestion;

/** For each candidate why it is refused, undefined where it may join. */
export function becauseOfAll(
  plan: Plan,
  candidates: readonly SpeciesProfile[],
  options: AssessOptions,
): readonly (Told | undefined)[] {
  const before = assessPlan(plan, options);
  const works = isPromise(before.outcome);
  const passedOver = before.outcome === "suitable" ? 0 : 1;
  const denied = deniedIn(plan, before.findings);
  const known = new Set(before.findings.map(signOf));
  const newcomer = plan.groups.length;
  return candidates.map((species) => {
    const group = { species, unsexed: factAt(species, "social.group")?.value.least ?? 1 };
    const joined = { ...plan, groups: [...plan.groups, group] };
    const after = assessPlan(joined, options);
    const newlyDenied = after.findings.find(
      (finding) =>
        [finding.from ?? newcomer, finding.to].includes(newcomer) &&
        deniedIn(joined, [finding]).some(
          (condition) => !denied.some((known) => coversWhat(known, condition)),
        ),
    );
    const fitsIn = newlyDenied ?? numberUnknown(species, after);
    if (works && (after.outcome === before.outcome || after.outcome === "suitable")) return fitsIn;
    const about = after.findings.filter(({ from, to }) => from === newcomer || to === newcomer);
    const unknown = after.open.filter((question) => question.of === newcomer && leavesUntold(question));
    const because = gravest([...about, ...unknown], passedOver);
    if (because) return because;
    if (!works) return fitsIn;
    const further = after.findings.filter((finding) => !known.has(signOf(finding)));
    return gravest(further, passedOver) ?? gravest([...after.findings, ...after.open], passedOver);
  });
}

/** What findings ask of tank and water of which a plan says otherwise. */
const deniedIn = (plan: Plan, findings: readonly Finding[]): readonly Condition[] =>
  findings.flatMap((finding) => {
    if (finding.weight !== "restricting" || isMet(finding.condition, plan) !== false) return [];
    return /^(tank|water)[.]/.test(finding.condition.on) ? [finding.condition] : [];
  });

/** Whether whoever does what the one asks has done what the other asks as well: its ends, or its words, will do. */
function coversWhat(known: Condition, asked: Condition): boolean {
  if (known.on !== asked.on || known.of !== asked.of) return false;
  const [one, other] = [known.wanted, asked.wanted];
  if ("oneOf" in one) return "oneOf" in other && one.oneOf.every((word) => other.oneOf.includes(word));
  if ("oneOf" in other) return false;
  const [least = -1e9, most = 1e9] = [other.min, other.max];
  return [one.min ?? -1e9, one.max ?? 1e9].every((end) => end >= least && end <= most);
}

const isPromise = (outcome: Outcome) => outcome === "suitable" || outcome === "conditional";

const signOf = ({ rule, weight, from, to }: Finding) => JSON.stringify([rule, weight, from, to]);

/** Whether the outcome hangs on what nobody knows. */
const leavesUntold = (question: OpenQuestion) => question.reason === "missing" && question.decides === true;

/** The first of the gravest that is graver than is passed over. */
function gravest(all: readonly Told[], passedOver: number): Told | undefined {
  const most = Math.max(passedOver, ...all.map(gravityOf));
  return most > passedOver ? all.find((told) => gravityOf(told) === most) : undefined;
}

function gravityOf(told: Told): number {
  if ("reason" in told) return leavesUntold(told) ? 2 : 0;
  if (told.weight === "blocking") return 3;
  if (told.weight === "advisory" && told.couldBe) return 2;
  return told.weight === "restricting" ? 1 : 0;
}
