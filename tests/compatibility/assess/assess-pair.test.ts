import fc from "fast-check";
import { describe, expect, test } from "vitest";
import apistogrammaAgassizii from "vivary/catalog/apistogramma-agassizii";
import astronotusOcellatus from "vivary/catalog/astronotus-ocellatus";
import bettaSplendens from "vivary/catalog/betta-splendens";
import ctenopomaAcutirostre from "vivary/catalog/ctenopoma-acutirostre";
import gyrinocheilusAymonieri from "vivary/catalog/gyrinocheilus-aymonieri";
import hoplisomaPaleatum from "vivary/catalog/hoplisoma-paleatum";
import neocaridinaDavidi from "vivary/catalog/neocaridina-davidi";
import osteogasterAenea from "vivary/catalog/osteogaster-aenea";
import paracheirodonInnesi from "vivary/catalog/paracheirodon-innesi";
import poeciliaReticulata from "vivary/catalog/poecilia-reticulata";
import puntigrusTetrazona from "vivary/catalog/puntigrus-tetrazona";
import tanichthysAlbonubes from "vivary/catalog/tanichthys-albonubes";
import vittinaNatalensis from "vivary/catalog/vittina-natalensis";
import { version } from "../../../package.json";
import {
  assessPair,
  assessPlan,
  type OpenQuestion,
  pairRules,
  planRules,
  type Verdict,
} from "../../../src/compatibility";
import { dataVersion } from "../../../src/evidence";
import type { SpeciesProfile, TraitValue } from "../../../src/species";
import { anySpecies } from "../../drawn";
import { longest } from "../../plan/arbitrary";
import { runs } from "../../runs";
import { adults, animal } from "../animals";
import { fish } from "../arbitrary";
import { deepFrozen } from "../deep-frozen";
import { traitsAsked } from "../judging";
import { renumbered } from "../mapped";
import { numbersIn } from "../numbers-in";
import { profileOf, worldsOf } from "../worlds";

const species = fc.oneof(anySpecies, fish("a").map(profileOf), fish("b").map(profileOf));
const party = fc
  .record(
    {
      species,
      sex: fc.constantFrom("male" as const, "female" as const),
      count: fc.integer({ min: 1, max: 4 }),
      length: fc.constantFrom(1, 4, 12),
    },
    { requiredKeys: ["species"] },
  )
  .map((given) => ({
    ...given,
    ...(given.length && { length: Math.min(given.length, longest(given.species)) }),
  }));

describe("any pair", () => {
  test("gets the same verdict in either order", () => {
    fc.assert(
      fc.property(party, party, (a, b) => {
        expect(renumbered(assessPair(a, b), [0, 1])).toEqual(renumbered(assessPair(b, a), [1, 0]));
      }),
      { numRuns: runs(80) },
    );
  });

  test("gets a verdict that survives JSON unchanged and holds finite numbers only", () => {
    fc.assert(
      fc.property(party, party, (a, b) => {
        const verdict = assessPair(a, b);
        expect(JSON.parse(JSON.stringify(verdict))).toStrictEqual(verdict);
        expect(numbersIn(verdict).every(Number.isFinite)).toBe(true);
      }),
      { numRuns: runs(80) },
    );
  });

  test("gets the same verdict twice, and nothing given is changed", () => {
    fc.assert(
      fc.property(party, party, (a, b) => {
        const [frozenA, frozenB] = [deepFrozen(a), deepFrozen(b)];
        const options = deepFrozen({ thresholds: { coverForYoung: 0.3 } });
        expect(assessPair(frozenA, frozenB, options)).toEqual(assessPair(a, b));
      }),
    );
  });

  test("is judged by what is known of the species, not by their names", () => {
    // The values of a disputed trait name the partners that the test renames.
    const withoutValues = (question: OpenQuestion) => ({ ...question, values: undefined });
    const inNewNames = (ids: readonly string[]) => ids.map((id) => `${id}-renamed`);
    const renamed = (profile: SpeciesProfile): SpeciesProfile => {
      const { reproduction } = profile;
      const listed = reproduction?.interbreedsWith;
      const interbreedsWith = listed && {
        ...listed,
        value: inNewNames(listed.value),
        ...(listed.also && { also: listed.also.map(inNewNames) }),
      };
      return {
        ...profile,
        id: `${profile.id}-renamed`,
        ...(interbreedsWith && { reproduction: { ...reproduction, interbreedsWith } }),
      };
    };
    fc.assert(
      fc.property(party, party, (a, b) => {
        const { parties, open, ...verdict } = assessPair(a, b);
        const {
          parties: others,
          open: asked,
          ...other
        } = assessPair({ ...a, species: renamed(a.species) }, { ...b, species: renamed(b.species) });
        expect(other).toEqual(verdict);
        expect(asked.map(withoutValues)).toEqual(open.map(withoutValues));
        expect(others.map(({ id }) => id)).toEqual(parties.map(({ id }) => `${id}-renamed`));
      }),
    );
  });
});

describe("what the animals of one party do to each other", () => {
  const rasped = (count: number | undefined) =>
    assessPair({ species: puntigrusTetrazona }, { species: gyrinocheilusAymonieri, count }).findings.filter(
      ({ rule, from, to }) => rule === "mucus-grazing" && from === 1 && to === 1,
    );

  test("is judged where there are several", () => {
    expect(rasped(4)).toMatchObject([{ weight: "blocking" }]);
  });

  test("is not judged of one, nor where nobody says how many there are", () => {
    expect([...rasped(1), ...rasped(undefined)]).toEqual([]);
  });

  test("asks for no number that is there", () => {
    const barbs = (count: number) =>
      assessPair({ species: puntigrusTetrazona, count }, { species: vittinaNatalensis });
    const asked = ({ conditions }: Verdict) => conditions.filter(({ on }) => on === "group.count");
    expect(asked(barbs(7))).toMatchObject([{ of: 0, wanted: { min: 8 } }]);
    expect(asked(barbs(8))).toEqual([]);
    expect(barbs(8).met).toContainEqual(expect.objectContaining({ rule: "acts-own-kind", from: 0, to: 0 }));
    const twoGroups = assessPair(
      { species: puntigrusTetrazona, count: 5 },
      { species: puntigrusTetrazona, count: 5 },
    );
    expect(asked(twoGroups)).toEqual([]);
  });

  test("is what a plan of as many tells", () => {
    const own = (verdict: Verdict) =>
      verdict.findings.filter(({ from, to }) => from !== undefined && from === to).map(({ rule }) => rule);
    const [first, second] = [
      { species: bettaSplendens, sex: "male", count: 3 },
      { species: gyrinocheilusAymonieri, count: 4 },
    ] as const;
    const plan = assessPlan({
      tank: { base: { shape: "rectangle", length: 1, width: 1 } },
      groups: [
        { species: first.species, males: first.count },
        { species: second.species, unsexed: second.count },
      ],
    });
    expect(own(assessPair(first, second))).toEqual(own(plan));
    expect(own(plan)).not.toEqual([]);
  });
});

describe("a verdict", () => {
  test("knows without a plan that males are males", () => {
    const male = { species: apistogrammaAgassizii, sex: "male", count: 1 } as const;
    const { outcome, met } = assessPair({ species: ctenopomaAcutirostre }, male);
    expect(outcome).toBe("suitable");
    expect(met).toMatchObject([{ rule: "predation", condition: { on: "group.sex", of: 1 } }]);
  });

  test("names its parties as they were given", () => {
    const verdict = assessPair(
      { species: bettaSplendens, form: "plakat", sex: "male", count: 1, length: 5 },
      { species: paracheirodonInnesi, stage: "juvenile", sex: "female", count: 3 },
    );
    expect(verdict.parties).toEqual([
      {
        id: "betta-splendens",
        name: "Betta splendens",
        names: { ...bettaSplendens.names, ...bettaSplendens.forms?.plakat?.names },
        form: "plakat",
        sex: "male",
        count: 1,
        length: 5,
        males: 1,
        females: 0,
      },
      {
        id: "paracheirodon-innesi",
        name: "Paracheirodon innesi",
        names: paracheirodonInnesi.names,
        stage: "juvenile",
        sex: "female",
        count: 3,
        males: 0,
        females: 3,
      },
    ]);
  });

  test("says what it was made with", () => {
    const { made } = assessPair({ species: bettaSplendens }, { species: paracheirodonInnesi });
    expect(made.version).toBe(version);
    expect(made.data).toBe(dataVersion);
    expect(made.rules).toEqual(pairRules.map(({ id }) => id));
  });

  test("of a pair leaves the rules of plans out", () => {
    const nobody = { species: animal("nobody") };
    expect(assessPair(nobody, nobody, { rules: [...planRules, ...pairRules] })).toEqual(
      assessPair(nobody, nobody),
    );
  });

  test("on species of which nothing is known is undetermined, and says of what", () => {
    const verdict = assessPair({ species: animal("a") }, { species: animal("b") });
    expect(verdict.outcome).toBe("undetermined");
    expect(verdict.bounds).toEqual({ atBest: "suitable", atWorst: "unsuitable" });
    expect(verdict.findings).toEqual([]);
    const asked = traitsAsked(verdict);
    for (const trait of ["water.temperature", "predation.eats", "size.adultLength"] as const) {
      expect(asked).toContain(trait);
    }
  });

  test("asks each question once", () => {
    const verdict = assessPair({ species: animal("a") }, { species: animal("b") });
    const questions = verdict.open.map((question) => JSON.stringify(question));
    expect(new Set(questions).size).toBe(questions.length);
  });

  test("with one essential trait missing stays undetermined until it is known", () => {
    const whole = { species: tanichthysAlbonubes };
    for (const [section, name] of [
      ["water", "temperature"],
      ["size", "adultLength"],
      ["predation", "eats"],
    ] as const) {
      const { [name]: _, ...rest } = { ...tanichthysAlbonubes[section] } as Record<string, unknown>;
      const lacking: SpeciesProfile = { ...tanichthysAlbonubes, [section]: rest };
      const { outcome, open } = assessPair({ species: lacking }, { species: hoplisomaPaleatum });
      expect(outcome, `${section}.${name}`).toBe("undetermined");
      expect(open).toContainEqual(
        expect.objectContaining({ of: 0, trait: `${section}.${name}`, reason: "missing" }),
      );
      expect(assessPair(whole, { species: hoplisomaPaleatum }).outcome).not.toBe("undetermined");
    }
  });

  test("on disputed facts says between what and what", () => {
    const disputed = {
      id: "disputed",
      stated: { "water.temperature": { kept: { min: 18, max: 22 } } },
      also: [{ "water.temperature": { kept: { min: 18, max: 26 } } }],
    };
    const other = animal("other", { "water.temperature": { kept: { min: 25, max: 28 } } });
    const rules = [pairRules[0]];
    const { outcome, bounds, open } = assessPair(
      { species: profileOf(disputed) },
      { species: other },
      { rules },
    );
    expect(outcome).toBe("unsuitable");
    expect(bounds).toEqual({ atBest: "conditional", atWorst: "unsuitable" });
    expect(open).toEqual([
      {
        rule: "temperature",
        of: 0,
        trait: "water.temperature",
        reason: "disputed",
        values: [{ kept: { min: 18, max: 22 } }, { kept: { min: 18, max: 26 } }],
        couldBe: "blocking",
      },
    ]);
    expect(
      worldsOf(disputed).map(
        (world) => assessPair({ species: world }, { species: other }, { rules }).outcome,
      ),
    ).toEqual(["unsuitable", "conditional"]);
  });
});

describe("what nobody can tell in advance", () => {
  const sized = (id: string, length: number, eats: TraitValue<"predation.eats">) =>
    animal(id, {
      "predation.eats": eats,
      "size.adultLength": adults(length),
      "size.bodyShape": "fusiform",
      "care.hazards": [],
      "space.zones": ["midwater"],
      "reproduction.mode": "scatters-eggs",
    });
  const rules = pairRules.filter(({ id }) => id === "predation");
  const judged = (length: number) =>
    assessPair(
      { species: sized("hunter", 20, [{ prey: "fish", greatest: 4 }]) },
      { species: sized("prey", length, []) },
      { rules },
    );

  test("leaves the answer open, between what it weighs and what it could be", () => {
    const { outcome, bounds, open, conditions } = judged(4.5);
    expect(outcome).toBe("undetermined");
    expect(bounds).toEqual({ atBest: "suitable", atWorst: "unsuitable" });
    expect(open).toContainEqual({ rule: "predation", of: 0, reason: "individual", couldBe: "blocking" });
    expect(conditions).toEqual([]);
  });

  test("does not outweigh what is certain", () => {
    expect(judged(4).outcome).toBe("unsuitable");
    expect(judged(5.1).outcome).toBe("suitable");
  });
});

describe("pairs every keeper knows", () => {
  const outcome = (a: SpeciesProfile, b: SpeciesProfile) =>
    assessPair({ species: a }, { species: b }).outcome;

  test("two male bettas: never", () => {
    const male = { species: bettaSplendens, sex: "male" } as const;
    expect(assessPair(male, male).outcome).toBe("unsuitable");
  });

  test("an oscar with a neon, a guppy or a shrimp: never", () => {
    for (const small of [paracheirodonInnesi, poeciliaReticulata, neocaridinaDavidi]) {
      expect(outcome(astronotusOcellatus, small)).toBe("unsuitable");
    }
  });

  test("tiger barbs with a betta: never", () => {
    const { outcome, findings } = assessPair({ species: puntigrusTetrazona }, { species: bettaSplendens });
    expect(outcome).toBe("unsuitable");
    expect(findings).toContainEqual(
      expect.objectContaining({ rule: "fin-nipping", weight: "blocking", from: 0, to: 1 }),
    );
  });

  test("neons with corys: why not", () => {
    const { findings } = assessPair({ species: paracheirodonInnesi }, { species: osteogasterAenea });
    expect(findings.filter(({ weight }) => weight === "blocking")).toEqual([]);
  });

  test("a nerite snail with a neon: nobody harms the other", () => {
    const { findings } = assessPair({ species: vittinaNatalensis }, { species: paracheirodonInnesi });
    const acting = findings.filter(({ rule }) => rule.startsWith("acts") || rule === "predation");
    expect(acting).toEqual([]);
  });
});
