import { type SpeciesRecord, statementsOf, type TraitPath } from "../../species";
import type { PageMessages } from "../messages/page-messages";
import { capitalised } from "../names";
import { type Part, type Term, terms } from "./parts";

/** The notes of a record on some traits of the species, or of its form, each with the name of its trait. */
export function remarks(
  record: SpeciesRecord | undefined,
  form: string | undefined,
  paths: readonly TraitPath[],
  { page, traits, language }: PageMessages,
): readonly Part[] {
  if (!record || !page.readsNotes) return [];
  const bred = form === undefined ? undefined : record.forms?.[form];
  const rows = paths.flatMap((path): readonly Term[] => {
    const stated = [...(bred ? statementsOf(bred, path) : []), ...statementsOf(record, path)];
    const notes = [...new Set(stated.flatMap(({ note, setAside }) => (setAside ? [] : (note ?? []))))];
    return notes.length > 0 ? [[capitalised(traits[path], language), notes.join(" ")]] : [];
  });
  return terms(rows, page.notes);
}
