import { decimal } from "../../../decimal";
import type { Kin } from "../../../plan";
import type { Kind } from "../../../species";
import { comesUponAsleep } from "../../animals/acts";
import {
  grownLength,
  grownPreyLength,
  isOfGrownLength,
  isUnmeasured,
  preyLength,
} from "../../animals/lengths";
import { appetiteFor, preyKinds } from "../../animals/prey";
import { besideWanted, type WantedBy, wantedBy, wantedKin } from "../../animals/wanted";
import type { Judged } from "../../engine/rule/finding";
import { ownRule } from "../../engine/rule/own-rule";
import type { SeenParty } from "../../engine/rule/rule";
import type { ThresholdName } from "../../threshold-values";
import { besideJoining, openSexes } from "../shared/by-sex";
import { isOnly, shareAny } from "../shared/lists";
import { eatenUpTo, fateOf, isClawed, isTooDeep, mealMeasures, type Reach, reachOf } from "../shared/meal";

const decidesBy = [
  "likelyPrey",
  "possiblePrey",
  "bandAboveStated",
  "preyDepth",
  "clawReach",
  "youngFish",
  "youngCrustacean",
  "youngSnail",
  "coverForYoung",
] as const satisfies readonly ThresholdName[];

type Thresholds = Readonly<Record<(typeof decidesBy)[number], number>>;
type Hunter = SeenParty<
  "predation.eats" | "size.adultLength",
  "diet.light" | "diet.reach" | "space.zones" | WantedBy
>;
type Prey = SeenParty<
  "size.adultLength",
  | "size.bodyShape"
  | "size.bodyDepthShare"
  | "reproduction.mode"
  | "space.zones"
  | "diet.light"
  | "diet.reach"
  | "care.hazards"
  | WantedBy
>;
type Answer = Judged<"blocking" | "restricting" | "advisory", typeof mealMeasures>;

/**
 * Does one eat the other, its young or its eggs?
 *
 * Goes by length, whatever a stage is called. A stated greatest prey decides; without one, fish are judged by the hunter's
 * usual length, other prey is eaten whatever its length, and crayfish and crabs take what their claws reach. In the band
 * above nobody can tell in advance, of prey with spines either, which keep no hunter from trying (Bosher, Newton and Fine
 * 2006, Ethology 112, 188–195, abstract); nor of those that are as small when grown as the young that the hunter takes; nor
 * of any larger snail beside a fish that takes snails too large to be swallowed, for it picks at feelers and foot, and a
 * snail cannot get away. The animals of one kind grow up together, and none of them eats another that is as long as itself.
 * Where only the females that will join males would eat or be eaten, it restricts to males. Animals that are shorter than
 * grown ones of their kind, which would be safe, restrict to the length at which they enter, and so do those that are eaten
 * if of the smaller sex alone, where nobody says of which they are; grown ones whose females are the larger restrict to
 * these, since several males may not bear each other. What becomes of young that are wanted of them is told at once. Young
 * of which nobody says how long they are may be as short as can be: they never block for that. Eggs and young that are born
 * among the others are a loss that keepers accept, unless they are wanted.
 */
export const predation = /* @__PURE__ */ ownRule({
  id: "predation",
  way: "each-way",
  needs: { from: ["predation.eats", "size.adultLength"], to: ["size.adultLength"] },
  uses: {
    from: /* @__PURE__ */ besideWanted("diet.light", "diet.reach", "space.zones"),
    to: /* @__PURE__ */ besideWanted(
      "size.bodyShape",
      "size.bodyDepthShare",
      "reproduction.mode",
      "space.zones",
      "diet.light",
      "diet.reach",
      "care.hazards",
    ),
  },
  mayAdd: wantedBy,
  mayRestrict: [
    "size.bodyShape",
    "size.bodyDepthShare",
    "space.zones",
    "diet.reach",
    "diet.light",
    "care.hazards",
  ],
  decidesBy,
  mayYield: ["blocking", "restricting", "advisory"],
  measures: mealMeasures,
  judge: ({ from, to, thresholds }) =>
    besideJoining(from, to, (hunter, prey) => eaten(hunter, prey, thresholds)),
});

function eaten(from: Hunter, to: Prey, thresholds: Thresholds): readonly Answer[] {
  const animals = ofAnimals(from, to, thresholds);
  const grows = to.party.raises && animals.every(({ weight }) => weight === "restricting");
  if (animals.length > 0 && !grows) return animals;
  return [...animals, ...ofYoung(from, to, thresholds), ...ofEggs(from, to, thresholds)];
}

/** The length in cm that hunters grow to. */
const hunterLength = (from: Hunter): number => grownLength(from.party, from["size.adultLength"]);

/** A hunter that feeds at the surface alone does not come down to what never leaves the ground. */
function withinReach({ "diet.reach": reach }: Hunter, { "space.zones": zones }: Prey): boolean {
  return !(isOnly(reach, "surface") && isOnly(zones, "bottom"));
}

/**
 * The animals of the plan, at the length they have, and at that which they grow to. Grown ones of its own kind are no prey:
 * what it does to them is an act.
 */
function ofAnimals(from: Hunter, to: Prey, thresholds: Thresholds): readonly Answer[] {
  if (from.party === to.party || !withinReach(from, to)) return [];
  const now = preyLength(to.party, to["size.adultLength"]) ?? 0;
  const part = partOfReach(from, to);
  const equal = lengthOfEqual(from, to);
  if (part === 0 || now >= equal) return [];
  const grown = Math.min(grownPreyLength(to.party, to["size.adultLength"]), equal);
  const reach = reachFor(from, to, part, thresholds);
  const asYoung = decimal(part * youngReach(from, to, thresholds));
  const found = reach ? byReach(reach, from, to, { now, grown, equal, asYoung, thresholds }) : [];
  if (found.length > 0 || asYoung === 0 || now > asYoung) return found;
  if (grown > asYoung || grown === equal) return [enterLonger(asYoung, now, grown)];
  const measures = { prey: now || undefined, hunter: hunterLength(from) };
  return [{ weight: "advisory", couldBe: "blocking", measures, watchFor: "missing-animals" }];
}

/**
 * How much of its grown reach a hunter has today. Among its own kind, which grows up beside it, that goes by its length;
 * young of which nobody says how long they are count as equals. Others it will outgrow.
 */
function partOfReach(from: Hunter, to: Prey): number {
  if (from.party.id !== to.party.id) return 1;
  if (isUnmeasured(from.party) && isUnmeasured(to.party)) return 0;
  const { length } = from.party;
  return length === undefined ? 1 : length / hunterLength(from);
}

/** The length in cm from which one of its own kind is no prey: its own, or that of grown ones; infinite for others. */
function lengthOfEqual(from: Hunter, to: Prey): number {
  if (from.party.id !== to.party.id) return Number.POSITIVE_INFINITY;
  const { length = Number.POSITIVE_INFINITY } = from.party;
  return Math.min(length, grownPreyLength(to.party, to["size.adultLength"]));
}

/** Lengths of the prey, in cm: today, once grown or its equal, from which it is its equal, and up to which newly hatched. */
interface Lengths {
  readonly now: number;
  readonly grown: number;
  readonly equal: number;
  readonly asYoung: number;
  readonly thresholds: Thresholds;
}

/** What becomes of the plan's animals by what the hunter takes of grown ones of their kind. */
function byReach(
  reach: HunterReach,
  from: Hunter,
  to: Prey,
  { now, grown, equal, asYoung, thresholds }: Lengths,
): readonly Answer[] {
  const { hunter, greatest, tries } = reach;
  const fate = (length: number) =>
    length >= equal || tooDeepFor(reach, to, length, thresholds)
      ? "safe"
      : fateOf(length, reach, isEelLike(to));
  const measures = {
    prey: now || undefined,
    ...(greatest === undefined
      ? { hunter, share: decimal(now / hunter) || undefined }
      : { greatestPrey: greatest }),
    ...signs(from, to),
  };
  const today = fate(now);
  if (today === "safe") return [];
  const isSafe = (length: number) => fate(length) === "safe" && (length > asYoung || length >= equal);
  const safe = Math.max(safeFrom(reach, isEelLike(to)), asYoung);
  const isSure = Number.isFinite(tries);
  if (isSure && now < grown && isSafe(grown)) return [enterLonger(safe, now, grown, measures)];
  const spared = isSure && today === "eaten" ? sexThatIsSafe(to, isSafe) : undefined;
  if (spared) {
    const longer = enterLonger(safe, now, spared.length, measures);
    if (spared.sex === "male" || !isOfGrownLength(to.party)) return [longer];
    return [{ ...longer, condition: { on: "group.sex", of: "to", wanted: { oneOf: [spared.sex] } } }];
  }
  const surely = isUnmeasured(to.party) ? fate(grown) : today;
  return surely === "eaten"
    ? [{ weight: "blocking", measures, watchFor: "missing-animals" }]
    : [{ weight: "advisory", couldBe: "blocking", measures, watchFor: "missing-animals" }];
}

/** The sex that the plan leaves open of which the prey is safe once grown, and the length of that, cm. */
function sexThatIsSafe({ party, "size.adultLength": lengths }: Prey, isSafe: (length: number) => boolean) {
  const grown = openSexes(party).map((sex) => ({ sex, length: grownPreyLength({ sex }, lengths) }));
  return grown.find(({ length }) => isSafe(length));
}

/** What nobody said of a fish is the shape that goes down at the greater length. */
const isEelLike = (to: Prey) =>
  to.party.kind === "fish" && (to["size.bodyShape"] ?? "eel-like") === "eel-like";

const safeFrom = (reach: Reach, eelLike: boolean) => Math.max(eatenUpTo(reach, eelLike), reach.tries);

interface HunterReach extends Reach {
  /** Length of the hunter, cm. */
  readonly hunter: number;
  readonly greatest: number | undefined;
}

/** What the hunter takes of the grown animals of the prey's kind; undefined where it takes none. */
function reachFor(from: Hunter, to: Prey, part: number, thresholds: Thresholds): HunterReach | undefined {
  const hunter = hunterLength(from);
  const appetite = appetiteFor(from["predation.eats"], preyKinds[to.party.kind].grown);
  if (!appetite) return undefined;
  const { greatest } = appetite;
  const most = reachOf({ kind: from.party.kind, length: hunter, greatest }, to.party.kind, thresholds);
  const reach = isClawed(from.party.kind) ? seizedOf(most, to) : triedOf(most, greatest, from, to);
  return scaled({ ...reach, hunter, greatest }, part);
}

/** What claws surely get is what rests beside them; what swims past may get away. */
function seizedOf({ eats, tries }: Reach, to: Prey): Reach {
  const rests = !to["space.zones"] || to["space.zones"].includes("bottom") || to.party.kind !== "fish";
  return { eats: rests ? eats : 0, tries };
}

/** Nothing is tried above a stated length on prey that keeps away from the hunter. */
const triedOf = (most: Reach, greatest: number | undefined, from: Hunter, to: Prey): Reach =>
  greatest === undefined || meets(from, to) ? most : { ...most, tries: most.eats };

/** A part of a grown hunter's reach. */
const scaled = ({ eats, tries, hunter, greatest }: HunterReach, part: number): HunterReach => ({
  eats: decimal(part * eats),
  tries: decimal(part * tries),
  hunter: decimal(part * hunter),
  greatest: greatest === undefined ? undefined : decimal(part * greatest),
});

/**
 * Whether a hunter comes upon the prey: where both live, at the surface where the prey feeds, by night where it sleeps, and
 * upon all that is no fish: shrimps and snails sit on leaves and panes at any height.
 */
const meets = (from: Hunter, to: Prey) =>
  to.party.kind !== "fish" ||
  shareAny(from["space.zones"], to["space.zones"]) ||
  (shareAny(from["space.zones"], ["surface"]) && shareAny(to["diet.reach"], ["surface"])) ||
  comesUponAsleep(from, to);

/** Deep prey does not go down; known only of fish that are judged by the hunter's length. */
function tooDeepFor(
  { hunter, greatest }: HunterReach,
  to: Prey,
  length: number,
  { preyDepth, likelyPrey }: Thresholds,
): boolean {
  if (greatest !== undefined || length <= decimal(likelyPrey * hunter)) return false;
  return isTooDeep(to["size.bodyDepthShare"], length, hunter, preyDepth);
}

/** The animals of the plan enter at a length at which they are safe: they grow to it. */
function enterLonger(
  safe: number,
  now: number,
  grown: number,
  further: Answer["measures"] = {},
): Extract<Answer, { weight: "restricting" }> {
  const longer = decimal(Math.min(nextAbove(safe), grown));
  return {
    weight: "restricting",
    measures: { ...further, prey: now || undefined, safeFrom: longer },
    watchFor: "missing-animals",
    condition: { on: "group.length", of: "to", wanted: { min: longer } },
  };
}

/** The next tenth of a centimetre. */
const nextAbove = (length: number) => (Math.floor(decimal(length * 10)) + 1) / 10;

/** Up to which length the plan's animals count as newly hatched ones that the hunter takes, cm; 0 where it takes none. */
function youngReach(from: Hunter, to: Prey, thresholds: Thresholds): number {
  const appetite = appetiteFor(from["predation.eats"], preyKinds[to.party.kind].young);
  if (!appetite) return 0;
  const byMouth = thresholds.likelyPrey * hunterLength(from);
  return appetite.greatest ?? decimal(Math.min(byMouth, hatchling(to.party.kind, thresholds)));
}

function hatchling(kind: Kind, { youngFish, youngCrustacean, youngSnail }: Thresholds): number {
  if (kind === "snail" || kind === "mussel") return youngSnail;
  return kind === "fish" || kind === "frog" ? youngFish : youngCrustacean;
}

/** Young that are born or hatch among the others. */
function ofYoung(from: Hunter, to: Prey, { coverForYoung }: Thresholds): readonly Answer[] {
  const { young } = preyKinds[to.party.kind];
  if (!appetiteFor(from["predation.eats"], young) || !bearsAmongOthers(to)) return [];
  const measures = { of: young[0] };
  const condition = { on: "tank.cover", wanted: { min: coverForYoung } } as const;
  return to.party.raises
    ? [{ weight: "restricting", measures, condition, watchFor: "missing-young" }]
    : [{ weight: "advisory", measures, watchFor: "missing-young" }];
}

/**
 * Whether its young are born or hatch complete among the others, small enough to be swallowed. Those that hatch from eggs
 * are there where the plan says that young are wanted.
 */
function bearsAmongOthers(to: Prey): boolean {
  const { party, "reproduction.mode": mode } = to;
  const { count, mayHave } = parentsOf(to);
  const onlyMales = party.sex === "male" && !(party.raises && mayHave.female);
  if (party.stage === "juvenile" || onlyMales || count === 1) return false;
  if (party.kind === "fish") return mode === undefined || mode === "livebearer" || party.raises === true;
  const isCrustacean = party.kind === "shrimp" || party.kind === "crayfish" || party.kind === "crab";
  return isCrustacean && (mode === undefined || mode === "broods-young");
}

/** The animals that may have young: where these are wanted, as many of the kind as belong together. */
const parentsOf = (to: Prey): Kin =>
  to.party.raises && to.party.kin.count !== undefined ? wantedKin(to) : to.party.kin;

/**
 * Guarded eggs are lost at night, when the parents rest and others feed; where they are wanted, nobody can tell whether the
 * parents hold out. Eggs that nobody guards are lost by day, and as young are: where they are wanted, to those that find
 * them in too little cover. Of wanted eggs of which nobody knows what becomes of them, both are told.
 */
function ofEggs(from: Hunter, to: Prey, { coverForYoung }: Thresholds): readonly Answer[] {
  const { id, raises } = to.party;
  const { count, mayHave } = parentsOf(to);
  if (from.party.id === id || count === 1 || !mayHave.male || !mayHave.female) return [];
  if (!from["predation.eats"].some(({ prey }) => prey === "egg")) return [];
  const mode = to["reproduction.mode"];
  const isUnknown = mode === undefined && raises === true;
  const inNest = mode === "bubble-nest" && shareAny(from["space.zones"], ["surface"]);
  const onGround = mode === "guards-eggs" && !isOnly(from["diet.reach"], "surface");
  const isGuarded = isUnknown || onGround || inNest;
  const comesByNight = from["diet.light"]?.includes("night") ?? true;
  const isLeft = isUnknown || (mode === "scatters-eggs" && raises);
  const told = { measures: { of: "egg" }, watchFor: "missing-young" } as const;
  const condition = { on: "tank.cover", wanted: { min: coverForYoung } } as const;
  return [
    ...(isGuarded && comesByNight
      ? [{ weight: "advisory" as const, ...told, ...(raises && { couldBe: "blocking" as const }) }]
      : []),
    ...(isLeft ? [{ weight: "restricting" as const, ...told, condition }] : []),
  ];
}

/** What makes it worse: a hunter that comes by night, spines that choke it. */
const signs = (from: Hunter, to: Prey) => ({
  hunts: from["diet.light"]?.includes("night") ? ("night" as const) : undefined,
  defence: to["care.hazards"]?.includes("spines") ? ("spines" as const) : undefined,
});
