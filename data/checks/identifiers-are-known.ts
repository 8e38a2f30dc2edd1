import { fieldOf, fieldsOf } from "../reading/fields";
import { nearest } from "../reading/spelling";
import type { Check } from "./check";

/** The registers that records name, each with how its numbers are written and one of them; a further one joins here. */
const registers: Readonly<Record<string, { readonly looks: RegExp; readonly example: string }>> = {
  ncbi: { looks: /^[1-9]\d*$/, example: "7955" },
  fishbase: { looks: /^[1-9]\d*$/, example: "4653" },
  sealifebase: { looks: /^[1-9]\d*$/, example: "25789" },
  gbifBackbone: { looks: /^[1-9]\d*$/, example: "4286942" },
};

/** A misspelt register would be one of its own, and a number with a slip in it leads nowhere. */
export const identifiersAreKnown: Check = {
  name: "An identifier is of a register that others have numbers in, and written as its numbers are",
  find: ({ files }) =>
    files.species.flatMap(({ path: file, json }) =>
      fieldsOf(fieldOf(json, "identifiers")).flatMap(([register, number]) => {
        const at = ["identifiers", register];
        const known = Object.hasOwn(registers, register) ? registers[register] : undefined;
        if (known === undefined) {
          const meant = nearest(register, Object.keys(registers));
          return [
            {
              file,
              at,
              found: `a number in the register ${register}`,
              expected: `one of ${Object.keys(registers).join(", ")}`,
              guess: meant === undefined ? "" : ` Did you mean ${meant}?`,
              mend: "Correct it; a register in which no species has a number yet joins the list in data/checks/identifiers-are-known.ts.",
            },
          ];
        }
        if (typeof number !== "string" || known.looks.test(number)) return [];
        return [
          {
            file,
            at,
            found: `${number} in the register ${register}`,
            expected: `a number such as ${known.example}`,
            mend: "Correct it: the number alone, as the register writes it.",
          },
        ];
      }),
    ),
};
