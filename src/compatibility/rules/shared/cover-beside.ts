import { decimal } from "../../../decimal";
import type { SeenParty } from "../../engine/rule/rule";

/** Cover to get out of sight: as much as asked, or as much as the open water leaves that both need. */
export function coverBeside(
  share: number,
  ...parties: readonly SeenParty<never, "space.openWater">[]
): { readonly on: "tank.cover"; readonly wanted: { readonly min: number } } {
  const open = Math.max(...parties.map((party) => party["space.openWater"] ?? 0));
  return { on: "tank.cover", wanted: { min: Math.min(share, decimal(1 - open)) } };
}
