import {
  type Fact,
  factAt,
  type SpeciesProfile,
  splitPath,
  type TraitPath,
  traitPaths,
  traitTable,
} from "../species";
import { escaped } from "./layout";
import { english } from "./messages/english";
import { traitText } from "./trait-text";
import { type Quantities, quantities, type UnitSystem } from "./units";

/**
 * A species profile as a Markdown page: what is known of each trait, in the reader's units, what other sources say, and
 * how well it is supported. Text from records is escaped.
 *
 * @throws InvalidInputError for an unknown unit system.
 *
 * @example
 * ```ts
 * import { danioRerio } from "vivary/catalog";
 * import { profileMarkdown } from "vivary/report";
 *
 * profileMarkdown(danioRerio).split("\n")[0]; // => "# Zebra danio"
 * ```
 */
export function profileMarkdown(
  profile: SpeciesProfile,
  options: { readonly units?: UnitSystem } = {},
): string {
  const { taxonomy, names, form, forms } = profile;
  const title = (form && forms?.[form]?.names.en?.[0]) ?? names.en?.[0] ?? taxonomy.name;
  const known = traitPaths.flatMap((path) => {
    const fact = factAt(profile, path);
    return fact ? [{ path, fact, section: splitPath(path)[0] }] : [];
  });
  const write = quantities(options.units ?? "metric");
  const sections = [...new Set(known.map(({ section }) => section))].map((section) => {
    const rows = known
      .filter((row) => row.section === section)
      .map(({ path, fact }) => rowText(path, fact, write));
    return `## ${capitalised(section)}\n\n${[...header, ...rows].join("\n")}`;
  });
  const named = `*${escaped(taxonomy.name)}* ${escaped(`${taxonomy.authority}, ${taxonomy.family}, ${taxonomy.order}`)}`;
  return `${[`# ${escaped(capitalised(title))}`, named, ...sections, escaped(english.closing)].join("\n\n")}\n`;
}

const header = ["| trait | value | also said | support |", "| --- | --- | --- | --- |"];

function rowText(path: TraitPath, { value, basis, also = [] }: Fact<unknown>, write: Quantities): string {
  const others = also.map((other) => traitText(path, other, write)).join(" / ");
  const cells = [traitTable[path].label, traitText(path, value, write), others, english.basis[basis]];
  return `| ${cells.map(escaped).join(" | ")} |`;
}

const capitalised = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);
