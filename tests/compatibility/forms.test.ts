import { isDeepStrictEqual } from "node:util";
import { describe, expect, test } from "vitest";
import { allSpecies } from "vivary/catalog";
import amatitlaniaNigrofasciata from "vivary/catalog/amatitlania-nigrofasciata";
import ancistrusCirrhosus from "vivary/catalog/ancistrus-cirrhosus";
import astronotusOcellatus from "vivary/catalog/astronotus-ocellatus";
import bettaSplendens from "vivary/catalog/betta-splendens";
import carassiusAuratus from "vivary/catalog/carassius-auratus";
import neocaridinaDavidi from "vivary/catalog/neocaridina-davidi";
import paracheirodonInnesi from "vivary/catalog/paracheirodon-innesi";
import poeciliaReticulata from "vivary/catalog/poecilia-reticulata";
import pterophyllumScalare from "vivary/catalog/pterophyllum-scalare";
import puntigrusTetrazona from "vivary/catalog/puntigrus-tetrazona";
import sewelliaLineolata from "vivary/catalog/sewellia-lineolata";
import trichogasterChuna from "vivary/catalog/trichogaster-chuna";
import { assessPair, assessPlan } from "../../src/compatibility";
import type { Party } from "../../src/plan";
import { applyForm, type SpeciesProfile } from "../../src/species";
import { hashOf } from "../drawn";
import { expectRefused } from "../refused";
import { someOf } from "../runs";
import { planOf } from "./judging";

/** Hunters, nippers and prey, swimmers in currents and still water, shy and restless fish. */
const others = [
  amatitlaniaNigrofasciata,
  ancistrusCirrhosus,
  astronotusOcellatus,
  bettaSplendens,
  carassiusAuratus,
  neocaridinaDavidi,
  paracheirodonInnesi,
  poeciliaReticulata,
  pterophyllumScalare,
  puntigrusTetrazona,
  sewelliaLineolata,
  trichogasterChuna,
];

const bred = allSpecies
  .flatMap((species) => Object.keys(species.forms ?? {}).map((form) => ({ species, form })))
  .map(({ species, form }) => ({ name: `${species.id}, ${form}`, species, form }));

/** The form named, applied beforehand, and both. */
const given = (species: SpeciesProfile, form: string) => {
  const applied = applyForm(species, form);
  return [{ species, form }, { species: applied }, { species: applied, form }] as const;
};

/** As `toEqual`, but fast where nothing differs. */
function expectSame(found: unknown, wanted: unknown) {
  if (!isDeepStrictEqual(found, wanted)) expect(found).toStrictEqual(wanted);
}

test("there are forms in the catalog", () => {
  expect(bred.length).toBeGreaterThan(50);
});

describe.each(bred)("$name", ({ name, species, form }) => {
  const turn = hashOf(name);
  const [named, ...applied] = given(species, form);

  test("is judged alike in a pair, whether the form is named or applied", () => {
    const verdictsOf = (party: Party) =>
      someOf(others, 3, turn).flatMap((other) => [
        assessPair(party, { species: other }),
        assessPair({ species: other, count: 2 }, { ...party, count: 3 }),
      ]);
    const verdicts = verdictsOf(named);
    for (const party of applied) expectSame(verdictsOf(party), verdicts);
    expect(verdicts[0]?.parties[0]?.form).toBe(form);
  });

  test("and in a plan", () => {
    const verdictsOf = (party: Party) =>
      someOf([0, 6], 1, turn).map((from) =>
        assessPlan(
          planOf([
            { ...party, unsexed: 5 },
            { species, males: 1, females: 1 },
            ...others.slice(from, from + 2).map((other) => ({ species: other, unsexed: 6 })),
          ]),
        ),
      );
    const verdicts = verdictsOf(named);
    for (const party of applied) expectSame(verdictsOf(party), verdicts);
    expect(verdicts[0]?.parties.map((party) => party.form)).toEqual([form, undefined, undefined, undefined]);
  });
});

describe("a form that is named beside another that is applied", () => {
  const pink = applyForm(amatitlaniaNigrofasciata, "pink");
  const other = { species: paracheirodonInnesi };

  test("is refused, whichever side it stands on", () => {
    const party = { species: pink, form: "long-fin" };
    expectRefused(() => assessPair(party, other), "a.form");
    expectRefused(() => assessPair(other, party), "b.form");
    expectRefused(
      () =>
        assessPlan(
          planOf([
            { ...other, unsexed: 9 },
            { ...party, males: 1 },
          ]),
        ),
      "groups[1].form",
    );
  });
});
