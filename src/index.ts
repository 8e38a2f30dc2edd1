/**
 * Typed species profiles for aquaria, and pure functions that compute answers with their reasons. The species
 * themselves are in `vivary/catalog`, the sources behind them in `vivary/evidence`, the schema in `vivary/schema`.
 *
 * @packageDocumentation
 */
export * from "./advice";
export * from "./compatibility";
export {
  type DomainUnit,
  describeProblem,
  InvalidInputError,
  OutsideDomainError,
  type Problem,
  type ProblemCode,
} from "./errors";
export * from "./load";
export * from "./plan";
export * from "./ranges";
export * from "./report";
export * from "./species";
export * from "./tank";
export * from "./units";
export * from "./water";
