import { weakestBasis } from "../../species/inner";
import type { AnyFinding } from "../engine/rule/finding";
import type { AssessWith } from "../engine/rule/rule";
import { gravity } from "../engine/rule/weight";
import type { Subject } from "../engine/sides/subject";
import { type Clash, clashes } from "./clashes";
import { inDispute, mayExclude, mustExclude } from "./exclusion";
import { greatest, type Said } from "./said";
import type { Outcome, Verdict } from "./verdict";

/** What all judgements come to. */
export interface Together {
  readonly outcome: Outcome;
  readonly bounds: Verdict["bounds"];
  /** That conditions exclude each other. */
  readonly excluding: readonly AnyFinding[];
}

const outcomes = ["suitable", "conditional", "unsuitable"] as const;

/** Takes together what all rules say. */
export function takenTogether(
  subjects: readonly Subject[],
  said: readonly Said[],
  { rules }: Pick<AssessWith, "rules">,
): Together {
  const found = greatest(said, ({ adopted }) => adopted);
  const best = greatest(said, ({ least }) => least);
  const worst = greatest(said, (each) => each.greatest);
  const dispute = best === gravity.blocking ? [] : inDispute(said);
  const mayClash = found < gravity.blocking && dispute.length > 0;
  const excluding = mayClash ? excludingOf(subjects, said, rules) : [];
  const isOutOfReach = best === gravity.blocking || mustExclude(dispute);
  const mayFail = worst === gravity.blocking || excluding.length > 0 || isOutOfReach || mayExclude(dispute);
  const adopted = Math.max(found, greatest(excluding, gravityOf));
  const isOpen = excluding.some(({ weight }) => weight === "advisory");
  const undetermined = adopted < gravity.blocking && (isOpen || said.some((each) => each.undetermined));
  return {
    outcome: undetermined ? "undetermined" : outcomeOf(adopted),
    bounds: {
      atBest: outcomeOf(isOutOfReach ? gravity.blocking : best),
      atWorst: outcomeOf(mayFail ? gravity.blocking : worst),
    },
    excluding,
  };
}

/** What tells that conditions exclude each other: those that are found, and those that are met and may be lost again. */
function excludingOf(
  subjects: readonly Subject[],
  said: readonly Said[],
  rules: AssessWith["rules"],
): readonly AnyFinding[] {
  const judged = said.flatMap(({ findings }) => findings);
  const met = said.flatMap((each) => each.met);
  const mutual = new Set(rules.filter(({ way }) => way === "mutual").map(({ id }) => id));
  return clashes([...judged, ...met.filter(mayBeLost)].filter(isRestricting))
    .filter((clash) => clash.flat().some((finding) => !met.includes(finding)))
    .flatMap((clash) => exclusionFindings(clash, mutual))
    .map((finding) => (restsOnStandIn(finding, subjects) ? asUncertain(finding) : finding));
}

/** Whether what a plan meets can be lost by meeting something else: food is only ever added. */
export const mayBeLost = (finding: AnyFinding) =>
  finding.weight === "restricting" && finding.condition.on !== "group.offerings";

type Restricting = Extract<AnyFinding, { readonly weight: "restricting" }>;

const isRestricting = (finding: AnyFinding): finding is Restricting => finding.weight === "restricting";

/** A finding that asks for a condition, with a party for which it asks. */
interface Asker {
  readonly party: number | undefined;
  readonly finding: Restricting;
}

/**
 * That two conditions exclude each other: a finding for each two parties for which they are asked. It has no direction,
 * and the party that comes first is named first.
 */
function exclusionFindings(
  [one, other]: Clash<Restricting>,
  mutual: ReadonlySet<string>,
): readonly AnyFinding[] {
  const askers = [askersOf(one, mutual), askersOf(other, mutual)] as const;
  const twos = askers[0].flatMap((from) =>
    askers[1].map((to) =>
      (from.party ?? 0) > (to.party ?? 0) ? ([to, from] as const) : ([from, to] as const),
    ),
  );
  const ofTwo = twos.filter(([from, to]) => from.party !== to.party);
  const byParties = new Map<string, (readonly [Asker, Asker])[]>();
  for (const two of ofTwo.length > 0 ? ofTwo : twos) {
    const parties = two.map(({ party, finding }) => `${party} ${finding.condition.on}`).join();
    byParties.set(parties, [...(byParties.get(parties) ?? []), two]);
  }
  return [...byParties.values()].map(exclusionFinding);
}

/** For whom findings ask: for the one where each is about one alone, else for both where a rule has no direction. */
function askersOf(findings: readonly Restricting[], mutual: ReadonlySet<string>): readonly Asker[] {
  const ofOne = findings.filter(({ to }) => to === undefined);
  return (ofOne.length > 0 ? ofOne : findings).flatMap((finding) => {
    const { rule, from, to } = finding;
    const parties = mutual.has(rule) ? [from, to] : [from];
    return parties.map((party) => ({ party, finding }));
  });
}

function exclusionFinding(twos: readonly (readonly [Asker, Asker])[]): AnyFinding {
  const asking = twos.flat().map(({ finding }) => finding);
  const [from, to] = twos[0] ?? [];
  return {
    rule: "conditions-exclude",
    weight: "blocking",
    ...(from?.party !== undefined && { from: from.party }),
    ...(to?.party !== undefined && { to: to.party }),
    measures: {
      one: { value: from?.finding.condition.on ?? "" },
      other: { value: to?.finding.condition.on ?? "" },
    },
    basis: weakestBasis(asking.map(({ basis }) => basis)),
    traits: [...new Set(asking.flatMap(({ traits }) => traits))].sort(),
  };
}

/** Whether one of those who exclude each other is known by an optimum alone, which stands in for what it is kept in. */
const restsOnStandIn = ({ from, to, traits }: AnyFinding, subjects: readonly Subject[]): boolean =>
  [from, to].some((party) =>
    traits.some((path) => Object(party !== undefined && subjects[party]?.standing(path)[0]).standIn === true),
  );

/** What nobody can tell: the gap between optima may be none between what animals can be kept in. */
const asUncertain = (finding: AnyFinding): AnyFinding => ({
  ...finding,
  weight: "advisory",
  couldBe: "blocking",
});

const gravityOf = ({ weight }: AnyFinding) => gravity[weight];

const outcomeOf = (grade: number) => outcomes[grade] ?? "unsuitable";
