/** What the floors above share of waters; no part of the public surface. */
export { checkDissolved } from "./mixture";
