/**
 * Closed intervals, such as the temperatures two species are kept at: what they share, what lies between them, and
 * how much they overlap by the measures of ecology. Ranges may be one-sided and compare in one unit, any unit; classes
 * in order, such as currents from still to strong, have {@link ordinalOverlap}. Who shares what among thousands is
 * answered from {@link rangeColumns}.
 *
 * One rule says where the measures have a value: 0 wherever two ranges lie apart; none where they meet and one is
 * one-sided or has zero width; else by the formula. All of them follow from two numbers, the share that each range has
 * in common with the other: several of them are one piece of evidence, told several ways.
 *
 * @packageDocumentation
 */

export { InvalidInputError } from "../errors";
export { contains } from "./contains";
export { gap } from "./gap";
export { type RangeColumns, type RangePath, rangeColumns } from "./many/columns";
export { type LimitingPair, limitingPair } from "./many/limiting-pair";
export { pairsThatShare } from "./many/pairs-that-share";
export { sharing } from "./many/sharing";
export { containment } from "./measures/containment";
export { jaccard } from "./measures/jaccard";
export { pianka } from "./measures/pianka";
export { schoener } from "./measures/schoener";
export { simpson } from "./measures/simpson";
export { sorensen } from "./measures/sorensen";
export { type OrdinalRange, ordinalOverlap, type PartialOrdinalRange } from "./ordinal-overlap";
export { overlap } from "./overlap";
export type { PartialRange, Range } from "./range";
export { width } from "./width";
