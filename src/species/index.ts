export * as classes from "./classes";
export { type Disagreement, disagreement, type Voice } from "./disagreement";
export { applyForm } from "./forms";
export { resolve } from "./resolve";
export { standardLength, totalLength } from "./total-length";
export {
  essentialTraits,
  factAt,
  splitPath,
  statementsOf,
  type Trait,
  type TraitWay,
  traitPaths,
  traitTable,
  type Way,
} from "./traits";
export type * from "./types";
