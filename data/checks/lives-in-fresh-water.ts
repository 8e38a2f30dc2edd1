import type { Check } from "./check";

export const livesInFreshWater: Check = {
  name: "A species lives in fresh or brackish water",
  find: ({ records }) =>
    records
      .filter(({ profile }) => profile.origin?.waters?.value.every((water) => water === "marine"))
      .map(({ path: file }) => ({
        file,
        at: ["origin", "waters"],
        found: "an animal of the sea alone",
        expected: "fresh or brackish among its waters",
        mend: 'Correct origin.waters; animals of the sea are out of scope: see "Which animals" in DEVELOPERS.md.',
      })),
};
