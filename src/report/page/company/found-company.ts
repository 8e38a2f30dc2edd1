import { outcomes } from "../../../compatibility";
import type { Group } from "../../../plan";
import { headcount, isUnchangeable } from "../../../plan/inner";
import type { SpeciesProfile } from "../../../species";
import type { TankDimensions } from "../../../tank";
import { type Companion, companionsOf } from "./companions";
import { type RelationsTo, relationsTo } from "./relations";
import { typicalTank } from "./typical-tank";
import { usualGroup } from "./usual-group";

/** What was found of the company of a species: no language has a part in it. */
export interface FoundCompany {
  /** As many as belong together. */
  readonly own: Group;
  /** Where company was sought for them; absent where the record is incomplete, or no standard tank has the room. */
  readonly tank: TankDimensions | undefined;
  /** Rivals are none, whatever room they are given. */
  readonly companions: readonly Companion[];
  readonly relations: RelationsTo;
}

type Finds = WeakMap<readonly SpeciesProfile[], FoundCompany>;

const finds = /* @__PURE__ */ new WeakMap<SpeciesProfile, Finds>();

/** The company of a species among candidates. It is sought once for profiles and lists that cannot change. */
export function foundCompany(profile: SpeciesProfile, candidates: readonly SpeciesProfile[]): FoundCompany {
  const known: Finds = finds.get(profile) ?? new WeakMap();
  const held = known.get(candidates);
  if (held) return held;
  const found = sought(profile, candidates);
  if (Object.isFrozen(candidates) && [profile, ...candidates].every(isUnchangeable))
    finds.set(profile, known.set(candidates, found));
  return found;
}

function sought(profile: SpeciesProfile, candidates: readonly SpeciesProfile[]): FoundCompany {
  const judged = outcomes([profile, ...candidates]);
  const own = usualGroup(profile);
  const tank = profile.incomplete ? undefined : typicalTank(profile, headcount(own));
  const relations = relationsTo(profile, candidates, judged);
  const found = tank ? companionsOf(own, tank, candidates, judged) : [];
  const companions = found.filter(({ species }) => !relations.lookAlikes.includes(species));
  return { own, tank, companions, relations };
}
