import { square } from "../../messages/sentences";
import { paragraph, type Section, section } from "../parts";
import type { Telling } from "../telling";
import { roomOf } from "./room";

/** Tank, ground, cover and what it does to them. */
export function tank(telling: Telling): readonly Section[] {
  const { known, messages, remarks, size, who, write } = telling;
  const { headings, tank: words } = messages.page;
  const room = roomOf(telling);
  const further = known("space.furtherFootprint");
  const height = known("space.height");
  const zones = known("space.zones") ?? [];
  const share = (of: number | undefined) => (of ? write({ value: of, unit: "1" }) : "");
  const [cover, openWater] = [share(known("space.cover")), share(known("space.openWater"))];
  const grounds = known("space.substrate");
  const jumps = known("space.jumps");
  const territory = known("space.territory");
  const [digs, uproots, eatsPlants] = [
    known("effects.digs"),
    known("effects.uproots"),
    known("effects.eatsPlants"),
  ];
  const isKnown =
    [digs, uproots, eatsPlants].every((effect) => effect !== undefined) || digs || uproots || eatsPlants;
  return section(
    "tank",
    headings.tank,
    paragraph(
      room && words.least(who, room.animals, room.length, room.floor),
      further !== undefined && words.further(size("space.furtherFootprint", further)),
      height !== undefined && words.height(size("space.height", height)),
    ),
    paragraph(
      zones.length > 0 && words.zones(zones),
      (cover || openWater) && words.cover(cover, openWater),
      known("space.grownInPlants") === true && words.grownIn,
      grounds && words.ground(grounds),
      ...(known("space.hides") ?? []).map(words.hides),
      territory !== undefined &&
        territory !== "none" &&
        words.territory(territory.holder, write(square({ value: territory.area })), territory.zone),
      isKnown &&
        words.effects({ digs: digs === true, uproots: uproots === true, eatsPlants: eatsPlants === true }),
      jumps && words.jumps[jumps],
    ),
    remarks([
      "space.baseLength",
      "space.height",
      "space.zones",
      "space.cover",
      "space.openWater",
      "space.grownInPlants",
      "space.substrate",
      "space.hides",
      "space.territory",
      "space.jumps",
      "effects.digs",
      "effects.uproots",
      "effects.eatsPlants",
    ]),
  );
}
