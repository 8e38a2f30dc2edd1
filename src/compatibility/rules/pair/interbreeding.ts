import { mayHave } from "../../../plan/inner";
import type { GivenCondition } from "../../engine/rule/finding";
import { ownRule } from "../../engine/rule/own-rule";
import type { SeenParty } from "../../engine/rule/rule";
import { sexThatSpares } from "../shared/judge-act";

type Parent = SeenParty<never, "reproduction.interbreedsWith">;

/** Whether one's record names the other; undefined where nobody knows with whom it has young. */
const names = (one: Parent, other: Parent): boolean | undefined =>
  one["reproduction.interbreedsWith"]?.includes(other.party.id);

/** Of which sex the other animals must be, where the plan does not say: none with which a party that raises young crosses. */
function sexesApart(from: Parent, to: Parent): GivenCondition | undefined {
  if (from.party.raises && to.party.raises) return undefined;
  const [of, doer] = from.party.raises ? (["to", "female"] as const) : (["from", "male"] as const);
  const spared = sexThatSpares({ doer }, of === "to" ? to.party : from.party);
  return spared && { on: "group.sex", of, wanted: { oneOf: [spared] } };
}

/**
 * Do its males have offspring with the other's females?
 *
 * One record is enough: what is true of one is true of both. Families do not cross in tanks. Hybrids harm no animal, so
 * that a cross nobody knows of decides nothing; where young of either are wanted, males of one and females of the other are
 * kept apart.
 */
export const interbreeding = /* @__PURE__ */ ownRule({
  id: "interbreeding",
  way: "each-way",
  between: "two-species",
  uses: { from: ["reproduction.interbreedsWith"], to: ["reproduction.interbreedsWith"] },
  mayYield: ["blocking", "restricting", "advisory"],
  judge: ({ from, to }) => {
    if (from.party.family !== to.party.family) return [];
    if (!mayHave(from.party, "male") || !mayHave(to.party, "female")) return [];
    const wanted = from.party.raises || to.party.raises;
    const named = [names(from, to), names(to, from)];
    if (!named.includes(true)) return wanted && named.includes(undefined) ? "unknown" : [];
    if (!wanted) return [{ weight: "advisory" }];
    const condition = sexesApart(from, to);
    return [condition ? { weight: "restricting", condition } : { weight: "blocking" }];
  },
});
