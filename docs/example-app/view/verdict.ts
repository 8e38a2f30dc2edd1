import { type ReportPart, type ReportPartName, reportPartsIn } from "vivary/report";
import type { Judged } from "../plan/judged";
import { conditionsView } from "./conditions";
import { type Child, element, listOf } from "./element";
import { fieldId } from "./field";
import { remediesView } from "./remedies";
import type { Change, Shown } from "./shown";

/** The verdict: the library's words, and buttons where something can be done. */
export function verdictView(judged: Judged, shown: Shown, change: Change): readonly Child[] {
  const { texts } = shown.language;
  const heading = element("h2", { id: "verdict", tabindex: "-1" }, texts.headings.verdict);
  if (judged.is === "without animals") return [heading, element("p", {}, texts.withoutAnimals)];
  if (judged.is === "unreadable") {
    const ids = new Set(judged.problems.map(({ path }) => fieldId(path)));
    return [heading, element("p", {}, texts.unreadable), listOf([...ids].map(linkTo), { class: "mend" })];
  }
  const { verdict } = judged;
  const parts = reportPartsIn(shown.language.messages, verdict, { units: shown.units });
  const told = (name: ReportPartName) => parts.filter(({ part }) => part === name).map(partView);
  return [
    heading,
    element("div", { class: "outcome", "data-outcome": verdict.outcome }, ...told("answer")),
    ...told("blocking"),
    ...told("deciding"),
    ...remediesView(judged, shown, change),
    ...mustHold(judged, shown, change),
    ...told("advisory"),
    ...told("cautions"),
    ...told("closing"),
  ];
}

/** What must hold; of a plan that is ruled out folded away, since it would not be enough. */
function mustHold(judged: Extract<Judged, { is: "judged" }>, shown: Shown, change: Change): readonly Child[] {
  const { conditions, outcome } = judged.verdict;
  const view = conditionsView(judged, shown, change);
  if (outcome !== "unsuitable" || conditions.length === 0) return view;
  const { besides } = shown.language.messages.titles;
  return [element("details", { id: "besides" }, element("summary", {}, besides), ...view)];
}

/** A part of the report: a list with its title, or lines that lead. */
function partView({ part, title, items }: ReportPart): HTMLElement {
  const isList = part !== "answer" && part !== "closing";
  return element(
    "div",
    { class: `part ${part}` },
    title !== undefined && element("h3", {}, title),
    ...(isList ? [listOf(items)] : items.map((item) => element("p", {}, item))),
  );
}

/** A way to a field, by what it is called and whose it is. */
function linkTo(id: string): Node {
  const field = document.querySelector(`input#${id}, select#${id}, input[id^="${id}-"]`);
  const label = document.querySelector(`label[for="${id}"], #${id}-name`)?.textContent ?? id;
  const whole = field?.closest(".group") ?? field?.closest("fieldset");
  const of = whole?.querySelector("h3, legend")?.firstChild?.textContent;
  const name = of ? `${of}: ${label}` : label;
  return field ? element("a", { href: `#${field.id}` }, name) : document.createTextNode(name);
}
