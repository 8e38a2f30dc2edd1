import { airs, deeds, holders, occasions, parts, said, statuses } from "./english-words";
import type { Messages } from "./messages";
import { scientificOf, spaced } from "./sentences";

/** What is said of the traits of a species. */
export const profile = (): Messages["profile"] => ({
  columns: ["trait", "value", "also said", "support"],
  sections: {
    origin: "Origin",
    size: "Size",
    water: "Water",
    space: "Space",
    temperament: "Temperament",
    social: "Social",
    appearance: "Appearance",
    diet: "Diet",
    predation: "Predation",
    reproduction: "Reproduction",
    effects: "Effects",
    care: "Care",
  },
  yes: "yes",
  no: "no",
  none: "none",
  figure: (span, meaning) => {
    if (!meaning) return span;
    return meaning === "limit" ? `suffers or dies ${span}` : `${meaning} ${span}`;
  },
  length: (size, { measure, as, sex }) =>
    `${size} ${measure === "unstated" ? "measure unstated" : measure} (${[as, sex].filter(Boolean).join(", ")})`,
  values: {
    "care.rehoming": ({ en }) => en,
    "origin.conservation": ({ status, year }) =>
      [statuses[status], year && `(${year})`].filter(Boolean).join(" "),
    "size.lengthWeight": ({ a, b }) => `${a} × length ^ ${b}`,
    "water.flow": ({ min, max }) => (min === max ? min : `${min} to ${max}`),
    "water.airBreathing": ({ kind, from }) => [airs[kind], from && `from ${from}`].filter(Boolean).join(" "),
    "size.lifespan": ({ usual, greatest }, size) =>
      [usual && size(usual), greatest && `at most ${size(greatest)}`].filter(Boolean).join(", "),
    "water.coolSeason": (season, size) =>
      season === "none"
        ? season
        : [size(season), season.months && `for ${season.months} months`].filter(Boolean).join(" "),
    "space.baseLength": (needed, size) => `${size(needed.least)} for ${needed.for}`,
    "space.footprint": (needed, size) => `${size(needed.least)} for ${needed.for}`,
    "space.hides": ({ anyOf, each, holder, sharedBy = 1 }) =>
      [
        `${anyOf.map(spaced).join(" or ")}, ${each} for ${holders[holder]}`,
        sharedBy > 1 && `${sharedBy} share one`,
      ]
        .filter(Boolean)
        .join(", "),
    "space.territory": (held, size) =>
      held === "none" ? held : `${size(held.area)} ${parts[held.zone]}, held by ${holders[held.holder]}`,
    "social.group": ({ least, avoid }) =>
      `at least ${least}${avoid ? ` (${avoid.min} to ${avoid.max} do worst)` : ""}`,
    "appearance.looks": ({ tag, sex }) =>
      [said.look?.[tag] ?? spaced(tag), sex && `(${sex}s)`].filter(Boolean).join(" "),
    "temperament.acts": ({ doer, does, target, when, from }) =>
      [
        doer && `${doer}s`,
        deeds[does][1],
        said.target?.[target] ?? spaced(target),
        when && when !== "always" && occasions[when][1].trim(),
        from && `(from ${from} on)`,
      ]
        .filter(Boolean)
        .join(" "),
    "predation.eats": ({ prey, greatest }, size) =>
      [said.prey?.[prey] ?? spaced(prey), greatest && `up to ${size(greatest)}`].filter(Boolean).join(" "),
    "reproduction.interbreedsWith": scientificOf,
  },
});
