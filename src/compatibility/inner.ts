/** What the floors above share with the rules; no part of the public surface. */

export { floorNeeded, runNeeded } from "./animals/room";
export { askedAtWorst } from "./asked-at-worst";
export { coverInsteadOfCompany } from "./dense-cover";
export { hangsOnTemper } from "./engine/temper";
export { type Joinable, type Joined, joinable, type Told } from "./joining";
export { meeting } from "./meeting";
export { roomy } from "./pair-plan";
export { preyReach } from "./prey-reach";
export { givingHardness, givingPH, givingTemperature } from "./rules/shared/givings";
export { oxygenLimits } from "./rules/shared/oxygen-limits";
export { type Giving, inSeason, meetPastTheirBest, surelyOf, wantedOf } from "./rules/shared/water";
export { sexAsked } from "./sex-asked";
export { thresholdValues } from "./threshold-values";
