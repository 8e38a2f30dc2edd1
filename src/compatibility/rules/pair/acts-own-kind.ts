import type { Animals, Kin } from "../../../plan";
import type { Act, Sex } from "../../../species";
import { sexes } from "../../../species/inner";
import { areBullies, canHappen, comingOf, harmsFinsOrSkin, ofBrood } from "../../animals/acts";
import { areSexed, mostFemalesPerMale } from "../../animals/females-per-male";
import { leastNumber } from "../../animals/least-number";
import { placeOf, rivalsOf } from "../../animals/rivals";
import { besideWanted, mayWantMore, staysAlone, type WantedBy, wantedKin } from "../../animals/wanted";
import type { GivenCondition } from "../../engine/rule/finding";
import { ownRule } from "../../engine/rule/own-rule";
import type { SeenParty } from "../../engine/rule/rule";
import { judgedBySex, ofSex } from "../shared/by-sex";
import { coverBeside } from "../shared/cover-beside";
import {
  type ActAnswer,
  actMeasures,
  deadly,
  onlyDisturbs,
  restricts,
  roomAndSight,
  saidOnce,
  toKnow,
} from "../shared/judge-act";

type Doer = SeenParty<"temperament.acts", "space.territory" | "space.openWater" | "space.cover" | WantedBy>;

interface Deciding {
  readonly coverAgainstChase: number;
  readonly spreadsFrom: number;
  readonly roomBesideBrood: number;
}

const targets: readonly Act["target"][] = ["own-sex", "other-sex", "own-kind", "smaller", "any"];

/**
 * What does it do to its own kind, and to rivals of its sex?
 *
 * Killing blocks, and so do wounds among those that live alone; where the plan does not say of which sex they are, both
 * restrict to the one that does neither, or to one that is spared, and the rest is asked for as many of that one. Where
 * more may be wanted than anybody knows, and they may kill, nobody can tell. Others that fight need room and something
 * between them, and of those that live alone nobody can tell whether that is enough; chases in a shoal are spread over it,
 * and so are wounds where a few are to be avoided; those of a bully are not. From the other sex cover gives rest, and among
 * those that use none their number does.
 */
export const actsOwnKind = /* @__PURE__ */ ownRule({
  id: "acts-own-kind",
  way: "each-way",
  between: "one-species",
  needs: { from: ["temperament.acts"] },
  uses: { from: /* @__PURE__ */ besideWanted("space.territory", "space.openWater", "space.cover") },
  mayRestrict: /* @__PURE__ */ besideWanted("space.territory"),
  decidesBy: ["coverAgainstChase", "spreadsFrom", "roomBesideBrood"],
  mayYield: ["blocking", "restricting", "advisory"],
  measures: actMeasures,
  judge: ({ from, to, thresholds }) => {
    const isItself = from.party === to.party;
    const meant = from["temperament.acts"].filter(
      (act) => !harmsFinsOrSkin(act) && targets.includes(act.target),
    );
    const isAlone = isItself && staysAlone(from);
    if (isAlone !== false) return isAlone || harmless(meant, from) ? [] : "unknown";
    const actsOf = (doer: Doer, other: SeenParty<never, never>): readonly ActAnswer[] => {
      const animals = grouped(doer);
      const happens = meant
        .filter((act) => canHappen(act, animals, isItself ? animals : other.party))
        .filter((act) => findsVictim(act, animals.kin));
      const doers = { animals, isPair: !isItself };
      return [...comingOf(happens, (act) => judged(act, doer, doers, thresholds), outdoesCrowding(doer))];
    };
    const answers = judgedBySex(from, to, (doer, other) => {
      const acts = actsOf(doer, other);
      const sex = acts.map(sexAskedFor).find((asked) => asked !== undefined);
      if (!sex) return acts;
      return [
        ...acts.filter((answer) => sexAskedFor(answer) !== undefined),
        ...actsOf(ofSex(doer, sex), other),
      ];
    });
    const isOpen = mayWantMore(from) && meant.some((act) => isDeadly(act, from));
    if (isOpen && !answers.some(({ weight }) => weight === "blocking")) return "unknown";
    return saidOnce([...answers, ...doubted(answers, from), ...bullied(from)]);
  },
});

/** Whether an act at any time asks for all that it asks for when crowded: bites that nothing forbids ask for no cover. */
const outdoesCrowding =
  (from: Doer) =>
  (act: Act): boolean =>
    act.does !== "bites" || isDeadly(act, from);

/** The sex that an answer asks for; undefined where it asks for none. */
function sexAskedFor(answer: ActAnswer): Sex | undefined {
  if (answer.weight !== "restricting" || answer.condition.on !== "group.sex") return undefined;
  const { wanted } = answer.condition;
  return "oneOf" in wanted ? sexes.find((sex) => wanted.oneOf.includes(sex)) : undefined;
}

/** Whether it does nothing to its kind that weighs. */
const harmless = (acts: readonly Act[], { party }: Doer): boolean =>
  !areBullies(party) && acts.every(onlyDisturbs);

/** The animals of a group as they will be with the females that are to join their kind, where their number is known. */
function grouped(from: Doer): Animals {
  const { party } = from;
  if (party.kin.count === undefined) return party;
  const kin = wantedKin(from);
  if (party.females === undefined) return { ...party, kin };
  const { count = party.kin.count } = kin;
  return { ...party, kin, females: party.females + count - party.kin.count };
}

/** A bully chases its own kind as it does others; a larger group does not lighten it. */
function bullied(from: Doer): readonly ActAnswer[] {
  const { party } = from;
  if (!areBullies(party)) return [];
  const area = placeOf(from["space.territory"])?.area;
  return restricts({ does: "chases", target: "own-kind" }, party, roomAndSight(2, area));
}

/**
 * Whether there is an animal of its kind for the act to fall on: of two that breed, that is the mate of one who does it
 * alone.
 */
function findsVictim({ when, doer, target }: Act, { count }: Kin): boolean {
  return !ofBrood(when) || count !== 2 || (doer !== undefined && target !== "own-sex");
}

/** Who would do it: as many as belong together, of one party or of two. */
interface Doers {
  readonly animals: Animals;
  readonly isPair: boolean;
}

function judged(
  act: Act,
  from: Doer,
  { animals: party, isPair }: Doers,
  thresholds: Deciding,
): readonly ActAnswer[] {
  const { does, target, when = "always" } = act;
  if (onlyDisturbs(act)) return [toKnow(act, party)];
  if (isDeadly(act, from)) return [deadly(act, party)];
  if (when === "crowded") {
    return does === "bites"
      ? restricts(act, party, [
          coverBeside(thresholds.coverAgainstChase, from),
          ...floorFor(from, { animals: party, isPair }, act),
        ])
      : [toKnow(act, party)];
  }
  if (target === "other-sex") return wornOut(act, from, party, thresholds);
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

/**
 * What wears out the other sex: cover to get out of sight gives it rest, or, of a kind that uses none, its number. Where
 * animals are sold unsexed it is told, and asked for only if there are too few of them, were they all female.
 */
function wornOut(
  act: Act,
  from: Doer,
  party: Animals,
  { coverAgainstChase }: Deciding,
): readonly ActAnswer[] {
  if (from["space.cover"] !== 0) return restricts(act, party, [coverBeside(coverAgainstChase, from)]);
  const { kin } = from.party;
  const least = Math.max(from["social.femalesPerMale"] ?? 0, 1);
  if (kin.count !== undefined && !areSexed(kin) && (mostFemalesPerMale(kin) ?? least) >= least)
    return [toKnow(act, party)];
  return restricts(act, party, [{ on: "group.femalesPerMale", of: "from", wanted: { min: least } }]);
}

/** Those that live alone may not bear one another, whatever room they have: nobody can tell. */
function doubted(answers: readonly ActAnswer[], from: Doer): readonly ActAnswer[] {
  if (!livesAlone(from)) return [];
  const fights = answers.flatMap((answer) =>
    answer.weight === "restricting" && !sexAskedFor(answer) ? [answer] : [],
  );
  return fights
    .slice(0, 1)
    .map(({ condition: _, ...told }) => ({ ...told, weight: "advisory", couldBe: "blocking" }));
}

/** Whether an act kills one of its kind, or wounds it among those that live alone. */
const isDeadly = ({ does, when = "always" }: Act, from: Doer): boolean =>
  does === "kills" || (does === "bites" && when === "always" && livesAlone(from));

/** Whether it lives alone. What nobody stated counts as so. */
const livesAlone = ({ "social.living": living = "alone" }: Doer) => living === "alone";

/** The floor that as many as fight need together. */
function floorFor(from: Doer, { animals, isPair }: Doers, act: Act): readonly GivenCondition[] {
  const { "space.territory": territory, "social.living": living } = from;
  const area = placeOf(territory)?.area;
  if (area === undefined) return [];
  const rivals = rivalsOf({ act, kin: animals.kin, isPair, living, territory });
  return [{ on: "tank.footprint", wanted: { min: Math.max(rivals, 1) * area } }];
}

/**
 * The number over which rivals that only chase each other spread it, and those that wound where few are worse off than
 * many; undefined where they do not.
 */
function spreadOver({ does }: Act, from: Doer, spreadsFrom: number): number | undefined {
  const { party, "social.living": living, "social.group": group } = from;
  const gregarious = living === "shoal" || living === "group";
  if (!gregarious || !group || group.least < spreadsFrom) return undefined;
  if (does !== "chases" && !(does === "bites" && group.avoid)) return undefined;
  return leastNumber(group, party.kin.count ?? 1);
}
