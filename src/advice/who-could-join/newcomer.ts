import type { Weight } from "../../compatibility";
import { type Group, isMet, type Plan } from "../../plan";
import { speciesOf } from "../../plan/inner";
import { factAt, type SpeciesProfile } from "../../species";

/** A group that might come into a plan: as many of a species as belong together, one where nobody knows how many. */
export const groupOf = (species: SpeciesProfile): Group => ({
  species,
  unsexed: factAt(species, "social.group")?.value.least ?? 1,
});

/** Whether it is known how many of a species belong together: their number, or that one may live by itself. */
export function isNumberKnown(species: SpeciesProfile): boolean {
  const living = factAt(species, "social.living")?.value;
  return living === "alone" || living === "either" || factAt(species, "social.group") !== undefined;
}

/** What is said of a newcomer and of others, by a rule that looks at it. */
export interface Said {
  readonly rule: string;
  readonly weight: Weight;
  readonly from?: number | undefined;
  readonly to?: number | undefined;
}

/** The groups that a newcomer settles, takes for rivals or prey to chase, or that take its food. */
export interface Relations {
  /** The shy groups that it settles. */
  readonly settles: readonly number[];
  /** The groups that take its food before it gets there, unless it is fed apart. */
  readonly robbedBy: readonly number[];
  /** The groups that it chases, bites or nips at, if only at times. */
  readonly chases: readonly number[];
}

const actsOn: ReadonlySet<string> = new Set(["acts-others", "acts-look-alike", "fin-nipping"]);

/**
 * How a newcomer, the last of some groups, stands to the others.
 *
 * @param said - All that the rules say of it, whether the plan meets it or not.
 */
export function relationsOf(tank: Plan["tank"], groups: Plan["groups"], said: readonly Said[]): Relations {
  const newcomer = groups.length - 1;
  const joining = groups[newcomer] as Group;
  const told = said.filter(({ weight }) => weight !== "favourable");
  const places = (list: readonly (number | undefined)[]) =>
    [...new Set(list)].filter((place) => place !== undefined).sort((one, other) => one - other);
  const isSettled = { on: "group.company", of: 0, wanted: { oneOf: [true] } } as const;
  const isShy = (group: Group) => factAt(speciesOf(group), "social.settledBy")?.value === true;
  return {
    settles: [...groups.keys()].filter((place) => {
      const group = groups[place];
      if (place === newcomer || !group || !isShy(group)) return false;
      return isMet(isSettled, { tank, groups: [group, joining] }) === true;
    }),
    robbedBy: places(
      told
        .filter(({ rule, to }) => rule === "feeding-competition" && to === newcomer)
        .map(({ from }) => from),
    ),
    chases: places(
      told
        .filter(({ rule, from, to }) => actsOn.has(rule) && from === newcomer && to !== newcomer)
        .map(({ to }) => to),
    ),
  };
}
