import type { Animals } from "../../../plan";
import { kinOf } from "../../../plan/inner";
import type { Sex } from "../../../species";
import { sexes } from "../../../species/inner";
import { awaitsFemales } from "../../animals/wanted";
import type { Judged, PartyRole } from "../../engine/rule/finding";

/** A party as a rule sees it. */
interface Seen {
  readonly party: Animals;
}

/** The sexes of two parties; absent where the plan may leave one open. */
type Sexes = Readonly<Partial<Record<PartyRole, Sex>>>;

type Weights = "blocking" | "restricting" | "advisory";

/** How a rule judges two parties, one answer after the other. */
type Judging<From, To, Kinds> = (from: From, to: To) => Iterable<Judged<Weights, Kinds>>;

/**
 * Judges two parties as the plan gives them. What ends badly, or may, and surely would not were they of a sex that the plan
 * leaves open, restricts to that sex: the doer's, else the other's, else both.
 */
export function judgedBySex<From extends Seen, To extends Seen, Kinds>(
  from: From,
  to: To,
  judge: Judging<From, To, Kinds>,
): readonly Judged<Weights, Kinds>[] {
  const found = [...judge(from, to)];
  const grave = found.find(mayEndBadly);
  if (!grave || from.party === to.party) return found;
  for (const named of choices(from.party, to.party)) {
    const mild = unlessBadly(judge(...ofSexes(from, to, named)));
    if (mild) return [...asking(named, grave), ...mild];
  }
  return found;
}

/** Some answers; undefined as soon as one of them may end badly. */
function unlessBadly<Kinds>(
  answers: Iterable<Judged<Weights, Kinds>>,
): readonly Judged<Weights, Kinds>[] | undefined {
  const mild: Judged<Weights, Kinds>[] = [];
  for (const answer of answers) {
    if (mayEndBadly(answer)) return undefined;
    mild.push(answer);
  }
  return mild;
}

/** A side of which a rule sees how many are wanted. */
type Joined = Seen & Parameters<typeof awaitsFemales>[0];

/**
 * Judges two parties as the plan gives them, and in the place of males the females that will join them too: what ends worse
 * for these restricts to males, which the plan keeps already; else what they ask for is asked for as well.
 */
export function besideJoining<From extends Joined, To extends Joined, Kinds>(
  from: From,
  to: To,
  judge: Judging<From, To, Kinds>,
): readonly Judged<Weights, Kinds>[] {
  const found = [...judge(from, to)];
  const joined = { from: awaitsFemales(from), to: awaitsFemales(to) };
  if (from.party === to.party || !(joined.from || joined.to)) return found;
  const all: Judged<Weights, Kinds>[] = [...found];
  const peril = Math.max(0, ...found.map(perilOf));
  const stayMales = new Set<PartyRole>();
  for (const females of [["from"], ["to"], ["from", "to"]] as const) {
    if (!females.every((of) => joined[of] && !stayMales.has(of))) continue;
    const sexOf = (of: PartyRole) => (females.some((each) => each === of) ? "female" : undefined);
    const answers = [...judge(ofSex(from, sexOf("from")), ofSex(to, sexOf("to")))];
    const worse = answers.find((answer) => perilOf(answer) > peril);
    if (worse) {
      stayMales.add(females[0]);
      all.push(...asking<Kinds>({ [females[0]]: "male" }, worse));
    } else {
      all.push(...answers.filter((answer) => asksFor(answer) && !all.some(asksTheSame(answer))));
    }
  }
  return all;
}

/** Judges two parties by both: restricts to the sex that is spared, and judges the females that will join males. */
export const sparingBySex = <From extends Joined, To extends Joined, Kinds>(
  from: From,
  to: To,
  judge: Judging<From, To, Kinds>,
): readonly Judged<Weights, Kinds>[] =>
  besideJoining<From, To, Kinds>(from, to, (one, other) => judgedBySex<From, To, Kinds>(one, other, judge));

/** How badly it may end: not, perhaps or surely. */
function perilOf(answer: { readonly weight: Weights }): number {
  if (answer.weight === "blocking") return 2;
  return mayEndBadly(answer) ? 1 : 0;
}

/** What an answer asks for, as text; undefined where it asks for nothing. */
const asksFor = (answer: { readonly weight: Weights }): string | undefined =>
  "condition" in answer ? JSON.stringify(answer.condition) : undefined;

const asksTheSame = (one: { readonly weight: Weights }) => (other: { readonly weight: Weights }) =>
  asksFor(one) === asksFor(other);

const mayEndBadly = (answer: { readonly weight: Weights }): boolean =>
  answer.weight === "blocking" || "couldBe" in answer;

/** Asks for sexes because of what is found of others. */
function asking<Kinds>(
  named: Sexes,
  { measures, watchFor }: Pick<Judged<Weights, Kinds>, "measures" | "watchFor">,
): readonly Judged<"restricting", Kinds>[] {
  const told = {
    weight: "restricting",
    ...(measures && { measures }),
    ...(watchFor && { watchFor }),
  } as const;
  return (["from", "to"] as const).flatMap((of) => {
    const sex = named[of];
    return sex ? [{ ...told, condition: { on: "group.sex", of, wanted: { oneOf: [sex] } } }] : [];
  });
}

/** What may be said of the sexes of two parties: of the doer first, then of the other, then of both. */
function choices(doer: Animals, other: Animals): readonly Sexes[] {
  const [ofDoer, ofOther] = [openSexes(doer), openSexes(other)];
  return [
    ...ofDoer.map((from) => ({ from })),
    ...ofOther.map((to) => ({ to })),
    ...ofDoer.flatMap((from) => ofOther.map((to) => ({ from, to }))),
  ];
}

/** The sexes of which all animals of a party may be, where the plan does not say of which they are. */
export const openSexes = ({ sex, males, some = {} }: Animals): readonly Sex[] =>
  sex !== undefined || males !== undefined
    ? []
    : sexes.filter((each) => sexes.every((of) => of === each || !some[of]));

/** Two sides, each with all animals of one sex if one is named; of one kind, with the others of their kind as before. */
function ofSexes<From extends Seen, To extends Seen>(from: From, to: To, named: Sexes): [From, To] {
  const sides: [From, To] = [ofSex(from, named.from), ofSex(to, named.to)];
  if (from.party.id !== to.party.id) return sides;
  return [withParty(sides[0], { kin: from.party.kin }), withParty(sides[1], { kin: to.party.kin })];
}

/** Sides with all animals of one sex, each made once. */
const sidesOfSex = /* @__PURE__ */ new WeakMap<Seen, Partial<Record<Sex, Seen>>>();

/** A side of which all animals are of one sex, if one is named; its traits are read as before. */
export function ofSex<Side extends Seen>(side: Side, sex: Sex | undefined): Side {
  if (!sex) return side;
  const known = sidesOfSex.get(side) ?? {};
  sidesOfSex.set(side, known);
  known[sex] ??= withSex(side, sex);
  return known[sex] as Side;
}

function withSex<Side extends Seen>(side: Side, sex: Sex): Side {
  const { party } = side;
  const { count, kin } = party;
  const named = { sex, ...(count !== undefined && { count, ...allOf(sex, count) }) };
  const together = kin.count === count ? kinOf([named]) : kin;
  return withParty(side, { ...named, kin: together });
}

/** A side of other animals; its traits are read as before. */
function withParty<Side extends Seen>(side: Side, changes: Partial<Animals>): Side {
  return Object.create(Object.getPrototypeOf(side), {
    ...Object.getOwnPropertyDescriptors(side),
    party: { value: Object.assign({}, side.party, changes) },
  });
}

const allOf = (sex: Sex, count: number) =>
  sex === "male" ? { males: count, females: 0 } : { males: 0, females: count };
