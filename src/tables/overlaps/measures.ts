import type { WidthFormula } from "../../ranges/inner";
import { containmentOf, jaccardOf, piankaOf, schoenerOf, simpsonOf, sorensenOf } from "../../ranges/inner";

/** A measure of overlap of `vivary/ranges`. */
export type OverlapMeasure = "jaccard" | "sorensen" | "simpson" | "schoener" | "pianka" | "containment";

/** The formula of each measure: of one axis by widths, of several by the products of widths. */
export const formulas: Readonly<Record<OverlapMeasure, WidthFormula>> = {
  jaccard: jaccardOf,
  sorensen: sorensenOf,
  simpson: simpsonOf,
  schoener: schoenerOf,
  pianka: piankaOf,
  containment: containmentOf,
};
