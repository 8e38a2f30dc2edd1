import { noCrowd } from "../../animals/crowd";
import { noStock } from "../../animals/stock";
import type { PlanSeen, Rule } from "./rule";

/** What a rule sees summed up: the sum that it asks for, and of the other kind nothing. */
export const seenSums = ({ sums }: Rule, sum: unknown): Pick<PlanSeen<never>, "stock" | "crowd"> => ({
  stock: noStock,
  crowd: noCrowd,
  ...(sums && { [sums.name]: sum }),
});
