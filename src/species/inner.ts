/** What the floors above share of species; no part of the public surface. */
export { currents, currentsBetween, currentsFrom, currentsUpTo } from "./currents";
export { mostFresh } from "./profile/derived";
export { informs } from "./profile/facts";
export { joined } from "./profile/joined";
export { lengthsMeant, lengthsOfSex } from "./profile/lengths";
export { standingValues } from "./profile/standing-values";
export { weakestBasis } from "./record/basis";
export { groupsOf, topicKey } from "./record/groups";
export { hasValue, type Stated } from "./record/statements";
export { statementsFor } from "./record/statements-for";
export { inTraitUnit, sizeFields } from "./record/trait-unit";
export { classLists } from "./traits/class-list-table";
export {
  bodyShape as bodyShapes,
  food as foods,
  ground as grounds,
  hide as hides,
  kind as kinds,
  light as lights,
  sex as sexes,
  stage as stages,
  zone as zones,
} from "./traits/class-lists";
export { type HasUnit, traitDefinitions } from "./traits/definitions";
export { traitLabels } from "./traits/labels";
export { plausibleSpans } from "./traits/plausible";
