/**
 * Species as records and as profiles: what sources said of each trait, how that becomes one fact, and the forms bred of
 * a species.
 *
 * @packageDocumentation
 */

export { InvalidInputError } from "../errors";
export type { ResolveOptions } from "./profile/admission";
export { factAt } from "./profile/fact-at";
export { applyForm } from "./profile/forms";
export { standardLength, totalLength } from "./profile/lengths";
export type * from "./profile/profile";
export { resolve } from "./profile/resolve";
export { type Basis, bases, basisOf } from "./record/basis";
export { type Disagreement, disagreement } from "./record/disagreement";
export type { SourceVoice, StatementGroup } from "./record/groups";
export type * from "./record/record";
export type * from "./record/source";
export type * from "./record/statement";
export { statementsOf } from "./record/statements";
export type * from "./traits/class-names";
export { classes } from "./traits/class-table";
export type { TraitDefinition, TraitWay } from "./traits/definitions";
export { type FigurePath, figurePaths } from "./traits/figure-paths";
export { essentialTraits, splitPath, traitPaths } from "./traits/path";
export type { PlausibleSpan } from "./traits/plausible";
export { type Trait, traitTable } from "./traits/table";
export type * from "./traits/values";
export type { TraitWords } from "./traits/words";
