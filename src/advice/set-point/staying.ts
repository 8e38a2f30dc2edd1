import type { Animal } from "./animals";
import { apartIn, sharedOrConflict } from "./conflict";
import { largestCompany } from "./largest-company";
import { axes, waterAxes } from "./room/axes";
import { sharedWaterOf } from "./room/rooms";
import type { Terms } from "./terms";

/** The most animals that share water; of equally many the earliest. */
export function stayingOf(animals: readonly Animal[], terms: Terms): readonly Animal[] {
  const able = animals.filter((animal) => "rooms" in sharedOrConflict([animal], terms));
  const anything = { min: Number.NEGATIVE_INFINITY, max: Number.POSITIVE_INFINITY };
  const those = (places: readonly number[]) => able.filter((_, place) => places.includes(place));
  const memberAt = (place: number) => able.findIndex((animal) => animal.place === place);
  const staying = largestCompany({
    spans: able.map(({ waters }) => waterAxes.map((axis) => waters[axis]?.given ?? anything)),
    least: waterAxes.map((axis) => axes[axis].giving(terms.thresholds).least),
    apart: (members) => apartIn(those(members), terms)?.map((place) => memberAt(place)),
    isBearable: (members) => sharedWaterOf(those(members), terms) !== undefined,
  });
  return those(staying);
}
