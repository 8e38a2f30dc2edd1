import { anyOf, exact } from "./german-grammar";
import { regionIn } from "./german-regions";
import {
  airs,
  deeds,
  flowOf,
  hides,
  holders,
  lengthMeanings,
  lengthMeasures,
  looks,
  meanings,
  occasions,
  parts,
  prey,
  sexWords,
  since,
  statuses,
  targets,
} from "./german-words";
import type { Messages } from "./messages";
import { scientificOf } from "./sentences";

/** What is said of the traits of a species. */
export const profile = (): Messages["profile"] => ({
  columns: ["Merkmal", "Wert", "auch angegeben", "Beleg"],
  sections: {
    origin: "Herkunft",
    size: "Größe",
    water: "Wasser",
    space: "Raum",
    temperament: "Wesen",
    social: "Zusammenleben",
    appearance: "Aussehen",
    diet: "Ernährung",
    predation: "Beute",
    reproduction: "Fortpflanzung",
    effects: "Wirkung auf das Becken",
    care: "Pflege",
  },
  yes: "ja",
  no: "nein",
  none: "keine",
  figure: (span, meaning) => {
    if (!meaning) return span;
    return `${meaning === "limit" ? "leidet oder stirbt" : meanings[meaning]} ${span}`;
  },
  length: (size, { measure, as, sex }) =>
    `${size} ${lengthMeasures[measure]} (${[lengthMeanings[as], sex && sexWords[sex][0]].filter(Boolean).join(", ")})`,
  values: {
    "origin.conservation": ({ status, year }) =>
      [statuses[status], year && `(${year})`].filter(Boolean).join(" "),
    "size.lengthWeight": ({ a, b }) => `${exact(a)} × Länge ^ ${exact(b)}`,
    "water.flow": ({ min, max }) => [...new Set([min, max])].map(flowOf).join(" bis "),
    "water.airBreathing": ({ kind, from }) =>
      [airs[kind], from && `(${since[from]})`].filter(Boolean).join(" "),
    "size.lifespan": ({ usual, greatest }, size) =>
      [usual && size(usual), greatest && `höchstens ${size(greatest)}`].filter(Boolean).join(", "),
    "water.coolSeason": (season, size) =>
      season === "none"
        ? "keine"
        : [size(season), season.months && `${season.months} Monate lang`].filter(Boolean).join(", "),
    "space.baseLength": (needed, size) => `${size(needed.least)} für ${needed.for}`,
    "space.footprint": (needed, size) => `${size(needed.least)} für ${needed.for}`,
    "space.hides": ({ anyOf: kinds, each, holder: of, sharedBy = 1 }) =>
      [
        `${anyOf(kinds.map((kind) => hides[kind]))}, ${each} für ${holders[of]}`,
        sharedBy > 1 && `je ${sharedBy} Tiere ein Platz`,
      ]
        .filter(Boolean)
        .join(", "),
    "space.territory": (held, size) =>
      held === "none" ? "keines" : `${size(held.area)} ${parts[held.zone]}, Inhaber: ${holders[held.holder]}`,
    "social.group": ({ least, avoid }) =>
      [`mindestens ${least}`, avoid && `aber nicht ${avoid.min} bis ${avoid.max}`].filter(Boolean).join(", "),
    "appearance.looks": ({ tag, sex }) =>
      [looks[tag], sex && `(${sexWords[sex][1]})`].filter(Boolean).join(" "),
    "temperament.acts": ({ doer, does, target, when, from }) => {
      const [, several, after] = deeds[does];
      return [
        doer && sexWords[doer][1],
        several,
        targets[target] + after,
        when && when !== "always" && occasions[when].trim(),
        from && `(${since[from]})`,
      ]
        .filter(Boolean)
        .join(" ");
    },
    "predation.eats": ({ prey: of, greatest }, size) =>
      [prey[of], greatest && `bis ${size(greatest)}`].filter(Boolean).join(" "),
    "reproduction.interbreedsWith": scientificOf,
    "origin.regions": regionIn,
    "care.rehoming": ({ en, de }) => de ?? `auf Englisch: ${en}`,
  },
});
