import { isDeepStrictEqual } from "node:util";
import { contains } from "vivary/ranges";
import {
  applyForm,
  factAt,
  figurePaths,
  resolve,
  type SpeciesRecord,
  splitPath,
  statementsOf,
  type TraitPath,
  traitPaths,
} from "vivary/species";
import type { Check } from "./check";

/** A form has a name, repeats nothing of its species, and asks for no water that the species is not kept in. */
export const formsDiffer: Check = {
  name: "A form states only what differs from its species",
  find: ({ records }) =>
    records.flatMap(({ path: file, record, profile }) =>
      Object.entries(record.forms ?? {}).flatMap(([id, form]) => {
        const place = (trait: TraitPath) => ({ file, at: ["forms", id, ...splitPath(trait)] });
        const repeated = traitPaths
          .filter((trait) => saidOf(form, trait) !== "[]")
          .filter((trait) => saidOf(form, trait) === saidOf(record, trait))
          .filter((trait) => isIdle(record, id, trait))
          .map((trait) => ({
            ...place(trait),
            found: `${trait} says of the form what the record says of the species`,
            expected: "only what differs",
            mend: "Take it out: a form takes all else from its species.",
          }));
        const bred = applyForm(profile, id);
        const strayed = figurePaths
          .filter((trait) => statementsOf(form, trait).length > 0)
          .filter((trait) => {
            const [own, of] = [factAt(bred, trait)?.value.kept, factAt(profile, trait)?.value];
            const widest = of?.tolerated ?? of?.kept;
            return own && widest && !contains(widest, own) && !meets(widest, own);
          })
          .map((trait) => ({
            ...place(trait),
            found: `${trait} of the form has nothing in common with that of the species`,
            expected: "water that the species is kept in",
            mend: "Correct the figures or their unit.",
          }));
        const nameless = {
          file,
          at: ["forms", id],
          found: "a form without an English name",
          expected: "one at least, by which reports tell it from its species",
          example: `{ "names": { "en": ["${id.replaceAll("-", " ")} ${record.names.en?.[0] ?? ""}"] } }`,
          mend: "Add it to names; where the trade has none, translate the one it has.",
        };
        const isNamed = (form.names.en ?? []).length > 0;
        return [...(isNamed ? [] : [nameless]), ...repeated, ...strayed];
      }),
    ),
};

/** Whether a form would be the same if it said nothing of a trait: what it says may keep another from being derived. */
function isIdle(record: SpeciesRecord, id: string, trait: TraitPath): boolean {
  const [section, name] = splitPath(trait);
  const form = record.forms?.[id];
  const silent = { ...form, [section]: { ...form?.[section], [name]: undefined } };
  const without = { ...record, forms: { ...record.forms, [id]: silent } } as SpeciesRecord;
  const [said, unsaid] = [record, without].map((one) => factAt(applyForm(resolve(one), id), trait)?.value);
  return isDeepStrictEqual(said, unsaid);
}

/** What is said of a trait, whoever says it. */
const saidOf = (holder: Pick<SpeciesRecord, never>, trait: TraitPath) =>
  JSON.stringify(
    statementsOf(holder, trait).map(({ value, as, sex, stage, unit }) => [value, as, sex, stage, unit]),
  );

interface Span {
  readonly min?: number | undefined;
  readonly max?: number | undefined;
}

const meets = (one: Span, other: Span) =>
  (one.min ?? -Infinity) <= (other.max ?? Infinity) && (other.min ?? -Infinity) <= (one.max ?? Infinity);
