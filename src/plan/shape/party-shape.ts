import { sexes, stages } from "../../species/inner";
import { bodyLength, count, object, temper, text, word } from "./parts";
import type { ObjectShape, ShapeCheck } from "./shape";

/** A party whose species is as the check wants it. */
export const partyShape = (species: ShapeCheck): ObjectShape =>
  object(
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
