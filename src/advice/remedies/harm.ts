import type { RuleId, Verdict } from "../../compatibility";
import { gravityOfFinding } from "../gravity";

/**
 * Whether a group that stays is worse off than before: whether what is told of it is graver than what was told, or it is
 * parted from its mates and young of it are wanted, though it may bear some yet.
 *
 * @param places - For each group of the later plan its place in the earlier one.
 */
export function harms(before: Verdict, after: Verdict, places: readonly number[]): boolean {
  const was = gravestOfEach(before);
  const is = gravestOfEach(after);
  return places.some(
    (place, index) =>
      place < before.parties.length &&
      (is(index) > was(place) ||
        (isMateless(after, index) && !isMateless(before, place)) ||
        (after.parties[index]?.raises && hasBothSexes(before, place) && !hasBothSexes(after, index))),
  );
}

/** Whether young of a group are wanted that it cannot have. */
const isMateless = ({ findings }: Verdict, group: number): boolean =>
  findings.some(({ rule, from }) => rule === ("both-sexes" satisfies RuleId) && from === group);

/** Whether there are males and females of the species of a group: females that bear for months after were with a male. */
function hasBothSexes({ parties }: Verdict, group: number): boolean {
  const kin = parties.filter(({ id }) => id === parties[group]?.id);
  const isThere = (sex: "males" | "females") => kin.some((party) => (party[sex] ?? 0) > 0);
  return isThere("males") && isThere("females");
}

/** How grave the gravest of all that is told of a group is. */
function gravestOfEach({ findings }: Verdict): (group: number) => number {
  return (group) =>
    findings.reduce(
      (gravest, finding) =>
        finding.from === group || finding.to === group
          ? Math.max(gravest, gravityOfFinding(finding))
          : gravest,
      0,
    );
}
