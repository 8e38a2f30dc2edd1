import type { SpeciesProfile } from "../../species";
import type { PageMessages } from "../messages/page-messages";
import { capitalised, nameIn } from "../names";
import { type Page, type Part, paragraph } from "./parts";
import { behaviour } from "./sections/behaviour";
import { breeding } from "./sections/breeding";
import { cautions } from "./sections/cautions";
import { certainty } from "./sections/certainty";
import { company } from "./sections/company";
import { feeding } from "./sections/feeding";
import { forms } from "./sections/forms";
import { glance } from "./sections/glance";
import { origin } from "./sections/origin";
import { references } from "./sections/references";
import { size } from "./sections/size";
import { tank } from "./sections/tank";
import { watch } from "./sections/watch";
import { water } from "./sections/water";
import { type PageMatter, tellingOf } from "./telling";

/** The page of a species or form, its parts in the order in which a keeper reads them. */
export function pageOf(profile: SpeciesProfile, matter: PageMatter): Page {
  const { messages } = matter;
  const telling = tellingOf(profile, matter);
  const { name, authority, family, order } = profile.taxonomy;
  return {
    title: capitalised(telling.who.name, messages.language),
    scientific: name,
    belongs: [authority, family, order].filter(Boolean).join(", "),
    language: messages.language,
    lead: namesOf(profile, messages),
    sections: [
      ...glance(telling),
      ...origin(telling),
      ...size(telling),
      ...water(telling),
      ...tank(telling),
      ...behaviour(telling),
      ...company(telling),
      ...feeding(telling),
      ...breeding(telling),
      ...forms(telling),
      ...watch(telling),
      ...certainty(telling),
      ...cautions(telling),
      ...references(telling),
    ],
  };
}

/** What else it is called, and of which species a form was bred. */
function namesOf(
  { names, taxonomy, form }: SpeciesProfile,
  { page, language }: PageMessages,
): readonly Part[] {
  const spoken = nameIn(language, names, taxonomy.name);
  const [general = language] = language.split("-");
  const others = (names[language] ?? names[general] ?? []).filter((name) => name !== spoken);
  const { synonyms = [] } = taxonomy;
  return paragraph(
    form !== undefined && page.formOf(taxonomy.name),
    others.length > 0 && page.alsoCalled(others),
    form === undefined && synonyms.length > 0 && page.formerly(synonyms),
  );
}
