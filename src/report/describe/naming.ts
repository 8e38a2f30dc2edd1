import type { Verdict, VerdictParty } from "../../compatibility";
import type { Messages, Place } from "../messages/messages";
import { nameIn } from "../names";

/** Some parties by name, with the number of their verb. */
export interface Named {
  readonly who: string;
  /** The same as the object of a verb. */
  readonly whom: string;
  readonly many: boolean;
}

/** What the parties of a verdict are called in a language. */
export interface Naming {
  readonly listed: (texts: readonly string[]) => string;
  /** What one and what several of a party are called, without an article. */
  readonly kinds: (of: number | undefined) => { readonly one: string; readonly several: string };
  /** Some parties by name. */
  readonly named: (indices: readonly (number | undefined)[]) => Named;
}

export function namingOf({ parties }: Pick<Verdict, "parties">, messages: Messages): Naming {
  const { language } = messages;
  const lists = new Intl.ListFormat(language, { type: "conjunction" });
  const listed = (texts: readonly string[]) => lists.format(texts.filter(Boolean));
  const bare = ({ names, name }: VerdictParty) => nameIn(language, names, name);
  /** A scientific name has no plural. */
  const several = (party: VerdictParty) =>
    bare(party) === party.name ? party.name : messages.several(bare(party));
  const isOne = ({ id, count }: VerdictParty) =>
    count === 1 && parties.filter((party) => party.id === id).length === 1;
  const partyAt = (index: number | undefined) => (index === undefined ? undefined : parties[index]);
  return {
    listed,
    kinds: (of) => {
      const party = partyAt(of);
      return { one: party ? bare(party) : "", several: party ? several(party) : "" };
    },
    named: (indices) => {
      const those = [...new Set(indices)].flatMap((index) => partyAt(index) ?? []);
      const textsAs = (place: Place) => [
        ...new Set(those.map((party) => (isOne(party) ? messages.this(bare(party), place) : several(party)))),
      ];
      const texts = textsAs("subject");
      const [first] = those;
      return {
        who: listed(texts),
        whom: listed(textsAs("object")),
        many: texts.length > 1 || (first !== undefined && !isOne(first)),
      };
    },
  };
}
