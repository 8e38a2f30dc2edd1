import { refusal } from "../errors";
import { factAt, splitPath, traitPaths } from "./traits";
import type { SpeciesProfile } from "./types";

type Sections = Readonly<Record<string, Readonly<Record<string, unknown>> | undefined>>;

/**
 * The profile of a form bred in captivity: the species' traits with those replaced that the form states.
 *
 * @param profile - A species that has the form.
 * @param form - The form's id, a key of `profile.forms`.
 * @throws InvalidInputError where the species has no such form.
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
  const forms = profile.forms ?? {};
  if (!Object.hasOwn(forms, form)) {
    const known = Object.keys(forms).join(", ") || "no form";
    throw refusal("form", `a form of ${profile.id} (${known})`, form);
  }
  const { names, ...stated } = forms[form] as (typeof forms)[string];
  const sections = [...new Set(traitPaths.map((path) => splitPath(path)[0]))].filter(
    (section) => section in stated,
  );
  const changed = sections.map((section) => [
    section,
    { ...(profile as unknown as Sections)[section], ...(stated as Sections)[section] },
  ]);
  const { incomplete = [], ...known } = profile;
  const applied: SpeciesProfile = { ...known, ...Object.fromEntries(changed), form };
  const missing = incomplete.filter((path) => !factAt(applied, path));
  return missing.length > 0 ? { ...applied, incomplete: missing } : applied;
}
