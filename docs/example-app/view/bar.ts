import type { UnitSystem } from "vivary/report";
import { isSystem } from "../plan/quantities";
import { isSpoken, type LanguageCode, spoken } from "../texts/languages";
import { choice } from "./choice";
import { button, type Child, element } from "./element";
import { labelled } from "./labelled";
import type { Shown } from "./shown";

/** What can be done with the plan as a whole, and with the page. */
export interface Acts {
  readonly speak: (code: LanguageCode) => void;
  readonly measure: (units: UnitSystem) => void;
  readonly share: () => void;
  readonly download: () => void;
  readonly open: (file: File) => void;
  readonly undo: () => void;
  readonly empty: () => void;
  readonly example: () => void;
}

/** Language and units. */
export function settingsView({ language, units }: Shown, { speak, measure }: Acts): readonly Child[] {
  const { texts, code } = language;
  const names = Object.entries(spoken);
  const systems = Object.entries(texts.systems);
  return [
    labelled(
      choice({ id: "language", value: code, words: names }, (word) => isSpoken(word) && speak(word)),
      texts.language,
    ),
    labelled(
      choice({ id: "units", value: units, words: systems }, (word) => isSystem(word) && measure(word)),
      texts.units,
    ),
  ];
}

/** What can be done with the plan. */
export function actsView({ language: { texts } }: Shown, acts: Acts): readonly Child[] {
  const file = element("input", { id: "file", type: "file", accept: ".json,application/json", hidden: true });
  file.addEventListener("change", () => {
    const [chosen] = file.files ?? [];
    if (chosen) acts.open(chosen);
    file.value = "";
  });
  const { actions } = texts;
  return [
    button(actions.share, acts.share, { id: "share" }),
    button(actions.download, acts.download, { id: "download" }),
    button(actions.open, () => file.click(), { id: "open" }),
    file,
    button(actions.undo, acts.undo, { id: "undo" }),
    button(actions.example, acts.example, { id: "example" }),
    button(actions.empty, acts.empty, { id: "empty" }),
  ];
}
