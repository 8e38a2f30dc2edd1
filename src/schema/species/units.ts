import { type TraitPath, traitTable } from "../../species";
import { measureOf, type Unit, unitsOf } from "../../units";

/** The units that the sizes of a trait may be told in; none where it has no unit, its own alone of a share. */
export function unitsFor(trait: TraitPath): readonly string[] {
  const { unit } = traitTable[trait];
  if (unit === undefined || unit === "1") return unit ? [unit] : [];
  return unitsOf(measureOf(unit as Unit));
}
