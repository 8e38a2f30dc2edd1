import type { Finding, Planner } from "../../compatibility";
import type { Group } from "../../plan";
import { factAt, type SpeciesProfile } from "../../species";
import { lengthsMeant } from "../../species/inner";
import { convert } from "../../units";

/** Animals that have to be longer before others come. */
export interface Growing {
  /** The index of their group. */
  readonly group: number;
  /** The index of the group that would harm them before. */
  readonly before: number;
  /** cm. */
  readonly length: number;
  /** The rule that asks for it. */
  readonly rule: string;
}

/** A plan as it is once its animals have grown past what others would do to them. */
export interface GrownPlan {
  readonly judged: Planner;
  readonly growing: readonly Growing[];
}

/** How often animals are made longer and the plan is judged again; one round meets nearly all. */
const mostRounds = 4;

/** Lets the animals of a plan grow to the lengths that the rules ask for beside others of another species. */
export function grownUp(start: Planner): GrownPlan {
  let judged = start;
  const growing: Growing[] = [];
  for (let round = 0; round < mostRounds; round += 1) {
    const further = judged.verdict.findings.flatMap((finding) => growingFor(finding, judged.plan.groups));
    if (further.length === 0) break;
    growing.push(...further);
    judged = judged.with({ groups: lengthened(further) });
  }
  return { judged, growing };
}

function growingFor(finding: Finding, groups: readonly Group[]): readonly Growing[] {
  if (finding.weight !== "restricting") return [];
  const { on, of, wanted } = finding.condition;
  const length = "min" in wanted ? wanted.min : undefined;
  const before = finding.from === of ? finding.to : finding.from;
  if (on !== "group.length" || of === undefined || before === undefined || length === undefined) return [];
  return groups[of]?.species.id === groups[before]?.species.id
    ? []
    : [{ group: of, before, length, rule: finding.rule }];
}

/** The groups at the greatest length asked of each. */
function lengthened(growing: readonly Growing[]): Readonly<Record<number, { readonly length: number }>> {
  const longest = new Map<number, number>();
  for (const { group, length } of growing) longest.set(group, Math.max(length, longest.get(group) ?? 0));
  return Object.fromEntries([...longest].map(([group, length]) => [group, { length }]));
}

/**
 * Days in which animals grow from one length to another, in cm; undefined where nobody knows their growth, or where not
 * all grow so long. By the curve of von Bertalanffy from nothing, through nine tenths of the grown length at the age
 * when grown: for the slowest growth and the smallest adults that a source supports.
 */
export function daysToGrow(species: SpeciesProfile, from: number, to: number): number | undefined {
  if (to <= from) return 0;
  const ages = standing(factAt(species, "size.grownAt"));
  const adults = standing(factAt(species, "size.adultLength"));
  if (ages.length === 0 || adults.length === 0) return undefined;
  const grown = Math.min(
    ...adults.flatMap((adult) => lengthsMeant(adult, "usual").map(({ total }) => total.min)),
  );
  if (to >= grown) return undefined;
  const age = convert(Math.max(...ages), "mo", "d");
  return Math.ceil((age * Math.log((grown - from) / (grown - to))) / Math.LN10);
}

const standing = <Value>(
  fact: { readonly value: Value; readonly also?: readonly Value[] | undefined } | undefined,
): readonly Value[] => (fact ? [fact.value, ...(fact.also ?? [])] : []);
