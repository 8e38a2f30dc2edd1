import { type Figure, median, quantile, timeOf, urlOf } from "./timing";

const { allSpecies }: typeof import("vivary/catalog") = await import(urlOf("catalog"));
const { suggestSpecies }: typeof import("vivary/search") = await import(urlOf("search"));

const names = allSpecies.flatMap(({ taxonomy, names }) => [taxonomy.name, ...Object.values(names).flat()]);

/** What somebody types on the way to a name: 500 beginnings. */
const beginnings = Array.from({ length: 500 }, (_, index) => {
  const name = names[(index * 7) % names.length] ?? "";
  return name.slice(0, 2 + (index % Math.max(1, name.length - 1)));
});

/** The same names looked through as plainly as it goes. */
const plainly = (typed: string) => names.filter((name) => name.toLowerCase().includes(typed));

/** What is measured of suggestions: of each beginning the shortest time of some rounds. */
export function searchFigures(): readonly Figure[] {
  const first = timeOf(() => suggestSpecies("neon t"));
  const rounds = Array.from({ length: 6 }, () =>
    beginnings.map((typed) => ({
      searched: timeOf(() => suggestSpecies(typed)),
      plain: timeOf(() => plainly(typed)),
    })),
  );
  const shortest = (of: "searched" | "plain") =>
    beginnings.map((_, index) =>
      Math.min(...rounds.map((round) => round[index]?.[of] ?? Number.POSITIVE_INFINITY)),
    );
  const searched = quantile(shortest("searched"), 0.95);
  const plain = median(shortest("plain"));
  console.log(
    `suggestions: ${searched.toFixed(2)} ms in 95 of 100, the first ${first.toFixed(1)} ms; a plain look through the names ${plain.toFixed(3)} ms`,
  );
  return [
    {
      figure: "suggestions, 95 of 100, as times a plain look through the names",
      found: searched / plain,
      target: 30,
    },
  ];
}
