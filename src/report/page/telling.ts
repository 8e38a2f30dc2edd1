import type { Group } from "../../plan";
import { headcount } from "../../plan/inner";
import type { PartialRange } from "../../ranges";
import {
  factAt,
  type SpeciesProfile,
  type SpeciesRecord,
  type TraitPath,
  type TraitValue,
} from "../../species";
import { traitDefinitions } from "../../species/inner";
import { type Figure, type WriteQuantity, within } from "../figure";
import type { PageMessages, ToldName } from "../messages/page-messages";
import { capitalised, nameIn } from "../names";
import type { PageSource } from "./page-source";
import type { NamedAnimal, Part } from "./parts";
import { keepersRemarks, sourcesRemarks } from "./remarks";

/** What a page is made from. */
export interface PageMatter {
  readonly candidates: readonly SpeciesProfile[];
  readonly sources: readonly PageSource[];
  readonly record: SpeciesRecord | undefined;
  readonly messages: PageMessages;
  readonly write: WriteQuantity;
}

/** What every section of a page is written with. */
export interface Telling extends PageMatter {
  readonly profile: SpeciesProfile;
  readonly who: ToldName;
  /** The value of a trait; undefined where nobody knows it. */
  readonly known: <Path extends TraitPath>(path: Path) => TraitValue<Path> | undefined;
  /** A figure of a trait in the reader's units. */
  readonly size: (path: TraitPath, figure: number | PartialRange | undefined) => string;
  /** A span of a trait to keep it in, past whose ends no unit leads. */
  readonly span: (path: TraitPath, span: PartialRange | undefined) => string;
  /** An age in months, told in years where that is easier to read. */
  readonly age: (months: number) => string;
  /** What is told of a trait, with what keepers remark on it in the reader's language. */
  readonly noted: (path: TraitPath, sentence: string | false | undefined) => string;
  /** What sources remark on some traits. */
  readonly remarks: (paths: readonly TraitPath[]) => readonly Part[];
}

export function tellingOf(profile: SpeciesProfile, matter: PageMatter): Telling {
  const { messages, write, record, sources } = matter;
  const noted = { record, form: profile.form, messages };
  return {
    ...matter,
    profile,
    who: toldName(profile, messages),
    known: (path) => factAt(profile, path)?.value,
    size: (path, figure) =>
      figure === undefined
        ? ""
        : write({ ...(typeof figure === "number" ? { value: figure } : figure), ...unitOf(path) }),
    span: (path, span) => (span === undefined ? "" : write(within({ ...span, ...unitOf(path) }))),
    age: (months) => write(months < 24 ? { value: months, unit: "mo" } : { value: months / 12, unit: "a" }),
    noted: (path, sentence) => [sentence, ...keepersRemarks(noted, path)].filter(Boolean).join(" "),
    remarks: (paths) => sourcesRemarks(noted, paths, sources),
  };
}

/** The unit of a trait, if it has one. */
export function unitOf(path: TraitPath): Pick<Figure, "unit"> {
  const { unit } = traitDefinitions[path];
  return unit ? { unit } : {};
}

/** What a species or form is called in a language. */
function toldName({ names, taxonomy }: SpeciesProfile, { language, several }: PageMessages): ToldName {
  const name = nameIn(language, names, taxonomy.name);
  const scientific = name === taxonomy.name;
  return { name, several: scientific ? name : several(name), scientific };
}

/** A species or form by name, as it stands at the beginning of a line, or by what is told of it there. */
export function namedAnimal(profile: SpeciesProfile, messages: PageMessages, told?: string): NamedAnimal {
  const { id, form, taxonomy } = profile;
  const { name, scientific } = toldName(profile, messages);
  return {
    id,
    ...(form !== undefined && { form }),
    name: capitalised(told ?? name, messages.language),
    scientific: scientific ? "" : taxonomy.name,
  };
}

/** So many of a species, in words. */
export const groupTold = (group: Group, messages: PageMessages): string =>
  messages.page.group({
    ...toldName(group.species, messages),
    count: headcount(group),
    males: group.males ?? 0,
    females: group.females ?? 0,
  });
