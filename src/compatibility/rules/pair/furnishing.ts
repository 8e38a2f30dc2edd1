import { decimal } from "../../../decimal";
import { ownRule } from "../../engine/rule/own-rule";
import type { SeenParty } from "../../engine/rule/rule";

type Dweller = SeenParty<
  never,
  | "space.cover"
  | "space.openWater"
  | "space.grownInPlants"
  | "space.substrate"
  | "effects.eatsPlants"
  | "effects.uproots"
>;

const asks = [
  "space.cover",
  "space.openWater",
  "space.grownInPlants",
  "space.substrate",
  "effects.eatsPlants",
  "effects.uproots",
] as const;

/**
 * Can one tank be furnished for both?
 *
 * One tank has one ground and one planting, and what is cover is not free to swim in. No planting holds where plants are
 * pulled out; where they are eaten, tough ones stay. What nobody knows leaves it open.
 */
export const furnishing = /* @__PURE__ */ ownRule({
  id: "furnishing",
  way: "mutual",
  uses: { from: asks, to: asks },
  mayYield: ["blocking", "advisory"],
  measures: { cover: "1", openWater: "1", from: ["ground"], to: ["ground"], harm: "plantHarm" },
  judge: ({ from, to }) => {
    const cover = Math.max(from["space.cover"] ?? 0, to["space.cover"] ?? 0);
    const openWater = Math.max(from["space.openWater"] ?? 0, to["space.openWater"] ?? 0);
    const lost = [plantsLost(from, to), plantsLost(to, from)];
    const harm = lost.find((how) => how === "uproots") ?? lost.find((how) => how !== undefined);
    const bare = harm === "uproots" ? ("blocking" as const) : ("advisory" as const);
    const [mine, theirs] = [from["space.substrate"] ?? [], to["space.substrate"] ?? []];
    const apart = mine.length > 0 && theirs.length > 0 && !mine.some((ground) => theirs.includes(ground));
    const findings = [
      ...(decimal(cover + openWater) > 1
        ? [{ weight: "blocking" as const, measures: { cover, openWater } }]
        : []),
      ...(harm ? [{ weight: bare, measures: { harm } }] : []),
      ...(apart ? [{ weight: "blocking" as const, measures: { from: mine, to: theirs } }] : []),
    ];
    return findings.some(({ weight }) => weight === "blocking") || untold(from) + untold(to) === 0
      ? findings
      : "unknown";
  },
});

/** How much of what one asks of a tank nobody knows. All of it is looked at, so that all that is missing is asked for. */
function untold(dweller: Dweller): number {
  let count = 0;
  for (const trait of asks) if (dweller[trait] === undefined) count += 1;
  return count;
}

/** How one harms the plants that the other cannot do without. */
function plantsLost(eater: Dweller, needing: Dweller): "eats" | "uproots" | undefined {
  if (!needing["space.grownInPlants"]) return undefined;
  if (eater["effects.uproots"]) return "uproots";
  return eater["effects.eatsPlants"] ? "eats" : undefined;
}
