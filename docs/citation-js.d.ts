declare module "@citation-js/core" {
  /** References in CSL-JSON. */
  export class Cite {
    constructor(references: object);
    format(
      as: "bibliography",
      options: { readonly format: "text"; readonly template: string; readonly lang: string },
    ): string;
  }
}

declare module "@citation-js/plugin-csl";
