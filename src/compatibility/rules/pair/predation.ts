import { standardLength } from "../../../species";
import type { Judged } from "../../finding";
import { defineRule, type Seen } from "../../rule";
import type { ThresholdValues } from "../../thresholds";
import { decimal } from "../shared/decimal";
import { hunterLength, preyLength } from "../shared/total-length";

type Hunter = Seen<"predation.eats" | "size.adultLength", never>;
type Prey = Seen<"size.adultLength", "size.bodyDepthShare" | "reproduction.mode">;
type Answer = Judged<"blocking" | "restricting">;

export const predation = defineRule({
  id: "predation",
  question: "Does one eat the other or its young?",
  way: "each-way",
  needs: { from: ["predation.eats", "size.adultLength"], to: ["size.adultLength"] },
  uses: { from: [], to: ["size.bodyDepthShare", "reproduction.mode"] },
  decidesBy: ["likelyPrey", "possiblePrey", "preyDepth", "coverForYoung"],
  mayYield: ["blocking", "restricting"],
  judge: ({ from, to, thresholds }) => {
    const grown = judgeGrown(from, to, thresholds);
    return grown.length > 0 ? grown : judgeYoung(from, to, thresholds);
  },
});

/**
 * Prey past the fry stage: up to a stated length; where none is stated, fish by the hunter's length and any shrimp or
 * snail. Young of unknown length are small enough.
 */
function judgeGrown(from: Hunter, to: Prey, thresholds: ThresholdValues): readonly Answer[] {
  const kind = to.party.species.taxonomy.kind;
  const eats = from["predation.eats"].filter(({ prey }) => prey === kind);
  if (eats.length === 0) return [];
  const eaten = { weight: "blocking", watchFor: "missing animals" } as const;
  const prey = preyLength(to.party, to["size.adultLength"]);
  if (prey === undefined) return [eaten];
  const stated = eats.map(({ greatest }) => greatest).filter((length) => length !== undefined);
  if (stated.length > 0) {
    const greatest = Math.max(...stated);
    return prey <= greatest ? [{ ...eaten, measures: { prey: cm(prey), greatestPrey: cm(greatest) } }] : [];
  }
  if (kind !== "fish") return [eaten];

  const hunter = hunterLength(from.party, from["size.adultLength"]);
  const measures = { prey: cm(prey), hunter: cm(hunter), share: { value: prey / hunter, unit: "1" } };
  if (prey <= decimal(thresholds.likelyPrey * hunter)) return [{ ...eaten, measures }];
  const possible = decimal(thresholds.possiblePrey * hunter);
  if (prey > possible || tooDeep(hunter, prey, to["size.bodyDepthShare"], thresholds)) return [];
  const condition = { on: "group.length", of: "to", within: { min: possible } } as const;
  return [{ weight: "restricting", measures, watchFor: "missing animals", condition }];
}

/** Whether prey of this length is deeper than the hunter's mouth takes, with both lengths at the ends that harm. */
function tooDeep(
  hunter: number,
  prey: number,
  depthShare: number | undefined,
  thresholds: ThresholdValues,
): boolean {
  if (depthShare === undefined) return false;
  return depthShare * standardLength(prey).min > thresholds.preyDepth * standardLength(hunter).max;
}

/** Young that are born or hatch among the others, and young that are stocked. */
function judgeYoung(from: Hunter, to: Prey, thresholds: ThresholdValues): readonly Answer[] {
  const eats = from["predation.eats"].map(({ prey }) => prey);
  const young =
    to.party.species.taxonomy.kind === "fish"
      ? (["fry", "fish"] as const)
      : (["shrimplet", "shrimp"] as const);
  if (!young.some((prey) => eats.includes(prey))) return [];
  const stocked = to.party.stage === "fry" || to.party.stage === "egg";
  const ownKind = from.party.species.id === to.party.species.id;
  if (!stocked && (ownKind || !raisesYoung(to))) return [];
  const condition = { on: "tank.cover", within: { min: thresholds.coverForYoung } } as const;
  return [{ weight: "restricting", condition, watchFor: "eggs or young" }];
}

/** Whether its young are born or hatch complete among the others, small enough to be swallowed. */
function raisesYoung({ party, "reproduction.mode": mode }: Prey): boolean {
  if (party.stage === "juvenile" || party.sex === "male" || party.kin.count === 1) return false;
  const { kind } = party.species.taxonomy;
  if (kind === "fish") return mode === undefined || mode === "livebearer";
  return kind === "shrimp" && (mode === undefined || mode === "broods-young");
}

const cm = (value: number) => ({ value, unit: "cm" });
