import { ownRule } from "../../engine/rule/own-rule";

/** Where the plan says where the tank stands, each law that applies there; else how many there are. */
export const cautionLaw = /* @__PURE__ */ ownRule({
  id: "caution-law",
  question: "Does a law name it?",
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
      .filter(({ code }) => stated.some((place) => place === code || place.startsWith(`${code}-`)))
      .map(({ jurisdiction, instrument, date, effect, basis }) => ({
        weight: "advisory" as const,
        measures: { jurisdiction, instrument, date, effect, basis },
      }));
  },
});
