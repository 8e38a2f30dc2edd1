import { type Move, type Remedy, remedies } from "vivary/advice";
import { planData } from "vivary/plan";
import { sentenceIn } from "vivary/report";
import type { Judged } from "../plan/judged";
import { button, type Child, element, listOf } from "./element";
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
  const { texts, messages } = shown.language;
  const { remedies: found, obstacle } = remedies(judged.plan, { most });
  if (found.length > 0) return found.map((remedy, index) => wayView(remedy, index, judged, shown, change));
  const told = obstacle && sentenceIn(messages, judged.verdict, obstacle, { units: shown.units });
  return [element("p", {}, [texts.remedies.none, told].filter(Boolean).join(" "))];
}

function wayView(
  { moves, plan }: Remedy,
  index: number,
  judged: JudgedPlan,
  shown: Shown,
  change: Change,
): HTMLElement {
  const { texts } = shown.language;
  const title = element("h4", { id: `way-${index}` }, texts.remedies.way(index + 1));
  const take = () => change(() => planData(plan), "done", texts.remedies.taken);
  return element(
    "div",
    { class: "way" },
    title,
    listOf(moves.flatMap((move) => saidOf(move, judged, shown))),
    button(texts.remedies.take, take, {
      id: `take-${index}`,
      "aria-labelledby": `take-${index} way-${index}`,
    }),
  );
}

/** What to do, in the library's words where it has some. */
function saidOf(
  { kind, of, moved, meets }: Move,
  { verdict }: JudgedPlan,
  { language, units }: Shown,
): readonly string[] {
  const { texts, messages, code } = language;
  const party = of === undefined ? undefined : verdict.parties[of];
  const name = party?.names[code]?.[0] ?? party?.name ?? "";
  if (kind === "rehome") return [texts.remedies.rehome(moved, name)];
  const said = meets.map((condition) => sentenceIn(messages, verdict, condition, { units }));
  return said.length > 0 ? said : [texts.remedies.moves[kind]];
}
