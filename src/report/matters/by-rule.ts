import type { Finding, Measures, RuleId } from "../../compatibility";

/** A finding by one of some rules of the library. */
export type FindingBy<Id extends RuleId> = Extract<Finding, { readonly rule: Id }>;

/** Whether a finding is by one of some rules. */
export const isBy = <Id extends RuleId>(finding: Finding, rules: readonly Id[]): finding is FindingBy<Id> =>
  rules.some((rule) => rule === finding.rule);

/** Whether a rule tells of people, floors or the law. */
export const isCaution = (rule: string): boolean => rule.startsWith("caution-");

type NamesOf<OfRule> = OfRule extends unknown ? keyof OfRule : never;

/** What a measure of any rule of the library is called. */
export type MeasureName = NamesOf<Measures[RuleId]>;

const plannedNames = ["planned", "hottest", "coolest"] as const satisfies readonly MeasureName[];

/** Whether a finding tells what is planned. */
export const tellsPlanned = ({ measures = {} }: Finding) => plannedNames.some((name) => name in measures);

/** Whether a finding tells a law of the place where the tank stands. */
export const isOfLawThere = (finding: Finding): boolean =>
  finding.rule === "caution-law" && finding.measures?.jurisdiction !== undefined;
