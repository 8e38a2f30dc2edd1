import { decimal } from "../../decimal";
import type { Range } from "../../ranges";

/** Figures along a picture. */
export interface Scale {
  /** From the first tick to the last, in the unit that is shown. */
  readonly domain: Range;
  /** Round figures, evenly spaced. */
  readonly ticks: readonly number[];
  /** Where the axis begins and ends, in user units. */
  readonly from: number;
  readonly to: number;
  /** Where a figure stands; one beyond the axis at its end. */
  readonly at: (figure: number) => number;
}

/**
 * A scale from one round figure to another that holds a span, with as many ticks as have room.
 *
 * @param room - The least distance between two ticks, in user units.
 */
export function scaleOf(span: Range, from: number, to: number, room: number): Scale {
  const step = roundStep((span.max - span.min) / Math.max(1, Math.floor((to - from) / room) - 1));
  const first = Math.floor(decimal(span.min / step));
  const last = Math.max(first + 1, Math.ceil(decimal(span.max / step)));
  const ticks = Array.from({ length: last - first + 1 }, (_, index) => decimal((first + index) * step));
  const domain = { min: decimal(first * step), max: decimal(last * step) };
  const along = (figure: number) => (figure - domain.min) / (domain.max - domain.min);
  const at = (figure: number) => from + (to - from) * Math.min(1, Math.max(0, along(figure)));
  return { domain, ticks, from, to, at };
}

/** The least of 1, 2 and 5 times a power of ten that is no less. */
function roundStep(least: number): number {
  if (!(least > 0)) return 1;
  const power = 10 ** Math.floor(Math.log10(least));
  return decimal(([1, 2, 5].find((times) => times * power >= least * (1 - 1e-9)) ?? 10) * power);
}
