// The modules of src that are made from data. Text of data stands in them only as JSON within a string.
import { createHash } from "node:crypto";
import type { LegalListing } from "vivary/schema";
import {
  type CitableSource,
  type Listing,
  resolve,
  type SpeciesProfile,
  type SpeciesRecord,
} from "vivary/species";
import { bibtexOf } from "./bibtex";
import { languagesOf, scientificNames, searchNames } from "./search-names";

/** All data, well formed. */
export interface Data {
  readonly records: readonly SpeciesRecord[];
  /** As readers cite them. */
  readonly sources: readonly CitableSource[];
  /** Each with the name of its file. */
  readonly legal: readonly CodedListing[];
  /** The ids of all lawgivers. */
  readonly lawgivers: readonly string[];
  /** Ids with the id they forward to. */
  readonly moved: readonly (readonly [id: string, to: string])[];
  readonly jurisdictions: readonly unknown[];
}

/** A rule of law with the id of its lawgiver, and of those where it applies as well. */
type CodedListing = LegalListing & Pick<Listing, "code" | "also">;

/** Each module by its path within src. */
export function modulesOf(data: Data): ReadonlyMap<string, string> {
  const { records, sources, legal, lawgivers, moved, jurisdictions } = data;
  const profiles = records.map((record) => profileOf(record, legal));
  return new Map([
    ...floorOf("catalog", "SpeciesProfile", profiles, moved),
    ...floorOf("evidence", "SpeciesRecord", records, moved),
    ["evidence/bibliography/generated.ts", bibliographyModule(sources)],
    ["plan/generated.ts", lawgiversModule(lawgivers)],
    ["search/generated.ts", searchModule(records, moved)],
    ...languagesOf(records).map((language) => languageModule(language, records)),
    ["shelf/generated.ts", movedModule(moved)],
    ["standards/generated.ts", standardsModule(jurisdictions)],
    ["generated.ts", versionModule(data)],
  ]);
}

/** The folders that hold generated modules alone. */
export const generatedFolders = ["catalog/species", "evidence/species", "search/languages"];

/** A profile with the laws that name the species, its genus or its family, now or before; those of a form with the form. */
export function profileOf(record: SpeciesRecord, legal: readonly CodedListing[]): SpeciesProfile {
  const names = namesInLaw(record);
  const naming = legal.filter(
    ({ taxa, except = [] }) => taxa.some((taxon) => names.includes(taxon)) && !except.includes(record.id),
  );
  const profile = unsourced(resolve(record));
  const forms = Object.entries(profile.forms ?? {}).map(([id, form]) => {
    const ofForm = naming.filter((listing) => listing.forms?.includes(id));
    return [id, withListings(form, ofForm)];
  });
  const ofAll = naming.filter((listing) => listing.forms === undefined);
  return withListings({ ...profile, ...(profile.forms && { forms: Object.fromEntries(forms) }) }, ofAll);
}

/** By which names a law finds a species: its own, now or before, its genus' and its family's. */
export function namesInLaw({
  taxonomy: { name, synonyms = [], family },
}: Pick<SpeciesRecord, "taxonomy">): readonly unknown[] {
  const own = [name, ...synonyms];
  return [...own, ...own.map((one) => one.split(" ")[0]), family];
}

/** What is named by some laws, with these, if there are any. */
const withListings = <Named extends object>(named: Named, laws: readonly CodedListing[]) => {
  const listings = laws.map(({ taxa, forms, except, ...listing }) => listing);
  return listings.length > 0 ? { ...named, listings } : named;
};

/** A profile without the keys of sources, which it does not ship. */
function unsourced(profile: SpeciesProfile): SpeciesProfile {
  return JSON.parse(JSON.stringify(profile), (key, held) => (key === "said" ? undefined : held));
}

function floorOf(
  floor: string,
  type: string,
  items: readonly { readonly id: string }[],
  moved: Data["moved"],
): readonly (readonly [path: string, code: string])[] {
  return [
    [`${floor}/generated.ts`, textsModule(items)],
    ...items.map((item) => [`${floor}/species/${item.id}.ts`, speciesModule(type, item)] as const),
    ...moved.map(([id, to]) => [`${floor}/species/${id}.ts`, forwardModule(to)] as const),
  ];
}

const textsModule = (items: readonly { readonly id: string }[]) => `/** Every species by id, as JSON. */
export const texts: readonly (readonly [id: string, json: string])[] = [
${items.map((item) => `[${quoted(item.id)}, ${jsonOf(item)}],\n`).join("")}];
`;

/** The module of one species, which needs no other. */
const speciesModule = (type: string, item: unknown) => `import type { ${type} } from "../../species";

const species: ${type} = /* @__PURE__ */ JSON.parse(${jsonOf(item)}, (_, held) => Object.freeze(held));

export default species;
`;

const forwardModule = (to: string) => `export { default } from ${quoted(`./${to}.js`)};\n`;

const searchModule = (
  records: readonly SpeciesRecord[],
  moved: Data["moved"],
) => `import type { SpeciesProfile } from "../species";
import type { ScientificNames } from "./names";

/** Every species. */
export const scientific: readonly ScientificNames[] = /* @__PURE__ */ JSON.parse(${jsonOf(scientificNames(records, moved))});

/** What loads a species, by id. */
export const loaders: ReadonlyMap<string, () => Promise<{ readonly default: SpeciesProfile }>> = /* @__PURE__ */ new Map([
${records.map(({ id }) => `[${quoted(id)}, () => import(${quoted(`../catalog/species/${id}`)})],\n`).join("")}]);
`;

/** The module of one language, which needs no other. */
const languageModule = (language: string, records: readonly SpeciesRecord[]) =>
  [
    `search/languages/${language}.ts`,
    `import type { SearchNames } from "../names";

const names: SearchNames = /* @__PURE__ */ JSON.parse(${jsonOf(searchNames(language, records))}, (_, held) => Object.freeze(held));

export default names;
`,
  ] as const;

const bibliographyModule = (
  sources: readonly CitableSource[],
) => `import type { CitableSource } from "../../species";

/** Every source. */
export const items: readonly CitableSource[] = /* @__PURE__ */ JSON.parse(${jsonOf(sources)});

/** The entry of every source in BibTeX, by id. */
export const entries: ReadonlyMap<string, string> = /* @__PURE__ */ new Map(/* @__PURE__ */ JSON.parse(${jsonOf(bibtexOf(sources))}));
`;

const versionModule = (data: Data) => `/**
 * The version of the data: the first twelve digits of the SHA-256 of all records, sources, laws and official
 * requirements. It changes with every figure.
 */
export const dataVersion: string = ${quoted(createHash("sha256").update(JSON.stringify(data)).digest("hex").slice(0, 12))};
`;

const lawgiversModule = (
  lawgivers: readonly string[],
) => `/** The id of a lawgiver whose laws profiles carry: a country, a part of one, a union or a convention. */
export type Lawgiver = ${lawgivers.map(quoted).join(" | ") || "never"};

/** The ids of all lawgivers whose laws profiles carry. */
export const lawgivers: readonly Lawgiver[] = /* @__PURE__ */ Object.freeze([${lawgivers.map(quoted).join(", ")}]);
`;

const movedModule = (
  moved: Data["moved"],
) => `/** Ids that no species bears any more, or that the trade uses, with the id they forward to. */
export const moved: readonly (readonly [id: string, to: string])[] = /* @__PURE__ */ JSON.parse(${jsonOf(moved)});
`;

const standardsModule = (
  jurisdictions: readonly unknown[],
) => `import type { Jurisdiction } from "./jurisdiction";

/** Every jurisdiction, by id. */
export const jurisdictions: readonly Jurisdiction[] = /* @__PURE__ */ JSON.parse(${jsonOf(jurisdictions)});
`;

/** A value as JSON in a string: it loads twice as fast as the same object written in JavaScript. */
const jsonOf = (value: unknown) => quoted(JSON.stringify(value));

/** A text as a string of JavaScript whose letters mean nothing elsewhere, be it in a comment or in a page. */
const quoted = (text: string) =>
  JSON.stringify(text).replaceAll(
    /[^ -~]|</g,
    (letter) => `\\u${letter.charCodeAt(0).toString(16).padStart(4, "0")}`,
  );
