import { englishLawgivers } from "vivary/report";
import { germanLawgivers, germanPages, germanRequirements } from "vivary/report/de";
import { fieldOf } from "../reading/fields";
import type { Check, Slip } from "./check";
import { question } from "./nothing-is-left-to-fill-in";

type Found = Omit<Slip, "file">;

/** Places that German and English write alike; a further one joins here. */
export const alike = ["CITES", "England", "Japan"];

/** What reports tell of laws and standards they tell in German too. */
export const lawsSpeakGerman: Check = {
  name: "What is told of a law or a standard has its German",
  find: ({ files }) => [
    ...files.legal.flatMap(({ path: file, name, json }) =>
      [...nameless(name), ...placesAmiss(json), ...effectsAmiss(json)].map((slip) => ({ file, ...slip })),
    ),
    ...files.standards.flatMap(({ path: file, json }) => textsAmiss(json).map((slip) => ({ file, ...slip }))),
  ],
};

/** A lawgiver that no form could name. */
function nameless(lawgiver: string): readonly Found[] {
  const named = { english: englishLawgivers, german: germanLawgivers };
  return Object.entries(named).flatMap(([language, names]) =>
    Object.hasOwn(names, lawgiver)
      ? []
      : [
          {
            found: `the lawgiver ${lawgiver}, of which ${language === "english" ? "English" : "German"} has no name`,
            expected: `a line of it in src/report/messages/${language}-lawgivers.ts`,
            mend: "Add the line there, in the place that the alphabet gives its name.",
          },
        ],
  );
}

const placesAmiss = (json: unknown): readonly Found[] => {
  const places = [json, ...listed(fieldOf(json, "listings"))].map((held, index) => ({
    place: fieldOf(held, "jurisdiction"),
    at: index === 0 ? ["jurisdiction"] : ["listings", index - 1, "jurisdiction"],
  }));
  return places.flatMap(({ place, at }, index) =>
    !isAnswer(place) ||
    places.findIndex((other) => other.place === place) < index ||
    alike.includes(place) ||
    germanPages.page.jurisdiction(place) !== place
      ? []
      : [untold(at, `the place ${place}`, "german-laws.ts")],
  );
};

const effectsAmiss = (json: unknown): readonly Found[] =>
  listed(fieldOf(json, "listings")).flatMap((listing, index) => {
    const effect = fieldOf(listing, "effect");
    return !isAnswer(effect) || !germanPages.page.effect(effect).endsWith(effect)
      ? []
      : [untold(["listings", index, "effect"], "what a law does", "german-laws.ts")];
  });

const textsAmiss = (json: unknown): readonly Found[] =>
  listed(fieldOf(json, "instruments")).flatMap((instrument, index) => {
    const above = ["instruments", index];
    const texts = [
      { text: fieldOf(instrument, "caution"), at: [...above, "caution"] },
      ...listed(fieldOf(instrument, "requirements")).flatMap((requirement, place) =>
        ["asks", "note"].map((key) => ({
          text: fieldOf(requirement, key),
          at: [...above, "requirements", place, key],
        })),
      ),
    ];
    return texts.flatMap(({ text, at }) =>
      !isAnswer(text) || !germanRequirements.requirements.caution(text).endsWith(text)
        ? []
        : [untold(at, "what a standard says", "german-standards.ts")],
    );
  });

const untold = (at: readonly (string | number)[], what: string, table: string): Found => ({
  at,
  found: `${what} in English alone`,
  expected: `its German in src/report/messages/${table}`,
  mend: "Add it there; who writes no German asks for it in the pull request.",
});

const listed = (value: unknown): readonly unknown[] => (Array.isArray(value) ? value : []);

/** Whether somebody has written something there, and it is no question of a new file any more. */
const isAnswer = (value: unknown): value is string =>
  typeof value === "string" && !value.startsWith(question);
