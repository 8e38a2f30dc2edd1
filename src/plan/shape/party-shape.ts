import { sexes, stages } from "../../species/inner";
import type { Party } from "../plan";
import { bodyLength, count, object, temper, text, word } from "./parts";
import type { ObjectShape, ShapeCheck } from "./shape";

/** A party whose species is as the check wants it. */
export const partyShape = (species: ShapeCheck): ObjectShape =>
  object<Party>(
    {
      species: { is: "checked", check: species },
      form: text,
      sex: word(sexes),
      stage: word(stages),
      length: bodyLength,
      count: count(1),
      temper,
    },
    ["species"],
  );
