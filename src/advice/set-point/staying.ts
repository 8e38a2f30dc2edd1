import { axes, waterAxes } from "../../compatibility/inner";
import type { Animal } from "./animals";
import { apartAmong, sharedOrConflict } from "./conflict";
import { largestCompany } from "./largest-company";
import { sharedWaterOf } from "./rooms";
import type { Terms } from "./terms";

/** The most animals that share water; of equally many the earliest. */
export function stayingOf(animals: readonly Animal[], terms: Terms): readonly Animal[] {
  const able = animals.filter((animal) => "rooms" in sharedOrConflict([animal], terms));
  const anything = { min: Number.NEGATIVE_INFINITY, max: Number.POSITIVE_INFINITY };
  const those = (places: readonly number[]) => able.filter((_, place) => places.includes(place));
  const memberAt = (place: number) => able.findIndex((animal) => animal.place === place);
  const pairsApart = apartAmong(able, terms).map((places) => places.map(memberAt));
  const staying = largestCompany({
    spans: able.map(({ waters }) => waterAxes.map((axis) => waters[axis]?.given ?? anything)),
    least: waterAxes.map((axis) => axes[axis].giving(terms.thresholds).least),
    apart: (members) => pairsApart.find((two) => two.every((one) => members.includes(one))),
    isBearable: (members) => sharedWaterOf(those(members), terms) !== undefined,
  });
  return those(staying);
}
