import { exampleAt } from "../reading/schema-at";
import type { Check, Slip } from "./check";

export const livesInFreshWater: Check = {
  name: "A species lives in fresh or brackish water",
  find: ({ records }) =>
    records.flatMap(({ path: file, profile }): readonly Slip[] => {
      const place = { file, at };
      const waters = profile.origin?.waters?.value;
      if (waters === undefined) return [{ ...place, ...untold }];
      return waters.every((water) => water === "marine") ? [{ ...place, ...strayed }] : [];
    }),
};

const at = ["origin", "waters"];

const untold = {
  found: "origin.waters is unknown",
  expected: "the kinds of water it lives in, a line each",
  example: exampleAt("species", [...at, 0]),
  mend: "State it: without it nobody knows whether it bears salt, and every verdict stays open.",
};

const strayed = {
  found: "an animal of the sea alone",
  expected: "fresh or brackish among its waters",
  mend: 'Correct origin.waters; animals of the sea are out of scope: see "Which animals" in DEVELOPERS.md.',
};
