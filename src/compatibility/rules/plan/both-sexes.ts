import { ownRule } from "../../engine/rule/own-rule";

/**
 * Where young are wanted, are there a male and a female?
 *
 * Males alone have none, nor have females, unless they are crayfish, of which some need no male. Where animals of either
 * sex may be among those that are planned, nothing is told.
 */
export const bothSexes = /* @__PURE__ */ ownRule({
  id: "both-sexes",
  way: "each-group",
  mayYield: ["advisory"],
  measures: { lacking: "sex" },
  judge: ({ from: { party } }) => {
    const { kind, kin, raises } = party;
    const isEnough = kin.mayHave.female && (kin.mayHave.male || kind === "crayfish");
    if (!raises || isEnough) return [];
    return [{ weight: "advisory", measures: { lacking: kin.mayHave.female ? "male" : "female" } }];
  },
});
