import { version } from "../../package.json";
import { OutsideDomainError } from "../errors";
import { type Basis, type Fact, type TraitPath, traitPaths, traitTable } from "../species";
import { splitPath } from "../species/traits";
import type { AssessedPlan } from "./assessed-plan";
import type { Finding, Judged, Weight } from "./finding";
import { type AssessedParty, verdictParty } from "./party";
import { checkCondition } from "./plan-facts";
import type { PairRule, PlanRule, Rule, Seen } from "./rule";
import { standingValues } from "./standing-values";
import type { ThresholdValues } from "./thresholds";
import type { OpenQuestion, Verdict } from "./verdict";

type Facts = Readonly<Partial<Record<TraitPath, Fact<unknown>>>>;
type View = Seen<TraitPath, TraitPath>;
type Placed = Judged<Weight, number>;

/** A party with its facts by path, looked up once. */
export interface Subject {
  readonly party: AssessedParty;
  readonly index: number;
  readonly facts: Facts;
}

/** One side of a rule: a party and the traits the rule reads of it. */
interface Side {
  readonly subject: Subject;
  readonly needs: readonly TraitPath[];
  readonly uses: readonly TraitPath[];
}

/** What one rule says of one party or pair. */
export interface Judgement {
  readonly findings: readonly Finding[];
  readonly met: readonly Finding[];
  readonly open: readonly OpenQuestion[];
  /** The least and greatest gravity over what is disputed, missing or not given. */
  readonly least: number;
  readonly greatest: number;
  /** An essential trait is missing that could block or restrict. */
  readonly undetermined: boolean;
}

const gravity: Readonly<Record<Weight, number>> = { favourable: 0, advisory: 0, restricting: 1, blocking: 2 };
const outcomes = ["suitable", "conditional", "unsuitable"] as const;

const keys = /* @__PURE__ */ traitPaths.map((path) => [path, ...splitPath(path)] as const);

/** A party as the engine reads it. */
export function subjectOf(party: AssessedParty, index: number): Subject {
  const sections = party.species as unknown as Record<string, Record<string, Fact<unknown>> | undefined>;
  const facts: Partial<Record<TraitPath, Fact<unknown>>> = {};
  for (const [path, section, name] of keys) {
    const fact = sections[section]?.[name];
    if (fact) facts[path] = fact;
  }
  return { party, index, facts };
}

/** Judges a pair of parties by one rule. */
export function judgePair(
  rule: PairRule,
  from: Subject,
  to: Subject,
  thresholds: ThresholdValues,
  plan?: AssessedPlan,
): Judgement {
  const sides = [
    { subject: from, needs: rule.needs.from, uses: rule.uses?.from ?? [] },
    { subject: to, needs: rule.needs.to, uses: rule.uses?.to ?? [] },
  ];
  return judge(rule, sides, ([a, b]) => rule.judge({ from: a as View, to: b as View, thresholds }), plan);
}

/** Judges a plan by one rule: each of its groups, or the plan as a whole. */
export function judgePlan(
  rule: PlanRule,
  subjects: readonly Subject[],
  thresholds: ThresholdValues,
  plan: AssessedPlan,
): readonly Judgement[] {
  if (rule.way === "once") return [judge(rule, [], () => rule.judge({ plan, thresholds }), plan)];
  return subjects.map((subject) => {
    const side = { subject, needs: rule.needs.from, uses: rule.uses?.from ?? [] };
    return judge(rule, [side], ([from]) => rule.judge({ from: from as View, plan, thresholds }), plan);
  });
}

/** Runs a rule on the adopted values, and for the bounds on every combination of the standing ones. */
function judge(
  rule: Rule,
  sides: readonly Side[],
  run: (views: readonly View[]) => readonly Judged[],
  plan: AssessedPlan | undefined,
): Judgement {
  const couldBe = gravest(rule.mayYield);
  const missing = sides.flatMap(({ subject, needs }) => unknown(rule, subject, needs, couldBe));
  if (missing.length > 0) {
    const essential = missing.some(({ trait }) => trait && traitTable[trait].essential);
    const open = gravity[couldBe] > 0 ? missing : [];
    return {
      findings: [],
      met: [],
      open,
      least: 0,
      greatest: gravity[couldBe],
      undetermined: essential && open.length > 0,
    };
  }
  try {
    return judgeKnown(rule, sides, run, plan);
  } catch (error) {
    if (!(error instanceof OutsideDomainError)) throw error;
    const open = [
      { rule: rule.id, ...whom(sides.slice(0, 1), "of"), reason: "outside-domain" as const, couldBe },
    ];
    return { findings: [], met: [], open, least: 0, greatest: gravity[couldBe], undetermined: false };
  }
}

function judgeKnown(
  rule: Rule,
  sides: readonly Side[],
  run: (views: readonly View[]) => readonly Judged[],
  plan: AssessedPlan | undefined,
): Judgement {
  const [adopted, ...others] = combinations(sides);
  const judge = (views: readonly View[]) => run(views).map((judged) => placed(judged, sides));
  const found = judge(adopted as readonly View[]);
  const states = found.map((judged) => stateOf(judged, plan));
  let { least, greatest } = span(found, states);
  for (const views of others) {
    const judged = judge(views);
    const other = span(
      judged,
      judged.map((each) => stateOf(each, plan)),
    );
    least = Math.min(least, other.least);
    greatest = Math.max(greatest, other.greatest);
  }
  const notGiven = found.filter((_, index) => states[index] === "not-given");
  const unused = sides.flatMap(({ subject, uses }) => unknown(rule, subject, uses, weightOf(greatest)));
  if (unused.length > 0) least = 0;
  const disputed = greatest > least ? sides.flatMap((side) => disputes(rule, side, weightOf(greatest))) : [];
  const finding = found.length > 0 ? complete(rule, sides) : undefined;
  return {
    findings: found
      .filter((_, index) => states[index] !== "met")
      .map((judged) => ({ ...judged, ...finding })) as Finding[],
    met: found
      .filter((_, index) => states[index] === "met")
      .map((judged) => ({ ...judged, ...finding })) as Finding[],
    open:
      greatest > least
        ? [...unused, ...disputed, ...notGiven.flatMap((judged) => inputOf(rule, judged))]
        : [],
    least,
    greatest,
    undetermined: false,
  };
}

/** The views of every side, for each combination of standing values; the adopted ones first. */
function combinations(sides: readonly Side[]): readonly (readonly View[])[] {
  return sides.reduce<readonly (readonly View[])[]>(
    (done, side) => {
      const views = viewsOf(side);
      return done.flatMap((before) => views.map((view) => [...before, view]));
    },
    [[]],
  );
}

/** A party with the traits a rule declares: once with the adopted values, then with each combination of others. */
function viewsOf({ subject, needs, uses }: Side): readonly View[] {
  let views: Record<string, unknown>[] = [{ party: subject.party }];
  for (const path of [...needs, ...uses]) {
    const fact = subject.facts[path];
    if (!fact) continue;
    const values = standingValues(path, fact);
    if (values.length === 1) for (const view of views) view[path] = fact.value;
    else views = views.flatMap((view) => values.map((value) => ({ ...view, [path]: value })));
  }
  return views as unknown as readonly View[];
}

/** A judgement with its condition about a party by index. */
function placed(judged: Judged, sides: readonly Side[]): Placed {
  if (judged.weight !== "restricting") return judged;
  const { of, ...condition } = judged.condition;
  const side = of && sides[of === "from" ? 0 : 1];
  return { ...judged, condition: side ? { ...condition, of: side.subject.index } : condition };
}

/** How a finding stands in a plan. Without a plan every finding stands. */
function stateOf(judged: Placed, plan: AssessedPlan | undefined) {
  if (!plan || judged.weight !== "restricting") return "unmet";
  return checkCondition(judged.condition, plan);
}

function span(found: readonly Placed[], states: readonly ReturnType<typeof stateOf>[]) {
  let [least, greatest] = [0, 0];
  for (const [index, { weight }] of found.entries()) {
    if (states[index] !== "met") greatest = Math.max(greatest, gravity[weight]);
    if (states[index] === "unmet") least = Math.max(least, gravity[weight]);
  }
  return { least, greatest };
}

function unknown(
  rule: Rule,
  subject: Subject,
  paths: readonly TraitPath[],
  couldBe: Weight,
): readonly OpenQuestion[] {
  return paths
    .filter((path) => !subject.facts[path])
    .map((trait) => ({ rule: rule.id, of: subject.index, trait, reason: "missing", couldBe }));
}

function disputes(rule: Rule, { subject, needs, uses }: Side, couldBe: Weight): readonly OpenQuestion[] {
  return [...needs, ...uses]
    .filter((path) => subject.facts[path] && standingValues(path, subject.facts[path]).length > 1)
    .map((trait) => ({ rule: rule.id, of: subject.index, trait, reason: "disputed", couldBe }));
}

function inputOf(rule: Rule, judged: Placed): readonly OpenQuestion[] {
  if (judged.weight !== "restricting") return [];
  const { on, of } = judged.condition;
  return [
    {
      rule: rule.id,
      ...(of !== undefined && { of }),
      input: on,
      reason: "not-given",
      couldBe: judged.weight,
    },
  ];
}

/** What the engine adds to the findings of a rule. */
function complete(rule: Rule, sides: readonly Side[]) {
  const facts = sides.flatMap(({ subject, needs, uses }) =>
    [...needs, ...uses].flatMap((path) =>
      subject.facts[path] ? [{ path, basis: subject.facts[path].basis }] : [],
    ),
  );
  const bases = facts.map(({ basis }) => basis);
  return {
    rule: rule.id,
    ...whom(sides, "from", "to"),
    ...(bases.length > 0 && { basis: weakestOf(bases) }),
    traits: [...new Set(facts.map(({ path }) => path))],
  };
}

function whom(sides: readonly Side[], ...names: readonly string[]): Record<string, number> {
  return Object.fromEntries(sides.map(({ subject }, index) => [names[index], subject.index]));
}

function weakestOf(bases: readonly Basis[]): Basis {
  const strength: readonly Basis[] = ["published", "curated", "memory", "common-practice"];
  return bases.reduce((weak, basis) => (strength.indexOf(basis) > strength.indexOf(weak) ? basis : weak));
}

function gravest(weights: readonly Weight[]): Weight {
  return weights.reduce((worst, weight) => (gravity[weight] > gravity[worst] ? weight : worst), "advisory");
}

function weightOf(grade: number): Weight {
  return (["advisory", "restricting", "blocking"] as const)[grade] ?? "blocking";
}

/** Puts the judgements of all rules together. */
export function verdictOf(
  subjects: readonly Subject[],
  judgements: readonly Judgement[],
  rules: readonly Rule[],
  thresholds: ThresholdValues,
): Verdict {
  const findings = judgements.flatMap((judgement) => judgement.findings);
  const adopted = Math.max(0, ...findings.map(({ weight }) => gravity[weight]));
  const undetermined = adopted < gravity.blocking && judgements.some((judgement) => judgement.undetermined);
  const outcome = (grade: number) => outcomes[grade] ?? "unsuitable";
  return {
    outcome: undetermined ? "undetermined" : outcome(adopted),
    bounds: {
      atBest: outcome(Math.max(0, ...judgements.map(({ least }) => least))),
      atWorst: outcome(Math.max(0, ...judgements.map(({ greatest }) => greatest))),
    },
    parties: subjects.map(({ party }) => verdictParty(party)),
    findings,
    met: judgements.flatMap((judgement) => judgement.met),
    open: judgements
      .flatMap((judgement) => judgement.open)
      .sort((a, b) => gravity[b.couldBe] - gravity[a.couldBe]),
    made: { version, rules: rules.map(({ id }) => id), thresholds },
  };
}
