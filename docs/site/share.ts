// Writes the pages of some of the profiles, in a process of its own.
import { allSpecies } from "vivary/catalog";
import { allLanguages } from "./languages";
import type { SiteParts } from "./layout";
import { profilePage } from "./pages/profile-page";
import { allProfiles } from "./profiles";
import { writePages } from "./write-pages";

/** What such a process is told, as JSON. */
export interface Share {
  readonly parts: SiteParts;
  /** It takes every `of`-th profile, beginning with this. */
  readonly first: number;
  readonly of: number;
  /** Whether company is looked for, which takes most of the time. */
  readonly company: boolean;
}

const { parts, first, of, company }: Share = JSON.parse(process.argv[2] ?? "");
const candidates = company ? allSpecies : [];
for (const [index, profile] of allProfiles.entries()) {
  if (index % of === first) {
    await writePages(
      allLanguages.map((language) => profilePage(language, profile, candidates)),
      parts,
    );
  }
}
