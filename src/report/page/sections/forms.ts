import { applyForm, factAt, type SpeciesProfile, traitPaths } from "../../../species";
import { traitText } from "../../profile/trait-text";
import { paragraph, type Section, section, table } from "../parts";
import { namedAnimal, type Telling } from "../telling";

/** The forms that were bred of it, and how each differs; on the page of a form, how that one does. */
export function forms(telling: Telling): readonly Section[] {
  const { profile, messages } = telling;
  const { headings, forms: words } = messages.page;
  const bred = Object.entries(profile.forms ?? {}).filter(
    ([id]) => profile.form === undefined || profile.form === id,
  );
  const rows = bred.map(([id]) => [namedAnimal(formOf(profile, id), messages), differences(telling, id)]);
  return section(
    "forms",
    headings.forms,
    paragraph(profile.form === undefined && rows.length > 0 && words.intro(rows.length)),
    table(words.table, words.columns, rows),
  );
}

const formOf = (profile: SpeciesProfile, form: string) =>
  profile.form === form ? profile : applyForm(profile, form);

function differences({ profile, messages, write }: Telling, form: string): string {
  const stated = profile.forms?.[form];
  if (!stated) return "";
  const told = traitPaths.flatMap((path) => {
    const fact = factAt(stated, path);
    return fact ? [`${messages.traits[path]}: ${traitText(path, fact.value, messages, write)}`] : [];
  });
  return told.length > 0 ? told.join("; ") : messages.page.forms.alike;
}
