import type { Basis } from "../../../species";
import { weakestBasis } from "../../../species/inner";
import type { AnyFinding } from "../rule/finding";
import { measured } from "../rule/measures";
import type { Rule } from "../rule/rule";
import { basisOf, type Reading } from "../sides/subject";
import { couldBe, type Standing } from "./standing";

type FieldsOf<Finding> = Finding extends unknown ? keyof Finding : never;
/** A finding that does not say everything yet. */
type Unfinished = { [Field in FieldsOf<AnyFinding>]?: unknown };

/** Makes an answer a finding: by which rule, about whom, and how well it is supported by the traits that were read. */
export function completing(rule: Rule, read: readonly Reading[]) {
  const { id, measures: kinds = {} } = rule;
  const basis = basisOfAll(read);
  const traits = [...new Set(read.map(({ trait }) => trait))];
  if (rule.way === "all-groups") traits.sort(); // In an order that hangs on no plan's.
  return ({ answer, from, to, condition, instead }: Standing): AnyFinding => {
    const { weight, measures, watchFor } = answer;
    const uncertain = couldBe(answer);
    const finding: Unfinished = { rule: id, weight };
    if (from !== undefined) finding.from = from;
    if (to !== undefined) finding.to = to;
    if (measures) finding.measures = measured(kinds, measures);
    if (watchFor) finding.watchFor = watchFor;
    if (condition) finding.condition = condition;
    if (instead) finding.instead = instead;
    if (uncertain) finding.couldBe = uncertain;
    finding.basis = basis;
    finding.traits = traits;
    return finding as AnyFinding;
  };
}

/** The weakest basis of what was read and is known. */
function basisOfAll(read: readonly Reading[]): Basis {
  const bases: Basis[] = [];
  for (const reading of read) {
    const basis = basisOf(reading);
    if (basis) bases.push(basis);
  }
  return bases.length > 0 ? weakestBasis(bases) : "common-practice";
}
