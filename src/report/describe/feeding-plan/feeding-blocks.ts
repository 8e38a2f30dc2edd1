import type { FeedingPlan, GivenOffering } from "../../../advice";
import type { Block } from "../../layout";
import type { Adviser } from "../advice-written";
import { nitrogenTold } from "../nitrogen-told";

/** A feeding plan in the parts of a report: what to give whom, how much, what it does to the water, and the caution. */
export function feedingBlocks(feeding: FeedingPlan, adviser: Adviser): readonly Block[] {
  const { words, named } = adviser;
  const { titles, lead, rest, unreached, nitrogen, closing } = words.feeding;
  const { offerings, restDays, groups } = feeding;
  const isWhole = groups.every(({ ration }) => ration !== undefined);
  return [
    { lead: offerings.length > 0 ? [lead(offerings.length), rest[restDays > 0 ? "day" : "none"]] : [] },
    {
      title: titles.offerings,
      items: [
        ...offerings.map((offering) => offeringTold(offering, adviser)),
        ...(feeding.unreached.length > 0 ? [unreached(named(feeding.unreached))] : []),
      ],
    },
    { title: titles.amounts, items: amountsTold(feeding, adviser) },
    {
      title: titles.water,
      items: feeding.nitrogen ? [nitrogen(nitrogenTold(feeding.nitrogen, isWhole, adviser))] : [],
    },
    { lead: [closing] },
  ];
}

const offeringTold = (
  { food, place, light = "day", apart = false, reaches, holdBack }: GivenOffering,
  { words, named }: Adviser,
): string =>
  words.feeding.offering({
    food,
    place,
    light,
    apart,
    for: named(reaches),
    ...(holdBack.length > 0 && { from: named(holdBack) }),
  });

/** Foods of which it takes more by weight than of dry ones. */
const wet: readonly GivenOffering["food"][] = ["frozen", "live"];

/** What each group gets a day, and what is to be known of these figures. */
function amountsTold({ offerings, groups }: FeedingPlan, { words, parties, weight }: Adviser) {
  const { amount, noAmount, cold, together, heavier } = words.feeding;
  const known = groups.filter(({ ration }) => ration !== undefined);
  const isWet = known.some(({ offerings: got }) =>
    got.some((index) => wet.includes(offerings[index]?.food ?? "dry")),
  );
  return [
    ...groups.map(({ ration, growing = false }, index) => {
      const animals = parties[index] ?? "";
      return ration ? amount(animals, weight(ration, "g")) : noAmount(animals, growing);
    }),
    ...(known.some(({ ration }) => ration?.min === 0) ? [cold] : []),
    ...(known.some(({ offerings: got }) => got.length > 1) ? [together] : []),
    ...(isWet ? [heavier] : []),
  ];
}
