import { applyForm, type FormProfile, factAt, type SpeciesProfile, traitPaths } from "../../../species";
import { traitText } from "../../profile/trait-text";
import { type Cell, list, paragraph, type Section, section } from "../parts";
import { formRemarks } from "../remarks";
import { namedAnimal, type Telling } from "../telling";

/** The forms that were bred of it, and how each differs; on the page of a form, how that one does. */
export function forms(telling: Telling): readonly Section[] {
  const { profile, messages } = telling;
  const { headings, forms: words } = messages.page;
  const bred = Object.entries(profile.forms ?? {}).filter(
    ([id]) => profile.form === undefined || profile.form === id,
  );
  return section(
    "forms",
    headings.forms,
    paragraph(profile.form === undefined && bred.length > 0 && words.intro(bred.length)),
    list(
      bred.map(([id, stated]): Cell => {
        const { name, ...form } = namedAnimal(formOf(profile, id), messages);
        return [{ ...form, name, scientific: "" }, `: ${differences(telling, id, stated)}`];
      }),
    ),
  );
}

const formOf = (profile: SpeciesProfile, form: string) =>
  profile.form === form ? profile : applyForm(profile, form);

/** What a form has of its own, and what keepers remark on it. */
function differences({ record, messages, write }: Telling, id: string, stated: FormProfile): string {
  const { forms: words } = messages.page;
  const rehoming = factAt(stated, "care.rehoming")?.value;
  const notes = [
    ...(rehoming && messages.page.readsNotes ? [rehoming] : []),
    ...formRemarks({ record, form: id, messages }),
  ];
  const told = traitPaths.flatMap((path) => {
    const fact = factAt(stated, path);
    if (!fact || (path === "appearance.looks" && Object.values(fact.value).length === 0)) return [];
    if (path === "care.rehoming") return [];
    if (path === "appearance.longFins") return [words.fins(fact.value === true)];
    return [`${messages.traits[path]}: ${traitText(path, fact.value, messages, write)}`];
  });
  return [`${told.join("; ") || words.alike}.`, ...notes].join(" ");
}
