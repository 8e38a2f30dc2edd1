import type { SpeciesProfile } from "vivary/species";
import { type Figure, inTurns, median, quantile, timeOf, urlOf } from "./timing";

const { allSpecies }: typeof import("vivary/catalog") = await import(urlOf("catalog"));
const { assessPair, outcomes, pairRules }: typeof import("vivary/compatibility") = await import(
  urlOf("compatibility")
);

type Pair = readonly [SpeciesProfile, SpeciesProfile];

const pairs = allSpecies.flatMap((a, index) => allSpecies.slice(index).map((b): Pair => [a, b]));
const judge = ([species, other]: Pair) => assessPair({ species }, { species: other });

/** For each pair of the catalog the shortest time of a verdict, as times the shortest of writing both profiles. */
function againstWriting(): readonly number[] {
  const rounds = Array.from({ length: 4 }, () =>
    pairs.map((pair) => ({
      judged: timeOf(() => judge(pair)),
      written: timeOf(() => pair.map((profile) => JSON.stringify(profile))),
    })),
  );
  return pairs.map((_, index) => {
    const shortest = (of: "judged" | "written") =>
      Math.min(...rounds.map((round) => round[index]?.[of] ?? Number.POSITIVE_INFINITY));
    return shortest("judged") / shortest("written");
  });
}

/** Kilobytes that a verdict takes, the median of pairs in which no garbage was collected meanwhile. */
function allocated(): number {
  const taken = pairs.flatMap((pair, index) => {
    if (index % 5 !== 0) return [];
    const before = process.memoryUsage().heapUsed;
    judge(pair);
    const after = process.memoryUsage().heapUsed;
    return after > before ? [(after - before) / 1024] : [];
  });
  return median(taken);
}

const waterRules = ["temperature", "ph", "general-hardness", "salinity"];

/** Outcomes by the rules of water, and the same comparisons in a loop over numbers; both tell how many pairs do not go. */
function ofWater() {
  const rules = pairRules.filter(({ id }) => waterRules.includes(id));
  const { outcome } = outcomes(allSpecies, { rules });
  const size = allSpecies.length;
  const spans = (["temperature", "pH", "generalHardness", "salinity"] as const).map((name) => {
    const ends = { min: new Float64Array(size), max: new Float64Array(size) };
    for (const [index, { water = {} }] of allSpecies.entries()) {
      const { min = Number.NEGATIVE_INFINITY, max = Number.POSITIVE_INFINITY } =
        water[name]?.value.kept ?? {};
      ends.min[index] = min;
      ends.max[index] = max;
    }
    return ends;
  });
  const counted = new Int32Array(1);
  const byNumbers = () => {
    let shared = 0;
    for (let i = 0; i < size; i++) {
      for (let j = i + 1; j < size; j++) {
        let all = 1;
        for (const { min, max } of spans) {
          const least = Math.max(min[i] ?? 0, min[j] ?? 0);
          const most = Math.min(max[i] ?? 0, max[j] ?? 0);
          if (least > most) all = 0;
        }
        shared += all;
      }
    }
    counted[0] = shared;
  };
  const byRules = () => {
    let shared = 0;
    for (let i = 0; i < size; i++)
      for (let j = i + 1; j < size; j++) if (outcome(i, j) === "suitable") shared++;
    counted[0] = shared;
  };
  return { byNumbers, byRules };
}

/** What is measured of pairs. */
export function pairFigures(): readonly Figure[] {
  for (const pair of pairs) judge(pair);
  const ratios = againstWriting();
  const all = outcomes(allSpecies);
  const { byNumbers, byRules } = ofWater();
  const time = inTurns(5, {
    verdicts: () => pairs.map((pair) => judge(pair).outcome),
    outcomes: () => allSpecies.map((_, i) => allSpecies.slice(i).map((__, j) => all.outcome(i, i + j))),
    byRules,
    byNumbers: () => Array.from({ length: 50 }, byNumbers),
  });
  return [
    {
      figure: "assessPair, as times writing both profiles: 95 of 100 pairs",
      found: quantile(ratios, 0.95),
      target: 1,
      held: 6,
    },
    {
      figure: "assessPair, as times writing both profiles: the most",
      found: Math.max(...ratios),
      target: 2,
      held: 30,
    },
    { figure: "assessPair: kB taken", found: allocated(), target: 20, held: 135 },
    {
      figure: "outcomes of all pairs, as a share of their verdicts",
      found: time.outcomes / time.verdicts,
      target: 0.5,
    },
    {
      figure: "outcomes by the rules of water, as times a loop over numbers",
      found: (50 * time.byRules) / time.byNumbers,
      target: 100,
    },
  ];
}
