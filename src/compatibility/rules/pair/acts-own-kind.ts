import type { Kin } from "../../../plan";
import type { Act } from "../../../species";
import { canHappen, ofBrood } from "../../animals/acts";
import { leastNumber } from "../../animals/least-number";
import { placeOf, rivalsOf } from "../../animals/rivals";
import { defineRule } from "../../engine/rule/define-rule";
import type { GivenCondition } from "../../engine/rule/finding";
import type { SeenParty } from "../../engine/rule/rule";
import { coverBeside } from "../shared/cover-beside";
import {
  type ActAnswer,
  actMeasures,
  blocks,
  deadly,
  onlyDisturbs,
  restricts,
  roomAndSight,
  toKnow,
} from "../shared/judge-act";

type Doer = SeenParty<
  "temperament.acts",
  "social.living" | "social.group" | "space.territory" | "space.openWater"
>;

interface Deciding {
  readonly coverAgainstChase: number;
  readonly spreadsFrom: number;
  readonly roomBesideBrood: number;
}

const targets: readonly Act["target"][] = ["own-sex", "other-sex", "own-kind", "smaller", "any"];

/**
 * Killing blocks, and so do wounds among those that live alone; where the plan does not say of which sex they are, both
 * restrict to the one that does neither. Others that fight need room and something between them; chases in a shoal are
 * spread over it, those of a bully are not.
 */
export const actsOwnKind = /* @__PURE__ */ defineRule({
  id: "acts-own-kind",
  question: "What does it do to its own kind, and to rivals of its sex?",
  way: "each-way",
  needs: { from: ["temperament.acts"] },
  uses: { from: ["social.living", "social.group", "space.territory", "space.openWater"] },
  mayRestrict: ["space.territory", "social.living", "social.group"],
  decidesBy: ["coverAgainstChase", "spreadsFrom", "roomBesideBrood"],
  mayYield: ["blocking", "restricting", "advisory"],
  measures: actMeasures,
  judge: ({ from, to, thresholds }) => {
    if (from.party.id !== to.party.id) return [];
    const acts = from["temperament.acts"]
      .filter(
        ({ does, target }) => does !== "nips-fins" && does !== "rasps-mucus" && targets.includes(target),
      )
      .filter((act) => canHappen(act, from.party, to.party) && findsVictim(act, from.party.kin))
      .flatMap((act) => judged(act, from, from.party !== to.party, thresholds));
    return [...acts, ...bullied(from)];
  },
});

/** A bully chases its own kind as it does others; a larger group does not lighten it. */
function bullied(from: Doer): readonly ActAnswer[] {
  const { party } = from;
  if (party.temper !== "bully" || party.kin.count === 1) return [];
  const area = placeOf(from["space.territory"])?.area;
  return restricts({ does: "chases", target: "own-kind" }, party, roomAndSight(2, area));
}

/** Whether there is an animal of its kind for the act to fall on: a brood is guarded by two against the others. */
function findsVictim({ when }: Act, { count }: Kin): boolean {
  return !ofBrood(when) || count !== 2;
}

function judged(act: Act, from: Doer, isPair: boolean, thresholds: Deciding): readonly ActAnswer[] {
  const { party } = from;
  const { does, target, when = "always" } = act;
  if (onlyDisturbs(act)) return [toKnow(act, party)];
  if (does === "kills" || (does === "bites" && when === "always" && livesAlone(from)))
    return [act.target === "own-sex" ? deadly(act, party) : blocks(act, party)];
  if (when === "crowded") {
    return does === "bites"
      ? restricts(act, party, [
          coverBeside(thresholds.coverAgainstChase, from),
          ...floorFor(from, isPair, act),
        ])
      : [toKnow(act, party)];
  }
  if (target === "other-sex") return restricts(act, party, [coverBeside(thresholds.coverAgainstChase, from)]);
  const { "social.living": living, "space.territory": territory } = from;
  const shoal = ofBrood(when) ? undefined : spreadOver(act, from, thresholds.spreadsFrom);
  if (shoal !== undefined) {
    const chased = rivalsOf({ act, kin: party.kin, isPair, living, territory: "none" });
    const more = { on: "group.count", of: "from", wanted: { min: shoal } } as const;
    return chased < 2 ? [] : restricts(act, party, [more]);
  }
  const rivals = rivalsOf({ act, kin: party.kin, isPair, living, territory });
  if (rivals < 2) return [];
  const area = placeOf(territory)?.area;
  if (!ofBrood(when)) return restricts(act, party, roomAndSight(rivals, area));
  const places = Math.max(rivals, thresholds.roomBesideBrood);
  return restricts(act, party, roomAndSight(rivals, area && (places / rivals) * area));
}

/** Whether it lives alone. What nobody stated counts as so. */
const livesAlone = ({ "social.living": living = "alone" }: Doer) => living === "alone";

/** The floor that as many as fight need together. */
function floorFor(from: Doer, isPair: boolean, act: Act): readonly GivenCondition[] {
  const { party, "space.territory": territory, "social.living": living } = from;
  const area = placeOf(territory)?.area;
  if (area === undefined) return [];
  const rivals = rivalsOf({ act, kin: party.kin, isPair, living, territory });
  return [{ on: "tank.footprint", wanted: { min: Math.max(rivals, 1) * area } }];
}

/** The number over which rivals that only chase each other spread it; undefined where they do not. */
function spreadOver({ does }: Act, from: Doer, spreadsFrom: number): number | undefined {
  const { "social.living": living, "social.group": group, party } = from;
  const gregarious = living === "shoal" || living === "group";
  if (does !== "chases" || !gregarious || !group || group.least < spreadsFrom) return undefined;
  return leastNumber(group, party.kin.count ?? 1);
}
