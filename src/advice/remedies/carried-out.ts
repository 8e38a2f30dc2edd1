import type { AssessOptions, JointCondition, PlanChange, Planner } from "../../compatibility";
import { coverInsteadOfCompany, meeting, sexAsked } from "../../compatibility/inner";
import { isMet, type Plan, type PlannedTank } from "../../plan";
import { changeBetween } from "./change-between";
import { kindOf, kindOfField, ofGroups } from "./kind-of";
import { inLargerTank } from "./larger-tank";
import type { Move, MoveKind } from "./move";
import type { Step } from "./possible-step";
import { pressed } from "./pressed";

/** A plan to which something was done. */
export interface CarriedOut {
  readonly planner: Planner;
  /** What was done, in the order in which it can be done; one for each step that changes anything. */
  readonly moves: readonly Move[];
  /** What the plan did not say and now does, as it is asked for. */
  readonly provided: Move["meets"];
  /** What that changes. */
  readonly filling: PlanChange;
  /** For each group that is left or came in, its place in the plan as given; those that came in stand after those. */
  readonly places: readonly number[];
}

/** A plan that something is done to, and when that is enough. */
export interface Given {
  readonly planner: Planner;
  readonly isEnough: (planner: Planner) => boolean;
  /** Whether what the plan does not say is seen to as well. */
  readonly fills: boolean;
  /** What would be asked for besides if what is disputed were otherwise; absent where the adopted facts decide. */
  readonly atWorst?: ((plan: Plan) => readonly JointCondition[]) | undefined;
  readonly thresholds?: AssessOptions["thresholds"];
}

/** How often what is asked for is seen to and the plan is judged again; one round meets nearly all. */
const mostRounds = 3;

/**
 * Does some steps to a plan: animals leave and come in first, then what is asked for is seen to as far as the steps reach,
 * and as far as the plan says nothing of it.
 *
 * @param begun - Gives the planner after a change to the animals.
 */
export function carriedOut(
  steps: readonly Step[],
  { planner: given, isEnough, fills, atWorst, thresholds }: Given,
  begun: (change: PlanChange) => Planner,
): CarriedOut {
  const animals = steps.filter(({ group, joining, kind }) => group || joining || kind === "rehome");
  const places = placesAfter(given.plan, animals);
  let planner = begun(allOf(animals.map(changeOf)));
  const start = planner.plan;
  const seen = new Map<string, SeenTo>();
  const seeing = { steps, places, given: given.plan, fills, thresholds, seen };
  const seeTo = (asked: (planner: Planner) => readonly JointCondition[]) => {
    for (let round = 0; round < mostRounds && !isEnough(planner); round += 1) {
      const next = asSeenTo(planner, asked(planner), seeing);
      if (next === planner) break;
      planner = next;
    }
  };
  seeTo(({ verdict }) => verdict.conditions);
  if (atWorst) seeTo(({ plan }) => atWorst(plan));
  if (atWorst && !isEnough(planner)) planner = pressed(planner, steps, isEnough);
  const told = [...seen.values()];
  const toGroups = (change: PlanChange) => placed(change, places);
  const changes = changeBetween(start, planner.plan);
  const moves = steps.flatMap((step): readonly Move[] => {
    const change = animals.includes(step) ? changeOf(step) : toGroups(partOf(changes, step, places));
    if (Object.keys(change).length === 0) return [];
    const { kind, moved } = step;
    const of = step.of ?? onlyGroupOf(change);
    const meets = told.filter((one) => one.step === step).map(({ condition }) => condition);
    return [{ kind, ...(of !== undefined && { of }), moved, change, meets }];
  });
  const { tank = {}, water = {}, offerings } = changes;
  const isDone = new Set(steps.map(({ kind }) => kind));
  const filling = {
    tank: Object.fromEntries(
      Object.entries(tank).filter(([name]) => !isDone.has(kindOfField[name as keyof PlannedTank])),
    ),
    ...(!isDone.has("water") && { water }),
    ...(offerings && !isDone.has("feeding") && { offerings }),
  };
  const provided = told.filter(({ step }) => step === undefined).map(({ condition }) => condition);
  return { planner, moves: [...moves].sort(inOrder), provided, filling, places };
}

/** What was seen to, and by which step; by none where the plan said nothing of it. */
interface SeenTo {
  readonly step: Step | undefined;
  readonly condition: Move["meets"][number];
}

interface Seeing {
  readonly steps: readonly Step[];
  readonly places: readonly number[];
  readonly given: Plan;
  readonly fills: boolean;
  readonly thresholds: AssessOptions["thresholds"];
  readonly seen: Map<string, SeenTo>;
}

/** The plan with all that is asked for and may be changed as it is asked for; the same where that is nothing. */
function asSeenTo(
  planner: Planner,
  asked: readonly JointCondition[],
  { steps, places, given, fills, thresholds, seen }: Seeing,
): Planner {
  const { verdict } = planner;
  const kinds = new Set(steps.map(({ kind }) => kind));
  const note = (condition: JointCondition, step: Step | undefined) => {
    const { on, of, wanted, aim } = condition;
    const about = of === undefined ? {} : { of: places[of] ?? of };
    seen.set(`${on} ${of}`, { step, condition: { on, ...about, wanted, ...(aim && { aim }) } });
  };
  const tank = steps.find(({ kind }) => kind === "tank");
  const larger = tank && inLargerTank(planner);
  for (const condition of larger?.asked ?? [])
    if (isMet(condition, planner.plan) !== true) note(condition, tank);
  const dense =
    kinds.has("cover") && !kinds.has("company") ? coverInsteadOfCompany(verdict.findings) : undefined;
  const inPlaceOf: readonly JointCondition[] =
    dense === undefined ? [] : [{ on: "tank.cover", wanted: { min: dense, unit: "1" }, findings: [] }];
  const before = larger?.planner ?? planner;
  const after = [...asked, ...inPlaceOf].reduce((plan, condition) => {
    const kind = kindOf(condition.on);
    if (kind === undefined || isMet(condition, plan) === true) return plan;
    if (kind === "tank" && (tank || condition.on !== "tank.height")) return plan;
    const of = condition.of === undefined ? undefined : places[condition.of];
    const step = steps.find((one) => one.kind === kind && (one.of === undefined || one.of === of));
    if (!step && !(fills && !ofGroups.has(kind) && isUnsaid(condition, plan, given))) return plan;
    const next = meeting(plan, condition, { sexOf: (index) => sexAsked(verdict, index), thresholds });
    if (next === plan || (!step && altersSaid(given, next, kinds))) return plan;
    note(condition, step);
    return next;
  }, before.plan);
  return after === before.plan ? before : before.with(changeBetween(before.plan, after));
}

/** Whether the plan as given said nothing of what a condition asks of its tank, its water or its food. */
const isUnsaid = (condition: JointCondition, { groups }: Plan, { tank, water, offerings }: Plan) =>
  isMet(condition, { tank, water, offerings, groups }) === undefined;

/** Whether a plan says otherwise what it said, beside what moves of these kinds change. */
function altersSaid(given: Plan, next: Plan, kinds: ReadonlySet<MoveKind>): boolean {
  const {
    tank = {},
    water = {},
    offerings,
    groups,
  } = changeBetween(given, { ...next, groups: given.groups });
  const said = (held: object, changed: object, kindOfName: (name: string) => MoveKind) =>
    Object.keys(changed).some((name) => Object.hasOwn(held, name) && !kinds.has(kindOfName(name)));
  return (
    groups !== undefined ||
    said(given.tank, tank, (name) => kindOfField[name as keyof PlannedTank]) ||
    said(given.water ?? {}, water, () => "water") ||
    (offerings !== undefined && given.offerings !== undefined && !kinds.has("feeding"))
  );
}

/** What a step changes by itself. */
function changeOf({ kind, of, group, joining }: Step): PlanChange {
  if (joining) return { add: [joining] };
  if (of === undefined) return {};
  if (group) return { groups: { [of]: group } };
  return kind === "rehome" ? { groups: { [of]: null } } : {};
}

/** Several changes of a plan as one. */
function allOf(changes: readonly PlanChange[]): PlanChange {
  const groups = Object.assign({}, ...changes.map((change) => change.groups ?? {}));
  const add = changes.flatMap((change) => change.add ?? []);
  return { ...(Object.keys(groups).length > 0 && { groups }), ...(add.length > 0 && { add }) };
}

/** For each group after some steps its place before. */
function placesAfter({ groups }: Plan, steps: readonly Step[]): readonly number[] {
  const gone = new Set(
    steps.flatMap(({ kind, of, group }) => (kind === "rehome" && !group ? of : undefined)),
  );
  const coming = steps.filter(({ joining }) => joining).map((_, index) => groups.length + index);
  return [...[...groups.keys()].filter((place) => !gone.has(place)), ...coming];
}

/** Of a change that part that a step is about. */
function partOf(
  { tank, water, groups, offerings }: PlanChange,
  step: Step,
  places: readonly number[],
): PlanChange {
  const { kind } = step;
  if (kind === "water") return water ? { water } : {};
  if (kind === "feeding") return offerings ? { offerings } : {};
  if (ofGroups.has(kind)) {
    const changed = Object.entries(groups ?? {}).flatMap(([at, group]) => {
      const isAbout = step.of === undefined || places[Number(at)] === step.of;
      const fields = isAbout ? fieldsFor(kind, group ?? {}) : [];
      return fields.length > 0 ? [[at, Object.fromEntries(fields)] as const] : [];
    });
    return changed.length > 0 ? { groups: Object.fromEntries(changed) } : {};
  }
  const fields = Object.entries(tank ?? {}).filter(
    ([name]) => kindOfField[name as keyof PlannedTank] === kind,
  );
  return fields.length > 0 ? { tank: Object.fromEntries(fields) } : {};
}

/** What of a changed group a move of a kind is about. */
const fieldsFor = (kind: MoveKind, group: object) =>
  Object.entries(group).filter(([name]) => (name === "length" ? "entry" : "numbers") === kind);

/** The group that a change is about, if it changes one alone and nothing else. */
function onlyGroupOf({ groups = {}, ...others }: PlanChange): number | undefined {
  const [one, ...more] = Object.keys(groups);
  return one === undefined || more.length > 0 || Object.keys(others).length > 0 ? undefined : Number(one);
}

/** A change of a later plan as one of the plan as given: groups by their places there. */
function placed(change: PlanChange, places: readonly number[]): PlanChange {
  const { groups } = change;
  if (!groups) return change;
  const there = Object.entries(groups).map(([at, group]) => [places[Number(at)], group]);
  return { ...change, groups: Object.fromEntries(there) };
}

/**
 * The tank is made ready before animals come in. Groups that leave stand last, the later ones first, so that the places of
 * the others stay theirs.
 */
const inOrder = (one: Move, other: Move): number =>
  order.indexOf(one.kind) - order.indexOf(other.kind) ||
  Number(one.change.groups?.[one.of ?? -1] === null) -
    Number(other.change.groups?.[other.of ?? -1] === null) ||
  (other.of ?? 0) - (one.of ?? 0);

const order: readonly MoveKind[] = [
  "tank",
  "filter",
  "water",
  "current",
  "ground",
  "cover",
  "lid",
  "feeding",
  "form",
  "entry",
  "numbers",
  "company",
  "rehome",
];
