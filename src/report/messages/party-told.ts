import type { Words } from "../../compatibility";
import type { ToldParty } from "./messages";

/** How a language tells what animals are like. */
interface PartyWords {
  /** So many of one sex, among so many animals. */
  readonly numbered: (animals: number, count: number | undefined, sex: Words["sex"]) => string;
  /** So many whose sex is not said. */
  readonly unsexed: (animals: number) => string;
  readonly and: string;
  readonly sexes: Readonly<Record<Words["sex"], string>>;
  readonly stages: Readonly<Record<Words["stage"], string>>;
  /** How long they are now, or were when they were bought. */
  readonly long: (length: string, asBought: boolean) => string;
  readonly tempers: (one: boolean) => Readonly<Record<NonNullable<ToldParty["temper"]>, string>>;
}

/** A party with its numbers: `6 tiger barbs (Puntigrus tetrazona; 2 males and 4 females, 3 cm long)`. */
export const partyTold =
  ({ numbered, unsexed, and, sexes, stages, long, tempers }: PartyWords) =>
  (party: ToldParty): string => {
    const { name, several, scientific, count, males = 0, females = 0, sex, stage, temper, length } = party;
    const known = males + females;
    const rest = (count ?? 0) - known;
    const counted = [
      males > 0 && numbered(males, count, "male"),
      females > 0 && numbered(females, count, "female"),
      known > 0 && rest > 0 && unsexed(rest),
    ];
    const detail = [
      counted.filter(Boolean).join(and) || (sex && sexes[sex]),
      stage && stages[stage],
      length && long(length, stage === "juvenile"),
      temper && tempers(count === 1)[temper],
    ];
    const further = [name === scientific ? "" : scientific, detail.filter(Boolean).join(", ")];
    const within = further.filter(Boolean).join("; ");
    return [count, count === 1 ? name : several, within && `(${within})`].filter(Boolean).join(" ");
  };
