import type { TraitValue as Value } from "../../../species";
import type { Condition, SideName } from "../../finding";
import { defineRule, type Seen } from "../../rule";
import { type Act, canHappen } from "../shared/acts";
import { roomLength } from "../shared/total-length";

type Grazer = Seen<"temperament.acts", "diet.foods">;

const greens: Value<"diet.foods"> = ["algae", "plants"];

/** Flat or broad flanks and slow swimmers suffer; small spindles that keep moving are let alone. */
export const mucusGrazing = defineRule({
  id: "mucus-grazing",
  question: "Does it rasp the slime coat off the other's flank?",
  way: "each-way",
  needs: { from: ["temperament.acts"], to: ["size.adultLength"] },
  uses: { from: ["diet.foods"], to: ["size.bodyShape", "diet.pace"] },
  decidesBy: ["broadFlank"],
  mayYield: ["restricting"],
  judge: ({ from, to, thresholds }) => {
    const acts = from["temperament.acts"].filter(({ does }) => does === "rasps-mucus");
    const [act] = acts.filter((rasping) => canHappen(rasping, from.party, to.party));
    if (!act || to.party.species.taxonomy.kind !== "fish") return [];
    const flat = (to["size.bodyShape"] ?? "short-deep") === "short-deep";
    const slow = (to["diet.pace"] ?? "slow") === "slow";
    const broad = roomLength(to.party, to["size.adultLength"]) >= thresholds.broadFlank;
    if (!flat && !slow && !broad) return [];
    return [{ weight: "restricting", watchFor: "torn fins", condition: removedBy(act, from) }];
  },
});

/** Greens enough that none is hungry, where it takes any; else only young that do not rasp yet. */
function removedBy({ from: since }: Act, { "diet.foods": foods = greens }: Grazer): Condition<SideName> {
  const taken = greens.filter((food) => foods.includes(food));
  if (since === "adult" || taken.length === 0) return { on: "group.grown", of: "from", is: false };
  return { on: "group.offerings", of: "from", is: taken };
}
