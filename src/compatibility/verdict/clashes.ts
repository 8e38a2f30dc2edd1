import { decimal } from "../../decimal";
import { gathered } from "../../gathered";
import type { Condition, FactName } from "../../plan";

/** Whatever asks for a condition. */
interface Asking {
  readonly condition: Condition;
}

/** Two conditions that no plan meets at once, each with all that ask for it. */
export type Clash<Each extends Asking> = readonly [readonly Each[], readonly Each[]];

/**
 * Conditions that exclude each other: two about one fact of one party, or about facts bound to each other. Those are named
 * that ask for most, and so the same ones in whatever order all are asked.
 */
export function clashes<Each extends Asking>(asking: readonly Each[]): readonly Clash<Each>[] {
  const byFact = byFactOf(asking, ({ condition }) => condition);
  const ofOneFact = gathered([...byFact.values()], (asked) => [
    ...apartInNumbers(asked),
    ...apartInWords(asked),
  ]);
  const ofBoundFacts = gathered(bound, ({ one, other, by, exclude }) => {
    const [first, second] = [byFact.get(`${one} undefined`), byFact.get(`${other} undefined`)];
    if (!first || !second) return [];
    const [most, least] = [mostAsked(conditionsOf(first), by[0]), mostAsked(conditionsOf(second), by[1])];
    return most !== undefined && least !== undefined && exclude(most, least)
      ? [[askingFor(first, by[0], most), askingFor(second, by[1], least)] as const]
      : [];
  });
  return [...ofOneFact, ...ofBoundFacts];
}

/**
 * Of conditions those that decide whether any exclude each other: about each fact of each party the greatest least, the
 * least greatest, and each choice of words once.
 */
export function farthest<Each extends Condition>(asked: readonly Each[]): readonly Each[] {
  const kept = new Set<Each>();
  for (const about of byFactOf(asked, (condition) => condition).values()) {
    const byWords = new Map<string, Each>();
    for (const condition of about)
      if ("oneOf" in condition.wanted) byWords.set(JSON.stringify(condition.wanted.oneOf), condition);
    for (const condition of byWords.values()) kept.add(condition);
    for (const end of ["min", "max"] as const) {
      const most = mostAsked(about, end);
      const farthestOne = most !== undefined && about.find((condition) => endOf(condition, end) === most);
      if (farthestOne) kept.add(farthestOne);
    }
  }
  return [...kept];
}

/** Whatever asks for conditions, by the fact and the party that these are about; without what is only ever given in addition. */
function byFactOf<Each>(
  asking: readonly Each[],
  conditionOf: (each: Each) => Condition,
): ReadonlyMap<string, readonly Each[]> {
  const byFact = new Map<string, Each[]>();
  for (const each of asking) {
    const { on, of } = conditionOf(each);
    if (isGivenInAddition(on)) continue;
    const fact = `${on} ${of}`;
    const known = byFact.get(fact);
    if (known) known.push(each);
    else byFact.set(fact, [each]);
  }
  return byFact;
}

/** Whether no plan meets two conditions at once. */
export function excludeEachOther(a: Condition, b: Condition): boolean {
  if (isGivenInAddition(a.on)) return false;
  if (a.on !== b.on) return areBoundApart(a, b) || areBoundApart(b, a);
  if (a.of !== b.of) return false;
  if ("oneOf" in a.wanted && "oneOf" in b.wanted) return !sharedWords([a, b]);
  return isAbove(endOf(a, "min"), endOf(b, "max")) || isAbove(endOf(b, "min"), endOf(a, "max"));
}

/** Several foods can be given: one never rules out another. */
const isGivenInAddition = (on: FactName) => on === "group.offerings";

type End = "min" | "max";

/** Two facts of the tank that hang together, and what cannot be asked of both: these ends of them. */
interface Bound {
  readonly one: FactName;
  readonly other: FactName;
  readonly by: readonly [End, End];
  readonly exclude: (one: number, other: number) => boolean;
}

const isAbove = (least: number | undefined, most: number | undefined): boolean =>
  least !== undefined && most !== undefined && least > most;

/** The coolest season is no warmer than the water is, nor the hottest day cooler. */
const cooler = (one: FactName, other: FactName): Bound => ({
  one,
  other,
  by: ["min", "max"],
  exclude: isAbove,
});

const bound: readonly Bound[] = [
  // Cover and open water share the plan area.
  {
    one: "tank.cover",
    other: "tank.openWater",
    by: ["min", "min"],
    exclude: (cover, open) => decimal(cover + open) > 1,
  },
  /* @__PURE__ */ cooler("water.coolest", "water.temperature"),
  /* @__PURE__ */ cooler("water.coolest", "water.hottest"),
  /* @__PURE__ */ cooler("water.temperature", "water.hottest"),
];

function areBoundApart(a: Condition, b: Condition): boolean {
  return bound.some(({ one, other, by, exclude }) => {
    if (a.on !== one || b.on !== other) return false;
    const [least, most] = [endOf(a, by[0]), endOf(b, by[1])];
    return least !== undefined && most !== undefined && exclude(least, most);
  });
}

const endOf = ({ wanted }: Condition, end: End): number | undefined =>
  "oneOf" in wanted ? undefined : wanted[end];

const conditionsOf = (asked: readonly Asking[]) => asked.map(({ condition }) => condition);

/** The greatest least or the least greatest that is asked for. */
function mostAsked(asked: readonly Condition[], end: End): number | undefined {
  let most: number | undefined;
  for (const condition of asked) {
    const figure = endOf(condition, end);
    if (figure === undefined) continue;
    if (most === undefined || (end === "min" ? figure > most : figure < most)) most = figure;
  }
  return most;
}

/** Those that ask for a figure. */
const askingFor = <Each extends Asking>(asked: readonly Each[], end: End, figure: number) =>
  asked.filter(({ condition }) => endOf(condition, end) === figure);

/** Those that ask for more than others allow. */
function apartInNumbers<Each extends Asking>(asked: readonly Each[]): readonly Clash<Each>[] {
  const conditions = conditionsOf(asked);
  const [least, most] = [mostAsked(conditions, "min"), mostAsked(conditions, "max")];
  return least !== undefined && most !== undefined && least > most
    ? [[askingFor(asked, "min", least), askingFor(asked, "max", most)]]
    : [];
}

/** Each two that share no word; where each two share one, but not all of them, each two that differ. */
function apartInWords<Each extends Asking>(asked: readonly Each[]): readonly Clash<Each>[] {
  const worded = asked.filter(({ condition }) => "oneOf" in condition.wanted);
  if (sharedWords(worded.map(({ condition }) => condition))) return [];
  const byWords = new Map<string, Each[]>();
  for (const each of worded) {
    const words = JSON.stringify([...wordsOf(each.condition)].sort());
    byWords.set(words, [...(byWords.get(words) ?? []), each]);
  }
  const distinct = [...byWords.values()];
  const twos = distinct.flatMap((one, index) =>
    distinct.slice(index + 1).map((other): Clash<Each> => [one, other]),
  );
  const strangers = twos.filter(
    ([[one], [other]]) => one && other && !sharedWords([one.condition, other.condition]),
  );
  return strangers.length > 0 ? strangers : twos;
}

/** Whether one word is accepted by all of them. */
function sharedWords(asked: readonly Condition[]): boolean {
  const accepted = asked.map(wordsOf);
  return (
    accepted.length === 0 ||
    (accepted[0] ?? []).some((word) => accepted.every((words) => words.includes(word)))
  );
}

const wordsOf = ({ wanted }: Condition) => ("oneOf" in wanted ? wanted.oneOf : []);
