/** What the floors above share with the rules; no part of the public surface. */

export { grownLength, grownPreyLength, isShorterThanGrown } from "./animals/lengths";
export { malesAreRivals } from "./animals/males-are-rivals";
export { offeringsTaken, takes } from "./animals/offerings-taken";
export { floorNeeded, runNeeded } from "./animals/room";
export { type Foods, staplesOf } from "./animals/staples";
export { askedAtWorst } from "./assess/asked-at-worst";
export { rulesFor } from "./assess/assess-plan";
export { decides } from "./engine/answers/questions";
export { weights } from "./engine/rule/weight";
export { hangsOnTemper } from "./engine/sides/temper";
export { type Joinable, type Joined, joinable, type Told } from "./joining/joining";
export { coverInsteadOfCompany } from "./meeting/dense-cover";
export { leftBeside, meeting } from "./meeting/meeting";
export { roomy } from "./meeting/pair-plan";
export { sexAsked } from "./meeting/sex-asked";
export { preyReach } from "./prey-reach";
export { oxygenLimits } from "./rules/shared/oxygen-limits";
export { type PlannedWaterRule, plannedWaterOf, plannedWaters } from "./rules/shared/planned-water";
export { bothMustGive, meetPastTheirBest } from "./rules/shared/water";
export { axes, type WaterAxis, waterAxes } from "./shared-water/axes";
export type { Ends } from "./shared-water/ends";
export { type Figure, figureIn } from "./shared-water/figure";
export { type KeptWater, keptWater, type Swing } from "./shared-water/kept-water";
export { type Opposed, opposedIn, type Room, roomOf } from "./shared-water/room";
export { thresholdValues } from "./threshold-values";
export { excludeEachOther } from "./verdict/clashes";
