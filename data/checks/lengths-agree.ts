import type { AdultLength, SpeciesProfile, SpeciesRecord, Statement } from "vivary/species";
import { statementsOf } from "vivary/species";
import type { Check } from "./check";

export const lengthsAgree: Check = {
  name: "Lengths of one species agree",
  find: ({ records }) =>
    records.flatMap(({ path: file, record, profile }) => {
      const at = ["size", "adultLength"];
      const stated = statementsOf(record, "size.adultLength");
      const inches = inchesFor(stated);
      const { kind } = record.taxonomy;
      const strange = stated.flatMap(({ measure }, index) => {
        const known = measures[kind];
        if (measure === undefined || known === undefined || known.includes(measure)) return [];
        return [
          {
            file,
            at: [...at, index, "measure"],
            found: `the measure ${measure} of a ${kind}`,
            expected: `one of ${known.join(", ")}`,
            mend: "Say what the source measured; unstated where it does not say.",
          },
        ];
      });
      return [
        ...strange,
        ...outgrowing(profile, stated).map(({ index, greatest, usual }) => ({
          file,
          at: [...at, index],
          found: `at most ${greatest.toFixed(1)} cm, and usually ${usual.toFixed(1)} cm`,
          expected: `no more than ${strangelyLong} times the usual length, or a note`,
          mend: "Correct the figure or its unit; or add a note of one sentence: how it comes to be so much longer.",
        })),
        ...beyondGreatest(profile).map(({ sex, usual, greatest }) => ({
          file,
          at,
          found: `usually ${usual.toFixed(1)} cm, and at most ${greatest.toFixed(1)} cm${sex ? `, of ${sex}s` : ""}`,
          expected: "a usual length no greater than the greatest on record",
          mend: "Correct the figure or its sex, or set one of the two aside and say why.",
        })),
        ...(inches
          ? [
              {
                file,
                at: [...at, inches.index],
                found: `a length of ${inches.short} cm beside one of ${inches.long} cm, which is as many inches`,
                expected: "both in cm, or the unit of the source",
                example: '{ "by": "handbook", "value": 1.6, "unit": "in", "as": "usual", "measure": "TL" }',
                mend: 'Add "unit": "in" where the source says inches, or set the wrong one aside.',
              },
            ]
          : []),
      ];
    }),
};

/** What is measured of an animal of each kind; of crabs and frogs sources differ. */
const measures: Partial<Record<SpeciesRecord["taxonomy"]["kind"], readonly AdultLength["measure"][]>> = {
  fish: ["TL", "SL", "FL", "disc", "unstated"],
  shrimp: ["body", "unstated"],
  crayfish: ["body", "unstated"],
  snail: ["shell", "unstated"],
  mussel: ["shell", "unstated"],
};

/** The usual lengths above any greatest one: the longest of all, else that of each sex. */
function beyondGreatest({ size }: SpeciesProfile) {
  const lengths = size?.adultLength?.value ?? [];
  const found = [undefined, "male" as const, "female" as const].flatMap((sex) => {
    const ofSex = lengths.filter((one) => sex === undefined || (one.sex ?? sex) === sex);
    const [usual, greatest] = (["usual", "greatest"] as const).map((wanted) =>
      ofSex.filter(({ as }) => as === wanted),
    );
    const own = usual?.filter((one) => sex === undefined || one.sex === sex) ?? [];
    const least = Math.max(...own.map(({ total }) => total.min));
    const most = Math.max(...(greatest ?? []).map(({ total }) => total.max));
    return Number.isFinite(most) && least > most ? [{ sex, usual: least, greatest: most }] : [];
  });
  return found.some(({ sex }) => sex === undefined) ? found.slice(0, 1) : found;
}

/** A greatest length of more than so many times the usual one is told with a note why. Common practice, no source. */
const strangelyLong = 3;

/** The lines of greatest lengths that are out of all proportion to the longest usual one of the sex. */
function outgrowing({ size }: SpeciesProfile, statements: readonly Statement[]) {
  const lengths = size?.adultLength?.value ?? [];
  return lengths.flatMap(({ as, sex, length: greatest }) => {
    if (as !== "greatest") return [];
    const usual = lengths.filter(
      (one) => one.as === "usual" && (one.sex === sex || one.sex === undefined || sex === undefined),
    );
    const longest = Math.max(...usual.map(({ length }) => length));
    const isOfIt = (line: Statement) => line.as === as && line.sex === sex && !line.setAside;
    const isStrange = longest > 0 && greatest > strangelyLong * longest;
    if (!isStrange || statements.some((line) => isOfIt(line) && line.note)) return [];
    return [{ index: statements.findIndex(isOfIt), greatest, usual: longest }];
  });
}

/** How many centimetres an inch has, with what rounding leaves of it. */
const centimetres = { min: 2.45, max: 2.65 };

/** A length that reads like the inches of another one. */
function inchesFor(statements: readonly Statement<number>[]) {
  const counted = statements
    .map((statement, index) => ({ ...statement, index }))
    .filter(({ value, unit, setAside, note }) => value !== undefined && !unit && !setAside && !note);
  const pairs = counted.flatMap((one) =>
    counted
      .filter(({ measure, sex }) => measure === one.measure && sex === one.sex)
      .map((other) => ({ index: one.index, short: one.value ?? 0, long: other.value ?? 0 })),
  );
  return pairs.find(({ short, long }) => long / short >= centimetres.min && long / short <= centimetres.max);
}
