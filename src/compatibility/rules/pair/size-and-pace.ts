import { decimal } from "../../../decimal";
import { defineRule } from "../../rule";
import { cm } from "../shared/cm";
import { shareAny } from "../shared/share-any";
import { preyLength, roomLength } from "../shared/total-length";

/** Not about being eaten: a large fish that rushes about leaves a small one no rest, unless it can withdraw. */
export const sizeAndPace = defineRule({
  id: "size-and-pace",
  question: "Is it so much longer and faster that the other is pushed aside?",
  way: "each-way",
  needs: { from: ["diet.pace", "size.adultLength"], to: ["size.adultLength"] },
  uses: { from: ["space.zones"], to: ["space.zones", "diet.pace"] },
  decidesBy: ["muchLonger", "coverFromBustle"],
  mayYield: ["restricting"],
  judge: ({ from, to, thresholds }) => {
    if (from["diet.pace"] !== "fast" || to["diet.pace"] === "fast") return [];
    if (!bothFish(from.party.species, to.party.species)) return [];
    const longer = roomLength(from.party, from["size.adultLength"]);
    const shorter = preyLength(to.party, to["size.adultLength"]) ?? 0;
    const least = decimal(longer / thresholds.muchLonger);
    if (shorter > least || !shareAny(from["space.zones"], to["space.zones"])) return [];
    const measures = { longer: cm(longer), shorter: cm(shorter) };
    return [
      {
        weight: "restricting",
        measures,
        watchFor: "hiding",
        condition: { on: "tank.cover", within: { min: thresholds.coverFromBustle } },
      },
    ];
  },
});

const bothFish = (...species: readonly { readonly taxonomy: { readonly kind: string } }[]) =>
  species.every(({ taxonomy }) => taxonomy.kind === "fish");
