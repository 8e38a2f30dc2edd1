import type { Offering } from "vivary/plan";
import { withValue } from "../plan/draft";
import { offeringFields } from "../plan/fields";
import { button, type Child, element } from "./element";
import { fieldView } from "./field";
import type { Change, Shown } from "./shown";

const usual: Offering = { food: "dry", place: "midwater", light: "day" };

/** What is fed. */
export function offeringsView(shown: Shown, change: Change): readonly Child[] {
  const { texts } = shown.language;
  const { offerings = [] } = shown.draft;
  const add = () =>
    change((draft) => withValue(draft, ["offerings"], [...(draft.offerings ?? []), usual]), "done");
  return [
    element("h2", { tabindex: "-1" }, texts.headings.food),
    element("p", { class: "note", "data-answers": "offerings" }),
    ...offerings.map((_, index) => {
      const name = texts.offering(index + 1);
      const remove = () =>
        change((draft) => withValue(draft, ["offerings", index], undefined), "done", texts.removed(name));
      return element(
        "fieldset",
        {},
        element("legend", {}, name),
        element(
          "div",
          { class: "fields" },
          ...offeringFields(index).map((field) => fieldView(field, shown, change)),
        ),
        button(texts.remove(name), remove, { id: `offerings-${index}-remove`, class: "quiet" }),
      );
    }),
    button(texts.addOffering, add, { id: "offerings-add" }),
  ];
}
