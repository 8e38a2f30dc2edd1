import { frozen } from "../../frozen";
import { type TraitWay, traitDefinitions } from "./definitions";
import { traitPaths } from "./path";
import type { TraitPath } from "./values";

/** A trait that says in figures what water is: what animals are kept in, what is best for them, what they survive. */
export type FigurePath = { [Path in TraitPath]: TraitWay<Path> extends "figures" ? Path : never }[TraitPath];

/** These traits, in the order of the table. */
export const figurePaths: readonly FigurePath[] = /* @__PURE__ */ frozen(
  /* @__PURE__ */ traitPaths.filter((path): path is FigurePath => traitDefinitions[path].way === "figures"),
);
