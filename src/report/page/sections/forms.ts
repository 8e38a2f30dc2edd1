import {
  applyForm,
  type FormProfile,
  factAt,
  type SpeciesProfile,
  type TraitPath,
  traitPaths,
} from "../../../species";
import { noLess } from "../../figure";
import { traitText } from "../../profile/trait-text";
import { type Cell, list, paragraph, type Section, section } from "../parts";
import { formRemarks } from "../remarks";
import { namedAnimal, type Telling, tellingOf } from "../telling";
import { toldActs } from "./acts";
import { lengthsTold, lifespanTold } from "./size";
import { leastTank } from "./tank";

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

/** Told in sentences of their own, or not where few care: a form has a page of its own, which tells all. */
const notInBrief: ReadonlySet<TraitPath> = new Set([
  "care.rehoming",
  "predation.eats",
  "size.adultLength",
  "size.bodyDepthShare",
  "size.lifespan",
  "space.baseLength",
  "space.footprint",
  "space.furtherFootprint",
  "space.height",
  "space.jumps",
  "temperament.acts",
]);

/** What a form has of its own, and what keepers remark on it. */
function differences(telling: Telling, id: string, stated: FormProfile): string {
  const { record, messages, write } = telling;
  const rehoming = factAt(stated, "care.rehoming");
  const brief = traitPaths.flatMap((path) => {
    const told = notInBrief.has(path) ? "" : inBrief(telling, path, stated);
    return told ? [told] : [];
  });
  const sentences = [
    ...inSentences(telling, id, stated),
    rehoming && traitText("care.rehoming", rehoming.value, messages, write),
    ...formRemarks({ record, form: id, messages }),
  ].filter(Boolean);
  if (brief.length === 0 && sentences.length === 0) return `${messages.page.forms.alike}.`;
  return [...(brief.length > 0 ? [`${brief.join("; ")}.`] : []), ...sentences].join(" ");
}

/** A trait of a form in a few words. */
function inBrief({ messages, write, span }: Telling, path: TraitPath, stated: FormProfile): string {
  const fact = factAt(stated, path);
  if (!fact || (path === "appearance.looks" && Object.values(fact.value).length === 0)) return "";
  if (path === "appearance.longFins") return messages.page.forms.fins(fact.value === true);
  const told =
    path === "water.temperature"
      ? span(path, factAt(stated, path)?.value.kept)
      : traitText(path, fact.value, messages, write).replaceAll("; ", ", ");
  return `${messages.traits[path]}: ${told}`;
}

/** Length, age, tank and temper of a form, where they are other than those of its species. */
function inSentences(telling: Telling, id: string, stated: FormProfile): readonly string[] {
  const { profile, messages } = telling;
  const ofForm = tellingOf(formOf(profile, id), telling);
  const { tank: words } = messages.page;
  const sentences: readonly (readonly [TraitPath, (telling: Telling) => string])[] = [
    ["size.adultLength", lengthsTold],
    ["size.lifespan", lifespanTold],
    ["space.baseLength", leastTank],
    [
      "space.height",
      ({ known, write }) => {
        const height = known("space.height");
        return height === undefined ? "" : words.height(write(noLess({ value: height, unit: "cm" })));
      },
    ],
    [
      "space.jumps",
      ({ known }) => {
        const jumps = known("space.jumps");
        return jumps ? words.jumps[jumps] : "";
      },
    ],
    ["temperament.acts", temper],
  ];
  return sentences.flatMap(([path, told]) => {
    if (!factAt(stated, path)) return [];
    const text = told(ofForm);
    return profile.form === undefined && text === told(telling) ? [] : [text];
  });
}

function temper({ known, messages }: Telling): string {
  const acts = toldActs(known("temperament.acts") ?? []);
  const { act, harmless } = messages.page.behaviour;
  return acts.length > 0 ? acts.map(act).join(" ") : harmless;
}
