import { lengthTold, type Means } from "./means";

/** All parties with their numbers; those of a pair that are alike once. */
export function partiesTold(means: Means): readonly string[] {
  const { verdict, messages, kinds } = means;
  const texts = verdict.parties.map((party, index) => {
    const { name: scientific, sex, stage, temper, count, males, females } = party;
    const { one: name, several } = kinds(index);
    return messages.party({
      name,
      several,
      scientific,
      length: lengthTold(party, means),
      ...(sex && { sex }),
      ...(stage && { stage }),
      ...(temper && { temper }),
      ...(count !== undefined && { count }),
      ...(males !== undefined && { males }),
      ...(females !== undefined && { females }),
    });
  });
  return texts.filter(
    (text, index) => verdict.parties[index]?.count !== undefined || texts.indexOf(text) === index,
  );
}
