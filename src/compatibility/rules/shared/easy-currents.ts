import type { TraitValue as Value } from "../../../species";
import { between } from "../../currents";
import type { Seen } from "../../rule";

/**
 * The currents an animal is at ease in. A form bred with long fins swims slower than its species – zebrafish by a fifth
 * (Plaut 2000, from memory) – and is spared the strongest current of its species, unless a source states its own.
 */
export function easyCurrents(of: Seen<"water.flow", "appearance.longFins">): Value<"water.flow"> {
  const { min, max } = of["water.flow"];
  const { species } = of.party;
  const form = of.party.form === undefined ? undefined : species.forms?.[of.party.form];
  const bredLong = form?.appearance?.longFins && !form.water?.flow;
  if (!bredLong || !(of["appearance.longFins"] ?? true)) return { min, max };
  return { min, max: between(min, max).at(-2) ?? max };
}
