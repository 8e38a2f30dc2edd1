/** What the site says around its pages, in one language. */
export interface SiteWords {
  /** What it calls itself, in its title. */
  readonly site: string;
  readonly skip: string;
  readonly menu: string;
  readonly home: string;
  readonly species: string;
  readonly guides: string;
  readonly rules: string;
  readonly reference: string;
  readonly example: string;
  readonly evidence: string;
  readonly sources: string;
  readonly terms: string;
  readonly contributing: string;
  readonly package: string;
  /** This language, in itself. */
  readonly thisLanguage: string;
  /** Said of a link to a page that is written in English alone. */
  readonly inEnglish: string;
  readonly search: {
    readonly label: string;
    /** Before the number of those found. */
    readonly found: string;
    /** Where there are more than ten. */
    readonly more: string;
    readonly none: string;
  };
  readonly welcome: {
    readonly about: string;
    readonly paragraphs: readonly string[];
    readonly keepers: string;
    readonly keepersText: string;
    readonly developers: string;
    readonly developersText: string;
    readonly researchers: string;
    readonly researchersText: string;
    readonly doubt: string;
    readonly doubtText: string;
  };
  readonly list: {
    readonly title: string;
    readonly about: string;
    readonly intro: (species: number, forms: number, families: number) => string;
    readonly forms: string;
  };
  readonly family: {
    readonly about: (family: string) => string;
    readonly order: string;
    readonly sizes: string;
    readonly ranges: string;
  };
  readonly profile: {
    readonly about: (name: string) => string;
    readonly sizes: string;
    /** Before the family. */
    readonly more: string;
  };
  /** What a table or a picture that scrolls is called by those who do not see it. */
  readonly scrolls: { readonly table: string; readonly picture: string };
  readonly closing: string;
  readonly version: (version: string, data: string) => string;
}
