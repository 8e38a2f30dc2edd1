import type { Listing } from "../../../species";
import { ownRule } from "../../engine/rule/own-rule";

/**
 * Does a law name it?
 *
 * Where the plan says where the tank stands, each law that applies there; else how many there are.
 */
export const cautionLaw = /* @__PURE__ */ ownRule({
  id: "caution-law",
  way: "each-group",
  reads: ["jurisdiction"],
  mayYield: ["advisory"],
  measures: {
    jurisdiction: "text",
    instrument: "text",
    date: "text",
    effect: "text",
    basis: "basis",
    laws: "count",
  },
  judge: ({ from, plan }) => {
    const { listings } = from.party;
    const { jurisdiction: stated } = plan;
    if (!stated)
      return listings.length > 0 ? [{ weight: "advisory", measures: { laws: listings.length } }] : [];
    return listings
      .filter((listing) => stated.some((place) => appliesIn(place, listing)))
      .map(({ jurisdiction, instrument, date, effect, basis }) => ({
        weight: "advisory" as const,
        measures: { jurisdiction, instrument, date, effect, basis },
      }));
  },
});

/** Whether a law applies in a place: that of its lawgiver, one within it, or one that has its rules as well. */
const appliesIn = (place: string, { code, also = [] }: Listing): boolean =>
  [code, ...also].some((one) => place === one || place.startsWith(`${one}-`));
