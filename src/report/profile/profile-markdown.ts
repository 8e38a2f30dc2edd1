import { objectOf, refuseOthers } from "../../checks";
import { InvalidInputError } from "../../errors";
import { profileProblems } from "../../plan/inner";
import { type Fact, factAt, type SpeciesProfile, splitPath, type TraitPath, traitPaths } from "../../species";
import type { WriteQuantity } from "../figure";
import { escaped } from "../layout";
import { checkedMessages } from "../messages/checked-messages";
import { english } from "../messages/english";
import type { Messages } from "../messages/messages";
import { capitalised, nameIn } from "../names";
import { quantityWriter, type UnitSystem } from "../quantities";
import { traitText } from "./trait-text";

/** How a profile is written. */
export interface ProfileOptions {
  /** Default `metric`. */
  readonly units?: UnitSystem | undefined;
  /** The words of another language, in place of English. An app that needs no English takes `profileMarkdownIn`. */
  readonly messages?: Messages | undefined;
}

/**
 * A species profile as a Markdown page: what is known of each trait, in the reader's units, what other sources say, and
 * how well it is supported. Text from records is escaped.
 *
 * @throws InvalidInputError for what is no profile, and for an unknown unit system.
 *
 * @example
 * ```ts
 * import danioRerio from "vivary/catalog/danio-rerio";
 * import { profileMarkdown } from "vivary/report";
 *
 * profileMarkdown(danioRerio).split("\n")[0]; // => "# Zebra danio"
 * ```
 */
export function profileMarkdown(profile: SpeciesProfile, options: ProfileOptions = {}): string {
  const { messages = english, ...further } = objectOf(options, "options");
  return profileMarkdownIn(checkedMessages(messages, "options.messages"), profile, further);
}

/** A species profile in the words of a language, as {@link profileMarkdown} writes it, without shipping English. */
export function profileMarkdownIn(
  messages: Messages,
  profile: SpeciesProfile,
  options: Pick<ProfileOptions, "units"> = {},
): string {
  const { units = "metric", ...others } = objectOf(options, "options");
  refuseOthers(others);
  checkedMessages(messages, "messages");
  const problems = profileProblems(profile, ["profile"]);
  if (problems.length > 0) throw new InvalidInputError(problems);
  const { language, closing } = messages;
  const { name, authority, family, order } = profile.taxonomy;
  const title = capitalised(nameIn(language, profile.names, name), language);
  const write = quantityWriter(messages, units);
  const known = traitPaths.flatMap((path) => {
    const fact = factAt(profile, path);
    return fact ? [{ section: splitPath(path)[0], row: rowText(path, fact, messages, write) }] : [];
  });
  const sections = Object.entries(messages.profile.sections).flatMap(([section, heading]) => {
    const rows = known.filter((trait) => trait.section === section).map(({ row }) => row);
    return rows.length > 0 ? [`## ${escaped(heading)}\n\n${[...header(messages), ...rows].join("\n")}`] : [];
  });
  const named = `*${escaped(name)}* ${escaped([authority, family, order].filter(Boolean).join(", "))}`;
  return `${[`# ${escaped(title)}`, named, ...sections, escaped(closing)].join("\n\n")}\n`;
}

const header = ({ profile: { columns } }: Messages) => [line(columns), line(columns.map(() => "---"))];

function rowText(
  path: TraitPath,
  { value, basis, also = [] }: Fact<unknown>,
  messages: Messages,
  write: WriteQuantity,
): string {
  const others = also.map((other) => traitText(path, other, messages, write)).join(" / ");
  const cells = [
    messages.traits[path],
    traitText(path, value, messages, write),
    others,
    messages.basis[basis],
  ];
  return line(cells.map(escaped));
}

const line = (cells: readonly string[]) => `| ${cells.join(" | ")} |`;
