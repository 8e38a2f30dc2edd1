import { mayHave } from "../../../plan/inner";
import type { Act, Sex } from "../../../species";
import { sexes } from "../../../species/inner";
import { canHappen, comingOf, harmsFinsOrSkin, ofBrood, reaches } from "../../animals/acts";
import { ofOneBuild } from "../../animals/build";
import { placeOf } from "../../animals/rivals";
import { besideWanted, type WantedBy, wantedBy } from "../../animals/wanted";
import type { GivenCondition, Judged } from "../../engine/rule/finding";
import type { Words } from "../../engine/rule/measures";
import { ownRule } from "../../engine/rule/own-rule";
import type { SeenParty } from "../../engine/rule/rule";
import { besideJoining } from "../shared/by-sex";
import { coverBeside } from "../shared/cover-beside";
import { type ActAnswer, besideAct, judgeTowards, roomAndSight, toKnow } from "../shared/judge-act";
import { shareAny } from "../shared/lists";

type Looks = "appearance.looks" | "size.bodyShape" | WantedBy;
type Doer = SeenParty<"temperament.acts", Looks | "space.zones" | "space.territory" | "space.openWater">;
type Other = SeenParty<never, Looks | "space.zones" | "space.openWater">;

const measures = /* @__PURE__ */ besideAct({ likeness: "likeness" });

type Answer = Judged<ActAnswer["weight"], typeof measures>;

/**
 * Does it take the other for one of its own, and what does it do then?
 *
 * Who kills or wounds what bears its markings cannot live beside it; where the plan does not say of which sex they are, it
 * restricts to one that does not wound, else to one without the markings. A build alone makes a lesser rival, which is
 * chased and not wounded. Who is only chased needs room and something between. Where only the females that will join males
 * would harm or be harmed, it restricts to males.
 */
export const actsLookAlike = /* @__PURE__ */ ownRule({
  id: "acts-look-alike",
  way: "each-way",
  between: "two-species",
  needs: { from: ["temperament.acts"] },
  uses: {
    from: /* @__PURE__ */ besideWanted(
      "appearance.looks",
      "size.bodyShape",
      "space.zones",
      "space.territory",
      "space.openWater",
    ),
    to: /* @__PURE__ */ besideWanted("appearance.looks", "size.bodyShape", "space.zones", "space.openWater"),
  },
  mayAdd: wantedBy,
  mayRestrict: ["space.territory", "space.zones", "appearance.looks", "size.bodyShape"],
  decidesBy: ["coverAgainstChase", "roomBesideBrood"],
  mayYield: ["blocking", "restricting", "advisory"],
  measures,
  judge: ({ from, to, thresholds }) =>
    from["temperament.acts"].some(isTowardsLookAlike)
      ? besideJoining(from, to, (doer, other) => takenFor(doer, other, thresholds))
      : [],
});

const isTowardsLookAlike = ({ target }: Act) => target === "look-alike";

/** What it does to the other where it takes it for one of its own. */
function takenFor(from: Doer, to: Other, thresholds: Deciding): readonly Answer[] {
  const acts = from["temperament.acts"].filter(
    (act) =>
      isTowardsLookAlike(act) &&
      reaches(act, from["space.zones"], to["space.zones"]) &&
      canHappen(act, from.party, to.party),
  );
  if (acts.length === 0) return [];
  const byMarks = shareAny(shown(from), shown(to))
    ? [...comingOf(acts, (act) => judged(act, from, to, thresholds))].map(by("markings"))
    : [];
  const wounding =
    byMarks.length === 0 ||
    byMarks.some((found) => found.weight === "restricting" && found.condition.on === "group.sex");
  if (!wounding || !ofOneBuild(from, to)) return byMarks;
  const byBuild = [...comingOf(acts, (act) => judged(asLesserRival(act), from, to, thresholds))];
  return [...byMarks, ...byBuild.map(by("build"))];
}

/** An answer with what the likeness lies in. */
const by =
  (likeness: Words["likeness"]) =>
  (answer: ActAnswer): Answer => ({
    ...answer,
    measures: { likeness, ...answer.measures },
  });

interface Deciding {
  readonly coverAgainstChase: number;
  readonly roomBesideBrood: number;
}

/** What it does to one that shares its build alone. */
const asLesserRival = (act: Act): Act =>
  act.does === "bites" || act.does === "kills" ? { ...act, does: "chases" } : act;

function judged(
  act: Act,
  from: Doer,
  to: Other,
  { coverAgainstChase, roomBesideBrood }: Deciding,
): readonly ActAnswer[] {
  if (harmsFinsOrSkin(act)) return [toKnow(act, from.party)];
  const removedBy = (when: NonNullable<Act["when"]>) => {
    const area = placeOf(from["space.territory"])?.area;
    if (ofBrood(when)) return roomAndSight(2, area && (roomBesideBrood * area) / 2);
    const apart = roomAndSight(2, area);
    return when === "crowded" ? [coverBeside(coverAgainstChase, from, to), ...apart] : apart;
  };
  return judgeTowards(act, from.party, { removedBy, spares: unmarkedSex(from, to) });
}

type Marked = SeenParty<never, "appearance.looks">;

/** The markings that some animal of the party shows, or its animals of one sex. */
const shown = ({ party, "appearance.looks": looks }: Marked, among?: Sex) =>
  looks
    ?.filter(({ sex }) => (among ? !sex || sex === among : !sex || mayHave(party, sex)))
    .map(({ tag }) => tag);

/** The sex of the other that lacks the markings, where the plan does not say of which sex it is. */
function unmarkedSex(from: Marked, to: Marked): GivenCondition | undefined {
  const { sex, males, some } = to.party;
  if (sex !== undefined || males !== undefined || some) return undefined;
  const free = sexes.find((each) => !shareAny(shown(from), shown(to, each)));
  return free && { on: "group.sex", of: "to", wanted: { oneOf: [free] } };
}
