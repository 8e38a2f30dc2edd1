import { type AssessOptions, assessPair, type Verdict } from "../../compatibility";
import { type Condition, type Group, isMet, type Plan } from "../../plan";
import { factAt, type SpeciesProfile } from "../../species";
import type { MoveKind } from "./move";

/** One thing that could be done to a plan. What exactly it changes hangs on what else is done. */
export interface Step {
  readonly kind: MoveKind;
  /** Tells it from all others. */
  readonly key: string;
  /** The group it is about, by its place in the plan as given. */
  readonly of?: number;
  /** How many animals leave by it. */
  readonly moved: number;
  /** Of a group of which some are rehomed or which is exchanged: what is different. */
  readonly group?: Partial<Group>;
  /** The group that comes in as company. */
  readonly joining?: Group;
}

/** Of so many species is tried whether they are the company that a shy one lacks, in the order given. */
const mostCompany = 3;

/** Everything that could be done to a plan, each kind of move for each group that it could be about. */
export function possibleSteps(
  plan: Plan,
  verdict: Verdict,
  company: readonly SpeciesProfile[],
  { thresholds }: AssessOptions,
): readonly Step[] {
  return [
    ...tankKinds.map((kind): Step => ({ kind, key: kind, moved: 0 })),
    ...companyFor(plan, verdict, company, { thresholds }),
    ...plan.groups.flatMap((group, of) => [
      ...(["numbers", "entry"] as const).map((kind): Step => ({ kind, key: `${kind} ${of}`, of, moved: 0 })),
      ...(plan.groups.length > 1
        ? [{ kind: "rehome", key: `rehome ${of}`, of, moved: countOf(group) } as const]
        : []),
      ...(ruleEachOtherOut(verdict, of) ? someLeave(group, of) : []),
      ...exchanged(plan, verdict, of),
    ]),
  ];
}

const tankKinds = ["feeding", "cover", "lid", "ground", "current", "water", "filter", "tank"] as const;

const countOf = ({ males = 0, females = 0, unsexed = 0, juveniles = 0 }: Group) =>
  males + females + unsexed + juveniles;

/** Whether animals of one kind, of this group or with it, cannot be kept together. */
const ruleEachOtherOut = ({ findings, parties }: Verdict, of: number) =>
  findings.some(
    ({ weight, from, to }) =>
      weight === "blocking" &&
      (from === of || to === of) &&
      from !== undefined &&
      to !== undefined &&
      parties[from]?.id === parties[to]?.id,
  );

/** All but one of its males go, or all but one animal of a group of which nobody tells the animals apart. */
function someLeave(
  { males = 0, females = 0, unsexed = 0, juveniles = 0 }: Group,
  of: number,
): readonly Step[] {
  const leave = (who: string, moved: number, group: Partial<Group>): readonly Step[] =>
    moved > 0 ? [{ kind: "rehome", key: `rehome ${of} ${who}`, of, moved, group }] : [];
  const sorts = [males, females, unsexed, juveniles].filter((count) => count > 0);
  return [
    ...leave("males", males - 1, { males: 1 }),
    ...(sorts.length > 1
      ? []
      : [
          ...leave("females", females - 1, { females: 1 }),
          ...leave("unsexed", unsexed - 1, { unsexed: 1 }),
          ...leave("juveniles", juveniles - 1, { juveniles: 1 }),
        ]),
  ];
}

/** Animals of a form that a finding would have instead. */
function exchanged(plan: Plan, { findings }: Verdict, of: number): readonly Step[] {
  const group = plan.groups[of];
  const instead = findings.flatMap((finding): readonly Condition[] =>
    finding.weight === "blocking" && finding.instead?.of === of ? [finding.instead] : [],
  );
  if (!group || instead.length === 0 || group.species.form !== undefined) return [];
  const forms = [undefined, ...Object.keys(group.species.forms ?? {})].filter((form) => form !== group.form);
  const isWanted = (form: string | undefined) => {
    const groups = plan.groups.map((one, index) => (index === of ? { ...one, form } : one));
    return instead.every((condition) => isMet(condition, { ...plan, groups }) === true);
  };
  return forms
    .filter(isWanted)
    .map((form) => ({ kind: "form", key: `form ${of} ${form}`, of, moved: countOf(group), group: { form } }));
}

/** Species that settle those who ask for it, and are ruled out by none of them. */
function companyFor(
  { groups }: Plan,
  { conditions }: Verdict,
  company: readonly SpeciesProfile[],
  options: AssessOptions,
): readonly Step[] {
  const shy = conditions.flatMap(({ on, of }) => (on === "group.company" ? (groups[of ?? 0] ?? []) : []));
  if (shy.length === 0) return [];
  const goesWith = (calm: SpeciesProfile) =>
    groups.every(({ species }) => species.id !== calm.id) &&
    shy.every(({ species }) => {
      const { outcome } = assessPair({ species: calm }, { species }, options);
      return outcome === "suitable" || outcome === "conditional";
    });
  return company
    .filter(goesWith)
    .slice(0, mostCompany)
    .map((species) => {
      const unsexed = factAt(species, "social.group")?.value.least ?? 1;
      return {
        kind: "company",
        key: `company ${species.id}`,
        moved: 0,
        joining: { species, unsexed },
      };
    });
}
