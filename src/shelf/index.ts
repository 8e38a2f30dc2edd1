export { moved } from "./generated";
export { type Shelf, shelf } from "./shelf";
