import type { Verdict, VerdictParty } from "../../compatibility";
import type { WriteQuantity } from "../figure";
import type { Messages } from "../messages/messages";
import type { Naming } from "./naming";

/** What animals are named with. */
export interface NamingMeans extends Naming {
  readonly verdict: Pick<Verdict, "parties">;
  readonly messages: Messages;
  readonly figure: WriteQuantity;
}

/** What the sentences on a verdict are made with. */
export interface Means extends NamingMeans {
  readonly verdict: Verdict;
}

/** How long the animals of a party are now; empty where nobody says. */
export const lengthTold = (party: VerdictParty | undefined, { figure }: NamingMeans) =>
  party?.length === undefined ? "" : figure({ value: party.length, unit: "cm" });
