/** What the floors above share of it; no part of the public surface. */
export { coverInsteadOfCompany } from "./dense-cover";
export { meeting } from "./meeting";
