export const name = "A species it interbreeds with says so too, if it has a record";

export function find({ records }) {
  const partners = new Map(records.map(({ record }) => [record.id, partnersOf(record)]));
  return records.flatMap(({ path, record }) =>
    partnersOf(record)
      .filter((id) => partners.has(id) && !partners.get(id).includes(record.id))
      .map((id) => ({
        where: path,
        found: `interbreeds with ${id}, whose record does not name ${record.id}`,
        expected: "both records to name each other",
        mend: `Add ${record.id} to reproduction.interbreedsWith of ${id}, or take it out here.`,
      })),
  );
}

const partnersOf = (record) =>
  (record.reproduction?.interbreedsWith ?? [])
    .map(({ value }) => value)
    .filter((value) => value && value !== "none");
