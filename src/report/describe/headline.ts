import type { Finding, OpenQuestion, Verdict, Weight } from "../../compatibility";
import type { FactName } from "../../plan";
import { isBy, isCaution, isOfLawThere, tellsPlanned } from "../matters/by-rule";
import { demandsOf, harmPrevented } from "../matters/matters";
import { isOfSpace } from "../matters/order";
import { isOfSharedWater, isPastLimit, plannedWaterRules } from "../matters/water-rules";
import type { DoubtReason, Messages } from "../messages/messages";
import type { Teller } from "./teller";
import { isOfWater, waterAsked } from "./water-asked";

/** The first lines of a report: the answer, and what could still change it. */
export function headline(verdict: Verdict, teller: Teller, messages: Messages): readonly string[] {
  const { outcome, bounds, parties } = verdict;
  const { atBest, atWorst } = bounds;
  const undecided = verdict.open.filter(
    ({ rule, reason, couldBe }) =>
      reason === "individual" && couldBe === "blocking" && !isOfSharedWater({ rule }),
  );
  const answer = messages.headline({
    outcome,
    oneGroup: parties.length === 1 || parties.some(({ temper }) => temper === "bully"),
    oneSpecies: new Set(parties.map(({ id }) => id)).size === 1,
    animals: teller.listed(teller.parties),
    warned: isWarned(verdict),
    tooSmall: onlyTooSmall(verdict),
    clash: clashOf(verdict, teller),
    amiss: teller.named(onlyAmiss(verdict)).whom,
    otherWater: otherWater(verdict, teller, messages),
    individuals: outcome === "undetermined" ? teller.named(undecided.map(({ of }) => of)).who : "",
  });
  const certain = atBest === atWorst && atBest === outcome;
  const first = outcome === "unsuitable" ? [] : unsaidFacts(verdict);
  const lawful = verdict.findings.filter(isOfLawThere).map(({ from }) => from);
  return [
    [answer, ...(certain ? [] : [messages.bounds(atBest, atWorst, outcome, doubtsOf(verdict))])].join(" "),
    ...(lawful.length > 0 ? [messages.lawFirst(teller.named(lawful).whom)] : []),
    ...(first.length > 0 ? [messages.measureFirst(first)] : []),
  ];
}

/**
 * Whether a suitable plan is told with a reserve: something is worth knowing, room and cover keep harm down, or it may end
 * worse.
 */
const isWarned = (verdict: Verdict): boolean =>
  verdict.bounds.atWorst !== "suitable" ||
  harmPrevented(verdict).length > 0 ||
  verdict.findings.some(({ rule, weight }) => weight === "advisory" && !isCaution(rule));

/** For which reasons the outcome could be worse than it is. */
function doubtsOf({ open, bounds, outcome }: Verdict): readonly DoubtReason[] {
  if (bounds.atWorst === outcome) return [];
  const grave = open.filter(({ couldBe }) => bounds.atWorst === "conditional" || couldBe === "blocking");
  const reasons = new Set(grave.map(doubtOf));
  const told = (["individual", "disputed", "missing"] as const).filter((reason) => reasons.has(reason));
  return told.length === 0 && bounds.atWorst === "conditional" ? ["estimated"] : told;
}

/** What two share of water is not known where nobody has said it: no individual decides it. */
const doubtOf = ({ rule, reason }: OpenQuestion) =>
  reason === "individual" && isOfSharedWater({ rule }) ? "missing" : reason;

/** How many facts are asked for first. */
const mostAsked = 3;

/** What the plan does not say and would decide most. */
function unsaidFacts({ open }: Verdict): readonly FactName[] {
  const asked = open.flatMap((question) =>
    question.reason === "not-given" && decisive.includes(question.couldBe) ? [question.on] : [],
  );
  return [...new Set(asked)].slice(0, mostAsked);
}

const decisive: readonly Weight[] = ["blocking", "restricting"];

/** Whether nothing but the room in the tank, or in a part of it, rules it out. */
export function onlyTooSmall({ findings }: Verdict): boolean {
  const blocking = findings.filter(({ weight }) => weight === "blocking");
  return blocking.length > 0 && blocking.every(isOfSpace);
}

/** The two of more species whose clash is all that blocks. */
function clashOf({ parties, findings }: Verdict, teller: Teller): readonly [string, string] | undefined {
  const blocking = findings.filter(({ weight }) => weight === "blocking");
  const idsOf = ({ from, to }: Finding) =>
    [from, to].map((index) => (index === undefined ? "" : (parties[index]?.id ?? ""))).sort();
  const clashes = new Set(blocking.map((finding) => idsOf(finding).join(" ")));
  const [first] = blocking;
  if (!first || clashes.size !== 1 || new Set(parties.map(({ id }) => id)).size < 3) return undefined;
  const [one, other] = [teller.named([first.from]).whom, teller.named([first.to]).whom];
  return one && other && one !== other ? [one, other] : undefined;
}

/** The groups of the one of several species of which alone something rules the plan out; none where it is not one. */
function onlyAmiss({ parties, findings }: Verdict): readonly number[] {
  const blocking = findings.filter(({ weight }) => weight === "blocking");
  const idOf = (index: number | undefined) => (index === undefined ? undefined : parties[index]?.id);
  const ids = new Set(blocking.flatMap(({ from, to = from }) => [idOf(from), idOf(to)]));
  return [...parties.keys()].filter((index) => ids.size === 1 && ids.has(idOf(index)));
}

/**
 * All the water that a plan would have to have and has not, as a clause, where some of the planned one is past what its
 * animals survive, or all of them are of one species that it does not suit; else empty.
 */
function otherWater(verdict: Verdict, teller: Teller, messages: Messages): string {
  if (verdict.outcome !== "conditional") return "";
  const alone = new Set(verdict.parties.map(({ id }) => id)).size === 1;
  const demands = demandsOf(verdict).filter(({ findings }) => findings.some(isOfPlannedWater));
  const isTold = alone || demands.some(({ findings }) => findings.some(isPastLimit));
  const wanted = isTold ? demands.flatMap(({ conditions }) => conditions) : [];
  const usual = wanted.filter(isOfWater);
  const single = usual.length > 1 ? wanted.filter((condition) => !isOfWater(condition)) : wanted;
  return [
    ...(usual.length > 1 ? [messages.remedy.water(waterAsked(usual, teller.figure))] : []),
    ...single.map((condition) => teller.clause(condition)),
  ].join("; ");
}

const isOfPlannedWater = (finding: Finding) => isBy(finding, plannedWaterRules) && tellsPlanned(finding);
