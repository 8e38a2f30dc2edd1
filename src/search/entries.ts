import { listOf, objectOf } from "../checks";
import { refusal } from "../errors";
import { spellings } from "../folded";
import { once, remembered } from "../made-once";
import { moved } from "../shelf";
import { scientific } from "./generated";
import { type Searched, searched } from "./match";
import type { NameKind, ScientificNames, SearchNames } from "./names";

/** What a name is of. */
export interface Bearer {
  readonly id: string;
  readonly form?: string;
}

/** A name to search, and what it is of. */
export interface Entry extends Searched {
  readonly text: string;
  readonly as: NameKind;
  readonly bearers: readonly Bearer[];
}

/** The names of a language as they are searched, and the first of each species and form. */
export interface Language {
  readonly entries: readonly Entry[];
  /** By the keys of {@link SearchNames.names}. */
  readonly first: ReadonlyMap<string, Entry>;
}

export const keyOf = ({ id, form }: Bearer): string => (form === undefined ? id : `${id}/${form}`);

const idOf = (name: string): string => name.toLowerCase().replaceAll(" ", "-");

/** A name in each of its spellings. */
const entriesOf = (text: string, as: NameKind, bearers: readonly Bearer[]): readonly Entry[] =>
  spellings(text).map((spelling) => ({ text, as, bearers, ...searched(spelling) }));

/** The scientific names, with those of families and orders. */
export const scientificEntries = /* @__PURE__ */ once<readonly Entry[]>(() => [
  ...scientific.flatMap(([name, , , ...old]) => {
    const bearers = [{ id: idOf(name) }];
    return [
      ...entriesOf(name, "scientific", bearers),
      ...old.flatMap((synonym) => entriesOf(synonym, "synonym", bearers)),
    ];
  }),
  ...[...membersOf()].flatMap(([taxon, bearers]) => entriesOf(taxon, "group", bearers)),
]);

/** The accepted names by id. */
export const acceptedNames = /* @__PURE__ */ once<ReadonlyMap<string, Entry>>(
  () =>
    new Map(
      scientificEntries().flatMap((name) =>
        name.as === "scientific" ? [[idOf(name.text), name] as const] : [],
      ),
    ),
);

/** The species of each family and order. */
const membersOf = /* @__PURE__ */ once<ReadonlyMap<string, readonly Bearer[]>>(() => {
  const members = new Map<string, Bearer[]>();
  for (const [name, family, order] of scientific as readonly ScientificNames[]) {
    for (const taxon of [family, order]) {
      members.set(taxon, [...(members.get(taxon) ?? []), { id: idOf(name) }]);
    }
  }
  return members;
});

/**
 * A language as it is searched, made once for names that nobody can change. Names of species that are not known are left
 * out.
 */
export const languageOf = /* @__PURE__ */ remembered(({ names, groups }: SearchNames): Language => {
  const current = new Map(moved);
  const named = textsIn(names, "names").flatMap(([key, texts]) => {
    const [given = "", form] = key.split("/");
    const id = current.get(given) ?? given;
    const bearer = form === undefined ? { id } : { id, form };
    const as = form === undefined ? "vernacular" : "form";
    return acceptedNames().has(id) ? [texts.flatMap((text) => entriesOf(text, as, [bearer]))] : [];
  });
  const grouped = textsIn(groups, "groups").flatMap(([taxon, texts]) =>
    texts.flatMap((text) => entriesOf(text, "group", membersOf().get(taxon) ?? [])),
  );
  const firsts = named.flatMap(
    ([first]) => first?.bearers.map((bearer) => [keyOf(bearer), first] as const) ?? [],
  );
  return { entries: [...named.flat(), ...grouped], first: new Map(firsts) };
});

/** The lists of a language by their keys, or an InvalidInputError where one is no list of texts. */
function textsIn(lists: SearchNames["names"], subject: string): readonly [string, readonly string[]][] {
  const entries = Object.entries(objectOf(lists, subject));
  for (const [key, texts] of entries)
    for (const text of listOf(texts, `${subject}.${key}`))
      if (typeof text !== "string") throw refusal(`${subject}.${key}`, "a list of texts", texts);
  return entries;
}
