// Times the built library, each figure against a yardstick taken in turns with it in the same run. Fails where the
// median misses its target.
import { execFileSync } from "node:child_process";
import { rangeTargets } from "./bench/ranges";

/** A module as it was built. */
const urlOf = (name: string) => new URL(`../dist/${name}.js`, import.meta.url).href;
const { allSpecies }: typeof import("vivary/catalog") = await import(urlOf("catalog"));
const { assessPair }: typeof import("vivary/compatibility") = await import(urlOf("compatibility"));

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

/** Milliseconds that a fresh Node takes to import a module. */
const importTime = (url: string) => () =>
  Number(
    execFileSync(process.execPath, [
      "--input-type=module",
      "--eval",
      `const start = performance.now(); await import("${url}"); console.log(performance.now() - start);`,
    ]),
  );
const [loaded, empty] = inTurns(21, importTime(urlOf("index")), importTime("data:text/javascript,"));

const targets = [
  ...(await rangeTargets(await import(urlOf("ranges")))),
  {
    figure: `assessPair of ${a.id} and ${b.id}, as times JSON.stringify of both`,
    found: judged / stringified,
    target: 3,
  },
  {
    figure: "import of the root in a fresh Node, ms beyond an empty module",
    found: loaded - empty,
    target: 20,
  },
];
console.log(
  `assessPair ${rounded(judged * 1000)} µs, JSON.stringify of both ${rounded(stringified * 1000)} µs`,
);
console.log(
  `${pairs.length} pairs of the catalog ${rounded(all)} ms, ${rounded((all * 1000) / pairs.length)} µs each`,
);
console.log(`import of the root ${rounded(loaded)} ms, of an empty module ${rounded(empty)} ms`);
for (const { figure, found, target } of targets) {
  console.log(`${found <= target ? "ok    " : "FAILED"}  ${figure}: ${rounded(found)}, at most ${target}`);
}
process.exitCode = targets.every(({ found, target }) => found <= target) ? 0 : 1;
