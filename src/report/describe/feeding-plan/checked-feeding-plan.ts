import type { FedGroup, FeedingPlan, GivenOffering } from "../../../advice";
import { finite, listOf, objectOf, oneOf } from "../../../checks";
import { ofPart, refusal } from "../../../errors";
import { ends } from "../../../ranges/inner";
import { foods, lights, zones } from "../../../species/inner";
import { checkNitrogen } from "../checked-nitrogen";
import { checkPlaces } from "../checked-places";

/** The feeding plan itself, or an InvalidInputError where it is none that can be told. */
export const checkedFeedingPlan = (feeding: FeedingPlan): FeedingPlan =>
  ofPart(["feeding"], () => {
    const { offerings, groups, unreached, restDays, nitrogen, plan } = objectOf(feeding, "");
    const count = listOf(objectOf(plan, "plan").groups, "plan.groups").length;
    for (const [index, offering] of listOf(offerings, "offerings").entries())
      ofPart(["offerings", index], () => checkOffering(offering, count));
    if (listOf(groups, "groups").length !== count)
      throw refusal("groups", `what each of ${count} groups gets`, groups, "conflict");
    for (const [index, group] of groups.entries())
      ofPart(["groups", index], () => checkGroup(group, offerings.length));
    checkPlaces(unreached, count, "unreached");
    finite(restDays, "restDays");
    if (nitrogen !== undefined) ofPart(["nitrogen"], () => checkNitrogen(nitrogen));
    return feeding;
  });

function checkOffering(offering: GivenOffering, groups: number): void {
  const { food, place, light, reaches, holdBack } = objectOf(offering, "");
  oneOf(food, foods, "food");
  oneOf(place, zones, "place");
  if (light !== undefined) oneOf(light, lights, "light");
  checkPlaces(reaches, groups, "reaches");
  checkPlaces(holdBack, groups, "holdBack");
}

function checkGroup(group: FedGroup, count: number): void {
  const { ration, offerings } = objectOf(group, "");
  checkPlaces(offerings, count, "offerings");
  if (ration !== undefined) ends(ration, "ration");
}
