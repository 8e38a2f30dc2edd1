/**
 * Closed intervals, such as the temperatures two species are kept at: what they share, what lies between them, and
 * how much they overlap by the measures of ecology. Ranges may be one-sided and compare in one unit, any unit; classes
 * in order, such as currents from still to strong, have {@link ordinalOverlap}.
 *
 * @packageDocumentation
 */
export { containment } from "./containment";
export { contains } from "./contains";
export { gap } from "./gap";
export { jaccard } from "./jaccard";
export { type LimitingPair, limitingPair } from "./limiting-pair";
export { type OrdinalRange, ordinalOverlap, type PartialOrdinalRange } from "./ordinal-overlap";
export { overlap } from "./overlap";
export { pianka } from "./pianka";
export type { PartialRange, Range } from "./range";
export { schoener } from "./schoener";
export { simpson } from "./simpson";
export { sorensen } from "./sorensen";
export { width } from "./width";
