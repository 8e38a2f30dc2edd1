import { importSource } from "../source.mjs";

const { essentialTraits, factAt, traitTable } = await importSource("species/index.ts");

export const name = "Every essential trait is stated";

export function find({ records }) {
  return records.flatMap(({ path, profile }) =>
    essentialTraits
      .filter((trait) => !factAt(profile, trait))
      .map((trait) => ({
        where: path,
        found: `${trait} is essential and unknown`,
        expected: traitTable[trait].about,
        mend: "State it from a source, or as common practice where every keeper knows it.",
      })),
  );
}
