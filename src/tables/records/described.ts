import { listOf, objectOf } from "../../checks";
import { refusal } from "../../errors";
import type { FormProfile, SpeciesProfile } from "../../species";

/** What a record and a profile both say of a species: what it is called, and where it belongs. */
export interface Described
  extends Pick<SpeciesProfile, "id" | "form" | "taxonomy" | "names" | "identifiers"> {
  readonly forms?: Readonly<Record<string, Pick<FormProfile, "names">>> | undefined;
}

/** Records or profiles that a caller gives, or an InvalidInputError for the first that does not say what it is called. */
export function describedOf<Given extends Described>(
  given: readonly Given[],
  subject: string,
): readonly Given[] {
  return Array.from(listOf(given, subject), (one, index) => {
    const at = `${subject}[${index}]`;
    const { id, taxonomy, names, identifiers = {}, forms = {} } = objectOf(one, at);
    textOf(id, `${at}.id`);
    const { name, authority, family, order, kind, synonyms = [] } = objectOf(taxonomy, `${at}.taxonomy`);
    for (const [field, text] of Object.entries({ name, authority, family, order, kind }))
      textOf(text, `${at}.taxonomy.${field}`);
    checkTexts(synonyms, `${at}.taxonomy.synonyms`);
    checkNames(names, `${at}.names`);
    objectOf(identifiers, `${at}.identifiers`);
    for (const [form, stated] of Object.entries(objectOf(forms, `${at}.forms`)))
      checkNames(objectOf(stated, `${at}.forms.${form}`).names, `${at}.forms.${form}.names`);
    return one;
  });
}

/** The text itself, or an InvalidInputError where it is none. */
export function textOf(value: unknown, subject: string): string {
  if (typeof value === "string") return value;
  throw refusal(subject, "a text", value);
}

function checkTexts(list: readonly string[], subject: string): void {
  for (const [index, text] of listOf(list, subject).entries()) textOf(text, `${subject}[${index}]`);
}

function checkNames(names: Described["names"], subject: string): void {
  for (const [language, list] of Object.entries(objectOf(names, subject)))
    checkTexts(list ?? [], `${subject}.${language}`);
}
