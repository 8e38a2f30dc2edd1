/** What the floors above share of ranges; no part of the public surface. */
export { containmentOf } from "./containment";
export { ends } from "./ends";
export { jaccardOf } from "./jaccard";
export { piankaOf } from "./pianka";
export { schoenerOf } from "./schoener";
export { simpsonOf } from "./simpson";
export { sorensenOf } from "./sorensen";
export { stated, statedIn, statedOf } from "./stated";
export { apart, boxWidths, type WidthFormula, type Widths, widthsOf } from "./widths";
