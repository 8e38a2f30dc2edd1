import { type Outcomes, witness } from "../../../compatibility";
import type { Group, Plan } from "../../../plan";
import { factAt, type SpeciesProfile } from "../../../species";
import type { TankDimensions } from "../../../tank";
import type { CompanionReason } from "../../messages/page-messages";
import { breadth } from "./shared-water";
import { usualGroup } from "./usual-group";

/** So many are told. */
const most = 10;

/** So many are judged in the tank before the search is given up. */
const mostTried = 24;

/** A species that lives well beside another, in a plan that is judged suitable. */
export interface Companion {
  readonly species: SpeciesProfile;
  /** The groups of both, with water, furnishing and food as both ask. */
  readonly plan: Plan;
  readonly reason: Exclude<CompanionReason, { readonly why: "same-water" }>["why"] | "same-water";
}

/** A species of which nothing says that it does not go with another. */
interface Candidate {
  readonly species: SpeciesProfile;
  /** Whether nothing has to be seen to. */
  readonly suits: boolean;
  /** What speaks for it, whoever else is chosen. */
  readonly merit: number;
}

/**
 * The best companions of a species: by the verdict on the pair, then by how broad the water is that both share, whether they
 * keep out of each other's way and are of a like size, and so that they are of many families and places. Each is judged
 * with it in the tank, which is furnished as both ask; who needs a larger one is passed over.
 */
export function companionsOf(
  own: Group,
  tank: TankDimensions,
  candidates: readonly SpeciesProfile[],
  { outcome }: Outcomes,
): readonly Companion[] {
  const { species } = own;
  const left = new Set(
    candidates.flatMap((candidate, index): readonly Candidate[] => {
      if (candidate.id === species.id) return [];
      const judged = outcome(0, index + 1);
      if (judged !== "suitable" && judged !== "conditional") return [];
      return [{ species: candidate, suits: judged === "suitable", merit: meritOf(species, candidate) }];
    }),
  );
  const found: Companion[] = [];
  for (let tried = 0; tried < mostTried && found.length < most && left.size > 0; tried += 1) {
    const next = bestOf([...left], found);
    left.delete(next);
    const plan = together(own, usualGroup(next.species), tank);
    if (plan) found.push({ species: next.species, plan, reason: reasonFor(species, next.species) });
  }
  return found;
}

/** A suitable plan of two groups in the tank as it is; undefined where there is none. */
function together(own: Group, other: Group, tank: TankDimensions): Plan | undefined {
  const plan = witness({ tank, groups: [own, other] });
  return plan?.tank.base === tank.base && plan.tank.height === tank.height ? plan : undefined;
}

function bestOf(left: readonly Candidate[], found: readonly Companion[]): Candidate {
  const score = ({ species, suits, merit }: Candidate) => {
    const family = found.filter((one) => one.species.taxonomy.family === species.taxonomy.family).length;
    const place = found.filter((one) => zonesOf(one.species).join() === zonesOf(species).join()).length;
    return (suits ? 1 : 0) + merit - family / 2 - place / 5;
  };
  return left.reduce((best, one) => (score(one) > score(best) ? one : best));
}

const zonesOf = (species: SpeciesProfile) => factAt(species, "space.zones")?.value ?? [];

const liveApart = (one: SpeciesProfile, other: SpeciesProfile) => {
  const [mine, theirs] = [zonesOf(one), zonesOf(other)];
  return mine.length > 0 && theirs.length > 0 && !mine.some((zone) => theirs.includes(zone));
};

function meritOf(one: SpeciesProfile, other: SpeciesProfile): number {
  const company = settles(other, one) || settles(one, other) ? 1 : 0;
  const [mine, theirs] = [lengthOf(one), lengthOf(other)];
  const unlike = Math.max(mine, theirs) > 3 * Math.min(mine, theirs) ? 0.5 : 0;
  const home = sharedHome(one, other) ? 0.3 : 0;
  return breadth(one, other) + company + (liveApart(one, other) ? 0.6 : 0) + home - unlike;
}

const lengthOf = (species: SpeciesProfile) =>
  Math.max(...(factAt(species, "size.adultLength")?.value ?? []).map(({ total }) => total.max));

/** Whether the calm of one brings the other out of hiding. */
export const settles = (one: SpeciesProfile, other: SpeciesProfile): boolean =>
  factAt(one, "social.settles")?.value === true && factAt(other, "social.settledBy")?.value === true;

/** A region that both come from. */
export const sharedHome = (one: SpeciesProfile, other: SpeciesProfile): string | undefined => {
  const theirs = factAt(other, "origin.regions")?.value ?? [];
  return (factAt(one, "origin.regions")?.value ?? []).find((region) => theirs.includes(region));
};

function reasonFor(one: SpeciesProfile, other: SpeciesProfile): Companion["reason"] {
  if (settles(other, one)) return "settles-them";
  if (settles(one, other)) return "settled-by-them";
  if (liveApart(one, other)) return "elsewhere";
  if (sharedHome(one, other) !== undefined) return "same-home";
  return breadth(one, other) >= 1 ? "same-water" : "leaves-alone";
}
