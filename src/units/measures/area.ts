import { multiples } from "../multiples";

/** Square centimetre, square metre. */
export type AreaUnit = "cm2" | "m2";

/** Square centimetres in each unit. */
export const area = () =>
  multiples<AreaUnit>({
    cm2: 1,
    m2: 10_000,
  });
