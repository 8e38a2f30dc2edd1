import type { FigurePath } from "../../species/inner";

/** A trait whose figures are spans, such as the temperature. */
export type OverlapAxis = FigurePath;
