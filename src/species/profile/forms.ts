import { listOf, objectOf } from "../../checks";
import { refusal } from "../../errors";
import { splitPath, traitPaths } from "../traits/path";
import { factAt } from "./fact-at";
import type { FormProfile, SpeciesProfile } from "./profile";

/**
 * The profile of a form bred in captivity: the species' traits with those replaced that the form states, its
 * names where it has some, and the laws that name it alone. A profile that already is of the form is returned as it is.
 *
 * @param profile - A species that has the form, without a form applied or with this one.
 * @param form - The form's id, a key of `profile.forms`.
 * @throws InvalidInputError where the species has no such form, or another one is applied.
 *
 * @example
 * ```ts
 * import puntigrusTetrazona from "vivary/catalog/puntigrus-tetrazona";
 * import { applyForm } from "vivary/species";
 *
 * applyForm(puntigrusTetrazona, "long-fin").appearance?.longFins?.value; // => true
 * ```
 */
export function applyForm(profile: SpeciesProfile, form: string): SpeciesProfile {
  const { names, listings, ...stated } = formOf(profile, form);
  if (profile.form === form) return profile;
  if (profile.form !== undefined) {
    throw refusal(
      "form",
      `the species itself, or its form ${profile.form} which is applied`,
      form,
      "conflict",
    );
  }
  const sections = new Set(traitPaths.map((path) => splitPath(path)[0]));
  const changed = [...sections]
    .filter((section) => stated[section])
    .map((section) => [section, { ...profile[section], ...stated[section] }]);
  const { incomplete = [], ...known } = profile;
  const applied: SpeciesProfile = {
    ...known,
    names: { ...profile.names, ...objectOf(names, "names") },
    ...Object.fromEntries(changed),
    ...(listings && {
      listings: [
        ...listOf(profile.listings ?? [], "profile.listings"),
        ...listOf(listings, `profile.forms.${form}.listings`),
      ],
    }),
    form,
  };
  const missing = incomplete.filter((path) => !factAt(applied, path));
  return missing.length > 0 ? { ...applied, incomplete: missing } : applied;
}

function formOf(profile: SpeciesProfile, form: string): FormProfile {
  const { id, forms = {} } = objectOf(profile, "profile");
  const found = Object.hasOwn(objectOf(forms, "profile.forms"), form) ? forms[form] : undefined;
  if (found) return objectOf(found, `profile.forms.${form}`);
  const known = Object.keys(forms).join(", ") || "no form";
  throw refusal("form", `a form of ${id} (${known})`, form, "unknown-form");
}
