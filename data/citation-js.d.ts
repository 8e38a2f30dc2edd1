declare module "@citation-js/core" {
  /** References in CSL-JSON, or in whatever format a plugin reads. */
  export class Cite {
    constructor(references: object | string);
    readonly data: readonly object[];
    format(as: "bibtex"): string;
    format(
      as: "bibliography",
      options: { readonly format: "text"; readonly template: string; readonly lang: string },
    ): string;
  }

  export const plugins: {
    readonly config: { get(plugin: "@bibtex"): { readonly format: object } };
  };
}

declare module "@citation-js/plugin-bibtex";
declare module "@citation-js/plugin-csl";
