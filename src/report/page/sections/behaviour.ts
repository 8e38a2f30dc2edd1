import { paragraph, type Section, section } from "../parts";
import type { Telling } from "../telling";
import { toldActs } from "./acts";

/** With how many of its kind it lives, and what it does to others. */
export function behaviour({ known, messages, remarks, who, write }: Telling): readonly Section[] {
  const { headings, behaviour: words } = messages.page;
  const living = known("social.living");
  const group = known("social.group");
  const most = known("social.largestGroup");
  const females = known("social.femalesPerMale");
  const acts = known("temperament.acts");
  const isCompany = living !== "alone" && living !== "pair";
  return section(
    "behaviour",
    headings.behaviour,
    paragraph(
      living && words.living(who, living),
      isCompany && group && group.least > 1 && words.least(group.least, write(group.avoid)),
      isCompany && most !== undefined && words.largest(most),
      females !== undefined && females > 0 && words.females(females),
    ),
    paragraph(
      known("temperament.shy") === true && words.shy,
      known("social.settledBy") === true && words.settledBy,
      known("social.settles") === true && words.settles,
      ...(acts ? (acts.length > 0 ? toldActs(acts).map(words.act) : [words.harmless]) : []),
      known("temperament.varies") === true && words.varies,
    ),
    remarks([
      "social.living",
      "social.group",
      "social.largestGroup",
      "social.femalesPerMale",
      "temperament.shy",
      "social.settledBy",
      "social.settles",
      "temperament.acts",
      "temperament.varies",
    ]),
  );
}
