import { type Figure, inTurns, urlOf } from "./timing";

const { overlap }: typeof import("vivary/ranges") = await import(urlOf("ranges"));
const { convert }: typeof import("vivary/units") = await import(urlOf("units"));

const numbers = Array.from({ length: 1024 }, (_, index) => 1 + index * 0.37);
const spans = numbers.map((number) => ({ min: 10 + (number % 13), max: 24 + (number % 11) }));
const numberAt = (index: number) => numbers[index] ?? 0;
const spanAt = (index: number) => spans[index] ?? { min: 0, max: 1 };

/** A range as `overlap` checks it. */
function checkedSpan(span: { readonly min: number; readonly max: number }) {
  if (typeof span !== "object" || span === null) throw new TypeError("no range");
  if (!Number.isFinite(span.min) || !Number.isFinite(span.max) || span.min > span.max)
    throw new RangeError("no range");
  return span;
}

/** What two ranges share, by nothing but comparisons. */
function compared(one: (typeof spans)[number], other: (typeof spans)[number]) {
  const [a, b] = [checkedSpan(one), checkedSpan(other)];
  const min = Math.max(a.min, b.min);
  const max = Math.min(a.max, b.max);
  return min > max ? undefined : { min, max };
}

/** Runs over many numbers, so that the clock is fine enough; the sum keeps the work from being left out. */
const over = (of: (index: number) => number) => () => {
  let sum = 0;
  for (let index = 1; index < numbers.length; index++) sum += of(index);
  return sum;
};

/** What is measured of the smallest functions. */
export function kernelFigures(): readonly Figure[] {
  const time = inTurns(801, {
    overlap: over((index) => overlap(spanAt(index), spanAt(index - 1))?.min ?? 0),
    compared: over((index) => compared(spanAt(index), spanAt(index - 1))?.min ?? 0),
    inches: over((index) => convert(numberAt(index), "in", "cm")),
    factor: over((index) => numberAt(index) * 2.54),
    degrees: over((index) => convert(numberAt(index), "degF", "degC")),
    formula: over((index) => ((numberAt(index) - 32) * 5) / 9),
  });
  return [
    { figure: "overlap, as times comparing the ends", found: time.overlap / time.compared, target: 5 },
    { figure: "convert from in to cm, as times a bare factor", found: time.inches / time.factor, target: 10 },
    {
      figure: "convert from degF to degC, as times the bare formula",
      found: time.degrees / time.formula,
      target: 10,
    },
  ];
}
