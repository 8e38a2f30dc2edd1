import { frozen } from "../../frozen";
import { profilesOf } from "../../plan/inner";
import {
  type AdultLength,
  bases,
  type Fact,
  type Facts,
  type Figures,
  factAt,
  type SpeciesProfile,
  type TraitPath,
  traitPaths,
  traitTable,
} from "../../species";
import { informs } from "../../species/inner";
import { inOrder, listed, type RowWith } from "../table";
import { dwc, ets } from "../terms";
import { partsOf, type ValueCells, valueColumns } from "./parts";
import { animalsOf, statements } from "./statements";

const { meaning, sex, measure, animals } = statements.columns;

const columns = {
  factID: {
    type: "string",
    about:
      "Tells the fact, or one entry of it, from all others of one release: it ends in its place. A value of several parts has a row for each.",
    required: true,
    term: dwc("measurementID"),
  },
  taxonID: { type: "string", about: "The species.", required: true, term: dwc("taxonID") },
  form: {
    type: "string",
    about: "The form bred in captivity that it is about; empty for the species.",
    term: ets("morphotype"),
  },
  trait: { type: "string", about: "The trait.", required: true, term: ets("traitID") },
  ...valueColumns,
  meaning,
  sex,
  measure,
  animals,
  standsIn: {
    type: "boolean",
    about: "Whether the optimum stands in for the span to keep it in, which nobody states.",
    required: true,
  },
  classEnds: {
    type: "string",
    about: "Which ends of the span are those of a handbook's class rather than of this species.",
  },
  basis: {
    type: "string",
    about:
      "The weakest basis of what the whole fact rests on, not of one figure of it; derived where it was computed or stands in; empty of wild and tested figures, on which it does not rest.",
    words: [...bases],
    term: ets("basisOfRecordDescription"),
  },
  disputed: {
    type: "boolean",
    about:
      "Whether a source supports another value of the whole fact, or takes its ends for a handbook's class. Lengths by different measures stand side by side and dispute nothing here.",
    required: true,
  },
  saidBy: {
    type: "string",
    about:
      "Who the whole fact rests on, as the by of statements names them; empty of wild and tested figures, and for profiles of the catalog, which ship no sources.",
  },
} as const;

/** What was made of what sources said. */
export const facts = /* @__PURE__ */ frozen({
  name: "facts",
  about:
    "The adopted value of a trait of a species, in the trait's unit; of a value of several parts, one part.",
  columns,
  key: ["factID", "part"],
  refers: { taxonID: "taxa", trait: "traits" },
} as const);

/** A fact, or one part of it, as a row; `tables.facts` says what each cell holds. */
export type FactRow = RowWith<typeof columns>;

/**
 * The adopted facts of species and their forms, a row for each entry, or for each part of its value. What is unknown has
 * no row.
 *
 * @param profiles - Profiles of the catalog, or those that `resolve` makes of records, which name their sources. Of one
 * with a form applied the rows are those of the form.
 * @throws InvalidInputError for what is no list of profiles.
 *
 * @example
 * ```ts
 * import danioRerio from "vivary/catalog/danio-rerio";
 * import { factRows } from "vivary/tables";
 *
 * const kept = factRows([danioRerio]).find(({ trait, meaning }) => trait === "water.temperature" && meaning === "kept");
 * kept && [kept.min, kept.max, kept.unit]; // => [18, 26, "degC"]
 * ```
 */
export function factRows(profiles: readonly SpeciesProfile[]): readonly FactRow[] {
  return profilesOf(profiles, ["profiles"]).flatMap((profile) => {
    const { id, form = null, forms = {} } = profile;
    const others = form === null ? Object.entries(forms) : [];
    return [...rowsOf(id, form, profile), ...others.flatMap(([other, stated]) => rowsOf(id, other, stated))];
  });
}

function rowsOf(taxonID: string, form: string | null, held: Facts): readonly FactRow[] {
  return traitPaths.flatMap((trait) => {
    const fact: Fact<unknown> | undefined = factAt(held, trait);
    if (!fact) return [];
    const whole = { taxonID, form, trait, disputed: fact.also !== undefined };
    const support = { basis: fact.basis, saidBy: listed(fact.said ?? []) };
    return entriesOf(fact.value, trait).flatMap(({ parts, ...told }, index) => {
      const factID = [taxonID, form, trait, index + 1].filter((part) => part !== null).join("/");
      const rests = informs({ as: told.meaning }) ? noSupport : support;
      return parts.map((part) => inOrder(columns, { factID, ...whole, ...rests, ...told, ...part }));
    });
  });
}

const noSupport = { basis: null, saidBy: null };

/** One entry of a fact: a value with what it is about. */
interface Entry extends Pick<FactRow, "meaning" | "sex" | "measure" | "animals" | "standsIn" | "classEnds"> {
  readonly parts: readonly ValueCells[];
}

const aboutNothing = {
  meaning: null,
  sex: null,
  measure: null,
  animals: null,
  standsIn: false,
  classEnds: null,
};

function entriesOf(value: unknown, trait: TraitPath): readonly Entry[] {
  const entry = (held: unknown, told: Partial<Entry> = {}): Entry => ({
    ...aboutNothing,
    parts: partsOf(held, trait),
    ...told,
  });
  switch (traitTable[trait].way) {
    case "one":
      return [entry(value)];
    case "all":
      return someOf(
        (value as readonly unknown[]).map((held) => entry(held)),
        trait,
      );
    case "rooms":
      return (value as readonly unknown[]).map((room) => entry(room, { animals: animalsOf(room) }));
    case "ages":
      return Object.entries(value as object).map(([meaning, age]) => entry(age, { meaning }));
    case "figures":
      return figureEntries(value as Figures<unknown>, entry);
    case "lengths":
      return (value as readonly AdultLength[]).map(({ length, total, as, sex = null, measure }) => ({
        ...aboutNothing,
        meaning: as,
        sex,
        measure,
        parts: [...partsOf(length, trait), ...partsOf({ total }, trait)],
      }));
  }
}

/** A list that is known to be empty has one entry that says so. */
const someOf = (entries: readonly Entry[], trait: TraitPath): readonly Entry[] =>
  entries.length > 0 ? entries : [{ ...aboutNothing, parts: partsOf("none", trait) }];

function figureEntries(
  { standIn, precision, ...meant }: Figures<unknown>,
  entry: (held: unknown, told: Partial<Entry>) => Entry,
): readonly Entry[] {
  return Object.entries(meant).map(([meaning, figures]) =>
    entry(figures, {
      meaning,
      ...(meaning === "kept" && {
        standsIn: standIn ?? false,
        classEnds: listed(Object.keys(precision ?? {})),
      }),
    }),
  );
}
