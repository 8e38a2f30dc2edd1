import type { FeedingPlan } from "../../../advice";
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
    for (const [index, { food, place, light, reaches, holdBack }] of listOf(
      offerings,
      "offerings",
    ).entries()) {
      oneOf(food, foods, `offerings[${index}].food`);
      oneOf(place, zones, `offerings[${index}].place`);
      if (light !== undefined) oneOf(light, lights, `offerings[${index}].light`);
      checkPlaces(reaches, count, `offerings[${index}].reaches`);
      checkPlaces(holdBack, count, `offerings[${index}].holdBack`);
    }
    if (listOf(groups, "groups").length !== count)
      throw refusal("groups", `what each of ${count} groups gets`, groups, "conflict");
    for (const [index, { ration, offerings: got }] of groups.entries()) {
      checkPlaces(got, offerings.length, `groups[${index}].offerings`);
      if (ration !== undefined) ends(ration, `groups[${index}].ration`);
    }
    checkPlaces(unreached, count, "unreached");
    finite(restDays, "restDays");
    if (nitrogen !== undefined) ofPart(["nitrogen"], () => checkNitrogen(nitrogen));
    return feeding;
  });
