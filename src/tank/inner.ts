/** What the floors above share of tanks whose fields are checked; no part of the public surface. */
export { floorOf } from "./tank-floor";
export { geometryOf } from "./tank-geometry";
