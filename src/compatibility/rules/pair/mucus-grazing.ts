import type { Animals } from "../../../plan";
import type { Act, TraitValue } from "../../../species";
import { canHappen } from "../../animals/acts";
import { grownLength } from "../../animals/lengths";
import type { GivenCondition, Judged } from "../../engine/rule/finding";
import { ownRule } from "../../engine/rule/own-rule";
import type { SeenParty } from "../../engine/rule/rule";
import { judgedBySex } from "../shared/by-sex";

type Grazer = SeenParty<"temperament.acts", "diet.foods">;
type Flank = SeenParty<"size.adultLength", "size.bodyShape" | "diet.pace">;
type Answer = Judged<"blocking" | "restricting" | "advisory", Record<never, never>>;

const greens: TraitValue<"diet.foods"> = ["algae", "plants"];

/**
 * Does it rasp the slime coat off the other's flank?
 *
 * Slow swimmers suffer, and flat or broad flanks; small spindles that keep moving are let alone, and whatever is small and
 * quick. Who rasps only where it finds too little is worth knowing beside all that are not slow.
 */
export const mucusGrazing = /* @__PURE__ */ ownRule({
  id: "mucus-grazing",
  way: "each-way",
  needs: { from: ["temperament.acts"], to: ["size.adultLength"] },
  uses: { from: ["diet.foods"], to: ["size.bodyShape", "diet.pace"] },
  decidesBy: ["broadFlank"],
  mayYield: ["blocking", "restricting", "advisory"],
  judge: ({ from, to, thresholds }) =>
    judgedBySex<Grazer, Flank, Answer["weight"], Record<never, never>>(from, to, (grazer, flank) =>
      rasped(grazer, flank, thresholds),
    ),
});

function rasped(from: Grazer, to: Flank, { broadFlank }: { readonly broadFlank: number }): readonly Answer[] {
  const act = from["temperament.acts"].find(
    (one) => one.does === "rasps-mucus" && canHappen(one, from.party, to.party),
  );
  if (!act || to.party.kind !== "fish" || isOne(from.party, to.party)) return [];
  const flat = (to["size.bodyShape"] ?? "short-deep") === "short-deep";
  const pace = to["diet.pace"] ?? "slow";
  const broad = grownLength(to.party, to["size.adultLength"]) >= broadFlank;
  const isLetAlone = !broad && (pace === "fast" || (pace !== "slow" && !flat));
  if (isLetAlone) return [];
  if (act.when === "crowded" && pace !== "slow") return [{ weight: "advisory", watchFor: "torn fins" }];
  const condition = removedBy(act, from);
  return [
    condition
      ? { weight: "restricting", watchFor: "torn fins", condition }
      : { weight: "blocking", watchFor: "torn fins" },
  ];
}

/** Whether it is one animal by itself. */
const isOne = (from: Animals, to: Animals): boolean => from === to && from.kin.count === 1;

/** Greens enough that none is hungry, where it takes any and does not rasp for being grown. */
function removedBy({ from: since }: Act, { "diet.foods": foods = [] }: Grazer): GivenCondition | undefined {
  const taken = greens.filter((food) => foods.includes(food));
  if (since === "adult" || taken.length === 0) return undefined;
  return { on: "group.offerings", of: "from", wanted: { oneOf: taken } };
}
