import type { AssessOptions, Rule, Verdict } from "../../compatibility";
import { rulesFor } from "../../compatibility/inner";
import type { Axis, Followed } from "./axis";

/**
 * Where an outcome may turn, by what a verdict tells: the ends of what is asked for, the figures behind what is found in
 * the unit of the axis, and these by the numbers that the rule decides by.
 */
export function candidates(
  { findings, met, made }: Verdict,
  { on, of }: Followed,
  { unit }: Pick<Axis, "unit">,
  options: AssessOptions,
): readonly number[] {
  const byId = new Map(rulesFor(options).map((rule) => [rule.id, rule]));
  const about = [...findings, ...met].filter(
    ({ from, to }) => of === undefined || from === of || to === of || from === undefined,
  );
  return about.flatMap(({ rule: id, measures = {}, ...finding }) => {
    const rule = byId.get(id);
    const ends =
      "condition" in finding && (finding.condition.on === on || sameUnit(finding.condition.wanted, unit))
        ? numbersIn(finding.condition.wanted)
        : [];
    const figures = Object.values(measures).flatMap((measure) =>
      unit !== undefined && sameUnit(measure, unit) ? numbersIn(Object(measure).value) : [],
    );
    return [...ends, ...figures].flatMap((figure) => [figure, ...shares(figure, rule, made.thresholds)]);
  });
}

const sameUnit = (held: unknown, unit: string | undefined) =>
  unit !== undefined && Object(held).unit === unit;

/** The numbers of a figure or a span. */
const numbersIn = (value: unknown): readonly number[] =>
  [value, Object(value).min, Object(value).max].filter((number): number is number => Number.isFinite(number));

/** A figure by each number that a rule decides by, either way, and that number itself. */
const shares = (figure: number, rule: Rule | undefined, values: Verdict["made"]["thresholds"]) =>
  (rule?.decidesBy ?? []).flatMap((name) => {
    const value = values[name];
    return value > 0 ? [value, figure * value, figure / value] : [];
  });
