import {
  type AdultLength,
  type Kind,
  type SpeciesProfile,
  splitPath,
  type TraitPath,
  traitPaths,
  type TraitValue as Value,
} from "../../src/species";

/** Traits by path. */
export type Stated = { readonly [Path in TraitPath]?: Value<Path> };

interface Further {
  readonly kind?: Kind;
  /** Other values that a source supports. */
  readonly also?: readonly Stated[];
  /** Bred forms, by what they state. */
  readonly forms?: Readonly<Record<string, Stated>>;
}

/** A species nobody has seen, of which exactly these traits are known; its individuals are alike if nothing else is said. */
export function animal(
  id: string,
  stated: Stated = {},
  { kind = "fish", also = [], forms }: Further = {},
): SpeciesProfile {
  return {
    id,
    taxonomy: { name: id, authority: "invented", family: "Inventidae", order: "Inventiformes", kind },
    names: { en: [id] },
    ...sections({ "temperament.varies": false, ...stated }, also),
    ...(forms && {
      forms: Object.fromEntries(
        Object.entries(forms).map(([name, traits]) => [name, { names: { en: [name] }, ...sections(traits) }]),
      ),
    }),
  };
}

function sections(stated: Stated, also: readonly Stated[] = []): object {
  const facts: Record<string, Record<string, object>> = {};
  for (const path of traitPaths) {
    if (stated[path] === undefined) continue;
    const [section, name] = splitPath(path);
    const others = also.map((other) => other[path]).filter((value) => value !== undefined);
    const fact = { value: stated[path], basis: "published", ...(others.length > 0 && { also: others }) };
    facts[section] = { ...facts[section], [name]: fact };
  }
  return facts;
}

/** Of an animal that is kept in any number. */
export const inAnyNumber: Stated = {
  "social.living": "group",
  "social.group": { least: 1 },
  "social.femalesPerMale": 0,
};

/** Adults of one total length, in cm. */
export const adults = (usual: number, greatest = usual): readonly AdultLength[] => [
  { length: usual, measure: "TL", as: "usual", total: { min: usual, max: usual } },
  { length: greatest, measure: "TL", as: "greatest", total: { min: greatest, max: greatest } },
];

/** Adults of which each sex has its own total length, in cm. */
export const adultsBySex = (male: number, female: number): readonly AdultLength[] => [
  { length: male, measure: "TL", as: "usual", sex: "male", total: { min: male, max: male } },
  { length: female, measure: "TL", as: "usual", sex: "female", total: { min: female, max: female } },
];
