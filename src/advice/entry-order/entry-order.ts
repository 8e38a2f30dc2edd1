import { inDomain, objectOf, wholeNumber } from "../../checks";
import { type AssessOptions, planner } from "../../compatibility";
import { rulesFor } from "../../compatibility/inner";
import { frozen } from "../../frozen";
import type { Plan } from "../../plan";
import type { EntryOrder, NoEntryOrder } from "./answer";
import { comersOf, groupsOf } from "./comers";
import { grownUp } from "./growing";
import { prefixesOf } from "./prefixes";
import { refusedBefore, refusedGrowth, refusedWhole } from "./refusals";
import { ripened } from "./ripening";
import { scheduled } from "./schedule";
import { bestOrder, type Order } from "./search";
import { stepsTold } from "./steps";
import { amissIn, tiesOf } from "./ties";

/** How an order of entry is sought. */
export interface EntryOrderOptions extends AssessOptions {
  /**
   * Days that newcomers are kept apart, 0 to 365. Default 30, the least that the Association of Zoos and Aquariums asks for
   * (https://www.aza.org/quarantine/), and in use in 95 of 100 public aquaria asked (Hadfield & Clayton 2011,
   * https://doi.org/10.1638/2011-0034.1).
   */
  readonly quarantine?: number | undefined;
  /**
   * How many tanks there are for it, each with nets and hoses of its own, 1 to 20. In each only those of one step are kept
   * at a time: where others join them, all begin anew (Association of Zoos and Aquariums, as above). Default 1.
   */
  readonly quarantineTanks?: number | undefined;
}

const mostTanks = 20;
const quarantineDays = /* @__PURE__ */ frozen({ min: 0, max: 365 } as const);

/**
 * Who moves into a tank when, from the day on which it is set up, so that at no time the animals in it are worse off than
 * in the whole plan; or why there is no such order.
 *
 * All of one species come together, one species after the other; several on one day only where none of them may come
 * alone. The plan with those that are in is judged again at each step, for a tank that has ripened, and must be no worse
 * than the whole, nor may anything speak against it that does not against the whole. Groups that the plan has move in
 * before the first day (`entersOn` below 0) are there already; any other `entersOn` is a day before which they do not come.
 *
 * Nobody comes before the filter is surely ripe (`filterCapacity`), nor before the plants have grown in, if they need that
 * or harm them (8 weeks). A filter that the plan does not name runs since the first of the animals that are there, else since
 * the first day; plants of which it says nothing are set on the first day. Each step passes its quarantine once those before
 * it have left a tank for it (30 days), and the filter is given 14 days to follow what is added: with a second quarantine
 * tank it takes about half the time. Days of which no source is named are common practice. Who would harm others until they
 * are longer comes once they are: the length decides, the day is an estimate from age and length when grown. Of all such
 * orders that in which fewest defend a place before others come, then fewest hunters come before what they may eat; of these
 * the soonest done, and the first by the order of the plan. Up to six species all orders are tried, those with more on one
 * day included. Of more species the first that is found, where each step takes those of whom least is amiss, one, two or all
 * that are left, in 2,000 tries.
 *
 * @returns The `steps` in their order, or the `reason` that there are none.
 * @throws InvalidInputError for what `assessPlan` refuses, a quarantine that is no number, and `quarantineTanks` that are no
 * whole number from 1 to 20.
 * @throws OutsideDomainError for a quarantine outside 0 to 365 days, or a temperature outside that of `ration`, 0 to 40 °C.
 *
 * @example
 * ```ts
 * import bettaSplendens from "vivary/catalog/betta-splendens";
 * import hoplisomaPanda from "vivary/catalog/hoplisoma-panda";
 * import { entryOrder } from "vivary/advice";
 *
 * const order = entryOrder({
 *   tank: { base: { shape: "rectangle", length: 100, width: 40 }, cover: 0.5, filter: { mediaArea: 3, age: 0 } },
 *   groups: [{ species: bettaSplendens, males: 1 }, { species: hoplisomaPanda, unsexed: 8 }],
 * });
 * order.reason ?? order.steps.map(({ day, groups }) => [day, groups]); // => [[56, [1]], [86, [0]]]
 * ```
 */
export function entryOrder(plan: Plan, options: EntryOrderOptions = {}): EntryOrder | NoEntryOrder {
  const { quarantine: asked = 30, quarantineTanks = 1, ...assessing } = objectOf(options, "options");
  const quarantine = inDomain(asked, "options.quarantine", quarantineDays, "d");
  wholeNumber(quarantineTanks, "options.quarantineTanks", mostTanks);
  const { judged: whole, growing } = grownUp(planner(plan, assessing).with({ tank: ripened(plan) }));
  const all = comersOf(plan);
  const there = all.filter(({ areThere }) => areThere);
  const coming = all.filter(({ areThere }) => !areThere);
  const refused = refusedWhole(whole) ?? refusedGrowth(growing, all);
  if (refused) return refused;
  const prefix = prefixesOf(whole, rulesFor(assessing));
  const ties = tiesOf(whole);
  const at = (indices: readonly number[]) => indices.flatMap((index) => coming[index] ?? []);
  const datesOf = (order: Order) =>
    scheduled(order.map(at), {
      plan,
      quarantine,
      quarantineTanks,
      growing,
      waitingForPlants: ties.waitingForPlants,
    });
  const found = bestOrder({
    count: coming.length,
    mayCome: (before, together) => {
      const inside = groupsOf([...there, ...at(before)]);
      const newcomers = groupsOf(at(together));
      const isGrown = growing.every(
        ({ group, before: other }) => !newcomers.includes(other) || inside.includes(group),
      );
      return isGrown && prefix(groupsOf([...there, ...at(before), ...at(together)])).passes;
    },
    amiss: (together, rest) => amissIn(ties, groupsOf(at(together)), groupsOf(at(rest))),
    lastDay: (order) => datesOf(order).at(-1)?.day ?? 0,
  });
  if (!found.order) return refusedBefore(found, { there, coming, prefix });
  return {
    steps: stepsTold(datesOf(found.order), { plan: whole.plan, there: groupsOf(there), prefix, ties }),
  };
}
