import { ownRule } from "../../engine/rule/own-rule";

/**
 * Where young are wanted, are there a male and a female?
 *
 * Males alone have no young, and nor has one animal by itself. Nor have females, but for crayfish, of which some need no
 * male, and for livebearers, which bear for months after they have been with one (from memory: sperm stored, as in
 * Constantz 1989); snails are let be, for many are of both sexes. Where animals of either sex may be among those that are
 * planned, nothing is told.
 */
export const bothSexes = /* @__PURE__ */ ownRule({
  id: "both-sexes",
  way: "each-group",
  uses: { from: ["reproduction.mode"] },
  mayYield: ["advisory"],
  measures: { lacking: "sex" },
  judge: ({ from }) => {
    const { kind, kin, raises } = from.party;
    if (!raises || kind === "snail") return [];
    const { male, female } = kin.mayHave;
    const needsNoMale = kind === "crayfish" || from["reproduction.mode"] === "livebearer";
    if (female && (needsNoMale || (male && kin.count !== 1))) return [];
    const lacking = male && female ? undefined : female ? "male" : "female";
    return [{ weight: "advisory", measures: { lacking } }];
  },
});
