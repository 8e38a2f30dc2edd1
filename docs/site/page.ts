// A page of the site before it is laid out.
import { posix } from "node:path";

/** The languages that the site is written in. */
export type LanguageCode = "en" | "de";

/** A page of the site. */
export interface Page {
  /** Where it stands, from the root of the site: `de/species/danio-rerio.html`. */
  readonly path: string;
  readonly language: LanguageCode;
  readonly title: string;
  /** What it is about, for search engines and previews, in a sentence. */
  readonly about: string;
  /** What stands in it, with a heading of the first level. */
  readonly body: string;
  /** The same page in each language that has it, itself among them; absent where there is but one. */
  readonly versions?: Readonly<Record<LanguageCode, string>>;
}

/** The way from one page to another, or to the anchor of one, such as holds in a folder and under any address. */
export const wayTo = (from: string, to: string): string => posix.relative(posix.dirname(from), to);
