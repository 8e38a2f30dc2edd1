import { type AssessOptions, assessPair, type Verdict } from "../../compatibility";
import { malesAreRivals } from "../../compatibility/inner";
import { type Condition, type Group, isMet, type Plan } from "../../plan";
import { headcount, speciesOf } from "../../plan/inner";
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
  /** The key of a step that is taken in its place wherever it helps as well; told last where that does not. */
  readonly rather?: string;
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
    ...kindsOfAll.map((kind): Step => ({ kind, key: kind, moved: 0 })),
    ...companyFor(plan, verdict, company, { thresholds }),
    ...plan.groups.flatMap((group, of) => [
      { kind: "entry", key: `entry ${of}`, of, moved: 0 } as const,
      ...(plan.groups.length > 1
        ? [{ kind: "rehome", key: `rehome ${of}`, of, moved: headcount(group) } as const]
        : []),
      ...someLeave(group, of, verdict),
      ...exchanged(plan, verdict, of),
    ]),
  ];
}

/** What is done to the tank, and to all groups in one go. */
const kindsOfAll = [
  "feeding",
  "cover",
  "lid",
  "ground",
  "current",
  "water",
  "filter",
  "tank",
  "numbers",
] as const;

/**
 * Of animals that cannot be kept together all but one go, or all but those of one sex; males that fight, or are too many for
 * the females, may be left one by one of their own; and of too many, or of a number to be avoided, so many stay as do belong
 * together.
 */
function someLeave(group: Group, of: number, verdict: Verdict): readonly Step[] {
  const gravest = againstItsKind(verdict, of);
  const numbers = [...(gravest === "blocking" ? [1] : []), ...numbersToStay(verdict, of)];
  const left: readonly Partial<Group>[] = [
    ...(gravest !== undefined && group.males ? [{ males: 1 }] : []),
    ...(gravest !== undefined ? ofOneSort(group) : []),
    ...numbers.flatMap((number) => withSoMany(group, number)),
  ];
  const byWhoStays = new Map(left.map((those) => [JSON.stringify(those), those]));
  const keyOf = (those: string) => `rehome ${of} but ${those}`;
  return [...byWhoStays].flatMap(([key, those]): readonly Step[] => {
    const stays = { ...group, ...those };
    const moved = headcount(group) - headcount(stays);
    if (moved === 0) return [];
    const rather = leavesRivals(group, stays) && { rather: keyOf(JSON.stringify({ males: 1 })) };
    return [{ kind: "rehome", key: keyOf(key), of, moved, group: those, ...rather }];
  });
}

/** Whether males that are rivals lose all others of their group: it would be for them to leave. */
function leavesRivals(before: Group, after: Group): boolean {
  const hasOthers = ({ males = 0, ...group }: Group) => headcount({ ...group, males }) > males;
  return (after.males ?? 0) > 1 && hasOthers(before) && !hasOthers(after) && malesAreRivals(speciesOf(after));
}

/** The numbers that are told to do as well as more of a kind, or to be the most that belong together. */
function numbersToStay({ findings, parties }: Verdict, of: number): readonly number[] {
  const { id } = parties[of] ?? {};
  if (parties.filter((party) => party.id === id).length > 1) return [];
  const told = findings.flatMap((finding) => {
    if (finding.rule !== "group-size" || finding.from !== of) return [];
    const { fewer, needed } = finding.measures ?? {};
    return [
      fewer && "value" in fewer ? fewer.value : undefined,
      needed && "max" in needed ? needed.max : undefined,
    ];
  });
  return [...new Set(told.filter((number) => number !== undefined))];
}

/** A group of so many animals, where it hangs on nobody's choice which stay: of one sort, or a pair of males and females. */
function withSoMany(group: Group, number: number): readonly Partial<Group>[] {
  const [[only] = [], ...others] = sortsOf(group);
  if (only && others.length === 0) return [{ [only]: number }];
  if (number === 1) return ofOneSort(group, number);
  const { males = 0, females = 0, unsexed = 0, juveniles = 0 } = group;
  const isOfBoth = males > 0 && females > 0 && unsexed + juveniles === 0;
  return isOfBoth && number === 2 ? [{ males: 1, females: 1 }] : [];
}

/** What is different of a group of which one sort alone stays: males, females, or others; all of them, or so many. */
function ofOneSort(group: Group, number?: number): readonly Partial<Group>[] {
  const sorts = sortsOf(group);
  if (sorts.length === 1) return [];
  return sorts.map(([stays, there]) => {
    const left = sorts.map(([sort]) => [sort, sort === stays ? (number ?? there) : 0] as const);
    const isTold = sorts.length > 2;
    return Object.fromEntries(left.filter(([sort, count]) => isTold || count !== group[sort]));
  });
}

/** The sorts of animals that a group has, each with their number. */
function sortsOf({ males = 0, females = 0, unsexed = 0, juveniles = 0 }: Group) {
  const sorts = [
    ["males", males],
    ["females", females],
    ["unsexed", unsexed],
    ["juveniles", juveniles],
  ] as const;
  return sorts.filter(([, count]) => count > 0);
}

/** The gravest of what animals of one kind do to each other, or of there being too few females. */
function againstItsKind({ findings, parties }: Verdict, of: number): "blocking" | "restricting" | undefined {
  const own = findings.filter(({ from, to, ...finding }) => {
    const isAmongThem = to !== undefined && parties[from ?? -1]?.id === parties[to]?.id;
    const isOfSexes = "condition" in finding && finding.condition.on === "group.femalesPerMale";
    return (from === of || to === of) && (isAmongThem || isOfSexes);
  });
  if (own.some(({ weight }) => weight === "blocking")) return "blocking";
  return own.some(({ weight }) => weight === "restricting") ? "restricting" : undefined;
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
  return forms.filter(isWanted).map((form) => ({
    kind: "form",
    key: `form ${of} ${form}`,
    of,
    moved: headcount(group),
    group: { form },
  }));
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
    shy.every(({ species, form }) => {
      const { outcome } = assessPair({ species: calm }, { species, form }, options);
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
