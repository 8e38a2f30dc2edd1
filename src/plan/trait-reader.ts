import type { TraitPath, TraitValue } from "../species";

/** The value of a trait of one of a plan's parties, by its index; undefined where nobody knows it. */
export type TraitReader = <Path extends TraitPath>(party: number, path: Path) => TraitValue<Path> | undefined;
