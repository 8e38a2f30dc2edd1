import type { SpeciesRecord } from "vivary/species";
import { folded } from "../../src/folded";
import type { Check } from "./check";

/** A name with where it stands. */
interface Named {
  readonly kind: string;
  readonly name: string;
  readonly at: readonly (string | number)[];
}

/** Scientific names, vernacular names of one language and identifiers that stand twice, in one record or in two. */
export const namesAreOneSpecies: Check = {
  name: "A name means one species",
  find({ records }) {
    const bearers = new Map<string, (Named & { readonly file: string })[]>();
    for (const { path: file, record } of records) {
      for (const named of namesOf(record)) {
        const key = `${named.kind} ${folded(named.name)}`;
        bearers.set(key, [...(bearers.get(key) ?? []), { ...named, file }]);
      }
    }
    return [...bearers.values()].flatMap((all) =>
      all.flatMap(({ kind, name, file, at }, index) => {
        const others = [...new Set(all.filter((_, other) => other !== index).map((other) => other.file))];
        const elsewhere = others.filter((other) => other !== file);
        if (others.length === 0 || (elsewhere.length === 0 && index === 0)) return [];
        const place = elsewhere.length > 0 ? `in ${elsewhere.join(", ")} too` : "here twice";
        return [
          {
            file,
            at,
            found: `${kind} "${name}" stands ${place}`,
            expected: "each to mean one species",
            mend: "Keep it where it belongs; a trade name of several is told apart by a further word.",
          },
        ];
      }),
    );
  },
};

function namesOf({ taxonomy, names, forms = {}, identifiers = {} }: SpeciesRecord): readonly Named[] {
  const synonyms = (taxonomy.synonyms ?? []).map((name, index) => ({
    kind: "the scientific name",
    name,
    at: ["taxonomy", "synonyms", index],
  }));
  return [
    { kind: "the scientific name", name: taxonomy.name, at: ["taxonomy", "name"] },
    ...synonyms,
    ...vernacular(names, ["names"]),
    ...Object.entries(forms).flatMap(([id, form]) => vernacular(form.names, ["forms", id, "names"])),
    ...Object.entries(identifiers).map(([register, id]) => ({
      kind: `the identifier of ${register}`,
      name: id,
      at: ["identifiers", register],
    })),
  ];
}

const vernacular = (names: SpeciesRecord["names"], above: readonly string[]): readonly Named[] =>
  Object.entries(names).flatMap(([language, list = []]) =>
    list.map((name, index) => ({
      kind: language === "en" ? "the English name" : `the name in ${language}`,
      name,
      at: [...above, language, index],
    })),
  );
