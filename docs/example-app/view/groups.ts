import { applyForm } from "vivary/species";
import { type Draft, withValue } from "../plan/draft";
import { countFields, groupFields } from "../plan/fields";
import { profileOf } from "../plan/profiles";
import { nameOf } from "../texts/texts";
import { choice } from "./choice";
import { button, type Child, element } from "./element";
import { fieldId, fieldSetView, fieldView } from "./field";
import { labelled } from "./labelled";
import type { Change, Shown } from "./shown";

/** The groups of animals, each with its fields. */
export const groupsView = (shown: Shown, change: Change): readonly Child[] =>
  shown.draft.groups.map((group, index) => groupView(group, index, shown, change));

function groupView(group: Draft["groups"][number], index: number, shown: Shown, change: Change): HTMLElement {
  const { texts } = shown.language;
  const path = ["groups", index];
  const id = fieldId(path);
  const { common, scientific } = namesOf(group, shown);
  const remove = () => change((draft) => withValue(draft, path, undefined), "done", texts.removed(common));
  return element(
    "section",
    { class: "group", "aria-labelledby": `${id}-name` },
    element(
      "div",
      { class: "named" },
      element(
        "h3",
        { id: `${id}-name` },
        common,
        common !== scientific && element("i", { lang: "la" }, ` ${scientific}`),
      ),
      button(texts.remove(common), remove, { id: `${id}-remove`, class: "quiet" }),
    ),
    element("p", { class: "note", "data-field": id }),
    fieldSetView(countFields(index), path, shown, change),
    element(
      "div",
      { class: "fields" },
      formView(group, index, shown, change),
      ...groupFields(index).map((field) => fieldView(field, shown, change)),
    ),
  );
}

/** What a group is called, its form included, and its scientific name. */
function namesOf({ species, form }: Draft["groups"][number], { language: { code } }: Shown) {
  const profile = profileOf(species);
  if (!profile) return { common: species, scientific: species };
  const kept = form === undefined ? profile : applyForm(profile, form);
  return { common: nameOf(kept, code), scientific: profile.taxonomy.name };
}

/** The choice of a form, where the species has some. */
function formView(
  { species, form }: Draft["groups"][number],
  index: number,
  shown: Shown,
  change: Change,
): Child {
  const profile = profileOf(species);
  if (!profile?.forms) return undefined;
  const { texts, code } = shown.language;
  const path = ["groups", index, "form"];
  const words = Object.keys(profile.forms).map((id) => [id, nameOf(applyForm(profile, id), code)] as const);
  const select = choice({ id: fieldId(path), value: form ?? "", words, unsaid: texts.asSold }, (word) =>
    change((draft) => withValue(draft, path, word || undefined), "done"),
  );
  return labelled(select, texts.labels.form);
}
