import type { Finding, OpenQuestion, Verdict } from "../../compatibility";
import { type Group, isMet, type Plan } from "../../plan";
import { factAt, type SpeciesProfile } from "../../species";

/** A group that might come into a plan: as many of a species as belong together. */
export const groupOf = (species: SpeciesProfile): Group => ({
  species,
  unsexed: factAt(species, "social.group")?.value.least ?? 1,
});

/** What a finding or a question tells, the gravest first: what rules out, what nobody can tell, what restricts. */
export function gravityOf(told: Finding | OpenQuestion): number {
  if ("reason" in told) return told.reason === "missing" ? 2 : 0;
  if (told.weight === "blocking") return 3;
  if (told.weight === "advisory" && told.couldBe) return 2;
  return told.weight === "restricting" ? 1 : 0;
}

/** What a verdict tells of a group, the gravest first. */
export function toldOf(verdict: Verdict, group: number): readonly (Finding | OpenQuestion)[] {
  const about = [
    ...verdict.findings.filter(({ from, to }) => from === group || to === group),
    ...verdict.open.filter(({ reason, of }) => reason === "missing" && of === group),
  ];
  return about.sort((one, other) => gravityOf(other) - gravityOf(one));
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

/** How a newcomer, the last of the groups of a plan, stands to the others. */
export function relationsOf(plan: Plan, { findings, met }: Verdict): Relations {
  const newcomer = plan.groups.length - 1;
  const joining = plan.groups[newcomer] as Group;
  const told = [...findings, ...met].filter(({ weight }) => weight !== "favourable");
  const places = (list: readonly (number | undefined)[]) =>
    [...new Set(list)].filter((place) => place !== undefined).sort((one, other) => one - other);
  const isSettled = { on: "group.company", of: 0, wanted: { oneOf: [true] } } as const;
  const isShy = ({ species }: Group) => factAt(species, "social.settledBy")?.value === true;
  return {
    settles: [...plan.groups.keys()].filter((place) => {
      const group = plan.groups[place];
      if (place === newcomer || !group || !isShy(group)) return false;
      return isMet(isSettled, { tank: plan.tank, groups: [group, joining] }) === true;
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
