import type { SpeciesRecord } from "vivary/species";
import { fieldOf } from "../reading/fields";
import { nearestId } from "../reading/spelling";
import type { Check, Slip } from "./check";

export const interbreeding: Check = {
  name: "A species it interbreeds with says so too, if it has a record",
  find({ records, files }) {
    const partners = new Map(
      records.map(({ record }) => [record.id, partnersOf(record).map(({ id }) => id)]),
    );
    const moved = new Map(files.moved.map(({ name, json }) => [name, String(fieldOf(json, "to"))]));
    return records.flatMap(({ path: file, record }) =>
      partnersOf(record).flatMap(({ id, at }): readonly Slip[] => {
        const place = { file, at };
        if (id === record.id)
          return [
            {
              ...place,
              found: "interbreeds with itself",
              expected: "the id of another species",
              mend: "Take it out.",
            },
          ];
        const known = partners.get(id);
        const now = moved.get(id) ?? (known ? undefined : nearestId(id, partners.keys()));
        if (now !== undefined)
          return [
            {
              ...place,
              found: `interbreeds with ${id}, which no record is called`,
              expected: "the id of a species",
              guess: ` Did you mean ${now}?`,
              mend: "A species without a record may stand here by its accepted name.",
            },
          ];
        if (known === undefined || known.includes(record.id)) return [];
        return [
          {
            ...place,
            besides: `data/species/${id}.json`,
            found: `interbreeds with ${id}, whose record does not name ${record.id}`,
            expected: "both records to name each other",
            mend: `Add ${record.id} to reproduction.interbreedsWith of ${id}, or take it out here.`,
          },
        ];
      }),
    );
  },
};

/** The ids that a record names, each with where it stands. */
const partnersOf = ({ reproduction }: SpeciesRecord) =>
  (reproduction?.interbreedsWith ?? []).flatMap(({ value }, index) =>
    value && value !== "none" ? [{ id: value, at: ["reproduction", "interbreedsWith", index] }] : [],
  );
