import { describe, expect, test } from "vitest";
import astronotusOcellatus from "vivary/catalog/astronotus-ocellatus";
import carassiusAuratus from "vivary/catalog/carassius-auratus";
import danioRerio from "vivary/catalog/danio-rerio";
import mikrogeophagusRamirezi from "vivary/catalog/mikrogeophagus-ramirezi";
import pangioKuhlii from "vivary/catalog/pangio-kuhlii";
import tanichthysAlbonubes from "vivary/catalog/tanichthys-albonubes";
import {
  entryOrder,
  feedingPlan,
  leastTank,
  remedies,
  suspects,
  turningPoints,
  whoCouldJoin,
} from "../../src/advice";
import type { Group, Plan } from "../../src/plan";
import { applyForm, type SpeciesProfile } from "../../src/species";
import { someSpecies } from "../drawn";

/** Danios of which a form lives as another species does. */
const danioLike = ({ size, social, diet, water, temperament }: SpeciesProfile): SpeciesProfile => ({
  ...danioRerio,
  forms: { invented: { names: {}, size, social, diet, water, temperament } },
});

const bred = [
  ["fancy goldfish", carassiusAuratus, "fantail"],
  ["danios like cichlids", danioLike(mikrogeophagusRamirezi), "invented"],
  ["danios like loaches", danioLike(pangioKuhlii), "invented"],
  ["danios like oscars", danioLike(astronotusOcellatus), "invented"],
] as const;

/** Animals of a form with some of the species itself and small fish. */
const planOf = (kind: Pick<Group, "species" | "form">): Plan => ({
  tank: { base: { shape: "rectangle", length: 150, width: 60 }, height: 50, cover: 0.2, openWater: 0.7 },
  water: { temperature: 24 },
  groups: [
    { ...kind, unsexed: 6, length: 3 },
    { species: tanichthysAlbonubes, unsexed: 10, length: 1.5 },
  ],
});

/** An answer with ids in place of profiles, however a form is given. */
const told = (answer: unknown) =>
  JSON.parse(
    JSON.stringify(answer, (_, value) => {
      const { species, form, ...others } = Object(value);
      return species?.id === undefined ? value : { id: species.id, form: form ?? species.form, ...others };
    }),
  );

const asked: Readonly<Record<string, (plan: Plan) => unknown>> = {
  "turning points of the number": (plan) => turningPoints(plan, { on: "group.count", of: 0 }),
  "turning points of the length": (plan) => turningPoints(plan, { on: "group.length", of: 0 }),
  "the least tank": ({ groups }) => leastTank(groups),
  "an order of entry": (plan) => entryOrder(plan),
  "a feeding plan": (plan) => feedingPlan(plan),
  "who could join": (plan) => whoCouldJoin(plan, someSpecies(20, 0)),
  "what is behind signs": (plan) => suspects(plan, ["torn-fins", "hiding", "thin"]),
  remedies: (plan) => remedies(plan, { company: [tanichthysAlbonubes] }),
};

describe.each(bred)("%s get the same advice, their form named or applied", (_, species, form) => {
  test.each(Object.entries(asked))("%s", (__, ask) => {
    const [named, applied] = [planOf({ species, form }), planOf({ species: applyForm(species, form) })];
    expect(told(ask(named))).toEqual(told(ask(applied)));
  });
});
