import type { Finding, Sign, Verdict } from "../../compatibility";
import type { Messages } from "../messages/messages";
import type { Teller } from "./teller";

/** Every sign to look for once, with those who would show it; of the same animals together. */
export function signsTold(
  findings: readonly Finding[],
  parties: Verdict["parties"],
  teller: Teller,
  messages: Messages,
): string {
  const shown = new Map<Sign, Finding[]>();
  for (const finding of findings) {
    const { watchFor } = finding;
    if (watchFor && !isOfOneAlone(finding, parties))
      shown.set(watchFor, [...(shown.get(watchFor) ?? []), finding]);
  }
  const inWhom = new Map<string, string[]>();
  for (const [sign, ofSign] of shown) {
    const whom = bearersTold(ofSign.flatMap(sufferers), parties, teller);
    inWhom.set(whom, [...(inWhom.get(whom) ?? []), messages.signs[sign]]);
  }
  if (inWhom.size <= mostBearers)
    return teller.sentence([...inWhom].map(([whom, those]) => messages.lookFor(those, whom)));
  return teller.sentence([messages.lookFor([...inWhom.values()].flat(), "")]);
}

/** How often a report says in whom to look for signs; of more it tells the signs alone. */
const mostBearers = 3;

/** Some parties by name; empty where they are of all the species there are. */
function bearersTold(
  indices: readonly (number | undefined)[],
  parties: Verdict["parties"],
  { named }: Teller,
): string {
  const shown = new Set(indices.map((index) => (index === undefined ? undefined : parties[index]?.id)));
  const all = new Set(parties.map(({ id }) => id));
  return shown.size < all.size ? named(indices).who : "";
}

/** Whether a finding tells of what the animals of a group do to each other where there is but one yet. */
const isOfOneAlone = ({ from, to }: Finding, parties: Verdict["parties"]) =>
  from !== undefined && from === to && parties[from]?.count === 1;

/** Who shows the sign of a finding: whom it falls on, of a contest both, and of shyness whoever is shy. */
function sufferers({ rule, from, to }: Finding): readonly (number | undefined)[] {
  if (rule === "shyness") return [from];
  return rule === "territory-contest" ? [from, to] : [to ?? from];
}
