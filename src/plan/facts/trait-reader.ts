import type { TraitPath, TraitValue } from "../../species";

/** The value of a trait, of those that may be read, of one of a plan's parties, by its index; undefined where nobody knows it. */
export type TraitReader<Readable extends TraitPath = TraitPath> = <Path extends Readable>(
  party: number,
  path: Path,
) => TraitValue<Path> | undefined;
