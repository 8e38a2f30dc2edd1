import type { Verdict, VerdictParty } from "../../compatibility";
import type { WriteQuantity } from "../figure";
import type { Messages } from "../messages/messages";
import type { Naming } from "./naming";

/** What the sentences on a verdict are made with. */
export interface Means extends Naming {
  readonly verdict: Pick<Verdict, "parties">;
  readonly messages: Messages;
  readonly figure: WriteQuantity;
}

/** How long the animals of a party are now; empty where nobody says. */
export const lengthTold = (party: VerdictParty | undefined, { figure }: Means) =>
  party?.length === undefined ? "" : figure({ value: party.length, unit: "cm" });
