export * from "./generated";
export { recordById } from "./record-by-id";
