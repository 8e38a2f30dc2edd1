import { frozen } from "../../frozen";
import { type TraitDefinition, traitDefinitions } from "./definitions";
import { traitLabels } from "./labels";
import { traitPaths } from "./path";
import { type PlausibleSpan, plausibleSpans } from "./plausible";
import type { TraitPath } from "./values";
import { type TraitWords, traitWords } from "./words";

/** What there is to know of a trait: how programs take it and how people read it. */
export interface Trait extends TraitDefinition, TraitWords {
  /** Values outside this span are mistakes of unit or typing. In the trait's unit. */
  readonly plausible?: PlausibleSpan;
}

/** Every trait by path: label, unit, classes, way of resolving. */
export const traitTable: Readonly<Record<TraitPath, Trait>> = /* @__PURE__ */ frozen(
  /* @__PURE__ */ Object.fromEntries(
    /* @__PURE__ */ traitPaths.map((path) => [
      path,
      {
        label: traitLabels[path],
        ...traitWords[path],
        ...traitDefinitions[path],
        ...(plausibleSpans[path] && { plausible: plausibleSpans[path] }),
      },
    ]),
  ) as Record<TraitPath, Trait>,
);
