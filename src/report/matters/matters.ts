import type { Finding, JointCondition, RuleId, Verdict } from "../../compatibility";
import type { FactName } from "../../plan";
import type { Alike } from "../describe/teller";
import { ofBothSexes } from "./both-sexes";
import { gravestFirst, isFarTooSmall, isOfRoom, isOfYoung, isTooLong, rankOf } from "./order";

/** Findings that differ only in what is left out of account are told in one sentence. */
export function folded(
  findings: readonly Finding[],
  apartFrom: (finding: Finding) => object,
): readonly Alike[] {
  const alike = new Map<string, [Finding, ...Finding[]]>();
  for (const finding of findings) {
    const key = JSON.stringify(apartFrom(finding));
    const known = alike.get(key);
    if (known) known.push(finding);
    else alike.set(key, [finding]);
  }
  return [...alike.values()];
}

/**
 * What may differ in reasons that are told together: whom they fall on; or whom they are about, where they fall on nobody,
 * on their own kind, or on young.
 */
function overParties(finding: Finding) {
  const whole: object = finding;
  const alike = { ...whole, basis: undefined, traits: undefined, condition: undefined };
  if (isOfYoung(finding)) return { ...alike, from: undefined };
  if (finding.rule === "shyness") return { ...alike, from: undefined };
  if (finding.rule === "oxygen") return { ...alike, from: undefined, measures: oxygenTold(finding) };
  if (finding.weight === "advisory" && chasing.includes(finding.rule))
    return { ...alike, rule: undefined, to: undefined };
  const onOthers = finding.to !== undefined && finding.rule !== "acts-own-kind";
  return onOthers ? { ...alike, to: true } : { ...alike, from: undefined, to: undefined };
}

/** Reasons, the gravest first, each matter once. */
export const reasonsOf = (verdict: Verdict, weight: "blocking" | "advisory"): readonly Alike[] =>
  folded(gravestFirst(worthTelling(verdict).filter((finding) => finding.weight === weight)), overParties);

/** Of room that is hardly less than needed nothing is told where more is asked for anyway. */
const isOfHardlyLess = ({ rule, weight }: Finding) => weight === "advisory" && roomRules.includes(rule);

const roomRules: readonly string[] = ["longest-run", "footprint", "zones"] satisfies readonly RuleId[];

/** What a sentence on oxygen tells of its measures. */
function oxygenTold({ measures = {} }: Finding): object {
  const { need } = measures as { readonly need?: { readonly value: string } };
  return "air" in measures || "hours" in measures || need?.value === "high" ? measures : {};
}

/** What animals do to their own kind and to others alike is told in one sentence. */
const chasing: readonly string[] = ["acts-own-kind", "acts-others"];

const acts: readonly string[] = ["acts-own-kind", "acts-look-alike", "acts-others", "fin-nipping"];
const deeds = ["kills", "bites", "nips-fins", "rasps-mucus", "chases", "robs-food"];

const deedOf = ({ rule, measures = {} }: Finding): string => {
  if (rule === "fin-nipping") return "nips-fins";
  const { act } = measures as { readonly act?: { readonly value: string } };
  return act?.value ?? "";
};

const weights = ["blocking", "restricting", "advisory", "favourable"];

/** How grave a deed is, the gravest first. */
const graveness = (finding: Finding) =>
  10 * weights.indexOf(finding.weight) + Math.max(deeds.indexOf(deedOf(finding)), 0);

/** Whether a finding tells no deed, or the gravest of one towards another. */
function gravestDeeds(
  findings: readonly Finding[],
  towards: (finding: Finding) => string,
): (finding: Finding) => boolean {
  const gravest = new Map<string, Finding>();
  for (const finding of findings.filter(({ rule }) => acts.includes(rule))) {
    const known = gravest.get(towards(finding));
    if (!known || graveness(finding) < graveness(known)) gravest.set(towards(finding), finding);
  }
  return (finding) => !acts.includes(finding.rule) || gravest.get(towards(finding)) === finding;
}

/** The facts that the pair rules of water are about, and those that join conditions on it. */
const waterOf: Readonly<Record<string, FactName>> = {
  temperature: "water.temperature",
  ph: "water.pH",
  "general-hardness": "water.generalHardness",
  salinity: "water.salinity",
};

/** What is told of the findings: of what one does to another only the gravest, and nothing twice. */
function worthTelling({ findings: all, parties, conditions }: Verdict): readonly Finding[] {
  const findings = ofBothSexes(all);
  const speciesOf = (index: number | undefined) => (index === undefined ? "" : parties[index]?.id);
  const farTooSmall = new Set(all.filter(isFarTooSmall).map(({ from }) => speciesOf(from)));
  const isRoomAsked = conditions.some(isRoom) || farTooSmall.size > 0;
  const towards = ({ from, to }: Finding) => `${speciesOf(from)} ${speciesOf(to ?? from)}`;
  const gravest = gravestDeeds(findings, towards);
  const eaten = new Set<string>();
  const blockedWater = new Set<string>();
  for (const finding of findings) {
    const key = towards(finding);
    if (finding.rule === "predation" && !("of" in (finding.measures ?? {}))) eaten.add(key);
    if (finding.weight === "blocking") blockedWater.add(waterOf[finding.rule] ?? "");
  }
  const crossed = new Set<string>();
  return findings.filter((finding) => {
    const { rule, weight, measures = {} } = finding;
    const key = towards(finding);
    if (rule.startsWith("caution-") || weight === "restricting") return false;
    if (isRoomAsked && isOfHardlyLess(finding)) return false;
    if (isTooLong(finding) && farTooSmall.has(speciesOf(finding.from))) return false;
    if (acts.includes(rule)) return gravest(finding);
    if (rule === "predation" && "of" in measures) return !eaten.has(key);
    if (rule === "conditions-exclude") {
      const { one } = measures as { readonly one?: { readonly value: string } };
      return !blockedWater.has(one?.value ?? "-");
    }
    if (rule === "interbreeding") {
      const pair = [finding.from, finding.to].map(speciesOf).sort().join(" ");
      const first = !crossed.has(pair);
      crossed.add(pair);
      return first;
    }
    return true;
  });
}

/** What must change: one or several conditions on one matter, with the findings that ask for it. */
export interface Demand {
  readonly conditions: readonly JointCondition[];
  readonly findings: readonly Finding[];
}

/**
 * What must change, the gravest harm first. The length and the floor of the tank are one matter, and water that no
 * condition makes right for all is no matter of conditions.
 */
export function demandsOf(verdict: Verdict): readonly Demand[] {
  const { conditions, findings } = verdict;
  const hopeless = hopelessFacts(verdict);
  const demands = new Map<string, Demand>();
  for (const condition of conditions.filter(({ on }) => !hopeless.has(on))) {
    const key = isRoom(condition)
      ? "room"
      : `${condition.on} ${condition.of} ${JSON.stringify(condition.wanted)}`;
    const known = demands.get(key);
    const asking = condition.findings.flatMap((index) => findings[index] ?? []);
    demands.set(key, {
      conditions: [...(known?.conditions ?? []), condition],
      findings: [...(known?.findings ?? []), ...asking],
    });
  }
  const rank = (demand: Demand) => Math.min(...demand.findings.map(rankOf));
  return [...demands.values()].sort((a, b) => rank(a) - rank(b));
}

export const isRoom = ({ on }: JointCondition) => on === "tank.longestRun" || on === "tank.footprint";

/** Facts of which something that blocks says that no figure suits all. */
function hopelessFacts({ findings }: Verdict): ReadonlySet<string> {
  return new Set(
    findings
      .filter(({ weight }) => weight === "blocking")
      .flatMap(({ rule, measures = {} }) => {
        const { one } = measures as { readonly one?: { readonly value: string } };
        return rule === "conditions-exclude" ? (one?.value ?? []) : (waterOf[rule] ?? []);
      }),
  );
}

/**
 * The reasons of a demand that need telling: those that ask for the most, of a party's water not both rules, and of what
 * one does to another only the gravest.
 */
export function reasonsFor({ conditions, findings: all }: Demand): readonly Alike[] {
  const findings = all.filter((finding) => !all.some((other) => saysMore(other, finding)));
  const planned = findings.filter(({ rule }) => rule.startsWith("water-"));
  const telling = planned.length > 0 ? planned : findings.filter((finding) => !isOfRoom(finding));
  const decisive = telling.filter((finding) =>
    conditions.some((condition) => asksAsMuch(finding, condition)),
  );
  const asking = ofBothSexes(decisive.length > 0 ? decisive : telling);
  const isTold = gravestDeeds(asking, ({ from, to = from }) => `${from} ${to}`);
  return folded(gravestFirst(asking.filter(isTold)), overParties);
}

/** Whether a finding says of both sexes what another says of one. */
function saysMore(one: Finding, other: Finding): boolean {
  if (one.rule !== other.rule || one.from !== other.from || one.to !== other.to) return false;
  const { doer, ...rest } = (other.measures ?? {}) as Readonly<Record<string, unknown>>;
  return doer !== undefined && JSON.stringify(one.measures ?? {}) === JSON.stringify(rest);
}

/** Whether a finding asks for as much as all together do; of water each has its say. */
function asksAsMuch(finding: Finding, { on, wanted }: JointCondition): boolean {
  if (finding.weight !== "restricting" || finding.condition.on !== on) return false;
  if (on.startsWith("water.") || "oneOf" in wanted) return true;
  const asked = finding.condition.wanted;
  if ("oneOf" in asked) return true;
  return (
    (asked.min !== undefined && asked.min === wanted.min) ||
    (asked.max !== undefined && asked.max === wanted.max)
  );
}

/** The facts that are not as the plan's animals ask. */
export function wrongFacts({ conditions, findings }: Verdict): ReadonlySet<FactName> {
  const tooSmall = findings.some((finding) => finding.weight === "blocking" && isOfRoom(finding));
  return new Set([
    ...conditions.map(({ on }) => on),
    ...(tooSmall ? (["tank.longestRun", "tank.footprint"] as const) : []),
  ]);
}

const quarrels: ReadonlySet<RuleId> = new Set<RuleId>([
  "acts-own-kind",
  "acts-look-alike",
  "acts-others",
  "fin-nipping",
  "territories",
  "territory-contest",
]);

/** Whether somebody may chase or bite another, not for food alone. */
export const mayQuarrel = ({ findings }: Verdict) =>
  findings.some(
    (finding) =>
      finding.weight !== "favourable" && quarrels.has(finding.rule as RuleId) && !isAtFood(finding),
  );

function isAtFood(finding: Finding): boolean {
  const { when } = (finding.measures ?? {}) as { readonly when?: { readonly value: string } };
  return when?.value === "feeding" || deedOf(finding) === "robs-food";
}

/** The facts that are as the plan's animals ask, each once; that fresh water is fresh goes without saying. */
export function rightFacts(verdict: Verdict): readonly FactName[] {
  const wrong = wrongFacts(verdict);
  const asked = verdict.met.flatMap((finding) => {
    if (finding.weight !== "restricting") return [];
    const { on, wanted } = finding.condition;
    const isSaltless = on === "water.salinity" && "max" in wanted && !wanted.min;
    return isSaltless ? [] : [on];
  });
  return [...new Set(asked)].filter((fact) => !wrong.has(fact));
}

/** Rules of which all that is worth knowing is told in one sentence. */
const gatheredRules: readonly string[] = ["sensitive", "plants-at-risk", "lid", "interbreeding", "sex-ratio"];

/**
 * Matters of one sort, to be told in one sentence: what needs the same care, who eats young, and what the same animals do
 * to others. The others stay by themselves.
 */
export function gathered(matters: readonly Alike[]): readonly (readonly Alike[])[] {
  const sorts = new Map<string, Alike[]>();
  for (const [index, alike] of matters.entries()) {
    const [finding] = alike;
    const { rule, measures = {} } = finding;
    const { doer } = measures as { readonly doer?: { readonly value: string } };
    const isOne = isOfYoung(finding) || gatheredRules.includes(rule);
    const isAct = chasing.includes(rule);
    const key = isOne ? rule : isAct ? `acts ${finding.from} ${doer?.value}` : String(index);
    sorts.set(key, [...(sorts.get(key) ?? []), alike]);
  }
  const about = (alike: Alike) => alike.map(({ from }) => from).join(" ");
  return [...sorts.values()].map(youngTogether).map((sort) => {
    const order = [...new Set(sort.map(about))];
    return [...sort].sort((a, b) => order.indexOf(about(a)) - order.indexOf(about(b)));
  });
}

/** The young of several that the same animals eat are one matter. */
function youngTogether(sort: readonly Alike[]): readonly Alike[] {
  if (!sort.every(([finding]) => isOfYoung(finding))) return sort;
  const eaters = (alike: Alike) => [...new Set(alike.map(({ from }) => from))].sort().join(" ");
  const found = folded(sort.flat(), (finding) => {
    const alike = sort.find((one) => one.includes(finding));
    const { of } = (finding.measures ?? {}) as { readonly of?: unknown };
    return { of, eaters: alike && eaters(alike) };
  });
  return found;
}
