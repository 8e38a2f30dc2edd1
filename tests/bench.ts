// Times the built library, each figure against a yardstick taken in turns with it in the same run. Fails where the
// median misses its target.
import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";

/** A module as it was built. */
const urlOf = (name: string) => new URL(`../dist/${name}.js`, import.meta.url).href;
const { allSpecies }: typeof import("vivary/catalog") = await import(urlOf("catalog"));
const { assessPair }: typeof import("vivary/compatibility") = await import(urlOf("compatibility"));
const { overlap }: typeof import("vivary/ranges") = await import(urlOf("ranges"));
const { convert }: typeof import("vivary/units") = await import(urlOf("units"));

const median = (numbers: readonly number[]) =>
  [...numbers].sort((a, b) => a - b)[numbers.length >> 1] ?? Number.NaN;
const rounded = (number: number) => Number(number.toPrecision(3));

/** Milliseconds of one call. */
function timeOf(call: () => unknown): number {
  const start = performance.now();
  call();
  return performance.now() - start;
}

/** The medians of two calls, made in turns. */
function inTurns(times: number, first: () => number, second: () => number): readonly [number, number] {
  const taken = Array.from({ length: times }, () => [first(), second()] as const);
  return [median(taken.map(([time]) => time)), median(taken.map(([, time]) => time))];
}

const batch = (call: () => unknown) => () =>
  timeOf(() => {
    for (let i = 0; i < 50; i++) call();
  }) / 50;

const sizeOf = (profile: object) => JSON.stringify(profile).length;
const [a, b] = [...allSpecies].sort((x, y) => sizeOf(y) - sizeOf(x));
if (!a || !b) throw new Error("The catalog holds fewer than two species.");
const judge = () => assessPair({ species: a }, { species: b });
const stringify = () => [JSON.stringify(a), JSON.stringify(b)];
inTurns(50, batch(judge), batch(stringify));
const [judged, stringified] = inTurns(101, batch(judge), batch(stringify));

const pairs = allSpecies.flatMap((x, i) =>
  allSpecies.slice(i).map((y) => [{ species: x }, { species: y }] as const),
);
const all = median(
  Array.from({ length: 9 }, () => timeOf(() => pairs.map(([x, y]) => assessPair(x, y).outcome))),
);

/** Milliseconds of the processor that a fresh Node takes to import a module. */
const importTime = (url: string) => () =>
  Number(
    execFileSync(process.execPath, [
      "--input-type=module",
      "--eval",
      `const start = process.cpuUsage(); await import("${url}"); const { user, system } = process.cpuUsage(start); console.log((user + system) / 1000);`,
    ]),
  );
const folder = mkdtempSync(join(tmpdir(), "vivary-bench-"));
writeFileSync(join(folder, "empty.mjs"), "");
const emptyFile = pathToFileURL(join(folder, "empty.mjs")).href;
const [loaded, empty] = inTurns(21, importTime(urlOf("index")), importTime(emptyFile));
const [schema, zod] = inTurns(11, importTime(urlOf("schema")), importTime(import.meta.resolve("zod")));
rmSync(folder, { recursive: true });

const numbers = Array.from({ length: 1024 }, (_, index) => 1 + index * 0.37);
const spans = numbers.map((number) => ({ min: 10 + (number % 13), max: 24 + (number % 11) }));

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
const over = (of: (index: number) => number) => () =>
  timeOf(() => {
    let sum = 0;
    for (let index = 1; index < numbers.length; index++) sum += of(index);
    return sum;
  });
const spanAt = (index: number) => spans[index] ?? { min: 0, max: 1 };
const numberAt = (index: number) => numbers[index] ?? 0;
const [overlapped, comparison] = inTurns(
  801,
  over((index) => overlap(spanAt(index), spanAt(index - 1))?.min ?? 0),
  over((index) => compared(spanAt(index), spanAt(index - 1))?.min ?? 0),
);
const [converted, factor] = inTurns(
  801,
  over((index) => convert(numberAt(index), "in", "cm")),
  over((index) => numberAt(index) * 2.54),
);
const [heated, formula] = inTurns(
  801,
  over((index) => convert(numberAt(index), "degF", "degC")),
  over((index) => ((numberAt(index) - 32) * 5) / 9),
);

const targets = [
  {
    figure: `assessPair of ${a.id} and ${b.id}, as times JSON.stringify of both`,
    found: judged / stringified,
    target: 3,
  },
  { figure: "import of the root, as times an empty file", found: loaded / empty, target: 3 },
  { figure: "import of the schema, as times zod alone", found: schema / zod, target: 1.5 },
  { figure: "overlap of two ranges, as times comparing them", found: overlapped / comparison, target: 5 },
  { figure: "convert from in to cm, as times a bare factor", found: converted / factor, target: 10 },
  { figure: "convert from degF to degC, as times the bare formula", found: heated / formula, target: 10 },
];
console.log(
  `assessPair ${rounded(judged * 1000)} µs, JSON.stringify of both ${rounded(stringified * 1000)} µs`,
);
console.log(
  `${pairs.length} pairs of the catalog ${rounded(all)} ms, ${rounded((all * 1000) / pairs.length)} µs each`,
);
console.log(
  `import of the root ${rounded(loaded)} ms, of an empty file ${rounded(empty)} ms, of the schema ${rounded(schema)} ms, of zod ${rounded(zod)} ms`,
);
for (const { figure, found, target } of targets) {
  console.log(`${found <= target ? "ok    " : "FAILED"}  ${figure}: ${rounded(found)}, at most ${target}`);
}
process.exitCode = targets.every(({ found, target }) => found <= target) ? 0 : 1;
