import { paragraph, type Section, section } from "../parts";
import { isOfKeepers, notedStatements, notesOf } from "../remarks";
import type { Telling } from "../telling";
import { isOf, toldActs } from "./acts";

/** With how many of its kind it lives, and what it does to others. */
export function behaviour(telling: Telling): readonly Section[] {
  const { known, messages, noted, remarks, who, write } = telling;
  const { headings, behaviour: words } = messages.page;
  const living = known("social.living");
  const group = known("social.group");
  const most = known("social.largestGroup");
  const females = known("social.femalesPerMale");
  const isCompany = living !== "alone" && living !== "pair";
  return section(
    "behaviour",
    headings.behaviour,
    paragraph(
      noted("social.living", living && words.living(who, living)),
      noted(
        "social.group",
        isCompany &&
          group &&
          (group.least > 1 || group.avoid) &&
          words.least(group.least, write(group.avoid)),
      ),
      noted("social.largestGroup", isCompany && most !== undefined && words.largest(most)),
      noted("social.femalesPerMale", females !== undefined && females > 0 && words.females(females)),
    ),
    paragraph(
      noted("temperament.shy", known("temperament.shy") === true && words.shy),
      noted("social.settledBy", known("social.settledBy") === true && words.settledBy),
      noted("social.settles", known("social.settles") === true && words.settles),
      ...acts(telling),
      noted("temperament.varies", known("temperament.varies") === true && words.varies),
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

/** What it does to others, each deed with what keepers remark on it. */
function acts({ profile, known, record, messages }: Telling): readonly string[] {
  const { behaviour: words } = messages.page;
  const all = known("temperament.acts");
  if (!all) return [];
  const notes = notedStatements({ record, form: profile.form, messages }, "temperament.acts").filter(
    isOfKeepers,
  );
  const told = toldActs(all).map((act) => ({ act, notes: notes.filter(({ value }) => isOf(value, act)) }));
  const beside = notes.filter((note) => !told.some((one) => one.notes.includes(note)));
  return [
    ...(all.length > 0 ? [] : [words.harmless]),
    ...told.flatMap(({ act, notes: own }) => [words.act(act), ...notesOf(own)]),
    ...notesOf(beside),
  ];
}
