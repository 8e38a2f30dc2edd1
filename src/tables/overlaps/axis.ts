import type { TraitPath, TraitWay } from "../../species";

/** A trait whose figures are spans, such as the temperature. */
export type OverlapAxis = { [Path in TraitPath]: TraitWay<Path> extends "figures" ? Path : never }[TraitPath];
