import { decimal } from "../../../decimal";
import type { Animals } from "../../../plan";
import type { Act, TraitValue } from "../../../species";
import { canHappen } from "../../animals/acts";
import { longestLength } from "../../animals/lengths";
import { besideWanted, type WantedBy, wantedBy } from "../../animals/wanted";
import type { Judged } from "../../engine/rule/finding";
import type { MeasureKinds } from "../../engine/rule/measures";
import { ownRule } from "../../engine/rule/own-rule";
import type { SeenParty } from "../../engine/rule/rule";
import type { ThresholdValues } from "../../threshold-values";
import { sparingBySex } from "../shared/by-sex";

type Grazer = SeenParty<"temperament.acts", "diet.foods" | WantedBy>;
type Flank = SeenParty<"size.adultLength", "size.bodyShape" | "diet.pace" | WantedBy>;
type Answer = Judged<"blocking" | "restricting" | "advisory", typeof measures>;

/** What it takes to graze, where it may rasp all the same. */
const measures = { fed: ["food"] } as const satisfies MeasureKinds;

const anyGreens: TraitValue<"diet.foods"> = ["algae", "plants"];

/**
 * Does it rasp the slime coat off the other's flank?
 *
 * Slow swimmers suffer, and flat or broad flanks; small spindles that keep moving are let alone, and whatever is small and
 * quick; of those that are nearly as long as broad ones nobody can tell where greens do not keep it away. Who rasps only
 * where it finds too little is worth knowing beside all that are not slow. Who does so at any time does it less where it is
 * fed greens; of slow fish with flat, broad flanks, and of a disc on the ground, nobody can tell whether it leaves them
 * alone then. Where one sex would be spared and the plan names none, it restricts to that; where only the females that will
 * join males would harm or be harmed, to males.
 *
 * Captive manatees were wounded where the *Pterygoplichthys* beside them found no food, and in springs full of algae these
 * hang on manatees too: Pérez-Flores & Pigenutt-Galindo 2020, Hidrobiológica 30:173-179, abstract; Nico, Loftus & Reid
 * 2009, Aquatic Invasions 4:511-519, from memory. That it is the same with flanks of fishes is common practice.
 */
export const mucusGrazing = /* @__PURE__ */ ownRule({
  id: "mucus-grazing",
  way: "each-way",
  needs: { from: ["temperament.acts"], to: ["size.adultLength"] },
  uses: {
    from: /* @__PURE__ */ besideWanted("diet.foods"),
    to: /* @__PURE__ */ besideWanted("size.bodyShape", "diet.pace"),
  },
  mayAdd: wantedBy,
  mayRestrict: ["diet.foods", "size.bodyShape", "diet.pace"],
  decidesBy: ["broadFlank", "nearlyBroad"],
  mayYield: ["blocking", "restricting", "advisory"],
  measures,
  judge: ({ from, to, thresholds }) =>
    from["temperament.acts"].some(isRasping)
      ? sparingBySex(from, to, (grazer, flank) => rasped(grazer, flank, thresholds))
      : [],
});

const isRasping = ({ does }: Act) => does === "rasps-mucus";

type Deciding = Pick<ThresholdValues, "broadFlank" | "nearlyBroad">;

function rasped(from: Grazer, to: Flank, { broadFlank, nearlyBroad }: Deciding): readonly Answer[] {
  const act = from["temperament.acts"].find((one) => isRasping(one) && canHappen(one, from.party, to.party));
  if (!act || to.party.kind !== "fish" || isOne(from.party, to.party)) return [];
  const shape = to["size.bodyShape"];
  const flat = shape === undefined || shape === "short-deep";
  const pace = to["diet.pace"] ?? "slow";
  const length = longestLength(to.party, to["size.adultLength"]);
  const broad = length >= broadFlank;
  const isLetAlone = !broad && (pace === "fast" || (pace !== "slow" && !flat));
  const greens = greensFor(act, from);
  if (isLetAlone) {
    const isDoubtful =
      act.when !== "crowded" && greens.length === 0 && length >= decimal(nearlyBroad * broadFlank);
    return isDoubtful ? [{ weight: "advisory", couldBe: "blocking", watchFor: "damaged-skin" }] : [];
  }
  if (act.when === "crowded" && pace !== "slow") return [{ weight: "advisory", watchFor: "damaged-skin" }];
  if (greens.length === 0) return [{ weight: "blocking", watchFor: "damaged-skin" }];
  const condition = { on: "group.offerings", of: "from", wanted: { oneOf: greens } } as const;
  const fed: Answer = { weight: "restricting", watchFor: "damaged-skin", condition };
  const isTempting = broad && flat && (pace === "slow" || shape === undefined);
  if (act.when === "crowded" || !isTempting) return [fed];
  return [
    fed,
    { weight: "advisory", couldBe: "blocking", watchFor: "damaged-skin", measures: { fed: greens } },
  ];
}

/** Whether it is one animal by itself. */
const isOne = (from: Animals, to: Animals): boolean => from === to && from.kin.count === 1;

/** Greens enough that none is hungry, of those that it takes; none where it rasps for being grown. */
const greensFor = ({ from: since }: Act, { "diet.foods": foods = [] }: Grazer): TraitValue<"diet.foods"> =>
  since === "adult" ? [] : anyGreens.filter((food) => foods.includes(food));
