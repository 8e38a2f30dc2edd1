import {
  assessPair,
  type Finding,
  type Outcomes,
  type Verdict,
  type Weight,
  witness,
} from "../../../compatibility";
import { preyReach } from "../../../compatibility/inner";
import type { Group, Plan } from "../../../plan";
import { factAt, type SpeciesProfile } from "../../../species";
import type { TankDimensions } from "../../../tank";
import { isWound } from "../../matters/acts";
import type { CompanionReason } from "../../messages/page-messages";
import { breadth, isPlenty, likeness, shareMostWater } from "./shared-water";
import { usualGroup } from "./usual-group";

/** So many are told. */
const most = 10;

/** Of so many the verdict is read in full. */
const mostRead = 24;

/** A species that lives well beside another, in a plan that is judged suitable. */
export interface Companion {
  readonly species: SpeciesProfile;
  /** The groups of both, with water, furnishing and food as both ask. */
  readonly plan: Plan;
  readonly reason: CompanionReason["why"];
  /** Whether nothing but the room and the cover of the plan keeps one from wounding the other. */
  readonly mayBite: boolean;
}

/** A species that may live beside another. */
interface Candidate {
  readonly species: SpeciesProfile;
  /** The less speaks against it, the higher. */
  readonly merit: number;
}

/** A candidate of which the verdict has been read. */
interface Judged extends Candidate, Pick<Companion, "mayBite"> {}

/**
 * The best companions of a species: by the verdict on the pair and by what it is at worst, by how little is told against
 * them, by how broad the water is that both share, and so that they are of many families and places. Nobody who would leave
 * the other hungry. Each is judged with it in the tank, which is furnished as both ask; who needs a larger one is passed
 * over.
 */
export function companionsOf(
  own: Group,
  tank: TankDimensions,
  candidates: readonly SpeciesProfile[],
  { outcome }: Outcomes,
): readonly Companion[] {
  const { species } = own;
  const left = candidates
    .flatMap((candidate, index): readonly Candidate[] => {
      const judged = candidate.id === species.id ? "unsuitable" : outcome(0, index + 1);
      if ((judged !== "suitable" && judged !== "conditional") || !shareMostWater(species, candidate))
        return [];
      return [{ species: candidate, merit: meritOf(species, candidate) + (judged === "suitable" ? 1 : 0) }];
    })
    .sort((one, other) => other.merit - one.merit)
    .slice(0, mostRead)
    .flatMap(({ species: other, merit }): readonly Judged[] => {
      const verdict = assessPair({ species }, { species: other });
      if (leavesHungry(verdict)) return [];
      return [{ species: other, merit: merit - demerit(verdict), mayBite: verdict.findings.some(isFought) }];
    });
  const found: Companion[] = [];
  while (found.length < most && left.length > 0) {
    const best = bestOf(left, found);
    left.splice(left.indexOf(best), 1);
    const { species: other, mayBite } = best;
    const plan = together(own, usualGroup(other), tank);
    if (plan) found.push({ species: other, plan, reason: reasonFor(species, other, found), mayBite });
  }
  return found;
}

/** A suitable plan of two groups in the tank as it is; undefined where there is none. */
function together(own: Group, other: Group, tank: TankDimensions): Plan | undefined {
  const plan = witness({ tank, groups: [own, other] });
  return plan?.tank.base === tank.base && plan.tank.height === tank.height ? plan : undefined;
}

/** Whether one of a pair has eaten before the other gets to the food. */
const leavesHungry = ({ findings }: Verdict) =>
  findings.some(({ rule, weight }) => rule === "feeding-competition" && weight === "restricting");

/** Whether one would wound the other but for a condition. */
const isFought = (finding: Finding) => finding.weight === "restricting" && isWound(finding);

/** Whether one needs a cool season that would be too cold for the other. */
const isTooWarm = ({ rule }: Finding) => rule === "season";

/**
 * What a verdict tells against a pair, though it goes: what it could be at worst, each finding that warns, and the gravest
 * once more.
 */
function demerit({ bounds, findings }: Verdict): number {
  const told = (weight: Weight) => findings.filter((finding) => finding.weight === weight).length;
  const atWorst = { suitable: 0, conditional: 0.2, unsuitable: 0.8 }[bounds.atWorst];
  const grave = [isFought, isTooWarm].filter((is) => findings.some(is)).length;
  return atWorst + told("advisory") / 4 + told("restricting") / 4 + grave;
}

/** The best that is left: of a family or a place that is there already it has to be better. */
function bestOf(left: readonly Judged[], found: readonly Companion[]): Judged {
  const score = ({ species, merit }: Judged) => {
    const family = found.filter((one) => one.species.taxonomy.family === species.taxonomy.family).length;
    const place = found.filter((one) => zonesOf(one.species).join() === zonesOf(species).join()).length;
    return merit - family / 3 - place / 6;
  };
  return left.reduce((best, one) => (score(one) > score(best) ? one : best));
}

/**
 * What speaks for two beside their verdict: company that settles, water, places, homes; like size, pace and kind; that no
 * law names the other. What each is worth, here and in {@link demerit}, is common practice, no source: it only orders what
 * the verdicts allow.
 */
function meritOf(one: SpeciesProfile, other: SpeciesProfile): number {
  const points = [
    [settles(other, one) || settles(one, other), 0.8],
    [liveApart(one, other), 0.5],
    [sharedHome(one, other) !== undefined, 0.3],
    [one.taxonomy.kind !== other.taxonomy.kind, -0.5],
    [isMuchLonger(one, other) || isMuchLonger(other, one), -0.5],
    [isNearlyPrey(one, other) || isNearlyPrey(other, one), -0.6],
    [bullies(one, other) || bullies(other, one), -0.6],
    [isHasty(one, other) || isHasty(other, one), -0.5],
    [(other.listings?.length ?? 0) > 0, -0.2],
  ] as const;
  return points.reduce(
    (sum, [is, worth]) => sum + (is ? worth : 0),
    breadth(one, other) + likeness(one, other),
  );
}

const zonesOf = (species: SpeciesProfile) => factAt(species, "space.zones")?.value ?? [];

function liveApart(one: SpeciesProfile, other: SpeciesProfile): boolean {
  const [mine, theirs] = [zonesOf(one), zonesOf(other)];
  return mine.length > 0 && theirs.length > 0 && !mine.some((zone) => theirs.includes(zone));
}

const lengthOf = (species: SpeciesProfile) =>
  Math.max(...(factAt(species, "size.adultLength")?.value ?? []).map(({ total }) => total.max));

const isMuchLonger = (one: SpeciesProfile, other: SpeciesProfile) => lengthOf(one) > 2.5 * lengthOf(other);

/** Whether the smaller ones of a kind are hardly longer than what a hunter takes. */
function isNearlyPrey(hunter: SpeciesProfile, prey: SpeciesProfile): boolean {
  const { tries = 0 } = preyReach(hunter).find(({ kind }) => kind === prey.taxonomy.kind) ?? {};
  const lengths = factAt(prey, "size.adultLength")?.value ?? [];
  return Math.min(...lengths.map(({ total }) => total.min)) < 1.3 * tries;
}

/** Whether one is rough with whoever is near, and the other leaves all alone. */
const bullies = (one: SpeciesProfile, other: SpeciesProfile) =>
  factAt(other, "temperament.acts")?.value.length === 0 &&
  (factAt(one, "temperament.acts")?.value ?? []).some(
    ({ target, when = "always" }) => target === "any" && when !== "guarding-brood" && when !== "breeding",
  );

const isHasty = (one: SpeciesProfile, other: SpeciesProfile) =>
  factAt(one, "diet.pace")?.value === "fast" &&
  factAt(other, "diet.pace")?.value !== "fast" &&
  factAt(other, "temperament.shy")?.value === true;

/** Whether the calm of one brings the other out of hiding. */
export const settles = (one: SpeciesProfile, other: SpeciesProfile): boolean =>
  factAt(one, "social.settles")?.value === true && factAt(other, "social.settledBy")?.value === true;

/** A region that both come from. */
export function sharedHome(one: SpeciesProfile, other: SpeciesProfile): string | undefined {
  const theirs = factAt(other, "origin.regions")?.value ?? [];
  return factAt(one, "origin.regions")?.value.find((region) => theirs.includes(region));
}

/** Whether an animal does anything to other species, be it at times. What nobody stated counts as so. */
const troubles = (species: SpeciesProfile): boolean =>
  factAt(species, "temperament.acts")?.value.some(({ target }) => !ownTargets.has(target)) ?? true;

/** Whom acts fall on that spare other species. */
const ownTargets: ReadonlySet<string> = /* @__PURE__ */ new Set(["own-kind", "own-sex", "other-sex"]);

/** The reason that has been told least often of those that hold, the weightiest first. */
function reasonFor(
  one: SpeciesProfile,
  other: SpeciesProfile,
  found: readonly Companion[],
): Companion["reason"] {
  const lastResort = troubles(one) || troubles(other) ? "holds-its-own" : "leaves-alone";
  const reasons: readonly (readonly [Companion["reason"], boolean])[] = [
    ["settles-them", settles(other, one)],
    ["settled-by-them", settles(one, other)],
    ["elsewhere", liveApart(one, other)],
    ["same-home", sharedHome(one, other) !== undefined],
    ["harmless", factAt(other, "temperament.acts")?.value.length === 0 && preyReach(other).length === 0],
    ["same-water", isPlenty(one, other)],
    [lastResort, true],
  ];
  const told = (reason: Companion["reason"]) =>
    found.filter((companion) => companion.reason === reason).length;
  const holding = reasons.flatMap(([reason, holds]) => (holds ? [reason] : []));
  return holding
    .slice(0, -1)
    .reduce<Companion["reason"]>(
      (least, reason) => (told(reason) < told(least) ? reason : least),
      holding[0] ?? lastResort,
    );
}
