import { type Remedies, type Remedy, remedies } from "vivary/advice";
import { type Plan, planData } from "vivary/plan";
import { reportPartsIn } from "vivary/report";
import type { Judged } from "../plan/judged";
import { button, type Child, element } from "./element";
import type { Change, Shown } from "./shown";

type JudgedPlan = Extract<Judged, { is: "judged" }>;

/** How many ways out are shown. */
const most = 3;

/** Ways out of a plan that does not work as it is, sought when they are asked for: that takes a moment. */
export function remediesView(judged: JudgedPlan, shown: Shown, change: Change): readonly Child[] {
  const { outcome } = judged.verdict;
  if (outcome !== "unsuitable" && outcome !== "undetermined") return [];
  const { texts } = shown.language;
  const found = element("div", { id: "ways", tabindex: "-1" });
  const seek = () => {
    found.replaceChildren(element("p", { role: "status" }, texts.remedies.seeking));
    setTimeout(() => {
      found.replaceChildren(...waysOut(judged, shown, change));
      found.focus();
    }, 50);
  };
  return [
    element("h3", {}, texts.headings.remedies),
    button(texts.remedies.seek, seek, { id: "seek-ways" }),
    found,
  ];
}

function waysOut(judged: JudgedPlan, shown: Shown, change: Change): readonly HTMLElement[] {
  const found = foundFor(judged.plan);
  if (found.remedies.length === 0) return saidOf(found, judged, shown).map((said) => element("p", {}, said));
  return found.remedies
    .map((remedy) => ({ remedy, said: saidOf({ remedies: [remedy] }, judged, shown) }))
    .filter(({ said }) => said.length > 0)
    .map((way, index) => wayView(way, index, shown, change));
}

/** Ways to a plan that suits, else to one of which only conditions are left, which have buttons of their own. */
function foundFor(plan: Plan): Remedies {
  const found = remedies(plan, { most });
  return found.remedies.length > 0 ? found : remedies(plan, { most, want: "conditional" });
}

/** A way out in words; one that only puts in what the plan does not say has none. */
interface Way {
  readonly remedy: Remedy;
  readonly said: readonly string[];
}

function wayView({ remedy, said }: Way, index: number, shown: Shown, change: Change): HTMLElement {
  const { texts } = shown.language;
  const title = element("h4", { id: `way-${index}` }, texts.remedies.way(index + 1));
  const take = () => change(() => planData(remedy.plan), "done", texts.remedies.taken);
  return element(
    "div",
    { class: "way" },
    title,
    ...said.map((sentence) => element("p", {}, sentence)),
    button(texts.remedies.take, take, {
      id: `take-${index}`,
      "aria-labelledby": `take-${index} way-${index}`,
    }),
  );
}

/** What to do, or what stands in the way, in the library's words. */
const saidOf = (found: Remedies, { verdict }: JudgedPlan, { language, units }: Shown): readonly string[] =>
  reportPartsIn(language.messages, verdict, { units, remedies: found }).flatMap(({ part, items }) =>
    part === "remedies" ? items : [],
  );
