import { describe, expect, test } from "vitest";
import { allSpecies } from "vivary/catalog";
import { assessPlan } from "../../src/compatibility";
import { isMet, type Plan } from "../../src/plan";
import { applyForm, factAt, type SpeciesProfile } from "../../src/species";

const everyForm = allSpecies.flatMap((species) => [
  species,
  ...Object.keys(species.forms ?? {}).map((form) => applyForm(species, form)),
]);

/** A roomy base and as many as a group needs, and not a word more. */
const bare = (species: SpeciesProfile): Plan => ({
  tank: { base: { shape: "rectangle", length: 300, width: 100 } },
  groups: [{ species, unsexed: factAt(species, "social.group")?.value.least ?? 6 }],
});

const middle = ({
  min,
  max,
}: {
  readonly min?: number | undefined;
  readonly max?: number | undefined;
} = {}) => ((min ?? max ?? 0) + (max ?? min ?? 0)) / 2;

/** The same with good values for all that it left out, but for the salinity: what says nothing of salt is fresh. */
function full(species: SpeciesProfile): Plan {
  const { tank, groups } = bare(species);
  const temperature = middle(factAt(species, "water.temperature")?.value.kept);
  return {
    tank: {
      ...tank,
      height: 80,
      lid: true,
      flow: { calmest: "still", strongest: "strong" },
      cover: 0.4,
      openWater: 0.6,
      openSurface: 0.8,
      sightBreaks: 20,
      plants: "grown-in",
      filter: { mediaArea: 10_000, age: 90 },
    },
    water: {
      temperature,
      hottest: temperature,
      coolest: temperature,
      pH: middle(factAt(species, "water.pH")?.value.kept),
      generalHardness: middle(factAt(species, "water.generalHardness")?.value.kept),
    },
    groups,
  };
}

const blockedBy = (plan: Plan) =>
  new Set(
    assessPlan(plan)
      .findings.filter(({ weight }) => weight === "blocking")
      .map(({ rule }) => rule),
  );

describe("a plan of a base and a group alone", () => {
  const judged = everyForm.map((species) => ({
    species,
    plan: bare(species),
    verdict: assessPlan(bare(species)),
  }));

  test("is never refused and never suitable", () => {
    for (const { species, verdict } of judged) {
      expect(["conditional", "unsuitable", "undetermined"], species.id).toContain(verdict.outcome);
    }
  });

  test("is blocked by nothing that would not block it fully told", () => {
    expect(judged.some(({ plan }) => blockedBy(plan).size > 0)).toBe(true);
    for (const { species, plan } of judged) {
      const told = blockedBy(full(species));
      for (const rule of blockedBy(plan)) expect(told, species.id).toContain(rule);
    }
  });

  test("has a question for whatever it leaves out and a condition hangs on", () => {
    for (const { species, plan, verdict } of judged) {
      for (const condition of verdict.conditions) {
        if (isMet(condition, plan) !== undefined) continue;
        const asked = verdict.open.filter(
          (question) =>
            question.reason === "missing" ||
            (question.reason === "not-given" && question.on === condition.on && question.of === condition.of),
        );
        expect(asked.length, `${species.id} ${condition.on}`).toBeGreaterThan(0);
      }
    }
  });

  test("asks after the water", () => {
    for (const { species, verdict } of judged) {
      const facts = verdict.open.flatMap((question) =>
        question.reason === "not-given" ? [question.on] : [],
      );
      for (const fact of ["temperature", "pH", "generalHardness"] as const) {
        if (factAt(species, `water.${fact}`)) expect(facts, species.id).toContain(`water.${fact}`);
      }
    }
  });
});
