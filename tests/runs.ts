import { inject } from "vitest";

declare module "vitest" {
  interface ProvidedContext {
    /** What properties draw their cases from. */
    readonly seed: number;
    /** How many times as many cases they try as in `npm test`. */
    readonly depth: number;
  }
}

/** How many cases a property tries, in a run as deep as this one. */
export const runs = (usual: number): number => usual * inject("depth");

/** The seed of one of several draws, so that none repeats another. */
export const seedOf = (draw: number): number => inject("seed") + draw;

/** About so many of a list, spread over it, others at another turn; all of them in a run that is deep enough. */
export const someOf = <Item>(all: readonly Item[], usual: number, turn: number): readonly Item[] => {
  const step = Math.ceil(all.length / runs(usual));
  return all.filter((_, index) => (index + turn) % step === 0);
};
