/** Something that was measured. */
export interface Figure {
  readonly figure: string;
  readonly found: number;
  /** The most that it should be. */
  readonly target: number;
  /** The most that it has been of late, where the target is not reached yet. */
  readonly held?: number;
}

/** A module as it was built. */
export const urlOf = (name: string) => new URL(`../../dist/${name}.js`, import.meta.url).href;

export const quantile = (numbers: readonly number[], share: number): number =>
  [...numbers].sort((a, b) => a - b)[Math.min(numbers.length - 1, Math.floor(share * numbers.length))] ??
  Number.NaN;

export const median = (numbers: readonly number[]): number => quantile(numbers, 0.5);

/** Milliseconds of one call. */
export function timeOf(call: () => unknown): number {
  const start = performance.now();
  call();
  return performance.now() - start;
}

/** For each of some calls, made in turns so many times, the median of its milliseconds. */
export function inTurns<Name extends string>(
  times: number,
  calls: Readonly<Record<Name, () => unknown>>,
): Readonly<Record<Name, number>> {
  const named = Object.entries(calls) as [Name, () => unknown][];
  const rounds = Array.from({ length: times }, () => named.map(([, call]) => timeOf(call)));
  return Object.fromEntries(
    named.map(([name], index) => [name, median(rounds.map((round) => round[index] ?? Number.NaN))]),
  ) as Record<Name, number>;
}
