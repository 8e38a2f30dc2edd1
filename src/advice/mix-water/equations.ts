/** One linear equation: factors of the unknowns, and what they come to. */
export interface Equation {
  readonly factors: readonly number[];
  readonly total: number;
}

/** Below this a number counts as nothing. */
const nothing = 1e-12;

/** The unknowns of as many equations, by elimination; undefined where they do not fix them. */
export function solved(equations: readonly Equation[]): readonly number[] | undefined {
  const [first, ...others] = pivoted(equations);
  const pivot = first?.factors[0] ?? 0;
  if (!first || Math.abs(pivot) < nothing) return undefined;
  const rest = others.map(({ factors, total }) => {
    const times = (factors[0] ?? 0) / pivot;
    return {
      factors: factors.slice(1).map((factor, index) => factor - times * (first.factors[index + 1] ?? 0)),
      total: total - times * first.total,
    };
  });
  const later = rest.length > 0 ? solved(rest) : [];
  if (!later) return undefined;
  const known = later.reduce((sum, value, index) => sum + value * (first.factors[index + 1] ?? 0), 0);
  return [(first.total - known) / pivot, ...later];
}

/** The equations, that with the greatest first factor first. */
const pivoted = (equations: readonly Equation[]): readonly Equation[] =>
  [...equations].sort((one, other) => Math.abs(other.factors[0] ?? 0) - Math.abs(one.factors[0] ?? 0));
