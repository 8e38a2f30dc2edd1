import { frozen } from "../../frozen";
import type { CitableSource } from "../../species";
import { items } from "./generated";

/**
 * Every source that a record cites, in CSL-JSON, by the id that its `cite` names. Remarks on the reading stand in
 * `custom`, where bibliographies do not print them. It cannot be changed.
 *
 * @example
 * ```ts
 * import { sources } from "vivary/evidence";
 *
 * sources["yanar-2019"]?.DOI; // => "10.1016/j.aquaculture.2018.11.041"
 * sources["constructor"]; // => undefined
 * ```
 */
export const sources: Readonly<Record<string, CitableSource | undefined>> = /* @__PURE__ */ byId(items);

/** Without a prototype, so that no id finds what is no source. */
function byId(list: readonly CitableSource[]): Readonly<Record<string, CitableSource>> {
  const held: Record<string, CitableSource> = Object.create(null);
  for (const item of list) held[item.id] = item;
  return frozen(held);
}
