import { type Equation, solved } from "./equations";

/** Shares that differ by less do not differ. */
export const nothing = 1e-9;

/** A figure that mixing keeps: what each source has of it, and the figures that matter. */
export interface MixedFigure {
  readonly ofSources: readonly number[];
  /** The ends of what is wanted. */
  readonly ends: readonly number[];
}

/**
 * The mixtures at which a best one lies: those of as few sources as may be, with as many figures on an end of what is
 * wanted as there are sources beside the first. Whatever is least or greatest among mixtures, by lines that bend at those
 * ends alone, is so at one of these.
 *
 * @returns Shares by source.
 */
export function corners(sources: number, figures: readonly MixedFigure[]): readonly (readonly number[])[] {
  return subsets(sources, figures.length + 1).flatMap((chosen) =>
    endsOf(figures, chosen.length - 1).flatMap((fixed) => {
      const whole: Equation = { factors: chosen.map(() => 1), total: 1 };
      const onEnds = fixed.map(({ ofSources, end }) => ({
        factors: chosen.map((source) => ofSources[source] ?? 0),
        total: end,
      }));
      const shares = solved([whole, ...onEnds]);
      if (!shares || shares.some((share) => share < -nothing)) return [];
      return [
        Array.from({ length: sources }, (_, source) => Math.max(shares[chosen.indexOf(source)] ?? 0, 0)),
      ];
    }),
  );
}

/** Choices of one to so many out of a number, by index. */
function subsets(of: number, most: number): readonly (readonly number[])[] {
  let grown: readonly (readonly number[])[] = [[]];
  const all: (readonly number[])[] = [];
  for (let size = 1; size <= Math.min(most, of); size += 1) {
    grown = grown.flatMap((chosen) =>
      Array.from({ length: of }, (_, index) => index)
        .filter((index) => index > (chosen.at(-1) ?? -1))
        .map((index) => [...chosen, index]),
    );
    all.push(...grown);
  }
  return all;
}

interface FixedFigure {
  readonly ofSources: readonly number[];
  readonly end: number;
}

/** Choices of so many figures, each fixed at one of its ends. */
function endsOf(figures: readonly MixedFigure[], count: number): readonly (readonly FixedFigure[])[] {
  if (count === 0) return [[]];
  return figures.flatMap(({ ofSources, ends }, index) =>
    ends.flatMap((end) =>
      endsOf(figures.slice(index + 1), count - 1).map((others) => [{ ofSources, end }, ...others]),
    ),
  );
}
