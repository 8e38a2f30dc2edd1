import fc from "fast-check";
import { describe, expect, test } from "vitest";
import danioRerio from "vivary/catalog/danio-rerio";
import { assessPair, assessPlan } from "../../../../src/compatibility";
import { subjectOf } from "../../../../src/compatibility/engine/sides/subject";
import { frozen } from "../../../../src/frozen";
import {
  type CheckedParty,
  isUnchangeable,
  partiesOfGroups,
  profileProblems,
} from "../../../../src/plan/inner";
import { someSpecies, speciesFor } from "../../../drawn";
import { runs } from "../../../runs";

const partyOf = (unsexed: number) => partiesOfGroups([{ species: danioRerio, unsexed }])[0] as CheckedParty;

describe("a party that is seen again", () => {
  profileProblems(danioRerio, []);

  test("in the same place is the same subject, if its profile cannot change", () => {
    expect(isUnchangeable(danioRerio)).toBe(true);
    expect(subjectOf(partyOf(8), 0)).toBe(subjectOf(partyOf(8), 0));
  });

  test("in another place, or in another number, is another", () => {
    const seen = subjectOf(partyOf(8), 0);
    expect(subjectOf(partyOf(8), 1)).not.toBe(seen);
    expect(subjectOf(partyOf(9), 0).animals.count).toBe(9);
  });

  test("and one that is the same in another place are two groups, not one that meets itself", () => {
    const party = partyOf(7);
    expect(subjectOf(party, 0).animals).not.toBe(subjectOf(party, 1).animals);
    expect(subjectOf(party, 0).animals).toEqual(subjectOf(party, 1).animals);
  });

  test("is judged as if it were new, whatever was judged meanwhile", () => {
    const party = fc.record(
      {
        species: fc.constantFrom(...someSpecies(12, 0)),
        sex: fc.constantFrom("male" as const, "female" as const),
        stage: fc.constantFrom("adult" as const, "juvenile" as const),
        count: fc.integer({ min: 1, max: 3 }),
        temper: fc.constantFrom("shyer" as const, "bully" as const),
      },
      { requiredKeys: ["species"] },
    );
    fc.assert(
      fc.property(fc.array(fc.tuple(party, party), { minLength: 2, maxLength: 6 }), (pairs) => {
        const anew = structuredClone(pairs).map(([a, b]) => assessPair(a, b));
        for (const round of [pairs, pairs]) expect(round.map(([a, b]) => assessPair(a, b))).toEqual(anew);
      }),
      { numRuns: runs(40) },
    );
  });

  test("so are the groups of a plan, alike or not, beside one of which little is known", () => {
    const [stranger] = structuredClone([speciesFor("a stranger")]).map(({ space: _, social: __, ...rest }) =>
      frozen(rest),
    );
    const species = fc.constantFrom(...someSpecies(3, 0), ...(stranger ? [stranger] : []));
    const group = fc.record({ species, unsexed: fc.integer({ min: 1, max: 2 }) });
    const tank = { base: { shape: "rectangle", length: 90, width: 40 }, height: 40 } as const;
    const plans = fc
      .array(fc.array(group, { minLength: 1, maxLength: 4 }), { minLength: 2, maxLength: 3 })
      .map((all) => all.map((groups) => ({ tank, water: { temperature: 25 }, groups })));
    fc.assert(
      fc.property(plans, (all) => {
        const anew = structuredClone(all).map((plan) => assessPlan(plan));
        for (const round of [all, all]) expect(round.map((plan) => assessPlan(plan))).toEqual(anew);
      }),
      { numRuns: runs(25) },
    );
  });
});
