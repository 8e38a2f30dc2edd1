import { decimal } from "../../../decimal";
import { ownRule } from "../../engine/rule/own-rule";
import type { SeenParty } from "../../engine/rule/rule";

const asks = ["space.cover", "space.openWater", "space.substrate"] as const;

type Dweller = SeenParty<never, (typeof asks)[number]>;

/**
 * Can one tank be furnished for both?
 *
 * One tank has one ground, and what is cover is not free to swim in. What nobody knows leaves it open.
 */
export const furnishing = /* @__PURE__ */ ownRule({
  id: "furnishing",
  way: "mutual",
  uses: { from: asks, to: asks },
  mayYield: ["blocking"],
  measures: { cover: "1", openWater: "1", from: ["ground"], to: ["ground"] },
  judge: ({ from, to }) => {
    const cover = Math.max(from["space.cover"] ?? 0, to["space.cover"] ?? 0);
    const openWater = Math.max(from["space.openWater"] ?? 0, to["space.openWater"] ?? 0);
    const [mine, theirs] = [from["space.substrate"] ?? [], to["space.substrate"] ?? []];
    const apart = mine.length > 0 && theirs.length > 0 && !mine.some((ground) => theirs.includes(ground));
    const findings = [
      ...(decimal(cover + openWater) > 1
        ? [{ weight: "blocking" as const, measures: { cover, openWater } }]
        : []),
      ...(apart ? [{ weight: "blocking" as const, measures: { from: mine, to: theirs } }] : []),
    ];
    return findings.length > 0 || untold(from) + untold(to) === 0 ? findings : "unknown";
  },
});

/** How much of what one asks of a tank nobody knows. All of it is looked at, so that all that is missing is asked for. */
function untold(dweller: Dweller): number {
  let count = 0;
  for (const trait of asks) if (dweller[trait] === undefined) count += 1;
  return count;
}
