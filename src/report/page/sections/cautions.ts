import { list, paragraph, type Section, section } from "../parts";
import type { Telling } from "../telling";

/** What can hurt people and animals, what the law says, and what never to do. */
export function cautions({ profile, known, messages, noted, who, remarks }: Telling): readonly Section[] {
  const { headings, cautions: words } = messages.page;
  const { family, kind } = profile.taxonomy;
  const hazards = known("care.hazards") ?? [];
  const told = hazards.filter((hazard) => hazard !== "spines" || !hazards.includes("venom"));
  const laws = (profile.listings ?? []).map(({ jurisdiction, effect, instrument, date, basis }) =>
    words.law(
      messages.page.jurisdiction(jurisdiction),
      messages.page.effect(effect),
      instrument,
      date,
      basis === "memory",
    ),
  );
  return section(
    "cautions",
    headings.cautions,
    list([
      ...told.map((hazard) => messages.hazards(hazard, [{ ...messages.page.subject(who), family }])),
      ...(known("care.sensitive") ?? []).map((to) => words.sensitive(to, kind)),
      words.release,
      words.vet,
    ]),
    list(laws, words.lawDecides),
    paragraph(laws.length > 0 && words.textDecides),
    paragraph(noted("care.sensitive", ""), noted("care.hazards", "")),
    remarks(["care.sensitive", "care.hazards"]),
  );
}
