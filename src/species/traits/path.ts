import { oneOf } from "../../checks";
import { frozen } from "../../frozen";
import { traitDefinitions } from "./definitions";
import type { Section, TraitPath } from "./values";

/** Every trait path, in the order of the table. */
export const traitPaths: readonly TraitPath[] = /* @__PURE__ */ frozen(
  /* @__PURE__ */ Object.keys(traitDefinitions) as TraitPath[],
);

/** The traits without which a record is incomplete. */
export const essentialTraits: readonly TraitPath[] = /* @__PURE__ */ frozen(
  /* @__PURE__ */ traitPaths.filter((path) => traitDefinitions[path].essential),
);

const parts: ReadonlyMap<TraitPath, ReturnType<typeof splitPath>> = /* @__PURE__ */ new Map(
  /* @__PURE__ */ traitPaths.map((path) => [path, frozen(path.split(".") as [Section, string])]),
);

/**
 * `"water.temperature"` as section and name.
 *
 * @throws InvalidInputError where there is no such trait.
 */
export function splitPath(path: TraitPath): readonly [section: Section, name: string] {
  return parts.get(path) ?? splitPath(oneOf(path, traitPaths, "trait"));
}
