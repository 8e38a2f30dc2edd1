import type { Planner, Verdict } from "../../compatibility";
import type { Group, Plan, PlannedTank } from "../../plan";
import { headcount } from "../../plan/inner";
import { tankFloor } from "../../tank";
import { counted } from "../counted";
import { asSold } from "./as-sold";
import { kindOf } from "./kind-of";
import type { Step } from "./possible-step";

/** By so much more is tried, one after another. */
const pressures = [1.25, 1.5, 2, 3, 4];

/**
 * The plan with as much more of filter, tank and animals of a kind, as far as the steps reach, as is enough: where nobody knows
 * what is true, more may be needed than the adopted facts ask for. The plan as it is where none is enough.
 */
export function pressed(
  planner: Planner,
  steps: readonly Step[],
  isEnough: (planner: Planner) => boolean,
): Planner {
  const has = (kind: Step["kind"]) => steps.some((step) => step.kind === kind);
  const { tank, groups } = planner.plan;
  const growing = has("numbers") ? perhapsShort(planner.verdict) : [];
  if (!has("filter") && !has("tank") && growing.length === 0) return planner;
  for (const times of pressures) {
    const more = planner.with({
      tank: { ...(has("filter") && moreFilter(tank, times)), ...(has("tank") && moreRoom(tank, times)) },
      groups: Object.fromEntries(growing.map((index) => [index, moreAnimals(groups, index, times)])),
    });
    if (isEnough(more)) return more;
  }
  return planner;
}

/** The groups of which it is open whether they are as many as belong together. */
function perhapsShort({ findings, met, open }: Verdict): readonly number[] {
  const asking = [...findings, ...met].filter(
    (finding) => finding.weight === "restricting" && kindOf(finding.condition.on) === "numbers",
  );
  const rules = new Set<string>(asking.map(({ rule }) => rule));
  return [...new Set(open.flatMap(({ rule, of }) => (of !== undefined && rules.has(rule) ? of : [])))];
}

function moreFilter({ filter }: PlannedTank, times: number): Partial<PlannedTank> {
  return filter ? { filter: { ...filter, mediaArea: Math.ceil(filter.mediaArea * times * 10) / 10 } } : {};
}

function moreRoom(tank: PlannedTank, times: number): Partial<PlannedTank> {
  const { base } = tank;
  if (base.shape !== "rectangle") return {};
  const longer = (side: number) => Math.ceil(side * Math.sqrt(times));
  const larger = { ...tank, base: { ...base, length: longer(base.length), width: longer(base.width) } };
  const [sold = larger] = asSold(larger, tankFloor(larger).nominal);
  return { base: sold.base };
}

function moreAnimals(groups: Plan["groups"], index: number, times: number): Partial<Group> {
  const group = groups[index] as Group;
  return counted(group, Math.ceil(headcount(group) * times));
}
