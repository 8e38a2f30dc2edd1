import type { StatedValue } from "vivary/species";
import type { Contradiction } from "./contradiction";

type Act = Exclude<StatedValue<"temperament.acts">, "none">;

const acrossSexes: readonly Act["target"][] = ["own-kind", "other-sex", "any"];
const allOfItsKind: readonly Act["target"][] = [...acrossSexes, "own-sex"];

/** Whom an animal would kill of those that it lives with; a pair and a harem have one male, who has no rival there. */
const killedIn: Readonly<Record<StatedValue<"social.living">, readonly Act["target"][]>> = {
  alone: [],
  pair: acrossSexes,
  harem: acrossSexes,
  group: allOfItsKind,
  shoal: allOfItsKind,
  either: allOfItsKind,
};

/** How it lives with its own kind, and what it does to it. */
export const ofCompany: readonly Contradiction[] = [
  {
    trait: "social.group",
    found: "a shoal of fewer than five",
    expected: "a shoaling animal in a group of five or more",
    holds: ({ social }) => social?.living?.value === "shoal" && (social.group?.value.least ?? 5) < 5,
    mend: "Correct social.group or social.living.",
  },
  {
    trait: "social.group",
    found: "an animal that lives alone in a group of several",
    expected: "a least group of one",
    holds: ({ social }) => social?.living?.value === "alone" && (social.group?.value.least ?? 1) > 1,
    mend: "Correct social.group or social.living.",
  },
  {
    trait: "social.group",
    found: "a pair of three or more",
    expected: "a least group of one or two",
    holds: ({ social }) => social?.living?.value === "pair" && (social.group?.value.least ?? 2) > 2,
    mend: "Correct social.group or social.living.",
  },
  {
    trait: "social.largestGroup",
    found: "a largest group smaller than the least",
    expected: "as many as social.group.least, or more",
    holds: ({ social }) => (social?.largestGroup?.value ?? Infinity) < (social?.group?.value.least ?? 0),
    mend: "Correct social.largestGroup or social.group.",
  },
  {
    trait: "social.settledBy",
    found: "company that settles it, though it is not shy",
    expected: "temperament.shy where social.settledBy is true",
    holds: ({ social, temperament }) => social?.settledBy?.value && temperament?.shy?.value === false,
    mend: "Correct social.settledBy or temperament.shy.",
  },
  {
    trait: "social.settles",
    found: "a calm swimmer of the open water that lives on the ground alone",
    expected: "a zone above the ground where social.settles is true",
    holds: ({ social, space }) =>
      social?.settles?.value && space?.zones?.value.every((zone) => zone === "bottom"),
    mend: "Correct social.settles or space.zones.",
  },
  {
    trait: "social.group",
    found: "a least group of more than thirty",
    expected: "the fewest that live well together, not the most",
    holds: ({ social }) => (social?.group?.value.least ?? 1) > 30,
    mend: "Correct social.group.",
  },
  {
    trait: "temperament.acts",
    found: "an animal that lives with its kind and kills it at any time",
    expected: "an animal that lives alone, or kills only at times",
    holds: ({ social, temperament }) => {
      const killed = killedIn[social?.living?.value ?? "alone"];
      return temperament?.acts?.value.some(
        ({ does, target, when = "always" }) =>
          does === "kills" && when === "always" && killed.includes(target),
      );
    },
    mend: 'Say when it kills, such as "when": "crowded" or "guarding-brood"; or correct temperament.acts or social.living.',
  },
  {
    trait: "social.largestGroup",
    found: "a largest group that is not how it lives",
    expected: "one that lives alone, two or more of a pair or a harem, three or more of a group or a shoal",
    holds: ({ social }) => {
      const [living, most] = [social?.living?.value, social?.largestGroup?.value];
      if (living === undefined || most === undefined || living === "either") return false;
      return living === "alone" ? most > 1 : most < (living === "pair" || living === "harem" ? 2 : 3);
    },
    mend: "Correct social.largestGroup or social.living.",
  },
];
