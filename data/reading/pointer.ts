import { fieldOf } from "./fields";

/** What a JSON pointer such as `#/properties/water` points at in a document. */
export const pointedAt = <Held>(document: Held, pointer: string): Held | undefined =>
  pointer
    .split("/")
    .slice(1)
    .reduce<unknown>((held, key) => fieldOf(held, key), document) as Held | undefined;
