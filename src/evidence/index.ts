export { allRecords, recordById } from "./all-records";
