import type {
  AssessOptions,
  Finding,
  JointCondition,
  OpenQuestion,
  Rule,
  Verdict,
} from "../../compatibility";
import { coverInsteadOfCompany, decides, rulesFor } from "../../compatibility/inner";
import type { Plan } from "../../plan";
import { conditionsOf } from "../conditions-of";
import { gravityOfFinding } from "../gravity";
import { kindOf, ofGroups } from "./kind-of";
import type { MoveKind } from "./move";
import type { Step } from "./possible-step";

/** What stands between a plan and the outcome that is wanted. */
export interface Bar {
  /** What tells of it; its groups named by their places in the plan that was judged. */
  readonly told: Finding | OpenQuestion;
  /** Tells it from others, whatever became of the plan. */
  readonly sign: string;
  /** How grave it is; the graver, the greater. */
  readonly gravity: number;
  /** The steps without which it stays: no other changes anything that its rule sees. */
  readonly removers: ReadonlySet<string>;
}

/** Of what more may help at worst, where nobody knows how much is enough: filter, tank, and animals of a kind. */
const isPressed = (kind: MoveKind) => kind === "filter" || kind === "tank" || kind === "numbers";

/** What is sought, and by what is judged. */
export interface Sought {
  readonly want: "suitable" | "conditional";
  /** What a plan does not meet of what may be asked for, where it has to be so at worst too. */
  readonly askedAtWorst?: ((plan: Plan) => readonly JointCondition[]) | undefined;
  readonly rules: ReadonlyMap<string, Rule>;
  readonly thresholds?: AssessOptions["thresholds"];
  readonly steps: readonly Step[];
}

/** The rules that a plan is judged by, by id. */
export const rulesById = (options: AssessOptions): ReadonlyMap<string, Rule> =>
  new Map(rulesFor(options).map((rule) => [rule.id, rule]));

/**
 * All that bars a plan from the outcome wanted: findings that rule it out, or restrict where nothing may; what nobody can
 * tell; at worst also what hangs on traits that are disputed or missing.
 *
 * @param places - For each group its place in the plan as given.
 */
export function barsOf(
  verdict: Verdict,
  plan: Plan,
  places: readonly number[],
  sought: Sought,
): readonly Bar[] {
  const { want, askedAtWorst } = sought;
  const least = want === "suitable" ? 1 : 2;
  const ofFindings = verdict.findings
    .map((told) => ({ told, gravity: gravityOfFinding(told), parties: [told.from, told.to] }))
    .filter(({ gravity }) => gravity >= least);
  const ofQuestions = verdict.open
    .filter((told) => isBarring(told, askedAtWorst !== undefined))
    .map((told) => ({ told, gravity: gravityOfQuestion(told), parties: [told.of] }))
    .filter(({ gravity }) => gravity >= least);
  return [...ofFindings, ...ofQuestions].map(({ told, gravity, parties }) => ({
    told,
    sign: JSON.stringify([
      told.rule,
      parties.map((party) => places[party ?? -1]),
      "trait" in told ? told.trait : "condition" in told && told.condition.on,
    ]),
    gravity,
    removers: removersOf(told, parties, { plan, places, verdict, sought }),
  }));
}

const gravityOfQuestion = (question: OpenQuestion) =>
  question.couldBe === "blocking" || decides(question) ? 2 : 1;

/** Whether an open question bars: where nobody can tell for want of its trait, or at worst. */
function isBarring(question: OpenQuestion, atWorst: boolean): boolean {
  if (question.reason === "individual" || question.reason === "not-given") return false;
  return atWorst || decides(question);
}

interface Judged {
  readonly plan: Plan;
  readonly places: readonly number[];
  readonly verdict: Verdict;
  readonly sought: Sought;
}

/**
 * The steps that change something of what a rule sees, by what it declares: what it reads of the plan, the condition that
 * it was held to, and the animals it is about, with all others of their species; all animals, where it looks at all.
 */
function removersOf(told: Bar["told"], parties: readonly (number | undefined)[], judged: Judged) {
  const { sought } = judged;
  const rule = sought.rules.get(told.rule);
  const kinds = new Set<MoveKind | undefined>();
  if ("condition" in told) kinds.add(kindOf(told.condition.on));
  if ("reason" in told) for (const on of askedBy(told.rule, judged.verdict)) kinds.add(kindOf(on));
  for (const name of rule?.reads ?? []) kinds.add(kindOf(name));
  const seen = groupsSeen(rule, told, parties, judged);
  const short = groupsShort(judged);
  const removes = (step: Step) => {
    const { kind, of } = step;
    if (!hasEffect(step, judged)) return false;
    if (rule === undefined) return true;
    if (kind === "company") return kinds.has(kind) || looksAtAll(rule);
    if (kind === "numbers")
      return sought.askedAtWorst !== undefined || short.some((place) => seen.has(place));
    return of !== undefined && ofGroups.has(kind) ? seen.has(of) : kinds.has(kind);
  };
  return new Set(sought.steps.filter(removes).map(({ key }) => key));
}

/** Whether a step does anything: animals leave or come in, or something that it sees to is asked for. */
function hasEffect({ kind, of, group, joining }: Step, { verdict, places, sought }: Judged): boolean {
  if (group || joining || kind === "rehome") return true;
  if (sought.askedAtWorst && isPressed(kind)) return true;
  if (kind === "tank" && verdict.findings.some(({ weight }) => weight === "blocking")) return true;
  if (kind === "cover" && coverInsteadOfCompany(verdict.findings) !== undefined) return true;
  const { conditions, findings, met } = verdict;
  const asked = sought.askedAtWorst ? conditionsOf([...findings, ...met]) : conditions;
  return asked.some(
    (condition) => kindOf(condition.on) === kind && (of === undefined || places[condition.of ?? -1] === of),
  );
}

/** The places in the plan as given of the groups that lack animals of their kind, or one sex of them. */
const groupsShort = ({ verdict, places }: Judged): readonly number[] =>
  verdict.conditions.flatMap(({ on, of }) => (kindOf(on) === "numbers" ? (places[of ?? -1] ?? []) : []));

const looksAtAll = ({ way, sums }: Rule) => way === "all-groups" || way === "once" || sums !== undefined;

/** The facts that a rule asks for anywhere in a plan. */
const askedBy = (id: string, { findings, met }: Verdict) =>
  [...findings, ...met].flatMap(({ rule, ...finding }) =>
    rule === id && "condition" in finding ? [finding.condition.on] : [],
  );

/** The places in the plan as given of the groups that a rule sees where it tells something. */
function groupsSeen(
  rule: Rule | undefined,
  told: Bar["told"],
  parties: readonly (number | undefined)[],
  { plan, places }: Judged,
): ReadonlySet<number> {
  const ofTwo = rule?.way === "mutual" || rule?.way === "each-way";
  if (!rule || looksAtAll(rule) || (ofTwo && "reason" in told)) return new Set(places);
  const ids = new Set(parties.map((party) => plan.groups[party ?? -1]?.species.id));
  return new Set(places.filter((_, index) => ids.has(plan.groups[index]?.species.id)));
}
