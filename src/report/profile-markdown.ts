import { type Fact, type SpeciesProfile, type TraitPath, traitPaths, traitTable } from "../species";
import { splitPath } from "../species/traits";
import { escaped } from "./layout";
import { english } from "./messages/english";
import { quantities, type UnitSystem } from "./units";

/**
 * A species profile as a Markdown page: what is known of each trait, in the reader's units, and how well it is
 * supported. Text from records is escaped.
 *
 * @example
 * ```ts
 * import { danioRerio } from "vivary/catalog";
 * import { profileMarkdown } from "vivary/report";
 *
 * profileMarkdown(danioRerio).split("\n")[0]; // => "# Zebrafish"
 * ```
 */
export function profileMarkdown(
  profile: SpeciesProfile,
  options: { readonly units?: UnitSystem } = {},
): string {
  const { taxonomy, names, form } = profile;
  const text = writer(options.units ?? "metric");
  const title = (form && profile.forms?.[form]?.names.en?.[0]) ?? names.en?.[0] ?? taxonomy.name;
  const sections = Object.keys(profile).filter((key) =>
    traitPaths.some((path) => splitPath(path)[0] === key),
  );
  return [
    `# ${escaped(capitalised(title))}`,
    `*${escaped(taxonomy.name)}* ${escaped(taxonomy.authority)}, ${escaped(taxonomy.family)}, ${escaped(taxonomy.order)}`,
    ...sections.map((section) => sectionText(profile, section, text)),
    escaped(english.closing),
    "",
  ].join("\n\n");
}

type Writer = (value: unknown, unit: string | undefined) => string;

function sectionText(profile: SpeciesProfile, section: string, text: Writer): string {
  const facts = (profile as unknown as Record<string, Record<string, Fact<unknown>>>)[section] ?? {};
  const rows = Object.entries(facts).map(([name, { value, basis, also }]) => {
    const { label, unit } = traitTable[`${section}.${name}` as TraitPath];
    const others = also?.map((other) => text(other, unit)).join("; ");
    const cells = [label, text(value, unit), others ?? "", english.basis[basis]];
    return `| ${cells.map((cell) => escaped(cell)).join(" | ")} |`;
  });
  return [
    `## ${capitalised(section)}`,
    ["| trait | value | also said | support |", "| --- | --- | --- | --- |", ...rows].join("\n"),
  ].join("\n\n");
}

/** Writes any resolved value. */
function writer(units: UnitSystem): Writer {
  const { text } = quantities(units);
  const write: Writer = (value, unit) => {
    const withUnit = unit ? { unit } : {};
    if (typeof value === "number") return text({ value, ...withUnit });
    if (typeof value === "boolean") return value ? "yes" : "no";
    if (typeof value === "string") return value;
    if (Array.isArray(value))
      return value.length > 0 ? value.map((item) => write(item, unit)).join("; ") : "none";
    if (typeof value !== "object" || value === null) return "";
    const fields = Object.entries(value);
    if (fields.every(([key, held]) => (key === "min" || key === "max") && typeof held === "number")) {
      return text({ ...value, ...withUnit });
    }
    if (fields.every(([key]) => key === "min" || key === "max"))
      return fields.map(([, held]) => held).join(" to ");
    return fields
      .filter(([key]) => key !== "total" && key !== "standIn")
      .map(([key, held]) => `${words(key)} ${write(held, sizes.includes(key) ? unit : undefined)}`)
      .join(", ");
  };
  return write;
}

/** The fields of a value that hold figures in the trait's unit. */
const sizes = [
  "kept",
  "optimum",
  "tolerated",
  "limit",
  "wild",
  "tested",
  "length",
  "least",
  "area",
  "greatest",
];

const words = (key: string) => key.replaceAll(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);

const capitalised = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);
