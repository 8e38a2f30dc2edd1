export const name = "A cited source has a file, and a file is cited";

export function find({ files, sources }) {
  const cited = new Set(
    files.flatMap(({ json }) => Object.values(json?.sources ?? {}).map((source) => source?.cite)),
  );
  const known = new Set(sources.map(({ name: file }) => file));
  return [
    ...[...cited]
      .filter((cite) => !known.has(cite))
      .map((cite) => ({
        where: `data/sources/${cite}.json`,
        found: "is cited and missing",
        expected: "a CSL-JSON file of that name",
        mend: "Add the source, or cite one that is there.",
      })),
    ...[...known]
      .filter((file) => !cited.has(file))
      .map((file) => ({
        where: `data/sources/${file}.json`,
        found: "is cited by no record",
        expected: "a record that cites it",
        mend: "Cite it where it was used, or delete it.",
      })),
  ];
}
