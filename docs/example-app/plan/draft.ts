import type { PlanData } from "vivary/plan";

/** A plan while it is filled in: as it is saved, but that something may be missing or wrong still. */
export type Draft = PlanData;

/** Where something stands in a draft: `["groups", 0, "males"]`. */
export type Path = readonly (string | number)[];

/** A tank and nobody in it. */
export const emptyDraft: Draft = {
  format: 1,
  tank: { base: { shape: "rectangle", length: 80, width: 35 } },
  groups: [],
};

/** The first plan that somebody sees: a tank for the counter of a post office. The place is invented. */
export const exampleDraft: Draft = {
  format: 1,
  tank: {
    base: { shape: "rectangle", length: 90, width: 40 },
    height: 45,
    lid: true,
    cover: 0.3,
    plants: "planted",
    substrate: "sand",
  },
  water: { temperature: 25, pH: 6.8 },
  groups: [
    { species: "paracheirodon-innesi", unsexed: 6 },
    { species: "hoplisoma-panda", unsexed: 8 },
    { species: "trichogaster-chuna", males: 1, females: 2 },
  ],
};

/** What stands at a path; undefined where nothing does. */
export const valueAt = (whole: unknown, path: Path): unknown =>
  path.reduce((held, step) => Object(held)[step], whole);

/** The draft with something else at a path; undefined takes it away, and whatever holds nothing any more with it. */
export const withValue = (draft: Draft, path: Path, value: unknown): Draft =>
  changed(draft, path, value) as Draft;

function changed(whole: unknown, [step, ...further]: Path, value: unknown): unknown {
  if (step === undefined) return value;
  const inner = changed(Object(whole)[step], further, value);
  if (Array.isArray(whole)) return whole.flatMap((one, index) => (index === step ? (inner ?? []) : one));
  const fields = Object.entries({ ...Object(whole), [step]: inner }).filter(([, held]) => held !== undefined);
  return fields.length > 0 ? Object.fromEntries(fields) : undefined;
}
