/** What the floors above read of loads; no part of the public surface. */

export { areaOfALitre } from "./coarse-foam";
export { ripening } from "./filter-capacity";
