import type { Remedies, Remedy } from "../../advice";
import { listOf, objectOf, oneOf } from "../../checks";
import type { Verdict } from "../../compatibility";
import { ofPart, refusal } from "../../errors";
import { isObject } from "../../is-object";
import type { Messages } from "../messages/messages";
import { checkPart, checkPlace, outcomes } from "./checked-verdict";

/**
 * The remedies themselves, or an InvalidInputError where they are none, or are of another plan than the one that the verdict
 * is about: its parties are not the groups that stay and those that leave.
 */
export const checkedRemedies = (remedies: Remedies, verdict: Verdict, messages: Messages): Remedies =>
  ofPart(["options", "remedies"], () => {
    const { remedies: all, obstacle } = objectOf(remedies, "");
    for (const [index, remedy] of listOf(all, "remedies").entries())
      ofPart(["remedies", index], () => checkRemedy(remedy, verdict, messages));
    if (obstacle !== undefined)
      ofPart(["obstacle"], () => checkPart(obstacle, messages, verdict.parties.length));
    return remedies;
  });

function checkRemedy(remedy: Remedy, { parties }: Verdict, messages: Messages): void {
  const { moves, plan, outcome } = objectOf(remedy, "");
  oneOf(outcome, outcomes, "outcome");
  const leaving = new Set<number>();
  for (const [index, move] of listOf(moves, "moves").entries())
    ofPart(["moves", index], () => {
      const { of, change, meets } = objectOf(move, "");
      checkPlace(of, parties.length, "of");
      for (const [place, group] of Object.entries(objectOf(change, "change").groups ?? {}))
        if (group === null) leaving.add(Number(place));
      for (const [place, condition] of listOf(meets, "meets").entries())
        ofPart(["meets", place], () => checkPart(condition, messages, parties.length));
    });
  const groups = listOf(objectOf(plan, "plan").groups, "plan.groups");
  const staying = parties.filter((_, index) => !leaving.has(index));
  if (staying.some(({ id }, index) => !isObject(groups[index]) || groups[index].species.id !== id))
    throw refusal("plan", "the plan that the verdict is about, with what the moves change", plan, "conflict");
}
