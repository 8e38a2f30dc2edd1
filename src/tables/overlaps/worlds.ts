import { boxWidths, type Widths, widthsOf } from "../../ranges/inner";
import type { StandingSpan } from "./standing-spans";

/** One of the two species of a pair. */
type Side = "a" | "b";

/** A span taken in place of the adopted one. */
export interface Change<Axis> {
  readonly axis: Axis;
  readonly of: Side;
  readonly to: StandingSpan;
}

/** What a pair measures, with what was taken in place of adopted spans. */
export interface World<Axis> {
  readonly widths: Widths | undefined;
  readonly changes: readonly Change<Axis>[];
}

/** The spans of both species on one axis. */
export type BothSpans = { readonly [Of in Side]: readonly StandingSpan[] };

/** A pair on one axis with every span of the one beside every span of the other, the adopted ones first. */
export function worldsOf<Axis>(axis: Axis, { a, b }: BothSpans): readonly World<Axis>[] {
  const changed = (of: Side, to: StandingSpan, place: number): readonly Change<Axis>[] =>
    place === 0 ? [] : [{ axis, of, to }];
  return a.flatMap((first, i) =>
    b.map((second, j) => ({
      widths: widthsOf(first.span, second.span),
      changes: [...changed("a", first, i), ...changed("b", second, j)],
    })),
  );
}

/** A pair on several axes: every world of the one axis with every world of the others, the adopted ones first. */
export function boxWorlds<Axis>(axes: readonly (readonly World<Axis>[])[]): readonly World<Axis>[] {
  const together = axes.reduce<readonly (readonly World<Axis>[])[]>(
    (some, worlds) => some.flatMap((taken) => worlds.map((world) => [...taken, world])),
    [[]],
  );
  return together.map((worlds) => ({
    widths: boxWidths(worlds.map(({ widths }) => widths)),
    changes: worlds.flatMap(({ changes }) => changes),
  }));
}
