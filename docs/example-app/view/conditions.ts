import { type JointCondition, planThatMeets } from "vivary/compatibility";
import { isMet, type Plan, planData } from "vivary/plan";
import { sentenceIn } from "vivary/report";
import type { Judged } from "../plan/judged";
import { button, type Child, element, listOf } from "./element";
import type { Change, Shown } from "./shown";

type JudgedPlan = Extract<Judged, { is: "judged" }>;

/** What must hold: what is amiss, and what the plan does not say yet, each with a button where one can help. */
export function conditionsView(judged: JudgedPlan, shown: Shown, change: Change): readonly Child[] {
  const { plan, verdict } = judged;
  const { texts } = shown.language;
  const amiss = verdict.conditions.filter((condition) => isMet(condition, plan) === false);
  const unsaid = verdict.conditions.filter((condition) => isMet(condition, plan) === undefined);
  const together = unsaid.filter(({ excludes }) => excludes === undefined);
  const filled = together.reduce((known, condition) => planThatMeets(condition, known) ?? known, plan);
  const item = (condition: JointCondition, act: string) =>
    conditionView(condition, act, judged, shown, change);
  return [
    amiss.length > 0 && element("h3", {}, texts.toChange),
    listOf(
      amiss.map((condition) => item(condition, texts.change)),
      { class: "conditions" },
    ),
    unsaid.length > 0 && element("h3", {}, texts.toProvide),
    listOf(
      unsaid.map((condition) => item(condition, texts.provide)),
      { class: "conditions" },
    ),
    together.length > 1 && button(texts.all, () => take(filled, shown, change), { id: "put-all-in" }),
  ];
}

/** Goes on with another plan. */
const take = (plan: Plan, { language }: Shown, change: Change) =>
  change(() => planData(plan), "done", language.texts.changed);

function conditionView(
  condition: JointCondition,
  act: string,
  { plan, verdict }: JudgedPlan,
  shown: Shown,
  change: Change,
): HTMLElement {
  const { texts, messages } = shown.language;
  const { findings, excludes = [] } = condition;
  const id = idOf(condition, verdict);
  const changed = planThatMeets(condition, plan);
  const told = (part: Parameters<typeof sentenceIn>[2]) =>
    sentenceIn(messages, verdict, part, { units: shown.units });
  const others = excludes.flatMap((place) => verdict.conditions[place] ?? []).map(told);
  const reasons = findings.flatMap((index) => verdict.findings[index] ?? []).map(told);
  return element(
    "div",
    {},
    element("p", { id: `${id}-text` }, told(condition)),
    others.length > 0 && element("p", { class: "not-at-once" }, texts.notAtOnce(others.join(" "))),
    changed
      ? button(act, () => take(changed, shown, change), { id, "aria-labelledby": `${id} ${id}-text` })
      : element("p", { class: "by-hand" }, texts.byHand),
    element(
      "details",
      { id: `${id}-why` },
      element("summary", { id: `${id}-summary`, "aria-labelledby": `${id}-summary ${id}-text` }, texts.why),
      listOf([...new Set(reasons)]),
    ),
  );
}

/** What a condition is called on the page: by its fact and its party, and further ones of these by a number. */
function idOf(condition: JointCondition, { conditions }: JudgedPlan["verdict"]): string {
  const { on, of } = condition;
  const alike = conditions.filter((other) => other.on === on && other.of === of);
  const further = alike.indexOf(condition);
  return ["condition", ...on.split("."), of ?? "tank", ...(further > 0 ? [further + 1] : [])].join("-");
}
