// Times who shares a range among 35,000 made-up species, beside a plain loop over typed arrays and a database in one run.
import { DuckDBInstance } from "@duckdb/node-api";
import type { Figure } from "./timing";

type Ranges = typeof import("vivary/ranges");

/** Numbers from 0 to 1 that are the same in every run: the generator of Park and Miller. */
function* numbers(): Generator<number, never> {
  for (let seed = 1; ; ) {
    seed = (seed * 48_271) % 2_147_483_647;
    yield seed / 2_147_483_647;
  }
}

/** Species kept within 1.5 to 4.5 K of each other somewhere from 10 to 32 °C: a quarter of all pairs share something. */
function madeUp(count: number) {
  const next = numbers();
  return Array.from({ length: count }, (_, index) => {
    const min = 10 + 17.5 * next.next().value;
    const max = min + 1.5 + 3 * next.next().value;
    return { id: `species-${index}`, water: { temperature: { value: { kept: { min, max } } } } };
  });
}

type Columns = ReturnType<Ranges["rangeColumns"]>;

/** One against all, as a loop over typed arrays: the places of those that share. */
function loopOne({ min, max }: Columns, range: { readonly min: number; readonly max: number }): Int32Array {
  const found = new Int32Array(min.length);
  let count = 0;
  for (let index = 0; index < min.length; index++) {
    if ((min[index] as number) <= range.max && (max[index] as number) >= range.min) {
      found[count] = index;
      count += 1;
    }
  }
  return found.subarray(0, count);
}

/** All pairs, as a loop over typed arrays: how many share, and how much together. */
function loopAll({ min, max }: Columns): readonly [pairs: number, shared: number] {
  let pairs = 0;
  let shared = 0;
  for (let first = 0; first < min.length; first++) {
    for (let second = first + 1; second < min.length; second++) {
      const low = Math.max(min[first] as number, min[second] as number);
      const high = Math.min(max[first] as number, max[second] as number);
      if (low <= high) {
        pairs += 1;
        shared += high - low;
      }
    }
  }
  return [pairs, shared];
}

/** The same by the sweep. */
function sweepAll(ranges: Ranges, columns: Columns): readonly [pairs: number, shared: number] {
  let pairs = 0;
  let shared = 0;
  for (const [, , range] of ranges.pairsThatShare(columns)) {
    pairs += 1;
    shared += (range.max ?? Number.NaN) - (range.min ?? Number.NaN);
  }
  return [pairs, shared];
}

/** A database that holds the same columns. */
async function databaseOf({ min, max }: Columns) {
  const connection = await (await DuckDBInstance.create(":memory:")).connect();
  await connection.run('CREATE TABLE kept (place INTEGER, "min" DOUBLE, "max" DOUBLE)');
  const rows = await connection.createAppender("kept");
  for (const [place, low] of min.entries()) {
    rows.appendInteger(place);
    rows.appendDouble(low);
    rows.appendDouble(max[place] as number);
    rows.endRow();
  }
  rows.closeSync();
  return async (sql: string) => (await connection.runAndReadAll(sql)).getRows();
}

const median = (times: readonly number[]) =>
  [...times].sort((a, b) => a - b)[times.length >> 1] ?? Number.NaN;

/** Milliseconds of each of several calls, taken in turns: the medians. */
async function inTurns(times: number, calls: readonly (() => unknown)[]): Promise<readonly number[]> {
  const taken = calls.map((): number[] => []);
  for (let turn = 0; turn < times; turn++) {
    for (const [index, call] of calls.entries()) {
      const start = performance.now();
      await call();
      taken[index]?.push(performance.now() - start);
    }
  }
  return taken.map(median);
}

const rounded = (number: number | undefined) => Number((number ?? Number.NaN).toPrecision(3));
const ratio = (of: number | undefined, to: number | undefined) => (of ?? Number.NaN) / (to ?? Number.NaN);

/** The ratios, and the times behind them on the console. */
export async function rangeTargets(ranges: Ranges): Promise<readonly Figure[]> {
  const columns = ranges.rangeColumns(madeUp(35_000), "water.temperature");
  const ask = await databaseOf(columns);
  const range = { min: 20, max: 24 };

  const one = [
    () => ranges.sharing(columns, range),
    () => loopOne(columns, range),
    () => ask(`SELECT place FROM kept WHERE "min" <= ${range.max} AND "max" >= ${range.min}`),
  ];
  await inTurns(20, one);
  const [sharing, loop, database] = await inTurns(101, one);

  const counted: (readonly number[])[] = [];
  const [sweep, loopOfAll, databaseOfAll] = await inTurns(1, [
    () => counted.push(sweepAll(ranges, columns)),
    () => counted.push(loopAll(columns)),
    async () => {
      const [row] =
        await ask(`SELECT count(*)::DOUBLE, sum(least(a."max", b."max") - greatest(a."min", b."min"))
        FROM kept a JOIN kept b ON a."min" <= b."max" AND a."max" >= b."min" AND a.place < b.place`);
      counted.push((row ?? []).map(Number));
    },
  ]);
  const pairs = counted.map(([count]) => count);
  if (new Set(pairs).size !== 1)
    throw new Error(`The sweep, the loop and the database found ${pairs.join(", ")} pairs.`);

  console.log(
    `one range against 35,000: ${rounded(sharing)} ms, a loop over typed arrays ${rounded(loop)}, DuckDB ${rounded(database)}`,
  );
  console.log(
    `all pairs of 35,000 (${pairs[0]} share): ${rounded(sweep)} ms, a loop over typed arrays ${rounded(loopOfAll)}, DuckDB ${rounded(databaseOfAll)}`,
  );
  return [
    {
      figure: "one range against 35,000, as times a loop over typed arrays",
      found: ratio(sharing, loop),
      target: 3,
    },
    {
      figure: "all pairs of 35,000, as times a loop over typed arrays",
      found: ratio(sweep, loopOfAll),
      target: 1,
    },
  ];
}
