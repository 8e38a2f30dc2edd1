import { frozen } from "../frozen";
import { frozenWhenRead, once } from "../made-once";
import { moved } from "./generated";

/** Entries that are kept as JSON: each is parsed when it is first asked for, and can never be changed. */
export interface Shelf<Entry> {
  /** Every entry, in the order given. */
  readonly all: readonly Entry[];
  /** The entry of an id, or of the id that it forwards to. */
  readonly byId: (id: string) => Entry | undefined;
}

/** A shelf of entries, each given as its id and its JSON. */
export function shelf<Entry>(texts: readonly (readonly [id: string, json: string])[]): Shelf<Entry> {
  const takes = new Map(texts.map(([id, json]) => [id, once(() => frozen<Entry>(JSON.parse(json)))]));
  const all: readonly Entry[] = [];
  return {
    all: frozenWhenRead(all, [...takes.values()].entries()),
    byId: (id) => takes.get(currentIds.get(id) ?? id)?.(),
  };
}

const currentIds: ReadonlyMap<string, string> = /* @__PURE__ */ new Map(moved);
