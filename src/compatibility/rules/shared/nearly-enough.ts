import { decimal } from "../../../decimal";

/** Whether what is planned falls short of what is needed by so little that the figures do not tell them apart. */
export const isNearlyEnough = (planned: number | undefined, needed: number, share: number): boolean =>
  planned !== undefined && planned < needed && planned >= decimal(share * needed);
