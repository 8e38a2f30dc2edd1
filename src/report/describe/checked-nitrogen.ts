import type { NitrogenOfFood } from "../../advice";
import { objectOf } from "../../checks";
import { ends } from "../../ranges/inner";

/** Refuses what is no nitrogen of food. */
export function checkNitrogen(nitrogen: NitrogenOfFood): void {
  const { given, filter } = objectOf(nitrogen, "");
  ends(given, "given");
  if (filter !== undefined) ends(filter, "filter");
}
