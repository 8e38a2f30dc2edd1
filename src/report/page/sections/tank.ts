import { headcount } from "../../../plan/inner";
import { noLess } from "../../figure";
import { commonSides, sidesNeeded } from "../../matters/room";
import { square } from "../../messages/sentences";
import { leastRoom } from "../company/room-of";
import { isGroupKnown, usualGroup } from "../company/usual-group";
import { paragraph, type Section, section } from "../parts";
import { groupTold, type Telling } from "../telling";

/** Tank, ground, cover, and what it does to them. */
export function tank(telling: Telling): readonly Section[] {
  const { known, messages, noted, remarks, write } = telling;
  const { headings, tank: words } = messages.page;
  const height = known("space.height");
  const zones = known("space.zones") ?? [];
  const share = (of: number | undefined) => (of ? write({ value: of, unit: "1" }) : "");
  const [cover, openWater] = [share(known("space.cover")), share(known("space.openWater"))];
  const grounds = known("space.substrate");
  const hides = known("space.hides");
  const isNoneTold = hides?.length === 0 && noted("space.hides", "") !== "";
  const jumps = known("space.jumps");
  const territory = known("space.territory");
  return section(
    "tank",
    headings.tank,
    paragraph(
      noted("space.baseLength", leastTank(telling)),
      noted(
        "space.height",
        height !== undefined && words.height(write(noLess({ value: height, unit: "cm" }))),
      ),
    ),
    paragraph(
      noted("space.zones", zones.length > 0 && words.zones(zones)),
      noted("space.cover", (cover || openWater) && words.cover(cover, openWater)),
      noted("space.openWater", ""),
      noted("space.grownInPlants", known("space.grownInPlants") === true && words.grownIn),
      noted("space.substrate", grounds && words.ground(grounds)),
      noted("space.hides", isNoneTold ? words.noHides : hides?.map(words.hides).join(" ")),
      noted(
        "space.territory",
        territory !== undefined &&
          territory !== "none" &&
          words.territory(territory.holder, write(square({ value: territory.area })), territory.zone),
      ),
    ),
    paragraph(effects(telling), noted("space.jumps", jumps && words.jumps[jumps])),
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

/** The least tank for as many as belong together; empty where it is not known how many these are. */
export function leastTank(telling: Telling): string {
  const { profile, known, messages, size, write } = telling;
  const group = usualGroup(profile);
  const animals = headcount(group);
  const { length, floor } = leastRoom(profile, animals);
  if (!isGroupKnown(profile) || (length === undefined && floor === undefined)) return "";
  return messages.page.tank.least({
    group: groupTold(group, messages),
    animals,
    length: length === undefined ? "" : write(noLess({ value: length, unit: "cm" })),
    floor: floor === undefined ? "" : write(noLess({ value: roundedUp(floor), unit: "cm2" })),
    sides:
      length === undefined
        ? write(commonSides(floor))
        : write(sidesNeeded({ length, ...(floor && { floor }) }, {})),
    further:
      known("social.living") === "alone"
        ? ""
        : size("space.furtherFootprint", known("space.furtherFootprint")),
  });
}

/** A floor in cm² as people say it, no less than it is. */
const roundedUp = (floor: number): number => Math.ceil(floor / 50) * 50;

/** What it does to ground and plants, if all of it is known or any is so. */
function effects({ known, messages, noted }: Telling): string {
  const paths = ["effects.digs", "effects.uproots", "effects.eatsPlants"] as const;
  const [digs, uproots, eatsPlants] = paths.map(known);
  const isKnown = paths.every((path) => known(path) !== undefined) || digs || uproots || eatsPlants;
  const told = { digs: digs === true, uproots: uproots === true, eatsPlants: eatsPlants === true };
  return [isKnown && messages.page.tank.effects(told), ...paths.map((path) => noted(path, ""))]
    .filter(Boolean)
    .join(" ");
}
