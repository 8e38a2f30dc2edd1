import {
  factAt,
  type SpeciesProfile,
  type SpeciesRecord,
  type TraitPath,
  type TraitValue,
} from "../../species";
import { traitDefinitions } from "../../species/inner";
import type { PageMessages } from "../messages/page-messages";
import { capitalised, nameIn } from "../names";
import type { WriteQuantity } from "../quantities";
import type { NamedAnimal, Part } from "./parts";
import { remarks } from "./remarks";

/** What every section of a page is written with. */
export interface Telling {
  readonly profile: SpeciesProfile;
  readonly messages: PageMessages;
  readonly write: WriteQuantity;
  /** What the species or form is called. */
  readonly name: string;
  /** What several of it are called. */
  readonly who: string;
  readonly record: SpeciesRecord | undefined;
  /** The value of a trait; undefined where nobody knows it. */
  readonly known: <Path extends TraitPath>(path: Path) => TraitValue<Path> | undefined;
  /** A figure of a trait in the reader's units. */
  readonly size: (
    path: TraitPath,
    figure: number | { readonly min?: number | undefined; readonly max?: number | undefined } | undefined,
  ) => string;
  /** What the record remarks on some traits, for readers of its language. */
  readonly remarks: (paths: readonly TraitPath[]) => readonly Part[];
}

export function tellingOf(
  profile: SpeciesProfile,
  messages: PageMessages,
  write: WriteQuantity,
  record: SpeciesRecord | undefined,
): Telling {
  const name = nameIn(messages.language, profile.names, profile.taxonomy.name);
  return {
    profile,
    messages,
    write,
    name,
    who: name === profile.taxonomy.name ? name : messages.several(name),
    record,
    known: (path) => factAt(profile, path)?.value,
    size: (path, figure) => {
      const { unit } = traitDefinitions[path];
      if (figure === undefined) return "";
      return write({ ...(typeof figure === "number" ? { value: figure } : figure), ...(unit && { unit }) });
    },
    remarks: (paths) => remarks(record, profile.form, paths, messages),
  };
}

/** A species or form by name, as it stands at the beginning of a line. */
export function namedAnimal(
  { id, form, names, taxonomy }: SpeciesProfile,
  { language }: PageMessages,
): NamedAnimal {
  const name = capitalised(nameIn(language, names, taxonomy.name), language);
  return {
    id,
    ...(form !== undefined && { form }),
    name,
    scientific: name === taxonomy.name ? "" : taxonomy.name,
  };
}
