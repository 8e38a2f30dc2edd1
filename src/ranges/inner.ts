/** What the floors above share of ranges; no part of the public surface. */

export { ends } from "./ends";
export { containmentOf } from "./measures/containment";
export { jaccardOf } from "./measures/jaccard";
export { piankaOf } from "./measures/pianka";
export { schoenerOf } from "./measures/schoener";
export { simpsonOf } from "./measures/simpson";
export { sorensenOf } from "./measures/sorensen";
export { apart, boxWidths, type WidthFormula, type Widths, widthsOf } from "./measures/widths";
export { stated, statedIn, statedOf } from "./stated";
