// What a keeper could do to a plan, written down by hand and tried one after another, judged by what plans say alone.
import { assessPlan } from "../../../src/compatibility";
import type { Group, Offering, Plan, PlannedTank, PlannedWater } from "../../../src/plan";
import { classes, type SpeciesProfile } from "../../../src/species";

/** What a keeper sets right in one go. */
const kinds = ["tank", "lid", "cover", "ground", "current", "filter", "water", "feeding", "numbers"] as const;
type Kind = (typeof kinds)[number];

/** One way to do everything well, for the animals that stay. */
type Well = Readonly<Record<Exclude<Kind, "numbers">, (plan: Plan) => Plan>>;

const wordsOf = <Word extends string>(of: Readonly<Record<Word, unknown>>) => Object.keys(of) as Word[];
const withTank = (plan: Plan, changed: Partial<PlannedTank>): Plan => ({
  ...plan,
  tank: { ...plan.tank, ...changed },
});

/** Everything that can be fed, everywhere, at every hour, and so that each gets at it. */
const feast: readonly Offering[] = wordsOf(classes.food).flatMap((food) =>
  wordsOf(classes.zone).flatMap((place) =>
    wordsOf(classes.light).map((light): Offering => ({ food, place, light, apart: true })),
  ),
);

export const countOf = ({ males = 0, females = 0, unsexed = 0, juveniles = 0 }: Group) =>
  males + females + unsexed + juveniles;

/** As many of each kind as its record says belong together. */
function numbered(plan: Plan): Plan {
  const groups = plan.groups.map((group) => {
    const least = group.species.social?.group?.value.least ?? 1;
    const lacks = least - countOf(group);
    return lacks > 0 ? { ...group, unsexed: (group.unsexed ?? 0) + lacks } : group;
  });
  return { ...plan, groups };
}

/** Figures of water in the middle of what all are kept in, or of what is best for all; where they share none, between them. */
function waterFor(profiles: readonly SpeciesProfile[], by: "kept" | "optimum"): PlannedWater {
  const middle = (axis: "temperature" | "pH" | "generalHardness") => {
    const spans = profiles.flatMap(({ water }) => {
      const figures = water?.[axis]?.value;
      return figures ? [figures[by] ?? figures.kept] : [];
    });
    const least = Math.max(...spans.map(({ min = -Infinity }) => min));
    const most = Math.min(...spans.map(({ max = Infinity }) => max));
    if (spans.length === 0) return undefined;
    if (!Number.isFinite(least)) return most;
    return Number.isFinite(most) ? Math.round(((least + most) / 2) * 100) / 100 : least;
  };
  return {
    temperature: middle("temperature"),
    pH: middle("pH"),
    generalHardness: middle("generalHardness"),
  };
}

/** Ways to do everything well: tanks, covers, currents and waters, each with each. */
function ways(plan: Plan): readonly Well[] {
  const profiles = plan.groups.map(({ species }) => species);
  const grounds = profiles.flatMap(({ space }) => space?.substrate?.value ?? []);
  const hides = Object.fromEntries(wordsOf(classes.hide).map((hide) => [hide, 60]));
  const waters = (["kept", "optimum"] as const).map((by) => waterFor(profiles, by));
  const sizes = [
    [200, 80],
    [400, 150],
  ] as const;
  const covers = [
    { cover: 0.4, openWater: 0.6 },
    { cover: 0.6, openWater: 0.4 },
  ];
  const flows = [
    { calmest: "still", strongest: "strong" },
    { calmest: "still", strongest: "moderate" },
  ] as const;
  return sizes.flatMap(([length, width]) =>
    covers.flatMap((cover) =>
      flows.flatMap((flow) =>
        waters.map(
          (water): Well => ({
            tank: (before) =>
              withTank(before, { base: { shape: "rectangle", length, width }, height: 80, unit: "cm" }),
            lid: (before) => withTank(before, { lid: true }),
            cover: (before) =>
              withTank(before, { ...cover, openSurface: 0.5, sightBreaks: 30, plants: "grown-in" }),
            ground: (before) => withTank(before, { hides, substrate: grounds[0] ?? "sand" }),
            current: (before) => withTank(before, { flow }),
            filter: (before) => withTank(before, { filter: { mediaArea: 500, age: 300 } }),
            water: (before) => ({ ...before, water: { ...before.water, ...water } }),
            feeding: (before) => ({ ...before, offerings: feast }),
          }),
        ),
      ),
    ),
  );
}

const isGood = (plan: Plan) => {
  try {
    return assessPlan(plan).outcome === "suitable";
  } catch {
    return false; // A season that the new temperature leaves.
  }
};

const doing = (plan: Plan, way: Well, some: readonly Kind[]) =>
  some.reduce((now, kind) => (kind === "numbers" ? numbered(now) : way[kind](now)), plan);

/** Every so many of some things, none twice. */
function sets<Item>(items: readonly Item[], most: number): readonly (readonly Item[])[] {
  if (most === 0) return [[]];
  return [
    [],
    ...items.flatMap((item, index) => sets(items.slice(index + 1), most - 1).map((rest) => [item, ...rest])),
  ];
}

/** Whether a plan is good with so many kinds of things set right at most. */
function canBeMended(plan: Plan, most: number): boolean {
  const good = ways(plan).filter((way) => isGood(doing(plan, way, kinds)));
  return good.slice(0, 2).some((way) => sets(kinds, most).some((some) => isGood(doing(plan, way, some))));
}

/**
 * The fewest animals that go to another keeper, whole groups of them, so that with three things done at most the plan is
 * good; undefined where no way that is tried here is enough.
 */
export function fewestMoved(plan: Plan): number | undefined {
  const places = [...plan.groups.keys()];
  const leaving = sets(places, Math.min(3, places.length - 1)).map((gone) => ({
    gone,
    moved: gone.reduce((sum, place) => sum + countOf(plan.groups[place] ?? expectGroup(place)), 0),
  }));
  const found = [...leaving]
    .sort((one, other) => one.moved - other.moved)
    .find(({ gone }) =>
      canBeMended(
        { ...plan, groups: plan.groups.filter((_, place) => !gone.includes(place)) },
        3 - gone.length,
      ),
    );
  return found?.moved;
}

function expectGroup(place: number): never {
  throw new Error(`no group ${place}`);
}

/** How many animals a plan has, by species. */
export function census({ groups }: Plan): ReadonlyMap<string, number> {
  const counted = new Map<string, number>();
  for (const group of groups)
    counted.set(group.species.id, (counted.get(group.species.id) ?? 0) + countOf(group));
  return counted;
}
