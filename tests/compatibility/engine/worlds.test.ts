import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Reading, type Subject, subjectOf } from "../../../src/compatibility/engine/sides/subject";
import { canBeOne, type ReadTrait, worldReader } from "../../../src/compatibility/engine/worlds";
import { partiesOfGroups } from "../../../src/plan/inner";
import type { TraitPath } from "../../../src/species";
import { runs } from "../../runs";
import { animal } from "../animals";
import { choices } from "../worlds";

/** The values that sources support, the adopted one first, of two traits of some species. */
const paths = ["space.cover", "space.openWater"] as const satisfies readonly TraitPath[];
const values = fc.uniqueArray(fc.constantFrom<number>(0, 0.2, 0.4, 0.6), { maxLength: 3 });
type Disputed = Readonly<Record<(typeof paths)[number], readonly number[]>>;

interface Groups {
  readonly species: readonly Disputed[];
  /** Of which species each group is. */
  readonly ofGroups: readonly number[];
}

/** Groups of one species each, for several of which one thing is true. */
const groups: fc.Arbitrary<Groups> = fc
  .tuple(
    fc.array(fc.record({ "space.cover": values, "space.openWater": values }), {
      minLength: 1,
      maxLength: 3,
    }),
    fc.array(fc.nat(2), { minLength: 1, maxLength: 4 }),
  )
  .map(([species, ofGroups]) => ({ species, ofGroups: ofGroups.map((of) => of % species.length) }));

function subjectsOf({ species, ofGroups }: Groups): readonly Subject[] {
  const profiles = species.map((one, index) => profileOf(`x-${index}`, one));
  const parties = partiesOfGroups(
    ofGroups.flatMap((of) => {
      const profile = profiles[of];
      return profile ? [{ species: profile, unsexed: 2 }] : [];
    }),
  );
  return parties.map(subjectOf);
}

function profileOf(id: string, disputed: Disputed) {
  const sources = Math.max(...paths.map((path) => disputed[path].length), 1);
  const said = Array.from({ length: sources }, (_, source) =>
    Object.fromEntries(
      paths.flatMap((path) => {
        const value = disputed[path][source];
        return value === undefined ? [] : [[path, value] as const];
      }),
    ),
  );
  const [stated, ...also] = said;
  return animal(id, stated, { also });
}

const readingsOf = (subjects: readonly Subject[]): readonly Reading[] =>
  subjects.flatMap(({ reading }) => paths.map(reading));

/** What a trait is known by: what is true of it is true of each group of the species. */
const keyOf = ({ subject, trait }: Reading) => `${subject.animals.id} ${trait}`;

/** Every world, written apart from the engine: of each trait of each species one value. */
function worldsOf({ species }: Groups): readonly ReadonlyMap<string, number | undefined>[] {
  const keys = species.flatMap((one, index) =>
    paths.map((path) => ({ key: `x-${index} ${path}`, held: one[path] })),
  );
  const each = choices<number | undefined>(keys.map(({ held }) => (held.length > 0 ? held : [undefined])));
  return each.map((taken) => new Map(keys.map(({ key }, index) => [key, taken[index]])));
}

/** Reads some traits, one after the other, and stops at the first that is above a figure. */
const readingUpTo = (readings: readonly Reading[], most: number) => (read: ReadTrait) => {
  const seen: unknown[] = [];
  for (const reading of readings) {
    const value = read(reading);
    seen.push(value);
    if (Number(value) > most) break;
  }
  return JSON.stringify(seen);
};

/** Some readings in some order, some of them twice, and at what the reading of them stops. */
const order = fc.tuple(fc.array(fc.nat(7), { maxLength: 8 }), fc.constantFrom(0, 0.3, 1));

function judgeOf(readings: readonly Reading[], [places, most]: readonly [readonly number[], number]) {
  return readingUpTo(
    places.flatMap((place) => readings[place % readings.length] ?? []),
    most,
  );
}

describe("worlds", () => {
  test("are all that may be true, the adopted one first, each once", () => {
    fc.assert(
      fc.property(groups, order, (given, how) => {
        const judge = judgeOf(readingsOf(subjectsOf(given)), how);
        const { read, inEveryWorld } = worldReader();
        const { adopted, others, complete } = inEveryWorld(() => judge(read));
        const answers = worldsOf(given).map((world) => judge((reading) => world.get(keyOf(reading))));
        expect(complete).toBe(true);
        expect(adopted.answer).toBe(answers[0]);
        expect(new Set([adopted, ...others].map(({ answer }) => answer))).toEqual(new Set(answers));
        expect(others.length + 1).toBe(new Set(answers).size);
      }),
      { numRuns: runs(300) },
    );
  });

  test("tell all that was read in any of them", () => {
    fc.assert(
      fc.property(groups, order, (given, how) => {
        const judge = judgeOf(readingsOf(subjectsOf(given)), how);
        const reader = worldReader();
        const { read } = reader.inEveryWorld(() => judge(reader.read));
        const looked = new Set<Reading>();
        for (const world of worldsOf(given))
          judge((reading) => {
            looked.add(reading);
            return world.get(keyOf(reading));
          });
        expect(new Set(read)).toEqual(looked);
        expect(read.length).toBe(looked.size);
      }),
      { numRuns: runs(100) },
    );
  });

  test("of two judgements are parts of one where one world answers as both do", () => {
    fc.assert(
      fc.property(groups, order, order, (given, oneWay, otherWay) => {
        const readings = readingsOf(subjectsOf(given));
        const [one, other] = [judgeOf(readings, oneWay), judgeOf(readings, otherWay)].map((judge) => {
          const { read, inEveryWorld } = worldReader();
          const { adopted, others } = inEveryWorld(() => judge(read));
          return { judge, worlds: [adopted, ...others] };
        });
        const both = worldsOf(given).map((world) =>
          [one, other].map((each) => each?.judge((reading) => world.get(keyOf(reading)))).join(),
        );
        for (const mine of one?.worlds ?? [])
          for (const theirs of other?.worlds ?? [])
            expect(canBeOne(mine.choices, theirs.choices)).toBe(
              both.includes([mine.answer, theirs.answer].join()),
            );
      }),
      { numRuns: runs(100) },
    );
  });

  test.each([
    [32, true],
    [33, false],
  ])("are 1,024 at most: of 32 values beside %i all are judged: %s", (count, all) => {
    const upTo = (most: number) => Array.from({ length: most }, (_, index) => index / most);
    const disputed = { "space.cover": upTo(32), "space.openWater": upTo(count) };
    const readings = readingsOf(subjectsOf({ species: [disputed], ofGroups: [0] }));
    const { read, inEveryWorld } = worldReader();
    const { others, complete } = inEveryWorld(() => readings.map(read));
    expect(complete).toBe(all);
    expect(others.length).toBe(all ? 1023 : 1024);
  });
});
