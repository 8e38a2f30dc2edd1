import { frozen } from "../../frozen";
import { type TraitDefinition, traitDefinitions } from "./definitions";
import { traitLabels } from "./labels";
import { traitPaths } from "./path";
import type { TraitPath } from "./values";
import { type TraitWords, traitWords } from "./words";

/** What there is to know of a trait: how programs take it and how people read it. */
export interface Trait extends TraitDefinition, TraitWords {}

/** Every trait by path: label, unit, classes, way of resolving. */
export const traitTable: Readonly<Record<TraitPath, Trait>> = /* @__PURE__ */ frozen(
  /* @__PURE__ */ Object.fromEntries(
    /* @__PURE__ */ traitPaths.map((path) => [
      path,
      { label: traitLabels[path], ...traitWords[path], ...traitDefinitions[path] },
    ]),
  ) as Record<TraitPath, Trait>,
);
