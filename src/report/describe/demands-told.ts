import type { JointCondition, Verdict } from "../../compatibility";
import type { FactName } from "../../plan";
import { within } from "../figure";
import { isDeed } from "../matters/acts";
import type { Alike } from "../matters/alike";
import { isBy, tellsPlanned } from "../matters/by-rule";
import { type Demand, demandsOf, isRoom, reasonsFor } from "../matters/matters";
import { isFarTooSmall, isOfRoom } from "../matters/order";
import { plannedWaterRules } from "../matters/water-rules";
import type { Messages } from "../messages/messages";
import { type Item, reasonOf, roomItem } from "./reasons";
import type { Teller } from "./teller";
import { figureOf, isOfWater, waterAsked } from "./water-asked";

/** What must change, and what the plan does not say; the facts that the latter names. */
export interface Demands {
  readonly wrong: readonly Item[];
  readonly unsaid: readonly Item[];
  readonly told: ReadonlySet<FactName>;
}

/**
 * What must be otherwise than planned, a matter an item; and what nobody has said, water and furnishing in a line each.
 *
 * @param before - What is told before, whose reasons are not told again.
 */
export function demandsTold(
  verdict: Verdict,
  teller: Teller,
  messages: Messages,
  before: readonly Item[],
): Demands {
  const notGiven = new Set(verdict.open.flatMap((question) => ("on" in question ? question.on : [])));
  const demands = demandsOf(verdict).filter(
    ({ conditions }) => !(conditions.some(isRoom) && verdict.findings.some(isFarTooSmall)),
  );
  const isUnsaid = ({ conditions }: Demand) =>
    conditions.every(({ on }) => notGiven.has(on)) && !conditions.some(isRoom);
  const unsaid = demands.filter(isUnsaid);
  const item = (demand: Demand) => demandItem(demand, verdict, teller, messages);
  const reasons = new Set(before.flatMap((told) => told.reasons.map(({ text }) => text)));
  return {
    wrong: joined(demands.filter((demand) => !isUnsaid(demand)).map(item)).map(onceOf(reasons)),
    unsaid: unsaidItems(unsaid, onceOf(reasons), verdict, teller, messages),
    told: new Set(unsaid.flatMap(({ conditions }) => conditions.map(({ on }) => on))),
  };
}

/**
 * Water in one line, then what needs its reason told, then the rest in one line. Of a plan that is ruled out the water
 * alone: its furnishing is no matter.
 */
function unsaidItems(
  demands: readonly Demand[],
  once: (item: Item) => Item,
  verdict: Verdict,
  teller: Teller,
  messages: Messages,
): readonly Item[] {
  const conditions = demands.flatMap((demand) => demand.conditions);
  const water = waterAsked(conditions, teller.figure);
  const isRuledOut = verdict.outcome === "unsuitable";
  const others = isRuledOut ? [] : demands.filter((demand) => !demand.conditions.every(isOfWater));
  const items = joined(others.map((demand) => demandItem(demand, verdict, teller, messages, true))).map(once);
  const plain = items.filter(({ reasons }) => reasons.length === 0);
  return [
    ...(conditions.some(isOfWater)
      ? [{ clauses: [], reasons: [{ text: messages.waterToHave(water) }] }]
      : []),
    ...items.filter(({ reasons }) => reasons.length > 0),
    ...(plain.length > 0 ? [{ clauses: plain.flatMap(({ clauses }) => clauses), reasons: [] }] : []),
  ];
}

/** What must change about one matter, and why. */
function demandItem(
  demand: Demand,
  verdict: Verdict,
  teller: Teller,
  messages: Messages,
  alwaysDo = false,
): Item {
  const { conditions, findings } = demand;
  const all = reasonsFor(demand);
  const why = (told: readonly Alike[]) =>
    told
      .filter(([finding], index) => index < mostReasons || isDeed(finding))
      .map((alike) => reasonOf(alike, teller));
  if (conditions.some(isRoom)) {
    const further = all.filter(([finding]) => !isOfRoom(finding));
    const [first] = findings;
    const room = roomItem(findings, first?.weight ?? "restricting", verdict, teller);
    return { ...room, reasons: [...room.reasons, ...why(further)] };
  }
  const saysIt = ([finding]: Alike) =>
    Object.hasOwn(messages.sayWhatToDo, finding.rule) && (alwaysDo || !tellsPlanned(finding));
  const saying = all.filter(([{ rule }]) => Object.hasOwn(messages.sayWhatToDo, rule));
  const isWater = conditions.some(({ on }) => on.startsWith("water."));
  const [said] = saying;
  const isAllSaid = !isWater || (all.length === 1 && said && asksAlone(said, conditions, teller));
  if (!alwaysDo && saying.length === 1 && isAllSaid)
    return { clauses: [], reasons: why([...saying, ...all.filter((alike) => !saying.includes(alike))]) };
  return {
    clauses: clausesOf(conditions, teller),
    reasons: why(all.filter((alike) => !saysIt(alike))),
  };
}

/** What is to be done, a clause a condition; of the company of several in one. */
function clausesOf(conditions: readonly JointCondition[], { clause }: Teller): readonly string[] {
  const [first] = conditions;
  return first?.on === "group.company"
    ? [clause(first, ...conditions.map(({ of }) => of))]
    : conditions.map((condition) => clause(condition));
}

/** Whether the water that a reason tells of is that which all ask for. */
function asksAlone([finding]: Alike, conditions: readonly JointCondition[], { figure }: Teller) {
  const kept = isBy(finding, plannedWaterRules) ? finding.measures?.kept : undefined;
  return conditions.every((condition) => figure(figureOf(condition)) === figure(kept && within(kept)));
}

/** Demands for the same reasons as one, and those for the same thing. */
const joined = (items: readonly Item[]): readonly Item[] =>
  joinedBy(
    ({ clauses, reasons }) => (clauses.length > 0 ? clauses : reasons),
    joinedBy(({ clauses, reasons }) => (reasons.length > 0 ? reasons : clauses), items),
  );

/** Items that are alike in something as one. */
function joinedBy(alikeIn: (item: Item) => unknown, items: readonly Item[]): readonly Item[] {
  const byKey = new Map<string, Item>();
  for (const item of items) {
    const key = JSON.stringify(alikeIn(item));
    const { clauses = [], reasons = [] } = byKey.get(key) ?? {};
    byKey.set(key, {
      clauses: [...new Set([...clauses, ...item.clauses])],
      reasons: [...reasons, ...item.reasons.filter(({ text }) => !reasons.some((one) => one.text === text))],
    });
  }
  return [...byKey.values()];
}

/** An item without the reasons that an earlier one told, unless they are all it says. */
const onceOf =
  (told: Set<string>) =>
  ({ clauses, reasons }: Item): Item => {
    const fresh = reasons.filter(({ text }) => !told.has(text));
    for (const { text } of reasons) told.add(text);
    return { clauses, reasons: clauses.length + fresh.length > 0 ? fresh : reasons };
  };

/** How many reasons are told for one demand: those that count most, and what one does to another. */
const mostReasons = 3;
