import type { Suspect } from "../../../advice";
import { listOf, objectOf, oneOf } from "../../../checks";
import { ofPart } from "../../../errors";
import type { Plan } from "../../../plan";
import type { AdviceMessages } from "../../messages/advice-messages";
import { checkPart, checkPlace } from "../checked-verdict";

const acts: readonly Suspect["act"]["do"][] = ["meet", "check", "part", "rehouse", "change-water", "watch"];

/** The suspects themselves, or an InvalidInputError where they are none that can be told, or are of another plan. */
export const checkedSuspects = (
  suspected: readonly Suspect[],
  { groups }: Plan,
  messages: AdviceMessages,
): readonly Suspect[] => {
  for (const [index, one] of listOf(suspected, "suspected").entries())
    ofPart(["suspected", index], () => checkSuspect(one, groups.length, messages));
  return suspected;
};

function checkSuspect(suspect: Suspect, groups: number, messages: AdviceMessages): void {
  const { finding, explains, state, individual, look, act } = objectOf(suspect, "");
  const { signs, looks } = messages.advice.suspects;
  ofPart(["finding"], () => checkPart(objectOf(finding, ""), messages, groups));
  for (const [index, sign] of listOf(explains, "explains").entries())
    oneOf(sign, Object.keys(signs), `explains[${index}]`);
  oneOf(state, ["stands", "met", "individual"], "state");
  oneOf(look, Object.keys(looks), "look");
  oneOf(objectOf(act, "act").do, acts, "act.do");
  if ("condition" in act)
    ofPart(["act", "condition"], () => checkPart(objectOf(act.condition, ""), messages, groups));
  if (individual === undefined) return;
  const { group, temper } = objectOf(individual, "individual");
  checkPlace(group, groups, "individual.group");
  oneOf(temper, ["shyer", "bolder", "bully"], "individual.temper");
}
