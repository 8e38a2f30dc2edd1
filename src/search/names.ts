/**
 * The names of one language, for {@link suggestSpecies}. Those of this package are the default exports of
 * `vivary/search/<language>`; an app may write one of its own.
 */
export interface SearchNames {
  /** The language: `de`. */
  readonly language: string;
  /** Names by the id of the species, `danio-rerio`, and of the form behind it, `danio-rerio/leopard`; the commonest first. */
  readonly names: Readonly<Record<string, readonly string[]>>;
  /** What a family or an order is called: `{ "Cichlidae": ["cichlid"] }`. */
  readonly groups: Readonly<Record<string, readonly string[]>>;
}

/** What science calls a species: its accepted name, family and order, and the names it had or that the trade still uses. */
export type ScientificNames = readonly [name: string, family: string, order: string, ...old: string[]];

/** Which of its names a species was found by: `synonym` is an old scientific name, `group` its family, its order or what these are called. */
export type NameKind = "scientific" | "synonym" | "vernacular" | "form" | "group";
