import type { CitableSource } from "../../species";
import type { PageMessages } from "../messages/page-messages";
import { capitalised } from "../names";
import type { PageSource } from "./page-source";

const most = 3;

/** Who wrote it: `Yanar, Erdoğan and Kumlu`, `Saxby and others`, or the body that published it. */
function authorsOf({ author = [], publisher }: CitableSource, { page }: PageMessages): string {
  const names = author.map((one) => ("literal" in one ? one.literal : one.family));
  if (names.length === 0) return publisher ?? "";
  return page.sources.and(names.length > most ? names.slice(0, 1) : names, names.length > most);
}

const yearOf = ({ issued }: CitableSource) => issued?.["date-parts"][0]?.[0];

/** A source in a word or two, as a table names it: `FishBase`, `Yanar and others 2019`. */
export function shortCitation(by: string, sources: readonly PageSource[], messages: PageMessages): string {
  const source = sources.find((one) => one.by === by)?.source;
  if (!source) return by;
  const year = yearOf(source);
  if (year === undefined && source.type !== "article-journal") return source.title;
  const who = authorsOf(source, messages);
  return [who || source.title, year].filter(Boolean).join(" ");
}

/** Whether a place in a source begins with a word, and not with an address or the name of a file. */
const beginsWithWord = (at: string): boolean => /^\p{L}+(?=[\s,;]|$)/u.test(at);

/** A source as a list of references has it, with where in it and what is to be said of it. */
export function fullCitation(
  { source, cite, at, memory, under, of, used }: PageSource,
  messages: PageMessages,
): string {
  const { sources: words } = messages.page;
  const { title = cite, DOI, URL, volume, issue, page, publisher } = source ?? {};
  const year = source && yearOf(source);
  const who = source ? authorsOf(source, messages) : "";
  const place = at && beginsWithWord(at) ? capitalised(at, messages.language) : (at ?? "");
  const where = DOI ? `https://doi.org/${DOI}` : URL;
  const within = [
    source?.["container-title"],
    [volume, issue && `(${issue})`].filter(Boolean).join(""),
    page,
  ];
  const parts = [
    [who === title ? "" : who, year && `(${year})`].filter(Boolean).join(" "),
    title,
    within.filter(Boolean).join(" ") || (publisher === who || publisher === title ? "" : publisher),
    at === where ? "" : place,
    at !== where && at?.includes("://") ? "" : where,
  ];
  const said = [
    under && words.under(under),
    of && words.of(of),
    memory && words.recalled,
    used ? "" : words.beside,
  ];
  const remark = said.filter(Boolean).join(", ");
  const told = parts
    .filter(Boolean)
    .map((part) => String(part).replace(/\.$/, ""))
    .reduce((before, part) => `${before}${/[?!]$/.test(before) ? "" : "."} ${part}`);
  return `${told}${remark && ` (${remark})`}.`;
}
