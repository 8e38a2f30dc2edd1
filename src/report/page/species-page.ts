import { listOf, objectOf, oneOf, refuseOthers } from "../../checks";
import { InvalidInputError, refusal } from "../../errors";
import { profileProblems, profilesOf } from "../../plan/inner";
import type { SpeciesProfile, SpeciesRecord } from "../../species";
import { checkedPages } from "../messages/checked-messages";
import { englishPages } from "../messages/english-page";
import type { PageMessages } from "../messages/page-messages";
import { quantityWriter, type UnitSystem } from "../quantities";
import { asHtml } from "./as-html";
import { asMarkdown, type LinkTo } from "./as-markdown";
import { asText } from "./as-text";
import { pageOf } from "./page-of";
import type { PageSource } from "./page-source";

/** What a page is written from beside the profile, and how. */
export interface SpeciesPageOptions {
  /** The species among which company is sought, such as `allSpecies`; without them nobody is named. */
  readonly candidates?: readonly SpeciesProfile[] | undefined;
  /** What `citationsOf` of `vivary/evidence` gives of its record; without them no sources are listed. */
  readonly sources?: readonly PageSource[] | undefined;
  /** Its record, from `vivary/evidence`: what each source says of the water stands beside each other, and notes are told. */
  readonly record?: SpeciesRecord | undefined;
  /** Plain text in lines of at most 80 columns, Markdown, or a fragment of HTML. Default `text`. */
  readonly format?: "text" | "markdown" | "html" | undefined;
  /** Default `metric`. */
  readonly units?: UnitSystem | undefined;
  /** The words of another language, in place of English. An app that needs no English takes `speciesPageIn`. */
  readonly messages?: PageMessages | undefined;
  /** Where the page of a species or form stands, for links in Markdown and HTML; undefined for one that has none. */
  readonly linkTo?: LinkTo | undefined;
}

/**
 * The page of a species in plain words: at a glance, where it comes from, how large it grows, water, tank, behaviour,
 * company, feeding, breeding, its forms, what to watch for, how sure all this is, and cautions. With candidates it names
 * the best companions, each judged with it in a tank of typical size, whom it would eat, and who would leave it hungry; with
 * sources it lists them. A profile with a form applied makes the page of the form. What nobody knows is left out.
 *
 * HTML is one `article` that is XML as well: headings from the first level on, lists and tables with heads, each section
 * with an id that lasts, no styles and no scripts. All text is escaped.
 *
 * @throws InvalidInputError for what is no profile, and for an unknown format or unit system.
 *
 * @example
 * ```ts
 * import danioRerio from "vivary/catalog/danio-rerio";
 * import { speciesPage } from "vivary/report";
 *
 * speciesPage(danioRerio, { format: "markdown" }).split("\n")[0]; // => "# Zebra danio"
 * ```
 */
export function speciesPage(profile: SpeciesProfile, options: SpeciesPageOptions = {}): string {
  const { messages = englishPages, ...further } = objectOf(options, "options");
  return speciesPageIn(checkedPages(messages, "options.messages"), profile, further);
}

/** The page of a species in the words of a language, as {@link speciesPage} writes it, without shipping English. */
export function speciesPageIn(
  messages: PageMessages,
  profile: SpeciesProfile,
  options: Omit<SpeciesPageOptions, "messages"> = {},
): string {
  const {
    format = "text",
    units = "metric",
    linkTo = () => undefined,
    candidates: given = [],
    sources = [],
    record,
    ...others
  } = objectOf(options, "options");
  refuseOthers(others);
  checkedPages(messages, "messages");
  oneOf(format, ["text", "markdown", "html"], "options.format");
  if (typeof linkTo !== "function") throw refusal("options.linkTo", "a function", linkTo);
  const problems = profileProblems(profile, ["profile"]);
  if (problems.length > 0) throw new InvalidInputError(problems);
  const candidates = profilesOf(given, ["options", "candidates"]);
  const page = pageOf(profile, {
    candidates,
    sources: listOf(sources, "options.sources"),
    record,
    messages,
    write: quantityWriter(messages, units),
  });
  const addressOf: LinkTo = (id, form) => {
    const address: unknown = linkTo(id, form);
    if (address === undefined || typeof address === "string") return address;
    throw refusal("options.linkTo", "a function that gives an address or undefined", address);
  };
  if (format === "html") return asHtml(page, addressOf);
  return format === "markdown" ? asMarkdown(page, addressOf) : asText(page);
}
