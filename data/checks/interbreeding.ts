import type { SpeciesRecord } from "vivary/species";
import type { Check } from "./check";

export const interbreeding: Check = {
  name: "A species it interbreeds with says so too, if it has a record",
  find({ records }) {
    const partners = new Map(records.map(({ record }) => [record.id, partnersOf(record)]));
    return records.flatMap(({ path, record }) =>
      partnersOf(record)
        .filter((id) => partners.get(id)?.includes(record.id) === false)
        .map((id) => ({
          where: path,
          found: `interbreeds with ${id}, whose record does not name ${record.id}`,
          expected: "both records to name each other",
          mend: `Add ${record.id} to reproduction.interbreedsWith of ${id}, or take it out here.`,
        })),
    );
  },
};

const partnersOf = ({ reproduction }: SpeciesRecord): readonly string[] =>
  (reproduction?.interbreedsWith ?? []).flatMap(({ value }) => (value && value !== "none" ? [value] : []));
