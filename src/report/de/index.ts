/**
 * What reports, pictures and the pages of species say in German: a module of its own, so that a page loads it when somebody
 * asks for German.
 *
 * @packageDocumentation
 */

export { german } from "../messages/german";
export { germanAdvice } from "../messages/german-advice";
export { germanLawgivers } from "../messages/german-lawgivers";
export { germanPages } from "../messages/german-page";
export { germanRequirements } from "../messages/german-requirements";
