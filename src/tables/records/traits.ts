import { frozen } from "../../frozen";
import { type TraitPath, traitPaths, traitTable } from "../../species";
import { listed, type RowWith } from "../table";
import { ets } from "../terms";

const columns = {
  trait: {
    type: "string",
    about: "Section and name.",
    required: true,
    term: ets("identifier"),
  },
  label: { type: "string", about: "What it is called.", required: true, term: ets("trait") },
  about: {
    type: "string",
    about: "What an observer sees, measures or counts.",
    required: true,
    term: ets("traitDescription"),
  },
  way: {
    type: "string",
    about: "How its statements become one fact.",
    required: true,
    words: ["one", "figures", "lengths", "rooms", "ages", "all"],
  },
  unit: { type: "string", about: "The unit of its sizes; 1 for a share." },
  ucum: { type: "string", about: "That unit as UCUM writes it.", term: ets("expectedUnit") },
  least: { type: "number", about: "The least that there can be, in the unit." },
  ordinal: { type: "boolean", about: "Whether its words ascend.", required: true },
  essential: {
    type: "boolean",
    about: "Whether a record without it is incomplete.",
    required: true,
  },
  words: {
    type: "string",
    about:
      "The words it may be answered with, the least first where they ascend; of a value of several parts those of one of them, such as what an act does.",
    term: ets("factorLevels"),
  },
  term: {
    type: "string",
    about: "The nearest term of an open vocabulary, as a URI.",
    term: ets("relatedTerm"),
  },
} as const;

/** The traits. */
export const traits = /* @__PURE__ */ frozen({
  name: "traits",
  about: "A trait.",
  columns,
  key: ["trait"],
  refers: {},
} as const);

/** A trait as a row; `tables.traits` says what each cell holds. */
export type TraitRow = RowWith<typeof columns>;

/** Units as UCUM writes them. It has none for degrees of hardness, and ignores what stands in braces. */
const ucum: Readonly<Record<string, string>> = {
  cm: "cm",
  cm2: "cm2",
  mo: "mo",
  a: "a",
  degC: "Cel",
  dH: "10.mg{CaO}/L",
  "g/kg": "g/kg",
  "1": "1",
};

/**
 * Every trait with its unit and its words, a row each.
 *
 * @example
 * ```ts
 * import { traitRows } from "vivary/tables";
 *
 * traitRows().find(({ trait }) => trait === "water.temperature")?.ucum; // => "Cel"
 * ```
 */
export function traitRows(): readonly TraitRow[] {
  return traitPaths.map((trait) => {
    const { label, about, way, unit, floor, ordinal, essential, classes = {}, term } = traitTable[trait];
    return {
      trait,
      label,
      about,
      way,
      unit: unit ?? null,
      ucum: ucumOf(trait, unit),
      least: floor ?? null,
      ordinal: ordinal ?? false,
      essential: essential ?? false,
      words: listed(Object.keys(classes)),
      term: term ?? null,
    };
  });
}

/** The unit of a trait as UCUM writes it; pH has one there and none here. */
function ucumOf(trait: TraitPath, unit: string | undefined): string | null {
  if (trait === "water.pH") return "[pH]";
  return (unit && ucum[unit]) ?? null;
}
