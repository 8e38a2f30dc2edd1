import type { SpeciesProfile } from "../../species";
import type { Messages } from "../messages/messages";
import { capitalised, nameIn } from "../names";

/** What the animals are called within a sentence, at the head of a row, and in full. */
export interface PictureName {
  readonly spoken: string;
  readonly head: string;
  readonly full: string;
}

/** What a trait is called at the head of a picture; one like pH keeps its small letter. */
export const headOf = (trait: string, language: string): string =>
  /^\p{Ll}\p{Lu}/u.test(trait) ? trait : capitalised(trait, language);

export function pictureName({ names, taxonomy }: SpeciesProfile, { language }: Messages): PictureName {
  const spoken = nameIn(language, names, taxonomy.name);
  const head = capitalised(spoken, language);
  return { spoken, head, full: spoken === taxonomy.name ? head : `${head} (${taxonomy.name})` };
}
