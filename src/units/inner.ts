/** What the floors above share of units; no part of the public surface. */
export { kelvins } from "./kelvin";
export { milliequivalentsPerDegree } from "./measures/hardness";
export { micrometres } from "./measures/length";
