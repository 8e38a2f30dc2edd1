// Companies that share water, by hand: intervals written down from what animals are kept in, and every company tried.
import type { PartialRange } from "../../../src/ranges";
import type { Figures, SpeciesProfile } from "../../../src/species";

/** What may be said of the water. */
export interface Terms {
  /** K, how far the water moves either way from what it usually is. */
  readonly swing?: number;
  /** Total ammonia nitrogen, mg/L. */
  readonly totalAmmonia?: number;
}

type Axis = "temperature" | "pH" | "generalHardness" | "salinity";
type Span = readonly [least: number, most: number];

/** By how much each end of what is kept gives way, and how wide shared water must be; docs/rules.md. */
const giving: Readonly<Record<Axis, { readonly gives: number; readonly wide: number }>> = {
  temperature: { gives: 0.5, wide: 0.5 },
  pH: { gives: 0.25, wide: 0.2 },
  generalHardness: { gives: 2, wide: 1 },
  salinity: { gives: 0, wide: 0 },
};
const axes = Object.keys(giving) as readonly Axis[];

/** Decimals of figures add up to a little more or less than they should. */
const dust = 1e-9;

const figuresOf = ({ water }: SpeciesProfile, axis: Axis): Figures<PartialRange> | undefined =>
  water?.[axis]?.value;

const spanOf = ({ min = -Infinity, max = Infinity }: PartialRange): Span => [min, max];
const both = ([a, b]: Span, [c, d]: Span): Span => [Math.max(a, c), Math.min(b, d)];
const width = ([least, most]: Span) => most - least;

/** A span whose ends give way, never past a limit that it is within; nothing is softer or fresher than none at all. */
function widened(kept: PartialRange, gives: readonly [number, number], limit: PartialRange = {}): Span {
  const [least, most] = spanOf(kept);
  const [hardest, highest] = spanOf(limit);
  return [
    Math.max(0, Math.min(least, Math.max(least - gives[0], hardest))),
    Math.max(most, Math.min(most + gives[1], highest)),
  ];
}

/** What an animal can be given; a handbook's class gives way twice as far. */
function given({ kept, precision, limit }: Figures<PartialRange>, axis: Axis): Span {
  const { gives } = giving[axis];
  const ends = [precision?.min, precision?.max].map((end) => (end ? 2 * gives : gives));
  return widened(kept, [ends[0] ?? gives, ends[1] ?? gives], limit);
}

/** The same of water that moves with the seasons: hot days up to 2 K above what is kept, cool ones to 1 K below, or what is borne. */
function givenIn(figures: Figures<PartialRange>, axis: Axis, swing: number): Span {
  const usual = given(figures, axis);
  if (axis !== "temperature" || swing === 0) return usual;
  const [least, most] = spanOf(figures.kept);
  const [cool, hot] = spanOf(figures.tolerated ?? { min: least - 1, max: most + 2 });
  const [coolest, hottest] = widened(
    figures.kept,
    [Math.abs(least - cool), Math.abs(hot - most)],
    figures.limit,
  );
  return both(usual, [coolest + swing, hottest - swing]);
}

/** Whether two meet at the ends alone of what they are kept in, past what is best for one of them. */
function isPastTheBest(a: Figures<PartialRange>, b: Figures<PartialRange>): boolean {
  const kept = both(spanOf(a.kept), spanOf(b.kept));
  const leaves = (water: Span, best: Span) => width(water) >= -dust && width(both(water, best)) < 0.5 - dust;
  if (width(kept) < 1 - dust) {
    const water = both(given(a, "temperature"), given(b, "temperature"));
    return [a, b].some(
      ({ optimum, limit }) => optimum !== undefined && leaves(water, widened(optimum, [0.5, 0.5], limit)),
    );
  }
  return [a, b].some(
    (one) =>
      one.optimum !== undefined &&
      width(kept) <= 0.1 * width(spanOf(one.kept)) + dust &&
      leaves(kept, spanOf(one.optimum)),
  );
}

/** Un-ionized ammonia as NH3, mg/L, after Emerson et al. 1975. */
const unionized = (total: number, temperature: number, pH: number) =>
  ((total * 17.0305) / 14.0067) * (1 / (1 + 10 ** (0.09018 + 2729.92 / (temperature + 273.15) - pH)));

/** Whether some animals share water of every sort. */
export function share(
  company: readonly SpeciesProfile[],
  { swing = 0, totalAmmonia = 0 }: Terms = {},
): boolean {
  const rooms = axes.map((axis) => {
    const known = company.flatMap((animal) => figuresOf(animal, axis) ?? []);
    const room = known.map((figures) => givenIn(figures, axis, swing)).reduce(both, [-Infinity, Infinity]);
    return { room, wide: known.length > 1 ? giving[axis].wide : 0 };
  });
  if (rooms.some(({ room, wide }) => width(room) < wide - dust)) return false;
  const warmth = company.flatMap((animal) => figuresOf(animal, "temperature") ?? []);
  if (warmth.some((one, index) => warmth.slice(index + 1).some((other) => isPastTheBest(one, other))))
    return false;
  const [temperature, pH] = ["temperature", "pH"].map((_, index) => {
    const { room, wide } = rooms[index] ?? { room: [0, 0] as const, wide: 0 };
    const held = index === 0 ? 0.5 : 0.2;
    return room[0] + Math.min(Math.max(held, wide), width(room));
  });
  return unionized(totalAmmonia, (temperature ?? 0) + swing, pH ?? 0) <= 0.025;
}

/** Of all companies that share water the largest, of equally large ones that of the earliest: places in the list. */
export function largestCompany(animals: readonly SpeciesProfile[], terms: Terms): readonly number[] {
  const places = [...animals.keys()];
  let best: readonly number[] = [];
  for (let mask = 1; mask < 2 ** animals.length; mask += 1) {
    const company = places.filter((place) => mask & (1 << place));
    const isEarlier =
      company.length === best.length &&
      (company.find((place) => !best.includes(place)) ?? 0) <
        (best.find((place) => !company.includes(place)) ?? 0);
    if (company.length < best.length || (company.length === best.length && !isEarlier)) continue;
    if (
      share(
        company.flatMap((place) => animals[place] ?? []),
        terms,
      )
    )
      best = company;
  }
  return best;
}
