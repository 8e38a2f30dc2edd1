export const name = "A file is named after its id";

export function find({ files, sources, moved }) {
  return [...files, ...sources, ...moved]
    .filter(({ name: file, json }) => json?.id !== file)
    .map(({ path, name: file, json }) => ({
      where: path,
      found: `id is ${json?.id}`,
      expected: file,
      mend: "Rename the file or correct the id.",
    }));
}
