import type { UnitSystem } from "vivary/report";
import { remembered } from "./plan/memory";
import { isSystem } from "./plan/quantities";
import { isSpoken, type LanguageCode } from "./texts/languages";

/** The language that was chosen last, else the first of the browser's that the app speaks. */
export function firstLanguage(): LanguageCode {
  const wished = [remembered("language"), ...navigator.languages.map((tag) => tag.slice(0, 2))];
  return wished.find(isSpoken) ?? "en";
}

/** The units that were chosen last, else those of the browser's country. */
export function firstUnits(): UnitSystem {
  const kept = remembered("units");
  if (isSystem(kept)) return kept;
  return navigator.language === "en-US" ? "us" : "metric";
}
