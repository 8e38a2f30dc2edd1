import { floorFields, tankFields, tankSets, waterFields } from "../plan/fields";
import { type Child, element } from "./element";
import { fieldSetView, fieldView } from "./field";
import type { Change, Shown } from "./shown";

/** The tank and how it is furnished. */
export const tankView = (shown: Shown, change: Change): readonly Child[] => [
  element("h2", { tabindex: "-1" }, shown.language.texts.headings.tank),
  fieldSetView(floorFields(shown.draft), ["tank", "base"], shown, change),
  element("div", { class: "fields" }, ...tankFields.map((field) => fieldView(field, shown, change))),
  ...tankSets.map((set) => fieldSetView(set, ["tank", set.legend], shown, change)),
];

/** The water. */
export const waterView = (shown: Shown, change: Change): readonly Child[] => [
  element("h2", { tabindex: "-1" }, shown.language.texts.headings.water),
  element("div", { class: "fields" }, ...waterFields.map((field) => fieldView(field, shown, change))),
];
