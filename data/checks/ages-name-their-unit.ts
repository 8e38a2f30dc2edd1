import type { Check } from "./check";
import { statementsEverywhere } from "./statements-everywhere";

/** Ages that are told in months, where they are not told in another unit. */
const ages = ["size.grownAt", "reproduction.breedsFrom"] as const;

/** No animal here is grown, or breeds, before it is so many months old. Common practice, no source. */
const youngest = 1;

/** Half a year, written as years are, would be half a month. */
export const agesNameTheirUnit: Check = {
  name: "An age of less than a month names its unit, or has a note",
  find: ({ records }) =>
    records.flatMap(({ path: file, record }) =>
      ages.flatMap((trait) =>
        statementsEverywhere(record, trait).flatMap(({ at, statement: { value, unit, note, setAside } }) => {
          if (value === undefined || value >= youngest || unit || note || setAside) return [];
          return [
            {
              file,
              at,
              found: `${trait}: an age of ${value} months`,
              expected: `at least ${youngest} month, or the unit of the source`,
              example: `{ "by": "handbook", "value": ${value}, "unit": "a" }`,
              mend: 'Add the unit: the year is "a", the day "d"; if it is months, add a note of one sentence.',
            },
          ];
        }),
      ),
    ),
};
