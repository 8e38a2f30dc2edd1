import { decimal } from "../decimal";
import type { FactName } from "../plan";
import { jointCondition } from "../plan/inner";
import { overlap, type PartialRange } from "../ranges";
import type { AimedCondition, AnyFinding } from "./engine/rule/finding";
import type { JointCondition } from "./verdict";

/** A condition that is being joined, with the findings that ask for it so far. */
interface Joining {
  condition: AimedCondition;
  readonly findings: number[];
}

/**
 * The conditions of all findings; of those about one fact and party that can be met together one that meets all, with
 * what to aim at: what all that are kept in it share, else the middle of what is wanted.
 */
export function jointConditions(findings: readonly AnyFinding[]): readonly JointCondition[] {
  const joint: Joining[] = [];
  const byFact = new Map<string, Joining[]>();
  for (const [index, finding] of findings.entries()) {
    if (finding.weight !== "restricting") continue;
    const { condition } = finding;
    const fact = `${condition.on} ${condition.of}`;
    const known = byFact.get(fact) ?? [];
    if (joined(known, condition, index)) continue;
    const further = { condition, findings: [index] };
    joint.push(further);
    byFact.set(fact, [...known, further]);
  }
  return joint.map(({ condition, findings: asking }) => ({ ...aimed(condition), findings: asking }));
}

/** Whether one of the conditions about a fact could be joined with another. */
function joined(known: readonly Joining[], condition: AimedCondition, index: number): boolean {
  for (const joining of known) {
    const both = jointCondition(joining.condition, condition);
    if (!both) continue;
    const aim = sharedAim(joining.condition.aim, condition.aim);
    joining.condition = { ...both, ...(aim && { aim }) };
    joining.findings.push(index);
    return true;
  }
  return false;
}

/** What two aims share; where they share nothing, an aim at nothing, which the middle of what is wanted replaces. */
function sharedAim(a: PartialRange | undefined, b: PartialRange | undefined): PartialRange | undefined {
  if (!a || !b) return a ?? b;
  if (Object.keys(a).length === 0) return a;
  return overlap(a, b) ?? {};
}

/** A condition with an aim within what is wanted, if it has one. */
function aimed({ aim, ...condition }: AimedCondition): AimedCondition {
  const { wanted } = condition;
  if (!aim || "oneOf" in wanted) return condition;
  const { min, max } = wanted;
  const span = { ...(min !== undefined && { min }), ...(max !== undefined && { max }) };
  const shared = Object.keys(aim).length > 0 ? overlap(aim, span) : undefined;
  if (shared) return { ...condition, aim: shared };
  if (min === undefined || max === undefined) return condition;
  const middle = decimal((min + max) / 2);
  return { ...condition, aim: { min: middle, max: middle } };
}

/** Of the joint conditions those that some of the findings ask for, and not only what is met. */
export const askedBy = (conditions: readonly JointCondition[], findings: number): readonly JointCondition[] =>
  conditions.flatMap((condition) => {
    const asking = condition.findings.filter((index) => index < findings);
    return asking.length > 0 ? [{ ...condition, findings: asking }] : [];
  });

/** Whatever asks for a condition. */
interface Asking {
  readonly condition: AimedCondition;
}

/** Two conditions that no plan meets at once, each with all that ask for it. */
export type Clash<Each extends Asking> = readonly [readonly Each[], readonly Each[]];

/**
 * Conditions that exclude each other: two about one fact of one party, or about facts bound to each other. Those are named
 * that ask for most, and so the same ones in whatever order all are asked.
 */
export function clashes<Each extends Asking>(asking: readonly Each[]): readonly Clash<Each>[] {
  const byFact = new Map<string, Each[]>();
  for (const each of asking) {
    const { on, of } = each.condition;
    if (on === "group.offerings") continue; // Several foods can be given.
    const fact = `${on} ${of}`;
    const known = byFact.get(fact);
    if (known) known.push(each);
    else byFact.set(fact, [each]);
  }
  const about = (on: FactName) => byFact.get(`${on} undefined`) ?? [];
  const ofOneFact = [...byFact.values()].flatMap((asked) => [
    ...apart(mostAsked(asked, "min"), mostAsked(asked, "max"), (least, most) => least > most),
    ...apartInWords(asked),
  ]);
  const filled = apart(
    mostAsked(about("tank.cover"), "min"),
    mostAsked(about("tank.openWater"), "min"),
    (cover, open) => decimal(cover + open) > 1,
  );
  const outOfSeason = warmth.flatMap((cooler, index) =>
    warmth
      .slice(index + 1)
      .flatMap((warmer) =>
        apart(
          mostAsked(about(cooler), "min"),
          mostAsked(about(warmer), "max"),
          (least, most) => least > most,
        ),
      ),
  );
  return [...ofOneFact, ...filled, ...outOfSeason];
}

/** The temperatures of a plan: the coolest season is no warmer than the water is, nor the hottest day cooler. */
const warmth = ["water.coolest", "water.temperature", "water.hottest"] as const;

/** The greatest least or the least greatest that is asked of a fact, and who asks for it. */
interface Most<Each> {
  readonly figure: number;
  readonly by: readonly Each[];
}

function mostAsked<Each extends Asking>(asked: readonly Each[], end: "min" | "max"): Most<Each> | undefined {
  const endOf = ({ condition: { wanted } }: Each) => ("oneOf" in wanted ? undefined : wanted[end]);
  const figures = asked.map(endOf).filter((figure) => figure !== undefined);
  if (figures.length === 0) return undefined;
  const figure = end === "min" ? Math.max(...figures) : Math.min(...figures);
  return { figure, by: asked.filter((each) => endOf(each) === figure) };
}

/** The two, if they exclude each other. */
function apart<Each extends Asking>(
  one: Most<Each> | undefined,
  other: Most<Each> | undefined,
  exclude: (one: number, other: number) => boolean,
): readonly Clash<Each>[] {
  return one && other && exclude(one.figure, other.figure) ? [[one.by, other.by]] : [];
}

/** Each two that share no word; where each two share one, but not all of them, each two that differ. */
function apartInWords<Each extends Asking>(asked: readonly Each[]): readonly Clash<Each>[] {
  const byWords = new Map<string, Each[]>();
  for (const each of asked) {
    const { wanted } = each.condition;
    if (!("oneOf" in wanted)) continue;
    const words = JSON.stringify([...wanted.oneOf].sort());
    byWords.set(words, [...(byWords.get(words) ?? []), each]);
  }
  const distinct = [...byWords.values()];
  const twos = distinct.flatMap((one, index) =>
    distinct.slice(index + 1).map((other): Clash<Each> => [one, other]),
  );
  const strangers = twos.filter(([[one], [other]]) => one && other && !sharedWords([one, other]));
  return strangers.length > 0 || sharedWords(asked) ? strangers : twos;
}

/** Whether one word is accepted by all of them. */
function sharedWords(asked: readonly Asking[]): boolean {
  const accepted = asked.map(({ condition: { wanted } }) => ("oneOf" in wanted ? wanted.oneOf : []));
  return (
    accepted.length === 0 ||
    (accepted[0] ?? []).some((word) => accepted.every((words) => words.includes(word)))
  );
}
