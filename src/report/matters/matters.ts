import type { Finding, JointCondition, RuleId, Verdict } from "../../compatibility";
import type { FactName } from "../../plan";
import { chasingRules, doerOf, gravestDeeds, isDeed, isLastingHarm } from "./acts";
import { type Alike, alikeIn } from "./alike";
import { ofBothSexes, saysMore } from "./both-sexes";
import { type FindingBy, isBy, isCaution } from "./by-rule";
import { gravestFirst, isFarTooSmall, isOfRoom, isOfSpace, isOfYoung, isTooLong, rankOf } from "./order";
import { hardlyRight, plannedWaterRules, sharedWaterRules, waterOf } from "./water-rules";

/**
 * What may differ in reasons that are told together: whom they fall on; or whom they are about, where they fall on nobody,
 * on their own kind, or on young.
 */
export function overParties(finding: Finding) {
  const whole: object = finding;
  const alike = { ...whole, basis: undefined, traits: undefined, condition: undefined };
  if (isOfYoung(finding)) return { ...alike, from: undefined };
  if (finding.rule === "shyness") return { ...alike, from: undefined };
  if (finding.rule === "season") return { ...alike, to: true, measures: finding.measures?.season };
  if (finding.rule === "oxygen") return { ...alike, from: undefined, measures: oxygenTold(finding) };
  if (finding.weight === "advisory" && isBy(finding, chasingRules))
    return { ...alike, rule: undefined, to: undefined };
  const onOthers = finding.to !== undefined && finding.rule !== "acts-own-kind";
  return onOthers ? { ...alike, to: true } : { ...alike, from: undefined, to: undefined };
}

/** Reasons, the gravest first, each matter once. */
export const reasonsOf = (verdict: Verdict, weight: "blocking" | "advisory"): readonly Alike[] =>
  alikeIn(
    gravestFirst(
      worthTelling(verdict).filter((finding) => (finding.weight === "blocking") === (weight === "blocking")),
    ),
    overParties,
  );

/** Whether nobody can tell in advance, and it would rule the plan out. */
export const couldRuleOut = (finding: Finding) => "couldBe" in finding && finding.couldBe === "blocking";

/** Of room that is hardly less than needed nothing is told where more is asked for anyway. */
const isOfHardlyLess = (finding: Finding) => finding.weight === "advisory" && isOfSpace(finding);

/** What a sentence on oxygen tells of its measures. */
function oxygenTold({ measures = {} }: FindingBy<"oxygen">): object {
  const { air, hours, need } = measures;
  return air || hours || need?.value === "high" ? measures : {};
}

/**
 * What is told of the findings: of what one does to another only the gravest, beside it what nobody can tell, and nothing
 * twice. What asks for something is told with what it asks for, but for who harms whom where the tank is far too small for
 * any talk of its room.
 */
function worthTelling({ findings: all, parties, conditions }: Verdict): readonly Finding[] {
  const findings = ofBothSexes(all);
  const speciesOf = (index: number | undefined) => (index === undefined ? "" : parties[index]?.id);
  const farTooSmall = new Set(all.filter(isFarTooSmall).map(({ from }) => speciesOf(from)));
  const isRoomAsked = conditions.some(isRoom) || farTooSmall.size > 0;
  const towards = ({ from, to }: Finding) => `${speciesOf(from)} ${speciesOf(to ?? from)}`;
  const isTold = gravestDeeds(findings, towards);
  const isDoubt = gravestDeeds(
    findings.filter(({ weight }) => weight !== "restricting"),
    towards,
  );
  const eaten = new Set<string>();
  const blockedWater = new Set<string | undefined>();
  for (const finding of findings) {
    if (finding.rule === "predation" && !isOfYoung(finding)) eaten.add(towards(finding));
    if (finding.weight === "blocking" && isBy(finding, sharedWaterRules))
      blockedWater.add(waterOf[finding.rule]);
  }
  const plantHarmOf = ({ from, measures }: FindingBy<"plants-at-risk" | "planting">) =>
    `${from} ${measures?.harm?.value}`;
  const harmsCompany = new Set(
    findings.flatMap((finding) =>
      isBy(finding, ["planting"]) && finding.weight !== "restricting" ? plantHarmOf(finding) : [],
    ),
  );
  const toldOfBoth = new Set<string>();
  return findings.filter((finding) => {
    if (isCaution(finding.rule) || finding.weight === "favourable") return false;
    if (
      finding.weight === "restricting" &&
      !(farTooSmall.size > 0 && isDeed(finding) && isRoom(finding.condition))
    )
      return false;
    if (isRoomAsked && isOfHardlyLess(finding)) return false;
    if (finding.rule === "plants-at-risk" && harmsCompany.has(plantHarmOf(finding))) return false;
    if (isTooLong(finding) && farTooSmall.size === 1 && farTooSmall.has(speciesOf(finding.from)))
      return false;
    if (isOfYoung(finding)) return !eaten.has(towards(finding));
    if (finding.rule === "conditions-exclude") return !blockedWater.has(finding.measures?.one?.value);
    if (isBy(finding, ["interbreeding", ...sharedWaterRules])) {
      const pair = [finding.from, finding.to].map(speciesOf).sort();
      const figures = Object.values(finding.measures ?? {}).map((figure) => JSON.stringify(figure));
      const key = JSON.stringify([finding.rule, pair, figures.sort()]);
      return !toldOfBoth.has(key) && toldOfBoth.add(key);
    }
    return isTold(finding) || (couldRuleOut(finding) && isDoubt(finding));
  });
}

/**
 * Lasting harm, and the loss of eggs and young, that the tank as planned should keep down, the gravest towards each: with
 * less room or cover it would come.
 */
export function harmPrevented({ findings, met }: Verdict): readonly Alike[] {
  const towards = ({ from, to }: Finding) => `${from} ${to}`;
  const told = new Set(findings.filter(isLastingHarm).map(towards));
  const prevented = ofBothSexes(
    met.filter(
      (finding) =>
        finding.weight === "restricting" &&
        finding.condition.on.startsWith("tank.") &&
        (isLastingHarm(finding) || isBy(finding, ["predation"])) &&
        !told.has(towards(finding)),
    ),
  );
  return alikeIn(gravestFirst(prevented.filter(gravestDeeds(prevented, towards))), overParties);
}

/** What must change: one or several conditions on one matter, with the findings that ask for it. */
export interface Demand {
  readonly conditions: readonly JointCondition[];
  readonly findings: readonly Finding[];
}

/**
 * What must change, the gravest harm first. The length and the floor of the tank are one matter, as is the company that
 * settles the shy, and water that no condition makes right for all is no matter of conditions. Where more of a kind are to
 * join, so is the sex that those there have already and must have.
 */
export function demandsOf(verdict: Verdict): readonly Demand[] {
  const { conditions, findings } = verdict;
  const hopeless = hopelessFacts(verdict);
  const demands = new Map<string, Demand>();
  for (const condition of conditions.filter(({ on }) => !hopeless.has(on))) {
    const { on, of, wanted } = condition;
    const own = on === "group.company" ? on : `${on} ${of} ${JSON.stringify(wanted)}`;
    const key = isRoom(condition) ? "room" : own;
    const known = demands.get(key);
    const asking = condition.findings.flatMap((index) => findings[index] ?? []);
    demands.set(key, {
      conditions: [...(known?.conditions ?? []), condition],
      findings: [...(known?.findings ?? []), ...asking],
    });
  }
  const rank = (demand: Demand) => Math.min(...demand.findings.map(rankOf));
  return [...demands.values(), ...sexesOfJoining(verdict)].sort((a, b) => rank(a) - rank(b));
}

/** Of which sex those must be that are to join others: that of these, who meet the condition so far. */
const sexesOfJoining = ({ conditions, met }: Verdict): readonly Demand[] =>
  conditions
    .filter(({ on }) => on === "group.count")
    .flatMap(({ of }) => {
      const asking = met.flatMap((finding) =>
        finding.weight === "restricting" &&
        finding.condition.on === "group.sex" &&
        finding.condition.of === of
          ? [finding]
          : [],
      );
      return asking
        .slice(0, 1)
        .map(({ condition }) => ({ conditions: [{ ...condition, findings: [] }], findings: asking }));
    });

export const isRoom = ({ on }: Pick<JointCondition, "on">) =>
  on === "tank.longestRun" || on === "tank.footprint";

/** Facts of which something that blocks says that no figure suits all. */
function hopelessFacts({ findings }: Verdict): ReadonlySet<string> {
  return new Set(
    findings.flatMap((finding) => {
      if (finding.weight !== "blocking") return [];
      if (finding.rule === "conditions-exclude")
        return [finding.measures?.one, finding.measures?.other].flatMap((fact) => fact?.value ?? []);
      return isBy(finding, sharedWaterRules) ? waterOf[finding.rule] : [];
    }),
  );
}

/**
 * The reasons of a demand that need telling: those that ask for the most, and whatever they ask for what one does to another,
 * of that only the gravest; of a party's water not both rules, and of a number not that it spreads chases, where company is
 * needed anyway. Reasons of room are told with the room.
 */
export function reasonsFor({ conditions, findings: all }: Demand): readonly Alike[] {
  const needsCompany = all.some(({ rule }) => rule === "group-size");
  const findings = all.filter(
    (finding) =>
      !all.some((other) => saysMore(other, finding)) && !(needsCompany && finding.rule === "acts-own-kind"),
  );
  const planned = findings.filter((finding) => isBy(finding, plannedWaterRules));
  const telling = planned.length > 0 ? planned : findings.filter((finding) => !isOfRoom(finding));
  const isDecisive = (finding: Finding) => conditions.some((condition) => asksAsMuch(finding, condition));
  const asking = ofBothSexes(
    telling.some(isDecisive) ? telling.filter((finding) => isDeed(finding) || isDecisive(finding)) : telling,
  );
  const isTold = gravestDeeds(asking, ({ from, to = from }) => `${from} ${to}`);
  return alikeIn(gravestFirst(asking.filter(isTold)), overParties);
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

/** The facts that are not as the plan's animals ask, or hardly. */
export function wrongFacts({ conditions, findings }: Verdict): ReadonlySet<FactName> {
  const lacksRoom = findings.some(
    (finding) => (finding.weight === "blocking" && isOfRoom(finding)) || isOfHardlyLess(finding),
  );
  const tooMany = findings.some(({ rule, weight }) => rule === "group-size" && weight === "advisory");
  return new Set([
    ...conditions.map(({ on }) => on),
    ...findings.flatMap((finding) => hardlyRight(finding) ?? []),
    ...(lacksRoom ? (["tank.longestRun", "tank.footprint"] as const) : []),
    ...(tooMany ? (["group.count"] as const) : []),
  ]);
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
const sameCareRules = [
  "sensitive",
  "plants-at-risk",
  "lid",
  "interbreeding",
  "sex-ratio",
] as const satisfies readonly RuleId[];

/**
 * Matters of one sort, to be told in one sentence: what needs the same care, who eats young, and what the same animals do
 * to others. The others stay by themselves.
 */
export function sentencesOf(matters: readonly Alike[]): readonly (readonly Alike[])[] {
  const sorts = new Map<string, Alike[]>();
  for (const [index, alike] of matters.entries()) {
    const [finding] = alike;
    const isOne = isOfYoung(finding) || isBy(finding, sameCareRules);
    const isAct = isBy(finding, chasingRules);
    const key = isOne ? finding.rule : isAct ? `acts ${finding.from} ${doerOf(finding)}` : String(index);
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
  return alikeIn(sort.flat(), (finding) => {
    const alike = sort.find((one) => one.includes(finding));
    const of = finding.rule === "predation" && finding.measures?.of;
    return { of, eaters: alike && eaters(alike) };
  });
}
